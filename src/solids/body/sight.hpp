#pragma once

#include <vector>

#include "solids/body/body.hpp"

namespace fw::solids {

/// A line of a body's picture.
struct SightLine {
  Vec3 from{}, to{};
  bool hidden = false;  ///< some part of the body stands before it
};

/// A face of a body's picture.
struct SightFace {
  FaceId face;
  std::vector<Vec3> outline;
  bool is_whole = false;  ///< seen, and no part of it hidden, so that it can be filled
};

/// A body seen from far away: what a line drawing shows of it.
struct Sight {
  std::vector<SightLine> lines;  ///< its edges in order; one of which a part is hidden comes in pieces
  std::vector<SightFace> faces;  ///< all of them, in order
};
/// `toward_viewer`: of length 1. Faces of a concave body may hide each other, so that none of them is_whole.
[[nodiscard]] Sight seen_from_afar(const Body& body, Vec3 toward_viewer);

}  // namespace fw::solids
