#pragma once

#include <string>

#include "lessons/net_sheet.hpp"

// Parts of a net as JSON text.
namespace fw::lessons {

/// "on", "edge" and "by", without the braces.
[[nodiscard]] std::string joint_text(const nets::Joint& joint);
[[nodiscard]] std::string piece_text(const PieceEntry& piece);
/// "pieces", "turn" and "flip", without the braces.
[[nodiscard]] std::string sheet_text(const NetSheet& sheet);

}  // namespace fw::lessons
