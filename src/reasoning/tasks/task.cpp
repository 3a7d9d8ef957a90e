#include "reasoning/tasks/task.hpp"

#include <algorithm>

#include "reasoning/nouns.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/tasks/task_parts.hpp"

namespace fw::reasoning {
namespace {

using algebra::Notation;

}  // namespace

std::string title_named(const lessons::Problem& problem, const std::string& find) {
  const auto symbol = measure_named(problem.solid, find);
  return symbol ? title_of(problem.solid, *symbol) : find;
}

SupplyNumber TaskSheet::number(const exact::Number& value, const std::optional<units::Unit>& unit, Source::Kind kind,
                               const Message& sentence, const std::string& text) {
  return {value, unit, steps_.add_source(kind, sentence), text};
}

SupplyNumber TaskSheet::multiply(const Message& reason, const std::vector<SupplyNumber>& factors, SupplyNumber result) {
  std::vector<Notation> parts;
  bool exact = true;
  for (const SupplyNumber& factor : factors) {
    if (!parts.empty()) {
      parts.push_back(sign("×"));
    }
    parts.push_back(steps_.notation(factor));
    exact = exact && (!factor.text.empty() || shown_apart(factor.value, steps_.places()).exact);
  }
  const SupplyNumber shown =
      steps_.state(StepKind::Count, reason, algebra::row(std::move(parts)), exact, std::move(result));
  if (factors.size() == 2 && exact) {
    steps_.add_aside(aside_of(factors[0].value, "×", factors[1].value, steps_.places()));
  }
  return shown;
}

algebra::Notation sign(const char* text) { return algebra::leaf(Notation::Kind::Sign, text); }

TaskWork TaskSheet::finished(TaskWork task, const Message& sentence) && {
  steps_.say(StepKind::Answer, sentence).outcome = task.outcome;
  task.steps = std::move(work_.steps);
  const bool asks = task.steps.front().kind == StepKind::Ask;
  task.lead = std::max(task.lead, asks ? std::size_t{1} : std::size_t{0});
  task.sources = std::move(work_.sources);
  return task;
}

std::string task_of(const lessons::Problem& problem) {
  const std::string asked = problem.find.empty() ? "" : problem.find.front();
  if (problem.scale) {
    return asked == "scale" ? "scale" : "copy";
  }
  const bool compares = asked == "same_number" || asked == "least_surface";
  if (compares || (problem.supply && asked == "purpose")) {
    return asked;
  }
  return problem.supply && problem.supply->box ? "count"
         : problem.claim                       ? "claim"
         : problem.face                        ? "lengths"
         : problem.wrong                       ? "mistake"
         : !problem.between.empty()            ? "interval"
                                               : "";
}

std::optional<TaskWork> task_work(const lessons::Problem& problem, int places, const std::string& find) {
  const std::string task = task_of(problem);
  if (task.empty()) {
    return std::nullopt;
  }
  return task == "count"           ? packing_work(problem, places)
         : task == "scale"         ? factor_work(problem, places)
         : task == "copy"          ? copy_work(problem, places, find.empty() ? problem.find.front() : find)
         : task == "claim"         ? claim_work(problem, places)
         : task == "mistake"       ? mistake_work(problem, places)
         : task == "interval"      ? interval_work(problem, places)
         : task == "lengths"       ? face_lengths_work(problem)
         : task == "same_number"   ? same_number_work(problem)
         : task == "least_surface" ? least_surface_work(problem)
                                   : purpose_work(problem);
}

std::string purpose_of(const lessons::Supply& supply) {
  return supply.purpose == "cover" && supply.measure == "base_area" ? "one face" : supply.purpose;
}

TaskWork purpose_work(const lessons::Problem& problem) {
  const lessons::Supply& supply = *problem.supply;
  const std::string purpose = purpose_of(supply);
  const std::string thing = supply.item.empty() ? "What is asked for" : sentence_case(one(supply.item));
  TaskSheet sheet(2);
  sheet.steps().say(StepKind::Ask, "Nothing is worked out yet: is an area, a space or a length needed?");
  sheet.steps().say(StepKind::Name,
                    purpose == "one face" ? thing + " lies on a single face, so one area is enough, in square units."
                    : purpose == "cover"  ? thing + " covers faces, so their areas are added up, in square units."
                    : purpose == "fill"   ? thing + " fills the space inside, so a volume is needed, in cubic units."
                                          : thing + " runs along edges, so a length is needed.");
  return std::move(sheet).finished({"purpose", "", "", "kind of measure", {}, {}, std::nullopt, 0, purpose},
                                   "It is a question of: " + purpose + ".");
}

}  // namespace fw::reasoning
