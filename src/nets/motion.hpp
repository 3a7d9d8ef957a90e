#pragma once

#include <cmath>

#include "geometry/vectors.hpp"

// Turning about hinges; private to the room.
namespace fw::nets {

using geometry::Vec3;

/// A motion of space: turn, then shift.
struct Motion {
  Vec3 right{1, 0, 0}, up{0, 1, 0}, out{0, 0, 1};  ///< where the axes go
  Vec3 shift{0, 0, 0};
  [[nodiscard]] Vec3 turned(Vec3 way) const { return right * way.x + up * way.y + out * way.z; }
  [[nodiscard]] Vec3 moved(Vec3 point) const { return turned(point) + shift; }
};

/// Source: Rodrigues' rotation formula.
[[nodiscard]] inline Vec3 turned_about(Vec3 way, Vec3 axis, double angle_rad) {
  const double cosine = std::cos(angle_rad);
  return way * cosine + glm::cross(axis, way) * std::sin(angle_rad) + axis * (glm::dot(axis, way) * (1 - cosine));
}

/// First the turn by an angle about the line through `from` along `axis`, then `after`.
[[nodiscard]] inline Motion hinge_motion(const Motion& after, Vec3 from, Vec3 axis, double angle_rad) {
  const auto turned = [&](Vec3 way) { return turned_about(way, axis, angle_rad); };
  const Vec3 shift = from - turned(from);
  return {after.turned(turned({1, 0, 0})), after.turned(turned({0, 1, 0})), after.turned(turned({0, 0, 1})),
          after.moved(shift)};
}

}  // namespace fw::nets
