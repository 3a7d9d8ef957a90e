#pragma once

#include <vector>

#include "solids/body/body.hpp"

namespace fw::solids {

/// A line of a body's picture.
struct SightLine {
  Vec3 from{}, to{};
  bool hidden = false;     ///< some part of the body stands before it
  bool is_curve = false;   ///< a piece of a rim, or where a face that bends turns out of sight
  bool continues = false;  ///< goes on from the line before it, so that both are one stroke
};

/// A facet of a body's picture: a flat face, or a strip of one that bends.
struct SightFace {
  FaceId face;
  std::vector<Vec3> outline;
  bool is_whole = false;  ///< seen, and no part of it hidden, so that it can be filled
};

/// A body seen from far away: what a line drawing shows of it.
struct Sight {
  /// Its edges in order; one of which a part is hidden comes in pieces, and a rim in many.
  std::vector<SightLine> lines;
  std::vector<SightFace> faces;  ///< all facets, in order
  /// The lines as strokes: those that continue each other in one.
  [[nodiscard]] std::vector<std::vector<SightLine>> strokes() const;
};
/// `toward_viewer`: of length 1. Faces of a concave body may hide each other, so that none of them is_whole.
[[nodiscard]] Sight seen_from_afar(const Body& body, Vec3 toward_viewer);

}  // namespace fw::solids
