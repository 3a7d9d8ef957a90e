#include "geometry/polygon.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/flat_math.hpp"

namespace fw::geometry {
namespace {

/// Whether the closed segments come nearer to each other than `reach`.
bool segments_meet(Vec2 a, Vec2 b, Vec2 c, Vec2 d, double reach) {
  const double side_c = cross(b - a, c - a);
  const double side_d = cross(b - a, d - a);
  const double side_a = cross(d - c, a - c);
  const double side_b = cross(d - c, b - c);
  if (((side_c > 0) != (side_d > 0)) && ((side_a > 0) != (side_b > 0))) {
    return true;
  }
  return std::min({distance_to_segment(c, a, b), distance_to_segment(d, a, b), distance_to_segment(a, c, d),
                   distance_to_segment(b, c, d)}) <= reach;
}

}  // namespace

double signed_area(const Polygon& polygon) {
  double twice = 0;
  for (std::size_t i = 2; i < polygon.size(); ++i) {
    twice += cross(polygon[i - 1] - polygon[0], polygon[i] - polygon[0]);
  }
  return twice / 2;
}

double perimeter(const Polygon& polygon) {
  double sum = 0;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    sum += glm::length(polygon[(i + 1) % polygon.size()] - polygon[i]);
  }
  return sum;
}

Vec2 centroid(const Polygon& polygon) {
  Vec2 weighted{0, 0};
  double twice = 0;
  for (std::size_t i = 2; i < polygon.size(); ++i) {
    const Vec2 second = polygon[i - 1] - polygon[0];
    const Vec2 third = polygon[i] - polygon[0];
    twice += cross(second, third);
    weighted += (second + third) * (cross(second, third) / 3);
  }
  return polygon[0] + weighted / twice;
}

bool is_convex(const Polygon& polygon) {
  const std::size_t count = polygon.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Vec2 in = polygon[(i + 1) % count] - polygon[i];
    const Vec2 out = polygon[(i + 2) % count] - polygon[(i + 1) % count];
    if (cross(in, out) < -tolerance * glm::length(in) * glm::length(out)) {
      return false;
    }
  }
  return count >= 3 && signed_area(polygon) > 0;
}

bool is_simple(const Polygon& polygon) {
  const std::size_t count = polygon.size();
  const double reach = rounding * diagonal(polygon);
  for (std::size_t i = 0; i < count; ++i) {
    const Vec2& a = polygon[i];
    const Vec2& b = polygon[(i + 1) % count];
    const Vec2& c = polygon[(i + 2) % count];
    // Neighbors meet at their corner; they must not run back over each other.
    if (glm::length(b - a) <= reach || distance_to_segment(c, a, b) <= reach || distance_to_segment(a, b, c) <= reach) {
      return false;
    }
    for (std::size_t j = i + 2; j < count && !(i == 0 && j + 1 == count); ++j) {
      if (segments_meet(a, b, polygon[j], polygon[(j + 1) % count], reach)) {
        return false;
      }
    }
  }
  return count >= 3;
}

bool contains(const Polygon& polygon, Vec2 point) {
  const FlatBox box = flat_box(polygon);
  const double reach = tolerance * glm::length(box.highest - box.lowest);
  if (glm::any(glm::lessThan(point, box.lowest - reach)) || glm::any(glm::greaterThan(point, box.highest + reach))) {
    return false;
  }
  bool inside = false;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec2& a = polygon[i];
    const Vec2& b = polygon[(i + 1) % polygon.size()];
    if (distance_to_segment(point, a, b) <= reach) {
      return true;
    }
    // Half-open in y, so that a ray through a corner counts it once.
    if ((a.y > point.y) != (b.y > point.y) && point.x < a.x + (b.x - a.x) * ((point.y - a.y) / (b.y - a.y))) {
      inside = !inside;
    }
  }
  return inside;
}

}  // namespace fw::geometry
