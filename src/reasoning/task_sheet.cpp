#include "reasoning/task_sheet.hpp"

#include <algorithm>

#include "reasoning/phrases.hpp"

namespace fw::reasoning {

using algebra::Notation;

std::string title_named(const solids::Solid& solid, const std::string& find) {
  const auto symbol = measure_named(solid, find);
  return symbol ? title_of(solid, *symbol) : find;
}

SupplyNumber TaskSheet::number(const exact::Number& value, const std::optional<units::Unit>& unit, Source::Kind kind,
                               const Message& sentence, const std::string& text) {
  return {value, unit, steps_.add_source(kind, sentence), text};
}

SupplyNumber TaskSheet::multiply(const Message& reason, const std::vector<SupplyNumber>& factors, SupplyNumber result) {
  std::vector<Notation> parts;
  exact::Number printed = exact::Number::whole(1);
  for (const SupplyNumber& factor : factors) {
    if (!parts.empty()) {
      parts.push_back(sign("×"));
    }
    parts.push_back(steps_.notation(factor));
    printed = printed * steps_.as_printed(factor);
  }
  SupplyNumber shown =
      steps_.state_worked(StepKind::Count, reason, algebra::row(std::move(parts)), printed, std::move(result));
  if (factors.size() == 2) {
    steps_.add_aside(aside_of(steps_.as_printed(factors[0]), "×", steps_.as_printed(factors[1]), steps_.places()));
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

}  // namespace fw::reasoning
