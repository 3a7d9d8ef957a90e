#include <gtest/gtest.h>

#include "solids/base_shapes/strips.hpp"
#include "support/pocket_calculator.hpp"
#include "support/random.hpp"

namespace fw::solids::strips_test {
namespace {

using exact::Number;
using shape::cut_into_strips;
using shape::Strips;

ExactPoint at(int x, int y) { return {Number::whole(x), Number::whole(y)}; }

TEST(Strips, AnLIsTwoRectangles) {
  const Strips strips = cut_into_strips({at(0, 0), at(9, 0), at(9, 4), at(4, 4), at(4, 9), at(0, 9)});
  EXPECT_EQ(strips.work, "9 × 4 + 4 × 5");
  EXPECT_EQ(strips.rectangles, 2U);
}

TEST(Strips, AHouseIsARectangleAndATriangle) {
  const Strips strips = cut_into_strips({at(0, 0), at(8, 0), at(8, 5), at(4, 8), at(0, 5)});
  EXPECT_EQ(strips.work, "8 × 5 + 8 × 3 ÷ 2");
  EXPECT_EQ(strips.triangles, 1U);
}

TEST(Strips, ARectangleGoesOnPastACornerOfItsNeighbor) {
  const Strips u_shape =
      cut_into_strips({at(0, 0), at(10, 0), at(10, 7), at(7, 7), at(7, 3), at(3, 3), at(3, 9), at(0, 9)});
  EXPECT_EQ(u_shape.work, "10 × 3 + 3 × 6 + 3 × 4");
}

/// Between a floor and a roof that go up and down: whatever the corners, the pieces add up to the area.
TEST(Strips, AddUpToTheArea) {
  test::Dice dice(88);
  for (int attempt = 0; attempt < 300; ++attempt) {
    const int count = 2 + static_cast<int>(dice.below(5));
    std::vector<ExactPoint> corners;
    for (int i = 0; i < count; ++i) {
      corners.push_back(at(4 * i, static_cast<int>(dice.below(6))));
    }
    for (int i = count; i-- > 0;) {
      corners.push_back(at(4 * i, 7 + static_cast<int>(dice.below(6))));
    }
    const Strips strips = cut_into_strips(corners);
    const auto sum = test::PocketCalculator::value(strips.work);
    ASSERT_TRUE(sum) << strips.work;
    const double area = exact_area(corners).to_double();
    EXPECT_NEAR(*sum, area, 1e-4 * area) << strips.work;  // widths that go on are cut off
  }
}

}  // namespace
}  // namespace fw::solids::strips_test
