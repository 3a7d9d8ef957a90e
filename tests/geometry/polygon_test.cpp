#include "geometry/polygon.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <chrono>
#include <cmath>

#include "support/random.hpp"

namespace fw::geometry::polygon_test {
namespace {

constexpr double pi = 3.14159265358979323846;
const Polygon square = {{0, 0}, {2, 0}, {2, 2}, {0, 2}};
const Polygon ell = {{0, 0}, {3, 0}, {3, 1}, {1, 1}, {1, 2}, {0, 2}};

Polygon shifted(Polygon polygon, Vec2 by) {
  for (Vec2& corner : polygon) {
    corner += by;
  }
  return polygon;
}

/// Round a center, nearer and farther by turns of the dice: simple, seldom convex.
Polygon any_star(test::Dice& dice, Vec2 center) {
  const std::size_t count = 3 + dice.below(9);
  Polygon polygon;
  for (std::size_t i = 0; i < count; ++i) {
    const double angle = 2 * pi * (static_cast<double>(i) + dice.between(0.05, 0.5)) / static_cast<double>(count);
    polygon.push_back(center + Vec2{std::cos(angle), std::sin(angle)} * dice.between(0.3, 1.5));
  }
  return polygon;
}

TEST(Polygon, area_perimeter_centroid) {
  EXPECT_DOUBLE_EQ(signed_area(square), 4);
  EXPECT_DOUBLE_EQ(signed_area({square.rbegin(), square.rend()}), -4);
  EXPECT_DOUBLE_EQ(signed_area(ell), 4);
  EXPECT_DOUBLE_EQ(perimeter(ell), 10);
  EXPECT_LT(glm::length(centroid(square) - Vec2{1, 1}), 1e-12);
  // Two rectangles: 3 by 1 about (1.5, 0.5) and 1 by 1 about (0.5, 1.5).
  EXPECT_LT(glm::length(centroid(ell) - Vec2{(3 * 1.5 + 0.5) / 4, (3 * 0.5 + 1.5) / 4}), 1e-12);
}

TEST(Polygon, convex_and_simple) {
  EXPECT_TRUE(is_convex(square));
  EXPECT_TRUE(is_convex(Polygon{{0, 0}, {1, 0}, {2, 0}, {2, 2}}));  // a corner on a straight side
  EXPECT_FALSE(is_convex(ell));
  EXPECT_FALSE(is_convex(Polygon(square.rbegin(), square.rend())));
  EXPECT_TRUE(is_simple(ell));
  EXPECT_FALSE(is_simple(Polygon{{0, 0}, {2, 2}, {2, 0}, {0, 2}}));          // a bow tie
  EXPECT_FALSE(is_simple(Polygon{{0, 0}, {4, 0}, {4, 2}, {2, 0}, {0, 2}}));  // touches its own side
  EXPECT_FALSE(is_simple(Polygon{{0, 0}, {2, 0}, {1, 0}, {0, 2}}));          // runs back
}

TEST(Polygon, contains_its_border) {
  EXPECT_TRUE(contains(ell, {0.5, 1.5}));
  EXPECT_TRUE(contains(ell, {1, 1.5}));
  EXPECT_TRUE(contains(ell, {3, 1}));
  EXPECT_FALSE(contains(ell, {1.5, 1.5}));
  EXPECT_FALSE(contains(ell, {-1, 1}));  // level with a corner
}

TEST(Triangulated, keeps_a_corner_on_a_straight_side) {
  const Polygon polygon = {{0, 0}, {1, 0}, {2, 0}, {1, 2}};
  ASSERT_EQ(triangulated(polygon).size(), 2U);
  for (const auto& corner : triangulated(polygon)) {
    EXPECT_GT(signed_area({polygon[corner[0]], polygon[corner[1]], polygon[corner[2]]}), 0.5);
  }
}

RC_GTEST_PROP(Triangulated, fills_the_polygon, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polygon polygon = any_star(dice, {0, 0});
  const auto triangles = triangulated(polygon);
  RC_ASSERT(triangles.size() == polygon.size() - 2);
  double area = 0;
  for (const auto& corner : triangles) {
    const double part = signed_area({polygon[corner[0]], polygon[corner[1]], polygon[corner[2]]});
    RC_ASSERT(part > 0);
    area += part;
  }
  RC_ASSERT(std::abs(area - signed_area(polygon)) < 1e-12);
}

double depth_at(const Polygon& polygon, Vec2 point) {
  double nearest = 1e9;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec2 a = polygon[i];
    const Vec2 along = polygon[(i + 1) % polygon.size()] - a;
    const double share = std::fmin(1, std::fmax(0, glm::dot(point - a, along) / glm::dot(along, along)));
    nearest = std::fmin(nearest, glm::length(point - a - along * share));
  }
  return contains(polygon, point) ? nearest : -nearest;
}

RC_GTEST_PROP(LabelPoint, no_point_lies_deeper_by_more_than_its_precision, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polygon polygon = any_star(dice, {0, 0});
  const double found = depth_at(polygon, label_point(polygon));
  RC_ASSERT(found > 0);
  for (int round = 0; round < 400; ++round) {
    RC_ASSERT(depth_at(polygon, {dice.between(-1.5, 1.5), dice.between(-1.5, 1.5)}) < found + 0.02 * 3);
  }
}

TEST(LabelPoint, of_regular_shapes_is_their_center) {
  EXPECT_LT(glm::length(label_point(square) - Vec2{1, 1}), 1e-12);
  EXPECT_LT(glm::length(label_point({{0, 0}, {9, 0}, {9, 1}, {0, 1}}) - Vec2{4.5, 0.5}), 1e-12);
}

// A sheet 10 km long and a thousandth of a millimeter wide once kept the window busy for good.
RC_GTEST_PROP(LabelPoint, a_sliver_of_any_length_has_one_at_once, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const double longer = std::pow(10.0, dice.between(0, 18));
  for (const Polygon& shape :
       {square, ell, Polygon{{0, 0}, {1, 0}, {0.4, 1}}, Polygon{{0, 0}, {2, 0}, {2, 1}, {1, 1}}}) {
    for (const bool upright : {false, true}) {
      Polygon sliver = shape;
      for (Vec2& corner : sliver) {
        (upright ? corner.y : corner.x) *= longer;
      }
      const auto begin = std::chrono::steady_clock::now();
      const Vec2 point = label_point(sliver);
      RC_ASSERT(std::chrono::steady_clock::now() - begin < std::chrono::seconds(1));
      RC_ASSERT(contains(sliver, point));
      RC_ASSERT(depth_at(sliver, point) > 0.1);
    }
  }
}

TEST(Overlap, touching_is_not_overlapping) {
  EXPECT_FALSE(overlap(square, shifted(square, {2, 0})));
  EXPECT_FALSE(overlap(square, shifted(square, {2, 2})));
  EXPECT_FALSE(overlap(square, shifted(square, {2, 0.7})));
  EXPECT_FALSE(overlap(square, shifted(square, {2 - 1e-11, 0})));  // rounding
  EXPECT_TRUE(overlap(square, shifted(square, {2 - 1e-6, 0})));
  EXPECT_FALSE(overlap(ell, shifted(square, {1, 1})));  // fits the notch
  EXPECT_TRUE(overlap(ell, shifted(square, {0.99, 1})));
}

TEST(Overlap, of_one_within_the_other_and_of_equals) {
  EXPECT_TRUE(overlap(square, square));
  EXPECT_TRUE(overlap(ell, ell));
  EXPECT_TRUE(overlap(square, {{0.9, 0.9}, {1.1, 0.9}, {1, 1.1}}));
  EXPECT_TRUE(overlap({{0.9, 0.9}, {1.1, 0.9}, {1, 1.1}}, square));
}

bool sides_cross(const Polygon& a, const Polygon& b) {
  const auto side = [](Vec2 p, Vec2 q, Vec2 r) { return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x) > 0; };
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      const Vec2 p = a[i];
      const Vec2 q = a[(i + 1) % a.size()];
      const Vec2 r = b[j];
      const Vec2 s = b[(j + 1) % b.size()];
      if (side(p, q, r) != side(p, q, s) && side(r, s, p) != side(r, s, q)) {
        return true;
      }
    }
  }
  return false;
}

// In general position two insides meet when sides cross or one polygon holds a corner of the other.
RC_GTEST_PROP(Overlap, agrees_with_crossing_sides, (std::uint64_t seed)) {
  test::Dice dice(seed);
  const Polygon a = any_star(dice, {0, 0});
  const Polygon b = any_star(dice, {dice.between(-2.5, 2.5), dice.between(-2.5, 2.5)});
  const bool expected = sides_cross(a, b) || contains(a, b[0]) || contains(b, a[0]);
  RC_CLASSIFY(expected);
  RC_ASSERT(overlap(a, b) == expected);
  RC_ASSERT(overlap(b, a) == expected);
}

}  // namespace
}  // namespace fw::geometry::polygon_test
