#pragma once

#include <optional>

#include "lessons/net_sheet.hpp"
#include "lessons/report.hpp"

// How a lesson writes the pieces of a net.
namespace fw::lessons {

inline constexpr const char* piece_example = R"({"face": 3, "on": 1, "edge": 2, "by": 1})";

/// A whole number within these limits, for read_field().
[[nodiscard]] solids::Field count_field(int least, std::size_t most);

/// "on", "edge" and "by" of a piece or a place. Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<nets::Joint> read_joint(const JsonNode& piece, const Context& context);

/// A piece of a net of this solid; `hangs`: on another piece, as all but the first do.
/// Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<PieceEntry> read_piece(const JsonNode& node, const solids::Solid& solid, bool hangs,
                                                   const Context& context);

}  // namespace fw::lessons
