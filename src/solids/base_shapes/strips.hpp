#pragma once

#include <string>
#include <vector>

#include "solids/statement_parts.hpp"

// How a class finds the area of a polygon: it cuts it into strips. Private to the room.
namespace fw::solids::shape {

/// The pieces of a polygon that is cut straight through its corners, all one way.
struct Strips {
  std::size_t rectangles = 0, triangles = 0, trapezoids = 0;
  std::string work;  ///< "9 × 4 + 4 × 5 + 8 × 3 ÷ 2": the areas of all pieces, in turn; they add up to the polygon's
  [[nodiscard]] std::size_t count() const { return rectangles + triangles + trapezoids; }
};

/// Cut along or across, whichever makes fewer pieces; rectangles on top of each other stay one. Requires: a simple
/// polygon with corners counterclockwise. Cost: the square of their number.
[[nodiscard]] Strips cut_into_strips(const std::vector<ExactPoint>& corners);

}  // namespace fw::solids::shape
