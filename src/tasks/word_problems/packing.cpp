#include "tasks/word_problems/packing.hpp"

#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/word_problems/supply_text.hpp"
#include "units/write_quantity.hpp"

namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::Fact;
using practice::Hint;
using practice::ItemBox;
using reasoning::Outcome;
using reasoning::shown_apart;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;
using Turned = practice::Packing;

// ---- read ----

// Whether rows of the item fit into the solid.
bool fits(const JsonNode& node, const SupplyText& supply, const solids::Solid& solid, const Context& context) {
  if (supply.terms.measure != "volume") {
    context.at("pack").fault(*node.find("pack"), message("{measure} can't be packed: write \"volume\"",
                                                         {{"measure", in_quotes(supply.terms.measure)}}));
    return false;
  }
  if (!lessons::edges_of_box(solid)) {
    context.at("pack").fault(*node.find("pack"), message("{solid:a} has no length, width and height, so nothing can be "
                                                         "packed into it in rows: use a solid that has all three",
                                                         {{"solid", Noun{solid.name()}}}));
    return false;
  }
  const JsonNode& box = *node.find("box");
  for (const auto& [key, edge] : {std::pair("length", &supply.box->length), std::pair("width", &supply.box->width),
                                  std::pair("height", &supply.box->height)}) {
    if (!edge->unit.converts_to(solid.unit())) {
      context.at("box").at(key).fault(*box.find(key), not_comparable(*edge, solid));
      return false;
    }
  }
  constexpr long long most = 1'000'000;
  const long long count = practice::packings(solid, *supply.box).front().count;
  if (count == 0) {
    context.at("box").fault(box, message("not even one {item} fits into this solid: make the item smaller",
                                         {{"item", Noun{supply.terms.item}}}));
  } else if (count > most) {
    context.at("box").fault(box, message("more than a million of them fit into this solid: make the item larger"));
  }
  return count > 0 && count <= most;
}

// ---- worked ----

constexpr std::array<const char*, 3> edge_names{"length", "width", "height"};

Message packed_length(const Number& length, const units::Unit& unit) {
  return reasoning::about(shown_apart(length, 2), unit.text());
}

// The item's edges in the solid's unit, where it is written in another.
void convert_item(const Problem& problem, const Packing& task, TaskSheet& sheet) {
  const ItemBox& box = task.box();
  std::vector<Number> done;
  for (const units::WrittenQuantity* edge : {&box.length, &box.width, &box.height}) {
    const bool is_done = std::find(done.begin(), done.end(), edge->number.value) != done.end();
    if (!(edge->unit == problem.solid.unit()) && !is_done) {
      done.push_back(edge->number.value);
      const SupplyNumber written =
          sheet.number(edge->number.value, edge->unit, Source::Kind::Known,
                       message("an edge of one {item}", {{"item", Noun{task.item()}}}), edge->number.text);
      std::ignore = converted(sheet.steps(), written, problem.solid.unit());
    }
  }
}

SupplyNumber write_row(const Problem& problem, const Packing& task, const Turned& way, std::size_t edge,
                       TaskSheet& sheet) {
  const units::Unit unit = problem.solid.unit();
  const Noun name{edge_names[edge]};
  const Number quotient = way.edges[edge] / way.item[edge];
  const Message along = message("Along the {edge}: how many whole ones fit?", {{"edge", name}});
  const SupplyNumber whole =
      sheet.number(way.edges[edge], unit, Source::Kind::Label, message("the {edge} of the solid", {{"edge", name}}));
  const SupplyNumber each =
      sheet.number(way.item[edge], unit, Source::Kind::Known,
                   message("the edge of one {item} that lies along it", {{"item", Noun{task.item()}}}));
  const Number rest = way.edges[edge] - Number::whole(way.rows[edge]) * way.item[edge];
  const words::Value rows = way.rows[edge];
  const Message left = rest.is_zero() ? message("{rows}, with nothing left over.", {{"rows", rows}})
                                      : message("{rows}, and {rest} stays empty.",
                                                {{"rows", rows}, {"rest", packed_length(rest, unit)}});
  const algebra::Notation division = algebra::row(
      {sheet.steps().notation(whole), algebra::leaf(algebra::Notation::Kind::Sign, "÷"), sheet.steps().notation(each)});
  std::ignore = sheet.steps().state(StepKind::Count, words::one_after_another({along, left}), division, true,
                                    {quotient, {}, {}, ""});
  return sheet.number(Number::whole(way.rows[edge]), std::nullopt, Source::Kind::EarlierStep,
                      message("how many fit along the {edge}", {{"edge", name}}));
}

// "10 cm × 8 cm × 7 cm".
Message packed_edges(const std::array<Number, 3>& edges, const units::Unit& unit) {
  return message("{length} × {width} × {height}", {{"length", packed_length(edges[0], unit)},
                                                   {"width", packed_length(edges[1], unit)},
                                                   {"height", packed_length(edges[2], unit)}});
}

