#include "reasoning/explanation.hpp"

#include <algorithm>

#include "lessons/open_faces.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/worksheet.hpp"

namespace fw::reasoning {
namespace {

Explanation without_steps(const lessons::Problem& problem, const std::string& find) {
  return {find, Worksheet(problem.solid).finished(find, find, {}), std::nullopt, std::nullopt, ""};
}

// What is told by looking at the solid: nothing to work out of its measures.
Explanation looked_at(const lessons::Problem& problem, const std::string& find) {
  Explanation explanation = without_steps(problem, find);
  explanation.task = looking_work(problem.solid, find);
  explanation.answer = explanation.task->answer;
  return explanation;
}

// A task with the measure that it rests on. Where no formula leads to this measure, the task tells its value.
Explanation task_explained(const lessons::Problem& problem, const std::string& find, const SolutionOptions& options) {
  TaskWork task = *task_work(problem, options.places, find);
  auto solution = worked_solution(problem.solid, task.measure, options);
  Explanation explanation = without_steps(problem, task.task == "copy" ? find : task.task);
  if (!task.measure.empty() && solution) {
    explanation.solution = std::move(solution).value();
  } else {
    Worksheet sheet(problem.solid);
    sheet.say(StepKind::Name, name_sentence(problem.solid));
    explanation.solution.steps = std::move(sheet.steps());
  }
  explanation.answer = task.answer;
  explanation.task = std::move(task);
  return explanation;
}

std::string indented(const std::string& text, std::size_t by) {
  std::string result;
  std::size_t begin = 0;
  while (begin < text.size()) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    result += std::string(by, ' ') + text.substr(begin, end - begin) + '\n';
    begin = end + 1;
  }
  return result;
}

}  // namespace

std::vector<Step> all_steps(const Explanation& explanation) {
  std::vector<Step> steps = explanation.solution.steps;
  if (explanation.task) {
    const std::vector<Step>& task = explanation.task->steps;
    const auto measured = task.begin() + static_cast<std::ptrdiff_t>(explanation.task->lead);
    steps.insert(steps.end(), measured, task.end());
    steps.insert(steps.begin(), task.begin(), measured);
  }
  if (!explanation.packs) {
    return steps;
  }
  const SupplyWork& packs = *explanation.packs;
  Step decision;
  decision.kind = StepKind::Ask;
  decision.reason = packs.decision.sentence;
  steps.insert(steps.begin(), decision);
  const bool is_no_measure = explanation.solution.values.empty();
  if (packs.amount_step && is_no_measure) {
    steps.push_back(*packs.amount_step);
  }
  steps.insert(steps.end(), packs.steps.begin(), packs.steps.end());
  return steps;
}

std::string steps_text(const std::vector<Step>& steps) {
  constexpr std::size_t line_indent = 10;
  constexpr std::size_t aside_indent = 14;
  std::string text;
  std::size_t number = 0;
  for (const Step& step : steps) {
    ++number;
    text += std::string(number < 10 ? 3 : 2, ' ') + std::to_string(number) + ". " + step.reason + '\n';
    if (step.line) {
      text += std::string(line_indent, ' ') + algebra::plain_text(*step.line) + '\n';
    }
    for (const exact::ColumnWork& aside : step.asides) {
      text += indented(exact::plain_text(aside), aside_indent);
    }
  }
  return text;
}

Result<std::vector<Explanation>, std::string> explained(const lessons::Problem& problem,
                                                        const SolutionOptions& options) {
  SolutionOptions with_open = options;
  with_open.open = lessons::open_faces(problem);
  const std::optional<SupplyWork> packs = supply_work(problem, options.places);
  std::vector<Explanation> all;
  bool packs_told = false;
  const std::string task = task_of(problem);
  if (task == "count" || task == "claim" || task == "lengths") {
    all.push_back(task_explained(problem, task, with_open));
  }
  for (const std::string& find : problem.find) {
    const bool is_task = task == "mistake" || task == "interval" || problem.scale || find == task;
    if (is_task) {
      all.push_back(task_explained(problem, find, with_open));
      continue;
    }
    if (is_looked_at(find)) {
      all.push_back(looked_at(problem, find));
      continue;
    }
    with_open.unit = options.unit ? options.unit : problem.unit;
    auto solution = worked_solution(problem.solid, find, with_open);
    if (!solution) {
      return failure(solution.error());
    }
    Explanation explanation{find, std::move(solution).value(), std::nullopt, std::nullopt, ""};
    explanation.answer = explanation.solution.answer.text;
    if (packs && problem.supply->measure == find) {
      explanation.packs = packs;
      packs_told = true;
    }
    all.push_back(std::move(explanation));
  }
  const bool is_judged_only = problem.supply && task == "purpose" && !problem.supply->each;
  if (packs && !packs_told &&
      !is_judged_only) {  // an amount that is no measure of the solid, as all its edges together
    Worksheet sheet(problem.solid);
    sheet.say(StepKind::Name, name_sentence(problem.solid));
    all.push_back({problem.supply->measure, std::move(sheet).finished(problem.supply->measure, packs->title, {}), packs,
                   std::nullopt, amount_text(packs->amount, options.places)});
  }
  for (Explanation& one : all) {
    if (one.packs && one.packs->answer) {
      one.answer = one.packs->answer->text;
    }
  }
  return all;
}

}  // namespace fw::reasoning
