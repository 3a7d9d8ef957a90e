#include "reasoning/supply_steps.hpp"

#include <algorithm>

#include "exact/print_number.hpp"

namespace fw::reasoning {
namespace {

using algebra::leaf;
using algebra::Notation;
using exact::Number;
using Kind = Notation::Kind;

constexpr int column_places = 6;  // of exact/column_work.hpp
constexpr int longest_decimal = 6;
constexpr int guard_places = 1;
constexpr int most_places = 6;

bool fits_columns(const Number& number) {
  return number.sign() >= 0 && exact::decimals_needed(number, column_places).has_value();
}

// Digits from the first to the last that is not 0: 2 for 0.45 and for 4500.
std::size_t digits_that_count(const Number& number) {
  std::string digits = exact::digits_text(number, column_places);
  digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
  const std::size_t first = digits.find_first_not_of('0');
  return first == std::string::npos ? 0 : digits.find_last_not_of('0') - first + 1;
}

bool is_table_number(const Number& number) { return number.is_whole() && number <= Number::whole(12); }

bool is_power_of_ten(const Number& number) {
  return digits_that_count(number) == 1 && exact::shown(number, column_places).text.find('1') != std::string::npos;
}

// "1 ft² = 12 in × 12 in = 144 in²", or "1 gal = 231 in³".
SupplyNumber unit_step(SupplySteps& steps, const units::Unit& big, const units::Unit& small) {
  constexpr int factor_places = 4;
  const Number factor = conversion(big, small);
  const int dimension = big.dimension();
  std::vector<Notation> left{leaf(Kind::Number, "1"), leaf(Kind::Unit, big.text())};
  const exact::Shown whole = exact::shown(factor, factor_places);
  Message reason = message("1 {unit} is {amount}.", {{"unit", big.text()}, {"amount", about(whole, small.text())}});
  if (big.root() && small.root() && dimension > 1) {
    const exact::Shown length = exact::shown(conversion(*big.root(), *small.root()), factor_places);
    const Message times =
        dimension == 2
            ? message("an area has two dimensions: {factor} × {factor}", {{"factor", length.text}})
            : message("a volume has three dimensions: {factor} × {factor} × {factor}", {{"factor", length.text}});
    reason = message("1 {unit} is {amount}, and {times}.",
                     {{"unit", big.root()->text()}, {"amount", about(length, small.root()->text())}, {"times", times}});
    left.push_back(leaf(Kind::Sign, "="));
    for (int i = 0; i < dimension; ++i) {
      if (i > 0) {
        left.push_back(leaf(Kind::Sign, "×"));
      }
      left.push_back(leaf(Kind::Number, length.text));
      left.push_back(leaf(Kind::Unit, small.root()->text()));
    }
  }
  return steps.state(StepKind::Convert, reason, algebra::row(std::move(left)), true, {factor, small, {}, whole.text});
}

}  // namespace

Message about(const exact::Shown& number, const std::string& unit) {
  const words::Amount amount{number.text, unit};
  return number.exact ? message("{amount}", {{"amount", amount}}) : message("about {amount}", {{"amount", amount}});
}

exact::Shown shown_apart(const Number& number, int places) {
  constexpr int most = 12;
  exact::Shown shown = exact::shown(number, places);
  for (int more = places + 1; more <= most && !shown.exact && exact::rounded(number, more - 1).is_whole(); ++more) {
    shown = exact::shown(number, more);
  }
  return shown;
}

std::optional<exact::ColumnWork> aside_of(const Number& a, const std::string& sign, const Number& b, int places) {
  const bool is_below = sign == "−" && a < b;  // as printed, where the difference is less than their last digit
  if (!fits_columns(a) || !fits_columns(b) || is_below) {
    return std::nullopt;
  }
  if (sign == "×") {
    const bool is_easy = digits_that_count(a) * digits_that_count(b) <= 2 || is_power_of_ten(a) || is_power_of_ten(b);
    return is_easy ? std::nullopt : std::optional(exact::long_multiplication(std::max(a, b), std::min(a, b)));
  }
  if (sign == "÷") {
    const bool is_easy = is_power_of_ten(b) || (is_table_number(b) && is_table_number(a / b));
    return is_easy ? std::nullopt : std::optional(exact::long_division(a, b, places));
  }
  const bool is_easy = std::max(digits_that_count(a), digits_that_count(b)) <= 2 && a.is_whole() && b.is_whole();
  return is_easy ? std::nullopt : std::optional(exact::column_subtraction(a, b));
}

std::size_t SupplySteps::add_source(Source::Kind kind, Message sentence, std::vector<FaceId> faces) {
  Source source;
  source.kind = kind;
  source.sentence = std::move(sentence);
  source.faces = std::move(faces);
  work_->sources.push_back(std::move(source));
  return work_->sources.size() - 1;
}

exact::Shown SupplySteps::shown(const SupplyNumber& number) const {
  if (!number.text.empty()) {
    return {number.text, true};
  }
  if (number.shown) {
    return *number.shown;
  }
  if (exact::decimals_needed(number.value, longest_decimal)) {
    return exact::shown(number.value, longest_decimal);
  }
  return shown_apart(number.value, number.unit ? places_ + guard_places : places_);
}

Number SupplySteps::as_printed(const SupplyNumber& number) const {
  const exact::Shown as_shown = shown(number);
  if (as_shown.exact) {
    return number.value;
  }
  const auto read = exact::parse_number(as_shown.text);
  const bool is_something = read && !read->value.is_zero();  // a millionth of a millionth is shown as 0
  return is_something ? read->value : number.value;
}

Notation SupplySteps::notation(const SupplyNumber& number) const {
  Notation shown = leaf(Kind::Number, digits(number));
  shown.source = number.source;
  return number.unit ? algebra::row({std::move(shown), leaf(Kind::Unit, number.unit->text())}) : shown;
}

SupplyNumber SupplySteps::work_out(StepKind kind, const Message& reason, const SupplyNumber& a, const std::string& sign,
                                   const SupplyNumber& b, SupplyNumber result) {
  const Number x = as_printed(a);
  const Number y = as_printed(b);
  SupplyNumber shown = state_worked(kind, reason, algebra::row({notation(a), leaf(Kind::Sign, sign), notation(b)}),
                                    sign == "×"   ? x * y
                                    : sign == "÷" ? x / y
                                                  : x - y,
                                    std::move(result));
  // Where the line rounds, the division shows one more digit, and so the rounding.
  const exact::Shown& on_line = *shown.shown;
  const std::size_t point = on_line.text.find('.');
  const int places = point == std::string::npos ? 0 : static_cast<int>(on_line.text.size() - point) - 1;
  add_aside(aside_of(x, sign, y, on_line.exact ? places : places + 1));
  return shown;
}

SupplyNumber SupplySteps::state_worked(StepKind kind, const Message& reason, Notation left, const Number& printed,
                                       SupplyNumber result) {
  const bool is_exact = printed == result.value;
  exact::Shown best = this->shown(result);
  for (int places = most_places; !is_exact && result.text.empty() && places >= 0; --places) {
    const exact::Shown tried{exact::fixed_text(result.value, places), false};
    const bool is_shorter = tried.text.size() <= best.text.size() || best.exact;
    if (is_shorter && exact::rounded(printed, places) == exact::rounded(result.value, places)) {
      best = tried;
      break;
    }
  }
  result.shown = best;
  return state(kind, reason, std::move(left), is_exact, std::move(result));
}

SupplyNumber SupplySteps::state(StepKind kind, const Message& reason, Notation left, bool shown_exact,
                                SupplyNumber result) {
  Step step;
  step.kind = kind;
  step.reason = reason;
  step.outcome = Outcome{result.value, result.unit};
  step.faces = work_->faces;
  result.shown = shown(result);
  const bool exact = shown_exact && result.shown->exact;
  const Notation shown_result = notation(result);
  step.line = algebra::NotationLine{std::move(left), exact ? "=" : "≈", shown_result};
  work_->steps.push_back(std::move(step));
  result.source =
      add_source(Source::Kind::EarlierStep, message("found before: {number}", {{"number", plain_text(shown_result)}}));
  work_->sources.back().step = work_->steps.size() - 1;
  return result;
}

Step& SupplySteps::say(StepKind kind, const Message& reason) {
  Step step;
  step.kind = kind;
  step.reason = reason;
  step.faces = work_->faces;
  work_->steps.push_back(std::move(step));
  return work_->steps.back();
}

void SupplySteps::add_aside(std::optional<exact::ColumnWork> aside) {
  if (aside) {
    work_->steps.back().asides.push_back(std::move(*aside));
  }
}

SupplyNumber converted(SupplySteps& steps, const SupplyNumber& amount, const units::Unit& unit) {
  if (*amount.unit == unit) {
    return amount;
  }
  const Number factor = conversion(*amount.unit, unit);
  const bool is_smaller = factor > Number::whole(1);
  if (factor == Number::whole(1)) {
    const Message reason = message("1 {unit} is 1 {other}.", {{"unit", amount.unit->text()}, {"other", unit.text()}});
    return steps.state(StepKind::Convert, reason, steps.notation(amount), steps.shown(amount).exact,
                       {amount.value, unit, {}, amount.text, steps.shown(amount)});
  }
  const SupplyNumber one = is_smaller ? unit_step(steps, *amount.unit, unit) : unit_step(steps, unit, *amount.unit);
  SupplyNumber by = one;
  by.unit.reset();
  const std::string sign = is_smaller ? "×" : "÷";
  const Message reason = is_smaller
                             ? message("1 {unit} is smaller, so you need more. Multiply.", {{"unit", unit.text()}})
                             : message("1 {unit} is larger, so you need fewer. Divide.", {{"unit", unit.text()}});
  SupplyNumber bare = amount;
  bare.unit.reset();
  const Notation work = algebra::row({steps.notation(bare), leaf(Kind::Sign, sign), steps.notation(by)});
  Notation bracketed;
  bracketed.kind = Kind::Brackets;
  bracketed.parts = {work};
  const Number printed = steps.as_printed(amount);
  const Number times = is_smaller ? conversion(*amount.unit, unit) : conversion(unit, *amount.unit);
  SupplyNumber result = steps.state_worked(
      StepKind::Convert, reason,
      algebra::row({steps.notation(amount), leaf(Kind::Sign, "="), bracketed, leaf(Kind::Unit, unit.text())}),
      is_smaller ? printed * times : printed / times, {amount.value * factor, unit, {}, ""});
  if (steps.shown(amount).exact && exact::shown(one.value, 4).exact) {
    steps.add_aside(aside_of(amount.value, sign, one.value, steps.places()));
  }
  return result;
}

}  // namespace fw::reasoning
