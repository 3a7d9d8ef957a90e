#pragma once

#include "reasoning/worksheet.hpp"

// An area worked out face by face; private to the room.
namespace fw::reasoning {

/// An area that is added up from faces.
struct FaceSum {
  algebra::Symbol asked;
  std::vector<FaceId> faces;  ///< that count: all for S, the lateral ones for L, one base for B; none for others
};
/// Without the `open` faces; where some are left out, what is asked is the area of the faces that count.
[[nodiscard]] FaceSum faces_added_up(const solids::Solid& solid, const algebra::Symbol& asked,
                                     const std::vector<FaceId>& open);

/// The steps of congruent faces: the area of one, and of all of them.
struct WrittenFaces {
  std::vector<FaceId> faces;
  std::size_t first = 0;
  std::size_t end = 0;  ///< one past the last
};
/// Each face with its two lengths, alike ones once and times their number, then the sum, which is known on the sheet
/// from then on. Requires: there are faces; the letters of their areas are known on the sheet.
/// Returns the steps before those of the sum.
std::vector<WrittenFaces> write_faces(Worksheet& sheet, const FaceSum& of);

}  // namespace fw::reasoning
