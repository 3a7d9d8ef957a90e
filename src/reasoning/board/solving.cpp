#include "reasoning/board/solving.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "reasoning/arithmetic.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;
using exact::Number;
using Line = BoardLine::Kind;

// The numbers before the powers of the unknown, from the 0th on.
using Powers = std::vector<Number>;

Powers product_of(const Powers& a, const Powers& b) {
  Powers made(a.size() + b.size() - 1);
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      made[i + j] = made[i + j] + a[i] * b[j];
    }
  }
  return made;
}

std::optional<Powers> powers_of(const Expression& side, const Symbol& unknown, const algebra::Bindings& values) {
  if (algebra::occurrences(side, unknown) == 0) {
    const std::optional<Number> value = algebra::evaluate(side, values);
    return value ? std::optional(Powers{*value}) : std::nullopt;
  }
  if (side.operation() == Operation::Symbol) {
    return Powers{Number{}, Number::whole(1)};
  }
  const auto first = powers_of(side.operands().front(), unknown, values);
  if (!first || side.operation() == Operation::Root) {
    return std::nullopt;
  }
  Powers made = *first;
  for (int i = 1; side.operation() == Operation::Power && i < side.exponent(); ++i) {
    made = product_of(made, *first);
  }
  for (std::size_t i = 1; i < side.operands().size(); ++i) {
    const auto next = powers_of(side.operands()[i], unknown, values);
    if (!next || (side.operation() == Operation::Quotient && next->size() > 1)) {
      return std::nullopt;
    }
    if (side.operation() == Operation::Product) {
      made = product_of(made, *next);
    } else if (side.operation() == Operation::Quotient) {
      made = product_of(made, {Number::whole(1) / next->front()});
    } else {
      made.resize(std::max(made.size(), next->size()));
      for (std::size_t k = 0; k < next->size(); ++k) {
        made[k] = side.operation() == Operation::Sum ? made[k] + (*next)[k] : made[k] - (*next)[k];
      }
    }
  }
  return made;
}

// What makes a whole number of a fraction that does not end: 3 for 1/3 and for 200/3.
std::optional<int> denominator_of(const Number& number) {
  constexpr int places = 2;
  constexpr int most = 400;
  if (!number.is_rational() || exact::decimals_needed(number, places)) {
    return std::nullopt;
  }
  for (int n = 2; n <= most; ++n) {
    if ((number * Number::whole(n)).is_whole()) {
      return n;
    }
  }
  return std::nullopt;
}

// Number = numbers × powers of the unknown: 224 = 64 + 16ℓ.
class Solving {
 public:
  Solving(BoardPage& page, std::size_t before, const Equation& equation, const Symbol& unknown, const Symbol& numeral)
      : page_(&page), unknown_(unknown), numeral_(numeral), equation_(equation) {
    lines_.simplify = before;
    before_ = line_text(equation);
  }

  std::optional<SolvedLines> solved() {
    const bool stands_solved =
        equation_.left == Expression(unknown_) && algebra::occurrences(equation_.right, unknown_) == 0;
    if (stands_solved) {
      add_up(equation_.right);
      write(Line::Solve, work_, unknown_, numeral_);
      lines_.last = page_->size() - 1;
      return lines_;
    }
    if (!take_apart()) {
      return std::nullopt;
    }
    simplify();
    undo_sum();
    undo_product();
    undo_power();
    lines_.last = page_->size() - 1;
    return lines_;
  }

 private:
  [[nodiscard]] const algebra::Bindings& values() const { return page_->sheet().numerals().values(); }
  [[nodiscard]] Number value_of(const Expression& e) const { return *algebra::evaluate(e, values()); }
  [[nodiscard]] std::string line_text(const Equation& equation) const {
    return algebra::plain_text(page_->notation_line({equation.left, equation.right}));
  }

  // A line that says what the one before said is none.
  bool write(Line kind, const Message& reason, const Expression& left, const Expression& right) {
    const std::string text = line_text({left, right});
    if (text == before_) {
      return false;
    }
    before_ = text;
    page_->write(kind, reason, {{left, right}});
    return true;
  }

