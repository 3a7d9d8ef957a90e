#include <algorithm>
#include <tuple>

#include "base/listing.hpp"
#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "reasoning/nouns.hpp"
#include "reasoning/tasks/task_parts.hpp"

// How many items fit into a solid in rows, all the same way round.
namespace fw::reasoning {
namespace {

using exact::Number;
using lessons::Packing;

constexpr std::array<const char*, 3> edge_names{"length", "width", "height"};

std::string length_text(const Number& length, const units::Unit& unit, int places) {
  const exact::Shown shown = shown_apart(length, places);
  return (shown.exact ? "" : "about ") + shown.text + " " + unit.text();
}

// The item's edges in the solid's unit, where it is written in another.
void convert_item(const lessons::Problem& problem, TaskSheet& sheet) {
  const lessons::ItemBox& box = *problem.supply->box;
  std::vector<Number> done;
  for (const units::WrittenQuantity* edge : {&box.length, &box.width, &box.height}) {
    const bool is_done = std::find(done.begin(), done.end(), edge->number.value) != done.end();
    if (!(edge->unit == problem.solid.unit()) && !is_done) {
      done.push_back(edge->number.value);
      const SupplyNumber written = sheet.number(edge->number.value, edge->unit, Source::Kind::Known,
                                                "an edge of one " + problem.supply->item, edge->number.text);
      std::ignore = converted(sheet.steps(), written, problem.solid.unit());
    }
  }
}

SupplyNumber write_row(const lessons::Problem& problem, const Packing& way, std::size_t edge, TaskSheet& sheet) {
  const units::Unit unit = problem.solid.unit();
  const std::string& item = problem.supply->item;
  const Number quotient = way.edges[edge] / way.item[edge];
  const std::string rows = std::to_string(way.rows[edge]);
  const std::string along = "Along the " + std::string(edge_names[edge]) + ": how many whole ones fit? ";
  const SupplyNumber whole = sheet.number(way.edges[edge], unit, Source::Kind::Label,
                                          "the " + std::string(edge_names[edge]) + " of the solid");
  const SupplyNumber each =
      sheet.number(way.item[edge], unit, Source::Kind::Known, "the edge of one " + item + " that lies along it");
  const Number rest = way.edges[edge] - Number::whole(way.rows[edge]) * way.item[edge];
  const std::string left =
      rest.is_zero() ? rows + ", and nothing is left." : rows + ", and " + length_text(rest, unit, 2) + " stays empty.";
  const algebra::Notation division = algebra::row(
      {sheet.steps().notation(whole), algebra::leaf(algebra::Notation::Kind::Sign, "÷"), sheet.steps().notation(each)});
  std::ignore =
      sheet.steps().state(StepKind::Count, along + sentence_case(left), division, true, {quotient, {}, {}, ""});
  return sheet.number(Number::whole(way.rows[edge]), std::nullopt, Source::Kind::EarlierStep,
                      "how many fit along the " + std::string(edge_names[edge]));
}

// "10 cm × 8 cm × 7 cm".
std::string edges_text(const std::array<Number, 3>& edges, const units::Unit& unit) {
  std::string text;
  for (const Number& edge : edges) {
    text += (text.empty() ? "" : " × ") + length_text(edge, unit, 2);
  }
  return text;
}

void tell_other_ways(const lessons::Problem& problem, const std::vector<Packing>& ways, TaskSheet& sheet) {
  if (ways.size() == 1) {
    sheet.steps().say(StepKind::Count, "All edges of one " + problem.supply->item +
                                           " are equal: turning it changes "
                                           "nothing.");
    return;
  }
  std::vector<std::string> others;
  for (std::size_t i = 1; i < ways.size(); ++i) {
    others.push_back(std::to_string(ways[i].count));
  }
  sheet.steps().say(StepKind::Count, "Turn it and count again: the other " +
                                         (ways.size() == 2 ? std::string("way round holds ") : "ways round hold ") +
                                         joined_with_and(others) + ".");
}

// Dividing the volumes says too much where slivers stay empty.
void compare_volumes(const lessons::Problem& problem, const Packing& best, TaskSheet& sheet) {
  const units::Unit unit = problem.solid.unit().to_the(3);
  const Number all = best.edges[0] * best.edges[1] * best.edges[2];
  const Number each = best.item[0] * best.item[1] * best.item[2];
  const Number quotient = all / each;
  const std::string reason = exact::floor(quotient) > Number::whole(best.count)
                                 ? "The volumes alone say too much: what stays empty at the edges cannot be joined."
                                 : "The volumes say the same here, since no room for another one is lost.";
  sheet.steps().work_out(
      StepKind::Check, reason, sheet.number(all, unit, Source::Kind::EarlierStep, "the volume of the solid"), "÷",
      sheet.number(each, unit, Source::Kind::EarlierStep, "the volume of one " + problem.supply->item),
      {quotient, {}, {}, ""});
}

}  // namespace

TaskWork packing_work(const lessons::Problem& problem, int places) {
  const std::vector<Packing> ways = lessons::packings(problem);
  const Packing& best = ways.front();
  const std::string& item = problem.supply->item;
  TaskSheet sheet(places);
  sheet.steps().say(StepKind::Ask, "Asked is a count: how many " + plural(item) +
                                       ", all the same way round, fit into " +
                                       edges_text(best.edges, problem.solid.unit()) + ".");
  convert_item(problem, sheet);
  if (best.count > 0) {
    sheet.steps().say(StepKind::Name, "Lay one with " + edges_text(best.item, problem.solid.unit()) +
                                          " along the length, the width and the height.");
    const SupplyNumber row = write_row(problem, best, 0, sheet);
    const SupplyNumber rows = write_row(problem, best, 1, sheet);
    const SupplyNumber layers = write_row(problem, best, 2, sheet);
    std::ignore = sheet.multiply("Multiply: how many in a row, how many rows, how many layers.", {row, rows, layers},
                                 {Number::whole(best.count), {}, {}, ""});
    tell_other_ways(problem, ways, sheet);
    compare_volumes(problem, best, sheet);
  }
  const std::string count = counted(std::to_string(best.count), item);
  TaskWork task{"count", "", "", "number that fit", {}, {}, Outcome{Number::whole(best.count), std::nullopt}, 0, count};
  return std::move(sheet).finished(std::move(task), count + (best.count == 1 ? " fits." : " fit."));
}

}  // namespace fw::reasoning
