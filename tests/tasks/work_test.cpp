#include "practice/task_type.hpp"

#include <gmock/gmock.h>

#include "reasoning/explanation.hpp"
#include "tasks/catalog.hpp"
#include "tasks/decide/claim.hpp"

namespace fw::tasks::work_test {
namespace {

using namespace practice;
using namespace reasoning;

using testing::HasSubstr;

lessons::Problem problem_of(const std::string& solid, const std::string& members) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": )" + solid +
                                         ", " + members + "}]}");
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : text(lesson.error().front(), "lesson"));
  return lesson->problems.front();
}
std::string told(const lessons::Problem& problem) {
  const auto all = explained(problem);
  EXPECT_TRUE(all.has_value()) << (all ? "" : said(all.error()));
  std::string text;
  for (const Explanation& one : all ? *all : std::vector<Explanation>{}) {
    text += steps_text(all_steps(one)) + "Answer: " + said(one.answer) + "\n";
  }
  return text;
}
// The steps of the task alone.
std::string steps_of(const lessons::Problem& problem) {
  const auto work = task_work(problem);
  EXPECT_TRUE(work.has_value());
  return work ? steps_text(work->steps) + "Answer: " + said(work->answer) : "";
}
const std::string box = R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"})";
const std::string crate = R"({"kind": "rectangular prism", "length": "10 cm", "width": "8 cm", "height": "7 cm"})";
const std::string peak = R"({"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"})";

// Source: a box of 10 by 8 by 7 with cubes of 3 holds 3 · 2 · 2 = 12; 560 ÷ 27 is 20.74.
TEST(Tasks, PackingCountsWholeOnesAlongEachEdge) {
  EXPECT_EQ(
      steps_of(problem_of(crate, R"("supply": {"pack": "volume", "item": "candle",
                            "box": {"length": "3 cm", "width": "3 cm", "height": "30 mm"}})")),
      "   1. Find how many candles fit into 10 cm × 8 cm × 7 cm if they all face the same way.\n   2. 1 cm is 10 mm.\n "
      "         1 cm = 10 mm\n   3. 1 cm is larger, so you need fewer. Divide.\n          30 mm = (30 ÷ 10) cm = 3 "
      "cm\n   4. Lay each one with 3 cm × 3 cm × 3 cm along the length, the width and the height.\n   5. Along the "
      "length: how many whole ones fit? 3, and 1 cm stays empty.\n          10 cm ÷ 3 cm ≈ 3.33\n   6. Along the "
      "width: how many whole ones fit? 2, and 2 cm stays empty.\n          8 cm ÷ 3 cm ≈ 2.67\n   7. Along the height: "
      "how many whole ones fit? 2, and 1 cm stays empty.\n          7 cm ÷ 3 cm ≈ 2.33\n   8. Multiply: how many in a "
      "row, how many rows, how many layers.\n          3 × 2 × 2 = 12\n   9. All the edges of the candle are equal, so "
      "turning it changes nothing.\n  10. Dividing the volumes gives too many. The empty space at the edges can't be "
      "put together.\n          560 cm³ ÷ 27 cm³ ≈ 20.74\n                   20.740\n                  -------\n       "
      "  "
      "     27) 560.000\n                 −54\n                  --\n                   20 0\n                  −18 "
      "9\n "
      "                  ----\n                    1 10\n                   −1 08\n                    ----\n          "
      "             20\n  11. 12 candles fit.\nAnswer: 12 candles");
}
/// A number too small to be seen in print is still no zero to divide by.
TEST(Tasks, AFactorIsFoundBetweenNumbersBeyondAllDecimals) {
  EXPECT_THAT(
      told(problem_of(R"({"kind": "cube", "edge": "0.0000008 km"})",
                      R"("scale": "?", "copy": {"volume": "0.000000000000000004096 km^3"}, "find": ["scale"])")),
      HasSubstr("2 times"));
}