  // The known side: each term of a sum worked out on a line of its own.
  Expression add_up(const Expression& side) {
    const bool is_sum = side.operation() == Operation::Sum || side.operation() == Operation::Difference;
    const auto is_leaf = [](const Expression& e) { return e.operands().empty(); };
    work_ = nests(side) ? message("Simplify.") : arithmetic_words(side, page_->sheet().numerals());
    if (!is_sum || std::all_of(side.operands().begin(), side.operands().end(), is_leaf)) {
      return side;
    }
    std::vector<Expression> terms;
    for (const Expression& term : side.operands()) {
      terms.push_back(is_leaf(term) ? term : page_->number(value_of(term), algebra::dimension_of(term)));
    }
    const Expression worked = algebra::with_operands(side, terms);
    work_ = arithmetic_words(worked, page_->sheet().numerals());
    if (write(Line::Simplify, message("Simplify."), unknown_, worked)) {
      lines_.simplify = page_->size() - 1;
    }
    return worked;
  }

  // Whether a sum stands within a product, a power or a root.
  [[nodiscard]] static bool nests(const Expression& e) {
    const bool adds = e.operation() == Operation::Sum || e.operation() == Operation::Difference;
    return std::any_of(e.operands().begin(), e.operands().end(), [&](const Expression& o) {
      const bool is_sum = o.operation() == Operation::Sum || o.operation() == Operation::Difference;
      return nests(o) || (is_sum && !adds);
    });
  }

  [[nodiscard]] bool take_apart() {
    unknown_is_left_ = algebra::occurrences(equation_.left, unknown_) > 0;
    const Expression& with = unknown_is_left_ ? equation_.left : equation_.right;
    const Expression& without = unknown_is_left_ ? equation_.right : equation_.left;
    const auto powers = powers_of(with, unknown_, values());
    if (algebra::occurrences(without, unknown_) > 0 || !powers) {
      return false;
    }
    for (std::size_t k = 1; k < powers->size(); ++k) {
      if (!(*powers)[k].is_zero()) {
        if (degree_ != 0) {
          return false;
        }
        degree_ = static_cast<int>(k);
        factor_ = (*powers)[k];
      }
    }
    dimension_ = algebra::dimension_of(with);
    shift_ = powers->front();
    is_unknown_first_ = algebra::occurrences(first_term(with), unknown_) > 0;
    known_ = value_of(without);
    return degree_ >= 1 && degree_ <= 3 && factor_.sign() > 0;
  }

  [[nodiscard]] static Expression first_term(const Expression& side) {
    const bool adds = side.operation() == Operation::Sum || side.operation() == Operation::Difference;
    return adds ? first_term(side.operands().front()) : side;
  }

  [[nodiscard]] Expression power_of_unknown() const {
    return degree_ == 1 ? Expression(unknown_) : algebra::power(unknown_, degree_);
  }

  // "16ℓ", "⅓ · 100ℓ" where 100/3 does not end.
  [[nodiscard]] Expression unknown_term() {
    const int rest = dimension_ - degree_ * unknown_.dimension;
    const Expression power = power_of_unknown();
    if (const std::optional<int> below = denominator_of(factor_)) {
      const Number above = factor_ * Number::whole(*below);
      return above == Number::whole(1) ? power / Expression(*below)
                                       : page_->number(above, rest) * power / Expression(*below);
    }
    return has_factor() ? page_->number(factor_, rest) * power : power;
  }

  // "1 cm · h" where lines have units, else "h".
  [[nodiscard]] bool has_factor() const {
    const bool has_unit =
        page_->style().units == ClassNotation::Units::OnEveryLine && dimension_ != degree_ * unknown_.dimension;
    return !(factor_ == Number::whole(1)) || has_unit;
  }

  void write_equation(Line kind, const Message& reason, const Expression& with) {
    const Expression known = page_->number(known_, dimension_);
    unknown_is_left_ ? write(kind, reason, with, known) : write(kind, reason, known, with);
  }

