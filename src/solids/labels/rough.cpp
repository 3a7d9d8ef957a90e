#include "solids/labels/rough.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "solids/rough_polynomial.hpp"

namespace fw::solids {

using algebra::Operation;

namespace {

constexpr double no_root = std::numeric_limits<double>::quiet_NaN();

double combined(Operation operation, double a, double b) {
  switch (operation) {
    case Operation::Sum:
      return a + b;
    case Operation::Difference:
      return a - b;
    case Operation::Product:
      return a * b;
    default:
      return a / b;
  }
}

double raised(double base, int exponent) {
  double result = base;
  for (int i = 1; i < exponent; ++i) {
    result *= base;
  }
  return result;
}

double root_of(double value, int degree) { return degree == 3 ? std::cbrt(value) : std::sqrt(value); }

}  // namespace

RoughExpression::RoughExpression(const algebra::Expression& expression, const Numbering& number_of)
    : root_(add(expression, number_of)) {}

std::size_t RoughExpression::add(const algebra::Expression& expression, const Numbering& number_of) {
  Node node{expression.operation()};
  if (node.operation == Operation::Number) {
    node.number = expression.number().to_double();
  } else if (node.operation == Operation::Symbol) {
    node.slot = number_of(expression.symbol());
    symbols_.set(node.slot);
  } else {
    node.exponent = expression.exponent();
    std::vector<std::size_t> operands;
    for (const algebra::Expression& operand : expression.operands()) {
      operands.push_back(add(operand, number_of));
    }
    node.first = operands_.size();
    node.count = operands.size();
    operands_.insert(operands_.end(), operands.begin(), operands.end());
  }
  nodes_.push_back(node);
  return nodes_.size() - 1;
}

double RoughExpression::value_at(std::size_t index, const std::vector<double>& values) const {
  const Node& node = nodes_[index];
  switch (node.operation) {
    case Operation::Number:
      return node.number;
    case Operation::Symbol:
      return values[node.slot];
    case Operation::Power:
      return raised(value_at(operands_[node.first], values), node.exponent);
    case Operation::Root:
      return root_of(value_at(operands_[node.first], values), node.exponent);
    default:
      break;
  }
  double total = value_at(operands_[node.first], values);
  for (std::size_t i = 1; i < node.count; ++i) {
    total = combined(node.operation, total, value_at(operands_[node.first + i], values));
  }
  return total;
}

std::size_t RoughExpression::occurrences(std::size_t index, std::size_t slot) const {
  const Node& node = nodes_[index];
  if (node.operation == Operation::Symbol) {
    return node.slot == slot ? 1 : 0;
  }
  std::size_t count = 0;
  for (std::size_t i = 0; i < node.count; ++i) {
    count += occurrences(operands_[node.first + i], slot);
  }
  return count;
}

RoughEquation::RoughEquation(const algebra::Equation& equation, const Numbering& number_of)
    : left_(equation.left, number_of),
      right_(equation.right, number_of),
      symbols_(left_.symbols() | right_.symbols()) {}

double RoughEquation::difference(const std::vector<double>& values) const {
  const double left = left_.value(values);
  const double right = right_.value(values);
  const double size = std::abs(left) + std::abs(right);
  return size == 0 ? 0 : std::abs(left - right) / size;
}

// ---- an unknown that stands in one place: the equation is undone from the outside inward ----

struct RoughEquation::Inversion {
  std::size_t unknown;
  const std::vector<double>* values;
  std::vector<double> found;
};

void RoughEquation::invert(const RoughExpression& side, std::size_t index, double target, Inversion& inversion) const {
  const RoughExpression::Node& node = side.nodes_[index];
  if (node.operation == Operation::Symbol) {
    if (std::isfinite(target) && target > 0) {
      inversion.found.push_back(target);
    }
    return;
  }
  std::size_t inner = 0;
  while (side.occurrences(side.operands_[node.first + inner], inversion.unknown) == 0) {
    ++inner;
  }
  const std::size_t next = side.operands_[node.first + inner];
  double rest = target;
  for (std::size_t i = 0; i < node.count; ++i) {
    if (i == inner) {
      continue;
    }
    const double other = side.value_at(side.operands_[node.first + i], *inversion.values);
    const bool is_first = inner == 0;
    switch (node.operation) {
      case Operation::Sum:
        rest -= other;
        break;
      case Operation::Difference:
        rest = is_first ? rest + other : other - rest;
        break;
      case Operation::Product:
        rest /= other;
        break;
      default:
        rest = is_first ? rest * other : other / rest;
        break;
    }
  }
  if (node.operation == Operation::Root) {
    if (node.exponent == 3 || rest >= 0) {
      invert(side, next, raised(rest, node.exponent), inversion);
    }
    return;
  }
  if (node.operation != Operation::Power) {
    invert(side, next, rest, inversion);
    return;
  }
  if (node.exponent % 2 == 1) {
    invert(side, next, std::copysign(std::pow(std::abs(rest), 1.0 / node.exponent), rest), inversion);
  } else if (rest >= 0) {
    const double root = node.exponent == 2 ? std::sqrt(rest) : std::pow(rest, 1.0 / node.exponent);
    invert(side, next, root, inversion);
    if (side.nodes_[next].operation != Operation::Symbol && root > 0) {
      invert(side, next, -root, inversion);
    }
  }
}

std::vector<double> RoughEquation::positive_solutions(std::size_t unknown, const std::vector<double>& values) const {
  const std::size_t on_left = left_.occurrences(left_.root_, unknown);
  const std::size_t on_right = right_.occurrences(right_.root_, unknown);
  if (on_left + on_right != 1) {
    return on_left + on_right == 0 ? std::vector<double>{} : by_polynomial(unknown, values);
  }
  const RoughExpression& side = on_left == 1 ? left_ : right_;
  const RoughExpression& other = on_left == 1 ? right_ : left_;
  Inversion inversion{unknown, &values, {}};
  invert(side, side.root_, other.value(values), inversion);
  std::sort(inversion.found.begin(), inversion.found.end());
  return inversion.found;
}

// ---- an unknown that stands in several places: both sides as (plain + rooted √radicand) / below ----

namespace {

constexpr std::size_t greatest_size = 13;

struct Form {
  RoughPolynomial plain, rooted, radicand;
  RoughPolynomial below = constant(1);
};
using PossibleForm = std::optional<Form>;

bool same_polynomial(const RoughPolynomial& a, const RoughPolynomial& b) {
  return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(),
                                            [](const RoughTerm& x, const RoughTerm& y) { return x.value == y.value; });
}

std::optional<RoughPolynomial> shared_radicand(const Form& a, const Form& b) {
  if (a.rooted.empty()) {
    return b.radicand;
  }
  return b.rooted.empty() || same_polynomial(a.radicand, b.radicand) ? std::optional(a.radicand) : std::nullopt;
}

PossibleForm sum_of_forms(const Form& a, const Form& b) {
  const auto radicand = shared_radicand(a, b);
  if (!radicand) {
    return std::nullopt;
  }
  if (same_polynomial(a.below, b.below)) {
    return Form{sum(a.plain, b.plain), sum(a.rooted, b.rooted), *radicand, a.below};
  }
  return Form{sum(product(a.plain, b.below), product(b.plain, a.below)),
              sum(product(a.rooted, b.below), product(b.rooted, a.below)), *radicand, product(a.below, b.below)};
}

Form negative_of(const Form& a) { return {negative(a.plain), negative(a.rooted), a.radicand, a.below}; }

PossibleForm product_of_forms(const Form& a, const Form& b) {
  const auto radicand = shared_radicand(a, b);
  if (!radicand) {
    return std::nullopt;
  }
  return Form{sum(product(a.plain, b.plain), product(product(a.rooted, b.rooted), *radicand)),
              sum(product(a.plain, b.rooted), product(a.rooted, b.plain)), *radicand, product(a.below, b.below)};
}

PossibleForm inverse_of(const Form& a) {
  if (a.rooted.empty()) {
    return a.plain.empty() ? std::nullopt : PossibleForm(Form{a.below, {}, {}, a.plain});
  }
  // 1/(p + q√r) = (p − q√r)/(p² − q²r)
  const RoughPolynomial norm =
      sum(product(a.plain, a.plain), negative(product(product(a.rooted, a.rooted), a.radicand)));
  if (norm.empty()) {
    return std::nullopt;
  }
  return Form{product(a.below, a.plain), negative(product(a.below, a.rooted)), a.radicand, norm};
}

PossibleForm root_of_form(const Form& a, int degree) {
  if (!a.rooted.empty()) {
    return std::nullopt;
  }
  if (a.plain.size() > 1 || a.below.size() > 1) {
    return degree == 2 ? PossibleForm(Form{{}, constant(1), product(a.plain, a.below), a.below}) : std::nullopt;
  }
  const double value = root_of(a.plain.empty() ? 0 : a.plain[0].value / a.below[0].value, degree);
  return std::isnan(value) ? std::nullopt : PossibleForm(Form{constant(value), {}, {}});
}

PossibleForm combined_forms(Operation operation, const Form& a, const Form& b) {
  switch (operation) {
    case Operation::Sum:
      return sum_of_forms(a, b);
    case Operation::Difference:
      return sum_of_forms(a, negative_of(b));
    case Operation::Product:
      return product_of_forms(a, b);
    default: {
      const PossibleForm inverse = inverse_of(b);
      return inverse ? product_of_forms(a, *inverse) : std::nullopt;
    }
  }
}

bool is_small(const Form& a) {
  return std::max({a.plain.size(), a.rooted.size(), a.radicand.size(), a.below.size()}) <= greatest_size;
}

}  // namespace

