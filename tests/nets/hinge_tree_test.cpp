#include "nets/hinge_tree.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <concepts>

#include "nets/random_tree.hpp"

namespace fw::nets::hinge_tree_test {
namespace {

static_assert(std::copyable<HingeTree> && std::equality_comparable<HingeTree>);
static_assert(!std::default_initializable<HingeTree>);

const test::NamedSolid& any_solid(test::Dice& dice) { return test::samples()[dice.below(test::samples().size())]; }

std::string error_of(const Polyhedron& solid, FaceId root, std::vector<EdgeId> hinges) {
  const auto made = HingeTree::make(solid, root, std::move(hinges));
  return made.has_value() ? "" : made.error();
}

/// Bottom, top, front, right, back, left: the bottom holds all sides and the front the top.
HingeTree cross_net(const Polyhedron& box) {
  std::vector<EdgeId> hinges = box.edges_of(FaceId::at(0));
  hinges.push_back(*box.edge_between(FaceId::at(2), FaceId::at(1)));
  return HingeTree::make(box, FaceId::at(0), hinges).value();
}

TEST(HingeTree, errors_are_sentences) {
  const Polyhedron box = test::cube();
  std::vector<EdgeId> hinges = box.edges_of(FaceId::at(0));
  EXPECT_EQ(error_of(box, FaceId::at(0), hinges), "no row of hinges joins face 1 to face 0");
  EXPECT_EQ(error_of(box, FaceId::at(6), hinges), "the net cannot stand on face 6: there are only 6 faces");
  hinges.push_back(hinges.front());
  EXPECT_EQ(error_of(box, FaceId::at(0), hinges), "edge 0 is named twice among the hinges");
  hinges.back() = EdgeId::at(12);
  EXPECT_EQ(error_of(box, FaceId::at(0), hinges), "edge 12 cannot be a hinge: there are only 12 edges");
  hinges.back() = *box.edge_between(FaceId::at(2), FaceId::at(3));
  EXPECT_EQ(error_of(box, FaceId::at(0), hinges).find("the hinges join face"), 0U);
}

TEST(HingeTree, cross_net_of_a_box) {
  const Polyhedron box = test::box(2, 3, 4);
  const HingeTree tree = cross_net(box);
  EXPECT_FALSE(tree.link(FaceId::at(0)));
  EXPECT_EQ(tree.link(FaceId::at(1))->parent, FaceId::at(2));
  EXPECT_EQ(tree.order().size(), 6U);
  EXPECT_EQ(tree.order().front(), FaceId::at(0));
  EXPECT_EQ(tree.order().back(), FaceId::at(1));
  EXPECT_EQ(tree.subtree(FaceId::at(2)), (std::vector<FaceId>{FaceId::at(2), FaceId::at(1)}));
  EXPECT_EQ(tree.subtree(FaceId::at(0)).size(), 6U);
}

TEST(Moved, errors_are_sentences) {
  const Polyhedron box = test::cube();
  const HingeTree tree = cross_net(box);
  const auto why = [&](std::size_t face, EdgeId edge) { return moved(box, tree, FaceId::at(face), edge).error(); };
  const auto between = [&](std::size_t a, std::size_t b) { return *box.edge_between(FaceId::at(a), FaceId::at(b)); };
  EXPECT_EQ(why(0, between(0, 2)), "face 0 lies on the table and hangs on no other face");
  EXPECT_NE(why(1, between(0, 2)).find("is no edge of face 1"), std::string::npos);
  EXPECT_NE(why(1, between(1, 2)).find("already"), std::string::npos);
  EXPECT_EQ(why(2, between(1, 2)), "face 1 hangs on face 2 itself and cannot hold it");
}

TEST(Moved, the_lid_of_a_box_can_hang_on_each_side) {
  const Polyhedron box = test::cube();
  const HingeTree tree = cross_net(box);
  const std::vector<EdgeId> possible = possible_hinges(box, tree, FaceId::at(1));
  EXPECT_EQ(possible.size(), 3U);
  EXPECT_TRUE(possible_hinges(box, tree, FaceId::at(0)).empty());
  EXPECT_EQ(possible_hinges(box, tree, FaceId::at(2)).size(), 2U);  // its neighbors, not the lid on it
}

RC_GTEST_PROP(HingeTreeLaws, each_face_hangs_on_one_before_it, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice).solid;
  const HingeTree tree = test::random_tree(solid, dice);
  RC_ASSERT(tree.hinges().size() + 1 == solid.faces().size());
  RC_ASSERT(std::is_sorted(tree.hinges().begin(), tree.hinges().end()));
  RC_ASSERT(tree.order().size() == solid.faces().size());
  std::vector<FaceId> seen = {tree.root()};
  for (std::size_t i = 1; i < tree.order().size(); ++i) {
    const auto link = tree.link(tree.order()[i]);
    RC_ASSERT(link.has_value());
    RC_ASSERT(std::find(seen.begin(), seen.end(), link->parent) != seen.end());
    RC_ASSERT(tree.is_hinge(link->hinge));
    RC_ASSERT(solid.other_face(link->hinge, tree.order()[i]) == link->parent);
    seen.push_back(tree.order()[i]);
  }
}

RC_GTEST_PROP(HingeTreeLaws, moving_a_face_and_back_changes_nothing, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice).solid;
  const HingeTree tree = test::random_tree(solid, dice);
  const FaceId face = FaceId::at(dice.below(solid.faces().size()));
  const std::vector<EdgeId> possible = possible_hinges(solid, tree, face);
  for (const EdgeId edge : solid.edges_of(face)) {
    const auto made = moved(solid, tree, face, edge);
    const bool offered = std::find(possible.begin(), possible.end(), edge) != possible.end();
    RC_ASSERT(made.has_value() == offered);
    if (made) {
      RC_ASSERT(made->link(face)->hinge == edge);
      RC_ASSERT(made->subtree(face) == tree.subtree(face));
      RC_ASSERT(*moved(solid, *made, face, tree.link(face)->hinge) == tree);
    }
  }
}

RC_GTEST_PROP(HingeTreeLaws, standing_on_another_face_keeps_the_hinges, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = any_solid(dice).solid;
  const HingeTree tree = test::random_tree(solid, dice);
  const FaceId root = FaceId::at(dice.below(solid.faces().size()));
  const HingeTree other = rerooted(solid, tree, root);
  RC_ASSERT(other.root() == root);
  RC_ASSERT(other.hinges() == tree.hinges());
  RC_ASSERT(rerooted(solid, other, tree.root()) == tree);
}

}  // namespace
}  // namespace fw::nets::hinge_tree_test
