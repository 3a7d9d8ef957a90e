#pragma once

#include <vector>

#include "geometry/polygon.hpp"

namespace fw::paper {

using geometry::Polygon;
using geometry::Vec2;

/// The corners of the least convex polygon round the points, counterclockwise. Source: Andrew's monotone chain (1979).
[[nodiscard]] Polygon convex_hull(std::vector<Vec2> points);

/// How a shape is turned to come out as large as can be in a box.
struct Fit {
  double scale = 0;      ///< the largest by which it fits
  double angle_rad = 0;  ///< turned counterclockwise
};
/// The best of all turns, found without search: between two directions at which a side of the hull is level or upright,
/// width and height are sinusoids without a minimum inside, so the best turn is at such a direction or where width and
/// height run out together.
/// Requires: at least three points that do not lie on one line.
[[nodiscard]] Fit best_fit(const Polygon& hull, double width, double height);

[[nodiscard]] Vec2 turned(Vec2 point, double angle_rad);

}  // namespace fw::paper
