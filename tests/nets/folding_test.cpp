#include "nets/folding.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "geometry/measure.hpp"
#include "nets/random_tree.hpp"

namespace fw::nets::folding_test {
namespace {

using geometry::Vec3;

struct Case {
  const test::NamedSolid& sample;
  HingeTree tree;
  double amount;
  FoldOrder order;
  double size;
};
Case any_case(std::uint64_t seed) {
  test::Dice dice(seed);
  const test::NamedSolid& sample = test::samples()[dice.below(test::samples().size())];
  HingeTree tree = test::random_tree(sample.solid, dice);
  const std::vector<Vec3> points(sample.solid.vertices().begin(), sample.solid.vertices().end());
  return {sample, std::move(tree), dice.between(0, 1), dice.below(2) == 0 ? FoldOrder::Together : FoldOrder::OneByOne,
          geometry::bounding_box(points).diagonal()};
}

RC_GTEST_PROP(FoldingGuarantees, guarantee_1_distances_within_a_face_stay, (std::uint64_t seed)) {
  const Case c = any_case(seed);
  const Pose folded = pose(c.sample.solid, c.tree, c.amount, c.order);
  for (std::size_t f = 0; f < folded.size(); ++f) {
    const std::vector<Vec3> closed = c.sample.solid.corners(FaceId::at(f));
    for (std::size_t i = 0; i < closed.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        RC_ASSERT(std::abs(glm::length(folded[f][i] - folded[f][j]) - glm::length(closed[i] - closed[j])) <
                  1e-9 * c.size);
      }
    }
  }
}

RC_GTEST_PROP(FoldingGuarantees, guarantee_2_closed_is_the_solid_and_open_is_flat, (std::uint64_t seed)) {
  const Case c = any_case(seed);
  const Polyhedron& solid = c.sample.solid;
  const Pose closed = pose(solid, c.tree, 0, c.order);
  const Pose open = pose(solid, c.tree, 1, c.order);
  const geometry::FacePlane table = geometry::face_plane(solid, c.tree.root());
  for (std::size_t f = 0; f < closed.size(); ++f) {
    RC_ASSERT(closed[f] == solid.corners(FaceId::at(f)));
    for (const Vec3& corner : open[f]) {
      RC_ASSERT(std::abs(glm::dot(corner - table.origin, table.normal)) < 1e-9 * c.size);
    }
  }
}

RC_GTEST_PROP(FoldingGuarantees, guarantee_3_hinges_hold, (std::uint64_t seed)) {
  const Case c = any_case(seed);
  const Polyhedron& solid = c.sample.solid;
  const Pose folded = pose(solid, c.tree, c.amount, c.order);
  for (const EdgeId hinge : c.tree.hinges()) {
    const geometry::Edge& edge = solid.edges()[hinge];
    for (const geometry::VertexId end : {edge.from, edge.to}) {
      std::vector<Vec3> places;
      for (const FaceId face : {edge.left, edge.right}) {
        const auto& loop = solid.faces()[face];
        const auto corner = std::find(loop.begin(), loop.end(), end) - loop.begin();
        places.push_back(folded[face.index()][static_cast<std::size_t>(corner)]);
      }
      RC_ASSERT(glm::length(places[0] - places[1]) < 1e-9 * c.size);
    }
  }
}

RC_GTEST_PROP(FoldingLaws, the_face_on_the_table_stays, (std::uint64_t seed)) {
  const Case c = any_case(seed);
  RC_ASSERT(pose(c.sample.solid, c.tree, c.amount, c.order)[c.tree.root().index()] ==
            c.sample.solid.corners(c.tree.root()));
}

RC_GTEST_PROP(FoldingLaws, one_by_one_opens_the_outermost_first, (std::uint64_t seed)) {
  const Case c = any_case(seed);
  const auto amounts = hinge_amounts(c.tree, c.amount, FoldOrder::OneByOne);
  std::size_t turning = 0;
  for (const FaceId face : c.tree.order()) {
    if (face == c.tree.root()) {
      continue;
    }
    const double own = amounts[face];
    RC_ASSERT(own >= 0 && own <= 1);
    turning += own > 0 && own < 1 ? 1U : 0U;
    const FaceId parent = c.tree.link(face)->parent;
    if (parent != c.tree.root()) {
      RC_ASSERT(amounts[parent] == 0 || own == 1);
    }
  }
  RC_ASSERT(turning <= 1);
}

TEST(HingeAmounts, share_the_overall_amount) {
  const Polyhedron solid = test::regular_tetrahedron();
  const HingeTree tree = HingeTree::make(solid, FaceId::at(0), solid.edges_of(FaceId::at(0))).value();
  const auto half = hinge_amounts(tree, 0.5, FoldOrder::OneByOne);
  EXPECT_DOUBLE_EQ(half[tree.order()[3]], 1);
  EXPECT_DOUBLE_EQ(half[tree.order()[2]], 0.5);
  EXPECT_DOUBLE_EQ(half[tree.order()[1]], 0);
  EXPECT_DOUBLE_EQ(hinge_amounts(tree, 0.5, FoldOrder::Together)[tree.order()[1]], 0.5);
}

TEST(OpeningAngle, is_a_right_angle_on_a_box_and_negative_at_a_concave_edge) {
  const Polyhedron box = test::box(2, 3, 4);
  for (std::size_t e = 0; e < 12; ++e) {
    EXPECT_NEAR(opening_angle_rad(box, EdgeId::at(e)), test::pi / 2, 1e-12);
  }
  const Polyhedron room = test::l_prism(1);
  std::size_t concave = 0;
  for (std::size_t e = 0; e < room.edges().size(); ++e) {
    concave += opening_angle_rad(room, EdgeId::at(e)) < 0 ? 1U : 0U;
  }
  EXPECT_EQ(concave, 1U);
}

TEST(Pose, the_lid_of_a_box_swings_out_of_the_way) {
  const Polyhedron box = test::box(2, 3, 4);
  std::vector<EdgeId> hinges = box.edges_of(FaceId::at(0));
  hinges.push_back(*box.edge_between(FaceId::at(2), FaceId::at(1)));
  const HingeTree tree = HingeTree::make(box, FaceId::at(0), hinges).value();
  const Pose open = pose(box, tree, 1, FoldOrder::Together);
  // The front stands on y = 0 and falls forward; the lid beyond it ends at y = -(4 + 3).
  double lowest = 0;
  for (const Vec3& corner : open[1]) {
    EXPECT_NEAR(corner.z, 0, 1e-12);
    lowest = std::min(lowest, corner.y);
  }
  EXPECT_NEAR(lowest, -7, 1e-12);
}

}  // namespace
}  // namespace fw::nets::folding_test
