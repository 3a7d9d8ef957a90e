#include "reasoning/typed_side.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "base/utf8.hpp"
#include "exact/number_tree.hpp"
#include "reasoning/step.hpp"
#include "units/quantity.hpp"

namespace fw::reasoning {
namespace {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;

bool is_digit_at(std::string_view text, std::size_t at) { return at < text.size() && is_ascii_digit(text[at]); }
bool is_letter_at(std::string_view text, std::size_t at) { return at < text.size() && is_ascii_letter(text[at]); }

/// How a letter is typed where the keyboard lacks it.
std::string typed_letter(std::string letter) {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 5> plain{
      {{"ℓ", "l"}, {"₁", "1"}, {"₂", "2"}, {"₃", "3"}, {"₄", "4"}}};
  for (const auto& [sign, typed] : plain) {
    const std::size_t at = letter.find(sign);
    if (at != std::string::npos) {
      letter.replace(at, sign.size(), typed);
    }
  }
  return letter;
}

/// Reads from left to right: a sum of products of powers.
class SideReader {
 public:
  SideReader(std::string_view text, const std::vector<Symbol>& letters, const units::Unit& unit)
      : rest_(text), letters_(&letters), unit_(unit) {}

  Result<TypedSide, words::Message> read() {
    std::optional<Expression> side = sum();
    skip_spaces();
    if (error_.empty() && !rest_.empty()) {
      fail(unreadable());
    }
    if (!error_.empty() || !side) {
      return failure(message("{fault} Write it as in 2B + L or 2 × 6 cm² + 12 cm².", {{"fault", error_}}));
    }
    return TypedSide{std::move(*side), std::move(numerals_), has_units_};
  }

 private:
  void fail(const Message& fault) { error_ = error_.empty() ? fault : error_; }
  [[nodiscard]] Message unreadable() const {
    return message("“{rest}” does not make sense here.", {{"rest", std::string(rest_)}});
  }
  void skip_spaces() {
    while (!rest_.empty() && rest_.front() == ' ') {
      rest_.remove_prefix(1);
    }
  }
  bool take(std::string_view sign) {
    skip_spaces();
    const bool is_there = rest_.substr(0, sign.size()) == sign;
    rest_.remove_prefix(is_there ? sign.size() : 0);
    return is_there;
  }
  template <std::size_t N>
  bool take_any(const std::array<std::string_view, N>& signs) {
    return std::any_of(signs.begin(), signs.end(), [this](std::string_view sign) { return take(sign); });
  }

  std::optional<Expression> sum() {
    std::optional<Expression> whole = product();
    while (whole && error_.empty()) {
      const bool adds = take("+");
      const bool subtracts = !adds && take_any(minus);
      if (!adds && !subtracts) {
        break;
      }
      const std::optional<Expression> next = product();
      if (!next) {
        return std::nullopt;
      }
      whole = adds ? *whole + *next : *whole - *next;
    }
    return whole;
  }

  std::optional<Expression> product() {
    std::optional<Expression> whole = factors();
    while (whole && error_.empty()) {
      const bool divides = take_any(over);
      if (!divides && !take_any(times) && !take_times_letter()) {
        break;
      }
      const std::optional<Expression> next = factors();
      if (!next) {
        return std::nullopt;
      }
      whole = divides ? *whole / *next : *whole * *next;
    }
    return whole;
  }

  /// What stands side by side without a sign holds together: "24ℓ", "6√3 cm", and "√5/10 cm" with its narrow stroke.
  std::optional<Expression> factors() {
    std::optional<Expression> whole = power();
    while (whole && error_.empty()) {
      const bool has_narrow_stroke = rest_.substr(0, 1) == "/" && is_digit_at(rest_, 1);
      if (!has_narrow_stroke && !begins_factor()) {
        break;
      }
      rest_.remove_prefix(has_narrow_stroke ? 1 : 0);
      const std::optional<Expression> next = has_narrow_stroke ? number(exact::Stroke::Outside) : power();
      if (!next) {
        return std::nullopt;
      }
      whole = has_narrow_stroke ? *whole / *next : *whole * *next;
    }
    return whole;
  }

