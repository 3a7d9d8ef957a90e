#pragma once

#include <bitset>
#include <functional>
#include <vector>

#include "algebra/expression.hpp"

namespace fw::algebra {

/// Symbols by their number. A pyramid on a polygon of 40 corners has 128.
inline constexpr std::size_t most_symbols = 192;
using SymbolSet = std::bitset<most_symbols>;
using Numbering = std::function<std::size_t(const Symbol&)>;

/// An expression in doubles whose symbols are numbered, for questions that are asked hundreds of times of one figure,
/// such as how far a length may vary.
class RoughExpression {
 public:
  RoughExpression(const Expression& expression, const Numbering& number_of);
  /// NaN where a symbol has no value (is NaN) or a division by zero or a root of a negative leaves none.
  [[nodiscard]] double value(const std::vector<double>& values) const;
  [[nodiscard]] const SymbolSet& symbols() const { return symbols_; }

  [[nodiscard]] Operation operation() const { return operation_; }
  [[nodiscard]] const std::vector<RoughExpression>& operands() const { return operands_; }
  [[nodiscard]] int exponent() const { return exponent_; }
  [[nodiscard]] double number() const { return number_; }
  [[nodiscard]] std::size_t slot() const { return slot_; }

 private:
  Operation operation_;
  int exponent_ = 1;
  double number_ = 0;
  std::size_t slot_ = most_symbols;
  std::vector<RoughExpression> operands_;
  SymbolSet symbols_;
};

/// How often the symbol stands in the expression.
[[nodiscard]] std::size_t occurrences(const RoughExpression& expression, std::size_t slot);

class RoughEquation {
 public:
  RoughEquation(const Equation& equation, const Numbering& number_of);
  [[nodiscard]] const SymbolSet& symbols() const { return symbols_; }
  /// All positive values of the symbol that make the equation true with the values of the others, in rising order.
  [[nodiscard]] std::vector<double> positive_solutions(std::size_t unknown, const std::vector<double>& values) const;
  /// How far the two sides are apart, as a part of their size; NaN where a side has no value.
  [[nodiscard]] double difference(const std::vector<double>& values) const;
  /// By how much the left side is greater.
  [[nodiscard]] double excess(const std::vector<double>& values) const {
    return left_.value(values) - right_.value(values);
  }

 private:
  [[nodiscard]] std::vector<double> by_polynomial(std::size_t unknown, const std::vector<double>& values) const;
  [[nodiscard]] double polished(std::size_t unknown, double root, const std::vector<double>& values) const;
  [[nodiscard]] std::vector<double> by_search(std::size_t unknown, const std::vector<double>& values) const;

  RoughExpression left_, right_;
  SymbolSet symbols_;
};

}  // namespace fw::algebra
