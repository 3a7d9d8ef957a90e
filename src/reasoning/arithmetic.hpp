#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "algebra/isolate.hpp"
#include "exact/column_work.hpp"
#include "words/message.hpp"

// What a class does with numbers on the way; private to the room.
namespace fw::reasoning {

/// The work at the margin for one round of arithmetic on an expression: what is more than the head can do, namely a
/// product of numbers of two digits or more, a quotient by more than one digit or with a remainder, a sum or difference
/// of long or several numbers. Only for decimals that end.
[[nodiscard]] std::vector<exact::ColumnWork> asides_of(const algebra::Expression& expression,
                                                       const algebra::Numerals& numerals);

/// What one round of arithmetic does, in a student's words: "Multiply, then add.". Empty for nothing.
[[nodiscard]] words::Message arithmetic_words(const algebra::Expression& expression, const algebra::Numerals& numerals);

/// A fraction with a factor above the line that the number below divides.
struct Canceled {
  algebra::Expression before;    ///< the same as given, each canceled number a numeral of its own
  algebra::Expression after;     ///< with the smaller factor, and nothing left below
  algebra::Symbol above, below;  ///< the numerals struck out, in `before`
  algebra::Symbol left;          ///< what remains of the one above, in `after`; 1 is left out
  bool leaves_one = false;
};
/// The first such fraction in an expression; nothing where there is none, or nothing is gained.
[[nodiscard]] std::optional<Canceled> canceled(const algebra::Expression& expression, algebra::Numerals& numerals);

}  // namespace fw::reasoning
