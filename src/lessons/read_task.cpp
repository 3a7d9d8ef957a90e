#include "lessons/read_task.hpp"

#include <algorithm>

#include "base/listing.hpp"
#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "solids/catalog.hpp"

namespace fw::lessons {
namespace {

using exact::Number;

constexpr std::size_t most_bounds = 9;

std::string noun_of(int dimension) { return dimension == 1 ? "a length" : dimension == 2 ? "an area" : "a volume"; }

// The one measure that a problem asks for; nothing, with a fault, where it asks for none, several, or no measure.
std::optional<std::string> one_measure(const JsonNode& key, std::string_view name, const Problem& problem,
                                       const Context& context) {
  const bool is_one = problem.find.size() == 1 && asked_value(problem, problem.solid, problem.find.front());
  if (!is_one) {
    context.fault(key,
                  in_quotes(name) + " goes with one measure that is asked for, as in \"find\": [\"surface_area\"]");
    return std::nullopt;
  }
  return problem.find.front();
}

// ---- scale ----

std::optional<Number> read_factor(const JsonNode& node, const Context& context) {
  const Result<exact::Written, exact::NumberError> parsed = exact::parse_number(node.text);
  const bool is_factor = parsed && parsed->value.is_rational() && !(parsed->value == Number::whole(1)) &&
                         parsed->value <= Number::whole(1000) && parsed->value >= Number::ratio(1, 1000);
  if (!is_factor) {
    context.fault(node, in_quotes(node.text) +
                            " is no factor: write how many times as long the edges of the copy are, such as \"4\", "
                            "\"2.5\" or \"1/2\", from 1/1000 to 1000 and not 1");
    return std::nullopt;
  }
  return parsed->value;
}

solids::Known read_copy(const JsonNode& node, const solids::Solid& solid, const Context& context) {
  solids::Known copy;
  if (!node.is(JsonNode::Kind::Object) || node.keys.size() != 1) {
    context.fault(
        node, "\"copy\" is an object with one measure, such as {\"surface_area\": \"4576 cm^2\"}; found " +
                  (node.is(JsonNode::Kind::Object) ? std::to_string(node.keys.size()) + " of them" : found_text(node)));
    return copy;
  }
  check_keys(node, whole_measures(), "\"copy\"", context);
  const std::string& key = node.keys.front();
  const std::optional<int> dimension = dimension_of_whole(key);
  if (!dimension) {
    return copy;
  }
  const Context here = context.at(key);
  const auto quantity = read_quantity(node.items.front(), *dimension, here);
  if (quantity && !quantity->unit.converts_to(solid.unit().to_the(*dimension))) {
    here.fault(node.items.front(),
               in_quotes(quantity->text) + " cannot be compared with a solid measured in " + solid.unit().text());
  } else if (quantity) {
    copy.emplace(key, *quantity);
  }
  return copy;
}

// How many times as long the edges of the copy are, by one area or volume of it.
std::optional<Number> factor_from(const Problem& problem, const solids::Known& copy, const JsonNode& node,
                                  const Context& context) {
  const auto& [key, quantity] = *copy.begin();
  const int dimension = *dimension_of_whole(key);
  const std::optional<Number> original = asked_value(problem, problem.solid, key);
  if (!original) {
    context.fault(node, with_article(problem.solid.name()) + " has no measure " + in_quotes(key));
    return std::nullopt;
  }
  const Number amount =
      quantity.number.value * units::conversion(quantity.unit, problem.solid.unit().to_the(dimension));
  const Number ratio = amount / *original;
  const Number factor = dimension == 2 ? exact::square_root(ratio) : exact::cube_root(ratio);
  if (!factor.is_rational() || factor == Number::whole(1)) {
    const exact::Shown shown = exact::shown(factor, 3);
    const Number nearest = std::max(exact::rounded(factor, 1), Number::ratio(1, 2));
    const exact::Shown fits = exact::shown(*original * exact::power(nearest, dimension), 4);
    context.fault(node, in_quotes(quantity.text) + " makes the edges " + (shown.exact ? "" : "≈ ") + shown.text +
                            " times as long, which is no factor to find; with " + (fits.exact ? "" : "about ") +
                            fits.text + " " + problem.solid.unit().to_the(dimension).ascii() + " they are " +
                            exact::shown(nearest, 1).text + " times as long");
    return std::nullopt;
  }
  return factor;
}

void check_scale_find(const JsonNode& node, const Problem& problem, const Context& context) {
  const JsonNode* find = node.find("find");
  if (find == nullptr) {
    context.fault(*node.find("scale"), "a copy is told of, but nothing is asked for: write \"find\": " +
                                           std::string(problem.scale->text == "?" ? "[\"scale\"]" : "[\"volume\"]"));
    return;
  }
  std::vector<std::string> allowed = problem.scale->text == "?" ? std::vector<std::string>{"scale"} : whole_measures();
  const auto is_missing = [&](const std::string& name) {
    return name != "scale" && !asked_value(problem, problem.solid, name);
  };
  allowed.erase(std::remove_if(allowed.begin(), allowed.end(), is_missing), allowed.end());
  for (std::size_t i = 0; i < problem.find.size(); ++i) {
    if (std::find(allowed.begin(), allowed.end(), problem.find[i]) == allowed.end()) {
      context.fault(find->items[i],
                    in_quotes(problem.find[i]) + " cannot be asked of a copy" + suggestion(problem.find[i], allowed));
    }
  }
}

void read_scale(const JsonNode& node, Problem& problem, const Context& context) {
  const JsonNode* scale = node.find("scale");
  const JsonNode* copy = node.find("copy");
  if (scale == nullptr) {
    context.fault(*copy, "\"copy\" goes with \"scale\": \"?\"");
    return;
  }
  const Context here = context.at("scale");
  const std::string* written = text_at(*scale, "a factor", here);
  if (written == nullptr) {
    return;
  }
  Scaling scaling;
  scaling.text = *written;
  if (*written != "?") {
    scaling.factor = read_factor(*scale, here);
    if (copy != nullptr) {
      context.fault(*copy,
                    "the factor is given, so nothing of the copy has to be: leave \"copy\" out, or ask for the "
                    "factor with \"scale\": \"?\"");
    }
  } else if (copy == nullptr) {
    here.fault(*scale,
               "to find the factor one measure of the copy is needed, such as \"copy\": {\"surface_area\": "
               "\"4576 cm^2\"}");
  } else {
    scaling.copy = read_copy(*copy, problem.solid, context.at("copy"));
    if (!scaling.copy.empty()) {
      const std::string& key = scaling.copy.begin()->first;
      scaling.factor = factor_from(problem, scaling.copy, copy->items.front(), context.at("copy").at(key));
    }
  }
  problem.scale = std::move(scaling);
  check_scale_find(node, problem, context);
}

// ---- unit ----

void read_unit(const JsonNode& node, Problem& problem, const Context& context) {
  const std::string* written = text_at(node, "a unit", context);
  if (written == nullptr) {
    return;
  }
  const std::optional<units::Unit> unit = units::Unit::find(*written);
  if (!unit) {
    context.fault(node, in_quotes(*written) + " is no unit; \"m^2\", \"ft^3\" and \"L\" are some");
    return;
  }
  if (problem.find.empty()) {
    context.fault(node, "a unit is given, but nothing is asked for in it: write \"find\": [\"surface_area\"]");
  }
  for (const std::string& find : problem.find) {
    const std::optional<int> dimension = dimension_of_asked(problem.solid, find);
    if (!dimension || *dimension != unit->dimension()) {
      context.fault(node, in_quotes(*written) + " measures " + noun_of(unit->dimension()) + "; " + in_quotes(find) +
                              " is " + (dimension ? noun_of(*dimension) : "no measure") +
                              ", so ask for it in a problem of its own");
    } else if (!unit->converts_to(problem.solid.unit().to_the(*dimension))) {
      context.fault(node, "a solid measured in " + problem.solid.unit().text() + " has nothing that can be given in " +
                              in_quotes(*written));
    }
  }
  problem.unit = unit;
}

// ---- claim ----

// Lengths that a lesson could write for this solid, and does not.
void push_claimable(const solids::Description& description, const std::vector<solids::Field>& fields,
                    const std::string& before, std::vector<std::string>& names) {
  for (const solids::Field& field : fields) {
    if (field.type == solids::FieldType::Length && description.fields.count(field.key) == 0) {
      names.push_back(before + field.key);
    }
  }
}
std::vector<std::string> claimable(const Problem& problem) {
  std::vector<std::string> names;
  push_claimable(problem.description, solids::find_kind(problem.description.kind)->fields, "", names);
  for (const solids::Description& base : problem.description.base) {
    push_claimable(base, solids::find_base_shape(base.kind)->fields, "base.", names);
  }
  names.erase(std::remove_if(names.begin(), names.end(),
                             [&](const std::string& name) { return !asked_value(problem, problem.solid, name); }),
              names.end());
  return names;
}

void read_claim(const JsonNode& node, Problem& problem, const Context& context) {
  if (!node.is(JsonNode::Kind::Object) || node.keys.size() != 1) {
    context.fault(
        node, "\"claim\" is an object with one label, such as {\"slant_height\": \"9 cm\"}; found " +
                  (node.is(JsonNode::Kind::Object) ? std::to_string(node.keys.size()) + " of them" : found_text(node)));
    return;
  }
  const std::string& key = node.keys.front();
  const std::vector<std::string> names = claimable(problem);
  if (std::find(names.begin(), names.end(), key) == names.end()) {
    const bool is_written = problem.solid.written({key, "", 1}) != nullptr;
    context.fault(node.key_offsets.front(),
                  is_written
                      ? in_quotes(key) + " stands in the solid already: take it out there, or claim another label"
                      : in_quotes(key) + " cannot be claimed of " + with_article(problem.solid.name()) +
                            (names.empty() ? ", whose labels are all given: take the one out that is in question"
                                           : suggestion(key, names)));
    return;
  }
  if (const auto value = read_quantity(node.items.front(), 1, context.at(key))) {
    if (!value->unit.converts_to(problem.solid.unit())) {
      context.at(key).fault(
          node.items.front(),
          in_quotes(value->text) + " cannot be compared with a solid measured in " + problem.solid.unit().text());
    }
    problem.claim = Claim{key, *value};
  }
}

// ---- face ----

void read_face(const JsonNode& node, Problem& problem, const Context& context) {
  std::vector<std::string> numbers;
  for (const solids::Face& face : problem.solid.faces()) {
    const std::string number = std::to_string(face.id.index() + 1);
    if (has_two_lengths(face)) {
      numbers.push_back(number);
      problem.face = node.is(JsonNode::Kind::Number) && node.text == number ? face.id : problem.face;
    }
  }
  if (!problem.face) {
    context.fault(node,
                  "\"face\" is the number of a face whose area is worked from two lengths; of " +
                      with_article(problem.solid.name()) +
                      (numbers.empty() ? std::string(" there is none") : " these are " + joined_with_and(numbers)) +
                      "; found " + found_text(node));
    return;
  }
  if (!problem.find.empty()) {
    context.fault(node,
                  "\"face\" asks for the lengths of a face, \"find\" for something else: ask for one of the two "
                  "in a problem of its own");
  }
}

// ---- wrong ----

void read_wrong(const JsonNode& node, Problem& problem, const Context& context) {
  const JsonNode* answer = node.is(JsonNode::Kind::Object) ? node.find("answer") : nullptr;
  if (answer == nullptr) {
    context.fault(node,
                  "\"wrong\" is an object with the answer that somebody got, such as {\"answer\": \"260 cm^2\"}; "
                  "found " +
                      found_text(node));
    return;
  }
  check_keys(node, {"answer"}, "\"wrong\"", context);
  const auto find = one_measure(node, "wrong", problem, context);
  if (!find) {
    return;
  }
  const int dimension = *dimension_of_asked(problem.solid, *find);
  const Context here = context.at("answer");
  const auto quantity = read_quantity(*answer, dimension, here);
  if (!quantity) {
    return;
  }
  const units::Unit unit = problem.solid.unit().to_the(dimension);
  if (!(quantity->unit == unit)) {
    here.fault(*answer, in_quotes(quantity->text) + " is not in the unit of this solid: write it in " + unit.ascii());
  } else if (quantity->number.value == *asked_value(problem, problem.solid, *find)) {
    here.fault(*answer, in_quotes(quantity->text) + " is the right answer: write the one that a mistake leads to");
  }
  problem.wrong = quantity;
}

// ---- between ----

void check_bounds(const JsonNode& node, const Problem& problem, const std::string& find, const Context& context) {
  const units::Unit unit = problem.solid.unit().to_the(*dimension_of_asked(problem.solid, find));
  const Number value = *asked_value(problem, problem.solid, find);
  std::vector<Number> bounds;
  for (std::size_t i = 0; i < problem.between.size(); ++i) {
    const units::WrittenQuantity& bound = problem.between[i];
    if (!bound.unit.converts_to(unit)) {
      context.fault(node.items[i], in_quotes(bound.text) + " cannot be compared with a solid measured in " +
                                       problem.solid.unit().text());
      return;
    }
    bounds.push_back(bound.number.value * units::conversion(bound.unit, unit));
    if (i > 0 && bounds[i] <= bounds[i - 1]) {
      context.fault(node.items[i], "bounds rise: " + in_quotes(bound.text) + " is not more than " +
                                       in_quotes(problem.between[i - 1].text));
      return;
    }
  }
  const exact::Shown shown = exact::shown(value, 2);
  const std::string what = (shown.exact ? "" : "≈ ") + shown.text + " " + unit.ascii();
  if (value < bounds.front() || value > bounds.back()) {
    context.fault(node, "what is asked for comes to " + what + ", which lies in none of these intervals: bounds are " +
                            "needed below and above it");
  } else if (std::find(bounds.begin(), bounds.end(), value) != bounds.end()) {
    context.fault(node, "what is asked for comes to " + what + ", which is a bound itself: move this bound");
  }
}

void read_between(const JsonNode& node, Problem& problem, const Context& context) {
  if (!node.is(JsonNode::Kind::List) || node.items.size() < 3 || node.items.size() > most_bounds) {
    context.fault(node, "\"between\" is a list of 3 to " + std::to_string(most_bounds) +
                            " bounds, such as [\"100 cm^2\", \"200 cm^2\", \"400 cm^2\"]; found " +
                            (node.is(JsonNode::Kind::List) ? std::to_string(node.items.size()) : found_text(node)));
    return;
  }
  const auto find = one_measure(node, "between", problem, context);
  if (!find) {
    return;
  }
  for (const JsonNode& item : node.items) {
    const auto bound = read_quantity(item, *dimension_of_asked(problem.solid, *find), context);
    if (!bound) {
      return;
    }
    problem.between.push_back(*bound);
  }
  check_bounds(node, problem, *find, context);
}

}  // namespace

const std::vector<std::string>& task_keys() {
  static const std::vector<std::string> keys{"scale", "copy", "unit", "claim", "face", "wrong", "between"};
  return keys;
}

void read_task(const JsonNode& node, Problem& problem, const Context& context) {
  std::string first;
  for (const char* key : {"supply", "scale", "unit", "claim", "face", "wrong", "between"}) {
    const JsonNode* value = node.find(key);
    if (value == nullptr) {
      continue;
    }
    if (!first.empty()) {
      context.at(key).fault(*value, in_quotes(key) + " cannot stand beside " + in_quotes(first) +
                                        ": ask for one of the two in a problem of its own");
      return;
    }
    first = key;
  }
  if (node.find("scale") != nullptr || node.find("copy") != nullptr) {
    read_scale(node, problem, context);
  }
  const auto read = [&](const char* key, void (*reader)(const JsonNode&, Problem&, const Context&)) {
    if (const JsonNode* value = node.find(key)) {
      reader(*value, problem, context.at(key));
    }
  };
  read("unit", read_unit);
  read("claim", read_claim);
  read("face", read_face);
  read("wrong", read_wrong);
  read("between", read_between);
}

}  // namespace fw::lessons
