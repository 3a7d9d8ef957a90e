#include "reasoning/link_steps.hpp"

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "reasoning/arithmetic.hpp"
#include "reasoning/phrases.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::IsolationStep;
using algebra::Notation;
using algebra::Operation;
using algebra::Symbol;
using exact::Number;

std::vector<Symbol> letters_of(const Equation& equation, const algebra::Numerals& numerals) {
  std::vector<Symbol> letters;
  for (const Symbol& symbol : algebra::symbols_of(equation.left - equation.right)) {
    if (!numerals.holds(symbol)) {
      letters.push_back(symbol);
    }
  }
  return letters;
}

// ---- reasons ----

Message both_sides(const Worksheet& sheet, const IsolationStep& step) {
  const words::Value operand = step.operand ? sheet.value(*step.operand) : "";
  switch (step.kind) {
    case IsolationStep::Kind::Add:
      return step.operand->operation() == Operation::Power
                 ? message(
                       "Complete the square. Take half of the number in front of the letter, square it, and add "
                       "{operand} to both sides.",
                       {{"operand", operand}})
                 : message("Add {operand} to both sides.", {{"operand", operand}});
    case IsolationStep::Kind::Subtract:
      return message("Subtract {operand} from both sides.", {{"operand", operand}});
    case IsolationStep::Kind::Multiply:
      return message("Multiply both sides by {operand}.", {{"operand", operand}});
    case IsolationStep::Kind::Divide:
      return message("Divide both sides by {operand}.", {{"operand", operand}});
    case IsolationStep::Kind::Square:
      return step.degree == 2 ? message("Square both sides.") : message("Cube both sides.");
    case IsolationStep::Kind::Collect:
      return message("Combine like terms.");
    case IsolationStep::Kind::CompleteSquare:
      return message("Write the left side as a perfect square.");
    default:
      return {};
  }
}

// The value of the letter if the other square root were taken: base = ±root, base being x, x + c or x − c.
Message other_root(const Worksheet& sheet, const IsolationStep& step, const algebra::Bindings& values, bool minus) {
  Expression right = step.equation.right;
  const std::optional<Number> taken = algebra::evaluate(right, values);
  const Expression& base = step.equation.left;
  if (base.operands().empty() || !taken) {
    return {};
  }
  const std::optional<Number> shift = algebra::evaluate(base.operands()[1], values);
  if (!shift) {
    return {};
  }
  const Number other = base.operation() == Operation::Sum ? -*taken - *shift : -*taken + *shift;
  const std::string letter = sheet.text(base.operands()[0]);
  const words::Amount number = sheet.amount(other, algebra::dimension_of(base));
  const Message why =
      other.sign() <= 0 ? message("which cannot be a length") : message("which does not fit the other measures");
  return minus ? message("The positive root would give {letter} = {number}, {why}.",
                         {{"letter", letter}, {"number", number}, {"why", why}})
               : message("The negative root would give {letter} = {number}, {why}.",
                         {{"letter", letter}, {"number", number}, {"why", why}});
}

Message root_reason(const Worksheet& sheet, const IsolationStep& step, const algebra::Bindings& values) {
  if (step.degree == 3) {
    return message("Take the cube root of both sides.");
  }
  const bool minus = step.kind == IsolationStep::Kind::TakeMinusRoot;
  const Message other = other_root(sheet, step, values, minus);
  return message("Take the square root of both sides. {why}",
                 {{"why", other.empty() ? message("A length is positive, so keep the positive root.") : other}});
}

Change change_of(const IsolationStep& step) {
  switch (step.kind) {
    case IsolationStep::Kind::Swap:
      return {Change::Kind::Swap};
    case IsolationStep::Kind::Add:
      return {Change::Kind::Add, step.operand};
    case IsolationStep::Kind::Subtract:
      return {Change::Kind::Subtract, step.operand};
    case IsolationStep::Kind::Multiply:
      return {Change::Kind::Multiply, step.operand};
    case IsolationStep::Kind::Divide:
      return {Change::Kind::Divide, step.operand};
    case IsolationStep::Kind::TakeRoot:
    case IsolationStep::Kind::TakeMinusRoot:
      return {Change::Kind::TakeRoot, std::nullopt, step.degree};
    case IsolationStep::Kind::Square:
      return {Change::Kind::Square, std::nullopt, step.degree};
    default:
      return {Change::Kind::Rewrite};
  }
}

