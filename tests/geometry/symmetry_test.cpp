#include "geometry/symmetry.hpp"

#include <gtest/gtest.h>

#include <set>

#include "geometry/measure.hpp"
#include "support/polyhedra.hpp"

namespace fw::geometry::symmetry_test {
namespace {

std::size_t reflections(const std::vector<Symmetry>& ways) {
  std::size_t count = 0;
  for (const Symmetry& way : ways) {
    count += way.is_reflection ? 1U : 0U;
  }
  return count;
}

// Orders of the point groups: common knowledge of crystallography, no source.
TEST(Symmetries, orders) {
  EXPECT_EQ(symmetries(test::regular_tetrahedron()).size(), 24U);
  EXPECT_EQ(symmetries(test::cube()).size(), 48U);
  EXPECT_EQ(symmetries(test::octahedron()).size(), 48U);
  EXPECT_EQ(symmetries(test::dodecahedron()).size(), 120U);
  EXPECT_EQ(symmetries(test::icosahedron()).size(), 120U);
  EXPECT_EQ(symmetries(test::box(2, 3, 4)).size(), 8U);
  EXPECT_EQ(symmetries(test::prism(7, 0.3)).size(), 28U);
  EXPECT_EQ(symmetries(test::l_prism(1.25)).size(), 2U);
  EXPECT_EQ(symmetries(test::tetrahedron({0, 0, 0}, {1, 0, 0}, {10, 1, 0}, {16, 4, 2})).size(), 1U);
}

TEST(Symmetries, turns_and_flips) {
  EXPECT_EQ(reflections(symmetries(test::cube())), 24U);
  const std::vector<Symmetry> disphenoid = symmetries(test::tetrahedron({0, 0, 0}, {2, 3, 0}, {2, 0, 4}, {0, 3, 4}));
  EXPECT_EQ(disphenoid.size(), 4U);
  EXPECT_EQ(reflections(disphenoid), 0U);
}

// A box that is nearly a cube is none: equal means equal to the house tolerance.
TEST(Symmetries, a_small_difference_counts) {
  EXPECT_EQ(symmetries(test::box(1, 1, 1 + 1e-6)).size(), 16U);
  EXPECT_EQ(symmetries(test::box(1, 1, 1 + 1e-13)).size(), 48U);
}

// Each length is compared by its own size: a millimeter is not lost on a thousand kilometers.
TEST(Symmetries, of_long_and_thin_solids) {
  for (const double times : {1e3, 1e6, 1e9, 1e12}) {
    EXPECT_EQ(symmetries(test::box(times, 2, 1)).size(), 8U) << times;
    EXPECT_EQ(symmetries(test::box(times, 1, 1)).size(), 16U) << times;
    EXPECT_EQ(symmetries(test::prism(7, times)).size(), 28U) << times;
    EXPECT_EQ(symmetries(test::prism(7, 1 / times)).size(), 28U) << times;
    EXPECT_EQ(symmetries(test::pyramid(5, times)).size(), 10U) << times;
    EXPECT_EQ(symmetries(test::pyramid(5, 1 / times)).size(), 10U) << times;
  }
}

TEST(Symmetries, keep_distances_and_incidence_and_form_a_group) {
  for (const test::NamedSolid& sample : test::sample_solids()) {
    const std::string& name = sample.name;
    const Polyhedron& solid = sample.solid;
    const std::vector<Symmetry> ways = symmetries(solid);
    std::set<std::vector<VertexId>> known;
    for (const Symmetry& way : ways) {
      known.insert({way.vertex.begin(), way.vertex.end()});
    }
    ASSERT_EQ(known.size(), ways.size()) << name;
    for (std::size_t v = 0; v < solid.vertices().size(); ++v) {
      EXPECT_EQ(ways.front().vertex[VertexId::at(v)], VertexId::at(v)) << name;
    }
    for (const Symmetry& way : ways) {
      for (std::size_t e = 0; e < solid.edges().size(); ++e) {
        const Edge& edge = solid.edges()[EdgeId::at(e)];
        const Edge& image = solid.edges()[way.edge[EdgeId::at(e)]];
        EXPECT_EQ(std::minmax(image.from, image.to), std::minmax(way.vertex[edge.from], way.vertex[edge.to])) << name;
        EXPECT_EQ(std::minmax(image.left, image.right), std::minmax(way.face[edge.left], way.face[edge.right])) << name;
      }
      for (std::size_t a = 0; a < solid.vertices().size(); ++a) {
        const auto place = [&solid](VertexId vertex) { return solid.vertices()[vertex]; };
        const VertexId next = VertexId::at((a + 1) % solid.vertices().size());
        EXPECT_NEAR(glm::length(place(VertexId::at(a)) - place(next)),
                    glm::length(place(way.vertex[VertexId::at(a)]) - place(way.vertex[next])), 1e-9)
            << name;
      }
      std::vector<VertexId> twice;
      for (const VertexId image : way.vertex) {
        twice.push_back(way.vertex[image]);
      }
      EXPECT_EQ(known.count(twice), 1U) << name;
    }
  }
}

}  // namespace
}  // namespace fw::geometry::symmetry_test