TEST(Tasks, PackingTellsTheOtherWaysRound) {
  const std::string text = told(problem_of(box, R"("supply": {"pack": "volume", "item": "soap",
                            "box": {"length": "4 cm", "width": "3 cm", "height": "2 cm"}})"));
  EXPECT_THAT(text, HasSubstr("Lay each one with 3 cm × 2 cm × 4 cm along the length, the width and the height."));
  EXPECT_THAT(text, HasSubstr("Turn it and count again. The other ways hold 8, 8, 6, 6 and 4."));
  EXPECT_THAT(text, HasSubstr("Answer: 9 soaps"));
}

// Source: 16 · 286 = 4576 and 64 · 315 = 20160.
TEST(Tasks, CopiesGrowInTwoAndInThreeDirections) {
  EXPECT_EQ(steps_of(problem_of(box, R"("scale": "4", "find": ["surface_area"])")),
            "   1. Find the surface area of the scaled copy, in square centimeters (cm²).\n   2. Every edge of the "
            "scaled copy is 4 times as long.\n   3. Area has two dimensions, so multiply by the scale factor twice.\n  "
            "        4 × 4 = 16\n   4. So the surface area of the scaled copy is 16 times that of the solid.\n         "
            " 16 × 286 cm² = 4576 cm²\n                 286\n              ×   16\n              ------\n              "
            "  1716\n              + 2860\n              ------\n                4576\n   5. The surface area of the "
            "scaled copy is 4576 cm².\nAnswer: 4576 cm²");
  EXPECT_EQ(
      steps_of(problem_of(box, R"("scale": "4", "find": ["volume"])")),
      "   1. Find the volume of the scaled copy, in cubic centimeters (cm³).\n   2. Every edge of the scaled "
      "copy is 4 times as long.\n   3. Volume has three dimensions, so multiply by the scale factor three "
      "times.\n          4 × 4 × 4 = 64\n   4. So the volume of the scaled copy is 64 times that of the solid.\n "
      "         64 × 315 cm³ = 20,160 cm³\n                  315\n              ×    64\n              -------\n  "
      "               1260\n              + 18900\n              -------\n                20160\n   5. The "
      "volume of the scaled copy is 20,160 cm³.\nAnswer: 20,160 cm³");
  EXPECT_THAT(told(problem_of(box, R"("scale": "4", "find": ["surface_area", "volume"])")),
              testing::AllOf(HasSubstr("Answer: 4576 cm²"), HasSubstr("Answer: 20,160 cm³")));
  EXPECT_THAT(told(problem_of(box, R"("scale": "1/2", "find": ["surface_area"])")), HasSubstr("Answer: 71.5 cm²"));
}
TEST(Tasks, TheFactorIsARoot) {
  EXPECT_EQ(
      steps_of(problem_of(box, R"("scale": "?", "copy": {"volume": "20.16 L"}, "find": ["scale"])")),
      "   1. Find the scale factor: how many times as long the edges of the scaled copy are. It has no unit.\n   2. 1 "
      "L is 1000 cm³.\n          1 L = 1000 cm³\n   3. 1 cm³ is smaller, so you need more. Multiply.\n          20.16 "
      "L = (20.16 × 1000) cm³ = 20,160 cm³\n   4. How many times as large is the volume of the scaled copy?\n          "
      "20,160 cm³ ÷ 315 cm³ = 64\n                      64\n                   -----\n              315) 20160\n       "
      " "
      "          −1890\n                   ----\n                    1260\n                   −1260\n                  "
      "  ----\n                       0\n   5. Volume grows by the scale factor cubed. Take the cube root.\n          "
      "∛64 = 4\n   6. The edges of the scaled copy are 4 times as long.\nAnswer: 4 times");
}

TEST(Tasks, UnitsAreConvertedAtTheEnd) {
  const std::string text = told(problem_of(box, R"("find": ["surface_area"], "unit": "m^2")"));
  EXPECT_THAT(
      text,
      HasSubstr("The question asks for m². 1 m = 100 cm, so 1 m² = 100 cm × 100 cm = 10,000 cm²: divide by 10,000."));
  EXPECT_THAT(text, HasSubstr("Answer: 0.0286 m²"));
  EXPECT_THAT(told(problem_of(box, R"("find": ["volume"], "unit": "L")")), HasSubstr("Answer: 0.315 L"));
}

