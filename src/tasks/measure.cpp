#include "tasks/measure.hpp"

#include <algorithm>

#include "lessons/asked_value.hpp"
#include "lessons/open_faces.hpp"
#include "tasks/row.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::tasks {
namespace {

using practice::Hint;

Asked asked_by(const std::string& find) {
  return find == "surface_area"   ? Asked::Surface
         : find == "lateral_area" ? Asked::Lateral
         : find == "base_area"    ? Asked::BaseArea
         : find == "volume"       ? Asked::Volume
                                  : Asked::Length;
}

int dimension_of_number(Asked asked) { return asked == Asked::Volume ? 3 : asked == Asked::Length ? 1 : 2; }

words::Message first_step_on_a_circle(Asked asked) {
  switch (asked) {
    case Asked::Surface:
      return message("Unroll it. Which pieces are there, and what is the area of each?");
    case Asked::Lateral:
      return message("Unroll the curved side. What shape is it, and how long is it?");
    case Asked::Length:
      return message("Start with what you know about the whole solid. What is the formula for it?");
    default:
      return message("Start with the circle. What is its radius, and what is its area?");
  }
}
words::Message first_step_to(Asked asked) {
  switch (asked) {
    case Asked::Surface:
    case Asked::Lateral:
      return message("Start with one face. Which one is it, and what is its area?");
    case Asked::Length:
      return message("Start with what you know about the whole solid. What is the formula for it?");
    default:
      return message("Start with the base. What is its area?");
  }
}

void collect_units(const solids::Description& description, std::vector<units::Unit>& all) {
  for (const auto& [key, value] : description.fields) {
    const auto* length = std::get_if<solids::LengthEntry>(&value);
    if (length != nullptr && length->written) {
      all.push_back(length->written->unit);
    }
  }
  for (const solids::Description& base : description.base) {
    collect_units(base, all);
  }
}

bool has_unlike_units(const Problem& problem) {
  std::vector<units::Unit> all;
  collect_units(problem.description, all);
  return std::any_of(all.begin(), all.end(), [&](const units::Unit& unit) { return !(unit == all.front()); });
}

bool is_round(const Problem& problem) { return problem.solid.traits().has_round_base; }

std::string type_of_length(const Problem& problem) {
  return is_round(problem) && !problem.known.empty() ? "round-length"
         : problem.known.count("surface_area") > 0   ? "edge-from-surface"
         : problem.known.empty()                     ? "right-triangle"
                                                     : "edge-from-volume";
}

}  // namespace

words::Message Measure::sentence(const Problem& problem) const {
  return message("What is the {measure}?", {{"measure", asked_noun(problem, find_)}});
}

Result<Question, words::Message> Measure::question(const Problem& problem) const {
  Question question;
  question.find = find_;
  question.asked = asked_by(find_);
  question.truth = lessons::asked_value(problem, problem.solid, find_);
  if (!question.truth) {
    return failure(
        message("{solid:a} has no measure \"{measure}\"", {{"solid", Noun{problem.solid.name()}}, {"measure", find_}}));
  }
  question.unit = problem.solid.unit().to_the(dimension_of_number(question.asked));
  question.measure = find_;
  question.item = practice::item_of(problem);
  question.first_step =
      problem.solid.traits().has_round_base ? first_step_on_a_circle(question.asked) : first_step_to(question.asked);
  return question;
}

std::string Measure::type(const Problem& problem) const {
  switch (asked_by(find_)) {
    case Asked::Surface:
      return !problem.open.empty() ? "open" : is_round(problem) ? "round-surface" : "surface";
    case Asked::Lateral:
      return is_round(problem) ? "round-lateral" : "lateral";
    case Asked::BaseArea:
      return "base-area";
    case Asked::Volume:
      return problem.known.count("surface_area") > 0 ? "chain"
             : has_unlike_units(problem)             ? "units"
             : is_round(problem)                     ? "round-volume"
                                                     : "volume";
    default:
      return type_of_length(problem);
  }
}

Result<Explanation, words::Message> Measure::explained(const Problem& problem, const SolutionOptions& options) const {
  auto solution = reasoning::worked_solution(problem.solid, find_, options);
  if (!solution) {
    return failure(solution.error());
  }
  Explanation explanation{find_, std::move(solution).value(), {}, {}, {}, {}};
  explanation.answer = Message(explanation.solution.answer.text);
  const auto* word_problem = practice::task_as<WordProblem>(problem);
  const bool is_needed = word_problem != nullptr && word_problem->supply().measure == find_;
  return is_needed ? with_count(std::move(explanation), word_problem->worked(problem, options.line_places()))
                   : std::move(explanation);
}

Result<std::vector<Hint>, words::Message> Measure::hints(const Problem& problem,
                                                         const reasoning::ClassNotation& notation) const {
  Problem alone = problem;
  alone.tasks.clear();
  SolutionOptions options;
  options.open = lessons::open_faces(problem);
  options.notation = notation;
  const auto one = explained(alone, options);
  return one ? Result<std::vector<Hint>, words::Message>(practice::hints_to_measure(*one, problem.solid, find_))
             : failure(one.error());
}

}  // namespace fw::tasks
