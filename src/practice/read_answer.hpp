#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "exact/written.hpp"
#include "units/unit.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// An answer as a student types it, number and unit apart.
struct TypedAnswer {
  exact::Written number;
  std::optional<units::Unit> unit;  ///< none was written
  bool is_money = false;            ///< "$96"
};

/// Reads "286", "286 cm²", "286 sq cm", "286cm^2", "408,4", "2,860", "7 1/2 ft", "130 pi", "S = 286 cm²", "≈ 20.8 cm",
/// "$96", "96 dollars", "4 rolls", "twelve". The word after the number is a unit, or what is counted: `item` or a noun
/// of the prompt, matched by how it begins. Errors: a sentence, if the number is missing or the word is neither.
[[nodiscard]] Result<TypedAnswer, words::Message> read_answer(std::string_view typed, std::string_view item = "",
                                                              std::string_view prompt = "");

/// Whether the number is the value: exactly or, where the value does not end within two decimals, rounded to as many
/// decimals as are written, one at least.
[[nodiscard]] bool stands_for(const exact::Written& number, const exact::Number& value);
/// The same for a value in doubles, more generously: rounded to whole numbers too, where it has three digits. Exact
/// values agree to one part in a thousand million.
[[nodiscard]] bool stands_for(const exact::Written& number, double value);
/// Whether a number below a tenth was rounded so far that fewer than two of its digits are left: 0.01 for 0.0062.
[[nodiscard]] bool is_cut_short(const exact::Written& number, double value);

}  // namespace fw::practice
