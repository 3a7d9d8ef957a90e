#pragma once

#include <memory>
#include <optional>

#include "exact/number_parts.hpp"

// Arithmetic of sums of square roots. Only sources of this room and its tests include this header.
namespace fw::exact {

/// n = square² x rest.
struct SquareParts {
  Integer square = 1;
  Integer rest = 1;
};
/// Takes square factors out of n by trial division and a last test for a perfect square.
/// Guarantees: rest is squarefree if it is at most 10^12; a greater one has no square factor of a prime
/// below 10^4 (splitting numbers of any size would take too long for a figure that follows the mouse).
/// Requires: n > 0.
[[nodiscard]] SquareParts square_parts(const Integer& n);
/// The whole root of a perfect square.
[[nodiscard]] std::optional<Integer> perfect_root(const Integer& n);
/// The whole cube root of a perfect cube; n may be negative.
[[nodiscard]] std::optional<Integer> perfect_cube_root(const Integer& n);

[[nodiscard]] RootSum root_sum(const Rational& value);
[[nodiscard]] RootSum add(const RootSum& a, const RootSum& b);
[[nodiscard]] RootSum subtract(const RootSum& a, const RootSum& b);
[[nodiscard]] RootSum multiply(const RootSum& a, const RootSum& b);
[[nodiscard]] RootSum scaled(RootSum a, const Rational& factor);
/// 1/a, by conjugation. Requires: a is not zero.
[[nodiscard]] RootSum inverse(const RootSum& a);
/// Whether a has at most six independent roots. Conjugation doubles the terms with each, so more are left to
/// inexact numbers; no figure has them.
[[nodiscard]] bool has_few_roots(const RootSum& a);
[[nodiscard]] int sign(const RootSum& a);
[[nodiscard]] bool is_rational(const RootSum& a);
/// √a. Requires: a >= 0.
[[nodiscard]] RootSum root_of(const Rational& a);
/// √a where that is a sum of square roots again: √(7 + 4√3) = 2 + √3. Nothing for a negative a
/// and for more roots than has_few_roots() allows.
/// Source: √(A + B√p) = √((A+e)/2) ± √((A-e)/2) with e² = A² - pB², which must be a square in the field
/// without √p (A. Borodin, R. Fagin, J. Hopcroft, M. Tompa, Decreasing the nesting depth of expressions
/// involving square roots, 1985), applied to one root after the other.
[[nodiscard]] std::optional<RootSum> denested(const RootSum& a);

/// factor x √nested, as in Component.
struct NestedRoot {
  RootSum factor;
  std::shared_ptr<const RootSum> nested;
};
/// √a. Requires: a >= 0.
[[nodiscard]] NestedRoot root_of(const RootSum& a);

}  // namespace fw::exact
