#include "exact/read_number.hpp"

#include <algorithm>

#include "base/utf8.hpp"
#include "exact/signs.hpp"

namespace fw::exact {
namespace {

constexpr std::size_t most_digits = 30;
constexpr const char* no_zero_below =
    "The denominator is 0, and nothing can be divided by 0. Write another denominator.";
constexpr std::size_t longest_text = 200;
constexpr int deepest_parentheses = 12;
constexpr int most_roots = 12;
constexpr int greatest_pi_power = 20;

using Kind = NumberTree::Kind;

NumberTree tree_of_digits(std::string text) { return {Kind::Digits, std::move(text)}; }
NumberTree tree_of_row(std::vector<NumberTree> parts) {
  return parts.size() == 1 ? parts.front() : NumberTree{Kind::Row, "", std::move(parts)};
}

Number decimal_value(const std::string& digits) { return Number::from_decimal(digits).value_or(Number()); }

std::string quoted(std::string_view text) { return "“" + std::string(text) + "”"; }

}  // namespace

NumberReader::NumberReader(std::string_view text, Length length)
    : text_(text), is_limited_(length == Length::Limited), end_(text.size()) {}

Result<NumberReader::Read, NumberError> NumberReader::read() {
  skip_spaces();
  const std::size_t start = first_ = at_;
  std::size_t last = start;  // spaces are looked for up to end_, so it is set only afterwards
  for (std::size_t i = start; i < text_.size();) {
    const std::size_t space = space_at(i);
    i += space > 0 ? space : 1;
    last = space > 0 ? last : i;
  }
  end_ = last;
  if (start == text_.size()) {
    return failure(NumberError{start, "There is no number here. Write one such as 12, 2.5 or 7 1/2."});
  }
  if (is_limited_ && end_ - start > longest_text) {
    return failure(NumberError{start, "This is too long for a number. Write at most 30 digits."});
  }
  std::optional<Part> result = sum();
  skip_spaces();
  if (result && at_ < end_) {
    result = fail(at_, quoted(text_.substr(start, at_ - start)) + " is followed by " + found_at(at_) +
                           ", which is not part of a number. Write one number such as 12, 2.5 or 7 1/2.");
  }
  if (!result) {
    return failure(*error_);
  }
  std::string text(text_.substr(start, end_ - start));
  if (ruler_hyphen_) {
    text[*ruler_hyphen_ - start] = ' ';
  }
  if (text.back() == '.') {
    text.pop_back();
  }
  return Read{{std::move(text), result->value, result->places, result->is_fraction || !result->is_plain},
              std::move(result->tree)};
}

Result<LeadingNumber, NumberError> NumberReader::read_leading(Stroke stroke) {
  if (stroke == Stroke::Outside) {
    end_ = std::min(end_, text_.find(' '));  // "√5 1/2" is no root of 5 1/2
  }
  std::optional<Part> part = number();
  const std::size_t below = at_ + 1;
  const std::size_t after = below + digits_at(below);
  const bool is_divided = part && stroke == Stroke::Inside && !part->is_fraction && stands_at(at_, "/") &&
                          after > below && !(stands_at(after, ".") || stands_at(after, ","));
  if (is_divided) {
    const Number divisor = decimal_value(std::string(text_.substr(below, after - below)));
    at_ = after;
    part =
        divisor.is_zero() ? fail(below, no_zero_below) : std::optional(Part{part->value / divisor, {}, true, true, 0});
  }
  if (!part) {
    return failure(*error_);
  }
  return LeadingNumber{part->value, at_};
}

std::optional<NumberReader::Part> NumberReader::sum() {
  if (++depth_ > deepest_parentheses) {
    return fail(at_, "There are too many parentheses inside one another.");
  }
  const std::size_t start = at_;
  Part total;
  std::vector<NumberTree> terms;
  int count = 0;
  bool all_plain = true;
  for (;;) {
    skip_spaces();
    const bool minus = take_any({"-", "−", "–"});
    if (!minus && !take("+") && count > 0) {
      break;
    }
    if (minus || count > 0) {
      terms.push_back({Kind::Sign, minus ? "−" : "+"});
    }
    const std::optional<Part> next = product();
    if (!next) {
      return std::nullopt;
    }
    all_plain = all_plain && next->is_plain;
    const Number value = minus ? -next->value : next->value;
    terms.push_back(next->tree);
    total = count == 0 ? Part{value, {}, next->is_plain, next->is_fraction, next->places}
                       : Part{total.value + value, {}, false, true, 0};
    ++count;
  }
  if (count > 1 && all_plain) {
    return fail(start,
                quoted(text_.substr(start, at_ - start)) + " is a calculation. Write the one number that it comes to.");
  }
  --depth_;
  total.tree = tree_of_row(std::move(terms));
  return total;
}

std::optional<NumberReader::Part> NumberReader::product() {
  skip_spaces();
  std::optional<Part> value = symbol_follows() ? symbol() : number();
  std::vector<NumberTree> factors;
  while (value) {
    factors.push_back(value->tree);
    skip_spaces();
    const bool times = take_any({"·", "×", "*"});
    skip_spaces();
    if (!symbol_follows()) {
      if (times) {
        return fail(at_, "A root or π belongs after the multiplication sign; found " + found_at(at_) +
                             ". Write a product of numbers as the one number it comes to.");
      }
      break;
    }
    if (times) {
      factors.push_back({Kind::Sign, "×"});
    }
    const std::optional<Part> factor = symbol();
    if (!factor) {
      return std::nullopt;
    }
    value = Part{value->value * factor->value, factor->tree, false, true, 0};
  }
  skip_spaces();
  if (value) {
    value->tree = tree_of_row(std::move(factors));
  }
  if (value && take_any({"/", "⁄", "÷"})) {
    return divided(*value);
  }
  return value;
}

std::optional<NumberReader::Part> NumberReader::divided(Part above) {
  skip_spaces();
  const std::size_t start = at_;
  const std::optional<Part> below = symbol_follows() ? symbol() : number();
  if (!below) {
    return std::nullopt;
  }
  if (below->value.is_zero()) {
    return fail(start, no_zero_below);
  }
  skip_spaces();
  if (symbol_follows()) {
    return fail(at_, "It is not clear whether " + found_at(at_) +
                         " belongs to the denominator. Write (5/8)π or 5/(8π), with parentheses.");
  }
  return Part{above.value / below->value,
              {Kind::Fraction, "", {above.tree, below->tree}},
              above.is_plain && below->is_plain,
              true,
              0};
}

std::optional<NumberReader::Part> NumberReader::symbol() {
  if (take_any({"√", "sqrt"})) {
    return root();
  }
  if (take_any({"π", "pi", "Pi", "PI"})) {
    return pi_power();
  }
  take("(");
  std::optional<Part> inside = sum();
  if (!inside) {
    return std::nullopt;
  }
  skip_spaces();
  if (!take(")")) {
    return fail(at_, "A parenthesis is not closed; found " + found_at(at_) + " where “)” belongs.");
  }
  inside->is_plain = false;
  inside->tree = {Kind::Parentheses, "", {inside->tree}};
  return inside;
}

std::optional<NumberReader::Part> NumberReader::root() {
  if (++depth_ > deepest_parentheses || (++roots_ > most_roots && is_limited_)) {
    return fail(at_, "There are too many roots in this number. Write at most 12.");
  }
  skip_spaces();
  const std::size_t start = at_;
  const std::optional<Part> inside = symbol_follows() ? symbol() : number();
  if (!inside) {
    return std::nullopt;
  }
  if (inside->value.sign() < 0) {
    return fail(start, "The number under the root is negative, and no number has such a square.");
  }
  --depth_;
  return Part{square_root(inside->value), {Kind::Root, "", {inside->tree}}, false, true, 0};
}

std::optional<NumberReader::Part> NumberReader::pi_power() {
  int power = 0;
  bool has_power = false;
  if (take("^")) {
    for (const char c : take_digits()) {
      power = std::min(power * 10 + (c - '0'), greatest_pi_power + 1);
      has_power = true;
    }
  }
  for (std::size_t digit = 0; digit < raised_digits.size();) {
    if (take(raised_digits[digit])) {
      power = std::min(power * 10 + static_cast<int>(digit), greatest_pi_power + 1);
      has_power = true;
      digit = 0;
    } else {
      ++digit;
    }
  }
  if (power > greatest_pi_power) {
    return fail(at_, "The power of π is too great. Write one up to 20.");
  }
  power = has_power ? power : 1;
  return Part{exact::power(Number::pi(), power), {Kind::Pi, "", {}, power}, false, true, 0};
}

std::optional<NumberReader::Part> NumberReader::number() {
  digits_read_ = 0;
  const std::size_t start = at_;
  std::string digits = take_digits();
  bool comma_groups = false;
  if (!digits.empty()) {
    comma_groups = groups_by_comma(digits);
    if (!comma_groups) {
      groups_by_space(digits);
    }
  }
  int places = 0;
  if (!decimals(digits, places, comma_groups)) {
    return std::nullopt;
  }
  if (digits.empty()) {
    return with_fraction(true, Part{});
  }
  const NumberTree tree = tree_of_digits(std::string(text_.substr(start, at_ - start)));
  return with_fraction(places == 0, Part{decimal_value(digits), tree, true, false, places});
}

std::optional<NumberReader::Part> NumberReader::with_fraction(bool is_whole, Part value) {
  if (!is_whole) {
    return value;
  }
  const bool has_whole = value.tree.kind == Kind::Digits;
  const auto with = [&](const std::string& above, const std::string& below) {
    NumberTree tree{Kind::Fraction, "", {tree_of_digits(above), tree_of_digits(below)}};
    return Part{value.value + decimal_value(above) / decimal_value(below),
                has_whole ? tree_of_row({value.tree, std::move(tree)}) : std::move(tree), true, true, 0};
  };
  const std::size_t back = at_;
  if (has_whole && hyphenated_fraction_follows()) {
    ruler_hyphen_ = at_++;
  }
  skip_spaces();
  for (const FractionSign& fraction : fraction_signs) {
    if (take(fraction.sign)) {
      return with(std::to_string(fraction.above), std::to_string(fraction.below));
    }
  }
  const std::size_t start = at_;
  if (!has_whole) {
    return fail(start, "Found " + found_at(start) + " instead of a number. Write one such as 12, 2.5 or 7 1/2.");
  }
  const std::size_t above_length = start > back ? digits_at(start) : 0;
  const std::size_t bar = start + above_length;
  if (above_length == 0 || !(stands_at(bar, "/") || stands_at(bar, "⁄"))) {
    at_ = back;
    return value;
  }
  const std::string above = take_digits();
  take_any({"/", "⁄"});
  const std::size_t below_start = at_;
  const std::string below = take_digits();
  if (below.empty()) {
    return fail(below_start, "A whole number belongs after the fraction bar; found " + found_at(below_start) + ".");
  }
  if (decimal_value(below).is_zero()) {
    return fail(below_start, no_zero_below);
  }
  if (decimal_value(above) >= decimal_value(below)) {
    return fail(start, "The fraction after a whole number is less than 1: write 8 1/2, not 7 3/2.");
  }
  return with(above, below);
}

// "1-1/2", as rulers and stores write it: a mixed number if nothing else is written, otherwise a subtraction.
bool NumberReader::hyphenated_fraction_follows() const {
  const std::size_t above = digits_at(at_ + 1);
  const std::size_t bar = at_ + 1 + above;
  const std::size_t below = digits_at(bar + 1);
  return first_ + digits_at(first_) == at_ && stands_at(at_, "-") && above > 0 && below > 0 &&
         (stands_at(bar, "/") || stands_at(bar, "⁄")) && bar + 1 + below == end_;
}

// 2,860 and 1,234,567: one to three digits, no leading zero, then groups of three.
bool NumberReader::groups_by_comma(std::string& digits) {
  if (digits.size() > 3 || digits.front() == '0') {
    return false;
  }
  bool grouped = false;
  while (stands_at(at_, ",") && digits_at(at_ + 1) == 3) {
    ++at_;
    digits += take_digits();
    grouped = true;
  }
  return grouped;
}

// 2 513: the same with spaces, unless a fraction follows (7 125/1000).
bool NumberReader::groups_by_space(std::string& digits) {
  if (digits.size() > 3 || digits.front() == '0') {
    return false;
  }
  bool grouped = false;
  for (std::size_t space = space_at(at_); space > 0 && digits_at(at_ + space) == 3; space = space_at(at_)) {
    const std::size_t after = at_ + space + 3;
    if (stands_at(after, "/") || stands_at(after, "⁄")) {
      break;
    }
    at_ += space;
    digits += take_digits();
    grouped = true;
  }
  return grouped;
}

// A point, or a comma that groups nothing, with the digits after it. False after an error.
bool NumberReader::decimals(std::string& digits, int& places, bool comma_groups) {
  const std::size_t mark = at_;
  if (take(".") || (!comma_groups && !digits.empty() && take(","))) {
    const std::string after = take_digits();
    if (after.empty() && !digits.empty() && at_ >= end_) {
      return true;  // "5." is 5
    }
    if (after.empty()) {
      fail(at_, "A digit belongs after the decimal point; found " + found_at(at_) + ".");
      return false;
    }
    digits = (digits.empty() ? "0" : digits) + "." + after;
    places = static_cast<int>(after.size());
  }
  const bool another = (stands_at(at_, ".") || stands_at(at_, ",")) && at_ < end_;
  if (another) {
    fail(at_, "The second " + found_at(at_) + " in " + quoted(text_.substr(0, end_)) +
                  " is unclear. Write 2,860 or 2 860 for thousands and 2.5 or 2,5 for decimals.");
    return false;
  }
  if (is_limited_ && digits_read_ > most_digits) {
    fail(mark, "This number has more than 30 digits. Write at most 30.");
    return false;
  }
  return true;
}

bool begins_number(std::string_view text) {
  return (!text.empty() && is_ascii_digit(text.front())) ||
         std::any_of(fraction_signs.begin(), fraction_signs.end(), [&](const FractionSign& fraction) {
           return text.substr(0, fraction.sign.size()) == fraction.sign;
         });
}

Result<LeadingNumber, NumberError> leading_number(std::string_view text, Stroke stroke) {
  return NumberReader(text).read_leading(stroke);
}

std::optional<NumberTree> number_tree(std::string_view text) {
  auto read = NumberReader(text, NumberReader::Length::Any).read();
  return read ? std::optional(std::move(read).value().tree) : std::nullopt;
}

}  // namespace fw::exact
