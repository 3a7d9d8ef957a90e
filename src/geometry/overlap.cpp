#include "geometry/flat_math.hpp"

namespace fw::geometry {
namespace {

/// Whether the line through a side of `a` keeps all of `b` outside. Requires: both convex.
bool side_separates(const Polygon& a, const Polygon& b, double reach) {
  for (std::size_t i = 0; i < a.size(); ++i) {
    const Vec2 side = a[(i + 1) % a.size()] - a[i];
    const double most_inside = reach * glm::length(side);
    bool outside = true;
    for (std::size_t k = 0; k < b.size() && outside; ++k) {
      outside = cross(side, b[k] - a[i]) <= most_inside;
    }
    if (outside) {
      return true;
    }
  }
  return false;
}

/// Source: the theorem of separating axes.
bool convex_overlap(const Polygon& a, const Polygon& b, double reach) {
  return !side_separates(a, b, reach) && !side_separates(b, a, reach);
}

std::vector<Polygon> convex_pieces(const Polygon& polygon) {
  if (is_convex(polygon)) {
    return {polygon};
  }
  std::vector<Polygon> pieces;
  for (const auto& corner : triangulated(polygon)) {
    const Polygon triangle = {polygon[corner[0]], polygon[corner[1]], polygon[corner[2]]};
    // A corner on a straight side leaves a triangle without an inside.
    if (signed_area(triangle) >
        tolerance * tolerance * glm::dot(triangle[1] - triangle[0], triangle[1] - triangle[0])) {
      pieces.push_back(triangle);
    }
  }
  return pieces;
}

/// About how thick it is: a strip a millimeter wide must not be lost because it is long.
double thickness(const Polygon& polygon) { return std::abs(signed_area(polygon)) / diagonal(polygon); }

}  // namespace

bool overlap(const Polygon& a, const Polygon& b) {
  if (a.size() < 3 || b.size() < 3) {
    return false;
  }
  const FlatBox box_a = flat_box(a);
  const FlatBox box_b = flat_box(b);
  const Vec2 lowest = {std::min(box_a.lowest.x, box_b.lowest.x), std::min(box_a.lowest.y, box_b.lowest.y)};
  const Vec2 highest = {std::max(box_a.highest.x, box_b.highest.x), std::max(box_a.highest.y, box_b.highest.y)};
  const double reach =
      std::max(tolerance * std::min(thickness(a), thickness(b)), rounding_when_laid * glm::length(highest - lowest));
  if (box_a.highest.x <= box_b.lowest.x + reach || box_b.highest.x <= box_a.lowest.x + reach ||
      box_a.highest.y <= box_b.lowest.y + reach || box_b.highest.y <= box_a.lowest.y + reach) {
    return false;
  }
  if (is_convex(a) && is_convex(b)) {
    return convex_overlap(a, b, reach);
  }
  const std::vector<Polygon> pieces_b = convex_pieces(b);
  for (const Polygon& piece_a : convex_pieces(a)) {
    for (const Polygon& piece_b : pieces_b) {
      if (convex_overlap(piece_a, piece_b, reach)) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace fw::geometry
