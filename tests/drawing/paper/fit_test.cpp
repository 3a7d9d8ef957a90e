// The largest scale at which a shape fits on a page, over all turns.
#include "paper/cutouts/fit.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace fw::paper::fit_test {
namespace {

constexpr double degree = 0.017453292519943295;

// The corners of unit cells, given by their lower left ones.
std::vector<Vec2> cells(const std::vector<Vec2>& at) {
  std::vector<Vec2> points;
  for (const Vec2& p : at) {
    for (const Vec2& corner : {Vec2{0, 0}, Vec2{1, 0}, Vec2{1, 1}, Vec2{0, 1}}) {
      points.push_back(p + corner);
    }
  }
  return points;
}

double scale_at(const Polygon& hull, double angle, double width, double height) {
  Vec2 low = turned(hull.front(), angle);
  Vec2 high = low;
  for (const Vec2& p : hull) {
    low = glm::min(low, turned(p, angle));
    high = glm::max(high, turned(p, angle));
  }
  return std::min(width / (high.x - low.x), height / (high.y - low.y));
}

// Letter paper with half an inch free on each side.
TEST(BestFit, ACrossOfSixSquaresHasEdgesOf63AndAHalf) {
  const Polygon hull = convex_hull(cells({{1, 0}, {1, 1}, {1, 2}, {1, 3}, {0, 2}, {2, 2}}));
  const Fit fit = best_fit(hull, 190.5, 254);
  EXPECT_NEAR(fit.scale, 63.5, 1e-9);
  EXPECT_NEAR(std::remainder(fit.angle_rad, 180 * degree), 0, 1e-9);
}

TEST(BestFit, TwoRowsOfThreeAreLargerTurnedAside) {
  const Polygon hull = convex_hull(cells({{0, 0}, {1, 0}, {2, 0}, {2, 1}, {3, 1}, {4, 1}}));
  EXPECT_NEAR(scale_at(hull, 90 * degree, 190.5, 254), 50.8, 1e-9);
  const Fit fit = best_fit(hull, 190.5, 254);
  EXPECT_NEAR(fit.scale, 53.8, 0.05);
  EXPECT_NEAR(scale_at(hull, fit.angle_rad, 190.5, 254), fit.scale, 1e-9);
}

// Never worse than trying every tenth of a degree.
RC_GTEST_PROP(BestFit, IsAsGoodAsASweep, ()) {
  std::vector<Vec2> points;
  const int count = *rc::gen::inRange(3, 12);
  for (int i = 0; i < count; ++i) {
    points.push_back({*rc::gen::inRange(0, 1000) / 10.0, *rc::gen::inRange(0, 1000) / 10.0});
  }
  const Polygon hull = convex_hull(points);
  RC_PRE(hull.size() >= 3 && geometry::signed_area(hull) > 1);
  const double width = *rc::gen::inRange(50, 300);
  const double height = *rc::gen::inRange(50, 300);
  const Fit fit = best_fit(hull, width, height);
  RC_ASSERT(std::abs(scale_at(hull, fit.angle_rad, width, height) - fit.scale) < 1e-9 * fit.scale);
  for (int tenth = 0; tenth < 1800; ++tenth) {
    RC_ASSERT(fit.scale >= scale_at(hull, tenth * degree / 10, width, height) * (1 - 1e-9));
  }
}

TEST(ConvexHull, LeavesOutWhatLiesInside) {
  const Polygon hull = convex_hull({{0, 0}, {2, 0}, {2, 2}, {0, 2}, {1, 1}, {1, 0}});
  EXPECT_EQ(hull.size(), 4U);
  EXPECT_NEAR(geometry::signed_area(hull), 4, 1e-12);
}

}  // namespace
}  // namespace fw::paper::fit_test
