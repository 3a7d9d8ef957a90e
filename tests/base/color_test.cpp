#include "base/color.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdint>
#include <ostream>

namespace fw {
namespace fw::color_test {
namespace {

constexpr Color white = Color::hex(0xFFFFFF);
constexpr Color black = Color::hex(0x000000);

TEST(Color, ReadsChannelsFromHex) {
  const Color orange = Color::hex(0xE69F00, 0.5F);
  EXPECT_FLOAT_EQ(orange.r, 230.0F / 255.0F);
  EXPECT_FLOAT_EQ(orange.g, 159.0F / 255.0F);
  EXPECT_FLOAT_EQ(orange.b, 0.0F);
  EXPECT_FLOAT_EQ(orange.a, 0.5F);
  EXPECT_EQ(orange.with_opacity(1.0F), Color::hex(0xE69F00));
}

// Source: WCAG 2.2, definition of contrast ratio: "Contrast ratios can range from 1 to 21".
TEST(Contrast, RunsFromOneToTwentyOne) {
  EXPECT_NEAR(contrast(white, black), 21.0, 1e-9);
  EXPECT_NEAR(contrast(white, white), 1.0, 1e-12);
  EXPECT_NEAR(contrast(black, black), 1.0, 1e-12);
}

struct PaletteRow {
  const char* name;
  std::uint32_t rgb;
  double to_white;
  double to_black;
};

void PrintTo(const PaletteRow& row, std::ostream* out) { *out << row.name; }

class Palette : public testing::TestWithParam<PaletteRow> {};

TEST_P(Palette, HasItsContrasts) {
  EXPECT_NEAR(contrast(Color::hex(GetParam().rgb), white), GetParam().to_white, 0.005);
  EXPECT_NEAR(contrast(Color::hex(GetParam().rgb), black), GetParam().to_black, 0.005);
}

// Colors: M. Okabe and K. Ito, Color Universal Design (2002), as R's palette.colors("Okabe-Ito") lists them.
// Contrasts: worked from WCAG 2.x's definition outside this program, to two decimals.
INSTANTIATE_TEST_SUITE_P(
    OkabeIto, Palette,
    testing::Values(PaletteRow{"orange", 0xE69F00, 2.25, 9.32}, PaletteRow{"sky_blue", 0x56B4E9, 2.31, 9.10},
                    PaletteRow{"bluish_green", 0x009E73, 3.42, 6.14}, PaletteRow{"yellow", 0xF0E442, 1.32, 15.88},
                    PaletteRow{"blue", 0x0072B2, 5.19, 4.05}, PaletteRow{"vermilion", 0xD55E00, 3.87, 5.43},
                    PaletteRow{"reddish_purple", 0xCC79A7, 3.06, 6.86}),
    [](const auto& row) { return std::string(row.param.name); });

// From memory: the lightest grays that reach WCAG's 4.5:1 and 7:1 on white are #767676 and #595959.
TEST(Contrast, FindsTheKnownGraysAtTheLimits) {
  EXPECT_GE(contrast(Color::hex(0x767676), white), 4.5);
  EXPECT_LT(contrast(Color::hex(0x777777), white), 4.5);
  EXPECT_GE(contrast(Color::hex(0x595959), white), 7.0);
  EXPECT_LT(contrast(Color::hex(0x5A5A5A), white), 7.0);
}

RC_GTEST_PROP(Contrast, IsSymmetricAndInRange, ()) {
  const auto rgb = [] { return Color::hex(*rc::gen::inRange<std::uint32_t>(0, 0x1000000)); };
  const Color a = rgb();
  const Color b = rgb();
  RC_ASSERT(contrast(a, b) >= 1.0);
  RC_ASSERT(contrast(a, b) <= 21.0 + 1e-9);
  RC_ASSERT(std::abs(contrast(a, b) - contrast(b, a)) < 1e-12);
}

// Source: T. Porter and T. Duff, Compositing Digital Images (1984), operator "over" on an opaque ground.
TEST(Over, MixesByOpacity) {
  EXPECT_EQ(over(black, white), black);
  EXPECT_EQ(over(black.with_opacity(0.0F), white), white);
  const Color half = over(black.with_opacity(0.5F), white);
  EXPECT_FLOAT_EQ(half.r, 0.5F);
  EXPECT_FLOAT_EQ(half.a, 1.0F);
}

}  // namespace
}  // namespace fw::color_test
}  // namespace fw