/// Walks one side; a friend of neither class, so it reads the tree through `at`.
template <class Tree>
static PossibleForm form_at(const Tree& tree, std::size_t index, std::size_t unknown,
                            const std::vector<double>& values) {
  const auto node = tree.node(index);
  if (node.operation == Operation::Symbol && node.slot == unknown) {
    return Form{{{0, 0}, {1, 1}}, {}, {}};
  }
  if (node.count == 0) {
    const double value = tree.value(index, values);
    return std::isnan(value) ? std::nullopt : PossibleForm(Form{constant(value), {}, {}});
  }
  PossibleForm total = form_at(tree, tree.operand(node, 0), unknown, values);
  for (std::size_t i = 1; total && i < node.count; ++i) {
    const PossibleForm next = form_at(tree, tree.operand(node, i), unknown, values);
    total = next ? combined_forms(node.operation, *total, *next) : std::nullopt;
    total = total && is_small(*total) ? total : std::nullopt;
  }
  if (total && node.operation == Operation::Root) {
    return root_of_form(*total, node.exponent);
  }
  if (total && node.operation == Operation::Power) {
    const Form base = *total;
    for (int i = 1; total && i < node.exponent; ++i) {
      total = is_small(*total) ? product_of_forms(*total, base) : std::nullopt;
    }
  }
  return total;
}

