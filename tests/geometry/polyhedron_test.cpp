#include "geometry/polyhedron.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <concepts>

#include "support/polyhedra.hpp"

namespace fw::geometry::polyhedron_test {
namespace {

static_assert(std::copyable<Polyhedron> && std::equality_comparable<Polyhedron>);
static_assert(!std::default_initializable<Polyhedron>);

using testing::ElementsAre;
using testing::HasSubstr;
using Loops = std::vector<Polyhedron::Loop>;

const std::vector<Vec3> corners = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

Loops loops_of(const std::vector<std::vector<std::uint32_t>>& numbers) {
  Loops loops;
  for (const auto& face : numbers) {
    Polyhedron::Loop loop;
    for (const std::uint32_t number : face) {
      loop.push_back(VertexId{number});
    }
    loops.push_back(loop);
  }
  return loops;
}
std::vector<std::string> defects_of(std::vector<Vec3> vertices,
                                    const std::vector<std::vector<std::uint32_t>>& numbers) {
  const auto made = Polyhedron::make(std::move(vertices), loops_of(numbers));
  return made.has_value() ? std::vector<std::string>{} : made.error();
}

TEST(PolyhedronDefects, none_in_a_tetrahedron) {
  EXPECT_THAT(defects_of(corners, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}}), ElementsAre());
}

TEST(PolyhedronDefects, too_few_faces_or_corners) {
  EXPECT_THAT(defects_of(corners, {{0, 1, 2}, {0, 1}}),
              ElementsAre("a solid needs at least 4 faces, not 2", "face 1 has only 2 corners; a face needs 3"));
}

TEST(PolyhedronDefects, vertices_that_are_not_there_or_named_twice) {
  EXPECT_THAT(defects_of(corners, {{0, 2, 1}, {0, 1, 4}, {1, 2, 1}, {2, 0, 3}}),
              ElementsAre("face 1 names vertex 4, but there are only 4", "face 2 names vertex 1 twice"));
}

TEST(PolyhedronDefects, a_face_turned_inside_out_or_missing) {
  EXPECT_THAT(
      defects_of(corners, {{0, 1, 2}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}}),
      testing::Contains(HasSubstr("the edge from vertex 0 to vertex 1 runs the same way in face 0 and face 1")));
  EXPECT_THAT(
      defects_of({{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}, {0, 0, 1}},
                 {{0, 3, 2, 1}, {0, 1, 4}, {1, 2, 4}, {2, 3, 4}}),
      testing::Contains("the edge from vertex 0 to vertex 3 belongs to face 0 but to no face on its other side"));
}

TEST(PolyhedronDefects, bent_empty_and_crossing_faces) {
  EXPECT_THAT(defects_of({{0, 0, 0}, {1, 0, 0}, {1, 1, 0.5}, {0, 1, 0}, {0.5, 0.5, 1}},
                         {{0, 3, 2, 1}, {0, 1, 4}, {1, 2, 4}, {2, 3, 4}, {3, 0, 4}}),
              testing::Contains(HasSubstr("face 0 is not flat: a corner stands off its plane by")));
  EXPECT_THAT(defects_of({{0, 0, 0}, {1, 0, 0}, {2, 0, 0}, {0, 0, 1}}, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}}),
              testing::Contains("face 0 has no area"));
  EXPECT_THAT(defects_of({{0, 0, 0}, {2, 0, 0}, {0, 1, 0}, {1, 3, 0}, {1, 1, 3}},
                         {{0, 1, 2, 3}, {1, 0, 4}, {2, 1, 4}, {3, 2, 4}, {0, 3, 4}}),
              testing::Contains("face 0 crosses itself"));
}

