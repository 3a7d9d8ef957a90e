#pragma once

#include <string>

#include "lessons/lesson.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// The problem's text, and after it what the lesson gives in numbers and the text does not say: "One roll covers
/// 45 ft². One roll costs $24.", so that a class that sees the text alone can answer.
[[nodiscard]] std::string told_prompt(const lessons::Problem& problem);

/// "40 ft²": as written, its unit with a raised digit.
[[nodiscard]] words::Value value_of(const units::WrittenQuantity& quantity);

}  // namespace fw::practice
