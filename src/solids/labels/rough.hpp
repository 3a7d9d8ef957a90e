#pragma once

#include <bitset>
#include <functional>
#include <vector>

#include "algebra/expression.hpp"

// Expressions and equations in doubles, for questions that are asked hundreds of times of one figure, such as how far
// a length may vary; private to the room.
namespace fw::solids {

/// Symbols of a statement by their number. A pyramid on a polygon of 40 corners has 128.
inline constexpr std::size_t most_symbols = 192;
using SymbolSet = std::bitset<most_symbols>;
using Numbering = std::function<std::size_t(const algebra::Symbol&)>;

/// An expression whose symbols are numbered.
class RoughExpression {
 public:
  RoughExpression(const algebra::Expression& expression, const Numbering& number_of);
  /// NaN where a symbol has no value (is NaN) or a division by zero or a root of a negative leaves none.
  [[nodiscard]] double value(const std::vector<double>& values) const { return value_at(root_, values); }
  [[nodiscard]] const SymbolSet& symbols() const { return symbols_; }

 private:
  friend class RoughEquation;
  struct Node {
    algebra::Operation operation;
    double number = 0;
    std::size_t slot = 0;
    int exponent = 1;
    std::size_t first = 0, count = 0;  ///< of its operands in `operands_`
  };
  std::size_t add(const algebra::Expression& expression, const Numbering& number_of);
  [[nodiscard]] double value_at(std::size_t node, const std::vector<double>& values) const;
  [[nodiscard]] std::size_t occurrences(std::size_t node, std::size_t slot) const;

  std::vector<Node> nodes_;
  std::vector<std::size_t> operands_;
  SymbolSet symbols_;
  std::size_t root_ = 0;  ///< after the others, which are filled while it is found
};

class RoughEquation {
 public:
  RoughEquation(const algebra::Equation& equation, const Numbering& number_of);
  [[nodiscard]] const SymbolSet& symbols() const { return symbols_; }
  /// All positive values of the symbol that make the equation true with the values of the others, in rising order.
  [[nodiscard]] std::vector<double> positive_solutions(std::size_t unknown, const std::vector<double>& values) const;
  /// How far the two sides are apart, as a part of their size; NaN where a side has no value.
  [[nodiscard]] double difference(const std::vector<double>& values) const;

 private:
  struct Inversion;
  void invert(const RoughExpression& side, std::size_t node, double target, Inversion& inversion) const;
  [[nodiscard]] std::vector<double> by_polynomial(std::size_t unknown, const std::vector<double>& values) const;

  [[nodiscard]] double polished(std::size_t unknown, double root, const std::vector<double>& values) const;
  [[nodiscard]] std::vector<double> by_search(std::size_t unknown, const std::vector<double>& values) const;

  RoughExpression left_, right_;
  SymbolSet symbols_;
};

}  // namespace fw::solids
