#include "algebra/number_notation.hpp"

#include <algorithm>
#include <utility>

#include "exact/number_tree.hpp"

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;

Notation notation_of(const exact::NumberTree& tree) {
  using Tree = exact::NumberTree::Kind;
  // A stacked fraction and a root hold their parts together without parentheses.
  const auto bare = [](const exact::NumberTree& part) {
    return notation_of(part.kind == Tree::Parentheses ? part.parts.front() : part);
  };
  switch (tree.kind) {
    case Tree::Digits:
      return leaf(Kind::Number, tree.text);
    case Tree::Sign:
      return leaf(Kind::Sign, tree.text);
    case Tree::Pi:
      return tree.power == 1 ? leaf(Kind::Letter, "π") : with_part(Kind::Power, leaf(Kind::Letter, "π"), tree.power);
    case Tree::Root:
      return with_part(Kind::Root, bare(tree.parts.front()));
    case Tree::Parentheses:
      return with_part(Kind::Brackets, notation_of(tree.parts.front()));
    case Tree::Fraction:
    case Tree::Row:
      break;
  }
  Notation made = row({});
  const bool is_fraction = tree.kind == Tree::Fraction;
  made.kind = is_fraction ? Kind::Fraction : Kind::Row;
  for (const exact::NumberTree& part : tree.parts) {
    made.parts.push_back(is_fraction ? bare(part) : notation_of(part));
  }
  return made;
}

Binding binding_of_number(const std::string& text) {
  const auto holds = [&text](std::string_view part) { return text.find(part) != std::string::npos; };
  if (holds(" + ") || holds(" − ")) {
    const bool is_one_group = text.front() == '(' || holds("/") || holds("√(");
    return is_one_group && opened_number(text).kind != Kind::Row ? Binding::Product : Binding::Sum;
  }
  if (holds("−")) return Binding::Sum;
  const bool is_mixed = opened_number(text).kind == Kind::Row;  // "7½"
  const bool has_parts = holds(" ") || holds("/") || holds("√") || holds("π") || is_mixed;
  return has_parts && text != "π" ? Binding::Product : Binding::Atom;
}

Binding binding_of_row(const std::vector<Notation>& parts) {
  if (parts.size() == 1) return binding_of(parts.front());
  const bool is_sum = std::any_of(parts.begin(), parts.end(), [](const Notation& part) {
    return part.kind == Kind::Sign && (part.text == "+" || part.text == "−");
  });
  if (is_sum) return Binding::Sum;
  return parts.empty() ? Binding::Atom : Binding::Product;
}

const Notation& edge_of(const Notation& notation, bool at_end) {
  if (notation.kind != Kind::Row || notation.parts.empty()) return notation;
  return edge_of(at_end ? notation.parts.back() : notation.parts.front(), at_end);
}

}  // namespace

Notation opened_number(std::string_view text) {
  const bool is_plain = text.find_first_not_of("0123456789.,") == std::string_view::npos;
  const auto tree = is_plain ? std::nullopt : exact::number_tree(text);
  return tree ? notation_of(*tree) : leaf(Kind::Number, std::string(text));
}

Binding binding_of(const Notation& notation) {
  switch (notation.kind) {
    case Kind::Number:
      return binding_of_number(notation.text);
    case Kind::Words:
      return notation.text.find(' ') == std::string::npos ? Binding::Atom : Binding::Product;
    case Kind::Row:
      return binding_of_row(notation.parts);
    case Kind::Fraction:
      return Binding::Product;
    case Kind::Power:
      return Binding::Power;
    default:
      return Binding::Atom;
  }
}

bool begins_with_minus(const Notation& notation) {
  const Notation& first = edge_of(notation, false);
  if (first.kind != Kind::Number && first.kind != Kind::Sign) return false;
  return first.text.rfind("−", 0) == 0;
}

bool stand_apart(const Notation& left, const Notation& right) {
  const Kind before = edge_of(left, true).kind;
  const Kind after = edge_of(right, false).kind;
  const bool parted_kind = after == Kind::Unit || after == Kind::Words || after == Kind::Number || after == Kind::Blank;
  return parted_kind || before == Kind::Unit || before == Kind::Words || before == Kind::Blank;
}

bool is_pi(const Notation& notation) {
  if (notation.kind == Notation::Kind::Row && notation.parts.size() == 1) return is_pi(notation.parts.front());
  return notation.kind == Notation::Kind::Number && notation.text == "π";
}

bool is_circle_number(const Notation& notation) {
  constexpr std::string_view letter = "π";
  if (notation.kind != Notation::Kind::Number || notation.text.size() < letter.size()) return is_pi(notation);
  const std::string digits = notation.text.substr(0, notation.text.size() - letter.size());
  return notation.text.substr(digits.size()) == letter && digits.find_first_not_of("0123456789.") == std::string::npos;
}

}  // namespace fw::algebra
