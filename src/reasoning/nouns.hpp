#pragma once

#include <string>

namespace fw::reasoning {

/// The noun of an item in the plural: "roll" -> "rolls", "box of candles" -> "boxes of candles", "paint can" -> "paint
/// cans", "berry" -> "berries". Source: the spelling rules of school grammar; common practice, no source.
[[nodiscard]] std::string plural(const std::string& noun);

/// "1 roll", "4 rolls", "3.64 rolls": the number as text, and the noun in the number that goes with it.
[[nodiscard]] std::string counted(const std::string& number, const std::string& noun);

/// "a roll", "an envelope": by the first letter alone.
[[nodiscard]] std::string one(const std::string& noun);

/// With its first letter, if that is a-z, in upper case.
[[nodiscard]] std::string sentence_case(const std::string& text);

}  // namespace fw::reasoning
