#pragma once

#include <string>
#include <string_view>

// How English makes the forms of a noun; private to the room. Source: the spelling rules of school grammar; common
// practice, no source.
namespace fw::words::english {

/// "roll" -> "rolls", "box of candles" -> "boxes of candles", "berry" -> "berries", "square foot" -> "square feet".
[[nodiscard]] std::string plural(std::string_view noun);
/// "a roll", "an envelope": by the first letter alone.
[[nodiscard]] std::string with_article(std::string_view noun);

}  // namespace fw::words::english
