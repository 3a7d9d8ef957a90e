#include "nets/fold_test.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "nets/enumerate.hpp"
#include "nets/layout.hpp"
#include "support/polyhedra.hpp"

namespace fw::nets::fold_test_test {
namespace {

using geometry::Polygon;
using geometry::Vec2;
using geometry::Vec3;

const std::vector<test::NamedSolid>& small_solids() {
  static const std::vector<test::NamedSolid> solids{
      {"tetrahedron", test::regular_tetrahedron()},
      {"three equal isosceles sides", test::pyramid(3, 1.3)},
      {"cube", test::cube()},
      {"box 2x2x3", test::box(2, 2, 3)},
      {"box 2x3x4", test::box(2, 3, 4)},
      {"square", test::pyramid(4, 1.2)},
      {"rectangle", test::pyramid_on({{0, 0, 0}, {4, 0, 0}, {4, 3, 0}, {0, 3, 0}}, {2, 1.5, 2})},
      {"pentagon", test::pyramid(5, 1.5)},
      {"equilateral", test::prism(3, 2)},
      {"scalene", test::prism_on({{0, 0, 0}, {4, 0, 0}, {1.5, 2, 0}}, 3)},
      {"pentagonal", test::prism(5, 1.4)},
      {"flat stump", test::frustum(4, 1, 0.5, 0.8)},
      {"bipyramid", test::bipyramid(3, 1.1)},
  };
  return solids;
}

bool lies_on(const std::vector<Vec3>& piece, const std::vector<Vec3>& face, double reach) {
  return piece.size() == face.size() && std::all_of(piece.begin(), piece.end(), [&](const Vec3& corner) {
           return std::any_of(face.begin(), face.end(),
                              [&](const Vec3& other) { return glm::length(corner - other) < reach; });
         });
}

// How many pieces lie on each face when all hinges are turned: by coordinates alone.
std::vector<std::size_t> covered(const Polyhedron& solid, const Pose& closed) {
  std::vector<std::size_t> count(solid.faces().size(), 0);
  for (const auto& piece : closed) {
    for (std::size_t f = 0; f < count.size(); ++f) {
      count[f] += lies_on(piece, solid.corners(FaceId::at(f)), 1e-3) ? 1U : 0U;
    }
  }
  return count;
}

TEST(FoldTest, takes_every_distinct_net_from_every_root_turned_and_flipped) {
  for (const auto& [name, solid] : small_solids()) {
    const NetList list = distinct_nets(solid, FaceId::at(0), 100);
    for (std::size_t n = 0; n < list.nets.size(); ++n) {
      const FaceId root = FaceId::at(n % solid.faces().size());
      const Cutout net = cutout_of(solid, rerooted(solid, list.nets[n], root));
      const bool is_flat = overlapping(net).empty();
      // Without a word on where the pieces come from, turned by an odd angle.
      std::vector<Piece> unmarked(net.pieces().begin(), net.pieces().end());
      for (Piece& piece : unmarked) {
        piece.copy_of.reset();
        for (Vec2& corner : piece.shape) {
          corner = {0.6 * corner.x - 0.8 * corner.y + 5, 0.8 * corner.x + 0.6 * corner.y - 2};
        }
      }
      const Cutout turned = Cutout::make(unmarked).value();
      for (const Cutout& cutout : {net, turned, flipped(net), flipped(turned)}) {
        const FoldTest test = fold_test(solid, cutout);
        ASSERT_EQ(test.is_net(), is_flat) << name << ", net " << n;
        if (test.is_net()) {
          EXPECT_EQ(net_class(solid, tree_of(solid, cutout, test)), net_class(solid, list.nets[n])) << name;
          EXPECT_EQ(covered(solid, pose(solid, cutout, test, 0)), std::vector<std::size_t>(solid.faces().size(), 1))
              << name;
        }
      }
    }
  }
}

// Whether the reason that was found is true by coordinates.
void expect_true_reason(const Polyhedron& solid, const Cutout& cutout, const FoldTest& test, const std::string& name) {
  const Finding& finding = *test.finding;
  const Pose closed = pose(solid, cutout, test, 0);
  const std::vector<std::size_t> count = covered(solid, closed);
  if (finding.misfit == Misfit::Collision || finding.misfit == Misfit::SameSide) {
    for (std::size_t f = 0; f < count.size(); ++f) {
      const FaceId face = FaceId::at(f);
      const bool is_doubled = std::find(finding.doubled.begin(), finding.doubled.end(), face) != finding.doubled.end();
      const bool is_open = std::find(finding.open.begin(), finding.open.end(), face) != finding.open.end();
      EXPECT_EQ(is_doubled, count[f] > 1) << name;
      EXPECT_EQ(is_open, count[f] == 0) << name;
    }
    EXPECT_FALSE(finding.doubled.empty()) << name;
  } else if (finding.misfit == Misfit::EdgesDiffer) {
    ASSERT_EQ(finding.edges.size(), 2U);
    EXPECT_GT(std::abs(edge_length(cutout, finding.edges[0]) - edge_length(cutout, finding.edges[1])), 1e-3) << name;
  } else if (finding.misfit == Misfit::WrongPiece) {
    ASSERT_FALSE(finding.pieces.empty());
    for (const PieceId piece : finding.pieces) {
      const auto& landing = test.landings[piece];
      EXPECT_TRUE(!landing || !lies_on(closed[piece.index()], solid.corners(landing->face), 1e-3)) << name;
    }
  } else {
    ADD_FAILURE() << name << ": moving a piece cannot lead to reason " << static_cast<int>(finding.misfit);
  }
}

TEST(FoldTest, gives_a_true_reason_for_every_net_with_one_piece_moved) {
  std::map<Misfit, std::size_t> reasons;
  std::size_t still_nets = 0;
  for (const auto& [name, solid] : small_solids()) {
    for (const HingeTree& tree : distinct_nets(solid, FaceId::at(0), 25).nets) {
      const std::vector<Cutout> all = with_one_piece_moved(cutout_of(solid, tree));
      for (std::size_t i = 0; i < all.size(); i += 1 + all.size() / 12) {
        const FoldTest test = fold_test(solid, all[i]);
        EXPECT_EQ(fold_test(solid, flipped(all[i])).is_net(), test.is_net());
        if (!test.is_net()) {
          ++reasons[test.finding->misfit];
          expect_true_reason(solid, all[i], test, name);
          continue;
        }
        ++still_nets;
        EXPECT_EQ(covered(solid, pose(solid, all[i], test, 0)), std::vector<std::size_t>(solid.faces().size(), 1));
      }
    }
  }
  EXPECT_GT(still_nets, 100U);
  EXPECT_GT(reasons[Misfit::Collision], 100U);
  EXPECT_GT(reasons[Misfit::SameSide], 5U);
  EXPECT_GT(reasons[Misfit::EdgesDiffer], 100U);
}

Misfit misfit_of(const Polyhedron& solid, const Cutout& cutout) {
  const FoldTest test = fold_test(solid, cutout);
  return test.finding ? test.finding->misfit : Misfit::Overlap;
}

HingeTree star(const Polyhedron& solid) {
  return HingeTree::make(solid, FaceId::at(0), solid.edges_of(FaceId::at(0))).value();
}

TEST(FoldTest, counts_pieces_first) {
  const Polyhedron cube = test::cube();
  const Cutout net = cutout_of(cube, distinct_nets(cube, FaceId::at(0), 1).nets[0]);
  const Cutout five = without(net, leaves(net)[0]);
  const FoldTest test = fold_test(cube, five);
  ASSERT_FALSE(test.is_net());
  EXPECT_EQ(test.finding->misfit, Misfit::WrongCount);
  EXPECT_EQ(test.finding->open.size(), 1U);
  const PieceEdge place = free_edges(net)[3];
  const Piece more{net.pieces()[PieceId::at(0)].shape, std::nullopt, Joint{place.piece, place.edge, 0}};
  EXPECT_EQ(misfit_of(cube, with(net, more)), Misfit::WrongCount);
}

TEST(FoldTest, finds_both_ends_on_one_side_of_the_strip) {
  const Polyhedron tent = test::prism_on({{0, 0, 0}, {4, 0, 0}, {1.5, 2, 0}}, 3);
  // Faces: the two ends, then the three walls round them.
  const auto between = [&](std::size_t a, std::size_t b) { return *tent.edge_between(FaceId::at(a), FaceId::at(b)); };
  const HingeTree strip =
      HingeTree::make(tent, FaceId::at(2), {between(2, 3), between(3, 4), between(2, 0), between(3, 1)}).value();
  const Cutout net = cutout_of(tent, strip);
  EXPECT_TRUE(fold_test(tent, net).is_net());
  std::vector<Piece> pieces(net.pieces().begin(), net.pieces().end());
  for (Piece& piece : pieces) {
    if (piece.copy_of == FaceId::at(1)) {
      // A copy of the other end in place of this one, on the opposite edge of its wall.
      const Cutout other = cutout_of(
          tent,
          HingeTree::make(tent, FaceId::at(2), {between(2, 3), between(3, 4), between(3, 0), between(3, 1)}).value());
      for (const Piece& one : other.pieces()) {
        piece = one.copy_of == FaceId::at(0)
                    ? Piece{one.shape, one.copy_of, Joint{piece.joint->on, one.joint->edge, one.joint->by}}
                    : piece;
      }
    }
  }
  const Cutout both = Cutout::make(pieces).value();
  const FoldTest test = fold_test(tent, both);
  ASSERT_FALSE(test.is_net());
  EXPECT_EQ(test.finding->misfit, Misfit::SameSide);
  EXPECT_EQ(test.finding->doubled, std::vector<FaceId>{FaceId::at(0)});
  EXPECT_EQ(test.finding->open, std::vector<FaceId>{FaceId::at(1)});
  EXPECT_EQ(test.finding->pieces.size(), 2U);
}

TEST(FoldTest, speaks_of_a_strip_only_where_there_are_two_ends) {
  // Opposite triangles of a pyramid are no ends: the square between them is no strip with its other two triangles.
  const Polyhedron solid = test::pyramid(4, 1.2);
  std::size_t collisions = 0;
  for (const HingeTree& tree : distinct_nets(solid, FaceId::at(0), 8).nets) {
    for (const Cutout& cutout : with_one_piece_moved(cutout_of(solid, tree))) {
      const FoldTest test = fold_test(solid, cutout);
      collisions += test.finding && test.finding->misfit == Misfit::Collision ? 1U : 0U;
      EXPECT_FALSE(test.finding && test.finding->misfit == Misfit::SameSide);
    }
  }
  EXPECT_GT(collisions, 0U);
}

// The star of a pyramid with side 10 and triangles of another height on it.
Cutout star_with(const Polyhedron& solid, const std::vector<double>& heights) {
  const Cutout net = cutout_of(solid, star(solid));
  std::vector<Piece> pieces(net.pieces().begin(), net.pieces().end());
  for (std::size_t p = 1; p < pieces.size(); ++p) {
    pieces[p].shape = {{0, 0}, {10, 0}, {5, heights[p - 1]}};
    pieces[p].joint->by = 0;
  }
  return Cutout::make(pieces).value();
}

TEST(FoldTest, tells_triangles_that_are_too_short) {
  // Side 10, height 12: the slant height is 13 (5-12-13). Source: the Pythagorean theorem.
  const Polyhedron solid = test::pyramid_on({{-5, -5, 0}, {5, -5, 0}, {5, 5, 0}, {-5, 5, 0}}, {0, 0, 12});
  const auto finding = [&](const std::vector<double>& heights, bool turn) {
    const Cutout cutout = star_with(solid, heights);
    return fold_test(solid, turn ? flipped(cutout) : cutout).finding;
  };
  for (const bool turn : {false, true}) {
    EXPECT_FALSE(finding({13, 13, 13, 13}, turn));
    EXPECT_EQ(finding({12, 12, 12, 12}, turn)->misfit, Misfit::TooLow);
    EXPECT_EQ(finding({12, 12, 12, 12}, turn)->pieces.size(), 4U);
    EXPECT_EQ(finding({9, 9, 9, 9}, turn)->misfit, Misfit::TooLow);
    EXPECT_EQ(finding({5, 5, 5, 5}, turn)->misfit, Misfit::TooShort);
    EXPECT_EQ(finding({4, 4, 4, 4}, turn)->misfit, Misfit::TooShort);
    EXPECT_EQ(finding({13, 13, 4, 13}, turn)->misfit, Misfit::TooShort);
    EXPECT_EQ(finding({13, 13, 4, 13}, turn)->pieces, std::vector<PieceId>{PieceId::at(3)});
    EXPECT_EQ(finding({13, 13, 9, 13}, turn)->misfit, Misfit::EdgesDiffer);
    EXPECT_EQ(finding({14, 14, 14, 14}, turn)->misfit, Misfit::WrongPiece);
    EXPECT_EQ(finding({13, 13, 13, 14}, turn)->misfit, Misfit::EdgesDiffer);
  }
}

TEST(FoldTest, short_triangles_fail_to_meet_in_the_pose) {
  const Polyhedron solid = test::pyramid_on({{-5, -5, 0}, {5, -5, 0}, {5, 5, 0}, {-5, 5, 0}}, {0, 0, 12});
  const auto tips = [&](double height) {
    const Cutout cutout = star_with(solid, {height, height, height, height});
    const Pose closed = pose(solid, cutout, fold_test(solid, cutout), 0);
    return glm::length(closed[1][2] - closed[3][2]);
  };
  EXPECT_NEAR(tips(13), 0, 1e-9);
  // 12 of 13 parts of the way to the middle: the tips stay 10 × 1/13 apart.
  EXPECT_NEAR(tips(12), 10.0 / 13, 1e-9);
  EXPECT_GT(tips(5), 6);
}

TEST(FoldTest, names_edges_of_different_length) {
  const Polyhedron box = test::box(2, 3, 4);
  const Cutout net = cutout_of(box, distinct_nets(box, FaceId::at(0), 1).nets[0]);
  std::vector<Piece> pieces(net.pieces().begin(), net.pieces().end());
  const PieceId leaf = leaves(net)[0];
  // Stretched across the edge by which it hangs: the joint still fits, what it would meet does not.
  Piece& wide = pieces[leaf.index()];
  const std::size_t by = wide.joint->by;
  const Vec2 outward = (wide.shape[(by + 2) % 4] - wide.shape[(by + 1) % 4]) * 0.25;
  wide.shape[(by + 2) % 4] += outward;
  wide.shape[(by + 3) % 4] += outward;
  const Cutout stretched = Cutout::make(pieces).value();
  const FoldTest test = fold_test(box, stretched);
  ASSERT_FALSE(test.is_net());
  EXPECT_EQ(test.finding->misfit, Misfit::EdgesDiffer);
  EXPECT_EQ(test.finding->edges[0].piece, leaf);
  const double ratio = edge_length(stretched, test.finding->edges[0]) / edge_length(stretched, test.finding->edges[1]);
  EXPECT_NEAR(ratio, 1.25, 1e-9);
  // Joined along edges of different length.
  const Cutout rest = without(net, leaf);
  const Piece loose{net.pieces()[leaf].shape, std::nullopt,
                    Joint{net.pieces()[leaf].joint->on, net.pieces()[leaf].joint->edge, (by + 1) % 4}};
  const FoldTest joined = fold_test(box, with(rest, loose));
  ASSERT_FALSE(joined.is_net());
  EXPECT_EQ(joined.finding->misfit, Misfit::EdgesDiffer);
}

TEST(FoldTest, refuses_what_lies_on_itself) {
  // Source: computed in another program; faces joined in this chain overlap.
  const Polyhedron solid = test::tetrahedron({0, 0, 0}, {1, 0, 0}, {10, 1, 0}, {16, 4, 2});
  std::size_t refused = 0;
  for (const HingeTree& tree : distinct_nets(solid, FaceId::at(0), 16).nets) {
    const FoldTest test = fold_test(solid, cutout_of(solid, tree));
    EXPECT_EQ(test.is_net(), overlapping(unfolded(solid, tree)).empty());
    refused += !test.is_net() && test.finding->misfit == Misfit::Overlap && test.finding->pieces.size() >= 2 ? 1U : 0U;
  }
  EXPECT_GT(refused, 0U);
}

TEST(FoldTest, a_piece_of_another_shape_is_said_to_be_wrong) {
  const Polyhedron cube = test::cube();
  const Cutout net = cutout_of(cube, distinct_nets(cube, FaceId::at(0), 1).nets[0]);
  const PieceId leaf = leaves(net)[0];
  const Cutout rest = without(net, leaf);
  const Joint joint = *net.pieces()[leaf].joint;
  const FoldTest test =
      fold_test(cube, with(rest, {{{0, 0}, {1, 0}, {0.5, 1}}, std::nullopt, Joint{joint.on, joint.edge, 0}}));
  ASSERT_FALSE(test.is_net());
  EXPECT_EQ(test.finding->misfit, Misfit::WrongPiece);
  EXPECT_EQ(test.finding->pieces, std::vector<PieceId>{PieceId::at(5)});
}

}  // namespace
}  // namespace fw::nets::fold_test_test
