#include <algorithm>
#include <functional>
#include <numeric>

#include "algebra/isolate.hpp"
#include "exact/print_number.hpp"

namespace fw::algebra {

using exact::Number;

Symbol Numerals::add(Number value, int dimension) {
  Symbol symbol{"#" + std::to_string(values_.size() + 1), "#", dimension};
  values_.insert_or_assign(symbol.name, std::move(value));
  return symbol;
}

int dimension_of(const Expression& expression) {
  const std::vector<Expression>& operands = expression.operands();
  switch (expression.operation()) {
    case Operation::Number:
      return 0;
    case Operation::Symbol:
      return expression.symbol().dimension;
    case Operation::Sum:
    case Operation::Difference:
      return dimension_of(operands.front());
    case Operation::Product: {
      int sum = 0;
      for (const Expression& operand : operands) {
        sum += dimension_of(operand);
      }
      return sum;
    }
    case Operation::Quotient:
      return dimension_of(operands[0]) - dimension_of(operands[1]);
    case Operation::Power:
      return dimension_of(operands.front()) * expression.exponent();
    case Operation::Root:
      return dimension_of(operands.front()) / expression.exponent();
  }
  return 0;
}

std::size_t occurrences(const Expression& expression, const Symbol& symbol) {
  if (expression.operation() == Operation::Symbol) {
    return expression.symbol() == symbol ? 1 : 0;
  }
  std::size_t count = 0;
  for (const Expression& operand : expression.operands()) {
    count += occurrences(operand, symbol);
  }
  return count;
}

Expression with_operands(const Expression& expression, const std::vector<Expression>& operands) {
  switch (expression.operation()) {
    case Operation::Sum:
      return sum_of(operands);
    case Operation::Power:
      return power(operands.front(), expression.exponent());
    case Operation::Root:
      return root(operands.front(), expression.exponent());
    default:
      return std::accumulate(
          operands.begin() + 1, operands.end(), operands.front(),
          [&](const Expression& a, const Expression& b) { return combined(expression.operation(), a, b); });
  }
}

Expression replaced(const Expression& expression, const Symbol& symbol, const Expression& value) {
  if (expression.operation() == Operation::Symbol) {
    return expression.symbol() == symbol ? value : expression;
  }
  if (expression.operands().empty() || occurrences(expression, symbol) == 0) {
    return expression;
  }
  std::vector<Expression> operands;
  for (const Expression& operand : expression.operands()) {
    operands.push_back(replaced(operand, symbol, value));
  }
  return with_operands(expression, operands);
}

bool stands_under_root(const Expression& expression, const Symbol& symbol) {
  return std::any_of(expression.operands().begin(), expression.operands().end(), [&](const Expression& operand) {
    return (expression.operation() == Operation::Root && occurrences(operand, symbol) > 0) ||
           stands_under_root(operand, symbol);
  });
}

Equation replaced(const Equation& equation, const Symbol& symbol, const Expression& value) {
  return {replaced(equation.left, symbol, value), replaced(equation.right, symbol, value)};
}

namespace {

bool is_multiplicative(Operation operation) {
  return operation == Operation::Product || operation == Operation::Quotient || operation == Operation::Power;
}

// One round of arithmetic on an expression.
class Arithmetic {
 public:
  explicit Arithmetic(Numerals& numerals) : numerals_(&numerals) {}

  [[nodiscard]] Expression once(const Expression& expression) {
    if (expression.operands().empty()) {
      return expression;
    }
    if (is_multiplicative(expression.operation())) {
      return is_chain(expression) ? chain(expression) : inside(expression);
    }
    if (is_known_leaf_only(expression)) {
      return leaf(*evaluate(expression, numerals_->values()), dimension_of(expression));
    }
    const Expression deeper = inside(expression);
    return deeper == expression && expression.operation() == Operation::Sum ? sum(expression) : deeper;
  }

 private:
  [[nodiscard]] bool is_known(const Expression& e) const {
    return e.operation() == Operation::Number || (e.operation() == Operation::Symbol && numerals_->holds(e.symbol()));
  }
  [[nodiscard]] bool is_known_leaf_only(const Expression& e) const {
    return std::all_of(e.operands().begin(), e.operands().end(), [&](const Expression& o) { return is_known(o); });
  }
  [[nodiscard]] Expression leaf(const Number& value, int dimension) {
    return dimension == 0 ? Expression(value) : Expression(numerals_->add(value, dimension));
  }

  // Products, quotients and powers of leaves alone: worked in one go. A bracket of numbers goes before its power.
  [[nodiscard]] bool is_chain(const Expression& e) const {
    const bool is_bracket = e.operation() == Operation::Power && !e.operands().front().operands().empty() &&
                            evaluate(e, numerals_->values()).has_value();
    return e.operands().empty() ||
           (is_multiplicative(e.operation()) && !is_bracket &&
            std::all_of(e.operands().begin(), e.operands().end(), [&](const Expression& o) { return is_chain(o); }));
  }

