#include "algebra/isolate.hpp"

#include <algorithm>

#include "algebra/radical_fraction.hpp"

namespace fw::algebra {
namespace {

using exact::Number;

// Nothing for what is no polynomial: the unknown under a root or below a fraction's line.
std::optional<Polynomial<Number>> polynomial_in(const Symbol& unknown, const Expression& e, const Bindings& values) {
  const auto fraction = radical_fraction<Number>(e, is_symbol(unknown), leaf_with(values));
  if (!fraction || !fraction->below.is_constant() || stands_under_root(e, unknown)) {
    return std::nullopt;
  }
  return fraction->plain * Polynomial<Number>{Number::whole(1) / fraction->below.at(0)};
}

class Isolation {
 public:
  Isolation(Equation equation, const Symbol& unknown, const Number& value, Numerals& numerals)
      : equation_(std::move(equation)), unknown_(unknown), value_(value), numerals_(&numerals) {}

  [[nodiscard]] std::optional<std::vector<IsolationStep>> steps() {
    for (int rounds = 0; rounds < most_rounds; ++rounds) {
      work_out();
      if (is_done()) {
        return steps_;
      }
      if (!advance()) {
        return std::nullopt;
      }
    }
    return std::nullopt;
  }

 private:
  using Kind = IsolationStep::Kind;
  static constexpr int most_rounds = 40;

  [[nodiscard]] bool has_unknown(const Expression& e) const { return occurrences(e, unknown_) > 0; }
  [[nodiscard]] bool is_done() const { return is_symbol(unknown_)(equation_.left) && !has_unknown(equation_.right); }

  void emit(Kind kind, Equation equation, std::optional<Expression> operand = std::nullopt, int degree = 2) {
    equation_ = std::move(equation);
    steps_.push_back({kind, equation_, std::move(operand), degree});
  }

  [[nodiscard]] Expression leaf(const Number& value, int dimension) {
    return dimension == 0 ? Expression(value) : Expression(numerals_->add(value, dimension));
  }

  // Arithmetic on both sides until nothing is left to do; the unknown moves to the left on the way.
  void work_out() {
    while (true) {
      const Equation worked{worked_once(equation_.left, *numerals_), worked_once(equation_.right, *numerals_)};
      const bool changed = !(worked.left == equation_.left) || !(worked.right == equation_.right);
      const bool swaps = !has_unknown(worked.left) && is_settled(worked.left);
      if (swaps) {
        emit(Kind::Swap, {worked.right, worked.left});
      } else if (changed) {
        emit(Kind::Work, worked);
      } else {
        return;
      }
    }
  }
  [[nodiscard]] static bool is_settled(const Expression& e) { return e.operands().empty(); }

  // One thing done to both sides.
  [[nodiscard]] bool advance() {
    if (has_unknown(equation_.right) || occurrences(equation_.left, unknown_) > 1) {
      return collect();
    }
    const Expression left = equation_.left;
    const std::vector<Expression>& operands = left.operands();
    switch (left.operation()) {
      case Operation::Sum:
        return take_off();
      case Operation::Difference:
      case Operation::Quotient:
        emit(left.operation() == Operation::Quotient ? Kind::Multiply : Kind::Add,
             {operands[0], undone(left.operation(), true, equation_.right, operands[1])}, operands[1]);
        return true;
      case Operation::Product:
        return divide_by_factors();
      case Operation::Power:
        emit(Kind::TakeRoot, {operands[0], root(equation_.right, left.exponent())}, std::nullopt, left.exponent());
        return left.exponent() <= 3;
      case Operation::Root:
        emit(Kind::Square, {operands[0], power(equation_.right, left.exponent())}, std::nullopt, left.exponent());
        return true;
      default:
        return false;
    }
  }

  [[nodiscard]] bool take_off() {
    std::vector<Expression> stays;
    std::vector<Expression> goes;
    for (const Expression& operand : equation_.left.operands()) {
      (has_unknown(operand) ? stays : goes).push_back(operand);
    }
    if (goes.empty()) {
      return false;
    }
    const Expression off = goes.size() == 1 ? goes.front() : sum_of(goes);
    const std::optional<Number> value = evaluate(off, numerals_->values());
    if (value && value->sign() < 0) {
      const Expression back = leaf(-*value, dimension_of(off));
      emit(Kind::Add, {stays.size() == 1 ? stays.front() : sum_of(stays), equation_.right + back}, back);
    } else {
      emit(Kind::Subtract, {stays.size() == 1 ? stays.front() : sum_of(stays), equation_.right - off}, off);
    }
    return true;
  }

