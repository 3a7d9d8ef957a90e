#pragma once

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "exact/number.hpp"

namespace fw::algebra {

/// A letter of a formula. Two symbols are the same when their names are.
struct Symbol {
  std::string name;    ///< unique within a solid: "slant_height", "base.side"
  std::string letter;  ///< as typeset: "ℓ", "s", "S"
  int dimension = 1;   ///< 1 length, 2 area, 3 volume, 0 count
  friend bool operator==(const Symbol& a, const Symbol& b) { return a.name == b.name; }
  friend bool operator<(const Symbol& a, const Symbol& b) { return a.name < b.name; }
};

/// The known values of symbols, by the symbol's name.
using Bindings = std::map<std::string, exact::Number, std::less<>>;

enum class Operation { Number, Symbol, Sum, Difference, Product, Quotient, Power, Root };

/// An immutable expression tree, kept as it was built: nothing is simplified or reordered, since a
/// class reads it that way.
class Expression {
 public:
  Expression(const Symbol& symbol);
  Expression(exact::Number number);
  Expression(int whole);

  [[nodiscard]] Operation operation() const;
  [[nodiscard]] const std::vector<Expression>& operands() const;
  [[nodiscard]] const exact::Number& number() const;  ///< Requires: operation() is Number
  [[nodiscard]] const Symbol& symbol() const;         ///< Requires: operation() is Symbol
  [[nodiscard]] int exponent() const;                 ///< of a Power or a Root
  /// Structural: same operations, numbers, symbols in the same order.
  friend bool operator==(const Expression& a, const Expression& b);

  struct Node;
  explicit Expression(std::shared_ptr<const Node> node) : node_(std::move(node)) {}

 private:
  std::shared_ptr<const Node> node_;
};

[[nodiscard]] Expression operator+(const Expression& a, const Expression& b);
[[nodiscard]] Expression operator-(const Expression& a, const Expression& b);
[[nodiscard]] Expression operator*(const Expression& a, const Expression& b);
[[nodiscard]] Expression operator/(const Expression& a, const Expression& b);
[[nodiscard]] Expression power(const Expression& a, int exponent);   ///< Requires: exponent >= 2
[[nodiscard]] Expression root(const Expression& a, int degree = 2);  ///< Requires: degree is 2 or 3
/// Requires: the operation is Sum, Difference, Product or Quotient.
[[nodiscard]] Expression combined(Operation operation, const Expression& a, const Expression& b);
/// Sum of several terms as one flat node. Requires: at least one.
[[nodiscard]] Expression sum_of(const std::vector<Expression>& terms);

struct Equation {
  Expression left;
  Expression right;
};

/// The value, if every symbol in it is bound and no division by zero or root of a negative is met.
[[nodiscard]] std::optional<exact::Number> evaluate(const Expression& expression, const Bindings& bindings);

/// The value in doubles, for questions that need no exact answer; NaN where a symbol is unbound, or a division by zero
/// or the root of a negative leaves none.
[[nodiscard]] double rough_value(const Expression& expression,
                                 const std::map<std::string, double, std::less<>>& values);

/// The distinct symbols of an expression, in order of appearance.
[[nodiscard]] std::vector<Symbol> symbols_of(const Expression& expression);
[[nodiscard]] std::vector<Symbol> symbols_of(const Equation& equation);

/// All real values > 0 of `unknown` that make the equation true with the other symbols bound, in rising
/// order. Exact where the unknown stands once, and where the equation is a polynomial in it of degree at most 2, or one
/// pure power up to 4; otherwise found numerically to 50 digits (inexact numbers).
/// Empty when a symbol other than `unknown` is unbound.
[[nodiscard]] std::vector<exact::Number> positive_solutions(const Equation& equation, const Symbol& unknown,
                                                            const Bindings& bindings);

/// Whether nothing follows from the equation about the unknown, since its two sides are as far apart whatever that is:
/// it holds for every value, or it only compares what is known.
[[nodiscard]] bool is_vacuous(const Equation& equation, const Symbol& unknown);

}  // namespace fw::algebra