// Source: half a base edge of 5 and a height of 12 make a slant height of 13; the lateral edge is √194 ≈ 13.928.
TEST(Tasks, AClaimIsPutToTheOtherLabels) {
  EXPECT_EQ(steps_of(problem_of(peak, R"("claim": {"slant_height": "9 cm"})")),
            "   1. The label says slant height 9 cm. From the other labels, it is 13 cm.\n   2. With base edge 10 cm "
            "and height 12 cm the slant height is 13 cm, not 9 cm.\n   3. No, this figure is impossible. A slant "
            "height of 13 cm would fit.\nAnswer: no, 13 cm would fit");
  EXPECT_THAT(told(problem_of(peak, R"("claim": {"slant_height": "13 cm"})")), HasSubstr("Answer: yes"));
  const auto verdict_of = [](const lessons::Problem& problem) {
    return practice::task_as<Claim>(problem)->verdict(problem);
  };
  const auto rounded = verdict_of(problem_of(peak, R"("claim": {"lateral_edge": "13.9 cm"})"));
  EXPECT_TRUE(rounded.can_be && rounded.is_rounded);
  EXPECT_FALSE(verdict_of(problem_of(peak, R"("claim": {"lateral_edge": "13.8 cm"})")).can_be);
  EXPECT_TRUE(verdict_of(problem_of(peak, R"("claim": {"slant_height": "130 mm"})")).can_be);
}

// A label is a number, rounded, only if the number rounds to it at the label's own last place; a whole number is exact.
TEST(Tasks, AClaimAgreesOnlyAtItsOwnLastPlace) {
  const auto can_be = [](const char* solid, const std::string& claim) {
    const auto problem = problem_of(solid, R"("claim": {)" + claim + "}");
    return practice::task_as<Claim>(problem)->verdict(problem).can_be;
  };
  constexpr const char* exact15 =
      R"({"kind": "pyramid", "base": {"shape": "square", "side": "18 cm"}, "height": "12 cm"})";
  constexpr const char* root202 =  // 14.2126...
      R"({"kind": "pyramid", "base": {"shape": "square", "side": "18 cm"}, "height": "11 cm"})";
  constexpr const char* three_four =
      R"({"kind": "prism", "base": {"shape": "right triangle", "legs": ["3 ft", "4 ft"]}, "height": "7 ft"})";
  for (const char* no : {"14.9 cm", "15.1 cm", "14 cm", "149 mm"}) {
    EXPECT_FALSE(can_be(exact15, std::string(R"("slant_height": ")") + no + "\"")) << no;
  }
  for (const char* yes : {"15 cm", "15.0 cm", "150 mm"}) {
    EXPECT_TRUE(can_be(exact15, std::string(R"("slant_height": ")") + yes + "\"")) << yes;
  }
  for (const char* no : {"14.3 cm", "14.1 cm", "14.22 cm", "14 cm", "142 mm"}) {
    EXPECT_FALSE(can_be(root202, std::string(R"("slant_height": ")") + no + "\"")) << no;
  }
  for (const char* yes : {"14.2 cm", "14.21 cm", "14.213 cm", "142.1 mm"}) {
    EXPECT_TRUE(can_be(root202, std::string(R"("slant_height": ")") + yes + "\"")) << yes;
  }
  EXPECT_FALSE(can_be(three_four, R"("base.hypotenuse": "5 ft 1 in")"));
  EXPECT_TRUE(can_be(three_four, R"("base.hypotenuse": "60 in")"));
}

TEST(Tasks, AWrongAnswerIsHeldAgainstTheRightOne) {
  EXPECT_THAT(told(problem_of(peak, R"("find": ["surface_area"], "wrong": {"answer": "260 cm^2"})")),
              HasSubstr("A student got 260 cm². How far off is that?\n          360 cm² − 260 cm² = 100 cm²"));
}

