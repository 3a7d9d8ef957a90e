#include "algebra/print.hpp"

#include "algebra/number_notation.hpp"
#include "exact/print_number.hpp"
#include "exact/signs.hpp"

namespace fw::algebra {
namespace {

using exact::Number;

// How tightly a text holds together.
enum class Binding { Sum, Product, Power, Atom };

struct Text {
  std::string text;
  Binding binding = Binding::Atom;
};

struct Style {
  LeafText leaf;
  const char* times;
  bool leaves_are_letters;
};

bool contains(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

// "12 + 3√5" is a sum, "7 1/2", "5/8", "3√2" and "9 cm" are like products.
Text measured(std::string text) {
  if (contains(text, " + ") || contains(text, "−")) {
    return {std::move(text), Binding::Sum};
  }
  const bool parts = contains(text, " ") || contains(text, "/") || contains(text, "√") || contains(text, "π");
  const bool single = text == "π";
  return {std::move(text), parts && !single ? Binding::Product : Binding::Atom};
}

Text number_text(const Number& number) { return measured(formula_number(number)); }

std::string grouped_below(const Text& text, Binding least) {
  return text.binding < least ? "(" + text.text + ")" : text.text;
}

Text text_of(const Expression& expression, const Style& style);

Text joined(const Expression& expression, const Style& style) {
  const Operation operation = expression.operation();
  const bool is_sum = operation == Operation::Sum || operation == Operation::Difference;
  const Binding binding = is_sum ? Binding::Sum : Binding::Product;
  // After − and ÷ an operand of the same rank needs parentheses: a − (b + c).
  const bool strict = operation == Operation::Difference || operation == Operation::Quotient;
  const Binding after = !strict ? binding : (is_sum ? Binding::Product : Binding::Power);
  std::string sign = style.times;
  if (operation != Operation::Product) {
    sign = operation == Operation::Sum ? " + " : (is_sum ? " − " : " ÷ ");
  }
  std::string text;
  for (const Expression& operand : expression.operands()) {
    const Text part = text_of(operand, style);
    const bool negative_number = !text.empty() && part.text.rfind("−", 0) == 0;
    text += text.empty() ? grouped_below(part, binding)
                         : sign + (negative_number ? "(" + part.text + ")" : grouped_below(part, after));
  }
  return {text, binding};
}

Text text_of(const Expression& expression, const Style& style) {
  switch (expression.operation()) {
    case Operation::Number:
      return number_text(expression.number());
    case Operation::Symbol: {
      std::string leaf = style.leaf(expression.symbol());
      return style.leaves_are_letters ? Text{std::move(leaf), Binding::Atom} : measured(std::move(leaf));
    }
    case Operation::Power:
      return {grouped_below(text_of(expression.operands().front(), style), Binding::Atom) +
                  exact::raised(expression.exponent()),
              Binding::Power};
    case Operation::Root: {
      const std::string sign = expression.exponent() == 2 ? "√" : "∛";
      return {sign + "(" + text_of(expression.operands().front(), style).text + ")", Binding::Atom};
    }
    default:
      return joined(expression, style);
  }
}

}  // namespace

std::string formula_number(const Number& number) {
  for (const exact::FractionSign& fraction : exact::fraction_signs) {
    if (fraction.is_printed && number == Number::ratio(fraction.above, fraction.below)) {
      return std::string(fraction.sign);
    }
  }
  return exact::class_text(number);
}

std::string formula_text(const Expression& expression) {
  return text_of(expression, {[](const Symbol& symbol) { return symbol.letter; }, " · ", true}).text;
}

std::string formula_text(const Equation& equation) {
  return formula_text(equation.left) + " = " + formula_text(equation.right);
}

std::string work_text(const Expression& expression, const LeafText& leaf) {
  return text_of(expression, {leaf, " × ", false}).text;
}

}  // namespace fw::algebra
