#include <cmath>
#include <limits>
#include <vector>

#include "algebra/expression.hpp"

namespace fw::algebra {
namespace {

using exact::Number;

std::optional<Number> of_two(Operation operation, const Number& a, const Number& b) {
  switch (operation) {
    case Operation::Sum:
      return a + b;
    case Operation::Difference:
      return a - b;
    case Operation::Product:
      return a * b;
    case Operation::Quotient:
      return b.is_zero() ? std::nullopt : std::optional<Number>(a / b);
    default:
      return std::nullopt;
  }
}

std::optional<Number> root_of(const Number& a, int degree) {
  if (degree == 3) {
    return cube_root(a);
  }
  return a.sign() < 0 ? std::nullopt : std::optional<Number>(square_root(a));
}

std::optional<Number> of_operands(const Expression& expression, const Bindings& bindings) {
  std::optional<Number> total;
  for (const Expression& operand : expression.operands()) {
    const std::optional<Number> value = evaluate(operand, bindings);
    if (!value) {
      return std::nullopt;
    }
    total = total ? of_two(expression.operation(), *total, *value) : value;
    if (!total) {
      return std::nullopt;
    }
  }
  return total;
}

}  // namespace

std::optional<Number> evaluate(const Expression& expression, const Bindings& bindings) {
  if (expression.operation() == Operation::Number) {
    return expression.number();
  }
  if (expression.operation() == Operation::Symbol) {
    const auto bound = bindings.find(expression.symbol().name);
    return bound == bindings.end() ? std::nullopt : std::optional<Number>(bound->second);
  }
  const std::optional<Number> value = of_operands(expression, bindings);
  if (!value) {
    return std::nullopt;
  }
  switch (expression.operation()) {
    case Operation::Power:
      return exact::power(*value, expression.exponent());
    case Operation::Root:
      return root_of(*value, expression.exponent());
    default:
      return value;
  }
}

double rough_value(const Expression& expression, const std::map<std::string, double, std::less<>>& values) {
  constexpr double none = std::numeric_limits<double>::quiet_NaN();
  switch (expression.operation()) {
    case Operation::Number:
      return expression.number().to_double();
    case Operation::Symbol: {
      const auto bound = values.find(expression.symbol().name);
      return bound == values.end() ? none : bound->second;
    }
    case Operation::Power:
      return std::pow(rough_value(expression.operands()[0], values), expression.exponent());
    case Operation::Root: {
      const double value = rough_value(expression.operands()[0], values);
      return expression.exponent() == 3 ? std::cbrt(value) : std::sqrt(value);
    }
    default:
      break;
  }
  double total = rough_value(expression.operands()[0], values);
  for (std::size_t i = 1; i < expression.operands().size(); ++i) {
    const double value = rough_value(expression.operands()[i], values);
    switch (expression.operation()) {
      case Operation::Sum:
        total += value;
        break;
      case Operation::Difference:
        total -= value;
        break;
      case Operation::Product:
        total *= value;
        break;
      default:
        total /= value;
        break;
    }
  }
  return total;
}

}  // namespace fw::algebra
