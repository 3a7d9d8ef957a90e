#pragma once

#include <vector>

#include "state/state.hpp"

namespace fw::panels {

/// A row of the page of keys: "PgDn  \u2192  Space", "next step".
struct KeyRow {
  const char* keys;  ///< with two spaces between keys
  const char* what;
};
/// The keys of a mode, each once: first its own, then those of every mode.
[[nodiscard]] std::vector<KeyRow> key_rows(state::Mode mode);

}  // namespace fw::panels