  /// "6 x 4", where x is no letter of the solid.
  bool take_times_letter() {
    skip_spaces();
    const bool is_sign = !rest_.empty() && (rest_[0] == 'x' || rest_[0] == 'X') && letter_here().second == 0;
    rest_.remove_prefix(is_sign ? 1 : 0);
    return is_sign;
  }

  bool begins_factor() {
    skip_spaces();
    return exact::begins_number(rest_) || rest_.substr(0, 1) == "(" || letter_here().second > 0 || unit_here() ||
           rest_.substr(0, root_sign.size()) == root_sign || rest_.substr(0, pi_sign.size()) == pi_sign ||
           rest_.substr(0, 2) == "pi" || rest_.substr(0, 4) == "sqrt";
  }

  std::optional<Expression> power() {
    std::optional<Expression> base = atom();
    while (base && error_.empty()) {
      if (take("²")) {
        base = algebra::power(*base, 2);
      } else if (take("³")) {
        base = algebra::power(*base, 3);
      } else if (take("^")) {
        skip_spaces();
        if (rest_.empty() || rest_[0] < '2' || rest_[0] > '9') {
          fail(message("Write the exponent after ^, as in s^2."));
          return std::nullopt;
        }
        base = algebra::power(*base, rest_[0] - '0');
        rest_.remove_prefix(1);
      } else {
        break;
      }
    }
    return base;
  }

  std::optional<Expression> atom() {
    if (take("(")) {
      std::optional<Expression> inside = sum();
      if (inside && !take(")")) {
        fail(message("A parenthesis is not closed."));
      }
      return inside;
    }
    if (take(root_sign) || take("sqrt")) {
      skip_spaces();
      const std::optional<Expression> inside = is_digit_at(rest_, 0) ? number(exact::Stroke::Outside) : atom();
      return inside ? std::optional(algebra::root(*inside)) : std::nullopt;
    }
    if (const auto unit = unit_here()) {
      return unit_atom(*unit);
    }
    if (const auto [symbol, length] = letter_here(); length > 0) {
      rest_.remove_prefix(length);
      return Expression(*symbol);
    }
    if (take(pi_sign) || take("pi")) {
      return Expression(Number::pi());
    }
    if (exact::begins_number(rest_)) {
      return number(exact::Stroke::Inside);
    }
    fail(rest_.empty() ? message("Something is missing at the end.") : unreadable());
    return std::nullopt;
  }

  /// The longest letter of the solid that stands here.
  std::pair<const Symbol*, std::size_t> letter_here() {
    skip_spaces();
    std::pair<const Symbol*, std::size_t> found{nullptr, 0};
    for (const Symbol& symbol : *letters_) {
      for (const std::string& typed : {symbol.letter, typed_letter(symbol.letter)}) {
        if (typed.size() > found.second && rest_.substr(0, typed.size()) == typed) {
          found = {&symbol, typed.size()};
        }
      }
    }
    return found;
  }

  /// "12", "2,860.5", "1/2", "7 1/2"; "194.0623…".
  std::optional<Expression> number(exact::Stroke stroke) {
    const auto read = exact::leading_number(rest_, stroke);
    if (!read) {
      fail(Message(read.error().message));
      return std::nullopt;
    }
    rest_.remove_prefix(read->length);
    take("…");
    return Expression(read->value);
  }

