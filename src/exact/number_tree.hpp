#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "exact/written.hpp"

namespace fw::exact {

/// A number as it stands on the page: what parse_number() reads, part by part.
struct NumberTree {
  enum class Kind {
    Digits,       ///< text "2,860.5", as it is written
    Sign,         ///< text "+", "−", "×"
    Pi,           ///< to the `power`
    Row,          ///< parts side by side: "7" and "1/2", "3" and "√2", terms with their signs
    Fraction,     ///< two parts: above, below
    Root,         ///< the square root of one part
    Parentheses,  ///< round one part
  };
  Kind kind = Kind::Row;
  std::string text = {};
  std::vector<NumberTree> parts = {};
  int power = 1;
};

/// Nothing for a text that parse_number() refuses, unless it is refused for its length alone: what is printed of an
/// exact number may be long.
[[nodiscard]] std::optional<NumberTree> number_tree(std::string_view text);

/// A number without root or π at the front of a text, and how many bytes it takes.
struct LeadingNumber {
  Number value;
  std::size_t length = 0;
};
/// Whether a stroke after a number makes a fraction of it, as in "1/2", or stands for itself, as in "√5/10".
enum class Stroke { Inside, Outside };
/// Reads "12", "2,860.5", "7 1/2", "7½" or "½" and leaves what follows. Errors: as of parse_number().
[[nodiscard]] Result<LeadingNumber, NumberError> leading_number(std::string_view text, Stroke stroke);
/// Whether the text begins with a digit or with a sign such as ½.
[[nodiscard]] bool begins_number(std::string_view text);

}  // namespace fw::exact