  void simplify() {
    if (shift_.is_zero() && denominator_of(factor_)) {
      return;  // both sides are multiplied at once
    }
    Expression with = unknown_term();
    if (!shift_.is_zero()) {
      const bool is_added = shift_.sign() > 0;
      const Expression shift = page_->number(is_added ? shift_ : -shift_, dimension_);
      with = !is_added ? with - shift : is_unknown_first_ ? with + shift : shift + with;
    }
    const std::size_t rows = page_->size();
    write_equation(Line::Simplify, message("Simplify."), with);
    lines_.simplify = page_->size() > rows ? rows : lines_.simplify;
  }

  void undo_sum() {
    if (shift_.is_zero()) {
      return;
    }
    const bool is_added = shift_.sign() > 0;
    const std::string operand = page_->text(page_->number(is_added ? shift_ : -shift_, dimension_));
    known_ = known_ - shift_;
    write_equation(Line::Solve,
                   is_added ? message("Subtract {operand} from both sides.", {{"operand", operand}})
                            : message("Add {operand} to both sides.", {{"operand", operand}}),
                   unknown_term());
    lines_.add = page_->size() - 1;
  }

  void undo_product() {
    if (const std::optional<int> below = denominator_of(factor_)) {
      known_ = known_ * Number::whole(*below);
      factor_ = factor_ * Number::whole(*below);
      write_equation(Line::Solve, message("Multiply both sides by {operand}.", {{"operand", *below}}), unknown_term());
      lines_.multiply = page_->size() - 1;
    }
    const int rest = dimension_ - degree_ * unknown_.dimension;
    if (!has_factor()) {
      dimension_ -= rest;
      return;
    }
    const std::string operand = page_->text(page_->number(factor_, rest));
    known_ = known_ / factor_;
    factor_ = Number::whole(1);
    dimension_ -= rest;
    write_equation(Line::Solve, message("Divide both sides by {operand}.", {{"operand", operand}}), power_of_unknown());
    lines_.divide = page_->size() - 1;
  }

  void undo_power() {
    if (degree_ == 1) {
      return;
    }
    EqualParts value{numeral_};
    if (!value_of(numeral_).is_rational()) {
      value.insert(value.begin(), algebra::root(page_->number(known_, dimension_), degree_));
    }
    EqualParts line{unknown_};
    line.insert(unknown_is_left_ ? line.end() : line.begin(), value.begin(), value.end());
    page_->write(Line::Solve,
                 degree_ == 2 ? message("A length is positive, so take the positive square root.")
                              : message("Take the cube root of both sides."),
                 {line});
    lines_.root = page_->size() - 1;
  }

  BoardPage* page_;
  Symbol unknown_;
  Symbol numeral_;
  Equation equation_;
  SolvedLines lines_;
  std::string before_;
  Message work_;
  bool unknown_is_left_ = false;
  bool is_unknown_first_ = false;
  int degree_ = 0;
  int dimension_ = 0;  // of either side
  Number known_, shift_, factor_;
};

}  // namespace

std::size_t SolvedLines::line_of(const Step& step, std::size_t before) const {
  const auto or_near = [&](const std::optional<std::size_t>& line) { return std::max(line.value_or(before), before); };
  switch (step.change.kind) {
    case Change::Kind::Add:
    case Change::Kind::Subtract:
      return or_near(add);
    case Change::Kind::Multiply:
      return or_near(multiply ? multiply : divide);
    case Change::Kind::Divide:
      return or_near(divide ? divide : multiply);
    case Change::Kind::TakeRoot:
    case Change::Kind::Square:
      return or_near(root);
    default:
      return before;
  }
}

std::optional<SolvedLines> write_solving(BoardPage& page, std::size_t before, const Equation& equation,
                                         const Symbol& unknown, const Symbol& numeral) {
  return Solving(page, before, equation, unknown, numeral).solved();
}

}  // namespace fw::reasoning
