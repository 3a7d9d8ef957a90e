#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/quiz_set.hpp"
#include "app/worked.hpp"
#include "practice/choices.hpp"
#include "practice/hints.hpp"

namespace fw::app {

/// The options of an item for a class, A first, in an order drawn from the seed; none where it cannot be chosen.
[[nodiscard]] std::vector<practice::Choice> choices_for(const QuizItem& item, std::uint64_t seed, std::size_t number);

/// The ladder of hints to an item. May be empty.
[[nodiscard]] std::vector<practice::Hint> hints_for(const QuizItem& item);

/// What a solution says in words alone: of a name or a count of faces.
[[nodiscard]] std::vector<std::string> told_solution(const QuizItem& item);
/// The answer in one text: "286 cm²".
[[nodiscard]] std::string answer_text(const QuizItem& item);

/// The step of a worked solution that a wrong answer points to: the first line that speaks of those faces and of few
/// others, the last relation where none does. Requires: there is a step.
[[nodiscard]] std::size_t failing_step(const Worked& worked, const std::vector<FaceId>& faces);

}  // namespace fw::app
