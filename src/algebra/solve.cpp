#include <algorithm>
#include <cmath>
#include <limits>

#include "algebra/expression.hpp"
#include "exact/polynomial.hpp"

namespace fw::algebra {
namespace {

using exact::Number;
using exact::Polynomial;
using exact::product;

constexpr std::size_t greatest_degree = 12;

Polynomial sum(const Polynomial& a, const Polynomial& b) {
  Polynomial result(std::max(a.size(), b.size()));
  for (std::size_t i = 0; i < result.size(); ++i) {
    const Number x = i < a.size() ? a[i] : Number();
    result[i] = i < b.size() ? x + b[i] : x;
  }
  return exact::without_leading_zeros(std::move(result));
}

Polynomial negative(const Polynomial& a) { return product(a, {Number::whole(-1)}); }

// (plain + rooted √radicand) / below, all polynomials in the unknown. `rooted` is empty for none.
struct Form {
  Polynomial plain;
  Polynomial rooted;
  Polynomial radicand;
  Polynomial below = {Number::whole(1)};
};

bool is_small(const Form& form) {
  return std::max({form.plain.size(), form.rooted.size(), form.radicand.size(), form.below.size()}) <=
         greatest_degree + 1;
}

// The radicand that both share, if there are not two different ones.
std::optional<Polynomial> shared_radicand(const Form& a, const Form& b) {
  if (a.rooted.empty()) {
    return b.rooted.empty() ? Polynomial{} : b.radicand;
  }
  return b.rooted.empty() || a.radicand == b.radicand ? std::optional<Polynomial>(a.radicand) : std::nullopt;
}

std::optional<Form> sum(const Form& a, const Form& b) {
  const std::optional<Polynomial> radicand = shared_radicand(a, b);
  if (!radicand) {
    return std::nullopt;
  }
  if (a.below == b.below) {
    return Form{sum(a.plain, b.plain), sum(a.rooted, b.rooted), *radicand, a.below};
  }
  return Form{sum(product(a.plain, b.below), product(b.plain, a.below)),
              sum(product(a.rooted, b.below), product(b.rooted, a.below)), *radicand, product(a.below, b.below)};
}

Form negative(const Form& a) { return {negative(a.plain), negative(a.rooted), a.radicand, a.below}; }

std::optional<Form> product(const Form& a, const Form& b) {
  const std::optional<Polynomial> radicand = shared_radicand(a, b);
  if (!radicand) {
    return std::nullopt;
  }
  return Form{sum(product(a.plain, b.plain), product(product(a.rooted, b.rooted), *radicand)),
              sum(product(a.plain, b.rooted), product(a.rooted, b.plain)), *radicand, product(a.below, b.below)};
}

// 1/(p + q√r) = (p - q√r)/(p² - q²r)
std::optional<Form> inverse(const Form& a) {
  const Polynomial norm = sum(product(a.plain, a.plain), negative(product(product(a.rooted, a.rooted), a.radicand)));
  if (norm.empty()) {
    return std::nullopt;
  }
  if (a.rooted.empty()) {
    return Form{a.below, {}, {}, a.plain};
  }
  return Form{product(a.below, a.plain), negative(product(a.below, a.rooted)), a.radicand, norm};
}

std::optional<Form> root(const Form& a, int degree) {
  if (!a.rooted.empty()) {
    return std::nullopt;
  }
  const Polynomial radicand = product(a.plain, a.below);
  if (radicand.size() > 1 && degree == 2) {
    return Form{{}, {Number::whole(1)}, radicand, a.below};
  }
  if (a.plain.size() > 1 || a.below.size() > 1 || (degree == 2 && !a.plain.empty() && radicand[0].sign() < 0)) {
    return std::nullopt;
  }
  const Number value = a.plain.empty() ? Number() : a.plain[0] / a.below[0];
  const Number result = degree == 2 ? square_root(value) : cube_root(value);
  return Form{exact::without_leading_zeros({result}), {}, {}, {Number::whole(1)}};
}

std::optional<Form> form_of(const Expression& expression, const Symbol& unknown, const Bindings& bindings);

std::optional<Form> combined(Operation operation, const Form& a, const Form& b) {
  switch (operation) {
    case Operation::Sum:
      return sum(a, b);
    case Operation::Difference:
      return sum(a, negative(b));
    case Operation::Product:
      return product(a, b);
    case Operation::Quotient: {
      const std::optional<Form> inverted = inverse(b);
      return inverted ? product(a, *inverted) : std::nullopt;
    }
    default:
      return std::nullopt;
  }
}

std::optional<Form> raised(const Form& a, int exponent) {
  std::optional<Form> result = a;
  for (int i = 1; i < exponent && result; ++i) {
    result = is_small(*result) ? product(*result, a) : std::nullopt;
  }
  return result;
}

std::optional<Form> form_of_operands(const Expression& expression, const Symbol& unknown, const Bindings& bindings) {
  std::optional<Form> total;
  for (const Expression& operand : expression.operands()) {
    const std::optional<Form> form = form_of(operand, unknown, bindings);
    if (!form) {
      return std::nullopt;
    }
    total = total ? combined(expression.operation(), *total, *form) : form;
    if (!total || !is_small(*total)) {
      return std::nullopt;
    }
  }
  return total;
}

// Nothing where the expression has no such form or no value.
std::optional<Form> form_of(const Expression& expression, const Symbol& unknown, const Bindings& bindings) {
  switch (expression.operation()) {
    case Operation::Number:
      return Form{exact::without_leading_zeros({expression.number()}), {}, {}};
    case Operation::Symbol: {
      if (expression.symbol() == unknown) {
        return Form{{Number(), Number::whole(1)}, {}, {}};
      }
      const auto bound = bindings.find(expression.symbol().name);
      return bound == bindings.end() ? std::nullopt
                                     : std::optional<Form>(Form{exact::without_leading_zeros({bound->second}), {}, {}});
    }
    default:
      break;
  }
  const std::optional<Form> form = form_of_operands(expression, unknown, bindings);
  if (!form || expression.operation() == Operation::Power) {
    return form ? raised(*form, expression.exponent()) : std::nullopt;
  }
  return expression.operation() == Operation::Root ? root(*form, expression.exponent()) : form;
}

double in_doubles(const Expression& expression, const std::string& unknown, double x, const Bindings& bindings) {
  const auto value = [&](const Expression& e) { return in_doubles(e, unknown, x, bindings); };
  const std::vector<Expression>& operands = expression.operands();
  switch (expression.operation()) {
    case Operation::Number:
      return expression.number().to_double();
    case Operation::Symbol: {
      const std::string& name = expression.symbol().name;
      const auto bound = bindings.find(name);
      return name == unknown ? x : bound->second.to_double();
    }
    case Operation::Power:
      return std::pow(value(operands[0]), expression.exponent());
    case Operation::Root:
      return expression.exponent() == 2 ? std::sqrt(value(operands[0])) : std::cbrt(value(operands[0]));
    default:
      break;
  }
  double total = value(operands[0]);
  for (std::size_t i = 1; i < operands.size(); ++i) {
    const double next = value(operands[i]);
    switch (expression.operation()) {
      case Operation::Sum:
        total += next;
        break;
      case Operation::Difference:
        total -= next;
        break;
      case Operation::Product:
        total *= next;
        break;
      default:
        total /= next;
        break;
    }
  }
  return total;
}

class Solver {
 public:
  Solver(const Equation& equation, const Symbol& unknown, const Bindings& bindings)
      : equation_(equation), unknown_(unknown), bindings_(bindings) {}

