#include "reasoning/explanation.hpp"

#include <algorithm>

#include "reasoning/phrases.hpp"
#include "reasoning/worksheet.hpp"

namespace fw::reasoning {
namespace {

/// The solid by its name, for what is not worked out of its measures.
Solution name_alone(const solids::Solid& solid, const std::string& asked, const std::string& title) {
  Worksheet sheet(solid);
  sheet.say(StepKind::Name, name_sentence(solid));
  return std::move(sheet).finished(asked, title, {});
}

/// Parts one after another, those without steps left out.
class Parts {
 public:
  void add(Message title, std::vector<Step> steps, std::vector<Source> sources = {}, algebra::Bindings values = {},
           Board board = {}) {
    if (steps.empty()) {
      return;
    }
    const std::size_t first = count_;
    count_ += steps.size();
    parts_.push_back(
        {std::move(title), std::move(steps), std::move(sources), std::move(values), std::move(board), first, false});
  }

  void add_solution(Message title, const Solution& solution) {
    std::vector<Source> sources = solution.sources;
    for (Source& source : sources) {
      source.sentence = source.step ? worked_out_in(count_ + *source.step) : source.sentence;
    }
    add(std::move(title), solution.steps, std::move(sources), solution.values, solution.board);
  }

  /// Those of the steps from `begin` up to `end`; numbers from other steps come without their step.
  void add_some(Message title, const std::vector<Step>& steps, std::size_t begin, std::size_t end,
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

// The edges of a solid that no label gives, worked out where a formula leads to them.
std::vector<Solution> edges_to_find(const solids::Solid& solid, SolutionOptions options) {
  options.route = Route::Formula;
  options.unit.reset();
  std::vector<std::string> names;
  std::vector<Solution> all;
  for (const solids::Face& face : solid.faces()) {
    for (const solids::FaceLength& length : face.lengths) {
      const std::string& name = length.symbol.name;
      if (length.is_height || solid.is_given(length.symbol) ||
          std::find(names.begin(), names.end(), name) != names.end()) {
        continue;
      }
      names.push_back(name);
      if (auto solution = worked_solution(solid, name, options)) {
        all.push_back(std::move(solution).value());
      }
    }
  }
  return all;
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

std::vector<WorkPart> parts_of(const Explanation& explanation) {
  const std::optional<TaskWork>& task = explanation.task;
  const std::optional<SupplyWork>& packs = explanation.packs;
  Parts parts;
  if (packs) {
    Step decision;
    decision.kind = StepKind::Ask;
    decision.reason = packs->decision.sentence;
    parts.add({}, {decision});
  }
  if (task) {
    parts.add_some({}, task->steps, 0, task->lead, task->sources);
  }
  for (const Solution& edge : explanation.edges) {
    parts.add_solution(Message(edge.title), edge);
  }
  if (explanation.edges.empty()) {
    parts.add_solution(explanation.by_faces ? message("by formula") : Message(), explanation.solution);
  }
  if (explanation.by_faces) {
    parts.add_solution(message("face by face"), *explanation.by_faces);
    parts.last().is_other_way = true;
  }
  if (task) {
    parts.add_some(task->measure.empty() ? Message() : task->title, task->steps, task->lead, task->steps.size(),
                   task->sources);
  }
  if (packs) {
    const bool is_measure = !explanation.solution.values.empty();
    if (packs->amount_step && !is_measure) {
      parts.add_some({}, {*packs->amount_step}, 0, 1, packs->sources);
    }
    parts.add(message("then the count"), packs->steps, packs->sources);
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

Explanation explained_alone(const solids::Solid& solid, TaskWork task) {
  const std::string find = task.task;
  Message answer = task.answer;
  return {find, Worksheet(solid).finished(find, find, {}), {}, std::move(task), std::move(answer), {}};
}

Explanation explained_with_measure(const solids::Solid& solid, const std::string& find, TaskWork task,
                                   const SolutionOptions& options) {
  auto solution = worked_solution(solid, task.measure, options);
  const bool is_worked = !task.measure.empty() && solution;
  Message answer = task.answer;
  return {find,
          is_worked ? std::move(solution).value() : name_alone(solid, find, find),
          {},
          std::move(task),
          std::move(answer),
          {}};
}

Explanation explained_amount(const solids::Solid& solid, const std::string& measure, SupplyWork packs,
                             const SolutionOptions& options) {
  const std::string amount = amount_text(packs.amount, options.line_places());
  Explanation alone{measure, name_alone(solid, measure, packs.title), {}, {}, Message(amount), {}};
  if (measure == "edges") {
    alone.edges = edges_to_find(solid, options);
  }
  return with_count(std::move(alone), std::move(packs));
}

Explanation with_count(Explanation explanation, SupplyWork packs) {
  if (packs.answer) {  // with a price the cost is the answer
    explanation.answer =
        packs.answer->cost ? message("{cost}", {{"cost", packs.answer->cost_text}}) : packs.answer->text;
  }
  explanation.packs = std::move(packs);
  return explanation;
}

}  // namespace fw::reasoning
