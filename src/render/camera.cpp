#include "render/camera.hpp"

#include <algorithm>
#include <cmath>

namespace fw::render {
namespace {

using geometry::Vec2;
using geometry::Vec3;

/// Half of the picture's height at a distance of 1.
double half_height(const Camera& camera) { return std::tan(Camera::field_of_view_rad * 0.5) / camera.zoom; }

/// Where an eye must stand along one axis of the picture and along the view, so that all points are within it.
struct Reach {
  double toward = -1e300, away = -1e300;  ///< the tangent lines that bound the points on either side
  void take(double across, double depth, double slope) {
    toward = std::max(toward, across - slope * depth);
    away = std::max(away, -across - slope * depth);
  }
  [[nodiscard]] double depth_of_eye(double slope) const { return -(toward + away) / (2 * slope); }
  [[nodiscard]] double middle() const { return (toward - away) / 2; }
};

Camera fitted_to_view(Camera camera, const std::vector<Vec3>& points, double slope_x, double slope_y) {
  const Vec3 forward = camera.forward(), right = camera.right(), up = camera.up();
  Reach horizontal, vertical;
  double nearest = 1e300, farthest = -1e300;
  for (const Vec3& point : points) {
    const double depth = glm::dot(point, forward);
    horizontal.take(glm::dot(point, right), depth, slope_x);
    vertical.take(glm::dot(point, up), depth, slope_y);
    nearest = std::min(nearest, depth);
    farthest = std::max(farthest, depth);
  }
  // Points in a row along the view would let the eye come right up to the first of them.
  const double closest = nearest - 0.2 * (farthest - nearest);
  const double eye_depth = std::min({horizontal.depth_of_eye(slope_x), vertical.depth_of_eye(slope_y), closest});
  const double middle_depth = (nearest + farthest) / 2;
  camera.target = right * horizontal.middle() + up * vertical.middle() + forward * middle_depth;
  camera.distance = middle_depth - eye_depth;
  return camera;
}

Camera fitted_to_ball(Camera camera, const std::vector<Vec3>& points, double slope_x, double slope_y) {
  Vec3 lowest = points.front(), highest = points.front();
  for (const Vec3& point : points) {
    lowest = glm::min(lowest, point);
    highest = glm::max(highest, point);
  }
  camera.target = (lowest + highest) * 0.5;
  double radius = 0;
  for (const Vec3& point : points) radius = std::max(radius, glm::length(point - camera.target));
  camera.distance = radius / std::sin(std::atan(std::min(slope_x, slope_y)));
  return camera;
}

}  // namespace

Vec3 Camera::forward() const {
  return {-std::sin(yaw_rad) * std::cos(pitch_rad), std::cos(yaw_rad) * std::cos(pitch_rad), -std::sin(pitch_rad)};
}
Vec3 Camera::right() const { return {std::cos(yaw_rad), std::sin(yaw_rad), 0}; }
Vec3 Camera::up() const { return glm::cross(right(), forward()); }
Vec3 Camera::eye() const { return target - forward() * distance; }

Camera Camera::fitted(const std::vector<Vec3>& points, double aspect, double margin, Fit fit) const {
  Camera camera = *this;
  camera.zoom = 1;
  if (points.empty()) return camera;
  const double slope_y = half_height(camera) * (1 - std::clamp(margin, 0.0, 0.9));
  const double slope_x = slope_y * aspect;
  camera = fit == Fit::ThisView ? fitted_to_view(camera, points, slope_x, slope_y)
                                : fitted_to_ball(camera, points, slope_x, slope_y);
  // A single point has no size to go by, only rounding.
  if (!(camera.distance > 1e-12 * (1 + glm::length(camera.target)))) camera.distance = 1;
  return camera;
}

Camera Camera::orbited(double yaw_change_rad, double pitch_change_rad) const {
  constexpr double full_turn = 6.283185307179586;
  Camera camera = *this;
  camera.yaw_rad = std::remainder(yaw_rad + yaw_change_rad, full_turn);
  camera.pitch_rad = std::clamp(pitch_rad + pitch_change_rad, -steepest_pitch_rad, steepest_pitch_rad);
  return camera;
}

Camera Camera::zoomed(double factor) const {
  Camera camera = *this;
  camera.zoom = std::clamp(zoom * factor, least_zoom, greatest_zoom);
  return camera;
}

Camera Camera::panned(Vec2 shift_px, const Viewport& viewport) const {
  Camera camera = *this;
  camera.target += (up() * shift_px.y - right() * shift_px.x) / pixels_per_unit(distance, viewport);
  return camera;
}

geometry::Mat4 Camera::view_projection(double aspect) const {
  const Vec3 x = right(), y = up(), z = -forward(), from = eye();
  // GLM keeps columns.
  geometry::Mat4 view(1);
  for (glm::length_t axis = 0; axis < 3; ++axis) {
    view[axis][0] = x[axis];
    view[axis][1] = y[axis];
    view[axis][2] = z[axis];
  }
  view[3] = geometry::Vec4(-glm::dot(x, from), -glm::dot(y, from), -glm::dot(z, from), 1);
  const double focal = 1 / half_height(*this);
  const double front = near_plane(), back = far_plane();
  geometry::Mat4 projection(0);
  projection[0][0] = focal / aspect;
  projection[1][1] = focal;
  projection[2][2] = (back + front) / (front - back);
  projection[2][3] = -1;
  projection[3][2] = 2 * back * front / (front - back);
  return projection * view;
}

Projected Camera::project(Vec3 point, const Viewport& viewport) const {
  const Vec3 from_eye = point - eye();
  const double depth = glm::dot(from_eye, forward());
  const double scale = pixels_per_unit(depth, viewport);
  return {{viewport.width_px / 2 + glm::dot(from_eye, right()) * scale,
           viewport.height_px / 2 - glm::dot(from_eye, up()) * scale},
          depth};
}

geometry::Ray Camera::ray_through(Vec2 pixel, const Viewport& viewport) const {
  const double scale = pixels_per_unit(1, viewport);
  const Vec3 direction = forward() + right() * ((pixel.x - viewport.width_px / 2) / scale) +
                         up() * ((viewport.height_px / 2 - pixel.y) / scale);
  return {eye(), glm::normalize(direction)};
}

double Camera::pixels_per_unit(double depth, const Viewport& viewport) const {
  return viewport.height_px / (2 * half_height(*this) * depth);
}

}  // namespace fw::render
