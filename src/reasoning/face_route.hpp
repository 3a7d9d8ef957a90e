#pragma once

#include "reasoning/worksheet.hpp"

// An area worked out face by face; private to the room.
namespace fw::reasoning {

/// The faces whose areas make up the measure: all for S, the lateral ones for L, one base for B; empty for others.
[[nodiscard]] std::vector<FaceId> faces_added_up(const solids::Solid& solid, const algebra::Symbol& asked);

/// Each face with its two lengths, alike ones once and times their number, then the sum. Returns the number.
/// Requires: faces_added_up() is not empty; the letters of the faces' areas are known on the sheet.
[[nodiscard]] algebra::Symbol write_faces(Worksheet& sheet, const algebra::Symbol& asked);

}  // namespace fw::reasoning