  // The leaves of a chain with their powers: above the line positive, below it negative.
  void take_apart(const Expression& e, int exponent, std::vector<std::pair<Expression, int>>& leaves) const {
    switch (e.operation()) {
      case Operation::Product:
        for (const Expression& operand : e.operands()) {
          take_apart(operand, exponent, leaves);
        }
        return;
      case Operation::Quotient:
        take_apart(e.operands()[0], exponent, leaves);
        take_apart(e.operands()[1], -exponent, leaves);
        return;
      case Operation::Power:
        take_apart(e.operands().front(), exponent * e.exponent(), leaves);
        return;
      default:
        leaves.push_back({e, exponent});
    }
  }

  struct Known {
    Number value = Number::whole(1);
    int dimension = 0;
    std::size_t leaves = 0;
    bool is_plain = true;  ///< a single leaf to the first power

    void take(const Number& number, int leaf_dimension, int exponent) {
      value = value * power(number, exponent);
      dimension += leaf_dimension * exponent;
      ++leaves;
      is_plain = is_plain && leaves == 1 && exponent == 1;
    }
  };

  [[nodiscard]] Expression chain(const Expression& expression) {
    std::vector<std::pair<Expression, int>> leaves;
    take_apart(expression, 1, leaves);
    Known above;
    Known below;
    std::vector<Expression> letters;
    std::vector<Expression> letters_below;
    for (const auto& [e, exponent] : leaves) {
      if (is_known(e)) {
        const int times = exponent < 0 ? -exponent : exponent;
        (exponent > 0 ? above : below).take(*evaluate(e, numerals_->values()), dimension_of(e), times);
      } else {
        const int times = exponent < 0 ? -exponent : exponent;
        (exponent > 0 ? letters : letters_below).push_back(times == 1 ? e : power(e, times));
      }
    }
    if (letters.empty() && letters_below.empty()) {
      return below.leaves == 0 && above.is_plain ? expression
                                                 : leaf(above.value / below.value, above.dimension - below.dimension);
    }
    return with_letters(expression, above, below, letters, letters_below);
  }

  // A number in front of the letters, and one below the line where dividing by it would not end.
  [[nodiscard]] Expression with_letters(const Expression& expression, const Known& above, const Known& below,
                                        const std::vector<Expression>& letters,
                                        const std::vector<Expression>& letters_below) {
    const bool nothing_to_do = (above.leaves == 0 || above.is_plain) && (below.leaves == 0 || below.is_plain) &&
                               (above.leaves == 0 || below.leaves == 0);
    if (nothing_to_do || letters.empty()) {
      return expression;
    }
    const Number quotient = above.value / below.value;
    const bool divides = below.leaves > 0 && above.leaves > 0 && exact::decimals_needed(quotient, 2).has_value();
    const bool keeps_below = below.leaves > 0 && !divides;
    if (keeps_below && (above.leaves == 0 || above.is_plain) && below.is_plain) {
      return expression;
    }
    const Number front = divides ? quotient : above.value;
    const int front_dimension = above.dimension - (divides ? below.dimension : 0);
    std::vector<Expression> factors;
    if (front_dimension != 0 || !(front == Number::whole(1))) {
      factors.push_back(leaf(front, front_dimension));
    }
    factors.insert(factors.end(), letters.begin(), letters.end());
    Expression result = product_of(factors);
    std::vector<Expression> divisors;
    if (keeps_below) {
      divisors.push_back(leaf(below.value, below.dimension));
    }
    divisors.insert(divisors.end(), letters_below.begin(), letters_below.end());
    return divisors.empty() ? result : result / product_of(divisors);
  }

  [[nodiscard]] static Expression product_of(const std::vector<Expression>& factors) {
    return std::accumulate(factors.begin() + 1, factors.end(), factors.front(), std::multiplies<>());
  }

  [[nodiscard]] Expression inside(const Expression& expression) {
    std::vector<Expression> operands;
    for (const Expression& operand : expression.operands()) {
      operands.push_back(once(operand));
    }
    return operands == expression.operands() ? expression : with_operands(expression, operands);
  }

  // Known terms among unknown ones, added up at the place of the first.
  [[nodiscard]] Expression sum(const Expression& expression) {
    std::vector<Expression> known;
    std::vector<Expression> terms;
    std::size_t place = 0;
    for (const Expression& operand : expression.operands()) {
      if (is_known(operand)) {
        place = known.empty() ? terms.size() : place;
        known.push_back(operand);
      } else {
        terms.push_back(operand);
      }
    }
    if (known.size() < 2) {
      return expression;
    }
    const Number value = *evaluate(sum_of(known), numerals_->values());
    terms.insert(terms.begin() + static_cast<std::ptrdiff_t>(place), leaf(value, dimension_of(expression)));
    return sum_of(terms);
  }

  Numerals* numerals_;
};

}  // namespace

Expression worked_once(const Expression& expression, Numerals& numerals) {
  return Arithmetic(numerals).once(expression);
}

}  // namespace fw::algebra
