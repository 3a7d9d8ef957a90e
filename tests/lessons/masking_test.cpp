#include "lessons/masking.hpp"

#include <gmock/gmock.h>

#include "lesson_texts.hpp"

namespace fw::lessons::masking_test {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

std::vector<std::string> hints_of(const std::string& solid, const std::string& find) {
  std::vector<std::string> hints;
  for (const Finding& finding : findings_of(lesson_with_solid(solid, R"(, "find": [")" + find + R"("])"))) {
    EXPECT_EQ(finding.kind, Finding::Kind::Masking) << said(finding.message);
    hints.push_back(said(finding.message));
  }
  return hints;
}

std::string box(int l, int w, int h) {
  return R"({"kind": "rectangular prism", "length": ")" + std::to_string(l) + R"( cm", "width": ")" +
         std::to_string(w) + R"( cm", "height": ")" + std::to_string(h) + R"( cm"})";
}
std::string triangular_prism(const std::string& sides, int length) {
  return R"({"kind": "prism", "base": {"shape": "triangle", "sides": [)" + sides + R"(]}, "height": ")" +
         std::to_string(length) + R"( cm"})";
}
std::string square_pyramid(int side, int height) {
  return R"({"kind": "pyramid", "base": {"shape": "square", "side": ")" + std::to_string(side) +
         R"( cm"}, "height": ")" + std::to_string(height) + R"( cm"})";
}
std::string block(int edge) { return R"({"kind": "cube", "edge": ")" + std::to_string(edge) + R"( cm"})"; }

TEST(Masking, WholeBoxesWhoseSurfaceEqualsTheirVolume) {
  // All ten in whole numbers: 1/l + 1/w + 1/h = 1/2, worked by hand.
  const int boxes[10][3] = {{42, 7, 3}, {24, 8, 3}, {18, 9, 3}, {15, 10, 3}, {12, 12, 3},
                            {20, 5, 4}, {12, 6, 4}, {8, 8, 4},  {10, 5, 5},  {6, 6, 6}};
  for (const auto& sides : boxes) {
    const std::string solid = box(sides[0], sides[1], sides[2]);
    EXPECT_THAT(hints_of(solid, "surface_area"), Contains(HasSubstr("mixing up volume and surface area"))) << solid;
    EXPECT_THAT(hints_of(solid, "volume"), Contains(HasSubstr("mixing up volume and surface area"))) << solid;
  }
}

TEST(Masking, TellsTheWholeSentence) {
  EXPECT_THAT(hints_of(square_pyramid(12, 8), "volume"),
              testing::ElementsAre("with these numbers, mixing up volume and surface area gives the right number "
                                   "(384): other numbers would show the mistake"));
}

TEST(Masking, FacesInSightThatMakeTheVolume) {
  for (const std::string& solid : {box(6, 3, 2), box(4, 4, 2), box(3, 3, 3)}) {
    EXPECT_THAT(hints_of(solid, "volume"), Contains(HasSubstr("half of the surface"))) << solid;
  }
}

TEST(Masking, SmallEdgesOfACube) {
  for (int edge = 2; edge <= 6; ++edge) {
    EXPECT_THAT(hints_of(block(edge), "volume"), Contains(HasSubstr("some of the faces"))) << edge;
  }
  for (int edge = 7; edge <= 12; ++edge) {
    EXPECT_THAT(hints_of(block(edge), "volume"), IsEmpty()) << edge;
  }
}

TEST(Masking, TrianglesWhoseMiddleSideIsTheMean) {
  for (const std::string sides :
       {R"("3 cm", "4 cm", "5 cm")", R"("9 cm", "12 cm", "15 cm")", R"("13 cm", "14 cm", "15 cm")"}) {
    EXPECT_THAT(hints_of(triangular_prism(sides, 7), "surface_area"), Contains(HasSubstr("as congruent"))) << sides;
  }
}

TEST(Masking, TrianglesWithAreaEqualToPerimeter) {
  // The five triangles in whole numbers whose area equals their perimeter: a classic result, from memory.
  for (const std::string sides :
       {R"("5 cm", "12 cm", "13 cm")", R"("6 cm", "8 cm", "10 cm")", R"("9 cm", "10 cm", "17 cm")",
        R"("7 cm", "15 cm", "20 cm")", R"("6 cm", "25 cm", "29 cm")"}) {
    EXPECT_THAT(hints_of(triangular_prism(sides, 7), "volume"),
                Contains(HasSubstr("mixing up lateral area and volume")))
        << sides;
  }
}

TEST(Masking, PyramidsThatHideMistakes) {
  EXPECT_THAT(hints_of(square_pyramid(8, 3), "volume"), Contains(HasSubstr("area of the bases")));
  EXPECT_THAT(hints_of(square_pyramid(6, 4), "volume"), Contains(HasSubstr("found with the height")));
  EXPECT_THAT(hints_of(square_pyramid(6, 4), "lateral_area"), Contains(HasSubstr("found with the slant height")));
}

TEST(Masking, CleanNumbersHaveNoHint) {
  for (const std::string& solid :
       {box(9, 7, 5), box(10, 8, 9), triangular_prism(R"("10 cm", "13 cm", "13 cm")", 7), square_pyramid(10, 12),
        square_pyramid(14, 24), triangular_prism(R"("8 cm", "15 cm", "17 cm")", 7)}) {
    EXPECT_THAT(hints_of(solid, "surface_area"), IsEmpty()) << solid;
    EXPECT_THAT(hints_of(solid, "volume"), IsEmpty()) << solid;
  }
}

TEST(Masking, LooksOnlyAtWhatIsAsked) { EXPECT_THAT(hints_of(box(6, 6, 6), "name"), IsEmpty()); }

TEST(Masking, AllEdgesOfASmallCube) {
  EXPECT_THAT(hints_of(block(2), "surface_area"), Contains(HasSubstr("adding the edges")));
  EXPECT_THAT(hints_of(block(7), "surface_area"), IsEmpty());
}

TEST(Masking, TwoEqualEdgesHideWhichFaceIsMissing) {
  EXPECT_THAT(hints_of(box(9, 7, 7), "surface_area"), Contains(HasSubstr("which one was left out")));
  EXPECT_THAT(hints_of(box(9, 7, 5), "surface_area"), IsEmpty());
}

TEST(Masking, CountsThatRoundingToTheNearestGetsRight) {
  const auto hints = [](const std::string& supply) {
    std::vector<std::string> messages;
    for (const Finding& finding :
         findings_of(lesson_with_solid(box(9, 7, 5), R"(, "find": ["surface_area"], "supply": )" + supply))) {
      messages.push_back(said(finding.message));
    }
    return messages;
  };
  // 286 cm² shared out.
  EXPECT_THAT(hints(R"({"cover": "surface_area", "each": "80 cm^2", "item": "sheet"})"),
              Contains(HasSubstr("the count comes to ≈ 3.58")));
  EXPECT_THAT(hints(R"({"cover": "surface_area", "each": "90 cm^2", "item": "sheet"})"), IsEmpty());  // 3.18
  EXPECT_THAT(hints(R"({"cover": "surface_area", "each": "90 cm^2", "item": "sheet", "round": "down"})"),
              Contains(HasSubstr("the count comes to ≈ 3.18")));
}

}  // namespace
}  // namespace fw::lessons::masking_test
