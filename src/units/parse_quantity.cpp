#include <algorithm>

#include "base/spelling.hpp"
#include "base/utf8.hpp"
#include "exact/number_tree.hpp"
#include "units/quantity.hpp"

namespace fw::units {
namespace {

using exact::NumberError;
using exact::Written;

// A number with the unit after it, as pieces of the whole text.
struct Piece {
  std::size_t number_start = 0;
  std::size_t unit_start = 0;
  std::size_t end = 0;
};

bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool stands_at(std::string_view text, std::size_t at, std::string_view word) {
  return text.substr(at).substr(0, word.size()) == word;
}

// Letters that belong to a number: pi and sqrt, unless a longer word begins with them ("pint").
std::size_t number_word(std::string_view text, std::size_t at) {
  for (const std::string_view word : {"pi", "Pi", "PI", "sqrt"}) {
    const std::size_t after = at + word.size();
    if (stands_at(text, at, word) && (after >= text.size() || !is_ascii_letter(text[after]))) {
      return word.size();
    }
  }
  return 0;
}

bool starts_unit(std::string_view text, std::size_t at) {
  if (is_ascii_letter(text[at]) || text[at] == '\'' || text[at] == '"') {
    return true;
  }
  for (const std::string_view mark : {"′", "″", "’", "”", "ℓ"}) {
    if (stands_at(text, at, mark)) {
      return true;
    }
  }
  return false;
}

std::size_t unit_start(std::string_view text, std::size_t at) {
  while (at < text.size() && !starts_unit(text, at)) {
    ++at;
    for (std::size_t word = at < text.size() ? number_word(text, at) : 0; word > 0;) {
      at += word;
      word = at < text.size() ? number_word(text, at) : 0;
    }
  }
  return at;
}

// Digits that have a unit after them, unlike those of a power: the 4 of "1ft4 1/2in", but not the 2 of "cm2".
bool is_amount(std::string_view text, std::size_t at) {
  while (at < text.size() && is_ascii_digit(text[at])) {
    ++at;
  }
  while (at < text.size() && is_space(text[at])) {
    ++at;
  }
  return at < text.size() && (starts_unit(text, at) || exact::begins_number(text.substr(at)));
}

// A unit ends where a second number begins: after a space ("3 ft 6 in"), after a foot mark (3'6"), or between letters
// ("1ft4in").
std::size_t unit_end(std::string_view text, std::size_t at) {
  for (std::size_t i = at; i < text.size(); ++i) {
    if (i == at || !exact::begins_number(text.substr(i))) {
      continue;
    }
    const bool after_mark =
        text[i - 1] == '\'' || (i >= 3 && (stands_at(text, i - 3, "′") || stands_at(text, i - 3, "’")));
    const bool after_letter = is_ascii_letter(text[i - 1]) && is_ascii_digit(text[i]) && is_amount(text, i);
    if (is_space(text[i - 1]) || after_mark || after_letter) {
      return i;
    }
  }
  return text.size();
}

std::vector<Piece> pieces_of(std::string_view text) {
  std::vector<Piece> pieces;
  std::size_t at = 0;
  do {
    Piece piece;
    piece.number_start = at;
    const std::size_t word = at < text.size() ? number_word(text, at) : 0;
    piece.unit_start = unit_start(text, at + word);
    piece.end = unit_end(text, piece.unit_start);
    at = piece.end;
    pieces.push_back(piece);
  } while (at < text.size());
  return pieces;
}

std::string trimmed(std::string_view text) {
  while (!text.empty() && is_space(text.front())) {
    text.remove_prefix(1);
  }
  while (!text.empty() && is_space(text.back())) {
    text.remove_suffix(1);
  }
  return std::string(text);
}

std::string unknown_unit(const std::string& found) {
  std::vector<std::string> known = {"cm",         "L",           "mL",     "gal",         "qt",
                                    "pt",         "cup",         "fl oz",  "units",       "liters",
                                    "gallons",    "feet",        "inches", "square feet", "square inches",
                                    "cubic feet", "cubic inches"};
  for (const Unit& unit : Unit::lengths()) {
    for (int dimension = 1; dimension <= 3; ++dimension) {
      known.push_back(unit.to_the(dimension).ascii());
      known.push_back(unit.to_the(dimension).name() + "s");
    }
  }
  const std::optional<std::string> nearest = nearest_spelling(found, known);
  const std::string advice = nearest ? "Did you mean “" + *nearest + "”?" : "Write one such as cm, in, cm^2 or ft^3.";
  return "“" + found + "” is not a known unit. " + advice;
}

struct Read {
  Written number;
  std::optional<Unit> unit;
  std::string text;
  bool is_as_typed = true;  ///< its number, but for spaces around
};

Result<Read, NumberError> read_piece(std::string_view text, const Piece& piece) {
  const std::string_view number_text = text.substr(piece.number_start, piece.unit_start - piece.number_start);
  const std::string unit_text = trimmed(text.substr(piece.unit_start, piece.end - piece.unit_start));
  if (trimmed(number_text).empty()) {
    const std::string found =
        unit_text.empty() ? "There is no number here." : "There is no number before “" + unit_text + "”.";
    return failure(NumberError{piece.number_start, found + " Write a number and a unit, such as 7 1/2 ft."});
  }
  const Result<Written, NumberError> number = exact::parse_number(number_text);
  if (!number) {
    return failure(NumberError{piece.number_start + number.error().offset, number.error().message});
  }
  const bool is_as_typed = trimmed(number_text) == number->text;
  if (unit_text.empty()) {
    return Read{*number, std::nullopt, number->text, is_as_typed};
  }
  const std::optional<Unit> unit = Unit::find(unit_text);
  if (!unit) {
    return failure(NumberError{piece.unit_start, unknown_unit(unit_text)});
  }
  return Read{*number, unit, number->text + (is_ascii_letter(unit_text.front()) ? " " : "") + unit_text, is_as_typed};
}

bool is_smaller_length(const Read& small, const Read& large) {
  return small.unit && large.unit && small.unit->dimension() == 1 && large.unit->dimension() == 1 &&
         small.unit->converts_to(*large.unit) && small.unit->factor() < large.unit->factor();
}

// What is wrong with a piece that follows another, or nothing.
std::optional<std::string> refusal(const Read& next, const Read& last) {
  const bool is_length = last.unit && last.unit->dimension() == 1;
  if (!next.unit && is_length && (next.text == "2" || next.text == "3")) {
    const std::string unit = last.unit->text();
    return "“" + unit + " " + next.text + "” is unclear. Write " + unit + "^" + next.text + ", or a unit after the " +
           next.text + ".";
  }
  if (!is_smaller_length(next, last)) {
    return "There is a second measure here: “" + next.text +
           "”. Only a length in a smaller unit can follow, as in 3 ft 6 in.";
  }
  const exact::Number part = next.number.value * conversion(*next.unit, *last.unit);
  if (!(part < exact::Number::whole(1)) && part.is_rational() && last.number.value.is_rational()) {
    const exact::Number whole = exact::floor(part);
    const exact::Number rest = (part - whole) * conversion(*last.unit, *next.unit);
    const bool is_one = part == exact::Number::whole(1);
    return next.text + (is_one ? " is 1 " : " is more than 1 ") + last.unit->text() + ". Write " +
           exact::exact_text(last.number.value + whole) + " " + last.unit->text() +
           (rest.is_zero() ? "" : " " + exact::exact_text(rest) + " " + next.unit->text()) + ".";
  }
  return std::nullopt;
}

}  // namespace

Result<WrittenQuantity, NumberError> parse_quantity(std::string_view text) {
  const std::vector<Piece> pieces = pieces_of(text);
  const Result<Read, NumberError> first = read_piece(text, pieces.front());
  if (!first) {
    return failure(first.error());
  }
  WrittenQuantity quantity{first->number, first->unit.value_or(Unit::none()), first->unit.has_value(),
                           first->is_as_typed ? trimmed(text) : first->text};
  Read last = *first;
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    const Result<Read, NumberError> next = read_piece(text, pieces[i]);
    if (!next) {
      return failure(next.error());
    }
    if (const auto reason = refusal(*next, last)) {
      return failure(NumberError{pieces[i].number_start, *reason});
    }
    quantity.text = i == 1 ? first->text + " " + next->text : quantity.text + " " + next->text;
    quantity.number.value = quantity.number.value + next->number.value * conversion(*next->unit, quantity.unit);
    quantity.number.text = quantity.text;
    quantity.number.places = 0;
    quantity.number.is_fraction = true;
    last = *next;
  }
  return quantity;
}

}  // namespace fw::units
