#include "algebra/class_notation.hpp"

#include <algorithm>
#include <array>

#include "algebra/number_notation.hpp"
#include "algebra/print.hpp"

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;
using exact::Number;

bool is_digits(const Notation& part) {
  return part.kind == Kind::Number && !part.text.empty() &&
         part.text.find_first_not_of("0123456789.") == std::string::npos;
}

// "½", "⅓": the part that a formula takes of a product.
bool is_named_part(const Notation& part) {
  return part.kind == Kind::Number && opened_number(part.text).kind == Kind::Fraction &&
         part.text.find_first_of("/ ") == std::string::npos;
}

// "ℓ", "s²", "(b₁ + b₂)".
bool is_of_letters(const Notation& part) {
  switch (part.kind) {
    case Kind::Letter:
      return part.text.find(' ') == std::string::npos;
    case Kind::Sign:
      return true;
    case Kind::Row:
    case Kind::Power:
    case Kind::Brackets:
      return std::all_of(part.parts.begin(), part.parts.end(), is_of_letters);
    default:
      return false;
  }
}

class Writer {
 public:
  Writer(const SymbolNotation& symbol, const ClassNotation& style) : symbol_(&symbol), style_(&style) {}

  [[nodiscard]] Notation written(const Expression& expression) const {
    switch (expression.operation()) {
      case Operation::Number:
        return leaf(Kind::Number, formula_number(expression.number()));
      case Operation::Symbol:
        return (*symbol_)(expression.symbol());
      case Operation::Sum:
      case Operation::Difference:
        return sum(expression);
      case Operation::Product:
        return product(expression);
      case Operation::Quotient:
        return quotient(expression);
      case Operation::Power:
        return with_part(Kind::Power, held(written(expression.operands().front()), Binding::Atom),
                         expression.exponent());
      case Operation::Root:
        return with_part(Kind::Root, written(expression.operands().front()), expression.exponent());
    }
    return {};
  }

 private:
  [[nodiscard]] static Notation held(Notation part, Binding least) {
    return binding_of(part) < least || begins_with_minus(part) ? with_part(Kind::Brackets, std::move(part)) : part;
  }

  [[nodiscard]] Notation times() const {
    return leaf(Kind::Sign, style_->times == ClassNotation::Times::Dot ? "·" : "×");
  }

  [[nodiscard]] Notation sum(const Expression& expression) const {
    const bool is_sum = expression.operation() == Operation::Sum;
    Notation made;
    for (const Expression& operand : expression.operands()) {
      if (!made.parts.empty()) {
        made.parts.push_back(leaf(Kind::Sign, is_sum ? "+" : "−"));
      }
      Notation term = written(operand);
      const bool is_first = made.parts.empty();
      made.parts.push_back(is_first ? std::move(term)
                                    : held(std::move(term), is_sum ? Binding::Sum : Binding::Product));
    }
    return made;
  }

  // The factors of a product in order, a division by 2, 3 or 4 as the part that it takes.
  void gather(const Expression& expression, std::vector<Notation>& factors) const {
    if (expression.operation() == Operation::Product) {
      for (const Expression& operand : expression.operands()) {
        gather(operand, factors);
      }
    } else if (const std::optional<Number> part = part_taken(expression)) {
      factors.push_back(leaf(Kind::Number, formula_number(*part)));
      gather(expression.operands()[0], factors);
    } else {
      factors.push_back(held(written(expression), Binding::Product));
    }
  }

  [[nodiscard]] std::optional<Number> part_taken(const Expression& expression) const {
    const bool divides = expression.operation() == Operation::Quotient &&
                         style_->parts == ClassNotation::Parts::Fraction &&
                         expression.operands()[0].operation() != Operation::Number;
    if (!divides || expression.operands()[1].operation() != Operation::Number) {
      return std::nullopt;
    }
    const Number part = Number::whole(1) / expression.operands()[1].number();
    return is_named_part(leaf(Kind::Number, formula_number(part))) ? std::optional(part) : std::nullopt;
  }

  // "16ℓ", "½Pℓ" and "2 · ½lℓ" need no sign before the letters, "½ · 32 · ℓ" does.
  [[nodiscard]] Notation product(const Expression& expression) const {
    std::vector<Notation> factors;
    gather(expression, factors);
    const auto is_number = [](const Notation& factor) {
      return is_digits(factor) || is_named_part(factor) || is_circle_number(factor);
    };
    const auto letters = std::find_if_not(factors.begin(), factors.end(), is_number);
    const std::size_t numbers = static_cast<std::size_t>(letters - factors.begin());
    const bool joins =
        (numbers <= 1 || is_named_part(factors[numbers - 1]) || is_circle_number(factors[numbers - 1])) &&
        letters != factors.end() && std::all_of(letters, factors.end(), is_of_letters);
    return joined(std::move(factors), joins ? std::max<std::size_t>(numbers, 1) : 0);
  }

