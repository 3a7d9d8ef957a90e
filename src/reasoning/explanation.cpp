#include "reasoning/explanation.hpp"

#include <algorithm>

#include "lessons/open_faces.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/worksheet.hpp"

namespace fw::reasoning {
namespace {

/// The solid by its name, for what is not worked out of its measures.
Solution name_alone(const lessons::Problem& problem, const std::string& asked, const std::string& title) {
  Worksheet sheet(problem.solid);
  sheet.say(StepKind::Name, name_sentence(problem.solid));
  return std::move(sheet).finished(asked, title, {});
}

/// What is told by looking at the solid: nothing to work out of its measures.
Explanation looked_at(const lessons::Problem& problem, const std::string& find) {
  TaskWork look = looking_work(problem.solid, find);
  std::string answer = look.answer;
  return {find, Worksheet(problem.solid).finished(find, find, {}), {}, std::move(look), std::move(answer), {}};
}

/// A task with the measure that it rests on. Where no formula leads to this measure, the task tells its value.
Explanation task_explained(const lessons::Problem& problem, const std::string& find, const SolutionOptions& options) {
  TaskWork task = *task_work(problem, options.places, find);
  auto solution = worked_solution(problem.solid, task.measure, options);
  const std::string key = task.task == "copy" ? find : task.task;
  const bool is_worked = !task.measure.empty() && solution;
  std::string answer = task.answer;
  return {key,
          is_worked ? std::move(solution).value() : name_alone(problem, key, key),
          {},
          std::move(task),
          std::move(answer),
          {}};
}

Explanation with_count(Explanation explanation, SupplyWork packs) {
  explanation.answer = packs.answer ? packs.answer->text : explanation.answer;
  explanation.packs = std::move(packs);
  return explanation;
}

Explanation amount_explained(const lessons::Problem& problem, const std::string& find, const SolutionOptions& options) {
  SupplyWork packs = *supply_work(problem, options.places);
  const std::string amount = amount_text(packs.amount, options.places);
  Explanation explanation{find, name_alone(problem, find, packs.title), {}, {}, amount, {}};
  return with_count(std::move(explanation), std::move(packs));
}

Result<Explanation, std::string> measure_explained(const lessons::Problem& problem, const std::string& find,
                                                   const SolutionOptions& options) {
  auto solution = worked_solution(problem.solid, find, options);
  if (!solution) {
    return failure(solution.error());
  }
  Explanation explanation{find, std::move(solution).value(), {}, {}, "", {}};
  explanation.answer = explanation.solution.answer.text;
  auto packs = problem.supply && problem.supply->measure == find ? supply_work(problem, options.places) : std::nullopt;
  return packs ? with_count(std::move(explanation), std::move(*packs)) : std::move(explanation);
}

/// Parts one after another, those without steps left out.
class Parts {
 public:
  void add(std::string title, std::vector<Step> steps, std::vector<Source> sources = {},
           algebra::Bindings values = {}) {
    if (steps.empty()) {
      return;
    }
    const std::size_t first = count_;
    count_ += steps.size();
    parts_.push_back({std::move(title), std::move(steps), std::move(sources), std::move(values), first, false});
  }

  void add_solution(std::string title, const Solution& solution) {
    std::vector<Source> sources = solution.sources;
    for (Source& source : sources) {
      source.sentence = source.step ? worked_out_in(count_ + *source.step) : source.sentence;
    }
    add(std::move(title), solution.steps, std::move(sources), solution.values);
  }

  /// Those of the steps from `begin` up to `end`; numbers from other steps come without their step.
  void add_some(std::string title, const std::vector<Step>& steps, std::size_t begin, std::size_t end,
                std::vector<Source> sources) {
    for (Source& source : sources) {
      const bool is_inside = source.step && *source.step >= begin && *source.step < end;
      source.step = is_inside ? std::optional(*source.step - begin) : std::nullopt;
    }
    const auto at = [&](std::size_t step) { return steps.begin() + static_cast<std::ptrdiff_t>(step); };
    add(std::move(title), {at(begin), at(end)}, std::move(sources));
  }

  [[nodiscard]] WorkPart& last() { return parts_.back(); }
  [[nodiscard]] std::vector<WorkPart> done() && { return std::move(parts_); }

