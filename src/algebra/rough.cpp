#include "algebra/rough.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "algebra/radical_fraction.hpp"

namespace fw::algebra {
namespace {

/// A double that knows how much of it is noise: beside the sum of its terms, the sum of their sizes. What is 10^-11 of
/// that or less is nothing but rounding, and zero.
struct Rough {
  double value = 0;
  double size = 0;

  Rough() = default;
  explicit Rough(double number) : Rough(number, std::abs(number)) {}
  Rough(double number, double terms) : value(std::abs(number) <= noise * terms ? 0 : number), size(terms) {}
  static constexpr double noise = 1e-11;
};
bool operator==(const Rough& a, const Rough& b) { return a.value == b.value; }
Rough operator-(const Rough& a) { return {-a.value, a.size}; }
Rough operator+(const Rough& a, const Rough& b) { return {a.value + b.value, a.size + b.size}; }
Rough operator*(const Rough& a, const Rough& b) { return {a.value * b.value, a.size * b.size}; }
Rough operator/(const Rough& a, const Rough& b) { return Rough(a.value / b.value); }

std::optional<Rough> rough(double number) { return std::isnan(number) ? std::nullopt : std::optional(Rough(number)); }
std::optional<Rough> rooted(const Rough& a, int degree) { return rough(algebra::rooted(a.value, degree)); }

std::vector<double> positive_roots(const Polynomial<Rough>& polynomial) {
  std::vector<double> values;
  for (const Rough& coefficient : polynomial.coefficients()) {
    values.push_back(coefficient.value);
  }
  return exact::positive_roots(Polynomial<double>(values));
}

auto slot_leaf(const std::vector<double>& values) {
  return [&values](const RoughExpression& leaf) {
    return leaf.operation() == Operation::Symbol ? values[leaf.slot()] : leaf.number();
  };
}

PossibleFraction<Rough> fraction_of(const RoughExpression& expression, std::size_t unknown,
                                    const std::vector<double>& values) {
  return radical_fraction<Rough>(
      expression, [&](const RoughExpression& leaf) { return leaf.slot() == unknown; },
      [&](const RoughExpression& leaf) { return rough(slot_leaf(values)(leaf)); });
}

}  // namespace

RoughExpression::RoughExpression(const Expression& expression, const Numbering& number_of)
    : operation_(expression.operation()), exponent_(expression.exponent()) {
  if (operation_ == Operation::Number) {
    number_ = expression.number().to_double();
  } else if (operation_ == Operation::Symbol) {
    slot_ = number_of(expression.symbol());
    symbols_.set(slot_);
  }
  operands_.reserve(expression.operands().size());
  for (const Expression& operand : expression.operands()) {
    operands_.emplace_back(operand, number_of);
    symbols_ |= operands_.back().symbols_;
  }
}

std::size_t occurrences(const RoughExpression& expression, std::size_t slot) {
  std::size_t count = expression.slot() == slot ? 1 : 0;
  for (const RoughExpression& operand : expression.operands()) {
    count += occurrences(operand, slot);
  }
  return count;
}

double RoughExpression::value(const std::vector<double>& values) const {
  return value_of<double>(*this, slot_leaf(values));
}

RoughEquation::RoughEquation(const Equation& equation, const Numbering& number_of)
    : left_(equation.left, number_of),
      right_(equation.right, number_of),
      symbols_(left_.symbols() | right_.symbols()) {}

double RoughEquation::difference(const std::vector<double>& values) const {
  const double left = left_.value(values);
  const double right = right_.value(values);
  const double size = std::abs(left) + std::abs(right);
  return size == 0 ? 0 : std::abs(left - right) / size;
}

std::vector<double> RoughEquation::positive_solutions(std::size_t unknown, const std::vector<double>& values) const {
  const std::size_t on_left = occurrences(left_, unknown);
  const std::size_t on_right = occurrences(right_, unknown);
  if (on_left + on_right != 1) {
    return on_left + on_right == 0 ? std::vector<double>{} : by_polynomial(unknown, values);
  }
  const auto leaf = slot_leaf(values);
  Undoing<double, std::size_t, decltype(leaf)> undoing(unknown, leaf);
  undoing.undo(on_left == 1 ? left_ : right_, (on_left == 1 ? right_ : left_).value(values));
  std::vector<double> found = undoing.found();
  std::sort(found.begin(), found.end());
  return found;
}

/// A few of Newton's steps in the equation as it stands: the coefficients of a high power have lost digits.
double RoughEquation::polished(std::size_t unknown, double root, const std::vector<double>& values) const {
  std::vector<double> tried = values;
  const auto at = [&](double x) {
    tried[unknown] = x;
    return excess(tried);
  };
  double best = std::abs(at(root));
  for (int step = 0; step < 4; ++step) {
    const double width = 1e-6 * root;
    const double next = root - at(root) * 2 * width / (at(root + width) - at(root - width));
    const double here = std::abs(at(next));
    if (!(here < best) || next <= 0) {
      break;
    }
    root = next;
    best = here;
  }
  return root;
}

std::vector<double> RoughEquation::by_polynomial(std::size_t unknown, const std::vector<double>& values) const {
  const auto left = fraction_of(left_, unknown, values);
  const auto whole = combined(Operation::Difference, left, left ? fraction_of(right_, unknown, values) : left);
  if (!whole) {
    return by_search(unknown, values);
  }
  std::vector<double> kept;
  std::vector<double> tried = values;
  for (const double root : positive_roots(whole->without_root())) {
    tried[unknown] = polished(unknown, root, values);
    if (whole->rooted.is_zero() || difference(tried) <= 1e-7) {
      kept.push_back(tried[unknown]);
    }
  }
  return kept;
}

/// Changes of sign between places 15 % apart, and pairs of them where the sides come close in between: for equations
/// with several roots.
std::vector<double> RoughEquation::by_search(std::size_t unknown, const std::vector<double>& values) const {
  constexpr double least = 1e-3;
  constexpr double most = 1e6;
  constexpr double stride = 1.15;
  std::vector<double> tried = values;
  const auto at = [&](double x) {
    tried[unknown] = x;
    return excess(tried);
  };
  std::vector<double> found;
  const auto close_in = [&](double low, double high) {
    const bool is_below = at(low) < 0;
    for (int step = 0; step < 60 && high - low > 1e-15 * high; ++step) {
      const double middle = (low + high) / 2;
      ((at(middle) < 0) == is_below ? low : high) = middle;
    }
    found.push_back((low + high) / 2);
  };
  double two_before = std::numeric_limits<double>::quiet_NaN();
  double before = at(least);
  for (double x = least * stride; x < most; x *= stride) {
    const double here = at(x);
    if ((before < 0 && here >= 0) || (before > 0 && here <= 0)) {
      close_in(x / stride, x);
    } else if (std::abs(before) < std::abs(two_before) && std::abs(before) < std::abs(here) &&
               (two_before < 0) == (here < 0)) {
      double low = x / stride / stride;
      double high = x;
      const double sign = here < 0 ? -1 : 1;
      for (int step = 0; step < 60; ++step) {
        const double first = low + (high - low) / 3;
        const double second = high - (high - low) / 3;
        if (sign * at(first) < sign * at(second)) {
          high = second;
        } else {
          low = first;
        }
      }
      if ((at(low) < 0) != (here < 0)) {
        close_in(x / stride / stride, low);
        close_in(low, x);
      }
    }
    two_before = before;
    before = here;
  }
  return found;
}

}  // namespace fw::algebra
