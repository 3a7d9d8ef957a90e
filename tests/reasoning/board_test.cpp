#include "reasoning/board/board.hpp"

#include <gtest/gtest.h>

#include "reasoning/routes.hpp"
#include "support/describe_solid.hpp"

// The short way, line by line.
namespace fw::reasoning::board_test {
namespace {

using N = ClassNotation;

std::string lines_of(const std::string& text, const std::string& asked, SolutionOptions options = {}) {
  options.notation = options.notation.value_or(ClassNotation());
  const solids::Solid solid = test::solid(text);
  const auto solution = worked_solution(solid, asked, options);
  EXPECT_TRUE(solution.has_value()) << (solution ? "" : said(solution.error()));
  return solution ? board_text(solution->board.lines) : "";
}

// The way to a slant height as a teacher writes it.
TEST(Board, SlantHeightFromTheSurface) {
  EXPECT_EQ(
      lines_of("pyramid | slant_height: ? | base square | side: 8 cm | known surface_area: 224 cm^2", "slant_height"),
      "  Find the slant height, ℓ, of a square pyramid with s = 8 cm and S = 224 cm².\n"
      "    S = B + ½Pℓ             The base and the 4 triangles make up the surface.\n"
      "    224 = 8² + ½ · 32 · ℓ   Substitute. B = 8 · 8, P = 4 · 8.\n"
      "    224 = 64 + 16ℓ          Simplify.\n"
      "    160 = 16ℓ               Subtract 64 from both sides.\n"
      "    10 = ℓ                  Divide both sides by 16.\n"
      "    The slant height is 10 cm.\n");
}

// What is worked out before the formula takes a line each; two bases and the faces between them.
TEST(Board, SurfaceOfATriangularPrism) {
  EXPECT_EQ(lines_of("prism | height: 7 ft | base isosceles triangle | base: 8 ft | height: 3 ft | leg: 5 ft",
                     "surface_area"),
            "  Find the surface area, S, of a triangular prism with b = 8 ft, t = 3 ft, c = 5 ft and h = 7 ft.\n    S "
            "= 2B + Ph           The two bases and the 3 rectangles make up the surface.\n    B = ½ · 8 · 3 = 12    "
            "The area of a triangle is half the base times the height.\n    P = 8 + 2 · 5 = 18    The two legs are "
            "equal.\n    S = 2 · 12 + 18 · 7   Substitute.\n    S = 24 + 126          Simplify.\n    S = 150           "
            "    Add.\n    The surface area is 150 ft².\n");
}

// A third of a number that it does not divide: both sides are multiplied by 3.
TEST(Board, HeightFromTheVolume) {
  EXPECT_EQ(lines_of("pyramid | height: ? | base square | side: 10 ft | known volume: 400 ft^3", "height"),
            "  Find the height, h, of a square pyramid with s = 10 ft and V = 400 ft³.\n    V = ⅓Bh             The "
            "volume of a pyramid is one third of the base area times the height.\n    400 = ⅓ · 100 · h   Substitute. "
            "B = 10 · 10.\n    1200 = 100h         Multiply both sides by 3.\n    12 = h              Divide both "
            "sides by 100.\n    The height is 12 ft.\n");
}

// Rounded once, in the answer; the root is carried.
TEST(Board, EdgeOfACubeIsRoundedInTheAnswer) {
  EXPECT_EQ(lines_of("cube | edge: ? | known surface_area: 48 cm^2", "edge"),
            "  Find the edge, s, of a cube with S = 48 cm².\n    S = 6s²        A cube has six congruent square "
            "faces.\n    48 = 6s²       Substitute.\n    8 = s²         Divide both sides by 6.\n    √8 = 2√2 = s   A "
            "length is positive, so take the positive square root.\n    s ≈ 2.83       Round once, at the end, to 2 "
            "decimal places. The edge is about 2.83 cm.\n");
}

TEST(Board, IsWrittenAsTheClassWrites) {
  const std::string pyramid = "pyramid | slant_height: 13 cm | base square | side: 10 cm";
  SolutionOptions options;
  options.notation = N{N::Parts::Division, N::Times::Cross, N::Units::OnEveryLine, N::BoxVolume::Edges};
  EXPECT_EQ(
      lines_of(pyramid, "lateral_area", options),
      "  Find the lateral area, L, of a square pyramid with s = 10 cm and ℓ = 13 cm.\n    L = P × ℓ ÷ 2           Each "
      "lateral face is a triangle: half the base edge times the slant height.\n    L = 40 cm × 13 cm ÷ 2   Substitute. "
      "P = 4 × 10 cm.\n    L = 260 cm²             Multiply and divide.\n    The lateral area is 260 cm².\n");
  const std::string box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";
  options.notation = N{N::Parts::Fraction, N::Times::Dot, N::Units::InAnswer, N::BoxVolume::BaseTimesHeight};
  EXPECT_EQ(lines_of(box, "volume", options),
            "  Find the volume, V, of a rectangular prism with l = 9 cm, w = 7 cm and h = 5 cm.\n"
            "    V = Bh       The volume of a box is the base area times the height.\n"
            "    V = 63 · 5   Substitute. B = 9 · 7.\n"
            "    V = 315      Multiply.\n"
            "    The volume is 315 cm³.\n");
}

// Congruent faces on one line.
TEST(Board, FaceByFace) {
  SolutionOptions options;
  options.route = Route::FaceByFace;
  EXPECT_EQ(lines_of("pyramid | slant_height: 13 cm | base square | side: 10 cm", "surface_area", options),
            "  Find the surface area, S, of a square pyramid with s = 10 cm and ℓ = 13 cm.\n"
            "    face 1 = 10 · 10 = 100              Face 1 is a square.\n"
            "    faces 2–5 = 4 · ½ · 10 · 13 = 260   Faces 2–5 are congruent triangles, so multiply by 4.\n"
            "    S = 100 + 260 = 360                 Add the areas of all 5 faces.\n"
            "    The surface area is 360 cm².\n");
}

// A second power beside a first: as in the steps, two sides at a time.
TEST(Board, BaseEdgeFromTheSurfaceFollowsTheSteps) {
  const std::string text =
      lines_of("pyramid | slant_height: 13 cm | base square | side: ? | known surface_area: 360 cm^2", "base.side");
  std::size_t place = 0;
  for (const char* equation : {"    S = B + ½Pℓ ", "    S = s² + ½ · 4 · s · ℓ ", "    360 = s² + ½ · 4 · s · 13 ",
                               "    s² + 26s = 360 ", "    (s + 13)² = 529 ", "    s + 13 = 23 ", "    s = 10 "}) {
    const std::size_t found = text.find(equation, place);
    EXPECT_NE(found, std::string::npos) << equation << "\n" << text;
    place = found == std::string::npos ? place : found;
  }
}

}  // namespace
}  // namespace fw::reasoning::board_test
