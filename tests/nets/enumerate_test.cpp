#include "nets/enumerate.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

#include "geometry/symmetry.hpp"
#include "nets/random_tree.hpp"
#include "nets/spanning_trees.hpp"

namespace fw::nets::enumerate_test {
namespace {

/// Every set of F - 1 edges that is a tree, by trying them all.
std::vector<HingeTree> all_trees(const Polyhedron& solid) {
  std::vector<HingeTree> trees;
  const std::size_t edge_count = solid.edges().size();
  for (EdgeMask mask = 0; mask < EdgeMask{1} << edge_count; ++mask) {
    std::vector<EdgeId> hinges = edges_of_mask(mask);
    if (hinges.size() + 1 == solid.faces().size()) {
      auto made = HingeTree::make(solid, FaceId::at(0), std::move(hinges));
      if (made.has_value()) {
        trees.push_back(*made);
      }
    }
  }
  return trees;
}

TEST(DistinctNets, are_the_least_of_all_trees_tried_one_by_one) {
  for (const Polyhedron& solid : {test::cube(), test::box(1, 2, 3), test::octahedron(), test::prism(3, 2),
                                  test::frustum(3, 1, 0.5, 1), test::pyramid(5, 2)}) {
    const std::vector<HingeTree> trees = all_trees(solid);
    EXPECT_EQ(std::to_string(trees.size()), labelled_count(solid));
    std::set<EdgeMask> classes;
    for (const HingeTree& tree : trees) {
      classes.insert(net_class(solid, tree));
    }
    std::vector<EdgeMask> listed;
    for_each_distinct_net(solid, [&](EdgeMask hinges) {
      listed.push_back(hinges);
      return true;
    });
    EXPECT_EQ(listed, std::vector<EdgeMask>(classes.begin(), classes.end()));
  }
}

TEST(DistinctNets, stop_at_the_limit) {
  const Polyhedron cube = test::cube();
  const NetList few = distinct_nets(cube, FaceId::at(2), 5);
  EXPECT_EQ(few.nets.size(), 5U);
  EXPECT_FALSE(few.complete);
  EXPECT_EQ(few.nets.front().root(), FaceId::at(2));
  const NetList all = distinct_nets(cube, FaceId::at(2), 11);
  EXPECT_EQ(all.nets.size(), 11U);
  EXPECT_TRUE(all.complete);
  // 2.7 million million trees: only a walk that stops comes to an end.
  EXPECT_EQ(distinct_nets(test::prism(20, 1), FaceId::at(0), 60).nets.size(), 60U);
}

TEST(CountNets, of_a_cube) {
  const NetCount count = count_nets(test::cube());
  EXPECT_EQ(count.labelled, "384");
  EXPECT_EQ(count.distinct, 11U);
  EXPECT_EQ(count.overlapping, 0U);
}

TEST(CountNets, tells_how_far_it_is) {
  std::vector<std::uint64_t> told;
  const NetCount count = count_nets(test::prism(8, 1), [&](std::uint64_t distinct) { told.push_back(distinct); });
  ASSERT_FALSE(told.empty());
  EXPECT_EQ(told.size(), count.distinct / told.front());
  EXPECT_LE(told.back(), count.distinct);
}

RC_GTEST_PROP(NetClass, is_the_same_for_each_symmetric_image, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = test::samples()[dice.below(test::samples().size())].solid;
  const HingeTree tree = test::random_tree(solid, dice);
  const EdgeMask own = net_class(solid, tree);
  RC_ASSERT(own <= mask_of(tree));
  for (const geometry::Symmetry& symmetry : geometry::symmetries(solid)) {
    std::vector<EdgeId> image;
    for (const EdgeId hinge : tree.hinges()) {
      image.push_back(symmetry.edge[hinge]);
    }
    const auto made = HingeTree::make(solid, symmetry.face[tree.root()], image);
    RC_ASSERT(made.has_value());
    RC_ASSERT(net_class(solid, *made) == own);
    RC_ASSERT(EdgeAction(symmetry)(mask_of(tree)) == mask_of(*made));
  }
}

// Source: B. R. Myers, IEEE Trans. Circuit Theory CT-18 (1971) 280-282 (from memory): L(2n) - 2 trees on a wheel.
TEST(LabelledCount, of_pyramids_follows_the_lucas_numbers) {
  std::uint64_t lucas = 2;
  std::uint64_t next = 1;
  for (std::size_t index = 0; index <= 60; ++index) {
    if (index >= 6 && index % 2 == 0) {
      EXPECT_EQ(labelled_count(test::pyramid(index / 2, 2)), std::to_string(lucas - 2)) << index / 2;
    }
    const std::uint64_t sum = lucas + next;
    lucas = next;
    next = sum;
  }
}

}  // namespace
}  // namespace fw::nets::enumerate_test
