#include <cstdint>

#include "base/utf8.hpp"
#include "lessons/located_json.hpp"

namespace fw::lessons {
namespace {

// Length and least code point of a sequence by its first byte; length 0 for a byte that starts none.
struct Lead {
  std::size_t length;
  std::uint32_t bits;
  std::uint32_t least;
};

Lead lead_of(unsigned char byte) {
  if (byte < 0x80U) {
    return {1, byte, 0};
  }
  if (byte >= 0xC0U && byte < 0xE0U) {
    return {2, byte & 0x1FU, 0x80};
  }
  if (byte >= 0xE0U && byte < 0xF0U) {
    return {3, byte & 0x0FU, 0x800};
  }
  if (byte >= 0xF0U && byte < 0xF8U) {
    return {4, byte & 0x07U, 0x10000};
  }
  return {0, 0, 0};
}

}  // namespace

std::size_t utf8_valid_until(std::string_view text) {
  std::size_t at = 0;
  while (at < text.size()) {
    const Lead lead = lead_of(static_cast<unsigned char>(text[at]));
    if (lead.length == 0 || at + lead.length > text.size()) {
      return at;
    }
    std::uint32_t code = lead.bits;
    for (std::size_t i = 1; i < lead.length; ++i) {
      const auto byte = static_cast<unsigned char>(text[at + i]);
      if ((byte & 0xC0U) != 0x80U) {
        return at;
      }
      code = (code << 6U) | (byte & 0x3FU);
    }
    const bool is_surrogate = code >= 0xD800U && code <= 0xDFFFU;
    if (code < lead.least || is_surrogate || code > 0x10FFFFU) {
      return at;
    }
    at += lead.length;
  }
  return at;
}

std::string in_quotes(std::string_view text) {
  constexpr std::size_t most = 40;
  std::string shown;
  std::size_t characters = 0;
  for (const char c : text) {
    if (starts_character(c) && characters++ == most) {
      return "\"" + shown + "…\"";
    }
    // A message is one line, whatever a file holds.
    shown += static_cast<unsigned char>(c) < 0x20U ? ' ' : c;
  }
  return "\"" + shown + "\"";
}

}  // namespace fw::lessons