  [[nodiscard]] std::vector<Number> solutions() const {
    const std::optional<Form> left = form_of(equation_.left, unknown_, bindings_);
    const std::optional<Form> right = form_of(equation_.right, unknown_, bindings_);
    const std::optional<Form> difference = left && right ? sum(*left, negative(*right)) : std::nullopt;
    if (!difference) {
      return by_search();
    }
    Polynomial polynomial = difference->plain;
    if (!difference->rooted.empty()) {  // p = -q√r only if p² = q²r
      polynomial = sum(product(polynomial, polynomial),
                       negative(product(product(difference->rooted, difference->rooted), difference->radicand)));
    }
    return only_true(exact::positive_roots(polynomial));
  }

 private:
  [[nodiscard]] std::optional<Number> difference_at(const Number& x) const {
    Bindings bound = bindings_;
    bound.insert_or_assign(unknown_.name, x);
    const std::optional<Number> left = evaluate(equation_.left, bound);
    const std::optional<Number> right = left ? evaluate(equation_.right, bound) : std::nullopt;
    return right ? std::optional<Number>(*left - *right) : std::nullopt;
  }

  [[nodiscard]] std::vector<Number> only_true(const std::vector<Number>& candidates) const {
    std::vector<Number> kept;
    std::copy_if(candidates.begin(), candidates.end(), std::back_inserter(kept), [&](const Number& x) {
      const std::optional<Number> difference = difference_at(x);
      return difference && difference->is_zero();
    });
    return kept;
  }

  // Changes of sign between places 1 % apart; two solutions nearer than that to each other, or a curve that only
  // touches zero, are not seen.
  [[nodiscard]] std::vector<Number> by_search() const {
    const auto value = [&](double x) {
      return in_doubles(equation_.left, unknown_.name, x, bindings_) -
             in_doubles(equation_.right, unknown_.name, x, bindings_);
    };
    const auto at = [](double x) { return exact::approximation(Number::ratio(std::llround(x * 1e9), 1000000000)); };
    std::vector<Number> found;
    double before = std::numeric_limits<double>::quiet_NaN();
    for (double x = 1e-6; x < 1e9; x *= 1.01) {
      const double here = value(x);
      if ((before <= 0 && here > 0) || (before >= 0 && here < 0) || (here == 0 && x * 1.01 >= 1e9)) {
        const std::optional<Number> zero =
            exact::zero_between([&](const Number& n) { return difference_at(n); }, at(x / 1.01), at(x));
        if (zero) {
          found.push_back(*zero);
        }
      }
      before = here;
    }
    return only_true(found);
  }

  const Equation& equation_;
  const Symbol& unknown_;
  const Bindings& bindings_;
};

bool all_bound(const Expression& expression, const Symbol& unknown, const Bindings& bindings) {
  const std::vector<Symbol> symbols = symbols_of(expression);
  return std::all_of(symbols.begin(), symbols.end(), [&](const Symbol& symbol) {
    return symbol == unknown || bindings.find(symbol.name) != bindings.end();
  });
}

}  // namespace

std::vector<Number> positive_solutions(const Equation& equation, const Symbol& unknown, const Bindings& bindings) {
  if (!all_bound(equation.left, unknown, bindings) || !all_bound(equation.right, unknown, bindings)) {
    return {};
  }
  return Solver(equation, unknown, bindings).solutions();
}

}  // namespace fw::algebra
