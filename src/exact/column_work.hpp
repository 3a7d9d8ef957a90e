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
  /// Each of `columns` cells: a digit, ".", a sign or "". In a long multiplication, whose last digits stand under each
  /// other, a point stands in the cell of its digit ("3."). What is carried is a raised digit ("¹").
  std::vector<std::vector<std::string>> rows;
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

/// Lined up on the decimal point, empty places filled with zeros, the sum under a rule. What is carried stands in a row
/// of its own above.
[[nodiscard]] ColumnWork column_addition(const std::vector<Number>& addends);
/// Requires: a >= b.
[[nodiscard]] ColumnWork column_subtraction(const Number& a, const Number& b);
/// Long multiplication: a partial product for each digit of b that is not 0, zeros behind it for its place; the point
/// stands in the result, which keeps all its places ("1.00").
[[nodiscard]] ColumnWork long_multiplication(const Number& a, const Number& b);
/// Long division with its remainders, to at most `places` decimals of the quotient, which are cut off, not rounded; the
/// last row is what is left. A decimal divisor is made whole first, which the caption says. Row 0 is the quotient, row
/// 1 the divisor, ")" and the dividend. Requires: b > 0.
[[nodiscard]] ColumnWork long_division(const Number& a, const Number& b, int places);

/// For a terminal: one line a row, rules as dashes.
[[nodiscard]] std::string plain_text(const ColumnWork& work);

}  // namespace fw::exact