TEST(Tasks, BoundsFollowAnEstimate) {
  const std::string text =
      told(problem_of(box, R"("find": ["surface_area"], "between": ["100 cm^2", "200 cm^2", "400 cm^2"])"));
  EXPECT_THAT(text, HasSubstr("2 × 60 cm² + 2 × 50 cm² + 2 × 40 cm² = 300 cm²"));
  EXPECT_THAT(text, HasSubstr("Answer: between 200 cm² and 400 cm²"));
  EXPECT_THAT(told(problem_of(box, R"("find": ["volume"], "between": ["200 cm^3", "400 cm^3", "800 cm^3"])")),
              HasSubstr("The volume of 315 cm³ is between 200 cm³ and 400 cm³."));
}

TEST(Tasks, APurposeIsToldWithoutNumbers) {
  EXPECT_THAT(told(problem_of(box, R"("find": ["purpose"], "supply": {"cover": "base_area", "item": "pad",
                                      "each": "9 cm^2"})")),
              HasSubstr("A pad covers only one face, so one area is enough, in square units."));
  for (const auto& [supply, word] :
       {std::pair{R"({"cover": "surface_area"})", "cover"}, std::pair{R"({"fill": "volume"})", "fill"},
        std::pair{R"({"edge": "edges"})", "edge"}, std::pair{R"({"cover": "base_area"})", "one face"}}) {
    EXPECT_THAT(told(problem_of(box, R"("find": ["purpose"], "supply": )" + std::string(supply))),
                HasSubstr("Answer: " + std::string(word)));
  }
}

const std::string tent = R"({"kind": "prism", "base": {"shape": "isosceles triangle", "base": "10 cm",
  "height": "12 cm"}, "height": "7 cm"})";

// Source: V15 of the teaching notes (V − E + F = 2; a prism has n + 2 faces, 3n edges, 2n vertices; a pyramid n + 1, 2n
// and n + 1).
TEST(Tasks, PartsOfASolidAreCounted) {
  EXPECT_EQ(told(problem_of(tent, R"("find": ["edges"])")),
            R"(   1. Find how many edges the solid has. A count has no unit.
   2. Count the sides of each face: 2 faces with 3 and 3 faces with 4.
          sides of all faces = 2 × 3 + 3 × 4 = 18
   3. Two sides meet at each edge, so each edge was counted twice.
          edges = 18 ÷ 2 = 9
   4. Check: faces plus vertices is two more than edges.
          faces + vertices − edges = 5 + 6 − 9 = 2
   5. A triangular prism has 9 edges.
Answer: 9 edges
)");
  EXPECT_EQ(told(problem_of(tent, R"("find": ["faces"])")),
            R"(   1. Find how many faces the solid has. A count has no unit.
   2. Start with 2 bases.
   3. Each side of a base has one lateral face, and a base has 3 sides.
          faces = 2 + 3 = 5
   4. A triangular prism has 5 faces.
Answer: 5 faces
)");
  EXPECT_EQ(told(problem_of(peak, R"("find": ["vertices"])")),
            R"(   1. Find how many vertices the solid has. A count has no unit.
   2. The corners of the base, and the apex in which the lateral faces meet.
          vertices = 4 + 1 = 5
   3. Check: faces plus vertices is two more than edges.
          faces + vertices − edges = 5 + 5 − 8 = 2
   4. A square pyramid has 5 vertices.
Answer: 5 vertices
)");
  const std::string twenty = R"({"kind": "regular polyhedron", "faces": 20, "edge": "6 cm"})";
  EXPECT_THAT(told(problem_of(twenty, R"("find": ["vertices"])")), HasSubstr("vertices = 60 ÷ 5 = 12"));
  EXPECT_THAT(told(problem_of(twenty, R"("find": ["edges"])")), HasSubstr("edges = 60 ÷ 2 = 30"));
  EXPECT_THAT(told(problem_of(twenty, R"("find": ["faces"])")), HasSubstr("faces = 20"));
}

