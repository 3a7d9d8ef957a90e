#pragma once

#include <optional>
#include <string>
#include <vector>

#include "nets/cutout.hpp"
#include "solids/solid.hpp"

namespace fw::lessons {

/// A piece as a lesson gives it: {"face": 3, "on": 1, "edge": 2, "by": 1}, all numbers from 1; its corners and their
/// unit in place of a face where it is a copy of none.
struct PieceEntry {
  std::optional<geometry::FaceId> face = std::nullopt;
  std::vector<solids::PointEntry> corners = {};
  std::string unit = {};                            ///< of the corners: "cm"; empty: that of the solid
  std::optional<nets::Joint> joint = std::nullopt;  ///< nothing for the first piece and for a missing one
  friend bool operator==(const PieceEntry&, const PieceEntry&) = default;
};

/// A cut-out as it lies before the class.
struct NetSheet {
  std::vector<PieceEntry> pieces;
  int turn_degrees = 0;  ///< counterclockwise, 0 to 359
  bool flipped = false;  ///< turned over first
  nets::Cutout cutout;   ///< of those pieces, in the solid's unit; neither turned nor flipped, free of overlap
  friend bool operator==(const NetSheet&, const NetSheet&) = default;
};

/// The polygon of a piece, in the solid's unit. Requires: its face is one of the solid's.
[[nodiscard]] geometry::Polygon shape_of(const PieceEntry& piece, const solids::Solid& solid);

}  // namespace fw::lessons
