#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>
#include <set>

#include "figures/face_style.hpp"
#include "figures/hatch.hpp"
#include "figures/recording_canvas.hpp"
#include "figures/typeset.hpp"
#include "geometry/polygon.hpp"

namespace fw::figures::drawing_test {
namespace {

using testing::ElementsAre;

/// Whether a point lies inside a polygon or within `slack` of its border.
bool lies_in(const std::vector<Vec2>& polygon, Vec2 p, double slack) {
  bool inside = false;
  double nearest = 1e9;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Vec2 a = polygon[i];
    const Vec2 b = polygon[(i + 1) % polygon.size()];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)) inside = !inside;
    const Vec2 ab = b - a;
    const double t = std::min(1.0, std::max(0.0, glm::dot(p - a, ab) / glm::dot(ab, ab)));
    nearest = std::min(nearest, glm::distance(p, a + ab * t));
  }
  return inside || nearest <= slack;
}

/// A star about (200, 200): any radii make a simple polygon, often a concave one.
std::vector<Vec2> some_star() {
  const auto corners = *rc::gen::inRange<std::size_t>(3, 10);
  std::vector<Vec2> polygon;
  for (std::size_t i = 0; i < corners; ++i) {
    const double radius = *rc::gen::inRange(20, 180);
    const double angle = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(corners);
    polygon.push_back({200 + radius * std::cos(angle), 200 + radius * std::sin(angle)});
  }
  return polygon;
}

// Guarantee 1 of hatch_strokes().
TEST(Hatch, StrokesLieInsideThePolygon) {
  EXPECT_TRUE(rc::check([] {
    const auto polygon = some_star();
    const auto hatch = *rc::gen::element(Hatch::Rising, Hatch::Level, Hatch::Dots, Hatch::Falling, Hatch::Crossed);
    const double spacing = *rc::gen::inRange(5, 40);
    for (const Segment& stroke : hatch_strokes(polygon, hatch, spacing)) {
      for (const double t : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        RC_ASSERT(lies_in(polygon, stroke.from + (stroke.to - stroke.from) * t, 1e-6));
      }
    }
  }));
}

TEST(Hatch, IsToldApartByDirection) {
  const std::vector<Vec2> square{{0, 0}, {100, 0}, {100, 100}, {0, 100}};
  EXPECT_TRUE(hatch_strokes(square, Hatch::None, 10).empty());
  for (const Segment& s : hatch_strokes(square, Hatch::Level, 10)) EXPECT_NEAR(s.from.y, s.to.y, 1e-9);
  const auto rising = hatch_strokes(square, Hatch::Rising, 10);
  ASSERT_GE(rising.size(), 10U);
  for (const Segment& s : rising) EXPECT_NEAR(s.from.x - s.to.x, s.to.y - s.from.y, 1e-9);
  for (const Segment& s : hatch_strokes(square, Hatch::Falling, 10)) {
    EXPECT_NEAR(s.from.x - s.to.x, s.from.y - s.to.y, 1e-9);
  }
  EXPECT_EQ(hatch_strokes(square, Hatch::Crossed, 10).size(),
            rising.size() + hatch_strokes(square, Hatch::Falling, 10).size());
  EXPECT_GE(hatch_strokes(square, Hatch::Dots, 10).size(), 50U);
}

TEST(Hatch, LeavesTheNotchOfAConcaveFaceFree) {
  // An L: a level stroke through both arms must not run through the notch.
  const std::vector<Vec2> u{{0, 0}, {30, 0}, {30, 60}, {70, 60}, {70, 0}, {100, 0}, {100, 100}, {0, 100}};
  for (const Segment& s : hatch_strokes(u, Hatch::Level, 7)) {
    EXPECT_LE(std::abs(s.to.x - s.from.x), s.from.y < 60 ? 30 + 1e-9 : 100 + 1e-9);
  }
}

// Values of Okabe and Ito, Color Universal Design (2002).
TEST(FaceStyle, FollowsTheOrderOfColorsHatchesAndLetters) {
  const std::vector<std::uint32_t> colors{0x0072B2, 0xE69F00, 0x009E73, 0xF0E442, 0xCC79A7, 0xD55E00};
  const std::vector<Hatch> hatches{Hatch::None, Hatch::Rising,  Hatch::Level,
                                   Hatch::Dots, Hatch::Falling, Hatch::Crossed};
  for (std::size_t i = 0; i < 6; ++i) {
    const FaceStyle style = face_style(solids::GroupId::at(i), Palette{});
    EXPECT_EQ(style.fill, Color::hex(colors[i]));
    EXPECT_EQ(style.hatch, hatches[i]);
    EXPECT_EQ(style.letter, std::string(1, static_cast<char>('A' + static_cast<int>(i))));
  }
  EXPECT_EQ(group_letter(solids::GroupId::at(25)), "Z");
  EXPECT_EQ(group_letter(solids::GroupId::at(26)), "AA");
}

