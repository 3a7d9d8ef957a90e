#pragma once

#include <cstddef>
#include <string_view>

namespace fw::words {

/// A place in a pattern, or the text before the next one.
struct PatternPiece {
  bool is_place = false;
  std::string_view text;   ///< of a place: the name of its argument
  std::string_view form;   ///< of a place: "a", "and", "face|faces"; empty: as it is
  std::string_view count;  ///< of a place: the name of the count that a noun goes with
};

/// The piece at the start of `rest`, which is taken off it. Requires: `rest` is well formed and not empty.
[[nodiscard]] constexpr PatternPiece next_piece(std::string_view& rest) {
  const bool is_place = rest.front() == '{';
  const std::size_t end = rest.find(is_place ? '}' : '{');
  PatternPiece piece{is_place, rest.substr(is_place ? 1 : 0, is_place ? end - 1 : end), {}, {}};
  rest.remove_prefix(end == std::string_view::npos ? rest.size() : is_place ? end + 1 : end);
  if (is_place) {
    const std::size_t mark = piece.text.find_first_of(":#");
    if (mark != std::string_view::npos) {
      (piece.text[mark] == '#' ? piece.count : piece.form) = piece.text.substr(mark + 1);
      piece.text = piece.text.substr(0, mark);
    }
  }
  return piece;
}

[[nodiscard]] constexpr bool is_argument_name(std::string_view name) {
  for (const char c : name) {
    if (!((c >= 'a' && c <= 'z') || c == '_')) {
      return false;
    }
  }
  return !name.empty();
}

[[nodiscard]] constexpr bool is_form(std::string_view form) {
  for (const std::string_view known : {"", "a", "A", "s", "up", "and", "or", ",", ";", ", or", "then"}) {
    if (form == known) {
      return true;
    }
  }
  return form.find('|') != std::string_view::npos;
}

/// What is wrong with a pattern; null where nothing is.
[[nodiscard]] constexpr const char* pattern_fault(std::string_view pattern) {
  bool is_open = false;
  for (const char c : pattern) {
    if (c == '{' && is_open) {
      return "a place is opened within another one";
    }
    if (c == '}' && !is_open) {
      return "a place is closed that was not opened";
    }
    is_open = c == '{' || (is_open && c != '}');
  }
  if (is_open) {
    return "a place is not closed";
  }
  while (!pattern.empty()) {
    const PatternPiece piece = next_piece(pattern);
    if (piece.is_place && (!is_argument_name(piece.text) || (!piece.count.empty() && !is_argument_name(piece.count)))) {
      return "an argument's name is written in the letters a to z and _";
    }
    if (piece.is_place && !is_form(piece.form)) {
      return "there is no such form";
    }
  }
  return nullptr;
}

/// Written nowhere: a pattern that calls it while it is compiled does not compile.
void is_not_well_formed(const char* fault);

/// An English sentence with places for its arguments, checked by the compiler. Text in braces is a place:
///
///     {height}            the argument as it is
///     {solid:a}           a noun with its article: "an octagonal pyramid"; {solid:A} at the start of a sentence
///     {item:s}            a noun in the plural
///     {item#count}        a noun in the number that goes with the argument `count`: "1 roll", "4 rolls"
///     {count:face|faces}  no argument is said, but the form that goes with this count
///     {faces:and}         a list, "1, 2 and 5"; {faces:or}; {faces:,} with commas alone; {options:;}; {sets:, or}
///     {sentences:then}    a list of sentences with a blank between them
///     {reason:up}         with its first letter in upper case
class Pattern {
 public:
  consteval Pattern(const char* text) : text_(text) {
    if (const char* fault = pattern_fault(text_)) {
      is_not_well_formed(fault);
    }
  }
  [[nodiscard]] constexpr std::string_view text() const { return text_; }

 private:
  std::string_view text_;
};

}  // namespace fw::words
