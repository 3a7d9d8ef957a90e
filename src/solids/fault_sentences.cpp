#include <algorithm>
#include <functional>

#include "exact/print_number.hpp"
#include "solids/completion.hpp"

namespace fw::solids {

using algebra::Bindings;
using algebra::Symbol;
using exact::Number;
using units::Unit;
using words::Message;

namespace {

constexpr int places_of_values = 2;

const Given* given_with(const std::vector<Given>& givens, const std::string& symbol) {
  const auto found =
      std::find_if(givens.begin(), givens.end(), [&](const Given& given) { return given.symbol.name == symbol; });
  return found == givens.end() ? nullptr : &*found;
}

std::string with_spaces(std::string key) {
  std::replace(key.begin(), key.end(), '_', ' ');
  return key;
}

Number power_of_ten(int places) {
  Number result = Number::whole(1);
  for (int i = 0; i < places; ++i) {
    result = result * Number::whole(10);
  }
  return result;
}

/// A value in the unit in which the given was written.
Message as_written(const Given& given, const Number& value, int places) {
  return value_words(value * given.to_written, given.symbol.dimension, given.unit, places);
}

/// "sides 5 cm, 5 cm and 8 cm and height 9 cm": the givens with these symbols, lists taken together.
std::vector<Message> listed(const std::vector<Given>& givens, const std::set<std::string>& among) {
  std::vector<Message> groups;
  std::set<std::string> named;
  std::set<std::string> done;
  for (const Given& given : givens) {
    const bool is_listed = done.count(given.field) != 0 || named.count(given.symbol.name) != 0;
    if (among.count(given.symbol.name) == 0 || is_listed) {
      continue;
    }
    done.insert(given.field);
    std::vector<Message> values;
    for (const Given& other : givens) {
      if (other.field == given.field && among.count(other.symbol.name) != 0) {
        values.push_back(as_written(other, other.value, std::max(other.places, places_of_values)));
        named.insert(other.symbol.name);
      }
    }
    const Noun title{values.size() > 1 ? with_spaces(given.key) : given.title};
    groups.push_back(message("{measures} {values:and}", {{"measures", title}, {"values", values}}));
  }
  return groups;
}

/// "all edges 6 cm": of a base edge and a lateral edge that are equal.
std::optional<Message> all_edges(const std::vector<Given>& givens, const std::set<std::string>& among) {
  std::vector<const Given*> edges;
  for (const Given& given : givens) {
    if (among.count(given.symbol.name) == 0) {
      continue;
    }
    const std::string word = " edge";
    const bool is_edge = given.title.size() > word.size() &&
                         given.title.compare(given.title.size() - word.size(), word.size(), word) == 0;
    if (!is_edge || (!edges.empty() && !(given.value == edges.front()->value))) {
      return std::nullopt;
    }
    edges.push_back(&given);
  }
  if (edges.size() < 2) {
    return std::nullopt;
  }
  return message("all edges {length}",
                 {{"length", as_written(*edges[0], edges[0]->value, std::max(edges[0]->places, places_of_values))}});
}

/// Decimals for a value that is to replace a label: enough to tell it from a whole number.
int places_for(const Given& given) { return std::max(given.places, given.is_fraction ? 2 : 1); }

/// "with base edge 6 cm and height 4 cm the slant height is 5 cm": what the givens `among` lead to.
Message led_to(const std::vector<Given>& givens, const std::set<std::string>& among, const Message& what) {
  const std::optional<Message> edges = all_edges(givens, among);
  const std::vector<Message> measures = edges ? std::vector{*edges} : listed(givens, among);
  return measures.empty() ? what : message("with {measures:and} {what}", {{"measures", measures}, {"what", what}});
}

}  // namespace

namespace {

/// "it is 5.12 cm, 2.4 % less": how far off is said of a whole number that is more than 1 % off.
Message beside(const Given& given, const Number& fitting, int places) {
  const Message value = as_written(given, fitting, places);
  if (given.places > 0 || given.is_fraction) {
    return message("it is {value}", {{"value", value}});
  }
  const Number part = (fitting - given.value) / given.value * whole(100);
  const Number size = part.sign() < 0 ? -part : part;
  const std::string percent = exact::shown(rounded(size, 1), 1).text;
  return size <= whole(1)  ? message("it is {value}", {{"value", value}})
         : part.sign() < 0 ? message("it is {value}, {percent}% less", {{"value", value}, {"percent", percent}})
                           : message("it is {value}, {percent}% more", {{"value", value}, {"percent", percent}});
}

/// Names the replacement as the nearest value, and its label as the one at fault.
void name_replacement(Fault& fault, const std::vector<Given>& givens, const std::optional<Replacement>& replacement) {
  if (replacement) {
    const Given& given = givens[replacement->given];
    fault.measure = given.measure;
    fault.nearest =
        said(value_words(replacement->value, given.symbol.dimension, given.unit, std::max(replacement->places, 1)));
  }
}

/// "; 4 cm would do", or "; a side of 4 cm would do" where another label than the subject is to be changed.
void add_what_would_do(Fault& fault, const Given* subject, const std::vector<Given>& givens,
                       const std::optional<Replacement>& replacement) {
  if (!replacement) {
    return;
  }
  name_replacement(fault, givens, replacement);
  const Given& changed = givens[replacement->given];
  const bool is_subject = subject != nullptr && subject->symbol == changed.symbol;
  fault.message = is_subject
                      ? message("{fault}; {value} would work", {{"fault", fault.message}, {"value", fault.nearest}})
                      : message("{fault}; it works with the {measure} {value}",
                                {{"fault", fault.message}, {"measure", Noun{changed.title}}, {"value", fault.nearest}});
}

}  // namespace

Fault disagreement(const Given& given, const Number& fitting, const std::vector<Given>& givens,
                   const std::set<std::string>& among, const std::optional<Replacement>& replacement) {
  // With rounded labels the value that fits them all may be a little beside the one that follows from them.
  const bool is_another =
      replacement && !(replacement->value == rounded(fitting * given.to_written, replacement->places));
  const Message right =
      is_another ? message("about {value}", {{"value", value_words(replacement->value, given.symbol.dimension,
                                                                   given.unit, replacement->places)}})
                 : as_written(given, fitting, places_for(given));
  const Message written = as_written(given, given.value, std::max(given.places, 2));
  Fault fault = impossible(given.measure,
                           led_to(givens, among,
                                  message("the {measure} is {right}, not {written}",
                                          {{"measure", Noun{given.title}}, {"right", right}, {"written", written}})));
  name_replacement(fault, givens, replacement);
  const bool is_whole = given.places == 0 && !given.is_fraction && !given.is_rounded;
  if (is_whole && rounded(fitting * given.to_written, 0) == given.value * given.to_written) {
    fault.message = message("{fault}; if {written} is a rounded label, add \"rounded\": true to the solid",
                            {{"fault", fault.message}, {"written", written}});
  }
  return fault;
}

Fault rounding_remark(const Given& given, const Number& fitting, const std::vector<Given>& givens,
                      const std::set<std::string>& among, bool loosely) {
  constexpr int most_places = 8;
  int places = std::max(given.places + 2, places_of_values);
  // Enough digits to see that the two differ.
  while (places < most_places && rounded(fitting * given.to_written, places) == given.value * given.to_written) {
    ++places;
  }
  const Noun measure{given.title};
  const Message written = as_written(given, given.value, places);
  const Message why = led_to(givens, among, beside(given, fitting, places));
  const Number nearest = rounded(fitting * given.to_written, places);
  return {Severity::Rounding, given.measure,
          loosely ? message("the {measure} {written} fits only if the other numbers are rounded too: {why}",
                            {{"measure", measure}, {"written", written}, {"why", why}})
                  : message("the {measure} {written} fits only as a rounded number: {why}",
                            {{"measure", measure}, {"written", written}, {"why", why}}),
          said(value_words(nearest, given.symbol.dimension, given.unit, places))};
}

namespace {

bool speaks_of(const algebra::Expression& expression, const std::string& name) {
  const std::vector<Symbol> symbols = algebra::symbols_of(expression);
  return std::any_of(symbols.begin(), symbols.end(), [&](const Symbol& symbol) { return symbol.name == name; });
}

int dimension_of(const algebra::Expression& side, const Condition& condition) {
  std::vector<Symbol> symbols = algebra::symbols_of(side);
  if (symbols.empty()) {
    symbols = algebra::symbols_of(condition.greater);
  }
  // Conditions compare lengths with lengths and areas with areas; 2·l·w is recognized by the other side.
  const std::vector<Symbol> other = algebra::symbols_of(condition.greater);
  return other.size() == 1 ? other[0].dimension : symbols.front().dimension;
}

}  // namespace

Fault broken_condition(const Condition& condition, const Bindings& values, const std::vector<Given>& givens,
                       const Unit& unit, const std::optional<Replacement>& replacement) {
  const Given* subject = given_with(givens, condition.subject);
  const bool subject_is_less = speaks_of(condition.less, condition.subject);
  const algebra::Expression& other = subject_is_less ? condition.greater : condition.less;
  const auto bound = algebra::evaluate(other, values);
  Message sentence = condition.sentence;
  const int places = subject == nullptr ? places_of_values : std::max(places_of_values, subject->places);
  if (bound) {
    const Message value = subject != nullptr ? as_written(*subject, *bound, places)
                                             : value_words(*bound, dimension_of(other, condition), unit, places);
    sentence = message("{sentence}, {value}", {{"sentence", sentence}, {"value", value}});
  }
  Fault fault = impossible(subject == nullptr ? condition.subject : subject->measure, sentence);
  add_what_would_do(fault, subject, givens, replacement);
  return fault;
}

Fault contradiction(const Symbol& unknown, const SolidStatement& statement, const std::vector<Given>& givens,
                    const std::optional<Replacement>& replacement) {
  const auto measure = std::find_if(statement.measures.begin(), statement.measures.end(),
                                    [&](const Measure& m) { return m.symbol == unknown; });
  const std::string title = measure != statement.measures.end() ? measure->title
                            : known_title(unknown.name).empty() ? with_spaces(unknown.name)
                                                                : known_title(unknown.name);
  std::set<std::string> all;
  for (const Given& given : givens) {
    all.insert(given.symbol.name);
  }
  Fault fault = impossible(givens.empty() ? "" : givens.back().measure,
                           led_to(givens, all, message("there is no {measure} that fits", {{"measure", Noun{title}}})));
  add_what_would_do(fault, nullptr, givens, replacement);
  return fault;
}

Fault not_positive(const Given& given) {
  Fault fault =
      impossible(given.measure, message("the {measure} must be more than 0", {{"measure", Noun{given.title}}}));
  fault.nearest = said(value_words(Number::whole(1) / power_of_ten(given.places), given.symbol.dimension, given.unit,
                                   std::max(given.places, 1)));
  return fault;
}

namespace {

/// Measures that a lesson could still give, each symbol once.
std::vector<Measure> open_measures(const Relations& relations, const Worked& worked) {
  std::vector<Measure> open;
  for (const Measure& measure : relations.statement().measures) {
    const bool is_listed =
        std::any_of(open.begin(), open.end(), [&](const Measure& m) { return m.symbol == measure.symbol; });
    if (!measure.key.empty() && worked.values.count(measure.symbol.name) == 0 && !is_listed) {
      open.push_back(measure);
    }
  }
  return open;
}

bool completes(const Relations& relations, const Worked& worked, const std::vector<const Measure*>& added) {
  SymbolSet known;
  for (const auto& entry : worked.values) {
    known.set(relations.slot(entry.first));
  }
  for (const Measure* measure : added) {
    known.set(relations.slot(measure->symbol.name));
  }
  return relations.closure(known) == relations.all();
}

/// All sets of `size` open measures that would complete the figure.
std::vector<std::vector<const Measure*>> completing_sets(const Relations& relations, const Worked& worked,
                                                         const std::vector<Measure>& open, std::size_t size) {
  std::vector<std::vector<const Measure*>> sets;
  std::vector<const Measure*> chosen;
  const std::function<void(std::size_t)> choose = [&](std::size_t first) {
    if (chosen.size() == size) {
      if (completes(relations, worked, chosen)) {
        sets.push_back(chosen);
      }
      return;
    }
    for (std::size_t i = first; i < open.size(); ++i) {
      chosen.push_back(&open[i]);
      choose(i + 1);
      chosen.pop_back();
    }
  };
  choose(0);
  return sets;
}

Message titles_of(const std::vector<const Measure*>& set) {
  std::vector<Message> titles;
  titles.reserve(set.size());
  for (const Measure* measure : set) {
    titles.push_back(message("the {measure}", {{"measure", Noun{measure->title}}}));
  }
  return message("{titles:and}", {{"titles", titles}});
}

}  // namespace

Fault missing_measures(const Relations& relations, const Worked& worked, const Unit& unit) {
  if (!worked.choices.empty()) {
    const auto& choice = *worked.choices.begin();
    const auto& all = relations.statement().measures;
    const auto measure =
        std::find_if(all.begin(), all.end(), [&](const Measure& m) { return m.symbol.name == choice.first; });
    std::vector<Message> values;
    for (const Number& value : choice.second) {
      values.push_back(value_words(value, 1, unit, places_of_values));
    }
    const std::string title = measure == all.end() ? with_spaces(choice.first) : measure->title;
    return missing(measure == all.end() ? "" : (measure->in_base ? "base." : "") + measure->key,
                   message("the {measure} can be {values:and}: one more measure is needed",
                           {{"measure", Noun{title}}, {"values", values}}));
  }
  const std::vector<Measure> open = open_measures(relations, worked);
  for (std::size_t size = 1; size <= std::min<std::size_t>(open.size(), 3); ++size) {
    const auto sets = completing_sets(relations, worked, open, size);
    if (sets.empty()) {
      continue;
    }
    std::vector<Message> words;
    words.reserve(sets.size());
    for (const auto& set : sets) {
      words.push_back(titles_of(set));
    }
    constexpr std::size_t most_listed = 4;
    words.resize(std::min(words.size(), most_listed));
    const Measure& first = *sets.front().front();
    return missing((first.in_base ? "base." : "") + first.key,
                   size == 1 ? message("{measures:or} is needed", {{"measures", words}})
                             : message("{sets:, or} are needed", {{"sets", words}}));
  }
  return missing("", message("more measures are needed"));
}

}  // namespace fw::solids
