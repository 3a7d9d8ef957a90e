#include "nets/layout.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "geometry/congruence.hpp"
#include "geometry/measure.hpp"
#include "nets/folding.hpp"
#include "nets/overlap_check.hpp"
#include "nets/random_tree.hpp"

namespace fw::nets::layout_test {
namespace {

using geometry::Polygon;
using geometry::Vec2;

const Polyhedron& any_solid(test::Dice& dice) { return test::samples()[dice.below(test::samples().size())].solid; }

double size_of(const Polyhedron& solid) {
  return geometry::bounding_box({solid.vertices().begin(), solid.vertices().end()}).diagonal();
}

/// All corners of all faces, in order.
std::vector<Vec2> all_corners(const Layout& layout) {
  std::vector<Vec2> corners;
  for (const Polygon& polygon : layout) {
    corners.insert(corners.end(), polygon.begin(), polygon.end());
  }
  return corners;
}

RC_GTEST_PROP(LayoutGuarantees, guarantee_1_polygons_are_congruent_to_their_faces, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice);
  const Layout layout = unfolded(solid, test::random_tree(solid, dice));
  for (std::size_t f = 0; f < layout.size(); ++f) {
    const Polygon& laid = layout[FaceId::at(f)];
    RC_ASSERT(geometry::signed_area(laid) > 0);
    const std::vector<geometry::Vec3> corners = solid.corners(FaceId::at(f));
    for (std::size_t i = 0; i < corners.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        RC_ASSERT(std::abs(glm::length(laid[i] - laid[j]) - glm::length(corners[i] - corners[j])) <
                  1e-9 * size_of(solid));
      }
    }
  }
}

RC_GTEST_PROP(LayoutGuarantees, guarantee_2_hinges_are_shared, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice);
  const HingeTree tree = test::random_tree(solid, dice);
  const Layout layout = unfolded(solid, tree);
  for (const EdgeId hinge : tree.hinges()) {
    const geometry::Edge& edge = solid.edges()[hinge];
    for (const geometry::VertexId end : {edge.from, edge.to}) {
      std::vector<Vec2> places;
      for (const FaceId face : {edge.left, edge.right}) {
        const auto& loop = solid.faces()[face];
        places.push_back(
            layout[face][static_cast<std::size_t>(std::find(loop.begin(), loop.end(), end) - loop.begin())]);
      }
      RC_ASSERT(glm::length(places[0] - places[1]) < 1e-9 * size_of(solid));
    }
  }
}

RC_GTEST_PROP(LayoutGuarantees, guarantee_3_the_root_only_moves_the_layout, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice);
  const HingeTree tree = test::random_tree(solid, dice);
  const HingeTree other = rerooted(solid, tree, FaceId::at(dice.below(solid.faces().size())));
  const std::vector<Vec2> a = all_corners(unfolded(solid, tree));
  const std::vector<Vec2> b = all_corners(unfolded(solid, other));
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      RC_ASSERT(std::abs(glm::length(a[i] - a[j]) - glm::length(b[i] - b[j])) < 1e-8 * size_of(solid));
    }
  }
}

RC_GTEST_PROP(LayoutLaws, the_flat_pose_is_the_layout, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice);
  const HingeTree tree = test::random_tree(solid, dice);
  const Layout layout = unfolded(solid, tree);
  const Pose flat = pose(solid, tree, 1, FoldOrder::Together);
  const geometry::FacePlane table = geometry::face_plane(solid, tree.root());
  for (std::size_t f = 0; f < flat.size(); ++f) {
    for (std::size_t i = 0; i < flat[f].size(); ++i) {
      RC_ASSERT(glm::length(table.flat(flat[f][i]) - layout[FaceId::at(f)][i]) < 1e-8 * size_of(solid));
    }
  }
}

RC_GTEST_PROP(LayoutLaws, the_quick_overlap_check_says_the_same, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice);
  const HingeTree tree = test::random_tree(solid, dice);
  RC_ASSERT(OverlapCheck(solid).overlaps(mask_of(tree)) == !overlapping(unfolded(solid, tree)).empty());
}

TEST(Layout, the_root_lies_as_in_the_solid) {
  const Polyhedron solid = test::pyramid(4, 2);
  const HingeTree tree = HingeTree::make(solid, FaceId::at(0), solid.edges_of(FaceId::at(0))).value();
  EXPECT_EQ(unfolded(solid, tree)[FaceId::at(0)], geometry::flat_face(solid, FaceId::at(0)));
}

}  // namespace
}  // namespace fw::nets::layout_test
