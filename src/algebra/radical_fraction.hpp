#pragma once

#include <type_traits>

#include "algebra/arithmetic.hpp"
#include "exact/polynomial.hpp"

// What most equations of school come to once their known letters have values; private to the room.
namespace fw::algebra {

using exact::Polynomial;

/// (plain + rooted √radicand) / below, all polynomials in the unknown. `rooted` is zero for none.
template <class N>
struct RadicalFraction {
  Polynomial<N> plain, rooted, radicand;
  Polynomial<N> below = {one()};

  static N one() {
    if constexpr (std::is_same_v<N, exact::Number>) {
      return exact::Number::whole(1);
    } else {
      return N(1);
    }
  }
  [[nodiscard]] bool is_small() const {
    constexpr std::size_t most_coefficients = 13;
    return std::max({plain.size(), rooted.size(), radicand.size(), below.size()}) <= most_coefficients;
  }
  /// It is zero only where this is.
  [[nodiscard]] Polynomial<N> without_root() const {
    // p = -q√r only if p² = q²r
    return rooted.is_zero() ? plain : plain * plain - rooted * rooted * radicand;
  }
};

template <class N>
using PossibleFraction = std::optional<RadicalFraction<N>>;

template <class N>
RadicalFraction<N> operator-(const RadicalFraction<N>& a) {
  return {-a.plain, -a.rooted, a.radicand, a.below};
}

template <class N>
RadicalFraction<N> sum(const RadicalFraction<N>& a, const RadicalFraction<N>& b, const Polynomial<N>& radicand) {
  if (a.below == b.below) {
    return {a.plain + b.plain, a.rooted + b.rooted, radicand, a.below};
  }
  return {a.plain * b.below + b.plain * a.below, a.rooted * b.below + b.rooted * a.below, radicand, a.below * b.below};
}

template <class N>
RadicalFraction<N> product(const RadicalFraction<N>& a, const RadicalFraction<N>& b, const Polynomial<N>& radicand) {
  return {a.plain * b.plain + a.rooted * b.rooted * radicand, a.plain * b.rooted + a.rooted * b.plain, radicand,
          a.below * b.below};
}

template <class N>
PossibleFraction<N> inverse(const RadicalFraction<N>& a) {
  if (a.rooted.is_zero()) {
    return a.plain.is_zero() ? std::nullopt : PossibleFraction<N>(RadicalFraction<N>{a.below, {}, {}, a.plain});
  }
  // 1/(p + q√r) = (p - q√r)/(p² - q²r)
  const Polynomial<N> norm = a.without_root();
  return norm.is_zero()
             ? std::nullopt
             : PossibleFraction<N>(RadicalFraction<N>{a.below * a.plain, -(a.below * a.rooted), a.radicand, norm});
}

/// Nothing where there are two different roots, or where it grows large.
template <class N>
PossibleFraction<N> combined(Operation operation, const PossibleFraction<N>& a, const PossibleFraction<N>& b) {
  if (!a || !b || !(a->rooted.is_zero() || b->rooted.is_zero() || a->radicand == b->radicand)) {
    return std::nullopt;
  }
  const Polynomial<N> radicand = a->rooted.is_zero() ? b->radicand : a->radicand;
  PossibleFraction<N> result;
  if (operation == Operation::Sum || operation == Operation::Difference) {
    result = sum(*a, operation == Operation::Sum ? *b : -*b, radicand);
  } else if (const auto factor = operation == Operation::Product ? b : inverse(*b)) {
    result = product(*a, *factor, radicand);
  }
  return result && result->is_small() ? result : std::nullopt;
}

template <class N>
PossibleFraction<N> raised(const PossibleFraction<N>& base, int exponent) {
  PossibleFraction<N> result = base;
  for (int i = 1; i < exponent && result; ++i) {
    result = combined(Operation::Product, result, base);
  }
  return result;
}

template <class N>
PossibleFraction<N> fraction_of(const std::optional<N>& value) {
  return value ? PossibleFraction<N>(RadicalFraction<N>{{*value}, {}, {}}) : std::nullopt;
}

template <class N>
PossibleFraction<N> rooted(const PossibleFraction<N>& a, int degree) {
  if (!a || !a->rooted.is_zero()) {
    return std::nullopt;
  }
  if (!a->plain.is_constant() || !a->below.is_constant()) {
    return degree == 2
               ? PossibleFraction<N>(RadicalFraction<N>{{}, {RadicalFraction<N>::one()}, a->plain * a->below, a->below})
               : std::nullopt;
  }
  return fraction_of<N>(rooted(a->plain.is_zero() ? N() : a->plain.at(0) / a->below.at(0), degree));
}

/// The expression as such a fraction, with the leaves other than the unknown as `leaf` gives them; nothing where it has
/// no such form.
template <class N, class Tree, class IsUnknown, class Leaf>
PossibleFraction<N> radical_fraction(const Tree& tree, const IsUnknown& is_unknown, const Leaf& leaf) {
  return value_of<PossibleFraction<N>>(tree, [&](const Tree& end) -> PossibleFraction<N> {
    if (is_unknown(end)) {
      return RadicalFraction<N>{{N(), RadicalFraction<N>::one()}, {}, {}};
    }
    return fraction_of<N>(leaf(end));
  });
}

}  // namespace fw::algebra
