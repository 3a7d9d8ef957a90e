#include "exact/number.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"
#include "exact/bounds.hpp"
#include "exact/root_sum.hpp"

namespace fw::exact {
namespace {

using Nested = std::shared_ptr<const RootSum>;

int order(const RootSum& a, const RootSum& b) {
  if (a.size() != b.size()) {
    return a.size() < b.size() ? -1 : 1;
  }
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (a[i].radicand != b[i].radicand) {
      return a[i].radicand < b[i].radicand ? -1 : 1;
    }
    if (a[i].coefficient != b[i].coefficient) {
      // All signs positive comes first, since it is the plainer one to read.
      return a[i].coefficient > b[i].coefficient ? -1 : 1;
    }
  }
  return 0;
}

int order(const Nested& a, const Nested& b) {
  if (a == b) {
    return 0;
  }
  if (a == nullptr || b == nullptr) {
    return a == nullptr ? -1 : 1;
  }
  return order(*a, *b);
}

int order(const Component& a, const Component& b) {
  return a.pi_power != b.pi_power ? (a.pi_power < b.pi_power ? -1 : 1) : order(a.nested, b.nested);
}

// Writes later components by the nested root of an earlier one, where √N₂ is a sum of roots times √N₁.
void merge_nested_roots(std::vector<Component>& components) {
  for (std::size_t i = 0; i < components.size(); ++i) {
    for (std::size_t j = i + 1; j < components.size(); ++j) {
      Component& first = components[i];
      Component& second = components[j];
      if (first.nested == nullptr || second.pi_power != first.pi_power) {
        continue;
      }
      if (const std::optional<RootSum> root = denested(multiply(*first.nested, *second.nested))) {
        const RootSum ratio = multiply(*root, inverse(*first.nested));
        first.factor = add(first.factor, multiply(second.factor, ratio));
        second.factor.clear();
      }
    }
  }
}

void drop_zeros(std::vector<Component>& components) {
  components.erase(
      std::remove_if(components.begin(), components.end(), [](const Component& c) { return c.factor.empty(); }),
      components.end());
}

void bring_into_canonical_form(std::vector<Component>& components) {
  if (components.size() < 2) {
    drop_zeros(components);
    return;
  }
  std::stable_sort(components.begin(), components.end(),
                   [](const Component& a, const Component& b) { return order(a, b) < 0; });
  std::size_t last = 0;
  for (std::size_t i = 1; i < components.size(); ++i) {
    if (order(components[last], components[i]) == 0) {
      components[last].factor = add(components[last].factor, components[i].factor);
    } else {
      ++last;
      if (last != i) {
        components[last] = std::move(components[i]);
      }
    }
  }
  components.resize(last + 1);
  drop_zeros(components);
  merge_nested_roots(components);
  drop_zeros(components);
}

Component product(const Component& a, const Component& b) {
  Component result{a.pi_power + b.pi_power, nullptr, multiply(a.factor, b.factor)};
  if (a.nested == nullptr || b.nested == nullptr) {
    result.nested = a.nested == nullptr ? b.nested : a.nested;
  } else if (order(a.nested, b.nested) == 0) {
    result.factor = multiply(result.factor, *a.nested);
  } else {
    const NestedRoot root = root_of(multiply(*a.nested, *b.nested));
    result.factor = multiply(result.factor, root.factor);
    result.nested = root.nested;
  }
  return result;
}

Component inverse(const Component& a) {
  Component result{-a.pi_power, a.nested, inverse(a.factor)};
  if (a.nested != nullptr) {
    result.factor = multiply(result.factor, inverse(*a.nested));
  }
  return result;
}

const std::vector<Component>& components(const Number& a) { return a.parts().components; }

// Sums and differences that vanish in 60 digits are zero, so that a - b is zero whenever a equals b.
Real without_noise(const Real& sum, const Real& a, const Real& b) {
  static const Real noise = mp::pow(Real(10), -60);
  return mp::abs(sum) <= noise * std::max(mp::abs(a), mp::abs(b)) ? Real(0) : sum;
}

// 1/a for up to two components of one power of π: (c₁ + c₂)(c₁ - c₂) has no nested root left.
std::optional<Number> exact_inverse(const Number& a) {
  const std::vector<Component>& parts = components(a);
  const bool few = std::all_of(parts.begin(), parts.end(), [](const Component& c) {
    return has_few_roots(c.factor) && (c.nested == nullptr || has_few_roots(*c.nested));
  });
  if (!few) {
    return std::nullopt;
  }
  if (parts.size() == 1) {
    return make_exact(std::vector<Component>{inverse(parts.front())});
  }
  if (parts.size() != 2 || parts[0].pi_power != parts[1].pi_power) {
    return std::nullopt;
  }
  const Number first = make_exact(std::vector<Component>{parts[0]});
  const Number second = make_exact(std::vector<Component>{parts[1]});
  const Number below = first * first - second * second;
  if (components(below).size() != 1 || !has_few_roots(components(below).front().factor)) {
    return std::nullopt;
  }
  return (first - second) * make_exact(std::vector<Component>{inverse(components(below).front())});
}

Number leading_part(const Number& a) {
  std::vector<Component> leading;
  for (const Component& component : components(a)) {
    if (component.pi_power == components(a).back().pi_power) {
      leading.push_back(component);
    }
  }
  return make_exact(std::move(leading));
}

int pi_span(const Number& a) { return components(a).back().pi_power - components(a).front().pi_power; }

// Long division of polynomials in π: the quotient if nothing is left over.
std::optional<Number> exact_quotient(const Number& a, const Number& b) {
  const std::optional<Number> inverse_of_leading = exact_inverse(leading_part(b));
  if (!inverse_of_leading) {
    return std::nullopt;
  }
  Number rest = a;
  Number quotient;
  for (int steps = pi_span(a) - pi_span(b) + 1; steps > 0 && !rest.is_zero(); --steps) {
    const Number part = leading_part(rest) * *inverse_of_leading;
    quotient = quotient + part;
    rest = rest - part * b;
  }
  return rest.is_zero() ? std::optional<Number>(quotient) : std::nullopt;
}

}  // namespace

