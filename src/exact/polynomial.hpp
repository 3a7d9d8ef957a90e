#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "exact/number.hpp"

namespace fw::exact {

/// A polynomial by its coefficients, the constant one first; the last one is not zero.
using Polynomial = std::vector<Number>;

/// The distinct real x > 0 with polynomial(x) = 0, in rising order. Exact where the polynomial comes, after
/// taking out powers of x and writing x^g as one unknown (g up to 4), to degree 2 or less, and where a root is a
/// ratio of small whole numbers; otherwise inexact, found by Newton's method between the roots of the derivative.
/// Empty for a constant, and for the zero polynomial too.
[[nodiscard]] std::vector<Number> positive_roots(const Polynomial& polynomial);

/// The value at x, by Horner's rule.
[[nodiscard]] Number value_at(const Polynomial& polynomial, const Number& x);
[[nodiscard]] Polynomial product(const Polynomial& a, const Polynomial& b);
/// The same without zeros at the high end.
[[nodiscard]] Polynomial without_leading_zeros(Polynomial polynomial);

/// The same value as an inexact number.
[[nodiscard]] Number approximation(const Number& a);

/// A zero of `function` between two places where its signs differ or one value is zero, good to 60 digits unless
/// the function is flatter there than numbers can tell; inexact. Nothing if `function` has no value on the way.
[[nodiscard]] std::optional<Number> zero_between(const std::function<std::optional<Number>(const Number&)>& function,
                                                 const Number& low, const Number& high);

}  // namespace fw::exact
