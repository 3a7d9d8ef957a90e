#include "exact/polynomial.hpp"

#include <cmath>
#include <numeric>

#include "exact/number_parts.hpp"

namespace fw::exact {
namespace {

constexpr int greatest_common_power = 4;
constexpr int most_halvings = 2000;
constexpr long long greatest_denominator = 10000;

template <class N>
using Coefficients = std::vector<N>;

// What part of a sum is nothing but rounding, and to what part of itself a root is found.
template <class R>
struct Fineness {
  R noise, root;
};
template <class R>
const Fineness<R>& fineness();
template <>
const Fineness<double>& fineness() {
  static const Fineness<double> fine{1e-11, 1e-15};
  return fine;
}
template <>
const Fineness<Real>& fineness() {
  static const Fineness<Real> fine{mp::pow(Real(10), -60), mp::pow(Real(10), -110)};
  return fine;
}

template <class R>
R size_of(const R& x) {
  return x < 0 ? -x : x;
}

template <class R>
R value_at(const Coefficients<R>& polynomial, const R& x) {
  return std::accumulate(polynomial.rbegin(), polynomial.rend(), R(),
                         [&](const R& value, const R& coefficient) -> R { return value * x + coefficient; });
}

// The sign at x > 0, a value that is nothing but rounding being 0.
template <class R>
int sign_at(const Coefficients<R>& polynomial, const R& x) {
  Coefficients<R> sizes = polynomial;
  std::transform(sizes.begin(), sizes.end(), sizes.begin(), size_of<R>);
  const R value = value_at(polynomial, x);
  return size_of(value) <= value_at(sizes, x) * fineness<R>().noise ? 0 : value < 0 ? -1 : 1;
}

// ---- degree 2 ----

Coefficients<Number> roots_of_quadratic(const Coefficients<Number>& p) {
  const Number discriminant = p[1] * p[1] - Number::whole(4) * p[2] * p[0];
  if (discriminant.sign() < 0) {
    return {};
  }
  const Number twice = Number::whole(2) * p[2];
  if (discriminant.is_zero()) {
    return {-p[1] / twice};
  }
  const Number root = square_root(discriminant);
  return {(-p[1] - root) / twice, (-p[1] + root) / twice};
}

// The constant one is not zero.
template <class R>
Coefficients<R> roots_of_quadratic(const Coefficients<R>& p) {
  using std::sqrt;
  const R product = 4 * p[2] * p[0];
  const R discriminant = p[1] * p[1] - product;
  const R slack = (p[1] * p[1] + size_of(product)) * fineness<R>().noise;
  if (discriminant < -slack) {
    return {};
  }
  const R root = discriminant < 0 ? R() : R(sqrt(discriminant));
  // Adding what has the same sign keeps the digits.
  const R half = -(p[1] < 0 ? p[1] - root : p[1] + root) / 2;
  return discriminant > slack ? Coefficients<R>{p[0] / half, half / p[2]} : Coefficients<R>{p[0] / half};
}

// ---- degree 3 and more: between the roots of the derivative a polynomial only rises or only falls ----

// Beyond it there is no root. Source: M. Fujiwara, Über die obere Schranke des absoluten Betrages der Wurzeln einer
// algebraischen Gleichung (1916; from memory).
template <class R>
R bound_of_roots(const Coefficients<R>& p) {
  using std::pow;
  R bound = 0;
  for (std::size_t i = 0; i + 1 < p.size(); ++i) {
    const R ratio = size_of(R(p[i] / p.back()));
    bound = std::max(bound, R(2 * pow(ratio, R(1) / R(static_cast<long long>(p.size() - 1 - i)))));
  }
  return bound * R(1.01);
}

// Newton's method, with the interval halved whenever a step leaves it or does not shorten it by half.
// Requires: the signs at low and high differ.
template <class R>
R root_between(const Coefficients<R>& polynomial, const Coefficients<R>& slope, R low, R high) {
  const R fine = fineness<R>().root;
  const bool is_below = value_at(polynomial, low) < 0;
  R x = (low + high) / 2;
  for (int i = 0; i < most_halvings; ++i) {
    const R value = value_at(polynomial, x);
    if (value == 0) {
      return x;
    }
    const R width = high - low;
    ((value < 0) == is_below ? low : high) = x;
    const R steepness = value_at(slope, x);
    R next = steepness == 0 ? low : R(x - value / steepness);
    const bool converged = size_of(R(next - x)) <= fine * x;
    if (converged && next >= low && next <= high) {
      return next;
    }
    if (next <= low || next >= high || (i % 2 == 1 && (high - low) * 2 > width)) {
      next = (low + high) / 2;
    }
    if (high - low <= fine * high) {
      return next;
    }
    x = next;
  }
  return x;
}

template <class N>
Coefficients<N> roots_of(Coefficients<N> p);

template <class R>
Coefficients<R> roots_between_turns(const Coefficients<R>& polynomial) {
  Coefficients<R> slope;
  for (std::size_t i = 1; i < polynomial.size(); ++i) {
    slope.push_back(polynomial[i] * static_cast<R>(static_cast<long long>(i)));
  }
  const R bound = bound_of_roots(polynomial);
  Coefficients<R> ends = {R()};
  for (const R& turn : roots_of(slope)) {
    if (turn < bound) {
      ends.push_back(turn);
    }
  }
  ends.push_back(bound);
  Coefficients<R> roots;
  int low = polynomial.front() < 0 ? -1 : 1;  // not 0: powers of x are taken out
  for (std::size_t i = 1; i < ends.size(); ++i) {
    const int high = sign_at(polynomial, ends[i]);
    // A root at a turn is found at the end of the interval before it.
    if (high == 0 || low * high < 0) {
      roots.push_back(high == 0 ? ends[i] : root_between(polynomial, slope, ends[i - 1], ends[i]));
    }
    low = high;
  }
  return roots;
}

// The ratio of small whole numbers next to x, by its continued fraction, if it is a root too.
std::optional<Number> rational_root_near(const Coefficients<Number>& polynomial, const Number& x) {
  Real rest = to_real(x);
  Integer above = 1;
  Integer below = 0;
  Integer above_before = 0;
  Integer below_before = 1;
  for (int step = 0; step < 40; ++step) {
    const Real whole = mp::floor(rest);
    const Integer n = whole.convert_to<Integer>();
    std::swap(above, above_before);
    std::swap(below, below_before);
    above += n * above_before;
    below += n * below_before;
    if (below > greatest_denominator) {
      return std::nullopt;
    }
    const Number candidate = make_exact(Rational(above, below));
    if (compare(approximation(candidate), x) == 0) {
      const Number value = value_at(polynomial, candidate);
      return value.is_exact() && value.is_zero() ? std::optional<Number>(candidate) : std::nullopt;
    }
    if (rest == whole) {
      return std::nullopt;
    }
    rest = 1 / (rest - whole);
  }
  return std::nullopt;
}

Coefficients<Number> roots_between_turns(const Coefficients<Number>& polynomial) {
  Coefficients<Real> reals;
  std::transform(polynomial.begin(), polynomial.end(), std::back_inserter(reals), to_real);
  Coefficients<Number> roots;
  for (const Real& real : roots_between_turns(reals)) {
    const Number root = make_inexact(real);
    roots.push_back(rational_root_near(polynomial, root).value_or(root));
  }
  return roots;
}

// ---- any degree ----

template <class N>
N root_of_degree(const N& a, int degree) {
  using std::cbrt;
  using std::sqrt;
  return degree == 3 ? N(cbrt(a)) : degree == 2 ? N(sqrt(a)) : N(sqrt(N(sqrt(a))));
}
Number root_of_degree(const Number& a, int degree) {
  return degree == 3 ? cube_root(a) : degree == 2 ? square_root(a) : square_root(square_root(a));
}

// The greatest g <= 4 such that every power that occurs is a multiple of g.
template <class N>
std::size_t common_power(const Coefficients<N>& polynomial) {
  std::size_t common = 0;
  for (std::size_t i = 1; i < polynomial.size(); ++i) {
    common = polynomial[i] == N() ? common : std::gcd(common, i);
  }
  std::size_t power = greatest_common_power;
  while (common % power != 0) {
    --power;
  }
  return power;
}

// Those above zero, in rising order.
template <class N>
Coefficients<N> roots_of(Coefficients<N> p) {
  p.erase(p.begin(), std::find_if(p.begin(), p.end(), [](const N& c) { return !(c == N()); }));
  if (p.size() < 2) {
    return {};
  }
  if (const std::size_t power = common_power(p); power > 1) {
    Coefficients<N> reduced;
    for (std::size_t i = 0; i < p.size(); i += power) {
      reduced.push_back(p[i]);
    }
    Coefficients<N> roots = roots_of(std::move(reduced));
    std::transform(roots.begin(), roots.end(), roots.begin(),
                   [&](const N& root) { return root_of_degree(root, static_cast<int>(power)); });
    return roots;
  }
  Coefficients<N> roots = p.size() == 2   ? Coefficients<N>{-p[0] / p[1]}
                          : p.size() == 3 ? roots_of_quadratic(p)
                                          : roots_between_turns(p);
  roots.erase(std::remove_if(roots.begin(), roots.end(), [](const N& x) { return x <= N(); }), roots.end());
  std::sort(roots.begin(), roots.end());
  return roots;
}

}  // namespace

Number approximation(const Number& a) { return make_inexact(to_real(a)); }

std::vector<Number> positive_roots(const Polynomial<Number>& polynomial) { return roots_of(polynomial.coefficients()); }
std::vector<double> positive_roots(const Polynomial<double>& polynomial) { return roots_of(polynomial.coefficients()); }

std::optional<Number> zero_between(const std::function<std::optional<Number>(const Number&)>& function,
                                   const Number& low, const Number& high) {
  Real a = to_real(low);
  Real b = to_real(high);
  const std::optional<Number> at_low = function(make_inexact(a));
  const std::optional<Number> at_high = function(make_inexact(b));
  if (!at_low || !at_high) {
    return std::nullopt;
  }
  if (at_high->is_zero()) {
    return make_inexact(b);
  }
  const int low_sign = at_low->sign();
  if (low_sign == 0) {
    return make_inexact(a);
  }
  const Real fine = mp::pow(Real(10), -100);
  for (int i = 0; i < most_halvings && mp::abs(b - a) > fine * mp::abs(b); ++i) {
    const Real middle = (a + b) / 2;
    const std::optional<Number> value = function(make_inexact(middle));
    if (!value) {
      return std::nullopt;
    }
    if (value->is_zero()) {
      return make_inexact(middle);
    }
    (value->sign() == low_sign ? a : b) = middle;
  }
  return make_inexact((a + b) / 2);
}

}  // namespace fw::exact
