#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "practice/read_answer.hpp"
#include "practice/seed.hpp"

// What the options of several types of questions are made of.
namespace fw::practice {

/// The right number of a question and up to three that mistakes lead to, in the order in which they were drawn.
[[nodiscard]] std::vector<Choice> number_choices(const lessons::Problem& problem, const Question& question, Seed& seed);
/// The option whose letter or text was typed.
[[nodiscard]] std::optional<std::size_t> option_named(const std::vector<Choice>& choices, std::string_view typed);
/// In small letters, without what stands around it.
[[nodiscard]] std::string lowered(std::string_view text);
/// The quantities of a text of which any of `signs` parts them: "100 to 200 cm²" at " to ".
[[nodiscard]] std::vector<TypedAnswer> quantities_in(std::string text, const std::vector<std::string>& signs);
/// False for "no", "impossible" and the like, true for "yes" and the like; nothing for other text. `low`: lowered.
[[nodiscard]] std::optional<bool> yes_or_no(const std::string& low);

[[nodiscard]] Choice right_choice(words::Message text, words::Message message);
[[nodiscard]] Choice wrong_choice(words::Message text, std::string cause, words::Message message);

/// A number as a student writes it: all of its decimals where they are few, else rounded to three digits or more.
[[nodiscard]] exact::Number as_written_down(double value);
/// "286 cm²", "4 rolls", "5 faces": a number with what it counts.
[[nodiscard]] words::Message answer_text(const Question& question, const exact::Number& number);
/// "20.65 cm²", or "≈ 20.65 cm²" where it is rounded.
[[nodiscard]] words::Message amount_shown(const exact::Shown& shown, const std::optional<units::Unit>& unit);

}  // namespace fw::practice
