#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "geometry/measure.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/body/sight.hpp"
#include "solids/body/standing.hpp"
#include "support/describe_solid.hpp"

namespace fw::solids::body_test {
namespace {

const std::string box = "rectangular prism | length: 6 cm | width: 4 cm | height: 3 cm";
const std::string tall_box = "rectangular prism | length: 4 cm | width: 4 cm | height: 9 cm";
const std::string pyramid = "pyramid | height: 12 cm | base square | side: 10 cm";
// The base is an L: 4 by 4 with a square of 2 by 2 taken from its far right corner.
const std::string l_shape = "prism | height: 3 cm | base polygon | vertices: 0 0, 4 0, 4 2, 2 2, 2 4, 0 4 | unit: cm";

TEST(Bodies, AreCounted) {
  const Solid solid = test::solid(pyramid);
  const Body& body = solid.body();
  EXPECT_EQ(body.face_count(), 5U);
  EXPECT_EQ(body.edge_count(), 8U);
  EXPECT_EQ(body.vertex_count(), 5U);
  EXPECT_EQ(body.side_count(FaceId::at(0)), 4U);
  EXPECT_EQ(body.side_count(FaceId::at(4)), 3U);
  std::vector<std::size_t> meeting = body.faces_at_vertices();
  std::sort(meeting.begin(), meeting.end());
  EXPECT_EQ(meeting, (std::vector<std::size_t>{3, 3, 3, 3, 4}));
}

TEST(Bodies, TellWhichFacesMeetAlongAnEdgeAndWhichEdgeLiesBetweenTwo) {
  const Body body = test::solid(pyramid).body();
  for (std::size_t i = 0; i < body.edge_count(); ++i) {
    const auto [left, right] = body.faces_at(EdgeId::at(i));
    EXPECT_EQ(body.edge_between(left, right), EdgeId::at(i));
    EXPECT_EQ(body.across(EdgeId::at(i), left), right);
    EXPECT_EQ(body.across(EdgeId::at(i), right), left);
  }
  EXPECT_EQ(body.edge_between(FaceId::at(1), FaceId::at(3)), std::nullopt) << "across the apex";
}

// 4 · (6 + 4 + 3) = 52.
TEST(Bodies, MeasureTheirEdgesAndTheirHeight) {
  const Body body = test::solid(box).body();
  const std::vector<double> lengths = body.edge_lengths();
  EXPECT_EQ(lengths.size(), 12U);
  EXPECT_NEAR(std::accumulate(lengths.begin(), lengths.end(), 0.0), 52, 1e-12);
  EXPECT_NEAR(body.height_over(body.faces_toward({0, 0, -1}).front()), 3, 1e-12);
  EXPECT_NEAR(body.height_over(body.faces_toward({0, -1, 0}).front()), 4, 1e-12);
}

TEST(Bodies, FindTheFacesThatLookSomewhereAndThoseThatAnEyeSees) {
  const Body body = test::solid(l_shape).body();
  EXPECT_EQ(body.faces_toward({1, 0, 0}).size(), 2U) << "the two steps of the L";
  EXPECT_EQ(body.faces_toward({0, 0, 1}).size(), 1U);
  EXPECT_TRUE(body.faces_toward({0.6, 0, 0.8}).empty());
  const FaceId top = body.faces_toward({0, 0, 1}).front();
  EXPECT_TRUE(body.is_before(top, {0, 0, 3.1}));
  EXPECT_FALSE(body.is_before(top, {0, 0, 2.9}));
}

TEST(Bodies, FindTheEdgeThatALengthLiesAlong) {
  const Solid solid = test::solid(box);
  for (const Face& face : solid.faces()) {
    const FlatFace flat = solid.body().flat(face.id);
    for (std::size_t i = 0; i < flat.outline.size(); ++i) {
      const Vec3 from = flat.plane.lifted(flat.outline[i]);
      const Vec3 to = flat.plane.lifted(flat.outline[(i + 1) % flat.outline.size()]);
      EXPECT_EQ(solid.body().edge_along(face.id, from, to, 1e-9), solid.body().edges_of(face.id)[i]);
      EXPECT_EQ(solid.body().edge_along(face.id, from, to + flat.plane.normal, 1e-9), std::nullopt);
    }
  }
}

TEST(Bodies, AreJoinedAlikeWhateverTheirMeasures) {
  EXPECT_TRUE(test::solid(box).body().is_joined_like(test::solid(tall_box).body()));
  EXPECT_FALSE(test::solid(box).body().is_joined_like(test::solid(l_shape).body()));
}

// Seen from in front, above and to the right, the three edges of a box's far corner are hidden and three faces are
// seen (common practice of drawing, no source).
TEST(Sights, OfABoxHideTheThreeEdgesOfItsFarCorner) {
  const Sight sight = seen_from_afar(test::solid(box).body(), glm::normalize(Vec3{1, -2, 1}));
  ASSERT_EQ(sight.lines.size(), 12U);
  for (const SightLine& line : sight.lines) {
    const Vec3 far{-3, 2, 0};
    EXPECT_EQ(line.hidden, line.from == far || line.to == far);
  }
  EXPECT_EQ(std::count_if(sight.faces.begin(), sight.faces.end(), [](const auto& face) { return face.is_whole; }), 3);
}

// From in front, to the right and above, the near arm of the L hides a part of the foot of the wall behind it.
TEST(Sights, OfAConcaveBodyHidePartsOfAnEdgeAndFillNoFace) {
  const Body body = test::solid(l_shape).body();
  const Sight sight = seen_from_afar(body, glm::normalize(Vec3{1, -1, 2}));
  EXPECT_GT(sight.lines.size(), body.edge_count()) << "an edge of which a part is hidden comes in pieces";
  EXPECT_TRUE(std::none_of(sight.faces.begin(), sight.faces.end(), [](const auto& face) { return face.is_whole; }));
  double drawn = 0;
  for (const SightLine& line : sight.lines) {
    drawn += glm::length(line.to - line.from);
  }
  const std::vector<double> lengths = body.edge_lengths();
  EXPECT_NEAR(drawn, std::accumulate(lengths.begin(), lengths.end(), 0.0), 1e-9) << "the pieces make up the edges";
}

TEST(StandingBodies, CloseAtZeroLieFlatAtOneAndCarryTheirPoints) {
  const Solid solid = test::solid(pyramid);
  const Body& body = solid.body();
  const FaceId root = solid.classic_net().root();
  for (const double amount : {0.0, 0.4, 1.0}) {
    const Standing there = standing(body, solid.classic_net(), amount, nets::FoldOrder::Together);
    ASSERT_EQ(there.faces.size(), there.corners.size());
    ASSERT_EQ(there.outlines.size(), there.corners.size());
    for (std::size_t i = 0; i < there.faces.size(); ++i) {
      const PlacedFace placed(body, there.corners, there.faces[i]);
      const FlatFace flat = body.flat(there.faces[i]);
      for (std::size_t k = 0; k < flat.outline.size(); ++k) {
        const Vec3 corner = flat.plane.lifted(flat.outline[k]);
        EXPECT_NEAR(glm::length(placed.carried(corner) - there.corners[i][k]), 0, 1e-9);
        EXPECT_TRUE(amount > 0 || glm::length(corner - there.corners[i][k]) < 1e-9);
      }
      EXPECT_TRUE(amount < 1 || std::abs(placed.label_point().z) < 1e-9);
    }
    EXPECT_EQ(body.faces_toward({0, 0, -1}), std::vector<FaceId>{root});
  }
}

TEST(StandingBodies, AreLaidOnTheTableOnAnyFace) {
  const Solid solid = test::solid(pyramid);
  for (const Face& face : solid.faces()) {
    Standing there = standing(solid.body(), solid.classic_net(), 0, nets::FoldOrder::Together);
    lay_on_table(there, solid.body(), face.id, 0.7);
    EXPECT_NEAR(glm::length(there.corners[face.id.index()].front()), 0, 1e-12);
    for (const auto& facet : there.corners) {
      for (const Vec3& corner : facet) {
        EXPECT_GT(corner.z, -1e-9) << "the solid stands on its face";
      }
    }
    for (const Vec3& corner : there.corners[face.id.index()]) {
      EXPECT_NEAR(corner.z, 0, 1e-9);
    }
  }
}

TEST(MirroredBodies, HaveTheSameMeasuresAndTheOtherHand) {
  const Body body = test::solid(l_shape).body();
  const Body image = mirrored(body);
  EXPECT_NEAR(geometry::volume(image.facets()), geometry::volume(body.facets()), 1e-12);
  EXPECT_EQ(image.faces_toward({-1, 0, 0}).size(), body.faces_toward({1, 0, 0}).size());
  EXPECT_TRUE(image.facets().defects().empty());
}

}  // namespace
}  // namespace fw::solids::body_test
