#pragma once

#include <algorithm>
#include <cmath>

#include "geometry/polygon.hpp"
#include "geometry/tolerance.hpp"

// Small sums in the plane, for this room and those that draw.
namespace fw::geometry {

[[nodiscard]] inline double cross(Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; }

[[nodiscard]] inline double distance_to_segment(Vec2 point, Vec2 a, Vec2 b) {
  const Vec2 along = b - a;
  const double length_squared = glm::dot(along, along);
  const double share = length_squared > 0 ? std::clamp(glm::dot(point - a, along) / length_squared, 0.0, 1.0) : 0.0;
  return glm::length(point - (a + along * share));
}

struct FlatBox {
  Vec2 lowest, highest;
};
/// Requires: at least one point.
[[nodiscard]] inline FlatBox flat_box(const Polygon& polygon) {
  FlatBox box{polygon.front(), polygon.front()};
  for (const Vec2& point : polygon) {
    box.lowest = {std::min(box.lowest.x, point.x), std::min(box.lowest.y, point.y)};
    box.highest = {std::max(box.highest.x, point.x), std::max(box.highest.y, point.y)};
  }
  return box;
}
[[nodiscard]] inline double diagonal(const Polygon& polygon) {
  const FlatBox box = flat_box(polygon);
  return glm::length(box.highest - box.lowest);
}

}  // namespace fw::geometry
