#include <algorithm>
#include <cmath>
#include <limits>

#include "algebra/isolate.hpp"
#include "algebra/radical_fraction.hpp"
#include "algebra/rough.hpp"

namespace fw::algebra {
namespace {

using exact::Number;

class Solver {
 public:
  Solver(const Equation& equation, const Symbol& unknown, const Bindings& bindings)
      : equation_(equation), unknown_(unknown), bindings_(bindings) {}

  [[nodiscard]] std::vector<Number> solutions() const {
    std::vector<Number> found = by_undoing();
    if (!found.empty()) {
      return found;
    }
    const auto fraction = [&](const Expression& side) {
      return radical_fraction<Number>(side, is_symbol(unknown_), leaf_with(bindings_));
    };
    const auto difference = combined(Operation::Difference, fraction(equation_.left), fraction(equation_.right));
    return difference ? only_true(positive_roots(difference->without_root())) : by_search();
  }

 private:
  // Where the unknown stands once.
  [[nodiscard]] std::vector<Number> by_undoing() const {
    const std::size_t on_left = occurrences(equation_.left, unknown_);
    if (on_left + occurrences(equation_.right, unknown_) != 1) {
      return {};
    }
    const auto leaf = leaf_with(bindings_);
    Undoing<PossibleNumber, Symbol, decltype(leaf)> undoing(unknown_, leaf);
    undoing.undo(on_left == 1 ? equation_.left : equation_.right,
                 evaluate(on_left == 1 ? equation_.right : equation_.left, bindings_));
    std::vector<Number> found;
    for (const PossibleNumber& value : undoing.found()) {
      found.push_back(*value);
    }
    std::sort(found.begin(), found.end());
    return found;
  }

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
    std::vector<double> values(1);
    const RoughEquation rough(equation_, [&](const Symbol& symbol) {
      if (symbol == unknown_) {
        return std::size_t{0};
      }
      values.push_back(bindings_.find(symbol.name)->second.to_double());
      return values.size() - 1;
    });
    const auto value = [&](double x) {
      values[0] = x;
      return rough.excess(values);
    };
    const auto at = [](double x) { return exact::approximation(Number::of_double(x)); };
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

}  // namespace

std::vector<Number> positive_solutions(const Equation& equation, const Symbol& unknown, const Bindings& bindings) {
  const std::vector<Symbol> symbols = symbols_of(equation);
  const bool all_bound = std::all_of(symbols.begin(), symbols.end(), [&](const Symbol& symbol) {
    return symbol == unknown || bindings.find(symbol.name) != bindings.end();
  });
  return all_bound ? Solver(equation, unknown, bindings).solutions() : std::vector<Number>{};
}

// The other symbols are given values that have nothing to do with each other. In doubles, since exact roots of such
// values are sums of many terms and cost seconds.
bool is_vacuous(const Equation& equation, const Symbol& unknown) {
  std::map<std::string, double, std::less<>> values;
  double odd = 37;
  for (const Symbol& symbol : symbols_of(equation)) {
    values.insert_or_assign(symbol.name, odd / 17);
    odd += 12;
  }
  std::optional<double> before;
  for (const double tried : {1.0, 7.0, 53.0, 419.0, 3001.0}) {
    values.insert_or_assign(unknown.name, tried / 3);
    const double left = rough_value(equation.left, values);
    const double right = rough_value(equation.right, values);
    if (!std::isfinite(left) || !std::isfinite(right)) {
      continue;
    }
    const double apart = left - right;
    if (before && std::abs(apart - *before) > 1e-9 * (std::abs(left) + std::abs(right))) {
      return false;
    }
    before = apart;
  }
  return true;
}

}  // namespace fw::algebra
