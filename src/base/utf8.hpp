#pragma once

#include <cstddef>
#include <string_view>

namespace fw {

/// Whether a byte of a text in UTF-8 is the first of a character.
[[nodiscard]] constexpr bool starts_character(char byte) { return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; }

/// A to Z and a to z, in whatever language the machine is set up.
[[nodiscard]] constexpr bool is_ascii_letter(char byte) {
  return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z');
}

[[nodiscard]] constexpr bool is_ascii_digit(char byte) { return byte >= '0' && byte <= '9'; }

/// How many characters (code points) a text in UTF-8 has.
[[nodiscard]] inline std::size_t character_count(std::string_view text) {
  std::size_t count = 0;
  for (const char byte : text) {
    count += starts_character(byte) ? 1U : 0U;
  }
  return count;
}

}  // namespace fw
