#include "render/camera.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "support/polyhedra.hpp"

namespace fw::render::camera_test {
namespace {

using geometry::Vec2;
using geometry::Vec3;

double between(double low, double high) {
  return low + (high - low) * static_cast<double>(*rc::gen::inRange(0, 100001)) / 100000;
}
Camera any_camera() {
  Camera camera;
  camera.yaw_rad = between(-3.2, 3.2);
  camera.pitch_rad = between(-Camera::steepest_pitch_rad, Camera::steepest_pitch_rad);
  camera.zoom = between(0.3, 5);
  camera.target = {between(-50, 50), between(-50, 50), between(-50, 50)};
  camera.distance = between(0.1, 1000);
  return camera;
}
Viewport any_viewport() { return {between(50, 4000), between(50, 3000)}; }

TEST(Camera, DefaultViewShowsFrontRightAndTop) {
  const Vec3 eye = Camera{}.eye();
  EXPECT_LT(eye.y, 0) << "the front is -y";
  EXPECT_GT(eye.x, 0);
  EXPECT_GT(eye.z, 0);
  const Viewport viewport{800, 600};
  const Vec2 middle = Camera{}.project({0, 0, 0}, viewport).pixel;
  EXPECT_GT(Camera{}.project({1, 0, 0}, viewport).pixel.x, middle.x) << "+x runs to the right";
  EXPECT_LT(Camera{}.project({0, 0, 1}, viewport).pixel.y, middle.y) << "+z runs up, pixels count down";
}

TEST(Camera, TargetIsTheMiddleOfThePicture) {
  Camera camera;
  camera.target = {3, -4, 5};
  const Projected middle = camera.project(camera.target, {640, 480});
  EXPECT_NEAR(middle.pixel.x, 320, 1e-9);
  EXPECT_NEAR(middle.pixel.y, 240, 1e-9);
  EXPECT_NEAR(middle.depth, camera.distance, 1e-9);
}

RC_GTEST_PROP(Camera, AxesAreSquareAndRightHanded, ()) {
  const Camera camera = any_camera();
  RC_ASSERT(std::abs(glm::length(camera.forward()) - 1) < 1e-12);
  RC_ASSERT(std::abs(glm::dot(camera.right(), camera.forward())) < 1e-12);
  RC_ASSERT(glm::length(glm::cross(camera.right(), camera.up()) + camera.forward()) < 1e-12);
  RC_ASSERT(camera.up().z > 0);
}

RC_GTEST_PROP(Camera, RayThroughAPixelMeetsWhatIsProjectedThere, ()) {
  const Camera camera = any_camera();
  const Viewport viewport = any_viewport();
  const Vec2 pixel{between(0, viewport.width_px), between(0, viewport.height_px)};
  const geometry::Ray ray = camera.ray_through(pixel, viewport);
  const Vec3 point = ray.origin + ray.direction * (camera.distance * between(0.1, 10));
  const Projected found = camera.project(point, viewport);
  RC_ASSERT(found.depth > 0);
  RC_ASSERT(glm::length(found.pixel - pixel) < 1e-6 * viewport.width_px);
}

RC_GTEST_PROP(Camera, MatrixAndProjectionAgree, ()) {
  const Camera camera = any_camera();
  const Viewport viewport = any_viewport();
  const Vec2 pixel{between(0, viewport.width_px), between(0, viewport.height_px)};
  const geometry::Ray ray = camera.ray_through(pixel, viewport);
  const Vec3 point = ray.origin + ray.direction * (camera.distance * between(0.1, 10));
  const auto clip = camera.view_projection(viewport.aspect()) * geometry::Vec4(point, 1);
  RC_ASSERT(std::abs((clip.x / clip.w + 1) / 2 * viewport.width_px - pixel.x) < 1e-6 * viewport.width_px);
  RC_ASSERT(std::abs((1 - clip.y / clip.w) / 2 * viewport.height_px - pixel.y) < 1e-6 * viewport.width_px);
  RC_ASSERT(std::abs(clip.z) < clip.w);
}

/// The largest share of the picture's half size that a point is from the middle; huge behind the eye.
double widest_share(const Camera& camera, const std::vector<Vec3>& points, const Viewport& viewport) {
  double widest = 0;
  for (const Vec3& point : points) {
    const Projected found = camera.project(point, viewport);
    if (found.depth <= camera.near_plane()) return 1e9;
    widest = std::max({widest, std::abs(found.pixel.x / viewport.width_px * 2 - 1),
                       std::abs(found.pixel.y / viewport.height_px * 2 - 1)});
  }
  return widest;
}

RC_GTEST_PROP(Camera, FittedBoxFillsThePictureUpToTheMargin, ()) {
  const Camera camera = any_camera();
  const Viewport viewport{between(300, 900), between(300, 900)};
  const double margin = between(0, 0.5);
  const Vec3 size{between(2, 9), between(2, 9), between(2, 9)};
  const Vec3 corner{between(-90, 90), between(-90, 90), between(-90, 90)};
  std::vector<Vec3> points;
  for (unsigned i = 0; i < 8; ++i) {
    points.push_back(corner + size * Vec3((i & 1U) != 0 ? 1 : 0, (i & 2U) != 0 ? 1 : 0, (i & 4U) != 0 ? 1 : 0));
  }
  const Camera fitted = camera.fitted(points, viewport.aspect(), margin);
  RC_ASSERT(std::abs(widest_share(fitted, points, viewport) - (1 - margin)) < 1e-6);
  RC_ASSERT(fitted.yaw_rad == camera.yaw_rad && fitted.pitch_rad == camera.pitch_rad && fitted.zoom == 1);
}

RC_GTEST_PROP(Camera, AnyFittedPointsAreInsideAndBeforeTheEye, ()) {
  const Camera camera = any_camera();
  const Viewport viewport = any_viewport();
  const double margin = between(0, 0.5);
  std::vector<Vec3> points;
  const int count = *rc::gen::inRange(1, 12);
  for (int i = 0; i < count; ++i) points.push_back({between(-9, 9), between(-9, 9), between(-9, 9)});
  RC_ASSERT(widest_share(camera.fitted(points, viewport.aspect(), margin), points, viewport) < 1 - margin + 1e-6);
}

RC_GTEST_PROP(Camera, FitForEveryViewHoldsHoweverItIsTurned, ()) {
  const Viewport viewport = any_viewport();
  std::vector<Vec3> points;
  for (int i = 0; i < 6; ++i) points.push_back({between(-9, 9), between(-9, 9), between(-9, 9)});
  RC_PRE(glm::length(points[0] - points[1]) > 0.1);
  const Camera turned =
      any_camera().fitted(points, viewport.aspect(), 0.1, Fit::EveryView).orbited(between(-4, 4), between(-2, 2));
  for (const Vec3& point : points) {
    const Projected found = turned.project(point, viewport);
    RC_ASSERT(std::abs(found.pixel.x / viewport.width_px * 2 - 1) < 0.9 + 1e-6);
    RC_ASSERT(std::abs(found.pixel.y / viewport.height_px * 2 - 1) < 0.9 + 1e-6);
  }
}

TEST(Camera, FitOfOnePointOrNoneStaysUsable) {
  EXPECT_GT(Camera{}.fitted({{1, 2, 3}}, 1.5, 0.1).distance, 0);
  EXPECT_GT(Camera{}.fitted({{1, 2, 3}}, 1.5, 0.1, Fit::EveryView).distance, 0);
  EXPECT_EQ(Camera{}.fitted({}, 1.5, 0.1), Camera{});
}

TEST(Camera, TurningStopsShortOfThePoles) {
  EXPECT_DOUBLE_EQ(Camera{}.orbited(0, 9).pitch_rad, Camera::steepest_pitch_rad);
  EXPECT_DOUBLE_EQ(Camera{}.orbited(0, -9).pitch_rad, -Camera::steepest_pitch_rad);
  EXPECT_NEAR(glm::length(Camera{}.orbited(2 * test::pi, 0).eye() - Camera{}.eye()), 0, 1e-9);
}

TEST(Camera, ZoomEnlargesAboutTheMiddle) {
  const Viewport viewport{800, 600};
  const Vec3 point{1, 0.5, -0.3};
  const Vec2 before = Camera{}.project(point, viewport).pixel - Vec2(400, 300);
  const Vec2 after = Camera{}.zoomed(2).project(point, viewport).pixel - Vec2(400, 300);
  EXPECT_NEAR(glm::length(after - before * 2.0), 0, 1e-9);
  EXPECT_DOUBLE_EQ(Camera{}.zoomed(1e9).zoom, Camera::greatest_zoom);
  EXPECT_DOUBLE_EQ(Camera{}.zoomed(1e-9).zoom, Camera::least_zoom);
}

TEST(Camera, PanningCarriesTheTargetAlong) {
  const Viewport viewport{800, 600};
  const Camera moved = Camera{}.zoomed(1.7).panned({30, -20}, viewport);
  const Vec2 target = moved.project(Camera{}.target, viewport).pixel;
  EXPECT_NEAR(target.x, 430, 1e-6);
  EXPECT_NEAR(target.y, 280, 1e-6);
}

}  // namespace
}  // namespace fw::render::camera_test
