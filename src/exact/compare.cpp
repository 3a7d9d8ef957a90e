#include <cmath>

#include "exact/bounds.hpp"

namespace fw::exact {
namespace {

template <class R>
int decided_sign(const std::vector<Component>& components) {
  using std::abs;
  const Bounded<R> value = bounded<R>(components);
  return abs(value.value) > value.error ? (value.value < 0 ? -1 : 1) : 0;
}

}  // namespace

DecidedSign sign_by_bounds(const std::vector<Component>& components) {
  if (components.empty() || (components.size() == 1 && components.front().factor.empty())) {
    return {0, Decider::CanonicalForm};
  }
  if (const int sign = decided_sign<double>(components)) {
    return {sign, Decider::Doubles};
  }
  if (const int sign = decided_sign<Real>(components)) {
    return {sign, Decider::Digits120};
  }
  if (const int sign = decided_sign<Decimal<330>>(components)) {
    return {sign, Decider::Digits330};
  }
  if (const int sign = decided_sign<Decimal<1000>>(components)) {
    return {sign, Decider::Digits1000};
  }
  return {0, Decider::Undecided};
}

DecidedSign compare_and_tell(const Number& a, const Number& b) {
  const NumberParts& x = a.parts();
  const NumberParts& y = b.parts();
  if (&x == &y) {
    return {0, Decider::CanonicalForm};
  }
  const double difference = x.estimate - y.estimate;
  // The factor covers the rounding of the difference and of the sum of the bounds.
  if (std::abs(difference) * (1.0 - 1e-12) > x.error + y.error) {
    return {difference < 0 ? -1 : 1, Decider::Doubles};
  }
  const Number exact_difference = a - b;
  if (!exact_difference.is_exact()) {
    return {exact_difference.sign(), Decider::Inexact};
  }
  return sign_by_bounds(exact_difference.parts().components);
}

int compare(const Number& a, const Number& b) { return compare_and_tell(a, b).sign; }

}  // namespace fw::exact
