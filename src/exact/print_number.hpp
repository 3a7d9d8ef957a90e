#pragma once

#include <optional>
#include <string>

#include "exact/number.hpp"

namespace fw::exact {

/// The exact value as a student writes it: "36", "49.5" (a decimal that ends within 6 places),
/// "5 1/3" (mixed), "3√2", "12 + 3√5", "3√(25 + 10√5)", "130π". Empty for a number that is not exact.
[[nodiscard]] std::string exact_text(const Number& a);

/// Whether a class would write the exact form down: "5 1/3", "3√2", "12 + 3√5", but not "7 37/77" or "√(25 + 10√5)".
[[nodiscard]] bool has_class_form(const Number& a);

/// How a number stands in a line of work: the decimal where it ends, else the form that a class writes, else its first
/// decimals and "…": four of them, or as many as it takes for five digits. "49.5", "5 1/3", "3√2", "7.4805…".
[[nodiscard]] std::string class_text(const Number& a);

/// The same, but a decimal as a mixed number where it is halves, thirds, … or twelfths, or sixteenths: "12 1/2"
/// for 12.5.
[[nodiscard]] std::string fraction_text(const Number& a);

/// Rounded to `places` decimals with all of them written: (49.5, 2) -> "49.50". Minus sign is U+2212; from five digits
/// on, thousands are set off by commas: "12,345.50".
[[nodiscard]] std::string fixed_text(const Number& a, int places);
/// As shown() has it, but without commas, for those who go through the digits.
[[nodiscard]] std::string digits_text(const Number& a, int places);

/// What a class reads: `exact` when the number is a decimal that ends within `places` places, and
/// otherwise the rounded decimal, to be led by "≈".
struct Shown {
  std::string text;   ///< digits only: "49.5" where the number ends, "20.60" where it is rounded
  bool exact = true;  ///< false: write ≈ before it
};
/// With as many places as are enough: (20.6049…, 2) -> "20.60", (0.0062, 2) -> "0.0062", (0.00601…, 2) -> "0.0060".
[[nodiscard]] Shown shown(const Number& a, int places);
/// With `places` decimals at most, whatever is left of the number: for those who were told where to round.
[[nodiscard]] Shown rounded_to(const Number& a, int places);
/// `places`, unless that would leave fewer than two digits of a small number: then all its decimals where it ends soon,
/// else as many as show two.
[[nodiscard]] int enough_places(const Number& a, int places);

/// Decimals needed to write the number out, if it ends within `limit` of them.
[[nodiscard]] std::optional<int> decimals_needed(const Number& a, int limit);

}  // namespace fw::exact
