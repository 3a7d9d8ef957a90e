#include <limits>

#include "algebra/arithmetic.hpp"

namespace fw::algebra {

using exact::Number;

PossibleNumber combined(Operation operation, const PossibleNumber& a, const PossibleNumber& b) {
  if (!a || !b) {
    return std::nullopt;
  }
  switch (operation) {
    case Operation::Sum:
      return *a + *b;
    case Operation::Difference:
      return *a - *b;
    case Operation::Product:
      return *a * *b;
    default:
      return b->is_zero() ? std::nullopt : PossibleNumber(*a / *b);
  }
}

PossibleNumber raised(const PossibleNumber& base, int exponent) {
  return base ? PossibleNumber(power(*base, exponent)) : std::nullopt;
}

PossibleNumber rooted(const PossibleNumber& a, int degree) {
  if (!a || (degree % 2 == 0 && a->sign() < 0)) {
    return std::nullopt;
  }
  switch (degree) {
    case 2:
      return square_root(*a);
    case 3:
      return cube_root(*a);
    case 4:
      return square_root(square_root(*a));
    default:
      return std::nullopt;
  }
}

std::optional<Number> evaluate(const Expression& expression, const Bindings& bindings) {
  return value_of<PossibleNumber>(expression, leaf_with(bindings));
}

double rough_value(const Expression& expression, const std::map<std::string, double, std::less<>>& values) {
  return value_of<double>(expression, [&](const Expression& leaf) {
    if (leaf.operation() == Operation::Number) {
      return leaf.number().to_double();
    }
    const auto bound = values.find(leaf.symbol().name);
    return bound == values.end() ? std::numeric_limits<double>::quiet_NaN() : bound->second;
  });
}

}  // namespace fw::algebra
