#include "base/ensure.hpp"
#include "exact/number_parts.hpp"

namespace fw::exact {
namespace {

Integer floor_of(const Rational& a) {
  Integer quotient;
  Integer rest;
  mp::divide_qr(mp::numerator(a), mp::denominator(a), quotient, rest);
  return rest < 0 ? quotient - 1 : quotient;
}

Integer floor_of(const Real& a) { return mp::floor(a).convert_to<Integer>(); }

Integer whole_floor(const Number& a) {
  if (const std::optional<Rational> ratio = to_rational(a)) {
    return floor_of(*ratio);
  }
  if (!a.is_exact()) {
    // What is a whole number to 60 digits is taken for one.
    const Real value = to_real(a);
    const Real nearest = mp::round(value);
    static const Real fine = mp::pow(Real(10), -60);
    const bool is_nearest = mp::abs(value - nearest) <= mp::abs(value) * fine;
    return is_nearest ? nearest.convert_to<Integer>() : floor_of(value);
  }
  // Digits that say 2.999... may be wrong by one; the exact comparison is not.
  const Integer near = floor_of(to_real(a));
  if (a < make_exact(Rational(near))) {
    return near - 1;
  }
  return a >= make_exact(Rational(near + 1)) ? near + 1 : near;
}

Integer ten_to_the(int places) { return mp::pow(Integer(10), static_cast<unsigned>(places)); }

}  // namespace

Number floor(const Number& a) { return make_exact(Rational(whole_floor(a))); }

Number rounded(const Number& a, int places) {
  ensure(places >= 0, "a number was to be rounded to a negative count of places");
  const bool negative = a.sign() < 0;
  const Integer scale = ten_to_the(places);
  const Number size = negative ? -a : a;
  const Integer whole = whole_floor(size * make_exact(Rational(scale)) + make_exact(Rational(1, 2)));
  return make_exact(Rational(negative ? -whole : whole, scale));
}

}  // namespace fw::exact
