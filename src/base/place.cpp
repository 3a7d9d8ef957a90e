#include "base/place.hpp"

#include <algorithm>

namespace fw {

Place place_of(std::string_view text, std::size_t offset) {
  Place place;
  for (const char c : text.substr(0, std::min(offset, text.size()))) {
    const bool continues_character = (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
    if (c == '\n') {
      ++place.line;
      place.column = 1;
    } else if (!continues_character) {
      ++place.column;
    }
  }
  return place;
}

}  // namespace fw
