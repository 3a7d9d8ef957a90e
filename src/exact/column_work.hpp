#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "exact/number.hpp"

namespace fw::exact {

/// Arithmetic as it is written at the margin: rows of single characters in columns, with rules under some of them.
/// Method: the written methods of school (common practice, no source).
struct ColumnWork {
  std::size_t columns = 0;
  std::vector<std::vector<std::string>> rows;  ///< each of `columns` cells: a digit, ".", a sign, a space or ""
  struct Rule {
    std::size_t row;       ///< the rule is under this row
    std::size_t from, to;  ///< first column and the one after the last
    friend bool operator==(const Rule&, const Rule&) = default;
  };
  std::vector<Rule> rules;
  std::string caption;  ///< "23.5 × 7"
  friend bool operator==(const ColumnWork&, const ColumnWork&) = default;
};

// Each requires decimals that end within 6 places and are not negative.

/// Lined up on the decimal point, the sum under a rule.
[[nodiscard]] ColumnWork column_addition(const std::vector<Number>& addends);
/// Requires: a >= b.
[[nodiscard]] ColumnWork column_subtraction(const Number& a, const Number& b);
/// Long multiplication: a partial product for each digit of b.
[[nodiscard]] ColumnWork long_multiplication(const Number& a, const Number& b);
/// Long division with its remainders, to at most `places` decimals of the quotient. Requires: b > 0.
[[nodiscard]] ColumnWork long_division(const Number& a, const Number& b, int places);

/// For a terminal: one line a row, rules as dashes.
[[nodiscard]] std::string plain_text(const ColumnWork& work);

}  // namespace fw::exact
