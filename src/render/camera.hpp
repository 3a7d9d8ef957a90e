#pragma once

#include <vector>

#include "geometry/ray.hpp"
#include "geometry/vectors.hpp"

namespace fw::render {

/// The part of the screen that the bench fills; pixels count from its upper left corner, y down.
struct Viewport {
  double width_px = 1;
  double height_px = 1;
  [[nodiscard]] double aspect() const { return width_px / height_px; }
  friend bool operator==(const Viewport&, const Viewport&) = default;
};

/// A point of space on the screen.
struct Projected {
  geometry::Vec2 pixel{};
  double depth = 0;  ///< distance from the eye along the view direction; `pixel` means nothing unless it is positive
};

/// What fitted() makes room for.
enum class Fit {
  ThisView,   ///< as large as it can be seen from here
  EveryView,  ///< nothing leaves the picture, nor changes size, however the bench is turned
};

/// An eye that circles round a target, with z up. A value: turning gives another camera.
/// The field of view is narrow, so that solids look as textbooks draw them, yet show which end is near.
struct Camera {
  /// Seen from the front (-y) at 0; grows toward the right-hand side (+x). The default shows front, right and top.
  double yaw_rad = 0.47;
  double pitch_rad = 0.38;  ///< seen from above when positive; straight down at steepest_pitch_rad, never beyond
  double zoom = 1;          ///< enlarges the picture about its middle; the perspective stays as it is
  geometry::Vec3 target{};
  double distance = 10;  ///< from the eye to the target, in model units

  static constexpr double field_of_view_rad = 0.4363;  ///< of the picture's height, at zoom 1: 25 degrees
  static constexpr double steepest_pitch_rad =
      1.5707963267948966;  ///< a right angle; up() is then where the yaw points
  static constexpr double least_zoom = 0.25;
  static constexpr double greatest_zoom = 12;

  [[nodiscard]] geometry::Vec3 eye() const;
  [[nodiscard]] geometry::Vec3 forward() const;  ///< length 1, as right() and up()
  [[nodiscard]] geometry::Vec3 right() const;
  [[nodiscard]] geometry::Vec3 up() const;
  [[nodiscard]] double near_plane() const { return distance * 0.02; }
  [[nodiscard]] double far_plane() const { return distance * 50; }

  /// The same view direction at zoom 1, moved so that all points are inside the picture with `margin` (a share of
  /// the picture's half size, 0 to 0.9) left free on every side.
  [[nodiscard]] Camera fitted(const std::vector<geometry::Vec3>& points, double aspect, double margin,
                              Fit fit = Fit::ThisView) const;
  [[nodiscard]] Camera orbited(double yaw_change_rad, double pitch_change_rad) const;
  [[nodiscard]] Camera zoomed(double factor) const;
  /// Moves the picture by that many pixels (x right, y down), in the plane of the target.
  [[nodiscard]] Camera panned(geometry::Vec2 shift_px, const Viewport& viewport) const;

  /// To clip coordinates as OpenGL has them: x, y, z from -1 to 1 after the division.
  [[nodiscard]] geometry::Mat4 view_projection(double aspect) const;
  [[nodiscard]] Projected project(geometry::Vec3 point, const Viewport& viewport) const;
  /// The ray from the eye through a pixel; direction of length 1.
  [[nodiscard]] geometry::Ray ray_through(geometry::Vec2 pixel, const Viewport& viewport) const;
  /// How many pixels a model unit is long at a depth of project().
  [[nodiscard]] double pixels_per_unit(double depth, const Viewport& viewport) const;

  friend bool operator==(const Camera&, const Camera&) = default;
};

}  // namespace fw::render