TEST(Tasks, ANameIsToldFromTheFaces) {
  EXPECT_EQ(told(problem_of(tent, R"("find": ["name"])")), R"(   1. Name the solid.
   2. Its faces are 2 isosceles triangles and 3 rectangles.
   3. Two faces are congruent and parallel. They are the bases, and their shape gives the first word of the name.
   4. The solid is a triangular prism.
Answer: triangular prism
)");
}

TEST(Tasks, AFaceIsWorkedFromTwoLengths) {
  EXPECT_EQ(told(problem_of(tent, R"("face": 3)")),
            R"(   1. Find the two lengths you need for the area of face 3.
   2. The solid is a triangular prism. It has 5 faces.
   3. Face 3 is a rectangle.
   4. One length: the base of the triangle, 10 cm. Its label is on this face.
   5. One length: the height of the prism, 7 cm. Its label is on this face.
   6. The two lengths of face 3 are 10 cm and 7 cm.
Answer: 10 cm and 7 cm
)");
}

// Source: type 38 of the teaching notes, the cube of 6: S = V = 216.
TEST(Tasks, OneNumberCountsSquaresOrCubes) {
  EXPECT_EQ(told(problem_of(R"({"kind": "cube", "edge": "6 cm"})", R"("find": ["same_number"])")),
            R"(   1. Decide whether the surface area and the volume are the same.
   2. The solid is a cube. It has 6 faces.
   3. The surface area, in squares that cover it.
          S = 216 cm²
   4. The volume, in cubes that fill it.
          V = 216 cm³
   5. A square is not a cube. In a different unit, even the numbers would be different.
   6. No. The number is the same, but what it counts is not.
Answer: no
)");
}

// Source: the boxes of 24 are 1·1·24, 1·2·12, 1·3·8, 1·4·6, 2·2·6 and 2·3·4, with surfaces of 98, 76, 70, 68, 56
// and 52.
TEST(Tasks, TheLeastSurfaceIsFoundFromAList) {
  EXPECT_EQ(
      steps_of(problem_of(R"({"kind": "rectangular prism", "length": "6 in", "width": "4 in", "height": "1 in"})",
                          R"("find": ["least_surface"])")),
      R"(   1. Find the least surface area of a box with the same volume and whole-number edges, in square inches (in²).
   2. What it holds stays the same.
          6 in × 4 in × 1 in = 24 in³
   3. A box of 1 × 1 × 24 in has the same volume.
          2 × 1 × 1 + 2 × 1 × 24 + 2 × 1 × 24 = 98 in²
   4. A box of 1 × 2 × 12 in has the same volume.
          2 × 1 × 2 + 2 × 1 × 12 + 2 × 2 × 12 = 76 in²
   5. A box of 1 × 3 × 8 in has the same volume.
          2 × 1 × 3 + 2 × 1 × 8 + 2 × 3 × 8 = 70 in²
   6. A box of 1 × 4 × 6 in has the same volume.
          2 × 1 × 4 + 2 × 1 × 6 + 2 × 4 × 6 = 68 in²
   7. A box of 2 × 2 × 6 in has the same volume.
          2 × 2 × 2 + 2 × 2 × 6 + 2 × 2 × 6 = 56 in²
   8. A box of 2 × 3 × 4 in has the same volume.
          2 × 2 × 3 + 2 × 2 × 4 + 2 × 3 × 4 = 52 in²
   9. The least is 52 in², for the box of 2 × 3 × 4 in. Its edges are the closest to each other.
Answer: 52 in²)");
}

TEST(Tasks, AreNoneOfAnOrdinaryProblem) {
  EXPECT_FALSE(task_work(problem_of(box, R"("find": ["volume"],
      "supply": {"fill": "volume", "each": "9 cm^3", "item": "cup"})"))
                   .has_value());
  EXPECT_FALSE(task_work(problem_of(box, R"("find": ["volume"])")).has_value());
}

}  // namespace
}  // namespace fw::tasks::work_test