TEST(PolyhedronDefects, pieces_loose_vertices_and_inside_out_solids) {
  std::vector<Vec3> two = corners;
  for (const Vec3& corner : corners) {
    two.push_back(corner + Vec3{5, 0, 0});
  }
  EXPECT_THAT(defects_of(two, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}, {4, 6, 5}, {4, 5, 7}, {5, 6, 7}, {6, 4, 7}}),
              ElementsAre("the surface falls into 2 pieces"));
  EXPECT_THAT(defects_of(corners, {{0, 1, 2}, {0, 3, 1}, {1, 3, 2}, {2, 3, 0}}),
              ElementsAre(HasSubstr("the volume is not positive")));
  std::vector<Vec3> spare = corners;
  spare.push_back({9, 9, 9});
  EXPECT_THAT(defects_of(spare, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}}),
              ElementsAre("vertex 4 belongs to no face"));
}

TEST(Polyhedron, edges_come_in_the_order_of_the_faces) {
  const Polyhedron box = test::box(2, 3, 4);
  ASSERT_EQ(box.edges().size(), 12U);
  EXPECT_THAT(box.edges_of(FaceId::at(0)), ElementsAre(EdgeId{0}, EdgeId{1}, EdgeId{2}, EdgeId{3}));
  EXPECT_EQ(box.edges()[EdgeId{0}], (Edge{VertexId{0}, VertexId{3}, FaceId{0}, FaceId{5}}));
  for (std::size_t f = 0; f < 6; ++f) {
    const auto& loop = box.faces()[FaceId::at(f)];
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const EdgeId id = box.edges_of(FaceId::at(f))[i];
      const Edge& edge = box.edges()[id];
      const bool leaves = edge.left == FaceId::at(f);
      EXPECT_EQ(leaves ? edge.from : edge.to, loop[i]);
      EXPECT_EQ(leaves ? edge.to : edge.from, loop[(i + 1) % loop.size()]);
      EXPECT_EQ(box.other_face(id, box.other_face(id, FaceId::at(f))), FaceId::at(f));
    }
  }
  EXPECT_EQ(box.edge_between(FaceId::at(0), FaceId::at(1)), std::nullopt);
  EXPECT_EQ(box.edge_between(FaceId::at(0), FaceId::at(5)), EdgeId{0});
}

TEST(Polyhedron, equality_is_of_corners_and_faces) {
  EXPECT_EQ(test::box(1, 2, 3), test::box(1, 2, 3));
  EXPECT_FALSE(test::box(1, 2, 3) == test::box(1, 2, 4));
}

TEST(FacePlane, is_seen_from_outside_with_up_up) {
  const Polyhedron box = test::box(2, 3, 4);
  const FacePlane front = face_plane(box, FaceId::at(2));  // y = 0, seen from -y
  EXPECT_EQ(front.right, (Vec3{1, 0, 0}));
  EXPECT_EQ(front.up, (Vec3{0, 0, 1}));
  const FacePlane top = face_plane(box, FaceId::at(1));
  EXPECT_EQ(top.right, (Vec3{1, 0, 0}));
  EXPECT_EQ(top.up, (Vec3{0, 1, 0}));
  const FacePlane bottom = face_plane(box, FaceId::at(0));
  EXPECT_EQ(bottom.up, (Vec3{0, 1, 0}));
  EXPECT_EQ(bottom.right, (Vec3{-1, 0, 0}));
}

TEST(FacePlane, laws_on_all_sample_solids) {
  for (const auto& [name, solid] : test::sample_solids()) {
    for (std::size_t f = 0; f < solid.faces().size(); ++f) {
      const FacePlane plane = face_plane(solid, FaceId::at(f));
      EXPECT_LT(glm::length(glm::cross(plane.right, plane.up) - plane.normal), 1e-12) << name;
      EXPECT_LT(glm::length(plane.normal - solid.normal(FaceId::at(f))), 1e-12) << name;
      EXPECT_GT(signed_area(flat_face(solid, FaceId::at(f))), 0) << name;
      EXPECT_GE(plane.up.z, -1e-12) << name;
      for (const Vec3& corner : solid.corners(FaceId::at(f))) {
        EXPECT_LT(glm::length(plane.lifted(plane.flat(corner)) - corner), 1e-10) << name;
      }
    }
    EXPECT_TRUE(solid.defects().empty()) << name;
  }
}

}  // namespace
}  // namespace fw::geometry::polyhedron_test
