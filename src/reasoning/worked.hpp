#pragma once

#include <string>
#include <string_view>

#include "solids/solid.hpp"

namespace fw::reasoning {

/// Decimals to which numbers that are worked out are shown within a line of work, unless it takes more to come out.
inline constexpr int work_places = 2;

enum class WorkedUnits { With, Without };

/// What stands beside the work.
struct WorkedResult {
  std::size_t times = 1;     ///< as often as the expression is counted
  int places = work_places;  ///< its decimals at most
};

/// The expression with the solid's numbers in it: labelled ones as the lesson writes them ("2.50", "7 1/2"), where
/// they are in the solid's unit; others exact where they end within two places, else with as many as it takes for a
/// reader to get the result as it is shown. "6 × 9 ÷ 2", or with units "6 cm × 9 cm ÷ 2".
[[nodiscard]] std::string worked_numbers(const solids::Solid& solid, const algebra::Expression& expression,
                                         WorkedUnits units, const WorkedResult& result = {});

/// "4 × (6 × 9 ÷ 2)": the text of an expression as often as it is counted; the text alone for once.
/// Parentheses stand unless the expression is a single number, letter or power.
[[nodiscard]] std::string repeated(const std::string& text, const algebra::Expression& expression, std::size_t times,
                                   std::string_view times_sign);

}  // namespace fw::reasoning
