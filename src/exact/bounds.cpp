#include "exact/bounds.hpp"

#include <boost/math/constants/constants.hpp>
#include <cmath>
#include <limits>

namespace fw::exact {
namespace {

template <class R>
R real_of(const Integer& n) {
  return n.template convert_to<R>();
}

template <class R>
R real_of(const Rational& q) {
  const Integer& below = mp::denominator(q);
  return below == 1 ? real_of<R>(mp::numerator(q)) : real_of<R>(mp::numerator(q)) / real_of<R>(below);
}

template <class R>
Bounded<R> bounded_sum(const RootSum& sum) {
  using std::abs;
  using std::sqrt;
  R value = 0;
  R size = 0;
  for (const RootTerm& term : sum) {
    R part = real_of<R>(term.coefficient);
    if (term.radicand != 1) {
      part *= sqrt(real_of<R>(term.radicand));
    }
    value += part;
    size += abs(part);
  }
  // Four roundings a term, each of half a unit at most, and one for each sum; twice that for safety.
  const R unit = std::numeric_limits<R>::epsilon() * R(8 + 2 * static_cast<int>(sum.size()));
  return {value, size * unit + std::numeric_limits<R>::min()};
}

template <class R>
Bounded<R> product(const Bounded<R>& a, const Bounded<R>& b) {
  using std::abs;
  const R value = a.value * b.value;
  return {value, abs(a.value) * b.error + abs(b.value) * a.error + a.error * b.error +
                     abs(value) * std::numeric_limits<R>::epsilon() * R(4)};
}

template <class R>
Bounded<R> root(const Bounded<R>& a) {
  using std::sqrt;
  if (!(a.value > a.error * R(2))) {
    return {R(0), sqrt(a.error * R(4) + (a.value > 0 ? a.value : R(0)))};
  }
  const R value = sqrt(a.value);
  return {value, a.error / value + value * std::numeric_limits<R>::epsilon() * R(4)};
}

template <class R>
Bounded<R> pi_to_the(int power) {
  using std::abs;
  const R& pi = boost::math::constants::pi<R>();
  R value = 1;
  for (int i = 0; i < (power < 0 ? -power : power); ++i) {
    value *= pi;
  }
  if (power < 0) {
    value = 1 / value;
  }
  return {value, value * std::numeric_limits<R>::epsilon() * R(4 * (2 + abs(power)))};
}

}  // namespace

template <class R>
Bounded<R> bounded(const std::vector<Component>& components) {
  using std::abs;
  Bounded<R> sum;
  for (const Component& component : components) {
    Bounded<R> part = bounded_sum<R>(component.factor);
    if (component.pi_power != 0) {
      part = product(part, pi_to_the<R>(component.pi_power));
    }
    if (component.nested != nullptr) {
      part = product(part, root(bounded_sum<R>(*component.nested)));
    }
    sum.value += part.value;
    sum.error += part.error + abs(sum.value) * std::numeric_limits<R>::epsilon();
  }
  return sum;
}

// Here alone: each takes seconds to compile.
template Bounded<double> bounded(const std::vector<Component>& components);
template Bounded<Real> bounded(const std::vector<Component>& components);
template Bounded<Decimal<330>> bounded(const std::vector<Component>& components);
template Bounded<Decimal<1000>> bounded(const std::vector<Component>& components);

}  // namespace fw::exact
