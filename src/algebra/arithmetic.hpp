#pragma once

#include <cmath>
#include <optional>
#include <vector>

#include "algebra/expression.hpp"

// One evaluator, and one way to undo an operation, over any kind of value: exact numbers, doubles, fractions of
// polynomials in an unknown, expressions. Private to the room.
namespace fw::algebra {

using PossibleNumber = std::optional<exact::Number>;

// ---- what an operation gives, for each kind of value: nothing, or NaN, where there is no value ----

inline double combined(Operation operation, double a, double b) {
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
inline double raised(double base, int exponent) {
  double result = base;
  for (int i = 1; i < exponent; ++i) {
    result *= base;
  }
  return result;
}
inline double rooted(double a, int degree) {
  return degree == 2   ? std::sqrt(a)
         : degree == 3 ? std::cbrt(a)
         : degree == 4 ? std::sqrt(std::sqrt(a))
                       : std::pow(a, 1.0 / degree);
}

[[nodiscard]] PossibleNumber combined(Operation operation, const PossibleNumber& a, const PossibleNumber& b);
[[nodiscard]] PossibleNumber raised(const PossibleNumber& base, int exponent);
[[nodiscard]] PossibleNumber rooted(const PossibleNumber& a, int degree);

// ---- the evaluator ----

inline bool has_value(double) { return true; }  // NaN is passed on
template <class Value>
bool has_value(const std::optional<Value>& value) {
  return value.has_value();
}

/// The value of a tree (an Expression, or what has its members) whose leaves have the values that `leaf` gives.
template <class Possible, class Tree, class Leaf>
Possible value_of(const Tree& tree, const Leaf& leaf) {
  if (tree.operands().empty()) {
    return leaf(tree);
  }
  Possible total = value_of<Possible>(tree.operands().front(), leaf);
  for (std::size_t i = 1; i < tree.operands().size() && has_value(total); ++i) {
    total = combined(tree.operation(), total, value_of<Possible>(tree.operands()[i], leaf));
  }
  switch (tree.operation()) {
    case Operation::Power:
      return raised(total, tree.exponent());
    case Operation::Root:
      return rooted(total, tree.exponent());
    default:
      return total;
  }
}

/// A leaf with its exact value.
inline auto leaf_with(const Bindings& bindings) {
  return [&bindings](const Expression& leaf) -> PossibleNumber {
    if (leaf.operation() == Operation::Number) {
      return leaf.number();
    }
    const auto bound = bindings.find(leaf.symbol().name);
    return bound == bindings.end() ? std::nullopt : PossibleNumber(bound->second);
  };
}

inline auto is_symbol(const Symbol& symbol) {
  return [&symbol](const Expression& e) { return e.operation() == Operation::Symbol && e.symbol() == symbol; };
}

// ---- undoing ----

/// `operand` where operand ∘ rest = target, or rest ∘ operand = target where it does not come first.
template <class Value>
Value undone(Operation operation, bool comes_first, const Value& target, const Value& rest) {
  switch (operation) {
    case Operation::Sum:
      return combined(Operation::Difference, target, rest);
    case Operation::Product:
      return combined(Operation::Quotient, target, rest);
    case Operation::Difference:
      return comes_first ? combined(Operation::Sum, target, rest) : combined(Operation::Difference, rest, target);
    default:
      return comes_first ? combined(Operation::Product, target, rest) : combined(Operation::Quotient, rest, target);
  }
}

/// The operand in which an unknown stands. Requires: it stands in one of them.
template <class Tree>
std::size_t operand_with(const Tree& tree, const auto& unknown) {
  std::size_t place = 0;
  while (occurrences(tree.operands()[place], unknown) == 0) {
    ++place;
  }
  return place;
}

inline int sign_of(double a) { return !std::isfinite(a) || a == 0 ? 0 : a > 0 ? 1 : -1; }
inline int sign_of(const PossibleNumber& a) { return a ? a->sign() : 0; }
inline double negative(double a) { return -a; }
inline PossibleNumber negative(const PossibleNumber& a) { return a ? PossibleNumber(-*a) : std::nullopt; }

/// Takes an equation in which the unknown stands once to the values > 0 that it can have, from the outside inward.
template <class Possible, class Unknown, class Leaf>
class Undoing {
 public:
  Undoing(const Unknown& unknown, const Leaf& leaf) : unknown_(unknown), leaf_(leaf) {}

  /// Adds to found() what makes `side`, in which the unknown stands, equal to `target`.
  template <class Tree>
  void undo(const Tree& side, const Possible& target) {
    if (side.operands().empty()) {
      if (sign_of(target) > 0) {
        found_.push_back(target);
      }
      return;
    }
    const std::size_t place = operand_with(side, unknown_);
    const Tree& inner = side.operands()[place];
    const bool is_below_zero = sign_of(target) < 0;
    const bool is_even = side.exponent() % 2 == 0;
    switch (side.operation()) {
      case Operation::Power: {
        if (is_even && is_below_zero) {
          return;
        }
        const Possible size = rooted(is_below_zero ? negative(target) : target, side.exponent());
        undo(inner, is_below_zero ? negative(size) : size);
        if (is_even && !inner.operands().empty() && sign_of(size) > 0) {
          undo(inner, negative(size));
        }
        return;
      }
      case Operation::Root:
        if (!is_even || !is_below_zero) {
          undo(inner, raised(target, side.exponent()));
        }
        return;
      default:
        undo(inner, undone(side.operation(), place == 0, target, rest_of(side, place)));
    }
  }
  [[nodiscard]] const std::vector<Possible>& found() const { return found_; }

 private:
  template <class Tree>
  [[nodiscard]] Possible rest_of(const Tree& side, std::size_t place) const {
    const std::size_t first = place == 0 ? 1 : 0;
    Possible rest = value_of<Possible>(side.operands()[first], leaf_);
    for (std::size_t i = first + 1; i < side.operands().size(); ++i) {
      if (i != place) {
        rest = combined(side.operation(), rest, value_of<Possible>(side.operands()[i], leaf_));
      }
    }
    return rest;
  }

  const Unknown& unknown_;
  const Leaf& leaf_;
  std::vector<Possible> found_;
};

}  // namespace fw::algebra
