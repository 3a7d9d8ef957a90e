#include "geometry/measure.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "geometry/congruence.hpp"
#include "support/polyhedra.hpp"
#include "support/random.hpp"

namespace fw::geometry::measure_test {
namespace {

struct RegularSolid {
  Polyhedron solid;
  double surface, volume, dihedral_deg;  ///< with edge 1
};

// Formulas of every handbook (from memory): tetrahedron sqrt 3 and sqrt 2 / 12, octahedron 2 sqrt 3 and sqrt 2 / 3,
// dodecahedron 3 sqrt(25 + 10 sqrt 5) and (15 + 7 sqrt 5) / 4, icosahedron 5 sqrt 3 and 5 (3 + sqrt 5) / 12.
TEST(Measure, regular_solids) {
  const std::vector<RegularSolid> solids = {
      {test::regular_tetrahedron(), 1.732050807569, 0.117851130198, 70.528779365509},
      {test::cube(), 6, 1, 90},
      {test::octahedron(), 3.464101615138, 0.471404520791, 109.471220634491},
      {test::dodecahedron(), 20.645728807068, 7.663118960625, 116.565051177078},
      {test::icosahedron(), 8.660254037844, 2.181694990625, 138.189685104221}};
  for (const RegularSolid& regular : solids) {
    const auto [from, to] = regular.solid.ends(EdgeId::at(0));
    const double edge = glm::length(to - from);
    EXPECT_NEAR(surface_area(regular.solid) / (edge * edge), regular.surface, 1e-11);
    EXPECT_NEAR(volume(regular.solid) / (edge * edge * edge), regular.volume, 1e-11);
    for (std::size_t e = 0; e < regular.solid.edges().size(); ++e) {
      EXPECT_NEAR(dihedral_angle_rad(regular.solid, EdgeId::at(e)) * 180 / test::pi, regular.dihedral_deg, 1e-10);
    }
    EXPECT_TRUE(is_convex(regular.solid));
    for (const std::size_t group : congruence_groups(regular.solid)) {
      EXPECT_EQ(group, 0U);
    }
  }
}

TEST(Measure, a_room_with_a_corner_cut_out) {
  const Polyhedron room = test::l_prism(1.25);
  EXPECT_NEAR(surface_area(room), 2 * 4 + 10 * 1.25, 1e-12);
  EXPECT_NEAR(volume(room), 5, 1e-12);
  EXPECT_FALSE(is_convex(room));
  std::size_t reflex = 0;
  for (std::size_t e = 0; e < room.edges().size(); ++e) {
    const double angle_rad = dihedral_angle_rad(room, EdgeId::at(e));
    reflex += std::abs(angle_rad - 1.5 * test::pi) < 1e-12 ? 1U : 0U;
  }
  EXPECT_EQ(reflex, 1U);
}

// Sources: Euler; Descartes.
TEST(Laws, of_euler_and_descartes) {
  for (const auto& [name, solid] : test::sample_solids()) {
    EXPECT_EQ(solid.vertices().size() + solid.faces().size(), solid.edges().size() + 2) << name;
    double sum = 0;
    for (std::size_t v = 0; v < solid.vertices().size(); ++v) {
      sum += angle_defect_rad(solid, VertexId::at(v));
    }
    EXPECT_NEAR(sum, 4 * test::pi, 1e-9) << name;
  }
}

// The divergence theorem against pyramids from an inner point to each face.
TEST(Laws, volume_is_that_of_pyramids_on_the_faces) {
  for (const auto& [name, solid] : test::sample_solids()) {
    double sum = 0;
    const Vec3 apex = {0.3, 0.2, 0.1};
    for (std::size_t f = 0; f < solid.faces().size(); ++f) {
      const double height = glm::dot(solid.corners(FaceId::at(f)).front() - apex, solid.normal(FaceId::at(f)));
      sum += area(solid, FaceId::at(f)) * height / 3;
      EXPECT_NEAR(area(solid, FaceId::at(f)), signed_area(flat_face(solid, FaceId::at(f))), 1e-9) << name;
    }
    EXPECT_NEAR(volume(solid), sum, 1e-9 * std::abs(sum)) << name;
  }
}

RC_GTEST_PROP(Laws, growing_k_times_gives_k_squared_and_k_cubed, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const double a = dice.between(0.1, 9);
  const double b = dice.between(0.1, 9);
  const double c = dice.between(0.1, 9);
  const double k = dice.between(0.01, 1000);
  const Polyhedron small = test::box(a, b, c);
  const Polyhedron large = test::box(k * a, k * b, k * c);
  RC_ASSERT(std::abs(surface_area(large) / surface_area(small) / (k * k) - 1) < 1e-12);
  RC_ASSERT(std::abs(volume(large) / volume(small) / (k * k * k) - 1) < 1e-12);
}

TEST(Congruence, is_judged_by_the_lengths_compared) {
  for (const double times : {1e3, 1e6, 1e9, 1e12}) {
    const Polygon strip{{0, 0}, {times, 0}, {times, 1}, {0, 1}};
    const Polygon narrower{{0, 0}, {times, 0}, {times, 0.9}, {0, 0.9}};
    const Polygon needle{{0, 0}, {1, 0}, {0.5, times}};
    const Polygon thicker{{0, 0}, {1.1, 0}, {0.55, times}};
    EXPECT_TRUE(congruent(strip, strip)) << times;
    EXPECT_TRUE(congruent(needle, needle)) << times;
    EXPECT_FALSE(congruent(strip, narrower)) << times;
    EXPECT_FALSE(congruent(needle, thicker)) << times;
  }
}

TEST(Congruence, turned_and_flipped_polygons_are_congruent) {
  const Polygon a = {{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 2}, {0, 2}};
  Polygon turned;
  Polygon flipped;
  for (std::size_t i = 0; i < a.size(); ++i) {
    const Vec2 p = a[(i + 2) % a.size()];
    turned.push_back({5 + 0.6 * p.x - 0.8 * p.y, 0.8 * p.x + 0.6 * p.y});
    const Vec2 q = a[a.size() - 1 - i];
    flipped.push_back({-q.x, q.y});
  }
  EXPECT_TRUE(congruent(a, turned));
  EXPECT_TRUE(congruent(a, flipped));
  Polygon longer = a;
  longer[1].x += 1e-6;
  EXPECT_FALSE(congruent(a, longer));
  // Equal sides alone are not enough.
  EXPECT_FALSE(congruent({{0, 0}, {1, 0}, {1, 1}, {0, 1}}, {{0, 0}, {1, 0}, {1.6, 0.8}, {0.6, 0.8}}));
}

TEST(Congruence, groups_of_a_box_are_its_pairs_of_faces) {
  const auto groups = congruence_groups(test::box(2, 3, 4));
  EXPECT_EQ(std::vector<std::size_t>(groups.begin(), groups.end()), (std::vector<std::size_t>{0, 0, 1, 2, 1, 2}));
}

}  // namespace
}  // namespace fw::geometry::measure_test
