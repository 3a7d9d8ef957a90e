#pragma once

#include <optional>
#include <vector>

#include "algebra/expression.hpp"

namespace fw::algebra {

/// Numbers that stand in equations as symbols of their own, so that each keeps its dimension (and with it its unit)
/// and can be told from an equal one.
class Numerals {
 public:
  /// A new symbol that stands for the value.
  Symbol add(exact::Number value, int dimension);
  [[nodiscard]] bool holds(const Symbol& symbol) const { return values_.find(symbol.name) != values_.end(); }
  [[nodiscard]] const Bindings& values() const { return values_; }

 private:
  Bindings values_;
};

/// The dimension of what an expression gives: 1 length, 2 area, 3 volume, 0 count.
[[nodiscard]] int dimension_of(const Expression& expression);
/// How often the symbol stands in the expression.
[[nodiscard]] std::size_t occurrences(const Expression& expression, const Symbol& symbol);
/// Whether it stands under a root somewhere in the expression.
[[nodiscard]] bool stands_under_root(const Expression& expression, const Symbol& symbol);
/// The same operation on other operands. Requires: as many operands, of an expression that has some.
[[nodiscard]] Expression with_operands(const Expression& expression, const std::vector<Expression>& operands);
/// The expression with `value` wherever the symbol stood.
[[nodiscard]] Expression replaced(const Expression& expression, const Symbol& symbol, const Expression& value);
[[nodiscard]] Equation replaced(const Equation& equation, const Symbol& symbol, const Expression& value);

/// What the symbol equals: the equation turned round, from the outside inward. Nothing where the symbol does not stand
/// in one place alone, or stands there under a root or a power above the third.
[[nodiscard]] std::optional<Expression> solved_for(const Equation& equation, const Symbol& symbol);

/// One round of arithmetic, as a class does it: products before sums, inner brackets before outer ones. Numbers,
/// and numerals of `numerals`, are worked with; a result that has a dimension becomes a new numeral. Equal to the
/// expression given when nothing is left to work out.
[[nodiscard]] Expression worked_once(const Expression& expression, Numerals& numerals);

/// A line on the way from an equation to the value of its unknown.
struct IsolationStep {
  enum class Kind {
    Work,            ///< arithmetic, each side for itself
    Swap,            ///< the sides changed places, with arithmetic done on the way
    Collect,         ///< terms of the same power put together
    Add,             ///< the operand on both sides
    Subtract,        ///< the operand from both sides
    Multiply,        ///< both sides by the operand
    Divide,          ///< both sides by the operand
    TakeRoot,        ///< of `degree`, of both sides; the negative one is left aside
    TakeMinusRoot,   ///< the negative one is the one that fits
    Square,          ///< or to the power of `degree`
    CompleteSquare,  ///< the left side written as the square of a sum
  };
  Kind kind = Kind::Work;
  Equation equation;                  ///< as it stands after the step
  std::optional<Expression> operand;  ///< of what is done to both sides
  int degree = 2;
};

/// The way from `equation` to "unknown = value". `value` is the solution sought, which tells the right one of two
/// square roots. Letters other than the unknown must be numerals.
/// Nothing where no way of school leads there: the unknown under a root together with itself outside, powers
/// mixed otherwise than in a quadratic.
[[nodiscard]] std::optional<std::vector<IsolationStep>> isolated(const Equation& equation, const Symbol& unknown,
                                                                 const exact::Number& value, Numerals& numerals);

}  // namespace fw::algebra
