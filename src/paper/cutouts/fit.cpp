#include "paper/cutouts/fit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace fw::paper {
namespace {

/// How wide and high the turned hull is, and the corners that it goes by.
struct Extent {
  double width = 0, height = 0;
  Vec2 across{},
      up{};  ///< of the hull as it is: from the leftmost corner to the rightmost, from the lowest to the highest
};

Extent extent_at(const Polygon& hull, double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  constexpr double far = std::numeric_limits<double>::max();
  double least_x = far;
  double most_x = -far;
  double least_y = far;
  double most_y = -far;
  Vec2 left{};
  Vec2 right{};
  Vec2 low{};
  Vec2 high{};
  for (const Vec2& p : hull) {
    const double x = c * p.x - s * p.y;
    const double y = s * p.x + c * p.y;
    if (x < least_x) {
      least_x = x;
      left = p;
    }
    if (x > most_x) {
      most_x = x;
      right = p;
    }
    if (y < least_y) {
      least_y = y;
      low = p;
    }
    if (y > most_y) {
      most_y = y;
      high = p;
    }
  }
  return {most_x - least_x, most_y - least_y, right - left, high - low};
}

}  // namespace

Polygon convex_hull(std::vector<Vec2> points) {
  std::sort(points.begin(), points.end(), [](Vec2 a, Vec2 b) { return a.x < b.x || (a.x == b.x && a.y < b.y); });
  const auto turns_right = [](Vec2 a, Vec2 b, Vec2 c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) <= 0;
  };
  Polygon hull;
  for (const bool is_upper : {false, true}) {
    const std::size_t begin = hull.size();
    for (const Vec2& point : points) {
      while (hull.size() >= begin + 2 && turns_right(hull[hull.size() - 2], hull.back(), point)) {
        hull.pop_back();
      }
      hull.push_back(point);
    }
    hull.pop_back();
    if (!is_upper) {
      std::reverse(points.begin(), points.end());
    }
  }
  return hull;
}

Fit best_fit(const Polygon& hull, double width, double height) {
  constexpr double quarter = std::numbers::pi / 2;
  std::vector<double> turns{0};
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Vec2 side = hull[(i + 1) % hull.size()] - hull[i];
    double turn = std::fmod(-std::atan2(side.y, side.x), quarter);
    turns.push_back(turn < 0 ? turn + quarter : turn);
  }
  std::sort(turns.begin(), turns.end());
  turns.push_back(turns.front() + quarter);
  Fit best;
  const auto take = [&](double angle) {
    const Extent extent = extent_at(hull, angle);
    const double scale = std::min(width / extent.width, height / extent.height);
    if (scale > best.scale * (1 + 1e-12)) {
      best = {scale, angle};
    }
  };
  // A quarter turn makes a difference unless the box is square.
  for (const double more : {0.0, quarter}) {
    for (std::size_t i = 0; i + 1 < turns.size(); ++i) {
      take(turns[i] + more);
      const Extent extent = extent_at(hull, (turns[i] + turns[i + 1]) / 2 + more);
      // width · extent height = height · extent width, with sines and cosines of the turn
      const double c = height * extent.across.x - width * extent.up.y;
      const double s = height * extent.across.y + width * extent.up.x;
      double angle = std::atan2(c, s);
      while (angle < turns[i] + more) {
        angle += std::numbers::pi;
      }
      while (angle > turns[i + 1] + more) {
        angle -= std::numbers::pi;
      }
      if (angle >= turns[i] + more) {
        take(angle);
      }
    }
  }
  return best;
}

Vec2 turned(Vec2 point, double angle_rad) {
  const double c = std::cos(angle_rad);
  const double s = std::sin(angle_rad);
  return {c * point.x - s * point.y, s * point.x + c * point.y};
}

}  // namespace fw::paper
