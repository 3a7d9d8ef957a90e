#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "figures/face_figure.hpp"
#include "figures/net_sketch.hpp"
#include "figures/recording_canvas.hpp"
#include "figures/solid_sketch.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/catalog.hpp"
#include "units/quantity.hpp"

namespace fw::figures::solid_pictures_test {
namespace {

solids::LengthEntry length(std::string_view text) { return {units::parse_quantity(text).value()}; }

solids::Solid square_pyramid() {
  solids::Description base{"square", {{"side", length("6 cm")}}, {}};
  return solids::Solid::make({"pyramid", {{"slant_height", length("9 cm")}}, {base}}).value();
}

solids::Solid cube() { return solids::Solid::make({"cube", {{"edge", length("4 cm")}}, {}}).value(); }

Palette palette() {
  Palette p;
  p.ground = Color::hex(0xFBF9F4);
  p.ink = Color::hex(0x1A1D26);
  p.text_size = 40;
  p.line_width = 4;
  return p;
}

constexpr Rect card{100, 50, 700, 600};

std::vector<RecordingCanvas::Path> filled(const RecordingCanvas& canvas) {
  std::vector<RecordingCanvas::Path> found;
  for (const auto& path : canvas.paths()) {
    if (path.closed && path.fill && path.points.size() >= 3) found.push_back(path);
  }
  return found;
}

std::size_t dashed_lines(const RecordingCanvas& canvas) {
  const auto paths = canvas.paths();
  return static_cast<std::size_t>(std::count_if(paths.begin(), paths.end(), [](const auto& path) {
    return !path.closed && path.stroke && path.stroke->dash > 0;
  }));
}

/// Every solid of the shelf, by its place there.
class EverySolid : public testing::TestWithParam<std::size_t> {
 protected:
  solids::Solid solid = solids::Solid::make(solids::shelf()[GetParam()]).value();
};

TEST_P(EverySolid, ShowsEachFaceToScaleAsItLiesWithItsNumberAndLengths) {
  for (std::size_t i = 0; i < solid.faces().size(); ++i) {
    const auto id = geometry::FaceId::at(i);
    SCOPED_TRACE(solid.name() + ", face " + face_number(id));
    RecordingCanvas canvas;
    draw_face(canvas, solid, id, card, palette());
    const auto shown = filled(canvas).front().points;
    const auto flat = solid.body().flat(id).outline;
    ASSERT_EQ(shown.size(), flat.size());
    const double scale = glm::distance(shown[0], shown[1]) / glm::distance(flat[0], flat[1]);
    for (std::size_t k = 0; k < flat.size(); ++k) {
      const Vec2 seen = shown[k] - shown[0];
      const Vec2 lies = (flat[k] - flat[0]) * scale;
      EXPECT_NEAR(seen.x, lies.x, 1e-6);
      EXPECT_NEAR(seen.y, -lies.y, 1e-6) << "not turned, not mirrored: the canvas has y down";
    }
    EXPECT_TRUE(card.contains(bounding_rect(shown)));
    EXPECT_TRUE(canvas.shows(face_number(id)));
    for (const auto& l : solid.faces()[id].lengths) EXPECT_TRUE(canvas.shows(face_length_label(solid, l)));
  }
}

TEST_P(EverySolid, KeepsTheLabelsOfAFaceOnTheCardAndApart) {
  for (std::size_t i = 0; i < solid.faces().size(); ++i) {
    SCOPED_TRACE(solid.name() + ", face " + std::to_string(i + 1));
    RecordingCanvas canvas;
    draw_face(canvas, solid, geometry::FaceId::at(i), card, palette());
    const auto texts = canvas.texts();
    for (std::size_t a = 0; a < texts.size(); ++a) {
      EXPECT_TRUE(card.contains(texts[a].box, 1)) << texts[a].text;
      for (std::size_t b = a + 1; b < texts.size(); ++b) {
        EXPECT_FALSE(texts[a].box.overlaps(texts[b].box, 1)) << texts[a].text << " and " << texts[b].text;
      }
    }
  }
}

TEST_P(EverySolid, IsSketchedWithinItsRectangleWithEveryEdge) {
  RecordingCanvas canvas;
  draw_solid_sketch(canvas, solid, card, palette());
  std::vector<Vec2> all;
  for (const auto& path : canvas.paths()) all.insert(all.end(), path.points.begin(), path.points.end());
  EXPECT_TRUE(card.contains(bounding_rect(all), 1e-6));
  EXPECT_GE(canvas.paths().size(), solid.body().edge_count());
  const auto box = bounding_rect(all);
  EXPECT_TRUE(box.w > card.w - 20 || box.h > card.h - 20) << "as large as fits";
}

TEST_P(EverySolid, HasANetOfItsOwnFacesInOneScale) {
  const auto layout = solids::unfolded(solid.body(), solid.classic_net());
  const auto shapes = fitted_net({layout.begin(), layout.end()}, card, {0.7, true});
  ASSERT_EQ(shapes.size(), layout.size());
  double ratio = 0;
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    EXPECT_TRUE(card.contains(bounding_rect(shapes[i]), 1e-6));
    const double drawn = std::abs(geometry::signed_area(shapes[i]));
    const double real = geometry::signed_area(layout[geometry::FaceId::at(i)]);
    ratio = ratio > 0 ? ratio : drawn / real;
    EXPECT_NEAR(drawn / real, ratio, 1e-6 * ratio);
  }
}

TEST_P(EverySolid, DrawsEachHingeOnceDashedAndEachCutTwice) {
  RecordingCanvas canvas;
  draw_net_sketch(canvas, solid, solid.classic_net(), card, palette());
  const std::size_t faces = solid.faces().size();
  const std::size_t edges = solid.body().edge_count();
  if (!solid.body().is_flat_faced()) {
    // A disk touches what it hangs on in one point, so each face is drawn all round and nothing is dashed.
    EXPECT_EQ(dashed_lines(canvas), 0U);
    EXPECT_EQ(canvas.paths().size(), faces);
    for (const auto& path : canvas.paths()) EXPECT_TRUE(path.closed);
    return;
  }
  EXPECT_EQ(dashed_lines(canvas), faces - 1);
  EXPECT_EQ(canvas.paths().size(), faces - 1 + 2 * (edges - (faces - 1)));
}

INSTANTIATE_TEST_SUITE_P(Shelf, EverySolid, testing::Range(std::size_t{0}, solids::shelf().size()));

TEST(FaceFigure, MarksTheHeightOfATriangleDashedAndSquareToItsBase) {
  const solids::Solid solid = square_pyramid();
  RecordingCanvas canvas;
  draw_face(canvas, solid, geometry::FaceId::at(1), card, palette());
  EXPECT_TRUE(canvas.shows("6 cm"));
  EXPECT_TRUE(canvas.shows("9 cm"));
  EXPECT_EQ(dashed_lines(canvas), 1U);
  std::size_t right_angles = 0;
  for (const auto& path : canvas.paths()) {
    if (path.closed || path.points.size() != 3) continue;
    const Vec2 a = path.points[0] - path.points[1];
    const Vec2 b = path.points[2] - path.points[1];
    if (std::abs(glm::dot(a, b)) < 1e-6 && std::abs(glm::length(a) - glm::length(b)) < 1e-6) ++right_angles;
  }
  EXPECT_EQ(right_angles, 1U);
}

TEST(FaceFigure, FillsWithColorAndHatchOrInABrightRoomWithTheHatchAlone) {
  const solids::Solid solid = square_pyramid();
  RecordingCanvas colored;
  draw_face(colored, solid, geometry::FaceId::at(1), card, palette());
  EXPECT_EQ(filled(colored).front().fill, Color::hex(0xE69F00));
  Palette bright = palette();
  bright.ground = Color::hex(0xFFFFFF);
  bright.ink = Color::hex(0x000000);
  bright.fills = Fills::HatchOnly;
  RecordingCanvas plain;
  draw_face(plain, solid, geometry::FaceId::at(1), card, bright);
  EXPECT_EQ(filled(plain).front().fill, bright.ground);
  EXPECT_GT(plain.paths().size(), 10U) << "the strokes of the hatch are there";
}

// Seen from in front, above and to the right, three faces of a box are seen and the three edges of its far
// corner are hidden (common practice of drawing, no source).
TEST(SolidSketch, HidesTheThreeEdgesOfACubesFarCorner) {
  RecordingCanvas canvas;
  draw_solid_sketch(canvas, cube(), card, palette());
  EXPECT_EQ(dashed_lines(canvas), 3U);
}

TEST(SolidSketch, PaintsTheSeenFacesInTheirGroupsColor) {
  RecordingCanvas canvas;
  draw_solid_sketch(canvas, cube(), card, palette(), SketchFill::Groups);
  EXPECT_EQ(filled(canvas).size(), 3U);
  EXPECT_EQ(filled(canvas).front().fill, Color::hex(0x0072B2));
}

TEST(NetSketch, TurnsAndFlipsWithoutChangingTheShape) {
  const auto layout = solids::unfolded(square_pyramid().body(), square_pyramid().classic_net());
  const auto plain = fitted_net({layout.begin(), layout.end()}, {0, 0, 100, 100});
  const auto half_turned = fitted_net({layout.begin(), layout.end()}, {0, 0, 100, 100}, {std::numbers::pi, false});
  for (std::size_t i = 0; i < plain.size(); ++i) {
    for (std::size_t k = 0; k < plain[i].size(); ++k) {
      EXPECT_NEAR(plain[i][k].x, 100 - half_turned[i][k].x, 1e-6);
      EXPECT_NEAR(plain[i][k].y, 100 - half_turned[i][k].y, 1e-6);
    }
  }
  const auto flipped = fitted_net({layout.begin(), layout.end()}, {0, 0, 100, 100}, {0, true});
  for (std::size_t i = 0; i < plain.size(); ++i) EXPECT_NEAR(plain[i][0].x, 100 - flipped[i][0].x, 1e-6);
}

}  // namespace
}  // namespace fw::figures::solid_pictures_test