  [[nodiscard]] bool divide_by_factors() {
    std::vector<Expression> stays;
    std::optional<Expression> by;
    for (const Expression& operand : equation_.left.operands()) {
      if (has_unknown(operand)) {
        stays.push_back(operand);
      } else {
        by = by ? *by * operand : operand;
      }
    }
    if (!by || stays.size() != 1) {
      return false;
    }
    emit(Kind::Divide, {stays.front(), equation_.right / *by}, by);
    return true;
  }

  // ---- several places of the unknown ----

  [[nodiscard]] bool collect() {
    const auto left = polynomial_in(unknown_, equation_.left, numerals_->values());
    const auto right = polynomial_in(unknown_, equation_.right, numerals_->values());
    if (!left || !right) {
      return square_root_away();
    }
    const int dimension = dimension_of(equation_.left);
    if (!right->is_constant()) {  // what stands there with the unknown goes to the left
      const Polynomial<Number> moved = *right - Polynomial<Number>{right->at(0)};
      const Expression off = polynomial(moved, dimension);
      emit(Kind::Subtract, {polynomial(*left - moved, dimension), leaf(right->at(0), dimension)}, off);
      return true;
    }
    const std::vector<Number>& all = left->coefficients();
    const Expression written = polynomial(*left, dimension);
    if (!is_same_shape(written, equation_.left)) {
      emit(Kind::Collect, {written, equation_.right});
      return true;
    }
    return all.size() == 3 && !all[1].is_zero() && complete_square(*left, dimension);
  }

  // ---- the unknown beside a root and under it ----

  // What the root is multiplied by, and what stands under it.
  struct RootTerm {
    Polynomial<Number> factor, radicand;
  };
  [[nodiscard]] std::optional<RootTerm> root_term(const Expression& term) const {
    RootTerm found{{Number::whole(1)}, {}};
    return gather(term, found) && !found.radicand.is_zero() ? std::optional(found) : std::nullopt;
  }
  /// False unless the term is a polynomial times one square root.
  [[nodiscard]] bool gather(const Expression& part, RootTerm& found) const {
    const std::vector<Expression>& operands = part.operands();
    if (!stands_under_root(part, unknown_)) {
      const auto all = polynomial_in(unknown_, part, numerals_->values());
      found.factor = all ? found.factor * *all : found.factor;
      return all.has_value();
    }
    if (part.operation() == Operation::Root) {
      const auto all = polynomial_in(unknown_, operands[0], numerals_->values());
      const bool is_single = all && part.exponent() == 2 && found.radicand.is_zero();
      found.radicand = is_single ? *all : found.radicand;
      return is_single;
    }
    if (part.operation() == Operation::Quotient) {
      const auto below = evaluate(operands[1], numerals_->values());
      found.factor = below ? found.factor * Polynomial<Number>{Number::whole(1) / *below} : found.factor;
      return below && gather(operands[0], found);
    }
    return part.operation() == Operation::Product &&
           std::all_of(operands.begin(), operands.end(), [&](const Expression& one) { return gather(one, found); });
  }

  // The root alone on the left, then both sides squared: what is left is a polynomial.
  [[nodiscard]] bool square_root_away() {
    const auto right = polynomial_in(unknown_, equation_.right, numerals_->values());
    if (!right) {
      return false;
    }
    if (equation_.left.operation() == Operation::Sum) {
      std::vector<Expression> roots;
      std::vector<Expression> goes;
      for (const Expression& operand : equation_.left.operands()) {
        (stands_under_root(operand, unknown_) ? roots : goes).push_back(operand);
      }
      if (roots.size() != 1 || goes.empty()) {
        return false;
      }
      const Expression off = goes.size() == 1 ? goes.front() : sum_of(goes);
      emit(Kind::Subtract, {roots.front(), equation_.right - off}, off);
      return true;
    }
    const auto term = root_term(equation_.left);
    if (!term) {
      return false;
    }
    const int dimension = 2 * dimension_of(equation_.left);
    emit(Kind::Square, {power(equation_.left, 2), power(equation_.right, 2)});
    emit(Kind::Collect,
         {polynomial(term->factor * term->factor * term->radicand, dimension), polynomial(*right * *right, dimension)});
    return true;
  }

