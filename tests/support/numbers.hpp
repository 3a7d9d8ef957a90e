#pragma once

#include <ostream>

#include "exact/print_number.hpp"

namespace fw::exact {

/// How a failed test shows a number.
inline void PrintTo(const Number& number, std::ostream* out) {
  const std::string text = exact_text(number);
  *out << (text.empty() ? "about " + fixed_text(number, 20) : text);
}

}  // namespace fw::exact

namespace fw::test {

/// The number that a decimal text stands for; the test's own text, so it must be one.
inline exact::Number decimal(std::string_view text) {
  return exact::Number::from_decimal(text).value_or(exact::Number::whole(-999999));
}

}  // namespace fw::test
