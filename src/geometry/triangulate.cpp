#include <algorithm>

#include "geometry/flat_math.hpp"

namespace fw::geometry {
namespace {

using Corners = std::vector<std::size_t>;

/// Whether no other corner that is left lies in the triangle at position `at`, its border included.
bool is_ear(const Polygon& polygon, const Corners& left, std::size_t at) {
  const std::size_t count = left.size();
  const Vec2& a = polygon[left[(at + count - 1) % count]];
  const Vec2& b = polygon[left[at]];
  const Vec2& c = polygon[left[(at + 1) % count]];
  for (std::size_t k = 2; k + 1 < count; ++k) {
    const Vec2& p = polygon[left[(at + k) % count]];
    if (cross(b - a, p - a) >= 0 && cross(c - b, p - b) >= 0 && cross(a - c, p - c) >= 0) {
      return false;
    }
  }
  return true;
}

/// The position of the corner to cut off next: an ear, else a corner on a straight side, else the sharpest.
std::size_t next_cut(const Polygon& polygon, const Corners& left) {
  const std::size_t count = left.size();
  const double flat = tolerance * tolerance;
  std::size_t straight = count;
  std::size_t sharpest = 0;
  double sharpest_turn = -2;
  for (std::size_t at = 0; at < count; ++at) {
    const Vec2 in = polygon[left[at]] - polygon[left[(at + count - 1) % count]];
    const Vec2 out = polygon[left[(at + 1) % count]] - polygon[left[at]];
    const double scale = glm::length(in) * glm::length(out);
    const double turn = scale > 0 ? cross(in, out) / scale : 0.0;
    if (turn > flat && is_ear(polygon, left, at)) {
      return at;
    }
    if (std::abs(turn) <= tolerance && straight == count) {
      straight = at;
    }
    if (turn > sharpest_turn) {
      sharpest_turn = turn;
      sharpest = at;
    }
  }
  return straight < count ? straight : sharpest;
}

}  // namespace

std::vector<std::array<std::size_t, 3>> triangulated(const Polygon& polygon) {
  std::vector<std::array<std::size_t, 3>> triangles;
  Corners left;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    left.push_back(i);
  }
  while (left.size() > 3) {
    const std::size_t count = left.size();
    const std::size_t at = next_cut(polygon, left);
    triangles.push_back({left[(at + count - 1) % count], left[at], left[(at + 1) % count]});
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(at));
  }
  if (left.size() == 3) {
    triangles.push_back({left[0], left[1], left[2]});
  }
  return triangles;
}

}  // namespace fw::geometry
