#pragma once

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <boost/multiprecision/cpp_int.hpp>
#include <memory>
#include <optional>
#include <vector>

#include "exact/number.hpp"

// What stands inside a Number. Only sources of this room and its tests include this header.
namespace fw::exact {

namespace mp = boost::multiprecision;
using Integer = mp::number<mp::cpp_int_backend<>, mp::et_off>;
using Rational = mp::number<mp::rational_adaptor<mp::cpp_int_backend<>>, mp::et_off>;
template <unsigned Digits>
using Decimal = mp::number<mp::cpp_bin_float<Digits>, mp::et_off>;
/// What inexact numbers are held in: twice the digits that are promised.
using Real = Decimal<120>;

/// coefficient x √radicand
struct RootTerm {
  Integer radicand = 1;
  Rational coefficient;
  friend bool operator==(const RootTerm&, const RootTerm&) = default;
};

/// A sum of square roots with rational coefficients, in rising order of the radicands.
///
/// Guarantees:
///   (1) no coefficient is zero and no two radicands differ by a square factor only, so that the empty
///       sum alone is zero (square roots of different classes are independent: A. S. Besicovitch, On the linear
///       independence of fractional powers of integers, 1940);
///   (2) a radicand up to 10^12 is squarefree; a greater one may hold the square of a prime above 10^4.
using RootSum = std::vector<RootTerm>;

/// π^pi_power x factor x √nested. `nested` is null for 1; otherwise a sum of at least one root with whole
/// coefficients that have no common factor, whose square root is no sum of roots.
struct Component {
  int pi_power = 0;
  std::shared_ptr<const RootSum> nested;
  RootSum factor;
};

/// Guarantees:
///   (1) components rise by pi_power, then by nested; no factor is empty;
///   (2) no two of one pi_power have nested roots whose quotient is a sum of roots, so that a number is
///       zero only if it has no components.
struct NumberParts {
  std::vector<Component> components;
  std::optional<Real> inexact;  ///< set for a number that is not exact, which has no components
  double estimate = 0;
  double error = 0;  ///< the value lies within estimate ± error; infinite where doubles do not reach
};

/// Brings components into canonical form.
[[nodiscard]] Number make_exact(std::vector<Component> given);
[[nodiscard]] Number make_exact(const Rational& value);
[[nodiscard]] Number make_inexact(const Real& value);
/// The value, good to 60 digits or more.
[[nodiscard]] Real to_real(const Number& a);
/// Nothing if a is not a ratio of whole numbers.
[[nodiscard]] std::optional<Rational> to_rational(const Number& a);

}  // namespace fw::exact
