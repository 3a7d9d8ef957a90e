#pragma once

#include <optional>
#include <string>
#include <vector>

#include "practice/choices.hpp"
#include "practice/hints.hpp"
#include "tasks/quiz/quiz_set.hpp"
#include "tasks/worked_problem.hpp"

namespace fw::tasks {

/// The seed of an item's options.
[[nodiscard]] std::uint64_t choice_seed(std::uint64_t seed, std::size_t number);
/// The options of an item, A first, in an order drawn from the seed; none where it cannot be chosen.
[[nodiscard]] std::vector<practice::Choice> choices_for(const QuizItem& item, std::uint64_t seed, std::size_t number);

/// The ladder of hints to an item, written as the class writes. May be empty.
[[nodiscard]] std::vector<practice::Hint> hints_for(const QuizItem& item, const reasoning::ClassNotation& notation);

/// Why the item's cut-out is no net, to choose from; none where it is one, or something else is asked.
[[nodiscard]] std::vector<practice::Choice> reasons_for(const QuizItem& item);

/// The names to choose from, and those of them that are right. Requires: is_name(answer_form(item)).
struct NameChoice {
  std::vector<std::string> names;
  std::size_t right = 0;
};
[[nodiscard]] NameChoice names_for(const QuizItem& item, std::uint64_t seed, std::size_t number);

/// What a solution says in words alone: of a name, a count of faces, a question about nets.
[[nodiscard]] std::vector<std::string> told_solution(const QuizItem& item);
/// The answer in one text: "286 cm²".
[[nodiscard]] words::Message answer_text(const QuizItem& item);

/// The step of a worked solution that a wrong answer points to: the first line that speaks of those faces and of few
/// others; where none does the last relation, or else the first line. Requires: there is a step.
[[nodiscard]] std::size_t failing_step(const WorkedProblem& worked, const std::vector<geometry::FaceId>& faces);

}  // namespace fw::tasks
