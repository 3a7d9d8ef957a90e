#pragma once

#include <optional>
#include <vector>

#include "lessons/net_sheet.hpp"
#include "lessons/report.hpp"

// How a lesson writes a cut-out.
namespace fw::lessons {

/// The items of a list that must be there, as many as allowed. Errors: told to the context; null then.
[[nodiscard]] const std::vector<JsonNode>* items_of(const JsonNode& node, const char* key, std::size_t least,
                                                    std::size_t most, const Context& context);

/// A cut-out of this solid: its pieces there, in one piece and free of overlap.
/// Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<NetSheet> read_sheet(const JsonNode& node, const solids::Solid& solid,
                                                 const Context& context);

/// Whether no two pieces lie on each other. Errors: told to the context.
bool is_flat(const nets::Cutout& cutout, const JsonNode& node, const Context& context);

}  // namespace fw::lessons
