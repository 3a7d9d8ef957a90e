#include "render/bench_scene.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <set>
#include <utility>

#include "bench_support.hpp"
#include "render/face_order.hpp"
#include "support/polyhedra.hpp"

namespace fw::render::bench_scene_test {
namespace {

using test::opened;
using test::plain_look;

BenchLook edged(nets::Pose pose) {
  BenchLook look = plain_look(std::move(pose), 0.9F);
  look.edge = {Color::hex(0x1A1D26), 4, 0, 0};
  look.hidden_edge = Stroke{Color::hex(0x1A1D26), 2, 8, 6};
  return look;
}

TEST(BenchScene, SharedEdgesAreDrawnOnce) {
  EXPECT_EQ(bench_scene(edged(opened(test::cube(), 0)), Camera{}).visible_lines.size(), 12U);
  EXPECT_EQ(bench_scene(edged(opened(test::cube(), 0)), Camera{}).hidden_lines.size(), 12U);
  // Unfolded, the 5 hinges stay shared and the 7 cut edges come apart.
  EXPECT_EQ(bench_scene(edged(opened(test::cube(), 1)), Camera{}).visible_lines.size(), 19U);
}

TEST(BenchScene, EveryFaceIsFilledByItsTriangles) {
  for (const auto& sample : test::sample_solids()) {
    const Scene scene = bench_scene(edged(opened(sample.solid, 0.4)), Camera{});
    ASSERT_EQ(scene.faces.size(), sample.solid.faces().size()) << sample.name;
    for (const SceneFace& face : scene.faces) {
      double area = 0;
      ASSERT_EQ(face.vertex_count, 3 * (face.corners.size() - 2)) << sample.name;
      for (std::size_t i = 0; i < face.vertex_count; i += 3) {
        const auto corner = [&](std::size_t k) {
          const auto& position = scene.vertices[face.first_vertex + i + k].position;
          return Vec3(position[0], position[1], position[2]);
        };
        const Vec3 doubled = glm::cross(corner(1) - corner(0), corner(2) - corner(0));
        area += 0.5 * glm::dot(doubled, face.normal);
      }
      EXPECT_NEAR(area, geometry::area(sample.solid, face.face), 1e-4 * (1 + area)) << sample.name;
    }
  }
}

TEST(BenchScene, PositionsAreKeptNearTheOrigin) {
  nets::Pose pose = opened(test::cube(), 0);
  const Vec3 far_away{3e7, -2e7, 1e7};
  for (auto& face : pose) {
    for (Vec3& corner : face) corner += far_away;
  }
  const Scene scene = bench_scene(edged(pose), Camera{}.fitted(test::all_corners(pose), 1.5, 0.1));
  for (const FillVertex& vertex : scene.vertices) {
    for (const float coordinate : vertex.position) EXPECT_LT(std::abs(coordinate), 10.0F);
  }
}

TEST(BenchScene, LiftedFaceMovesAlongItsNormalAndHasEdgesOfItsOwn) {
  BenchLook look = edged(opened(test::cube(), 0));
  look.looks[2].lift = 0.5;
  const Scene scene = bench_scene(look, Camera{});
  EXPECT_EQ(scene.visible_lines.size(), 16U);
  for (const SceneFace& face : scene.faces) {
    for (std::size_t i = 0; i < face.corners.size(); ++i) {
      const Vec3 shift = face.corners[i] - look.faces[face.face.index()][i];
      const double expected = face.face == FaceId{2} ? 0.5 : 0.0;
      EXPECT_NEAR(glm::length(shift - face.normal * expected), 0, 1e-12);
    }
  }
}

TEST(BenchScene, FaceThatIsNotShownLeavesItsNeighborsEdges) {
  BenchLook look = edged(opened(test::cube(), 0));
  look.looks[2].is_shown = false;
  const Scene scene = bench_scene(look, Camera{});
  EXPECT_EQ(scene.faces.size(), 5U);
  EXPECT_EQ(scene.visible_lines.size(), 12U);
}

TEST(BenchScene, OutlineReplacesTheEdgesOfItsFaceAndComesLast) {
  BenchLook look = edged(opened(test::cube(), 0));
  look.looks[3].outline = Stroke{Color::hex(0xD55E00), 9, 0, 0};
  const Scene scene = bench_scene(look, Camera{});
  ASSERT_EQ(scene.visible_lines.size(), 12U);
  for (std::size_t i = 0; i < 12; ++i) {
    EXPECT_EQ(scene.visible_lines[i].stroke.width_px, i < 8 ? 4.0F : 9.0F) << i;
  }
}

TEST(BenchScene, LinesOfTheirOwnKeepTheirHiddenLook) {
  BenchLook look = edged(opened(test::cube(), 0));
  look.edge.width_px = 0;
  look.hidden_edge.reset();
  const Stroke stroke{Color::hex(0), 3, 0, 0};
  look.lines.push_back({{0, 0, 0}, {0, 0, 1}, stroke, std::nullopt});
  look.lines.push_back({{0, 0, 0}, {0, 1, 0}, stroke, Stroke{Color::hex(0), 3, 5, 5}});
  const Scene scene = bench_scene(look, Camera{});
  EXPECT_EQ(scene.visible_lines.size(), 2U);
  ASSERT_EQ(scene.hidden_lines.size(), 1U);
  EXPECT_EQ(scene.hidden_lines[0].stroke.dash_px, 5.0F);
}

TEST(BenchScene, LinesAreCutWhereTheyRunBehindTheEye) {
  BenchLook look;
  const Camera camera;
  look.lines.push_back({camera.target, camera.eye() - camera.forward() * 5.0, {Color::hex(0), 3, 0, 0}, std::nullopt});
  look.lines.push_back(
      {camera.eye() - camera.forward(), camera.eye() - camera.forward() * 5.0, {Color::hex(0), 3, 0, 0}, std::nullopt});
  const Scene scene = bench_scene(look, camera);
  ASSERT_EQ(scene.visible_lines.size(), 1U);
  const auto& end = scene.visible_lines[0].to;
  EXPECT_NEAR(camera.project(Vec3(end[0], end[1], end[2]) + scene.origin, {100, 100}).depth, camera.near_plane(), 1e-5);
}

TEST(BenchScene, HatchRunsInTheFrameOfTheFlatFace) {
  const auto solid = test::box(2, 3, 4);
  BenchLook look = edged(opened(solid, 0.3));
  for (std::size_t face = 0; face < 6; ++face) look.flat_faces.push_back(flat_face(solid, FaceId::at(face)));
  const Scene scene = bench_scene(look, Camera{});
  for (const SceneFace& face : scene.faces) {
    for (std::size_t i = 0; i < face.vertex_count; ++i) {
      const auto& flat = scene.vertices[face.first_vertex + i].flat;
      const auto& corners = look.flat_faces[face.face.index()];
      EXPECT_TRUE(std::any_of(corners.begin(), corners.end(), [&](geometry::Vec2 corner) {
        return glm::length(corner - geometry::Vec2(flat[0], flat[1])) < 1e-5;
      }));
    }
  }
}

RC_GTEST_PROP(BenchScene, ShadingKeepsTheHueAndTheRange, ()) {
  const auto turn = [] { return static_cast<double>(*rc::gen::inRange(-3000, 3001)) / 1000; };
  const Camera camera = Camera{}.orbited(turn(), turn());
  const Vec3 normal = glm::normalize(Vec3(turn(), turn(), turn() + 7));
  const Color lit = shaded({1, 0.5F, 0.25F, 0.6F}, normal, camera);
  RC_ASSERT(lit.r >= 0.8199F && lit.r <= 1.0F && lit.a == 0.6F);
  RC_ASSERT(std::abs(lit.g - lit.r / 2) < 1e-6F && std::abs(lit.b - lit.r / 4) < 1e-6F);
  RC_ASSERT(lit == shaded({1, 0.5F, 0.25F, 0.6F}, -normal, camera));
}

TEST(BenchScene, TheThreeVisibleFacesOfABoxAreShadedDifferently) {
  const auto light = [](Vec3 normal) { return shaded({1, 1, 1, 1}, normal, Camera{}).r; };
  EXPECT_GT(light({0, 0, 1}), light({0, -1, 0}) + 0.02F);
  EXPECT_GT(light({0, -1, 0}), light({1, 0, 0}) + 0.02F);
}

TEST(RightAngleMark, ClosesASquare) {
  const auto mark = right_angle_mark({1, 1, 1}, {5, 0, 0}, {0, 0, -3}, 0.5, {}, std::nullopt);
  ASSERT_EQ(mark.size(), 2U);
  EXPECT_EQ(mark[0].from, Vec3(1.5, 1, 1));
  EXPECT_EQ(mark[0].to, Vec3(1.5, 1, 0.5));
  EXPECT_EQ(mark[1].from, mark[0].to);
  EXPECT_EQ(mark[1].to, Vec3(1, 1, 0.5));
}

// Every ray must meet the faces in the order in which they are painted.
void expect_painter_order(const nets::Pose& pose, const Camera& camera, const std::string& name) {
  const Viewport viewport{60, 60};
  std::vector<std::size_t> place(pose.size());
  const auto order = back_to_front(pose, camera);
  ASSERT_EQ(order.size(), pose.size());
  for (std::size_t i = 0; i < order.size(); ++i) place[order[i]] = i;
  for (int y = 0; y < 60; ++y) {
    for (int x = 0; x < 60; ++x) {
      const geometry::Vec2 pixel{x + 0.5, y + 0.5};
      const auto met = test::faces_met(pose, camera.ray_through(pixel, viewport));
      for (std::size_t i = 1; i < met.size(); ++i) {
        if (met[i - 1].distance - met[i].distance < 1e-6) continue;
        ASSERT_LT(place[met[i - 1].face], place[met[i].face])
            << name << ": face " << met[i - 1].face << " lies behind face " << met[i].face << " at pixel " << x << ", "
            << y;
      }
    }
  }
}

TEST(FaceOrder, EveryPoseFromEverySideIsPaintedBackToFrontSlow) {
  for (const auto& sample : test::sample_solids()) {
    if (sample.solid.faces().size() > 14) continue;
    for (const double amount : {0.0, 0.15, 0.5, 0.85, 1.0}) {
      if (amount > 0 && test::overlaps_itself(sample.solid)) continue;  // its faces pass through each other
      const nets::Pose pose = opened(sample.solid, amount);
      for (const double yaw : {0.0, 1.3, 2.9, -1.9}) {
        for (const double pitch : {-1.1, 0.1, 0.8}) {
          const Camera camera = Camera{}.orbited(yaw, pitch).fitted(test::all_corners(pose), 1, 0.1);
          expect_painter_order(pose, camera, sample.name + " opened by " + std::to_string(amount));
          if (::testing::Test::HasFatalFailure()) return;
        }
      }
    }
  }
}

TEST(FaceOrder, LargeFaceBehindManySmallOnes) {
  // By the depths of their middles the wall would come last.
  nets::Pose pose{{{-1, 0, -1}, {1, 0, -1}, {1, 0, 1}, {-1, 0, 1}}, {{-90, 1, -90}, {90, -0.5, -90}, {0, 0.25, 90}}};
  Camera camera;
  camera.yaw_rad = 0;
  camera.pitch_rad = 0;
  camera.distance = 50;
  for (Vec3& corner : pose[1]) corner.y += 2;
  EXPECT_THAT(back_to_front(pose, camera), ::testing::ElementsAre(1U, 0U));
}

TEST(FaceOrder, RingOfFacesThatCoverEachOtherStillGivesEveryFaceOnce) {
  // Three long cards, each over the next, as one closes a box without glue.
  const auto card = [](double turn) {
    std::vector<Vec3> corners{{-3, -1, 0.6}, {3, -1, -0.6}, {3, -0.4, -0.6}, {-3, -0.4, 0.6}};
    for (Vec3& corner : corners) {
      corner = {corner.x * std::cos(turn) - corner.y * std::sin(turn),
                corner.x * std::sin(turn) + corner.y * std::cos(turn), corner.z};
    }
    return corners;
  };
  const nets::Pose ring{card(0), card(2 * test::pi / 3), card(4 * test::pi / 3)};
  Camera above;
  above.pitch_rad = Camera::steepest_pitch_rad;
  std::set<std::pair<std::size_t, std::size_t>> behind_before;
  for (int y = 0; y < 100; ++y) {
    for (int x = 0; x < 100; ++x) {
      const auto met = test::faces_met(ring, above.ray_through({x + 0.5, y + 0.5}, {100, 100}));
      for (std::size_t i = 1; i < met.size(); ++i) behind_before.insert({met[i - 1].face, met[i].face});
    }
  }
  ASSERT_EQ(behind_before.size(), 3U) << "no order of the three is right";
  std::set<std::size_t> behind_another;
  for (const auto& pair : behind_before) behind_another.insert(pair.first);
  ASSERT_EQ(behind_another.size(), 3U) << "no order of the three is right";
  EXPECT_THAT(back_to_front(ring, above), ::testing::UnorderedElementsAre(0U, 1U, 2U));
}

}  // namespace
}  // namespace fw::render::bench_scene_test
