#pragma once

#include <vector>

// Polynomials in doubles whose coefficients know how much of them is noise; private to the room.
namespace fw::solids {

/// A sum of terms, and the sum of the terms' sizes: what is 10^-11 of that or less is nothing but rounding.
struct RoughTerm {
  double value = 0;
  double size = 0;
};
/// The coefficient of the k-th power at k; the last one is not zero.
using RoughPolynomial = std::vector<RoughTerm>;

[[nodiscard]] RoughPolynomial constant(double value);
[[nodiscard]] RoughPolynomial sum(const RoughPolynomial& a, const RoughPolynomial& b);
[[nodiscard]] RoughPolynomial product(const RoughPolynomial& a, const RoughPolynomial& b);
[[nodiscard]] RoughPolynomial negative(RoughPolynomial a);
/// In rising order; a double root once.
[[nodiscard]] std::vector<double> positive_roots(const RoughPolynomial& polynomial);

}  // namespace fw::solids
