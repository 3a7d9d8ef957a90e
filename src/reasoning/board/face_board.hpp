#pragma once

#include "reasoning/board/board_page.hpp"
#include "reasoning/face_route.hpp"

// An area added up from faces as on the board; private to the room.
namespace fw::reasoning {

/// Congruent faces on one line, "faces 4 and 7 = 2 · 5 · 4 = 40", then the sum. Covers the steps of the faces, and
/// those of the sum up to `end`.
void write_board_faces(BoardPage& page, const std::vector<WrittenFaces>& written, std::size_t end);

}  // namespace fw::reasoning