  // Without a sign after the first `numbers` factors; with one everywhere for 0.
  [[nodiscard]] Notation joined(std::vector<Notation> factors, std::size_t numbers) const {
    Notation made;
    for (std::size_t i = 0; i < factors.size(); ++i) {
      const bool makes_number = i == 1 && numbers == 2 && is_digits(factors[0]) && is_pi(factors[1]);  // "2π" of 2πr
      if (i > 0 && (numbers == 0 || i < numbers) && !makes_number) {
        made.parts.push_back(times());
      }
      made.parts.push_back(std::move(factors[i]));
    }
    return made;
  }

  [[nodiscard]] Notation quotient(const Expression& expression) const {
    if (part_taken(expression)) {
      return product(expression);
    }
    if (style_->parts == ClassNotation::Parts::Fraction) {
      Notation made;
      made.kind = Kind::Fraction;
      for (const Expression& operand : expression.operands()) {
        made.parts.push_back(written(operand));
      }
      return made;
    }
    std::vector<Notation> factors;
    gather(expression.operands()[0], factors);
    Notation made = joined(std::move(factors), 0);
    made.parts.push_back(leaf(Kind::Sign, "÷"));
    made.parts.push_back(held(written(expression.operands()[1]), Binding::Power));
    return made;
  }

  const SymbolNotation* symbol_;
  const ClassNotation* style_;
};

bool is_unit(const Notation& part) { return part.kind == Kind::Unit; }

// The same in the class's signs; without units, and without the brackets and rows that only held a unit.
Notation changed(Notation part, const ClassNotation& style, bool drops_units) {
  if (part.kind == Kind::Sign && (part.text == "×" || part.text == "·")) {
    part.text = style.times == ClassNotation::Times::Dot ? "·" : "×";
  }
  if (drops_units && part.kind == Kind::Row) {
    part.parts.erase(std::remove_if(part.parts.begin(), part.parts.end(), is_unit), part.parts.end());
  }
  for (Notation& inner : part.parts) {
    inner = changed(std::move(inner), style, drops_units);
  }
  const bool is_needless = (part.kind == Kind::Row && part.parts.size() == 1) ||
                           (part.kind == Kind::Brackets && binding_of(part.parts.front()) == Binding::Atom);
  if (drops_units && is_needless && !part.canceled && !part.group) {
    Notation inner = part.parts.front();
    return inner;
  }
  return part;
}

struct NotationWord {
  const char* word;
  void (*say)(ClassNotation&);
};
using N = ClassNotation;
// The usual one of each two comes first.
constexpr std::array<NotationWord, 8> notation_table = {
    {{"fraction", [](N& style) { style.parts = N::Parts::Fraction; }},
     {"division", [](N& style) { style.parts = N::Parts::Division; }},
     {"dot", [](N& style) { style.times = N::Times::Dot; }},
     {"cross", [](N& style) { style.times = N::Times::Cross; }},
     {"unit-in-answer", [](N& style) { style.units = N::Units::InAnswer; }},
     {"unit-on-every-line", [](N& style) { style.units = N::Units::OnEveryLine; }},
     {"lwh", [](N& style) { style.box_volume = N::BoxVolume::Edges; }},
     {"Bh", [](N& style) { style.box_volume = N::BoxVolume::BaseTimesHeight; }}}};

}  // namespace

std::vector<std::string> notation_words() {
  std::vector<std::string> words;
  for (const NotationWord& row : notation_table) {
    words.emplace_back(row.word);
  }
  return words;
}

std::optional<ClassNotation> with_word(ClassNotation style, std::string_view word) {
  const auto found = std::find_if(notation_table.begin(), notation_table.end(),
                                  [&](const NotationWord& row) { return word == row.word; });
  if (found == notation_table.end()) {
    return std::nullopt;
  }
  found->say(style);
  return style;
}

std::vector<std::string> words_for(const ClassNotation& style) {
  std::vector<std::string> words;
  for (const NotationWord& row : notation_table) {
    ClassNotation said;
    row.say(said);
    ClassNotation same = style;
    row.say(same);
    if (!(said == ClassNotation()) && same == style) {
      words.emplace_back(row.word);
    }
  }
  return words;
}

Notation class_notation(const Expression& expression, const SymbolNotation& symbol, const ClassNotation& style) {
  return Writer(symbol, style).written(expression);
}

NotationLine in_class_notation(const NotationLine& line, const ClassNotation& style) {
  const bool drops_units = style.units == ClassNotation::Units::InAnswer;
  return {changed(line.left, style, drops_units), line.sign, changed(line.right, style, drops_units)};
}

}  // namespace fw::algebra
