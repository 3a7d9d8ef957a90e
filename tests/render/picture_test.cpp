#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>

#include "bench_support.hpp"
#include "gl_support.hpp"
#include "support/polyhedra.hpp"

namespace fw::render::picture_test {
namespace {

using geometry::Vec2;
using test::opened;
using test::plain_look;
using test::Studio;

constexpr Color white{1, 1, 1, 1};
constexpr Color black{0, 0, 0, 1};

Camera camera_for(const nets::Pose& pose, const Viewport& viewport) {
  return Camera{}.fitted(test::all_corners(pose), viewport.aspect(), 0.1);
}

// Which face each pixel shows: what the graphics driver says, and what a ray says.
TEST(PictureGl, FaceIdsAgreeWithRaysSlow) {
  const Studio studio(200, 150);
  for (const auto& sample : test::sample_solids()) {
    for (const double amount : {0.0, 0.3, 0.9}) {
      SCOPED_TRACE(sample.name + " opened by " + std::to_string(amount));
      const nets::Pose pose = opened(sample.solid, amount);
      const Camera camera = camera_for(pose, studio.viewport());
      const Picture ids = studio.face_ids(bench_scene(plain_look(pose, 1), camera));
      std::set<std::size_t> seen;
      int wrong = 0;
      for (int y = 0; y < ids.height; ++y) {
        for (int x = 0; x < ids.width; ++x) {
          const Vec2 pixel{x + 0.5, y + 0.5};
          const auto hit = geometry::nearest_hit(pose, camera.ray_through(pixel, studio.viewport()));
          const std::size_t by_ray = hit ? hit->face.index() + 1 : 0;
          const auto color = ids.at(x, y);
          const std::size_t by_driver = color[0] + 256U * color[1];
          seen.insert(by_driver);
          if (by_ray == by_driver) continue;
          ++wrong;
          ASSERT_LE(test::pixels_to_a_side(pose, camera, studio.viewport(), pixel), 1.5)
              << "pixel " << x << ", " << y << ": face " << by_driver << " drawn, " << by_ray << " by ray";
        }
      }
      EXPECT_GE(seen.size(), 2U) << "the ground and a face at least";
      EXPECT_LT(wrong, ids.width * ids.height / 50);
    }
  }
}

// The color of a pixel is that of all faces behind it, laid over each other from the farthest on.
void expect_layers(const Studio& studio, const nets::Pose& pose, float opacity, const Color& ground) {
  const Camera camera = camera_for(pose, studio.viewport());
  const BenchLook look = plain_look(pose, opacity);
  const Scene scene = bench_scene(look, camera);
  const Picture picture = studio.drawn(scene, ground);
  int probed = 0;
  for (int y = 2; y < picture.height; y += 5) {
    for (int x = 2; x < picture.width; x += 5) {
      const Vec2 pixel{x + 0.5, y + 0.5};
      if (test::pixels_to_a_side(pose, camera, studio.viewport(), pixel) < 1.5) continue;
      Color expected = ground;
      for (const test::Met& met : test::faces_met(pose, camera.ray_through(pixel, studio.viewport()))) {
        const Vec3 normal =
            glm::normalize(glm::cross(pose[met.face][1] - pose[met.face][0], pose[met.face][2] - pose[met.face][1]));
        expected = over(shaded(look.looks[met.face].fill, normal, camera), expected);
        ++probed;
      }
      const auto color = picture.at(x, y);
      ASSERT_NEAR(color[0], expected.r * 255, 3) << x << ", " << y;
      ASSERT_NEAR(color[1], expected.g * 255, 3) << x << ", " << y;
      ASSERT_NEAR(color[2], expected.b * 255, 3) << x << ", " << y;
    }
  }
  EXPECT_GT(probed, 20);
}

TEST(PictureGl, TranslucentFacesShowWhatLiesBehindInOrder) {
  const Studio studio(200, 150);
  for (const auto& sample : test::sample_solids()) {
    for (const double amount : {0.0, 0.25, 0.6, 1.0}) {
      if (amount > 0 && test::overlaps_itself(sample.solid)) continue;  // its faces pass through each other
      SCOPED_TRACE(sample.name + " opened by " + std::to_string(amount));
      expect_layers(studio, opened(sample.solid, amount), 0.7F, Color::hex(0xFBF9F4));
    }
  }
}

TEST(PictureGl, LabelPointsHaveTheColorOfTheirFace) {
  const Studio studio(300, 240);
  for (const auto& sample : test::sample_solids()) {
    SCOPED_TRACE(sample.name);
    const nets::Pose pose = opened(sample.solid, 0);
    const Camera camera = camera_for(pose, studio.viewport());
    BenchLook look = plain_look(pose, 1);
    look.edge = {black, 2, 0, 0};
    const Picture picture = studio.drawn(bench_scene(look, camera), white);
    int probed = 0;
    for (std::size_t i = 0; i < pose.size(); ++i) {
      const FaceId face = FaceId::at(i);
      const Vec3 point = face_plane(sample.solid, face).lifted(geometry::label_point(flat_face(sample.solid, face)));
      const Vec2 pixel = camera.project(point, studio.viewport()).pixel;
      const auto hit = geometry::nearest_hit(pose, camera.ray_through(pixel, studio.viewport()));
      if (!hit || hit->face != face) continue;
      if (test::pixels_to_a_side(pose, camera, studio.viewport(), pixel) < 4) continue;
      const Color expected = shaded(look.looks[i].fill, sample.solid.normal(face), camera);
      const auto color = picture.at(static_cast<int>(pixel.x), static_cast<int>(pixel.y));
      EXPECT_NEAR(color[0], expected.r * 255, 3);
      EXPECT_NEAR(color[1], expected.g * 255, 3);
      EXPECT_NEAR(color[2], expected.b * 255, 3);
      ++probed;
    }
    EXPECT_GE(probed, 1);
  }
}

/// How often the picture turns from light to dark along a line, walked in half pixels.
int dark_runs(const Picture& picture, Vec2 from, Vec2 to) {
  int runs = 0;
  bool was_dark = false;
  const int steps = static_cast<int>(glm::length(to - from) * 2);
  for (int i = 0; i <= steps; ++i) {
    const Vec2 at = from + (to - from) * (static_cast<double>(i) / steps);
    const bool is_dark = picture.at(static_cast<int>(at.x), static_cast<int>(at.y))[0] < 128;
    if (is_dark && !was_dark) ++runs;
    was_dark = is_dark;
  }
  return runs;
}

TEST(PictureGl, VisibleEdgesAreUnbrokenAndHiddenOnesDashed) {
  const Studio studio(400, 400);
  const auto solid = test::cube();
  const nets::Pose pose = opened(solid, 0);
  const Camera camera = camera_for(pose, studio.viewport());
  BenchLook look = plain_look(pose, 0.8F);
  for (FaceLook& face : look.looks) face.fill = {0.9F, 0.9F, 0.9F, 0.8F};
  look.edge = {black, 4, 0, 0};
  look.hidden_edge = Stroke{black, 2, 8, 6};
  const Picture picture = studio.drawn(bench_scene(look, camera), white);
  int visible = 0, hidden = 0;
  for (const geometry::Edge& edge : solid.edges()) {
    const auto faces_eye = [&](FaceId face) {
      return glm::dot(solid.normal(face), camera.eye() - solid.corners(face)[0]) > 0;
    };
    const Vec2 from = camera.project(solid.vertices()[edge.from], studio.viewport()).pixel;
    const Vec2 to = camera.project(solid.vertices()[edge.to], studio.viewport()).pixel;
    const Vec2 inward = (to - from) * 0.08;  // the ends belong to other edges as well
    const int runs = dark_runs(picture, from + inward, to - inward);
    if (faces_eye(edge.left) || faces_eye(edge.right)) {
      EXPECT_EQ(runs, 1) << "a visible edge";
      ++visible;
    } else {
      const double expected = glm::length(to - from) * 0.84 / 14;
      EXPECT_NEAR(runs, expected, 1.5) << "a hidden edge";
      EXPECT_GE(runs, 3);
      ++hidden;
    }
  }
  EXPECT_EQ(visible, 9);
  EXPECT_EQ(hidden, 3);
}

TEST(PictureGl, LinesAreAsWideAsAsked) {
  const Studio studio(200, 200);
  Camera camera;
  camera.yaw_rad = camera.pitch_rad = 0;
  for (const float width : {1.0F, 2.0F, 3.5F, 8.0F}) {
    BenchLook look;
    look.lines.push_back({{-5, 0, 0.013}, {5, 0, 0.013}, {black, width, 0, 0}, std::nullopt});
    const Picture picture = studio.drawn(bench_scene(look, camera), white);
    double ink = 0;
    for (int y = 0; y < 200; ++y) ink += 1 - picture.at(100, y)[0] / 255.0;
    EXPECT_NEAR(ink, width, 0.12);
  }
}

TEST(PictureGl, HeightInsideIsHiddenAndNotDrawnUnlessAsked) {
  const Studio studio(300, 300);
  const nets::Pose pose = opened(test::pyramid(4, 1.5), 0);
  const Camera camera = camera_for(pose, studio.viewport());
  BenchLook look = plain_look(pose, 0.5F);
  for (FaceLook& face : look.looks) face.fill = {0.9F, 0.9F, 0.9F, 0.5F};
  const Picture without = studio.drawn(bench_scene(look, camera), white);
  look.lines.push_back({{0, 0, 1.5}, {0, 0, 0}, {black, 3, 6, 4}, std::nullopt});
  EXPECT_LT(
      dark_runs(studio.drawn(bench_scene(look, camera), white), camera.project({0, 0, 1.2}, studio.viewport()).pixel,
                camera.project({0, 0, 0.2}, studio.viewport()).pixel),
      1);
  look.lines.back().hidden = look.lines.back().stroke;
  const Picture with = studio.drawn(bench_scene(look, camera), white);
  EXPECT_GE(dark_runs(with, camera.project({0, 0, 1.2}, studio.viewport()).pixel,
                      camera.project({0, 0, 0.2}, studio.viewport()).pixel),
            4);
  EXPECT_NE(with, without);
}

// The front of a box, seen straight on, so that a model unit is the same number of pixels everywhere on it.
Picture hatched_front(const Studio& studio, Hatch hatch, float period) {
  const auto solid = test::box(4, 4, 4);
  const nets::Pose pose = opened(solid, 0);
  BenchLook look = plain_look(pose, 1);
  for (std::size_t i = 0; i < pose.size(); ++i) {
    look.looks[i].fill = white;
    look.looks[i].hatch = hatch;
    look.looks[i].hatch_ink = black;
    look.looks[i].hatch_period = period;
    look.flat_faces.push_back(flat_face(solid, FaceId::at(i)));
  }
  Camera camera;
  camera.yaw_rad = camera.pitch_rad = 0;
  const auto box = geometry::bounding_box(test::all_corners(pose));
  camera.target = box.center();
  camera.distance = 12;
  return studio.drawn(bench_scene(look, camera), white);
}

double mean_darkness(const Picture& picture, double lit) {
  double sum = 0;
  for (int y = 100; y < 300; ++y) {
    for (int x = 100; x < 300; ++x) sum += 1 - picture.at(x, y)[0] / (255.0 * lit);
  }
  return sum / 40000;
}

TEST(PictureGl, HatchesCoverTheirShareAtEverySize) {
  const Studio studio(400, 400);
  Camera straight;
  straight.yaw_rad = straight.pitch_rad = 0;
  const double lit = shaded(white, {0, -1, 0}, straight).r;
  for (const float period : {0.5F, 0.2F, 0.05F, 0.003F}) {
    SCOPED_TRACE(period);
    EXPECT_NEAR(mean_darkness(hatched_front(studio, Hatch::None, period), lit), 0, 0.01);
    for (const Hatch lines : {Hatch::Rising, Hatch::Level, Hatch::Falling}) {
      EXPECT_NEAR(mean_darkness(hatched_front(studio, lines, period), lit), 0.10, 0.035);
    }
    EXPECT_NEAR(mean_darkness(hatched_front(studio, Hatch::Dots, period), lit), 0.080, 0.035);
    const double crossed = mean_darkness(hatched_front(studio, Hatch::Crossed, period), lit);
    EXPECT_GT(crossed, period > 0.1F ? 0.15 : 0.08);
    EXPECT_LT(crossed, 0.24);
  }
}

TEST(PictureGl, HatchesRunTheWayTheirNamesSay) {
  const Studio studio(400, 400);
  const auto unchanged_along = [&](Hatch hatch, int right, int up) {
    const Picture picture = hatched_front(studio, hatch, 0.5F);
    double difference = 0;
    for (int y = 150; y < 250; ++y) {
      for (int x = 150; x < 250; ++x) {
        difference += std::abs(picture.at(x, y)[0] - picture.at(x + 20 * right, y - 20 * up)[0]);
      }
    }
    return difference / 10000 < 1.5;
  };
  EXPECT_TRUE(unchanged_along(Hatch::Rising, 1, 1));
  EXPECT_FALSE(unchanged_along(Hatch::Rising, 1, -1));
  EXPECT_TRUE(unchanged_along(Hatch::Falling, 1, -1));
  EXPECT_FALSE(unchanged_along(Hatch::Falling, 1, 1));
  EXPECT_TRUE(unchanged_along(Hatch::Level, 1, 0));
  EXPECT_FALSE(unchanged_along(Hatch::Level, 0, 1));
  EXPECT_FALSE(unchanged_along(Hatch::Crossed, 1, 1));
  EXPECT_FALSE(unchanged_along(Hatch::Dots, 1, 0));
}

BenchLook everything(const nets::Pose& pose) {
  BenchLook look = plain_look(pose, 0.75F);
  for (std::size_t i = 0; i < look.looks.size(); ++i) {
    look.looks[i].hatch = static_cast<Hatch>(i % 6);
    look.looks[i].hatch_ink = black;
    look.looks[i].hatch_period = 0.2F;
  }
  look.edge = {Color::hex(0x1A1D26), 4, 0, 0};
  look.hidden_edge = Stroke{Color::hex(0x1A1D26), 2, 8, 6};
  look.lines.push_back({{0, 0, 0}, {0.3, 0.2, 0.9}, look.edge, look.hidden_edge});
  return look;
}

TEST(PictureGl, CoreAndEsDrawTheSamePicture) {
  const nets::Pose pose = opened(test::dodecahedron(), 0.2);
  const auto picture_of = [&](gl::Dialect dialect) {
    const Studio studio(320, 240, dialect);
    return studio.drawn(bench_scene(everything(pose), camera_for(pose, studio.viewport())), Color::hex(0xFBF9F4));
  };
  const Picture core = picture_of(gl::Dialect::Core33);
  const Picture es = picture_of(gl::Dialect::Es30);
  ASSERT_EQ(core.rgba.size(), es.rgba.size());
  int most = 0;
  for (std::size_t i = 0; i < core.rgba.size(); ++i) most = std::max(most, std::abs(core.rgba[i] - es.rgba[i]));
  EXPECT_LE(most, 1);
}

TEST(PictureGl, OverNoGroundThenOverAColorIsTheSameAsOverTheColor) {
  const Studio studio(320, 240);
  const nets::Pose pose = opened(test::dodecahedron(), 0.2);
  const Scene scene = bench_scene(everything(pose), camera_for(pose, studio.viewport()));
  const Color ground = Color::hex(0x14171F);
  const Picture direct = studio.drawn(scene, ground);
  const Picture loose = studio.drawn(scene, {0, 0, 0, 0});
  for (int y = 0; y < 240; ++y) {
    for (int x = 0; x < 320; ++x) {
      const auto color = loose.at(x, y);
      const double below = 1 - color[3] / 255.0;
      ASSERT_NEAR(direct.at(x, y)[0], color[0] + below * static_cast<double>(ground.r) * 255, 2.5);
      ASSERT_NEAR(direct.at(x, y)[2], color[2] + below * static_cast<double>(ground.b) * 255, 2.5);
    }
  }
}

TEST(PictureGl, DrawsInItsRectangleAloneAndTheSameThere) {
  const Studio studio(300, 200);
  const nets::Pose pose = opened(test::cube(), 0.1);
  const Scene scene = bench_scene(everything(pose), camera_for(pose, {100, 80}).zoomed(3));
  studio.target().begin(white);
  studio.painter().draw(scene, {50, 30, 100, 80});
  const Picture part = studio.target().read_back();
  const Studio small(100, 80);
  const Picture alone = small.drawn(scene, white);
  for (int y = 0; y < 200; ++y) {
    for (int x = 0; x < 300; ++x) {
      const int inside_x = x - 50, inside_y = y - (200 - 30 - 80);
      const bool is_inside = inside_x >= 0 && inside_x < 100 && inside_y >= 0 && inside_y < 80;
      const auto expected = is_inside ? alone.at(inside_x, inside_y) : std::array<std::uint8_t, 4>{255, 255, 255, 255};
      for (std::size_t i = 0; i < 4; ++i) ASSERT_NEAR(part.at(x, y)[i], expected[i], 1) << x << ", " << y;
    }
  }
}

TEST(PictureGl, EmptyBenchAndEmptyRectangleDrawNothing) {
  const Studio studio(40, 30);
  const Picture blank = studio.drawn(bench_scene({}, Camera{}), white);
  EXPECT_TRUE(std::all_of(blank.rgba.begin(), blank.rgba.end(), [](std::uint8_t channel) { return channel == 255; }));
  studio.target().begin(white);
  studio.painter().draw(bench_scene(everything(opened(test::cube(), 0)), Camera{}), {0, 0, 0, 30});
  EXPECT_EQ(studio.target().read_back(), blank);
}

}  // namespace
}  // namespace fw::render::picture_test