StepKind kind_of(const IsolationStep& step) {
  switch (step.kind) {
    case IsolationStep::Kind::Work:
    case IsolationStep::Kind::Swap:
    case IsolationStep::Kind::Collect:
    case IsolationStep::Kind::CompleteSquare:
      return StepKind::Work;
    case IsolationStep::Kind::TakeRoot:
    case IsolationStep::Kind::TakeMinusRoot:
      return StepKind::TakeRoot;
    default:
      return StepKind::BothSides;
  }
}

void append(std::vector<exact::ColumnWork>& asides, std::vector<exact::ColumnWork> more) {
  asides.insert(asides.end(), more.begin(), more.end());
}

// Arithmetic from one equation to the next.
void write_work(Worksheet& sheet, const Equation& before, const IsolationStep& step) {
  const algebra::Numerals& numerals = sheet.numerals();
  const bool is_swap = step.kind == IsolationStep::Kind::Swap;
  const bool left_changes = !(before.left == (is_swap ? step.equation.right : step.equation.left));
  const bool right_changes = !(before.right == (is_swap ? step.equation.left : step.equation.right));
  const Expression worked = left_changes && right_changes ? before.left + before.right
                            : left_changes                ? before.left
                                                          : before.right;
  std::vector<Message> reasons;
  if (const Message work = left_changes || right_changes ? arithmetic_words(worked, numerals) : Message();
      !work.empty()) {
    reasons.push_back(work);
  }
  if (is_swap) {
    reasons.push_back(message("Switch sides so that the unknown is on the left."));
  }
  std::vector<exact::ColumnWork> asides;
  if (left_changes) {
    append(asides, asides_of(before.left, numerals));
  }
  if (right_changes) {
    append(asides, asides_of(before.right, numerals));
  }
  sheet.write(kind_of(step), one_after_another(reasons), step.equation, change_of(step)).asides = std::move(asides);
}

// The factor above the line and the number below it, struck out; not in one of several terms.
void write_canceled(Worksheet& sheet, Equation& equation) {
  const Operation operation = equation.right.operation();
  if (operation == Operation::Sum || operation == Operation::Difference) {
    return;
  }
  const std::optional<Canceled> cut = canceled(equation.right, sheet.numerals());
  if (!cut) {
    return;
  }
  const auto number = [&](const Symbol& numeral) {
    return sheet.number_text(sheet.numerals().values().at(numeral.name));
  };
  const Message reason =
      message("Cancel: {above} ÷ {below} = {left}.",
              {{"above", number(cut->above)}, {"below", number(cut->below)}, {"left", number(cut->left)}});
  equation.right = cut->after;
  Step& step = sheet.write(StepKind::Cancel, reason, equation, {Change::Kind::Rewrite});
  step.line->right = sheet.struck(*cut);
  step.outcome.reset();
}

void write_letters(Worksheet& sheet, const Link& link) {
  const Symbol& unknown = link.unknown;
  sheet.color_terms(sheet.groups_of(link.relation.right));
  Step& relation = sheet.write(StepKind::Relation, message("{reason:up}.", {{"reason", link.reason}}), link.relation,
                               {Change::Kind::Start});
  relation.faces = sheet.faces_of(unknown);
  relation.marks = sheet.marks_of(algebra::symbols_of(link.relation.left - link.relation.right));
  Equation equation = link.relation;
  for (const Substitution& put_in : in_turn(link)) {
    equation = algebra::replaced(equation, put_in.symbol, put_in.value);
    Change change{Change::Kind::PutIn, put_in.value};
    change.symbol = put_in.symbol;
    sheet.write(
        StepKind::PutIn,
        message("Substitute {letter} = {value}: {reason}.",
                {{"letter", put_in.symbol.letter}, {"value", sheet.value(put_in.value)}, {"reason", put_in.reason}}),
        equation, std::move(change));
  }
}

