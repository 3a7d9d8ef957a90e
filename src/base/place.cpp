#include "base/place.hpp"

#include <algorithm>

#include "base/utf8.hpp"

namespace fw {

Place place_of(std::string_view text, std::size_t offset) {
  Place place;
  for (const char c : text.substr(0, std::min(offset, text.size()))) {
    if (c == '\n') {
      ++place.line;
      place.column = 1;
    } else if (starts_character(c)) {
      ++place.column;
    }
  }
  return place;
}

}  // namespace fw
