#include "figures/hatch.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "base/ensure.hpp"
#include "geometry/polygon.hpp"

namespace fw::figures {
namespace {

/// Chords of the polygon on the parallels to `direction` that lie `spacing` apart.
void add_parallels(const std::vector<Vec2>& polygon, Vec2 direction, double spacing, std::vector<Segment>& strokes) {
  const Vec2 across{-direction.y, direction.x};
  double low = std::numeric_limits<double>::max();
  double high = std::numeric_limits<double>::lowest();
  for (const Vec2& p : polygon) {
    low = std::min(low, glm::dot(p, across));
    high = std::max(high, glm::dot(p, across));
  }
  // Centered, so that a narrow face still gets a line.
  const double count = std::floor((high - low) / spacing);
  std::vector<double> along;
  for (double at = (low + high - count * spacing) / 2; at < high; at += spacing) {
    along.clear();
    for (std::size_t i = 0; i < polygon.size(); ++i) {
      const Vec2& a = polygon[i];
      const Vec2& b = polygon[(i + 1) % polygon.size()];
      const double side_a = glm::dot(a, across) - at;
      const double side_b = glm::dot(b, across) - at;
      if ((side_a < 0) == (side_b < 0)) continue;
      along.push_back(glm::dot(a + (b - a) * (side_a / (side_a - side_b)), direction));
    }
    std::sort(along.begin(), along.end());
    for (std::size_t i = 0; i + 1 < along.size(); i += 2) {
      strokes.push_back({direction * along[i] + across * at, direction * along[i + 1] + across * at});
    }
  }
}

double distance_to_border(const std::vector<Vec2>& polygon, Vec2 point) {
  double least = std::numeric_limits<double>::max();
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec2& a = polygon[i];
    const Vec2 ab = polygon[(i + 1) % polygon.size()] - a;
    const double length = glm::dot(ab, ab);
    const double t = length > 0 ? std::clamp(glm::dot(point - a, ab) / length, 0.0, 1.0) : 0.0;
    least = std::min(least, glm::distance(point, a + ab * t));
  }
  return least;
}

constexpr double dot_share = 0.16;  // of the spacing: the radius of a dot

void add_dots(const std::vector<Vec2>& polygon, double spacing, std::vector<Segment>& strokes) {
  const Rect box = bounding_rect(polygon);
  const double row_height = spacing * 0.866;
  const int rows = static_cast<int>(box.h / row_height);
  for (int row = 0; row <= rows; ++row) {
    const double y = box.y + (box.h - rows * row_height) / 2 + row * row_height;
    for (double x = box.x + (row % 2 == 0 ? 0.25 : 0.75) * spacing; x < box.right(); x += spacing) {
      const Vec2 dot{x, y};
      if (geometry::contains(polygon, dot) && distance_to_border(polygon, dot) > dot_share * spacing) {
        strokes.push_back({dot, dot});
      }
    }
  }
}

}  // namespace

std::vector<Segment> hatch_strokes(const std::vector<Vec2>& polygon, Hatch hatch, double spacing) {
  ensure(spacing > 0, "a hatch needs a spacing");
  constexpr double diagonal = 0.70710678118654752;
  std::vector<Segment> strokes;
  switch (hatch) {
    case Hatch::None:
      break;
    case Hatch::Rising:
      add_parallels(polygon, {diagonal, -diagonal}, spacing, strokes);
      break;
    case Hatch::Level:
      add_parallels(polygon, {1, 0}, spacing, strokes);
      break;
    case Hatch::Dots:
      add_dots(polygon, spacing, strokes);
      break;
    case Hatch::Falling:
      add_parallels(polygon, {diagonal, diagonal}, spacing, strokes);
      break;
    case Hatch::Crossed:
      add_parallels(polygon, {diagonal, -diagonal}, spacing, strokes);
      add_parallels(polygon, {diagonal, diagonal}, spacing, strokes);
      break;
  }
  return strokes;
}

void draw_hatch(Canvas& canvas, const std::vector<Vec2>& polygon, Hatch hatch, double spacing, const Stroke& stroke) {
  for (const Segment& line : hatch_strokes(polygon, hatch, spacing)) {
    if (hatch == Hatch::Dots) {
      canvas.circle(line.from, dot_share * spacing, stroke.color, std::nullopt);
    } else {
      canvas.line(line.from, line.to, stroke);
    }
  }
}

}  // namespace fw::figures
