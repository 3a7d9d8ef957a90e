#include <algorithm>

#include "base/spelling.hpp"
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

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_space(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool stands_at(std::string_view text, std::size_t at, std::string_view word) {
  return text.substr(at).substr(0, word.size()) == word;
}

// Letters that belong to a number: pi and sqrt, unless a longer word begins with them ("pint").
std::size_t number_word(std::string_view text, std::size_t at) {
  for (const std::string_view word : {"pi", "Pi", "PI", "sqrt"}) {
    const std::size_t after = at + word.size();
    if (stands_at(text, at, word) && (after >= text.size() || !is_letter(text[after]))) {
      return word.size();
    }
  }
  return 0;
}

bool starts_unit(std::string_view text, std::size_t at) {
  if (is_letter(text[at]) || text[at] == '\'' || text[at] == '"') {
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

// A unit ends where a second number begins: after a space ("3 ft 6 in") or after a foot mark (3'6").
std::size_t unit_end(std::string_view text, std::size_t at) {
  for (std::size_t i = at; i < text.size(); ++i) {
    const bool begins_number = is_digit(text[i]) || text[i] == '.' || stands_at(text, i, "½") ||
                               stands_at(text, i, "¼") || stands_at(text, i, "¾");
    if (i == at || !begins_number) {
      continue;
    }
    const bool after_mark =
        text[i - 1] == '\'' || (i >= 3 && (stands_at(text, i - 3, "′") || stands_at(text, i - 3, "’")));
    if ((is_space(text[i - 1]) && text[i] != '.') || (after_mark && text[i] != '.')) {
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
  return "“" + found + "” is not a unit known here. " + advice;
}

struct Read {
  Written number;
  std::optional<Unit> unit;
};

Result<Read, NumberError> read_piece(std::string_view text, const Piece& piece) {
  const std::string_view number_text = text.substr(piece.number_start, piece.unit_start - piece.number_start);
  const std::string unit_text = trimmed(text.substr(piece.unit_start, piece.end - piece.unit_start));
  if (trimmed(number_text).empty()) {
    const std::string found =
        unit_text.empty() ? "There is no number here." : "No number stands before “" + unit_text + "”.";
    return failure(NumberError{piece.number_start, found + " Write a number and a unit, such as 7 1/2 ft."});
  }
  const Result<Written, NumberError> number = exact::parse_number(number_text);
  if (!number) {
    return failure(NumberError{piece.number_start + number.error().offset, number.error().message});
  }
  if (unit_text.empty()) {
    return Read{*number, std::nullopt};
  }
  const std::optional<Unit> unit = Unit::find(unit_text);
  if (!unit) {
    return failure(NumberError{piece.unit_start, unknown_unit(unit_text)});
  }
  return Read{*number, unit};
}

bool is_smaller_length(const Read& small, const Read& large) {
  return small.unit && large.unit && small.unit->dimension() == 1 && large.unit->dimension() == 1 &&
         small.unit->converts_to(*large.unit) && small.unit->factor() < large.unit->factor();
}

}  // namespace

Result<WrittenQuantity, NumberError> parse_quantity(std::string_view text) {
  const std::vector<Piece> pieces = pieces_of(text);
  const Result<Read, NumberError> first = read_piece(text, pieces.front());
  if (!first) {
    return failure(first.error());
  }
  WrittenQuantity quantity{first->number, first->unit.value_or(Unit::none()), first->unit.has_value(), trimmed(text)};
  Read last = *first;
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    const Result<Read, NumberError> next = read_piece(text, pieces[i]);
    if (!next) {
      return failure(next.error());
    }
    if (!is_smaller_length(*next, last)) {
      return failure(NumberError{pieces[i].number_start, "A second quantity, “" +
                                                             trimmed(text.substr(pieces[i].number_start)) +
                                                             "”, stands after the first. Only a length in a smaller "
                                                             "unit may follow, as in 3 ft 6 in."});
    }
    quantity.number.value = quantity.number.value + next->number.value * conversion(*next->unit, quantity.unit);
    quantity.number.text = quantity.text;
    quantity.number.places = 0;
    quantity.number.is_fraction = true;
    last = *next;
  }
  return quantity;
}

}  // namespace fw::units
