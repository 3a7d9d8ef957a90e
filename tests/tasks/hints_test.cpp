#include "practice/hints.hpp"

#include <gmock/gmock.h>

#include "exact/print_number.hpp"
#include "practice/figure.hpp"
#include "reasoning/explanation.hpp"
#include "support/diagnosed_problems.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::tasks::hints_test {
namespace {

using namespace practice;

using testing::ElementsAre;

std::vector<std::string> told(const lessons::Problem& problem, const std::string& find = "") {
  std::vector<std::string> lines;
  const auto hints = hints_of(problem, find);
  EXPECT_TRUE(hints.has_value()) << (hints ? "" : said(hints.error()));
  for (const Hint& hint : hints ? *hints : std::vector<Hint>{}) {
    lines.push_back(said(hint.text) + (hint.line ? " | " + algebra::plain_text(*hint.line) : ""));
  }
  return lines;
}

TEST(Hints, ClimbFromTheQuantityToTheFirstNumbers) {
  EXPECT_THAT(told(test::problem_of("rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm", "surface_area")),
              ElementsAre("Find the surface area, S. It covers a surface, so the unit is square centimeters (cm²).",
                          "You need the length l, width w and height h.",
                          "The six faces are three pairs of congruent rectangles. | S = 2lw + 2lh + 2wh",
                          "Substitute. | S = 2 · 9 · 7 + 2 · 9 · 5 + 2 · 7 · 5"));
  EXPECT_THAT(
      told(test::problem_of("pyramid | slant_height: ? | base square | side: 10 cm | known surface_area: 360 cm^2",
                            "slant_height"))
          .at(0),
      "Find the slant height, ℓ. It is a length, so the unit is centimeters (cm).");
}

// The lines are those of the board, written as the class writes.
TEST(Hints, AreWrittenAsOnTheBoard) {
  const lessons::Problem tent = test::problem_of(
      "pyramid | slant_height: ? | base square | side: 8 cm | known surface_area: 224 cm^2", "slant_height");
  EXPECT_THAT(told(tent), ElementsAre("Find the slant height, ℓ. It is a length, so the unit is centimeters (cm).",
                                      "You need the surface area S, base area B and perimeter of the base P.",
                                      "The base and the 4 triangles make up the surface. | S = B + ½Pℓ",
                                      "Substitute. B = 8 · 8, P = 4 · 8. | 224 = 8² + ½ · 32 · ℓ"));
  algebra::ClassNotation notation;
  notation.parts = algebra::ClassNotation::Parts::Division;
  notation.times = algebra::ClassNotation::Times::Cross;
  const auto hints = hints_of(tent, "", notation);
  ASSERT_TRUE(hints.has_value());
  EXPECT_EQ(algebra::plain_text(*hints->at(2).line), "S = B + P × ℓ ÷ 2");
  EXPECT_FALSE(hints->at(3).marks.empty()) << "it shows where its numbers stand";
}

// Where the formula needs a part first, its line comes before the substitution, whose numbers would come from nowhere.
TEST(Hints, BeginWithThePartThatTheFormulaNeeds) {
  const lessons::Problem ramp =
      test::problem_of("prism | height: 11 cm | base right triangle | legs: 15 cm, 8 cm", "surface_area");
  const std::vector<std::string> lines = told(ramp);
  ASSERT_EQ(lines.size(), 4U);
  EXPECT_EQ(lines[2], "The two bases and the 3 rectangles make up the surface. | S = 2B + Ph");
  EXPECT_EQ(lines[3], "The legs of a right triangle are its base and its height. | B = ½ · 15 · 8 = 60");
}

TEST(Hints, OfAnOpenBoxBeginWithTheFacesThatCount) {
  lessons::Problem box =
      test::problem_of("rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm", "surface_area");
  box.open = {{"top", {geometry::FaceId{1}}}};
  const std::vector<std::string> lines = told(box);
  ASSERT_EQ(lines.size(), 4U);
  EXPECT_EQ(lines[1], "Face 2 is open, so it does not count. 5 of the 6 faces count.");
  EXPECT_EQ(lines[3], lines[2] + " | face 1 = 9 cm × 7 cm");
}

TEST(Hints, OfAWordProblemBeginWithItsVerb) {
  lessons::Problem box = test::problem_of("cube | edge: 7 cm", "volume");
  box.tasks = {WordProblem({lessons::Purpose::Fill, "volume", *units::parse_quantity("50 cm^3"), "cup"})};
  EXPECT_EQ(told(box).at(0), "A cup fills the space inside, so find a volume, in cubic units.");
  box.tasks = {WordProblem({lessons::Purpose::Edge, "edges", *units::parse_quantity("30 cm"), "roll"})};
  EXPECT_EQ(told(box).at(1), "Count the edges: 12. Group the edges of the same length.");
}

TEST(Hints, ToANameTellTheFaces) {
  EXPECT_EQ(told(test::problem_of("pyramid | height: 12 cm | base square | side: 10 cm", "name")).at(1),
            "Its faces are 1 square and 4 triangles.");
  EXPECT_EQ(told(test::problem_of("pyramid | height: 12 cm | base square | side: 10 cm", "faces")).size(), 3U);
}

// Every hint but those to names and counts of faces is a step of the worked solution, or speaks of its symbols; none
// of them holds the answer.
TEST(Hints, OfGeneratedProblemsAreFourAndKeepTheAnswerBackSlow) {
  for (int level = 1; level <= 3; ++level) {
    PracticeRequest request;
    request.seed = 60;
    request.level = level;
    request.count = 40;
    const auto lessons = generated(request);
    for (const lessons::Problem& problem : lessons->front().problems) {
      const auto question = question_of(problem);
      const std::vector<std::string> lines = told(problem);
      EXPECT_GE(lines.size(), question->truth && !counts_parts(question->asked) ? 3U : 1U) << problem.prompt;
      if (!question->unit) {
        continue;
      }
      EXPECT_EQ(lines.size(), 4U) << problem.prompt;
      const std::string number = exact::shown(*question->truth, 2).text;
      const auto hints = hints_of(problem);
      for (const Hint& hint : *hints) {
        EXPECT_NE(hint.line ? algebra::plain_text(hint.line->right) : "", number) << problem.prompt;
      }
      const std::string answer = " " + number + " " + question->unit->text();
      for (const std::string& line : lines) {
        EXPECT_EQ(line.find(answer), std::string::npos) << line;
      }
    }
  }
}

}  // namespace
}  // namespace fw::tasks::hints_test
