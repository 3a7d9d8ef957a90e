#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace fw::practice {

/// The choices of an answer such as "B", "A, C", "ac", "a and c" or "1, 3", as rising indexes below `count`; nothing
/// for anything else. Requires: count <= 26; numbers are read to 9.
[[nodiscard]] std::optional<std::vector<std::size_t>> read_letters(std::string_view typed, std::size_t count);

/// True for an answer that begins with yes or y, false with no or n; nothing for anything else.
[[nodiscard]] std::optional<bool> read_yes_no(std::string_view typed);

}  // namespace fw::practice
