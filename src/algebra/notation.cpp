#include "algebra/notation.hpp"

#include <algorithm>

#include "algebra/number_notation.hpp"
#include "algebra/print.hpp"

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;
using exact::Number;

constexpr const char* minus = "−";

Notation number_notation(const Number& number) { return leaf(Kind::Number, formula_number(number)); }

Notation grouped_below(Notation part, Binding least) {
  return binding_of(part) < least ? with_part(Kind::Brackets, std::move(part)) : part;
}

// An operand that follows a sign, where "+ −3" would be misread.
Notation grouped_after_sign(Notation part, Binding least) {
  return begins_with_minus(part) ? with_part(Kind::Brackets, std::move(part)) : grouped_below(std::move(part), least);
}

// "24", "−2.5", but not "½", "3√2" or "9 cm": what may stand before a letter without a sign.
bool is_plain_number(const Notation& part) {
  if (part.kind == Kind::Row && part.parts.size() == 1) return is_plain_number(part.parts.front());
  if (part.kind != Kind::Number) return false;
  const std::string digits = begins_with_minus(part) ? part.text.substr(std::string(minus).size()) : part.text;
  return !digits.empty() && digits != "1" && digits.find_first_not_of("0123456789.") == std::string::npos;
}

// "ℓ", "s²", "√(h² + 9)", "π".
bool may_follow_number(const Notation& part) {
  if (part.kind == Kind::Power) return may_follow_number(part.parts.front());
  return part.kind == Kind::Letter || part.kind == Kind::Root;
}

bool has_letter(const Notation& part) {
  const bool letter = (part.kind == Kind::Letter && part.text != "π") || part.kind == Kind::Words;
  return letter || std::any_of(part.parts.begin(), part.parts.end(), has_letter);
}

void append(Notation& into, Notation part) { into.parts.push_back(std::move(part)); }
void append_sign(Notation& into, const char* sign) { append(into, leaf(Kind::Sign, sign)); }

void collect_factors(const Expression& expression, const SymbolNotation& symbol, std::vector<Notation>& factors) {
  for (const Expression& operand : expression.operands()) {
    if (operand.operation() == Operation::Product) {
      collect_factors(operand, symbol, factors);
    } else {
      factors.push_back(notation(operand, symbol));
    }
  }
}

// "24ℓ", "6 × 9", "2 · l · w": one sign throughout a product, the dot as soon as a letter is in it.
Notation product_notation(const Expression& expression, const SymbolNotation& symbol) {
  std::vector<Notation> factors;
  collect_factors(expression, symbol, factors);
  Notation made;
  auto first = factors.begin();
  if (first->kind == Kind::Number && first->text == "−1" && factors.size() > 1) {
    append_sign(made, minus);
    ++first;
  }
  if (factors.end() - first == 2 && is_plain_number(*first) && may_follow_number(*(first + 1))) {
    append(made, *first);
    append(made, *(first + 1));
    return made;
  }
  // "2πr²"
  const auto pi = first + (factors.end() - first > 2 && is_plain_number(*first) && is_pi(*(first + 1)) ? 1 : 0);
  if (factors.end() - pi > 1 && is_circle_number(*pi) && std::all_of(pi + 1, factors.end(), may_follow_number)) {
    for (; first != factors.end(); ++first) append(made, *first);
    return made;
  }
  const char* times = std::any_of(first, factors.end(), has_letter) ? "·" : "×";
  for (auto factor = first; factor != factors.end(); ++factor) {
    if (factor != first) append_sign(made, times);
    append(made, made.parts.empty() ? grouped_below(*factor, Binding::Product)
                                    : grouped_after_sign(*factor, Binding::Product));
  }
  return made;
}

void append_terms(Notation& into, const Expression& expression, const SymbolNotation& symbol, bool after_minus) {
  const bool is_sum = expression.operation() == Operation::Sum;
  if (after_minus || (!is_sum && expression.operation() != Operation::Difference)) {
    Notation term = notation(expression, symbol);
    append(into, into.parts.empty()
                     ? std::move(term)
                     : grouped_after_sign(std::move(term), after_minus ? Binding::Product : Binding::Sum));
    return;
  }
  bool first = true;
  for (const Expression& operand : expression.operands()) {
    if (!first) append_sign(into, is_sum ? "+" : minus);
    append_terms(into, operand, symbol, !first && !is_sum);
    first = false;
  }
}

}  // namespace

Notation with_part(Notation::Kind kind, Notation part, int degree) {
  Notation made;
  made.kind = kind;
  made.parts.push_back(std::move(part));
  made.degree = degree;
  return made;
}

Notation leaf(Notation::Kind kind, std::string text) {
  Notation made;
  made.kind = kind;
  made.text = std::move(text);
  return made;
}

Notation row(std::vector<Notation> parts) {
  Notation made;
  made.parts = std::move(parts);
  return made;
}

Notation notation(const Expression& expression, const SymbolNotation& symbol) {
  switch (expression.operation()) {
    case Operation::Number:
      return number_notation(expression.number());
    case Operation::Symbol:
      return symbol(expression.symbol());
    case Operation::Sum:
    case Operation::Difference: {
      Notation made;
      append_terms(made, expression, symbol, false);
      return made;
    }
    case Operation::Product:
      return product_notation(expression, symbol);
    case Operation::Quotient: {
      Notation made;
      made.kind = Kind::Fraction;
      for (const Expression& operand : expression.operands()) append(made, notation(operand, symbol));
      return made;
    }
    case Operation::Power:
      return with_part(Kind::Power, grouped_below(notation(expression.operands().front(), symbol), Binding::Atom),
                       expression.exponent());
    case Operation::Root:
      return with_part(Kind::Root, notation(expression.operands().front(), symbol), expression.exponent());
  }
  return {};
}

}  // namespace fw::algebra