TEST(FaceStyle, RepeatsAPairOfColorAndHatchOnlyAfterThirtySix) {
  std::set<std::pair<float, Hatch>> pairs;
  for (std::size_t i = 0; i < 36; ++i) {
    const auto group = solids::GroupId::at(i);
    const Color c = group_color(group);
    pairs.insert({c.r * 1e6F + c.g * 1e3F + c.b, group_hatch(group)});
  }
  EXPECT_EQ(pairs.size(), 36U);
}

TEST(FaceStyle, OnADarkGroundLetsLightEdgesStandOut) {
  Palette slate;
  slate.ground = Color::hex(0x14171F);
  slate.ink = Color::hex(0xF3F5F9);
  for (std::size_t i = 0; i < 6; ++i) {
    const FaceStyle style = face_style(solids::GroupId::at(i), slate);
    EXPECT_GE(contrast(slate.ink, style.fill), 4.5) << style.letter;
    EXPECT_GE(contrast(style.fill, slate.ground), 1.5) << style.letter;
  }
}

TEST(Typeset, DrawsPowersLargeAndRaised) {
  EXPECT_THAT(text_pieces("90 cm²"), ElementsAre(TextPiece{"90 cm", false}, TextPiece{"2", true}));
  EXPECT_THAT(text_pieces("3² + 4²"),
              ElementsAre(TextPiece{"3", false}, TextPiece{"2", true}, TextPiece{" + 4", false}, TextPiece{"2", true}));
  EXPECT_TRUE(text_pieces("").empty());
  RecordingCanvas canvas;
  typeset(canvas, {100, 100}, HAlign::Right, VAlign::Middle, "90 cm²", {40, {}});
  const auto texts = canvas.texts();
  ASSERT_EQ(texts.size(), 2U);
  EXPECT_NEAR(texts[1].box.right(), 100, 1e-9);
  EXPECT_NEAR(texts[0].box.right(), texts[1].box.x, 1e-9);
  EXPECT_GE(texts[1].style.size, 0.7 * texts[0].style.size);
  const auto baseline = [](const RecordingCanvas::Text& t) { return t.box.y + line_baseline * t.style.size; };
  EXPECT_LT(baseline(texts[1]), baseline(texts[0]) - 0.3 * 40);
  EXPECT_TRUE(canvas.shows("90 cm2"));
}

TEST(Typeset, WrapsAtSpacesWithinTheWidth) {
  const RecordingCanvas canvas;
  const TextStyle style{10, {}};
  // Each character is 5.5 wide.
  EXPECT_THAT(wrapped(canvas, "a shade of card\nfor one lantern", style, 60),
              ElementsAre("a shade of", "card", "for one", "lantern"));
  EXPECT_THAT(wrapped(canvas, "it is 9 in, not 7 in.", style, 45), ElementsAre("it is", "9 in,", "not", "7 in."));
  EXPECT_THAT(wrapped(canvas, "here w = 7 in", style, 45), ElementsAre("here", "w = 7 in"));
  EXPECT_THAT(wrapped(canvas, "10 cm × 13 cm ÷ 2 = 65 cm", style, 90), ElementsAre("10 cm × 13 cm", "÷ 2 = 65 cm"));
  EXPECT_THAT(wrapped(canvas, "10 cm × 13 cm ÷ 2 = 65 cm", style, 100), ElementsAre("10 cm × 13 cm ÷ 2", "= 65 cm"));
  EXPECT_THAT(wrapped(canvas, "9 in × 7 in = 63 in", style, 66), ElementsAre("9 in × 7 in", "= 63 in"));
  EXPECT_THAT(wrapped(canvas, "rhombicuboctahedron", style, 30), ElementsAre("rhombicuboctahedron"));
  EXPECT_THAT(wrapped(canvas, "", style, 30), ElementsAre(""));
}

TEST(Rect, KnowsInsideOverlapAndCommonPart) {
  const Rect a{0, 0, 10, 10};
  EXPECT_TRUE(a.overlaps({9, 9, 5, 5}));
  EXPECT_FALSE(a.overlaps({10, 0, 5, 5}));
  EXPECT_FALSE(a.overlaps({9, 9, 5, 5}, 1));
  EXPECT_TRUE(a.contains(Rect{1, 1, 9, 9}));
  EXPECT_FALSE(a.contains(Rect{1, 1, 9.5, 9}));
  EXPECT_EQ(common_part(a, {5, -5, 10, 10}), (Rect{5, 0, 5, 5}));
  EXPECT_EQ(common_part(a, {20, 20, 1, 1}).w, 0);
  EXPECT_EQ(bounding_rect({{1, 5}, {3, 2}}), (Rect{1, 2, 2, 3}));
}

}  // namespace
}  // namespace fw::figures::drawing_test