 private:
  std::vector<WorkPart> parts_;
  std::size_t count_ = 0;
};

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

std::vector<WorkPart> parts_of(const Explanation& explanation) {
  const std::optional<TaskWork>& task = explanation.task;
  const std::optional<SupplyWork>& packs = explanation.packs;
  Parts parts;
  if (packs) {
    Step decision;
    decision.kind = StepKind::Ask;
    decision.reason = packs->decision.sentence;
    parts.add("", {decision});
  }
  if (task) {
    parts.add_some("", task->steps, 0, task->lead, task->sources);
  }
  parts.add_solution(explanation.by_faces ? "by formula" : "", explanation.solution);
  if (explanation.by_faces) {
    parts.add_solution("face by face", *explanation.by_faces);
    parts.last().is_other_way = true;
  }
  if (task) {
    parts.add_some(task->measure.empty() ? "" : task->title, task->steps, task->lead, task->steps.size(),
                   task->sources);
  }
  if (packs) {
    const bool is_measure = !explanation.solution.values.empty();
    if (packs->amount_step && !is_measure) {
      parts.add_some("", {*packs->amount_step}, 0, 1, packs->sources);
    }
    parts.add("then the count", packs->steps, packs->sources);
  }
  return std::move(parts).done();
}

std::vector<Step> all_steps(const Explanation& explanation) {
  std::vector<Step> steps;
  for (const WorkPart& part : parts_of(explanation)) {
    steps.insert(steps.end(), part.steps.begin(), part.steps.end());
  }
  return steps;
}

std::string steps_text(const std::vector<Step>& steps) {
  constexpr std::size_t line_indent = 10;
  constexpr std::size_t aside_indent = 14;
  std::string text;
  std::size_t number = 0;
  for (const Step& step : steps) {
    ++number;
    text += std::string(number < 10 ? 3 : 2, ' ') + std::to_string(number) + ". " + said(step.reason) + '\n';
    if (step.line) {
      text += std::string(line_indent, ' ') + algebra::plain_text(*step.line) + '\n';
    }
    for (const exact::ColumnWork& aside : step.asides) {
      text += indented(exact::plain_text(aside), aside_indent);
    }
  }
  return text;
}

std::vector<Ask> asks_of(const lessons::Problem& problem) {
  std::vector<Ask> asks;
  const std::string task = task_of(problem);
  if (task == "count" || task == "claim" || task == "lengths") {
    asks.push_back({Ask::Kind::Task, task});
  }
  const bool is_all_task = task == "mistake" || task == "interval" || problem.scale;
  for (const std::string& find : problem.find) {
    asks.push_back({is_all_task || find == task ? Ask::Kind::Task
                    : is_looked_at(find)        ? Ask::Kind::Look
                                                : Ask::Kind::Measure,
                    find});
  }
  const bool is_judged_only = problem.supply && task == "purpose" && !problem.supply->each;
  const bool has_measure = std::any_of(asks.begin(), asks.end(), [&](const Ask& ask) {
    return ask.kind == Ask::Kind::Measure && problem.supply && problem.supply->measure == ask.find;
  });
  const bool is_packed = problem.supply && problem.supply->box;
  if (problem.supply && !has_measure && !is_packed && !is_judged_only) {
    asks.push_back({Ask::Kind::Amount, problem.supply->measure});
  }
  return asks;
}

Result<Explanation, std::string> explained_ask(const lessons::Problem& problem, const Ask& ask,
                                               const SolutionOptions& options) {
  SolutionOptions with_open = options;
  with_open.open = lessons::open_faces(problem);
  switch (ask.kind) {
    case Ask::Kind::Task:
      return task_explained(problem, ask.find, with_open);
    case Ask::Kind::Look:
      return looked_at(problem, ask.find);
    case Ask::Kind::Amount:
      return amount_explained(problem, ask.find, with_open);
    case Ask::Kind::Measure:
      break;
  }
  with_open.unit = options.unit ? options.unit : problem.unit;
  return measure_explained(problem, ask.find, with_open);
}

Result<std::vector<Explanation>, std::string> explained(const lessons::Problem& problem,
                                                        const SolutionOptions& options) {
  std::vector<Explanation> all;
  for (const Ask& ask : asks_of(problem)) {
    auto one = explained_ask(problem, ask, options);
    if (!one) {
      return failure(one.error());
    }
    all.push_back(std::move(one).value());
  }
  return all;
}

}  // namespace fw::reasoning
