#include "algebra/notation.hpp"
#include "algebra/number_notation.hpp"
#include "exact/signs.hpp"

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;

// √144 and √x need no parentheses in a terminal, √(144 cm²) and √(7 1/2) do.
bool is_single(const Notation& part) {
  if (part.kind == Kind::Row && part.parts.size() == 1) return is_single(part.parts.front());
  return (part.kind == Kind::Number || part.kind == Kind::Letter || part.kind == Kind::Blank) &&
         binding_of(part) == Binding::Atom && !begins_with_minus(part);
}

std::string enclosed(const std::string& text) { return "(" + text + ")"; }

std::string row_text(const Notation& row) {
  std::string text;
  const Notation* before = nullptr;
  for (const Notation& part : row.parts) {
    const bool unary = part.kind == Kind::Sign && (before == nullptr || before->kind == Kind::Sign);
    const std::string own = plain_text(part);
    if (part.kind == Kind::Sign) {
      text += unary ? own : " " + own + " ";
    } else {
      const bool after_sign = before != nullptr && before->kind == Kind::Sign;
      const bool apart = before != nullptr && !after_sign && stand_apart(*before, part);
      // A stacked fraction may begin with a minus sign, a fraction on one line would be misread.
      text += (apart ? " " : "") + (after_sign && own.rfind("−", 0) == 0 ? enclosed(own) : own);
    }
    before = &part;
  }
  return text;
}

// "24 cm" holds together like a single number.
bool is_quantity(const Notation& part) {
  return part.kind == Kind::Row && part.parts.size() == 2 && part.parts[0].kind == Kind::Number &&
         part.parts[1].kind == Kind::Unit && binding_of(part.parts[0]) == Binding::Atom;
}

// Stacked parts need no brackets, parts on one line do.
std::string fraction_text(const Notation& fraction) {
  const Notation& above = fraction.parts.at(0);
  const Notation& below = fraction.parts.at(1);
  const std::string top = plain_text(above);
  const std::string bottom = plain_text(below);
  // "−18 ÷ 2" is read right.
  const bool is_negative_number = above.kind == Kind::Number && top.find(' ') == std::string::npos;
  return (binding_of(above) < Binding::Product && !is_negative_number ? enclosed(top) : top) + " ÷ " +
         (binding_of(below) < Binding::Power && !is_quantity(below) ? enclosed(bottom) : bottom);
}

std::string power_text(const Notation& power) {
  const Notation& base = power.parts.at(0);
  const std::string text = plain_text(base);
  return (binding_of(base) < Binding::Atom ? enclosed(text) : text) + exact::raised(power.degree);
}

std::string root_text(const Notation& root) {
  const Notation& inside = root.parts.at(0);
  const std::string text = plain_text(inside);
  const std::string sign = root.degree == 2 ? "√" : root.degree == 3 ? "∛" : exact::raised(root.degree) + "√";
  return sign + (is_single(inside) ? text : enclosed(text));
}

std::string text_of(const Notation& notation) {
  switch (notation.kind) {
    case Kind::Number:
    case Kind::Letter:
    case Kind::Unit:
    case Kind::Sign:
    case Kind::Words:
      return notation.text;
    case Kind::Row:
      return row_text(notation);
    case Kind::Fraction:
      return fraction_text(notation);
    case Kind::Power:
      return power_text(notation);
    case Kind::Root:
      return root_text(notation);
    case Kind::Brackets:
      return enclosed(plain_text(notation.parts.at(0)));
    case Kind::Blank:
      return "____";
  }
  return {};
}

}  // namespace

std::string plain_text(const Notation& notation) {
  const std::string text = text_of(notation);
  return notation.canceled ? "/" + text + "/" : text;
}

std::string plain_text(const NotationLine& line) {
  const std::string left = plain_text(line.left);
  const std::string right = plain_text(line.right);
  return left + (left.empty() ? "" : " ") + line.sign + " " + right;
}

}  // namespace fw::algebra
