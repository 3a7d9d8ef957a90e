#include "nets/cutout.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "nets/fold_test.hpp"
#include "nets/layout.hpp"
#include "nets/random_tree.hpp"

namespace fw::nets::cutout_test {
namespace {

using geometry::Polygon;
using geometry::Vec2;
using geometry::Vec3;

const Polygon square{{0, 0}, {1, 0}, {1, 1}, {0, 1}};

Piece hung(const Polygon& shape, std::size_t on, std::size_t edge, std::size_t by) {
  return {shape, std::nullopt, Joint{PieceId::at(on), edge, by}};
}
std::string fault_of(std::vector<Piece> pieces) {
  const auto made = Cutout::make(std::move(pieces));
  return made ? "" : made.error().message;
}

TEST(Cutout, errors_are_sentences) {
  const Polygon bow{{0, 0}, {1, 1}, {1, 0}, {0, 1}};
  const Polygon clockwise{{0, 0}, {0, 1}, {1, 1}, {1, 0}};
  EXPECT_EQ(fault_of({}), "a cut-out has at least one piece");
  EXPECT_EQ(fault_of({{{{0, 0}, {1, 0}}}}), "piece 1 has 2 corners; a piece has 3 or more");
  EXPECT_EQ(fault_of({{bow}}), "the sides of piece 1 cross or touch each other: list its corners in order round it");
  EXPECT_EQ(fault_of({{clockwise}}), "the corners of piece 1 run clockwise: list them counterclockwise");
  EXPECT_EQ(fault_of({{square}, {square}}), "piece 2 hangs on no other piece");
  EXPECT_EQ(fault_of({hung(square, 0, 0, 0)}), "the first piece hangs on no other one");
  EXPECT_EQ(fault_of({{square}, hung(square, 1, 0, 0)}), "piece 2 can only hang on a piece before it, 1 to 1");
  EXPECT_EQ(fault_of({{square}, hung(square, 0, 4, 0)}), "piece 1 has edges 1 to 4");
  EXPECT_EQ(fault_of({{square}, hung(square, 0, 0, 7)}), "piece 2 has edges 1 to 4");
  EXPECT_EQ(fault_of({{square}, hung(square, 0, 0, 0), hung(square, 0, 0, 1)}),
            "edge 1 of piece 1 is joined to another piece already");
  EXPECT_EQ(fault_of({{square}, hung(square, 0, 0, 2), hung(square, 1, 2, 1)}),
            "edge 3 of piece 2 is joined to another piece already");
  EXPECT_EQ(fault_of({{square}, hung(square, 0, 0, 2)}), "");
}

TEST(Cutout, knows_its_outline_and_its_leaves) {
  const Cutout row = Cutout::make({{square}, hung(square, 0, 1, 3), hung(square, 1, 1, 3)}).value();
  EXPECT_EQ(free_edges(row).size(), 8U);
  EXPECT_EQ(leaves(row), std::vector<PieceId>{PieceId::at(2)});
  const Cutout pair = without(row, PieceId::at(2));
  EXPECT_EQ(pair, Cutout::make({{square}, hung(square, 0, 1, 3)}).value());
  EXPECT_EQ(with(pair, hung(square, 1, 1, 3)), row);
  EXPECT_EQ(laid_flat(row)[PieceId::at(2)][0], Vec2(2, 0));
  // Three squares in a row, and six places left for the third where no two lie on each other, each by four edges, less
  // the one where it hangs already.
  EXPECT_EQ(with_one_piece_moved(row).size(), 6U * 4U - 1U);
}

TEST(Cutout, lies_as_it_is_turned_and_flipped) {
  const Cutout pair = Cutout::make({{square}, hung(square, 0, 1, 3)}).value();
  const auto is_at = [](Vec2 corner, Vec2 place) { return glm::length(corner - place) < 1e-12; };
  const auto quarter = lying(pair, test::pi / 2, false);
  EXPECT_TRUE(is_at(quarter[1][1], {0, 2}));  // (2, 0) a quarter turn on
  const auto other_side = lying(pair, test::pi / 2, true);
  EXPECT_TRUE(is_at(other_side[1][1], {0, -2}));
  EXPECT_GT(geometry::signed_area(quarter[1]), 0);
  EXPECT_LT(geometry::signed_area(other_side[1]), 0);
}

TEST(Cutout, pieces_that_lie_on_each_other_are_found) {
  const Cutout ring =
      Cutout::make(
          {{square}, hung(square, 0, 1, 3), hung(square, 1, 2, 0), hung(square, 2, 3, 1), hung(square, 3, 0, 2)})
          .value();
  EXPECT_EQ(overlapping(ring), (std::vector<std::pair<PieceId, PieceId>>{{PieceId::at(0), PieceId::at(4)}}));
  EXPECT_TRUE(overlapping(without(ring, PieceId::at(4))).empty());
}

RC_GTEST_PROP(CutoutLaws, a_net_lies_as_its_layout_does, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = test::samples()[dice.below(test::samples().size())].solid;
  const HingeTree tree = test::random_tree(solid, dice);
  const Cutout cutout = cutout_of(solid, tree);
  const Layout layout = unfolded(solid, tree);
  const auto laid = laid_flat(cutout);
  for (std::size_t p = 0; p < laid.size(); ++p) {
    RC_ASSERT(laid[PieceId::at(p)] == layout[*cutout.pieces()[PieceId::at(p)].copy_of]);
  }
  const Cutout twice = flipped(flipped(cutout));
  for (std::size_t p = 0; p < laid.size(); ++p) {
    RC_ASSERT(twice.pieces()[PieceId::at(p)].shape == cutout.pieces()[PieceId::at(p)].shape);
    RC_ASSERT(twice.pieces()[PieceId::at(p)].joint == cutout.pieces()[PieceId::at(p)].joint);
  }
}

RC_GTEST_PROP(CutoutLaws, a_net_folds_as_the_solid_unfolds, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = test::samples()[dice.below(test::samples().size())].solid;
  const HingeTree tree = test::random_tree(solid, dice);
  const Cutout cutout = cutout_of(solid, tree);
  const FoldTest test = fold_test(solid, cutout);
  const double amount = dice.between(0, 1);
  const Pose folded = pose(solid, cutout, test, amount);
  const Pose unfolding = pose(solid, tree, amount, FoldOrder::Together);
  const double size = geometry::bounding_box({solid.vertices().begin(), solid.vertices().end()}).diagonal();
  for (std::size_t p = 0; p < folded.size(); ++p) {
    const FaceId face = *cutout.pieces()[PieceId::at(p)].copy_of;
    RC_ASSERT(test.landings[PieceId::at(p)]->face == face);
    RC_ASSERT(test.landings[PieceId::at(p)]->fits);
    for (std::size_t i = 0; i < folded[p].size(); ++i) {
      RC_ASSERT(glm::length(folded[p][i] - unfolding[face.index()][i]) < 1e-8 * size);
    }
  }
  RC_ASSERT(test.is_net() == overlapping(unfolded(solid, tree)).empty());
}

RC_GTEST_PROP(CutoutPoseGuarantees, guarantees_1_and_3_hold_for_what_is_no_net_too, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polyhedron& solid = test::samples()[dice.below(test::samples().size())].solid;
  Cutout cutout = cutout_of(solid, test::random_tree(solid, dice));
  const std::vector<PieceId> loose = leaves(cutout);
  RC_PRE(!loose.empty());
  const PieceId leaf = loose[dice.below(loose.size())];
  const Piece piece = cutout.pieces()[leaf];
  const Cutout rest = without(cutout, leaf);
  const std::vector<PieceEdge> outline = free_edges(rest);
  const PieceEdge place = outline[dice.below(outline.size())];
  const Cutout moved = with(rest, {piece.shape, std::nullopt, Joint{place.piece, place.edge, dice.below(3)}});
  const FoldTest test = fold_test(solid, moved);
  const double amount = dice.between(0, 1);
  const Pose flat = pose(solid, moved, test, 1);
  const Pose folded = pose(solid, moved, test, amount);
  const double size = geometry::bounding_box({solid.vertices().begin(), solid.vertices().end()}).diagonal();
  RC_ASSERT(folded[0] == flat[0]);
  for (std::size_t p = 0; p < folded.size(); ++p) {
    const std::size_t count = folded[p].size();
    for (std::size_t i = 1; i < count; ++i) {
      RC_ASSERT(std::abs(glm::length(folded[p][i] - folded[p][0]) - glm::length(flat[p][i] - flat[p][0])) <
                1e-9 * size);
    }
    const auto& joint = moved.pieces()[PieceId::at(p)].joint;
    if (joint && equally_long(moved, {joint->on, joint->edge}, {PieceId::at(p), joint->by})) {
      const auto& holder = folded[joint->on.index()];
      RC_ASSERT(glm::length(folded[p][joint->by] - holder[(joint->edge + 1) % holder.size()]) < 1e-4 * size);
      RC_ASSERT(glm::length(folded[p][(joint->by + 1) % count] - holder[joint->edge]) < 1e-4 * size);
    }
  }
}

}  // namespace
}  // namespace fw::nets::cutout_test