Number make_exact(std::vector<Component> given) {
  bring_into_canonical_form(given);
  NumberParts parts;
  const Bounded<double> value = bounded<double>(given);
  const bool finite = std::isfinite(value.value) && std::isfinite(value.error);
  parts.estimate = finite ? value.value : 0.0;
  parts.error = finite ? value.error : std::numeric_limits<double>::infinity();
  parts.components = std::move(given);
  return Number(std::make_shared<const NumberParts>(std::move(parts)));
}

Number make_exact(const Rational& value) {
  return value == 0 ? Number() : make_exact(std::vector<Component>{{0, nullptr, root_sum(value)}});
}

Number make_inexact(const Real& value) {
  NumberParts parts;
  parts.inexact = value;
  const double estimate = value.convert_to<double>();
  const bool finite = std::isfinite(estimate);
  parts.estimate = finite ? estimate : 0.0;
  parts.error = finite ? std::abs(estimate) * 1e-15 + std::numeric_limits<double>::min()
                       : std::numeric_limits<double>::infinity();
  return Number(std::make_shared<const NumberParts>(std::move(parts)));
}

Real to_real(const Number& a) {
  if (a.parts().inexact) {
    return *a.parts().inexact;
  }
  const Bounded<Real> value = bounded<Real>(components(a));
  static const Real fine = mp::pow(Real(10), -70);
  if (mp::abs(value.value) * fine >= value.error || components(a).empty()) {
    return value.value;
  }
  return Real(bounded<Decimal<1000>>(components(a)).value);
}

std::optional<Rational> to_rational(const Number& a) {
  if (!a.is_rational()) {
    return std::nullopt;
  }
  return a.is_zero() ? Rational(0) : components(a).front().factor.front().coefficient;
}

Number::Number() {
  static const std::shared_ptr<const NumberParts> zero = std::make_shared<const NumberParts>();
  parts_ = zero;
}
Number::Number(std::shared_ptr<const NumberParts> parts) : parts_(std::move(parts)) {}

Number Number::whole(long long value) { return make_exact(Rational(value)); }

Number Number::ratio(long long numerator, long long denominator) {
  ensure(denominator != 0, "a fraction was made with the denominator 0");
  return make_exact(Rational(Integer(numerator)) / Rational(Integer(denominator)));
}

Number Number::of_double(double value) {
  ensure(std::isfinite(value), "a number was made from an infinity or from NaN");
  return make_exact(Rational(value));
}

Number Number::pi() { return make_exact(std::vector<Component>{{1, nullptr, root_sum(Rational(1))}}); }

Number Number::polygon_cotangent(int n) {
  ensure(n >= 3, "a polygon has at least 3 sides");
  const auto root = [](long long radicand) { return square_root(whole(radicand)); };
  switch (n) {
    case 3:
      return root(3) / whole(3);
    case 4:
      return whole(1);
    case 5:
      return square_root(whole(25) + whole(10) * root(5)) / whole(5);
    case 6:
      return root(3);
    case 8:
      return whole(1) + root(2);
    case 10:
      return square_root(whole(5) + whole(2) * root(5));
    case 12:
      return whole(2) + root(3);
    default:
      break;
  }
  const Real angle = boost::math::constants::pi<Real>() / n;
  return make_inexact(mp::cos(angle) / mp::sin(angle));
}

std::optional<Number> Number::from_decimal(std::string_view text) {
  bool negative = false;
  constexpr std::string_view minus = "−";
  if (text.substr(0, 1) == "-" || text.substr(0, minus.size()) == minus) {
    negative = true;
    text.remove_prefix(text.front() == '-' ? 1 : minus.size());
  }
  Integer digits = 0;
  Integer scale = 1;
  bool after_point = false;
  bool digit_last = false;
  for (const char c : text) {
    if (c == '.' && !after_point) {
      after_point = true;
      digit_last = false;
      continue;
    }
    if (c < '0' || c > '9') {
      return std::nullopt;
    }
    digits = digits * 10 + (c - '0');
    scale = after_point ? scale * 10 : scale;
    digit_last = true;
  }
  if (!digit_last) {
    return std::nullopt;
  }
  return make_exact(Rational(negative ? -digits : digits, scale));
}

