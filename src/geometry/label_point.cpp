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

/// A rectangle of the plane, and how deep its center lies.
struct Cell {
  Vec2 center;
  Vec2 half;         ///< half of its sides
  double depth = 0;  ///< at the center
  [[nodiscard]] double best_possible() const { return depth + glm::length(half); }
  friend bool operator<(const Cell& a, const Cell& b) { return a.best_possible() < b.best_possible(); }
};

/// Quarters of a cell, or halves of one that is more than twice as long as wide.
std::vector<Cell> parts_of(const Cell& cell) {
  const bool splits_x = 2 * cell.half.x >= cell.half.y;
  const bool splits_y = 2 * cell.half.y >= cell.half.x;
  const Vec2 half{splits_x ? cell.half.x / 2 : cell.half.x, splits_y ? cell.half.y / 2 : cell.half.y};
  std::vector<Cell> parts;
  for (const double y : {-1.0, 1.0}) {
    for (const double x : {-1.0, 1.0}) {
      if ((splits_x || x < 0) && (splits_y || y < 0)) {
        parts.push_back({cell.center + Vec2{splits_x ? x * half.x : 0, splits_y ? y * half.y : 0}, half});
      }
    }
  }
  return parts;
}

// A sliver a million times as long as wide would take millions of squares: no more cells than these are looked at.
constexpr double most_along_a_side = 64;
constexpr int most_cells_split = 4096;

}  // namespace

// Cells are split, the most promising first, until none can beat the best center by the precision.
Vec2 label_point(const Polygon& polygon) {
  const FlatBox box = flat_box(polygon);
  const Vec2 extent = box.highest - box.lowest;
  const double side = std::min(extent.x, extent.y);
  Vec2 best = centroid(polygon);
  double best_depth = depth(polygon, best);
  // No point lies deeper than half of the shorter side of the box.
  if (!(side > 0) || best_depth >= side / 2) {
    return best;
  }
  const double precision = 0.02 * side;
  std::priority_queue<Cell> open;
  const auto add = [&](Cell cell) {
    cell.depth = depth(polygon, cell.center);
    open.push(cell);
  };
  const int columns = static_cast<int>(std::min(std::ceil(extent.x / side), most_along_a_side));
  const int rows = static_cast<int>(std::min(std::ceil(extent.y / side), most_along_a_side));
  const Vec2 size{std::max(side, extent.x / columns), std::max(side, extent.y / rows)};
  for (int column = 0; column < columns; ++column) {
    for (int row = 0; row < rows; ++row) {
      add({box.lowest + Vec2{(column + 0.5) * size.x, (row + 0.5) * size.y}, size / 2.0});
    }
  }
  for (int split = 0; split < most_cells_split && open.top().best_possible() > best_depth + precision; ++split) {
    const Cell cell = open.top();
    open.pop();
    if (cell.depth > best_depth) {
      best = cell.center;
      best_depth = cell.depth;
    }
    for (const Cell& part : parts_of(cell)) {
      add(part);
    }
  }
  return best;
}

}  // namespace fw::geometry