// The numbers in place of the letters; "numbers" without any is none.
Equation write_numbers(Worksheet& sheet, const Link& link) {
  Equation equation = composed(link);
  std::vector<Message> values;
  for (const Symbol& letter : letters_of(equation, sheet.numerals())) {
    if (letter == link.unknown) {
      continue;
    }
    const Symbol numeral = sheet.numeral_of(letter);
    equation = algebra::replaced(equation, letter, numeral);
    values.push_back(message("{letter} = {number}", {{"letter", letter.letter}, {"number", sheet.amount(numeral)}}));
  }
  if (!values.empty()) {
    sheet.write(StepKind::PutIn, message("Substitute: {values:,}.", {{"values", values}}), equation,
                {Change::Kind::PutIn});
  }
  return equation;
}

// What a class does without a formula: tries, and comes closer.
std::vector<Message> trials(const Worksheet& sheet, const Equation& equation, const Symbol& unknown,
                            const Number& value, const algebra::Bindings& values) {
  std::map<std::string, double, std::less<>> rough;
  for (const auto& [name, number] : values) {
    rough.insert_or_assign(name, number.to_double());
  }
  const double x = value.to_double();
  const double unit = std::pow(10.0, std::floor(std::log10(x)) - 1);
  constexpr int steps_at_most = 4;
  const int dimension = algebra::dimension_of(equation.left);
  const auto shown = [&](double d, int of) { return sheet.amount(exact::rounded(Number::of_double(d), 2), of); };
  std::vector<Message> all;
  for (const bool is_below : {true, false}) {
    // A number too far away can make a side that is none, such as a negative one under a root: then a nearer one.
    double step = unit;
    for (int i = 0; i < steps_at_most; ++i, step /= 10) {
      const double tried = is_below ? std::floor(x / step - 0.5) * step : std::ceil(x / step + 0.5) * step;
      rough.insert_or_assign(unknown.name, tried);
      const double left = algebra::rough_value(equation.left, rough);
      const double right = algebra::rough_value(equation.right, rough);
      if (!std::isfinite(left) || !std::isfinite(right)) {
        continue;
      }
      all.push_back(message("When {letter} = {tried}, the left side is {left} and the right side is {right}.",
                            {{"letter", unknown.letter},
                             {"tried", shown(tried, unknown.dimension)},
                             {"left", shown(left, dimension)},
                             {"right", shown(right, dimension)}}));
      break;
    }
  }
  return all;
}

void write_search(Worksheet& sheet, const Equation& equation, const Symbol& unknown, const Number& value) {
  const Symbol numeral = sheet.numerals().add(value, unknown.dimension);
  std::vector<Message> sentences{
      message("No formula from class gives {letter} here, so guess and check.", {{"letter", unknown.letter}})};
  for (Message& trial : trials(sheet, equation, unknown, value, sheet.numerals().values())) {
    sentences.push_back(std::move(trial));
  }
  const Message reason = words::one_after_another(sentences);
  sheet.write(StepKind::Numeric, reason, {unknown, numeral}, {Change::Kind::Search});
  sheet.set_numeral(unknown, numeral);
}

Notation quantity(std::string number, const units::Unit& unit) {
  return algebra::row(
      {algebra::leaf(Notation::Kind::Number, std::move(number)), algebra::leaf(Notation::Kind::Unit, unit.text())});
}

bool stands_solved(const Link& link) {
  return link.relation.left == Expression(link.unknown) &&
         algebra::occurrences(composed(link).right, link.unknown) == 0;
}

}  // namespace

std::optional<Symbol> write_isolation(Worksheet& sheet, const Symbol& unknown, const Number& value) {
  const Equation equation = *sheet.steps()[sheet.last_line()].equation;
  const auto way = algebra::isolated(equation, unknown, value, sheet.numerals());
  if (!way) {
    return std::nullopt;
  }
  Equation before = equation;
  for (const IsolationStep& step : *way) {
    using Kind = IsolationStep::Kind;
    const bool is_root = step.kind == Kind::TakeRoot || step.kind == Kind::TakeMinusRoot;
    if (step.kind == Kind::Work || step.kind == Kind::Swap) {
      write_work(sheet, before, step);
    } else {
      if (step.kind != Kind::Collect) {
        sheet.color_terms({});
      }
      sheet.write(kind_of(step),
                  is_root ? root_reason(sheet, step, sheet.numerals().values()) : both_sides(sheet, step),
                  step.equation, change_of(step));
    }
    before = step.equation;
  }
  const Expression& right = before.right;
  return right.operation() == Operation::Symbol ? right.symbol()
                                                : sheet.numerals().add(right.number(), unknown.dimension);
}