bool Number::is_exact() const { return !parts_->inexact.has_value(); }

bool Number::is_rational() const {
  const std::vector<Component>& c = parts_->components;
  return is_exact() && (c.empty() || (c.size() == 1 && c.front().pi_power == 0 && c.front().nested == nullptr &&
                                      exact::is_rational(c.front().factor)));
}

bool Number::is_whole() const {
  return is_rational() && (is_zero() || mp::denominator(parts_->components.front().factor.front().coefficient) == 1);
}

bool Number::is_zero() const { return sign() == 0; }

int Number::sign() const {
  if (parts_->inexact) {
    return parts_->inexact->sign();
  }
  if (parts_->components.empty()) {
    return 0;
  }
  if (std::abs(parts_->estimate) > parts_->error) {
    return parts_->estimate < 0 ? -1 : 1;
  }
  return sign_by_bounds(parts_->components).sign;
}

double Number::to_double() const {
  if (parts_->error <= std::abs(parts_->estimate) * 1e-14) {
    return parts_->estimate;
  }
  return to_real(*this).convert_to<double>();
}

Number operator+(const Number& a, const Number& b) {
  if (!a.is_exact() || !b.is_exact()) {
    const Real x = to_real(a);
    const Real y = to_real(b);
    return make_inexact(without_noise(x + y, x, y));
  }
  std::vector<Component> sum = components(a);
  sum.insert(sum.end(), components(b).begin(), components(b).end());
  return make_exact(std::move(sum));
}

Number operator-(const Number& a, const Number& b) { return a + (-b); }

Number operator-(const Number& a) {
  if (!a.is_exact()) {
    return make_inexact(-to_real(a));
  }
  NumberParts parts = a.parts();
  for (Component& component : parts.components) {
    component.factor = scaled(std::move(component.factor), Rational(-1));
  }
  parts.estimate = -parts.estimate;
  return Number(std::make_shared<const NumberParts>(std::move(parts)));
}

Number operator*(const Number& a, const Number& b) {
  if (!a.is_exact() || !b.is_exact()) {
    return make_inexact(to_real(a) * to_real(b));
  }
  std::vector<Component> sum;
  sum.reserve(components(a).size() * components(b).size());
  for (const Component& x : components(a)) {
    for (const Component& y : components(b)) {
      sum.push_back(product(x, y));
    }
  }
  return make_exact(std::move(sum));
}

Number operator/(const Number& a, const Number& b) {
  ensure(!b.is_zero(), "a number was divided by zero");
  if (!a.is_exact() || !b.is_exact()) {
    return make_inexact(to_real(a) / to_real(b));
  }
  if (components(a).empty()) {
    return a;
  }
  if (const std::optional<Number> inverse = exact_inverse(b)) {
    return a * *inverse;
  }
  if (const std::optional<Number> quotient = exact_quotient(a, b)) {
    return *quotient;
  }
  return make_inexact(to_real(a) / to_real(b));
}

Number square_root(const Number& a) {
  ensure(a.sign() >= 0, "the square root of a negative number was asked for");
  if (a.is_exact()) {
    if (components(a).empty()) {
      return a;
    }
    const Component& only = components(a).front();
    if (components(a).size() == 1 && only.nested == nullptr && only.pi_power % 2 == 0) {
      NestedRoot root = root_of(only.factor);
      return make_exact(std::vector<Component>{{only.pi_power / 2, root.nested, std::move(root.factor)}});
    }
  }
  return make_inexact(mp::sqrt(to_real(a)));
}

Number cube_root(const Number& a) {
  if (a.is_exact()) {
    if (components(a).empty()) {
      return a;
    }
    // ∛(q√r) = ∛(q/r) √r
    const Component& only = components(a).front();
    if (components(a).size() == 1 && only.nested == nullptr && only.pi_power % 3 == 0 && only.factor.size() == 1) {
      const Rational ratio = only.factor.front().coefficient / Rational(only.factor.front().radicand);
      const std::optional<Integer> above = perfect_cube_root(mp::numerator(ratio));
      const std::optional<Integer> below = perfect_cube_root(mp::denominator(ratio));
      if (above && below) {
        return make_exact(std::vector<Component>{
            {only.pi_power / 3, nullptr, {{only.factor.front().radicand, Rational(*above, *below)}}}});
      }
    }
  }
  const Real value = to_real(a);
  const Real root = mp::exp(mp::log(mp::abs(value)) / 3);
  return make_inexact(value == 0 ? Real(0) : (value < 0 ? -root : root));
}

Number power(const Number& a, int exponent) {
  if (exponent < 0) {
    return Number::whole(1) / power(a, -exponent);
  }
  Number result = Number::whole(1);
  Number square = a;
  for (int left = exponent; left > 0; left /= 2) {
    if (left % 2 == 1) {
      result = result * square;
    }
    if (left > 1) {
      square = square * square;
    }
  }
  return result;
}

}  // namespace fw::exact
