#include <queue>

#include "geometry/flat_math.hpp"

namespace fw::geometry {
namespace {

/// How deep inside the polygon a point lies; negative outside.
double depth(const Polygon& polygon, Vec2 point) {
  double nearest = glm::length(point - polygon[0]);
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    nearest = std::min(nearest, distance_to_segment(point, polygon[i], polygon[(i + 1) % polygon.size()]));
  }
  return contains(polygon, point) ? nearest : -nearest;
}

struct Cell {
  Vec2 center;
  double half = 0;   ///< half of the side
  double depth = 0;  ///< at the center
  [[nodiscard]] double best_possible() const { return depth + half * std::sqrt(2.0); }
  friend bool operator<(const Cell& a, const Cell& b) { return a.best_possible() < b.best_possible(); }
};

}  // namespace

// Squares are quartered, the most promising first, until none can beat the best center by the precision.
Vec2 label_point(const Polygon& polygon) {
  const FlatBox box = flat_box(polygon);
  const Vec2 extent = box.highest - box.lowest;
  const double side = std::min(extent.x, extent.y);
  Vec2 best = centroid(polygon);
  double best_depth = depth(polygon, best);
  if (!(side > 0)) {
    return best;
  }
  const double precision = 0.02 * side;
  std::priority_queue<Cell> open;
  const auto add = [&](Vec2 center, double half) { open.push({center, half, depth(polygon, center)}); };
  const double columns = std::ceil(extent.x / side);
  const double rows = std::ceil(extent.y / side);
  for (double column = 0; column < columns; ++column) {
    for (double row = 0; row < rows; ++row) {
      add(box.lowest + Vec2{(column + 0.5) * side, (row + 0.5) * side}, side / 2);
    }
  }
  while (!open.empty() && open.top().best_possible() > best_depth + precision) {
    const Cell cell = open.top();
    open.pop();
    if (cell.depth > best_depth) {
      best = cell.center;
      best_depth = cell.depth;
    }
    const double quarter = cell.half / 2;
    for (const Vec2& step : {Vec2{-1, -1}, Vec2{1, -1}, Vec2{-1, 1}, Vec2{1, 1}}) {
      add(cell.center + step * quarter, quarter);
    }
  }
  return best;
}

}  // namespace fw::geometry
