#pragma once

#include "exact/number_parts.hpp"

// The value of exact parts with a bound of its error. Only sources of this room and its tests include this header.
namespace fw::exact {

/// The value lies within value ± error.
template <class R>
struct Bounded {
  R value = 0;
  R error = 0;
};

/// The value of the components with a bound of its error. For double, Real, Decimal<330> and Decimal<1000>.
template <class R>
[[nodiscard]] Bounded<R> bounded(const std::vector<Component>& components);

/// By what a sign was found.
enum class Decider {
  Doubles,        ///< bounds in doubles
  CanonicalForm,  ///< equal parts, or a difference without components
  Digits120,      ///< bounds in that many digits
  Digits330,
  Digits1000,
  Inexact,    ///< a number that is not exact took part: equal if 60 digits agree
  Undecided,  ///< taken for zero; reached by no known number
};

struct DecidedSign {
  int sign = 0;
  Decider decider = Decider::CanonicalForm;
};

/// Guarantees: sign is 0 only for no components, or if 1000 digits do not tell the value from 0.
[[nodiscard]] DecidedSign sign_by_bounds(const std::vector<Component>& components);

/// compare(a, b), with what decided it.
[[nodiscard]] DecidedSign compare_and_tell(const Number& a, const Number& b);

}  // namespace fw::exact
