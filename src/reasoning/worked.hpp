#pragma once

#include <string>
#include <string_view>

#include "solids/solid.hpp"

namespace fw::reasoning {

/// Decimals to which numbers that are worked out are shown within a line of work.
inline constexpr int work_places = 2;

enum class WorkedUnits { With, Without };

/// The expression with the solid's numbers in it: labelled ones as the lesson writes them ("2.50", "7 1/2"), where
/// they are in the solid's unit; others exact where they end within two places, else rounded to them.
/// "6 × 9 ÷ 2", or with units "6 cm × 9 cm ÷ 2".
[[nodiscard]] std::string worked_numbers(const solids::Solid& solid, const algebra::Expression& expression,
                                         WorkedUnits units);

/// "4 × (6 × 9 ÷ 2)": the text of an expression as often as it is counted; the text alone for once.
/// Parentheses stand unless the expression is a single number, letter or power.
[[nodiscard]] std::string repeated(const std::string& text, const algebra::Expression& expression, std::size_t times,
                                   std::string_view times_sign);

}  // namespace fw::reasoning