void tell_other_ways(const std::string& item, const std::vector<Turned>& ways, TaskSheet& sheet) {
  if (ways.size() == 1) {
    sheet.steps().say(StepKind::Count, message("All the edges of the {item} are equal, so turning it changes nothing.",
                                               {{"item", Noun{item}}}));
    return;
  }
  std::vector<long long> others;
  for (std::size_t i = 1; i < ways.size(); ++i) {
    others.push_back(ways[i].count);
  }
  sheet.steps().say(StepKind::Count,
                    others.size() == 1
                        ? message("Turn it and count again. The other way holds {counts:and}.", {{"counts", others}})
                        : message("Turn it and count again. The other ways hold {counts:and}.", {{"counts", others}}));
}

// Dividing the volumes says too much where slivers stay empty.
void compare_volumes(const Problem& problem, const std::string& item, const Turned& best, TaskSheet& sheet) {
  const units::Unit unit = problem.solid.unit().to_the(3);
  const Number all = best.edges[0] * best.edges[1] * best.edges[2];
  const Number each = best.item[0] * best.item[1] * best.item[2];
  const Number quotient = all / each;
  const Message reason =
      exact::floor(quotient) > Number::whole(best.count)
          ? message("Dividing the volumes gives too many. The empty space at the edges can't be put together.")
          : message("Dividing the volumes gives the same number here, because no space is wasted.");
  const SupplyNumber of_solid = sheet.number(all, unit, Source::Kind::EarlierStep, message("the volume of the solid"));
  const SupplyNumber of_item =
      sheet.number(each, unit, Source::Kind::EarlierStep, message("the volume of one {item}", {{"item", Noun{item}}}));
  sheet.steps().work_out(StepKind::Check, reason, of_solid, "÷", of_item, {quotient, {}, {}, ""});
}

// ---- made up ----

// Whether dividing the volumes says too much, and they can be counted.
bool is_good_packing(const Problem& problem, const ItemBox& box) {
  const Turned best = practice::packings(problem.solid, box).front();
  Number quotient = Number::whole(1);
  for (std::size_t edge = 0; edge < best.edges.size(); ++edge) {
    quotient = quotient * best.edges[edge] / best.item[edge];
  }
  return best.count >= 4 && best.count <= 90 && exact::floor(quotient) > Number::whole(best.count);
}

bool is_packed(const Subject& subject) { return is_box(subject) && !subject.thing->packs.empty(); }
// Level 2: cubes, so that turning them changes nothing. Level 3: boxes, which can be turned.
std::optional<Problem> made_packing(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = made_problem(blueprint.draw(seed, Labels::ForVolume), "");
  if (!problem) {
    return std::nullopt;
  }
  std::vector<Task> fitting;
  for (const PackedItem& item : packed_items()) {
    const bool has_equal_edges = item.edges[0] == item.edges[1] && item.edges[1] == item.edges[2];
    const std::vector<std::string>& names = blueprint.thing().packs;
    const bool goes_in = std::find(names.begin(), names.end(), item.name) != names.end();
    if (!goes_in || item.unit != blueprint.unit() || has_equal_edges != (blueprint.level < 3)) {
      continue;
    }
    std::vector<units::WrittenQuantity> edges;
    for (const int edge : item.edges) {
      edges.push_back(units::written_whole(edge, problem->solid.unit()));
    }
    const ItemBox box{edges[0], edges[1], edges[2]};
    if (is_good_packing(*problem, box)) {
      fitting.emplace_back(Packing(item.name, box));
    }
  }
  if (fitting.empty()) {
    return std::nullopt;
  }
  problem->tasks = {fitting[blueprint.trap % fitting.size()]};
  const Packing& task = *practice::task_as<Packing>(*problem);
  const auto said = [](const units::WrittenQuantity& edge) { return said_quantity(edge); };
  problem->prompt =
      told({"Each {item} is {l} by {w} by {h}. What is the greatest number that {who} can pack into {a thing} if all "
            "face the "
            "same way?",
            "One {item} is {l} by {w} by {h}. If all face the same way, how many fit in {a thing} at most?",
            "{Who} fills {a thing} with {items} that are {l} by {w} by {h}. What is the greatest number that fit if "
            "all face "
            "the same way?"},
           blueprint,
           {{"item", task.item()},
            {"items", plural_of(task.item())},
            {"l", said(task.box().length)},
            {"w", said(task.box().width)},
            {"h", said(task.box().height)}});
  return problem;
}

}  // namespace

