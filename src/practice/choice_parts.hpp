#pragma once

#include <optional>
#include <string_view>
#include <utility>

#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "practice/seed.hpp"

// What the options of several kinds of questions are made of; private to the room.
namespace fw::practice {

/// The right number of a question and up to three that mistakes lead to, in the order in which they were drawn.
[[nodiscard]] std::vector<Choice> number_choices(const lessons::Problem& problem, const Question& question, Seed& seed);
/// The options of a question that is answered by something else than a number or a name, in their own order or, where
/// they have none, as drawn from the seed.
/// Errors: a sentence, where a wrong answer is no usual mistake, or several lead to it.
[[nodiscard]] Result<std::vector<Choice>, std::string> task_choices(const lessons::Problem& problem,
                                                                    const Question& question, Seed& seed);
/// Which option a typed text stands for: its letter, its text, "yes", "100 to 200", "volume"; nothing for other text.
[[nodiscard]] std::optional<std::size_t> option_typed(const lessons::Problem& problem, const Question& question,
                                                      const std::vector<Choice>& choices, std::string_view typed);
/// The one mistake that a wrong answer of the problem comes from, with its message.
/// Errors: a sentence, as above.
[[nodiscard]] Result<Choice, std::string> mistake_of(const lessons::Problem& problem, const Question& question);

/// A number as a student writes it: all of its decimals where they are few, else rounded to three digits or more.
[[nodiscard]] exact::Number as_written_down(double value);
/// "286 cm²", "4 rolls", "5 faces": a number with what it counts.
[[nodiscard]] std::string answer_text(const lessons::Problem& problem, const Question& question,
                                      const exact::Number& number);

/// The two lengths of a face, as pairs that belong to it or do not.
[[nodiscard]] std::vector<Choice> lengths_choices(const lessons::Problem& problem, Seed& seed);
/// The option whose lengths were typed, in any order and unit.
[[nodiscard]] std::optional<std::size_t> lengths_typed(const std::vector<Choice>& choices, std::string_view typed);

}  // namespace fw::practice
