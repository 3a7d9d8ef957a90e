#include "exact/polynomial.hpp"

#include <algorithm>
#include <numeric>

#include "exact/number_parts.hpp"

namespace fw::exact {
namespace {

constexpr int greatest_common_power = 4;
constexpr int most_halvings = 2000;
constexpr long long greatest_denominator = 10000;

Polynomial derivative(const Polynomial& polynomial) {
  Polynomial result;
  for (std::size_t i = 1; i < polynomial.size(); ++i) {
    result.push_back(polynomial[i] * Number::whole(static_cast<long long>(i)));
  }
  return result;
}

Number root_of_degree(const Number& a, int degree) {
  switch (degree) {
    case 2:
      return square_root(a);
    case 3:
      return cube_root(a);
    case 4:
      return square_root(square_root(a));
    default:
      return a;
  }
}

// The greatest g <= 4 such that every power that occurs is a multiple of g.
int common_power(const Polynomial& polynomial) {
  std::size_t common = 0;
  for (std::size_t i = 1; i < polynomial.size(); ++i) {
    common = polynomial[i].is_zero() ? common : std::gcd(common, i);
  }
  for (int power = greatest_common_power; power > 1; --power) {
    if (common % static_cast<std::size_t>(power) == 0) {
      return power;
    }
  }
  return 1;
}

std::vector<Number> roots_of_quadratic(const Polynomial& p) {
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

// The ratio of small whole numbers next to x, by its continued fraction, if it is a root too.
std::optional<Number> rational_root_near(const Polynomial& polynomial, const Number& x) {
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

// Beyond it there is no root (A.-L. Cauchy's bound).
Number bound_of_roots(const Polynomial& polynomial) {
  Number greatest;
  for (const Number& coefficient : polynomial) {
    const Number ratio = coefficient / polynomial.back();
    greatest = std::max(greatest, ratio.sign() < 0 ? -ratio : ratio);
  }
  return Number::whole(1) + greatest;
}

using RealPolynomial = std::vector<Real>;

Real value_at(const RealPolynomial& polynomial, const Real& x) {
  Real value = 0;
  for (auto coefficient = polynomial.rbegin(); coefficient != polynomial.rend(); ++coefficient) {
    value = value * x + *coefficient;
  }
  return value;
}

// The sign at x > 0, a value that vanishes in 60 digits being 0.
int sign_at(const RealPolynomial& polynomial, const Real& x) {
  RealPolynomial sizes = polynomial;
  std::transform(sizes.begin(), sizes.end(), sizes.begin(), [](const Real& c) { return mp::abs(c); });
  const Real value = value_at(polynomial, x);
  static const Real fine = mp::pow(Real(10), -60);
  return mp::abs(value) <= value_at(sizes, x) * fine ? 0 : value.sign();
}

RealPolynomial in_reals(const Polynomial& polynomial) {
  RealPolynomial result;
  std::transform(polynomial.begin(), polynomial.end(), std::back_inserter(result), to_real);
  return result;
}

// Newton's method, with the interval halved whenever a step leaves it or does not shorten it by half.
// Requires: the signs at low and high differ.
Real root_between(const RealPolynomial& polynomial, const RealPolynomial& slope, Real low, Real high) {
  const int low_sign = value_at(polynomial, low).sign();
  const Real fine = mp::pow(Real(10), -110);
  Real x = (low + high) / 2;
  for (int i = 0; i < most_halvings; ++i) {
    const Real value = value_at(polynomial, x);
    if (value == 0) {
      return x;
    }
    const Real width = high - low;
    (value.sign() == low_sign ? low : high) = x;
    const Real steepness = value_at(slope, x);
    Real next = steepness == 0 ? low : x - value / steepness;
    const bool converged = mp::abs(next - x) <= fine * mp::abs(x);
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

std::vector<Number> roots_between_turns(const Polynomial& polynomial) {
  const Polynomial derived = derivative(polynomial);
  const RealPolynomial values = in_reals(polynomial);
  const RealPolynomial slopes = in_reals(derived);
  std::vector<Real> ends = {Real(0)};
  for (const Number& turn : positive_roots(derived)) {
    ends.push_back(to_real(turn));
  }
  ends.push_back(std::max(to_real(bound_of_roots(polynomial)), ends.back() + 1));
  std::vector<Number> roots;
  int low = values.front().sign();  // not 0: powers of x are taken out
  for (std::size_t i = 1; i < ends.size(); ++i) {
    const int high = sign_at(values, ends[i]);
    // A root at a turn is found at the end of the interval before it.
    if (high == 0 || low * high < 0) {
      const Number root = make_inexact(high == 0 ? ends[i] : root_between(values, slopes, ends[i - 1], ends[i]));
      roots.push_back(rational_root_near(polynomial, root).value_or(root));
    }
    low = high;
  }
  return roots;
}

}  // namespace

Number approximation(const Number& a) { return make_inexact(to_real(a)); }

Number value_at(const Polynomial& polynomial, const Number& x) {
  Number value;
  for (auto coefficient = polynomial.rbegin(); coefficient != polynomial.rend(); ++coefficient) {
    value = value * x + *coefficient;
  }
  return value;
}

Polynomial product(const Polynomial& a, const Polynomial& b) {
  if (a.empty() || b.empty()) {
    return {};
  }
  Polynomial result(a.size() + b.size() - 1);
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      result[i + j] = result[i + j] + a[i] * b[j];
    }
  }
  return without_leading_zeros(std::move(result));
}

Polynomial without_leading_zeros(Polynomial polynomial) {
  while (!polynomial.empty() && polynomial.back().is_zero()) {
    polynomial.pop_back();
  }
  return polynomial;
}

std::vector<Number> positive_roots(const Polynomial& polynomial) {
  Polynomial p = without_leading_zeros(polynomial);
  const auto first = std::find_if(p.begin(), p.end(), [](const Number& c) { return !c.is_zero(); });
  p.erase(p.begin(), first);
  if (p.size() < 2) {
    return {};
  }
  const int power = common_power(p);
  if (power > 1) {
    Polynomial reduced;
    for (std::size_t i = 0; i < p.size(); i += static_cast<std::size_t>(power)) {
      reduced.push_back(p[i]);
    }
    std::vector<Number> roots = positive_roots(reduced);
    for (Number& root : roots) {
      root = root_of_degree(root, power);
    }
    return roots;
  }
  std::vector<Number> roots;
  if (p.size() == 2) {
    roots = {-p[0] / p[1]};
  } else if (p.size() == 3) {
    roots = roots_of_quadratic(p);
  } else {
    roots = roots_between_turns(p);
  }
  roots.erase(std::remove_if(roots.begin(), roots.end(), [](const Number& x) { return x.sign() <= 0; }), roots.end());
  std::sort(roots.begin(), roots.end());
  return roots;
}

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