std::optional<ItemBox> read_item_box(const JsonNode& node, const std::string& item, const Context& context) {
  for (const char* key : {"each", "round", "price", "coats"}) {
    if (const JsonNode* part = node.find(key)) {
      context.at(key).fault(*part, message("{key} does not go with \"pack\": whole items are counted along each edge",
                                           {{"key", in_quotes(key)}}));
    }
  }
  if (item.empty()) {
    context.fault(node, message("a supply that packs also says what is packed: \"item\": \"candle\""));
  }
  const JsonNode* box = node.find("box");
  if (box == nullptr || !box->is(JsonNode::Kind::Object)) {
    context.fault(box == nullptr ? node : *box,
                  message("a supply that packs says how large one item is: \"box\": {example}",
                          {{"example", R"({"length": "5 cm", "width": "3 cm", "height": "2 cm"})"}}));
    return std::nullopt;
  }
  check_keys(*box, {"length", "width", "height"}, "\"box\"", context);
  std::vector<units::WrittenQuantity> edges;
  for (const char* key : {"length", "width", "height"}) {
    const Context here = context.at("box").at(key);
    const JsonNode* edge = box->find(key);
    if (edge == nullptr) {
      here.fault(*box, message("the key {key} of what is packed is missing: write a length such as \"5 cm\"",
                               {{"key", in_quotes(key)}}));
    } else if (const auto quantity = read_quantity(*edge, 1, here)) {
      edges.push_back(*quantity);
    }
  }
  return edges.size() == 3 ? std::optional(ItemBox{edges[0], edges[1], edges[2]}) : std::nullopt;
}

std::vector<Task> read_packing(const JsonNode& node, const SupplyText& supply, const TaskText& text) {
  return fits(node, supply, text.problem.solid, text.context)
             ? std::vector<Task>{Packing(supply.terms.item, *supply.box)}
             : std::vector<Task>{};
}

void Packing::write(Members& members) const {
  members.emplace_back(
      "supply",
      lessons::object_in_line({{"pack", lessons::quote("volume")},
                               {"item", lessons::quote(item_)},
                               {"box", lessons::object_in_line({{"length", lessons::quote(box_.length.text)},
                                                                {"width", lessons::quote(box_.width.text)},
                                                                {"height", lessons::quote(box_.height.text)}})}}));
}

Result<Question, words::Message> Packing::question(const Problem& problem) const {
  Question question;
  question.find = key();
  question.asked = Asked::Packed;
  question.item = item_;
  question.first_step = message("Start with one row. How many whole ones fit along the length?");
  question.ways = practice::packings(problem.solid, box_);
  question.truth = Number::whole(question.ways.front().count);
  return question;
}

std::vector<Fact> Packing::facts(const Problem&) const {
  return {{box_.length.number.text, message("One {item} is {length} long, {width} wide and {height} high.",
                                            {{"item", Noun{item_}},
                                             {"length", practice::value_of(box_.length)},
                                             {"width", practice::value_of(box_.width)},
                                             {"height", practice::value_of(box_.height)}})}};
}

Result<Explanation, words::Message> Packing::explained(const Problem& problem, const SolutionOptions& options) const {
  return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
}

Result<std::vector<Hint>, words::Message> Packing::hints(const Problem& problem,
                                                         const reasoning::ClassNotation&) const {
  return practice::hints_to_task(*work(problem, 2));
}

std::optional<TaskWork> Packing::work(const Problem& problem, int places) const {
  const std::vector<Turned> ways = practice::packings(problem.solid, box_);
  const Turned& best = ways.front();
  TaskSheet sheet(places);
  const Noun item{item_};
  sheet.steps().say(StepKind::Ask,
                    message("Find how many {item:s} fit into {edges} if they all face the same way.",
                            {{"item", item}, {"edges", packed_edges(best.edges, problem.solid.unit())}}));
  convert_item(problem, *this, sheet);
  if (best.count > 0) {
    sheet.steps().say(StepKind::Name, message("Lay each one with {edges} along the length, the width and the height.",
                                              {{"edges", packed_edges(best.item, problem.solid.unit())}}));
    const SupplyNumber row = write_row(problem, *this, best, 0, sheet);
    const SupplyNumber rows = write_row(problem, *this, best, 1, sheet);
    const SupplyNumber layers = write_row(problem, *this, best, 2, sheet);
    std::ignore = sheet.multiply(message("Multiply: how many in a row, how many rows, how many layers."),
                                 {row, rows, layers}, {Number::whole(best.count), {}, {}, ""});
    tell_other_ways(item_, ways, sheet);
    compare_volumes(problem, item_, best, sheet);
  }
  const Message count = message("{count} {item#count}", {{"count", best.count}, {"item", item}});
  const Outcome outcome{Number::whole(best.count), std::nullopt};
  return std::move(sheet).finished({key(), "", {}, message("number that fit"), {}, {}, outcome, 0, count},
                                   message("{counted} {count:fits|fit}.", {{"counted", count}, {"count", best.count}}));
}

namespace row {
Row packing() {
  Row row{"packing"};
  row.made = {{24, "pack", "packing a box", practice::Heading::WordProblems, 2, "pack", is_packed, made_packing}};
  row.examples = {
      R"("solid": {"kind": "rectangular prism", "length": "16 cm", "width": "12 cm", "height": "11 cm"},
         "supply": {"pack": "volume", "item": "tea", "box": {"length": "5 cm", "width": "4 cm", "height": "30 mm"}})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
