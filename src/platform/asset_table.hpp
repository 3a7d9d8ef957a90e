#pragma once

#include <cstddef>

namespace fw::platform {

/// One embedded file; the table is generated at build time, in alphabetical order of the names.
struct Asset {
  const char* name;
  const char* bytes;
  std::size_t size;
};
extern const Asset asset_table[];
extern const std::size_t asset_count;

}  // namespace fw::platform
