#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace fw::exact {

struct NumberParts;  // the canonical form, kept out of this header (it needs Boost.Multiprecision)

/// A real number as a student writes it: a sum of terms
///   rational x sqrt(squarefree whole number) x pi^k [x sqrt(a sum of square roots)],
/// such as 49.5, 3√2, 12 + 3√5, 130π or 3√(25 + 10√5), in one canonical form. What has no such form
/// (the cotangent of 180°/7) is held to 60 significant digits and says so: is_exact() is false.
///
/// Guarantees:
///   (1) equal exact numbers compare equal, and compare() never errs on exact numbers;
///   (2) an operation on exact numbers is exact wherever its result has the form above;
///   (3) an operation that meets an inexact number gives an inexact one, good to at least 50 digits.
class Number {
 public:
  Number();  ///< zero
  explicit Number(std::shared_ptr<const NumberParts> parts);
  [[nodiscard]] static Number whole(long long value);
  /// Requires: denominator != 0.
  [[nodiscard]] static Number ratio(long long numerator, long long denominator);
  /// The very value that a double holds. Requires: it is finite.
  [[nodiscard]] static Number of_double(double value);
  [[nodiscard]] static Number pi();
  /// cot(180°/n), exact for n = 3, 4, 5, 6, 8, 10, 12. Requires: n >= 3.
  [[nodiscard]] static Number polygon_cotangent(int n);
  /// A plain decimal such as "0.125" or "-3"; nothing for any other text.
  [[nodiscard]] static std::optional<Number> from_decimal(std::string_view text);

  [[nodiscard]] bool is_exact() const;
  [[nodiscard]] bool is_rational() const;  ///< exact and a ratio of whole numbers
  [[nodiscard]] bool is_whole() const;
  [[nodiscard]] bool is_zero() const;
  [[nodiscard]] int sign() const;  ///< -1, 0, 1
  [[nodiscard]] double to_double() const;
  [[nodiscard]] const NumberParts& parts() const { return *parts_; }

 private:
  std::shared_ptr<const NumberParts> parts_;
};

[[nodiscard]] Number operator+(const Number& a, const Number& b);
[[nodiscard]] Number operator-(const Number& a, const Number& b);
[[nodiscard]] Number operator*(const Number& a, const Number& b);
/// Requires: b is not zero.
[[nodiscard]] Number operator/(const Number& a, const Number& b);
[[nodiscard]] Number operator-(const Number& a);
/// Requires: a is not negative.
[[nodiscard]] Number square_root(const Number& a);
[[nodiscard]] Number cube_root(const Number& a);
/// Requires: exponent >= 0, or a is not zero.
[[nodiscard]] Number power(const Number& a, int exponent);

/// -1, 0 or 1 as a is less than, equal to or greater than b. Decided by bounds first and exactly
/// when those do not decide.
[[nodiscard]] int compare(const Number& a, const Number& b);
[[nodiscard]] inline bool operator==(const Number& a, const Number& b) { return compare(a, b) == 0; }
[[nodiscard]] inline bool operator<(const Number& a, const Number& b) { return compare(a, b) < 0; }
[[nodiscard]] inline bool operator>(const Number& a, const Number& b) { return compare(a, b) > 0; }
[[nodiscard]] inline bool operator<=(const Number& a, const Number& b) { return compare(a, b) <= 0; }
[[nodiscard]] inline bool operator>=(const Number& a, const Number& b) { return compare(a, b) >= 0; }

/// The nearest multiple of 10^-places, a half going away from zero as schools teach it
/// (common practice, no source). Requires: places >= 0.
[[nodiscard]] Number rounded(const Number& a, int places);
/// The greatest whole number that is not greater than a.
[[nodiscard]] Number floor(const Number& a);

}  // namespace fw::exact