void write_link(Worksheet& sheet, const Link& link) {
  const Symbol& unknown = link.unknown;
  const Number& value = sheet.solid().values().at(unknown.name);
  if (link.derivation != nullptr) {
    const Symbol numeral = sheet.numerals().add(value, unknown.dimension);
    sheet.color_terms({});
    Step& step =
        sheet.write(StepKind::Work, message("{reason:up}.", {{"reason", reason_on(link, sheet.solid().values())}}),
                    {unknown, numeral}, {Change::Kind::Start});
    step.faces = sheet.faces_of(unknown);
    step.marks = sheet.marks_of({unknown});
    sheet.set_numeral(unknown, numeral);
    return;
  }
  write_letters(sheet, link);
  Equation equation = write_numbers(sheet, link);
  if (stands_solved(link)) {
    write_canceled(sheet, equation);
  }
  if (const std::optional<Symbol> numeral = write_isolation(sheet, unknown, value)) {
    sheet.set_numeral(unknown, *numeral);
  } else {
    write_search(sheet, equation, unknown, value);
  }
}

void write_rounded(Worksheet& sheet, const Symbol& asked, const Number& amount, const units::Unit& unit, int places) {
  const std::string number = exact::rounded_to(amount, places).text;
  const std::vector<FaceId> faces = sheet.faces_of(asked);
  Step& step = sheet.say(StepKind::Round, places == 0 ? message("Round once, at the end, to the nearest whole number.")
                                                      : message("Round once, at the end, to {count} decimal "
                                                                "{count:place|places}.",
                                                                {{"count", places}}));
  step.line = algebra::NotationLine{algebra::leaf(Notation::Kind::Letter, asked.letter), "≈", quantity(number, unit)};
  step.outcome = Outcome{exact::rounded(amount, places), unit};
  step.faces = faces;
}

void write_answer(Worksheet& sheet, const Symbol& asked, const Answer& answer) {
  const exact::Shown shown = exact::rounded_to(answer.amount, answer.places);
  const std::vector<FaceId> faces = sheet.faces_of(asked);
  const std::vector<solids::MarkId> marks = sheet.marks_of({asked});
  const Noun title{title_of(sheet.solid(), asked)};
  const words::Amount amount{shown.text, answer.unit.text()};
  std::vector<Message> reasons{
      shown.exact ? message("The {measure} is {amount}.", {{"measure", title}, {"amount", amount}})
                  : message("The {measure} is about {amount}.", {{"measure", title}, {"amount", amount}})};
  reasons.insert(reasons.end(), answer.notes.begin(), answer.notes.end());
  Step& step = sheet.say(StepKind::Answer, one_after_another(reasons));
  step.line = algebra::NotationLine{algebra::leaf(Notation::Kind::Letter, asked.letter), shown.exact ? "=" : "≈",
                                    quantity(shown.text, answer.unit)};
  step.outcome = Outcome{shown.exact ? answer.amount : exact::rounded(answer.amount, answer.places), answer.unit};
  step.faces = faces;
  step.marks = marks;
}

void write_check(Worksheet& sheet, const Link& link) {
  if (stands_solved(link) || link.derivation != nullptr) {
    return;
  }
  Equation equation = composed(link);
  for (const Symbol& letter : letters_of(equation, sheet.numerals())) {
    equation = algebra::replaced(equation, letter, sheet.numeral_of(letter));
  }
  const std::optional<Number> left = algebra::evaluate(equation.left, sheet.numerals().values());
  if (!left) {
    return;
  }
  const Message reason = message("Check: substitute {letter} = {value} into {left} = {right}. Both sides equal {both}.",
                                 {{"letter", link.unknown.letter},
                                  {"value", sheet.amount(sheet.numeral_of(link.unknown))},
                                  {"left", sheet.text(link.relation.left)},
                                  {"right", sheet.text(link.relation.right)},
                                  {"both", sheet.amount(*left, algebra::dimension_of(equation.left))}});
  sheet.color_terms({});
  sheet.write(StepKind::Check, reason, equation, {Change::Kind::Start});
}

}  // namespace fw::reasoning