  /// A unit as it stands in the text: "cm", "cm^2", "sq cm", "square centimeters", "cm⁴".
  struct UnitHere {
    units::Unit unit;  ///< of length, area or volume
    int power = 1;     ///< that a length is raised to beyond three
    std::size_t length = 0;
  };
  /// The longest one that stands here, unless a letter of the solid is as long.
  std::optional<UnitHere> unit_here() {
    skip_spaces();
    std::optional<UnitHere> found;
    std::size_t end = 0;
    for (int words = 0; words < 2 && is_letter_at(rest_, end); ++words) {
      while (is_letter_at(rest_, end)) {
        ++end;
      }
      for (const std::string_view raised : {"", ".", "²", "³", "2", "3", "^2", "^3"}) {
        const std::size_t whole = end + raised.size();
        if (rest_.substr(end, raised.size()) == raised && (!found || whole > found->length)) {
          if (const auto unit = units::Unit::find(rest_.substr(0, whole))) {
            found = UnitHere{*unit, 1, whole};
          }
        }
      }
      end += end < rest_.size() && rest_[end] == '.' ? 1 : 0;
      end += end < rest_.size() && rest_[end] == ' ' ? 1 : 0;
    }
    if (!found || letter_here().second >= found->length) {
      return std::nullopt;
    }
    constexpr std::array<std::pair<std::string_view, int>, 3> higher{{{"⁴", 4}, {"⁵", 5}, {"⁶", 6}}};
    for (const auto& [sign, power] : higher) {
      if (found->unit.dimension() == 1 && rest_.substr(found->length, sign.size()) == sign) {
        found->power = power;
        found->length += sign.size();
      }
    }
    return found;
  }

  std::optional<Expression> unit_atom(const UnitHere& here) {
    const int dimension = here.unit.dimension();
    const units::Unit own = unit_.to_the(dimension);
    if (!here.unit.converts_to(own)) {
      fail(message("“{unit}” is not a unit of this figure.", {{"unit", std::string(rest_.substr(0, here.length))}}));
      return std::nullopt;
    }
    rest_.remove_prefix(here.length);
    has_units_ = true;
    return Expression(
        numerals_.add(exact::power(units::conversion(here.unit, own), here.power), dimension * here.power));
  }

  static constexpr std::array<std::string_view, 3> minus{"−", "-", "–"};
  static constexpr std::array<std::string_view, 4> times{"×", "·", "*", "⋅"};
  static constexpr std::array<std::string_view, 3> over{"÷", "/", ":"};
  static constexpr std::string_view root_sign = "√";
  static constexpr std::string_view pi_sign = "π";

  std::string_view rest_;
  const std::vector<Symbol>* letters_;
  units::Unit unit_;
  algebra::Numerals numerals_;
  bool has_units_ = false;
  Message error_;
};

}  // namespace

Result<TypedSide, words::Message> read_side(std::string_view text, const std::vector<Symbol>& letters,
                                            const units::Unit& length_unit) {
  constexpr std::size_t longest = 400;
  if (text.size() > longest) {
    return failure(message("That is too long to be one side of a line."));
  }
  for (const std::string_view sign : {"=", "≈"}) {
    const std::size_t at = text.rfind(sign);
    text.remove_prefix(at == std::string_view::npos ? 0 : at + sign.size());
  }
  return SideReader(text, letters, length_unit).read();
}

std::optional<int> typed_dimension(const Expression& side) {
  using algebra::Operation;
  std::vector<int> parts;
  for (const Expression& operand : side.operands()) {
    const std::optional<int> part = typed_dimension(operand);
    if (!part) {
      return std::nullopt;
    }
    parts.push_back(*part);
  }
  switch (side.operation()) {
    case Operation::Number:
      return 0;
    case Operation::Symbol:
      return side.symbol().dimension;
    case Operation::Sum:
    case Operation::Difference: {
      int common = 0;
      for (const int part : parts) {
        if (part != 0 && common != 0 && part != common) {
          return std::nullopt;
        }
        common = part != 0 ? part : common;
      }
      return common;
    }
    case Operation::Product: {
      int all = 0;
      for (const int part : parts) {
        all += part;
      }
      return all;
    }
    case Operation::Quotient:
      return parts.at(0) - parts.at(1);
    case Operation::Power:
      return parts.at(0) * side.exponent();
    case Operation::Root:
      return parts.at(0) / side.exponent();
  }
  return std::nullopt;
}

}  // namespace fw::reasoning