/// A few of Newton's steps in the equation as it stands: the coefficients of a high power have lost digits.
double RoughEquation::polished(std::size_t unknown, double root, const std::vector<double>& values) const {
  std::vector<double> tried = values;
  const auto at = [&](double x) {
    tried[unknown] = x;
    return left_.value(tried) - right_.value(tried);
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
  struct Tree {
    const RoughExpression* side;
    [[nodiscard]] RoughExpression::Node node(std::size_t index) const { return side->nodes_[index]; }
    [[nodiscard]] std::size_t operand(const RoughExpression::Node& node, std::size_t i) const {
      return side->operands_[node.first + i];
    }
    [[nodiscard]] double value(std::size_t index, const std::vector<double>& all) const {
      return side->value_at(index, all);
    }
  };
  const PossibleForm left = form_at(Tree{&left_}, left_.root_, unknown, values);
  const PossibleForm right = left ? form_at(Tree{&right_}, right_.root_, unknown, values) : std::nullopt;
  const PossibleForm whole = right ? sum_of_forms(*left, negative_of(*right)) : std::nullopt;
  if (!whole) {
    return by_search(unknown, values);
  }
  if (whole->rooted.empty()) {
    std::vector<double> roots = positive_roots(whole->plain);
    for (double& root : roots) {
      root = polished(unknown, root, values);
    }
    return roots;
  }
  // p = −q√r only if p² = q²r
  const RoughPolynomial squared = sum(product(whole->plain, whole->plain),
                                      negative(product(product(whole->rooted, whole->rooted), whole->radicand)));
  std::vector<double> kept;
  std::vector<double> tried = values;
  for (const double rough_root : positive_roots(squared)) {
    const double root = polished(unknown, rough_root, values);
    tried[unknown] = root;
    if (difference(tried) <= 1e-7) {
      kept.push_back(root);
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
    return left_.value(tried) - right_.value(tried);
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
  double two_before = no_root;
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

}  // namespace fw::solids
