#pragma once

#include <cstddef>
#include <string_view>

namespace fw {

/// A place in a text. Lines and columns count from 1; columns count characters (UTF-8 code points).
struct Place {
  std::size_t line = 1;
  std::size_t column = 1;
  friend bool operator==(const Place&, const Place&) = default;
};

/// The place of the byte `offset` of `text`; the end of the text for an offset beyond it.
[[nodiscard]] Place place_of(std::string_view text, std::size_t offset);

}  // namespace fw
