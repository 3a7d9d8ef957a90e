#include "exact/root_sum.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "base/ensure.hpp"
#include "exact/bounds.hpp"

namespace fw::exact {
namespace {

constexpr std::uint64_t trial_limit = 10000;              // primes up to here are tried
constexpr std::uint64_t proven_limit = 1000000000000ULL;  // its cube
constexpr std::size_t most_independent_roots = 6;

bool is_proven(const Integer& radicand) { return radicand <= proven_limit; }

const std::vector<std::uint32_t>& small_primes() {
  static const std::vector<std::uint32_t> primes = [] {
    std::vector<std::uint32_t> found;
    for (std::uint32_t n = 2; n < trial_limit; ++n) {
      const bool divisible = std::any_of(found.begin(), found.end(), [n](std::uint32_t p) { return n % p == 0; });
      if (!divisible) {
        found.push_back(n);
      }
    }
    return found;
  }();
  return primes;
}

// Shared by both widths of whole number. Stops once p³ > n: what is left is then p, pq or p².
template <class Whole>
SquareParts take_squares(Whole n) {
  Whole square = 1;
  Whole rest = 1;
  for (const std::uint32_t p : small_primes()) {
    if (Whole(p) * p * p > n) {
      break;
    }
    while (n % p == 0) {
      n /= p;
      if (n % p == 0) {
        n /= p;
        square *= p;
      } else {
        rest *= p;
      }
    }
  }
  Integer left(n);
  if (const std::optional<Integer> root = perfect_root(left)) {
    return {Integer(square) * *root, Integer(rest)};
  }
  return {Integer(square), Integer(rest) * left};
}

int order(const Integer& a, const Integer& b) { return a.compare(b); }

// The factor f with √b = f√a, if a and b differ by a square.
std::optional<Rational> square_ratio(const Integer& a, const Integer& b) {
  if (a == b) {
    return Rational(1);
  }
  if (is_proven(a) && is_proven(b)) {
    return std::nullopt;
  }
  const Integer common = mp::gcd(a, b);
  const std::optional<Integer> below = perfect_root(a / common);
  const std::optional<Integer> above = below ? perfect_root(b / common) : std::nullopt;
  return above ? std::optional<Rational>(Rational(*above, *below)) : std::nullopt;
}

void add_term(RootSum& sum, const RootTerm& term) {
  if (term.coefficient == 0) {
    return;
  }
  const auto place = std::lower_bound(sum.begin(), sum.end(), term, [](const RootTerm& x, const RootTerm& y) {
    return order(x.radicand, y.radicand) < 0;
  });
  auto same = place;
  if (place == sum.end() || place->radicand != term.radicand) {
    same = std::find_if(sum.begin(), sum.end(),
                        [&](const RootTerm& other) { return square_ratio(other.radicand, term.radicand).has_value(); });
  }
  if (same == sum.end()) {
    sum.insert(place, term);
    return;
  }
  same->coefficient += term.coefficient * *square_ratio(same->radicand, term.radicand);
  if (same->coefficient == 0) {
    sum.erase(same);
  }
}

RootTerm product(const RootTerm& a, const RootTerm& b) {
  if (a.radicand == 1) {
    return {b.radicand, a.coefficient * b.coefficient};
  }
  if (b.radicand == 1) {
    return {a.radicand, a.coefficient * b.coefficient};
  }
  const Integer common = mp::gcd(a.radicand, b.radicand);
  const Integer radicand = (a.radicand / common) * (b.radicand / common);
  const Rational coefficient = a.coefficient * b.coefficient * Rational(common);
  if (is_proven(a.radicand) && is_proven(b.radicand)) {
    return {radicand, coefficient};
  }
  const SquareParts parts = square_parts(radicand);
  return {parts.rest, coefficient * Rational(parts.square)};
}

bool has_odd_power(Integer radicand, const Integer& base) {
  bool odd = false;
  while (radicand % base == 0) {
    radicand /= base;
    odd = !odd;
  }
  return odd;
}

// Numbers > 1 without common factors, of which all radicands are products; perfect squares are left out.
std::vector<Integer> coprime_base(const RootSum& a) {
  std::vector<Integer> base;
  std::vector<Integer> open;
  for (const RootTerm& term : a) {
    open.push_back(term.radicand);
  }
  while (!open.empty()) {
    Integer n = open.back();
    open.pop_back();
    for (std::size_t i = 0; i < base.size() && n > 1; ++i) {
      const Integer common = mp::gcd(n, base[i]);
      if (common == 1) {
        continue;
      }
      open.push_back(common);
      open.push_back(base[i] / common);
      n /= common;
      base.erase(base.begin() + static_cast<std::ptrdiff_t>(i));
      open.push_back(n);
      n = 1;
    }
    if (n > 1) {
      base.push_back(n);
    }
  }
  base.erase(std::remove_if(base.begin(), base.end(), [](const Integer& n) { return perfect_root(n).has_value(); }),
             base.end());
  std::sort(base.begin(), base.end());
  return base;
}

// a with √base turned into -√base.
RootSum conjugate(RootSum a, const Integer& base) {
  for (RootTerm& term : a) {
    if (has_odd_power(term.radicand, base)) {
      term.coefficient = -term.coefficient;
    }
  }
  return a;
}

const Integer* base_in_use(const RootSum& a, const std::vector<Integer>& base) {
  for (const Integer& candidate : base) {
    if (std::any_of(a.begin(), a.end(), [&](const RootTerm& t) { return has_odd_power(t.radicand, candidate); })) {
      return &candidate;
    }
  }
  return nullptr;
}

// Whether a lies in the field of the roots of `base` without `left_out`.
bool lies_in_field(const RootSum& a, const std::vector<Integer>& base, const Integer& left_out) {
  return std::all_of(a.begin(), a.end(), [&](const RootTerm& term) {
    if (has_odd_power(term.radicand, left_out)) {
      return false;
    }
    Integer n = term.radicand;
    for (const Integer& b : base) {
      while (n % b == 0) {
        n /= b;
      }
    }
    return perfect_root(n).has_value();
  });
}

// The greatest rational that leaves whole coefficients without a common factor.
Rational content(const RootSum& a) {
  Integer above = 0;
  Integer below = 1;
  for (const RootTerm& term : a) {
    above = mp::gcd(above, mp::numerator(term.coefficient));
    below = mp::lcm(below, mp::denominator(term.coefficient));
  }
  return Rational(mp::abs(above), below);
}

}  // namespace

std::optional<Integer> perfect_root(const Integer& n) {
  if (n < 0) {
    return std::nullopt;
  }
  Integer rest;
  const Integer root = mp::sqrt(n, rest);
  return rest == 0 ? std::optional<Integer>(root) : std::nullopt;
}

std::optional<Integer> perfect_cube_root(const Integer& n) {
  const Integer size = mp::abs(n);
  if (size == 0) {
    return Integer(0);
  }
  // Newton's method from above.
  Integer root = Integer(1) << (mp::msb(size) / 3 + 1);
  for (;;) {
    const Integer next = (2 * root + size / (root * root)) / 3;
    if (next >= root) {
      break;
    }
    root = next;
  }
  if (root * root * root != size) {
    return std::nullopt;
  }
  return n < 0 ? -root : root;
}

SquareParts square_parts(const Integer& n) {
  ensure(n > 0, "square factors were asked of a number that is not positive");
  return n <= (std::uint64_t{1} << 62U) ? take_squares(n.convert_to<std::uint64_t>()) : take_squares(n);
}

RootSum root_sum(const Rational& value) { return value == 0 ? RootSum{} : RootSum{{Integer(1), value}}; }

RootSum add(const RootSum& a, const RootSum& b) {
  RootSum sum = a;
  for (const RootTerm& term : b) {
    add_term(sum, term);
  }
  return sum;
}

RootSum subtract(const RootSum& a, const RootSum& b) { return add(a, scaled(b, Rational(-1))); }

RootSum multiply(const RootSum& a, const RootSum& b) {
  RootSum sum;
  for (const RootTerm& x : a) {
    for (const RootTerm& y : b) {
      add_term(sum, product(x, y));
    }
  }
  return sum;
}

RootSum scaled(RootSum a, const Rational& factor) {
  if (factor == 0) {
    return {};
  }
  for (RootTerm& term : a) {
    term.coefficient *= factor;
  }
  return a;
}

RootSum inverse(const RootSum& a) {
  ensure(!a.empty(), "a number was divided by zero");
  RootSum above = root_sum(Rational(1));
  RootSum below = a;
  while (below.size() > 1) {
    const std::vector<Integer> base = coprime_base(below);
    const Integer* flipped = base_in_use(below, base);
    ensure(flipped != nullptr, "a sum of different roots has no conjugate");
    const RootSum other = conjugate(below, *flipped);
    above = multiply(above, other);
    below = multiply(below, other);
  }
  const RootTerm& last = below.front();
  return multiply(above, RootSum{{last.radicand, 1 / (last.coefficient * Rational(last.radicand))}});
}

bool has_few_roots(const RootSum& a) { return a.size() < 3 || coprime_base(a).size() <= most_independent_roots; }

int sign(const RootSum& a) { return sign_by_bounds({Component{0, nullptr, a}}).sign; }

bool is_rational(const RootSum& a) { return a.empty() || (a.size() == 1 && a.front().radicand == 1); }

RootSum root_of(const Rational& a) {
  ensure(a >= 0, "the square root of a negative number was asked for");
  if (a == 0) {
    return {};
  }
  const SquareParts above = square_parts(mp::numerator(a));
  const SquareParts below = square_parts(mp::denominator(a));
  return {{above.rest * below.rest, Rational(above.square, below.square * below.rest)}};
}

std::optional<RootSum> denested(const RootSum& a) {
  if (a.empty()) {
    return a;
  }
  if (sign(a) < 0) {
    return std::nullopt;
  }
  if (is_rational(a)) {
    return root_of(a.front().coefficient);
  }
  const std::vector<Integer> base = coprime_base(a);
  const Integer* chosen = base_in_use(a, base);
  if (chosen == nullptr || base.size() > most_independent_roots) {
    return std::nullopt;
  }
  const RootSum other = conjugate(a, *chosen);
  const std::optional<RootSum> e = denested(multiply(a, other));
  if (!e || !lies_in_field(*e, base, *chosen)) {
    return std::nullopt;
  }
  const RootSum without = scaled(add(a, other), Rational(1, 2));
  const std::optional<RootSum> first = denested(scaled(add(without, *e), Rational(1, 2)));
  const std::optional<RootSum> second = first ? denested(scaled(subtract(without, *e), Rational(1, 2))) : std::nullopt;
  if (!second) {
    return std::nullopt;
  }
  return sign(subtract(a, other)) > 0 ? add(*first, *second) : subtract(*first, *second);
}

NestedRoot root_of(const RootSum& a) {
  if (is_rational(a)) {
    return {root_of(a.empty() ? Rational(0) : a.front().coefficient), nullptr};
  }
  const Rational common = content(a);
  const RootSum primitive = scaled(a, 1 / common);
  const RootSum outside = root_of(common);
  if (const std::optional<RootSum> root = denested(primitive)) {
    return {multiply(outside, *root), nullptr};
  }
  return {outside, std::make_shared<const RootSum>(primitive)};
}

}  // namespace fw::exact