  // Numerals differ by name though they stand for the same number.
  [[nodiscard]] bool is_same_shape(const Expression& a, const Expression& b) const {
    if (a.operation() != b.operation() || a.operands().size() != b.operands().size()) {
      return false;
    }
    if (a.operands().empty()) {
      const std::optional<Number> x = evaluate(a, numerals_->values());
      const std::optional<Number> y = evaluate(b, numerals_->values());
      return x && y ? *x == *y : a == b;
    }
    for (std::size_t i = 0; i < a.operands().size(); ++i) {
      if (!is_same_shape(a.operands()[i], b.operands()[i])) {
        return false;
      }
    }
    return true;
  }

  // A number alone first where the unknown stands once, as in 126 + 32h; else from the highest power down.
  [[nodiscard]] Expression polynomial(const Polynomial<Number>& all, int dimension) {
    std::vector<Expression> terms;
    for (std::size_t k = all.size(); k-- > 1;) {
      const Number coefficient = all.at(k);
      if (coefficient.is_zero()) {
        continue;
      }
      const Expression x = k == 1 ? Expression(unknown_) : power(unknown_, static_cast<int>(k));
      const int coefficient_dimension = dimension - static_cast<int>(k) * unknown_.dimension;
      const bool is_one = coefficient_dimension == 0 && coefficient == Number::whole(1);
      terms.push_back(is_one ? x : leaf(coefficient, coefficient_dimension) * x);
    }
    if (!all.at(0).is_zero()) {
      terms.insert(all.size() == 2 ? terms.begin() : terms.end(), leaf(all.at(0), dimension));
    }
    return terms.empty() ? leaf(Number(), dimension) : terms.size() == 1 ? terms.front() : sum_of(terms);
  }

  // a·x² + b·x + c = d, one thing at a time: c goes over, a is divided out, the square is completed.
  [[nodiscard]] bool complete_square(const Polynomial<Number>& all, int dimension) {
    if (!all.at(0).is_zero()) {
      return take_off();
    }
    const int leading_dimension = dimension - 2 * unknown_.dimension;
    if (leading_dimension != 0 || !(all.at(2) == Number::whole(1))) {
      const Expression by = leaf(all.at(2), leading_dimension);
      const Polynomial<Number> divided{Number(), all.at(1) / all.at(2), Number::whole(1)};
      emit(Kind::Divide, {polynomial(divided, 2 * unknown_.dimension), equation_.right / by}, by);
      return true;
    }
    const Number half = all.at(1) / Number::whole(2);
    const Number absolute = half.sign() < 0 ? -half : half;
    const Expression shift = leaf(absolute, unknown_.dimension);
    const Expression added = power(shift, 2);
    emit(Kind::Add, {sum_of({equation_.left, added}), equation_.right + added}, added);
    const Expression x = unknown_;
    const Expression base = half.sign() < 0 ? x - shift : x + shift;
    const Expression right = worked_once(worked_once(equation_.right, *numerals_), *numerals_);
    emit(Kind::CompleteSquare, {power(base, 2), right});
    const bool is_minus = (value_ + half).sign() < 0;
    const Expression taken = root(right);
    emit(is_minus ? Kind::TakeMinusRoot : Kind::TakeRoot, {base, is_minus ? Expression(0) - taken : taken});
    return true;
  }

  Equation equation_;
  const Symbol& unknown_;
  const Number& value_;
  Numerals* numerals_;
  std::vector<IsolationStep> steps_;
};

}  // namespace

std::optional<Expression> solved_for(const Equation& equation, const Symbol& symbol) {
  const std::size_t on_left = occurrences(equation.left, symbol);
  if (on_left + occurrences(equation.right, symbol) != 1) {
    return std::nullopt;
  }
  Expression side = on_left == 1 ? equation.left : equation.right;
  Expression value = on_left == 1 ? equation.right : equation.left;
  while (!side.operands().empty()) {
    if (side.operation() == Operation::Root || side.exponent() > 3) {
      return std::nullopt;
    }
    const std::size_t place = operand_with(side, symbol);
    if (side.operation() == Operation::Power) {
      value = root(value, side.exponent());
    } else {
      std::vector<Expression> rest = side.operands();
      rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(place));
      value = undone(side.operation(), place == 0, value, with_operands(side, rest));
    }
    side = Expression(side.operands()[place]);
  }
  return value;
}

std::optional<std::vector<IsolationStep>> isolated(const Equation& equation, const Symbol& unknown, const Number& value,
                                                   Numerals& numerals) {
  return Isolation(equation, unknown, value, numerals).steps();
}

}  // namespace fw::algebra
