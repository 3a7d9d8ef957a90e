#include "algebra/number_notation.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;

struct OneCharacterFraction {
  std::string_view text;
  const char* above;
  const char* below;
};
constexpr std::array<OneCharacterFraction, 15> one_character_fractions = {{{"½", "1", "2"},
                                                                           {"⅓", "1", "3"},
                                                                           {"⅔", "2", "3"},
                                                                           {"¼", "1", "4"},
                                                                           {"¾", "3", "4"},
                                                                           {"⅕", "1", "5"},
                                                                           {"⅖", "2", "5"},
                                                                           {"⅗", "3", "5"},
                                                                           {"⅘", "4", "5"},
                                                                           {"⅙", "1", "6"},
                                                                           {"⅚", "5", "6"},
                                                                           {"⅛", "1", "8"},
                                                                           {"⅜", "3", "8"},
                                                                           {"⅝", "5", "8"},
                                                                           {"⅞", "7", "8"}}};

Notation fraction(Notation above, Notation below) {
  const auto bare = [](Notation part) { return part.kind == Kind::Brackets ? part.parts.front() : std::move(part); };
  Notation made;
  made.kind = Kind::Fraction;
  made.parts.push_back(bare(std::move(above)));
  made.parts.push_back(bare(std::move(below)));
  return made;
}

Notation one_or_row(std::vector<Notation> parts) {
  return parts.size() == 1 ? std::move(parts.front()) : row(std::move(parts));
}

// Reads what exact_text() writes and what lessons write:
//   sum     = ["−"] term {" + " term | " − " term}
//   term    = product ["/" product]
//   product = part {part}          part = digits [fraction] | "√" part | "π" [power] | "(" sum ")"
class Opener {
 public:
  explicit Opener(std::string_view text) : rest_(text) {}

  std::optional<Notation> whole() {
    auto made = sum();
    return made && rest_.empty() ? made : std::nullopt;
  }

 private:
  std::optional<Notation> sum() {
    std::vector<Notation> parts;
    if (take("−") || take("-")) parts.push_back(leaf(Kind::Sign, "−"));
    while (true) {
      auto next = term();
      if (!next) return std::nullopt;
      parts.push_back(std::move(*next));
      if (take(" + ")) {
        parts.push_back(leaf(Kind::Sign, "+"));
      } else if (take(" − ")) {
        parts.push_back(leaf(Kind::Sign, "−"));
      } else {
        return one_or_row(std::move(parts));
      }
    }
  }

  std::optional<Notation> term() {
    auto above = product();
    if (!above || !take("/")) return above;
    auto below = product();
    if (!below) return std::nullopt;
    return fraction(std::move(*above), std::move(*below));
  }

  std::optional<Notation> product() {
    std::vector<Notation> parts;
    while (auto next = part()) parts.push_back(std::move(*next));
    if (parts.empty()) return std::nullopt;
    // "7 1/2": the space parts the whole number from its fraction.
    const std::string_view before = rest_;
    if (parts.size() == 1 && parts.front().kind == Kind::Number && take(" ")) {
      const std::string above = digits();
      if (!above.empty() && take("/")) {
        const std::string below = digits();
        if (!below.empty()) {
          parts.push_back(fraction(leaf(Kind::Number, above), leaf(Kind::Number, below)));
          return row(std::move(parts));
        }
      }
      rest_ = before;
    }
    return one_or_row(std::move(parts));
  }

  std::optional<Notation> part() {
    std::string number = digits();
    if (!number.empty()) return leaf(Kind::Number, std::move(number));
    for (const OneCharacterFraction& one : one_character_fractions) {
      if (take(one.text)) return fraction(leaf(Kind::Number, one.above), leaf(Kind::Number, one.below));
    }
    if (take("√")) {
      auto inside = part();
      if (!inside) return std::nullopt;
      const bool bracketed = inside->kind == Kind::Brackets;
      return with_part(Kind::Root, bracketed ? inside->parts.front() : std::move(*inside));
    }
    if (take("π")) {
      for (int n = 2; n < 10; ++n) {
        if (take(raised_digits(n))) return with_part(Kind::Power, leaf(Kind::Letter, "π"), n);
      }
      return leaf(Kind::Letter, "π");
    }
    if (take("(")) {
      auto inside = sum();
      if (!inside || !take(")")) return std::nullopt;
      return with_part(Kind::Brackets, std::move(*inside));
    }
    return std::nullopt;
  }

  std::string digits() {
    const std::size_t count = std::min(rest_.find_first_not_of("0123456789.,"), rest_.size());
    std::string taken(rest_.substr(0, count));
    rest_.remove_prefix(count);
    return taken;
  }

  bool take(std::string_view word) {
    if (rest_.substr(0, word.size()) != word) return false;
    rest_.remove_prefix(word.size());
    return true;
  }

  std::string_view rest_;
};

Binding binding_of_number(const std::string& text) {
  const auto holds = [&text](std::string_view part) { return text.find(part) != std::string::npos; };
  if (holds(" + ") || holds(" − ")) {
    const bool is_one_group = text.front() == '(' || holds("/") || holds("√(");
    return is_one_group && opened_number(text).kind != Kind::Row ? Binding::Product : Binding::Sum;
  }
  if (holds("−")) return Binding::Sum;
  const bool is_fraction =
      std::any_of(one_character_fractions.begin(), one_character_fractions.end(),
                  [&](const OneCharacterFraction& one) { return holds(one.text) && text != one.text; });
  const bool has_parts = holds(" ") || holds("/") || holds("√") || holds("π") || is_fraction;
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
  auto opened = Opener(text).whole();
  return opened ? std::move(*opened) : leaf(Kind::Number, std::string(text));
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

}  // namespace fw::algebra
