#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "exact/number.hpp"

namespace fw::exact {

/// A number as somebody wrote it: its value, its text, and the interval that it may stand for
/// ("2.6" stands for 2.55 to 2.65; whole numbers and fractions stand for half a unit of their last
/// digit only where a figure says that its labels are rounded).
struct Written {
  std::string text;  ///< as written, without spaces around it
  Number value;
  int places = 0;            ///< decimals written; 0 for whole numbers and fractions
  bool is_fraction = false;  ///< "5/8", "7 1/2", or with a root or π: not rounded

  [[nodiscard]] Number lowest() const;  ///< value - half a unit of the last digit (value itself for a fraction)
  [[nodiscard]] Number highest() const;
  friend bool operator==(const Written& a, const Written& b) { return a.text == b.text; }
};

struct NumberError {
  std::size_t offset = 0;  ///< byte where reading stopped
  std::string message;     ///< what was found and what would be right
};

/// Reads a number as lessons and students write it: "12", "2.5", "2,860", "408,4", "7 1/2", "7½", "5/8",
/// "3√2", "12π", "130 pi", "√(2)". Digits are limited to 30. A comma before exactly three
/// digits groups thousands, any other single comma is a decimal comma.
/// Errors: empty text, letters, more than 30 digits, a zero denominator.
[[nodiscard]] Result<Written, NumberError> parse_number(std::string_view text);

/// A whole or decimal number written the usual way (used where a slider sets a measure).
[[nodiscard]] Written written(const Number& value, int places);

}  // namespace fw::exact
