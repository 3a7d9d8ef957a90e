#pragma once

#include <string>

#include "lessons/lesson.hpp"

namespace fw::reasoning {

/// The problem's text, and after it what the lesson gives in numbers and the text does not say: "One roll covers
/// 45 ft². One roll costs $24.", so that a class that sees the text alone can answer.
[[nodiscard]] std::string told_prompt(const lessons::Problem& problem);

}  // namespace fw::reasoning
