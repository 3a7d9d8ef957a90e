#pragma once

#include <string>
#include <string_view>

namespace fw::reasoning {

/// The noun of an item in the plural: "roll" -> "rolls", "box of candles" -> "boxes of candles", "paint can" -> "paint
/// cans", "berry" -> "berries". Source: the spelling rules of school grammar; common practice, no source.
[[nodiscard]] std::string plural(std::string_view noun);

/// "1 roll", "4 rolls", "3.64 rolls": the number as text, and the noun in the number that goes with it.
[[nodiscard]] std::string counted(std::string_view number, std::string_view noun);

/// "a roll", "an envelope": by the first letter alone.
[[nodiscard]] std::string one(std::string_view noun);

/// With its first letter, if that is a-z, in upper case.
[[nodiscard]] std::string sentence_case(std::string text);

}  // namespace fw::reasoning
