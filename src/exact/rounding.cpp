#include "base/ensure.hpp"
#include "exact/bounds.hpp"

namespace fw::exact {
namespace {

Integer floor_of(const Rational& a) {
  Integer quotient;
  Integer rest;
  mp::divide_qr(mp::numerator(a), mp::denominator(a), quotient, rest);
  return rest < 0 ? quotient - 1 : quotient;
}

template <class R>
Integer floor_of(const R& a) {
  const R whole = mp::floor(a);
  return whole.template convert_to<Integer>();
}

// The floor of a number that is no whole number, once the bounds leave one choice.
template <class R>
std::optional<Integer> floor_within(const std::vector<Component>& components) {
  const Bounded<R> value = bounded<R>(components);
  const Integer low = floor_of(value.value - value.error);
  return low == floor_of(value.value + value.error) ? std::optional<Integer>(low) : std::nullopt;
}

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
  const std::vector<Component>& components = a.parts().components;
  std::optional<Integer> result = floor_within<Real>(components);
  if (!result) {
    result = floor_within<Decimal<330>>(components);
  }
  if (!result) {
    result = floor_within<Decimal<1000>>(components);
  }
  return result ? *result : floor_of(mp::round(bounded<Decimal<1000>>(components).value));
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
