#pragma once

#include <optional>
#include <string>

#include "exact/number.hpp"

namespace fw::exact {

/// The exact value as a student writes it: "36", "49.5" (a decimal that ends within 6 places),
/// "5 1/3" (mixed), "3√2", "12 + 3√5", "3√(25 + 10√5)", "130π". Empty for a number that is not exact.
[[nodiscard]] std::string exact_text(const Number& a);

/// Rounded to `places` decimals with all of them written: (49.5, 2) -> "49.50". Minus sign is U+2212.
[[nodiscard]] std::string fixed_text(const Number& a, int places);

/// What a class reads: `exact` when the number is a decimal that ends within `places` places, and
/// otherwise the rounded decimal, to be led by "≈".
struct Shown {
  std::string text;   ///< digits only: "49.5" where the number ends, "20.60" where it is rounded
  bool exact = true;  ///< false: write ≈ before it
};
[[nodiscard]] Shown shown(const Number& a, int places);

/// Decimals needed to write the number out, if it ends within `limit` of them.
[[nodiscard]] std::optional<int> decimals_needed(const Number& a, int limit);

}  // namespace fw::exact
