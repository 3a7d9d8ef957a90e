// What a lesson asks in another way than by a measure: packing, copies, units, claims, mistakes, intervals, purposes.
#include <gmock/gmock.h>

#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "practice/figure.hpp"
#include "practice/hints.hpp"
#include "support/diagnosed_problems.hpp"
#include "tasks/catalog.hpp"

namespace fw::tasks::tasks_test {
namespace {

using namespace practice;

// A problem as a lesson writes it.
lessons::Problem problem_of(const std::string& solid, const std::string& members) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": )" + solid +
                                         ", " + members + "}]}");
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : text(lesson.error().front(), "lesson"));
  return lesson->problems.front();
}
const std::string box = R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"})";
const std::string crate = R"({"kind": "rectangular prism", "length": "10 cm", "width": "8 cm", "height": "7 cm"})";
const std::string peak = R"({"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"})";

struct Case {
  std::string solid, members, typed, verdict, cause;
};
class Answers : public testing::TestWithParam<Case> {};
TEST_P(Answers, AreJudged) {
  const auto diagnosis = diagnosed(problem_of(GetParam().solid, GetParam().members), GetParam().typed);
  ASSERT_TRUE(diagnosis.has_value()) << said(diagnosis.error());
  EXPECT_EQ(text(diagnosis->verdict), GetParam().verdict) << GetParam().typed << ": " << said(diagnosis->message);
  EXPECT_EQ(diagnosis->causes.empty() ? "" : diagnosis->causes.front().id, GetParam().cause)
      << said(diagnosis->message);
}

// Source: a box of 10 by 8 by 7 with cubes of 3: 3 · 2 · 2 = 12; volumes 560 ÷ 27 = 20.7.
const std::string cubes = R"("supply": {"pack": "volume", "item": "candle",
  "box": {"length": "3 cm", "width": "3 cm", "height": "3 cm"}})";
// And a cube of 10: 3 · 3 · 3 = 27; 1000 ÷ 27 = 37.04.
const std::string cube_crate = R"({"kind": "cube", "edge": "10 cm"})";
INSTANTIATE_TEST_SUITE_P(
    Packing, Answers,
    testing::Values(Case{crate, cubes, "12", "right", ""}, Case{crate, cubes, "12 candles", "right", ""},
                    Case{crate, cubes, "20", "recognized", "L7"}, Case{crate, cubes, "21", "recognized", "L7"},
                    Case{crate, cubes, "3", "recognized", "L8"}, Case{crate, cubes, "36", "recognized", "L3"},
                    Case{crate, cubes, "7", "recognized", "L11"}, Case{cube_crate, cubes, "27", "right", ""},
                    Case{cube_crate, cubes, "37", "recognized", "L7"}));

// Source: the box of 9, 7 and 5 four times as long: 1144, 1260, 5040, 18304, 2288, 3780, 718 and 1287 are what H1 to
// H5 lead to, 4576 and 20160 are right.
const std::string copied_area = R"("scale": "4", "find": ["surface_area"])";
const std::string copied_volume = R"("scale": "4", "find": ["volume"])";
INSTANTIATE_TEST_SUITE_P(Scaling, Answers,
                         testing::Values(Case{box, copied_area, "4576 cm^2", "right", ""},
                                         Case{box, copied_area, "4576", "right_number", "G1"},
                                         Case{box, copied_area, "1144 cm^2", "recognized", "H1"},
                                         Case{box, copied_area, "18304 cm^2", "recognized", "H3"},
                                         Case{box, copied_area, "2288 cm^2", "recognized", "H4"},
                                         Case{box, copied_area, "718 cm^2", "recognized", "H5"},
                                         Case{box, copied_area, "286 cm^2", "recognized", "H8"},
                                         Case{box, copied_volume, "20,160 cm^3", "right", ""},
                                         Case{box, copied_volume, "1260 cm^3", "recognized", "H2"},
                                         Case{box, copied_volume, "5040 cm^3", "recognized", "H3"},
                                         Case{box, copied_volume, "3780 cm^3", "recognized", "H4"},
                                         Case{box, copied_volume, "1287 cm^3", "recognized", "H5"}));
const std::string factor = R"("scale": "?", "copy": {"surface_area": "4576 cm^2"}, "find": ["scale"])";
INSTANTIATE_TEST_SUITE_P(Factor, Answers,
                         testing::Values(Case{box, factor, "4", "right", ""}, Case{box, factor, "4 times", "right", ""},
                                         Case{box, factor, "16", "recognized", "H7"},
                                         Case{box, factor, "8", "recognized", "H9"},
                                         Case{box, factor, "2.52", "recognized", "H10"}));

// Source: 286 cm² is 0.0286 m²; 315 cm³ is 0.315 L and 0.000315 m³; 54 ft³ is 2 yd³.
const std::string in_m2 = R"("find": ["surface_area"], "unit": "m^2")";
const std::string in_liters = R"("find": ["volume"], "unit": "L")";
const std::string in_m3 = R"("find": ["volume"], "unit": "m^3")";
const std::string shed = R"({"kind": "rectangular prism", "length": "6 ft", "width": "3 ft", "height": "3 ft"})";
INSTANTIATE_TEST_SUITE_P(
    Units, Answers,
    testing::Values(Case{box, in_m2, "0.0286 m^2", "right", ""}, Case{box, in_m2, "0.0286", "right_number", "G1"},
                    Case{box, in_m2, "286 cm^2", "right_number", "G9"}, Case{box, in_m2, "286 m^2", "recognized", "G9"},
                    Case{box, in_m2, "2.86 m^2", "recognized", "G3"},
                    Case{box, in_m2, "2,860,000 m^2", "recognized", "G5"},
                    Case{box, in_m2, "0.03 m^2", "recognized", "M4"}, Case{box, in_m2, "0.0 m^2", "recognized", "M4"},
                    Case{box, in_m2, "0.0315 m^2", "recognized", "A1"}, Case{box, in_liters, "0.315 L", "right", ""},
                    Case{box, in_liters, "315 mL", "right_number", "G9"},
                    Case{box, in_liters, "3.15 L", "recognized", "G7"}, Case{box, in_m3, "0.000315 m^3", "right", ""},
                    Case{box, in_m3, "0.0315 m^3", "recognized", "G4"},
                    Case{shed, R"("find": ["volume"], "unit": "yd^3")", "2 yd^3", "right", ""},
                    Case{shed, R"("find": ["volume"], "unit": "yd^3")", "18 yd^3", "recognized", "G8"}));

// Source: half a base edge of 5 and a height of 12 make a slant height of 13.
const std::string slant_9 = R"("claim": {"slant_height": "9 cm"})";
const std::string slant_13 = R"("claim": {"slant_height": "13 cm"})";
INSTANTIATE_TEST_SUITE_P(
    Claims, Answers,
    testing::Values(Case{peak, slant_9, "no", "right", ""}, Case{peak, slant_9, "No.", "right", ""},
                    Case{peak, slant_9, "no, 13 cm", "right", ""}, Case{peak, slant_9, "no, 12 cm", "recognized", "P3"},
                    Case{peak, slant_9, "B", "right", ""}, Case{peak, slant_9, "yes", "recognized", "P1"},
                    Case{peak, slant_9, "perhaps", "unrecognized", ""}, Case{peak, slant_13, "yes", "right", ""},
                    Case{peak, slant_13, "it can be", "right", ""}, Case{peak, slant_13, "no", "recognized", "P2"},
                    Case{peak, R"("claim": {"lateral_edge": "13.9 cm"})", "yes", "right", ""},
                    Case{peak, R"("claim": {"volume": "400 cm^3"})", "yes", "right", ""},
                    Case{peak, R"("claim": {"surface_area": "400 cm^2"})", "no", "right", ""},
                    Case{peak, R"("claim": {"surface_area": "400 cm^2"})", "no, 360 cm^2", "right", ""},
                    Case{peak, R"("claim": {"surface_area": "400 cm^2"})", "yes", "recognized", "P1"}));

const std::string bounds = R"("find": ["surface_area"], "between": ["100 cm^2", "200 cm^2", "300 cm^2", "500 cm^2"])";
INSTANTIATE_TEST_SUITE_P(
    Intervals, Answers,
    testing::Values(Case{box, bounds, "200 to 300 cm²", "right", ""}, Case{box, bounds, "200-300", "right", ""},
                    Case{box, bounds, "between 200 and 300 cm^2", "right", ""}, Case{box, bounds, "b", "right", ""},
                    Case{box, bounds, "286 cm^2", "right", ""}, Case{box, bounds, "250", "right", ""},
                    Case{box, bounds, "300–500", "recognized", "A1"},
                    Case{box, bounds, "100 to 300", "unrecognized", ""}, Case{box, bounds, "A", "recognized", "A8"},
                    Case{box, bounds, "many", "unrecognized", ""}));

const std::string covered = R"("find": ["purpose"], "supply": {"cover": "surface_area"})";
const std::string stood_on = R"("find": ["purpose"], "supply": {"cover": "base_area"})";
INSTANTIATE_TEST_SUITE_P(
    Purposes, Answers,
    testing::Values(Case{box, covered, "cover", "right", ""}, Case{box, covered, "surface area", "right", ""},
                    Case{box, covered, "volume", "recognized", "L1"},
                    Case{box, covered, "one face", "recognized", "L1"}, Case{box, stood_on, "one face", "right", ""},
                    Case{box, stood_on, "D", "right", ""}, Case{box, stood_on, "cover", "recognized", "L1"},
                    Case{box, stood_on, "glue", "unrecognized", ""}));

// Source: V15 of the teaching notes: a box has 6 faces, 12 edges and 8 vertices, a square pyramid 5, 8 and 5.
INSTANTIATE_TEST_SUITE_P(Counts, Answers,
                         testing::Values(Case{box, R"("find": ["edges"])", "12", "right", ""},
                                         Case{box, R"("find": ["edges"])", "12 edges", "right", ""},
                                         Case{box, R"("find": ["edges"])", "6", "recognized", "B15"},
                                         Case{box, R"("find": ["edges"])", "24", "recognized", "B16"},
                                         Case{box, R"("find": ["vertices"])", "8 corners", "right", ""},
                                         Case{box, R"("find": ["vertices"])", "12", "recognized", "B15"},
                                         Case{box, R"("find": ["vertices"])", "24", "recognized", "B16"},
                                         Case{peak, R"("find": ["edges"])", "8", "right", ""},
                                         Case{peak, R"("find": ["edges"])", "4", "recognized", "B17"},
                                         Case{peak, R"("find": ["vertices"])", "4", "recognized", "B17"},
                                         Case{peak, R"("find": ["vertices"])", "5 vertices", "right", ""},
                                         Case{box, R"("find": ["vertices"])", "7", "recognized", "B18"},
                                         Case{box, R"("find": ["vertices"])", "5", "unrecognized", ""}));

// Source: half a base edge of 5, a height of 12 and a slant height of 13; 12 + 5, √(144 + 100), √(144 − 25), 169.
const std::string slant = R"("find": ["slant_height"])";
INSTANTIATE_TEST_SUITE_P(RightTriangle, Answers,
                         testing::Values(Case{peak, slant, "13 cm", "right", ""},
                                         Case{peak, slant, "17 cm", "recognized", "K16"},
                                         Case{peak, slant, "15.62 cm", "recognized", "K17"},
                                         Case{peak, slant, "10.91 cm", "recognized", "K18"},
                                         Case{peak, slant, "169 cm", "recognized", "K19"}));

// Source: type 38 of the teaching notes, the cube of 6; the boxes of 24 take 98, 76, 70, 68, 56 or 52, a cube 49.92.
const std::string six = R"({"kind": "cube", "edge": "6 cm"})";
const std::string same = R"("find": ["same_number"])";
const std::string flat = R"({"kind": "rectangular prism", "length": "6 in", "width": "4 in", "height": "1 in"})";
const std::string least = R"("find": ["least_surface"])";
INSTANTIATE_TEST_SUITE_P(Comparing, Answers,
                         testing::Values(Case{six, same, "no", "right", ""}, Case{six, same, "yes", "recognized", "G1"},
                                         Case{six, same, "C", "recognized", "G2"},
                                         Case{six, same, "216", "unrecognized", ""},
                                         Case{flat, least, "52 in^2", "right", ""},
                                         Case{flat, least, "68 sq in", "recognized", "L12"},
                                         Case{flat, least, "56 in²", "recognized", "L14"},
                                         Case{flat, least, "49.92 in²", "recognized", "L13"}));

// 1 cm³ is 1 mL, 1000 cm³ are 1 L, and squares are no cubes.
std::string compared(const std::string& with) { return R"("find": ["volume"], "compare": ")" + with + "\""; }
INSTANTIATE_TEST_SUITE_P(Amounts, Answers,
                         testing::Values(Case{six, compared("216 mL"), "yes", "right", ""},
                                         Case{six, compared("216 mL"), "no", "recognized", "G2"},
                                         Case{six, compared("0.216 L"), "yes", "right", ""},
                                         Case{six, compared("2.16 L"), "no", "right", ""},
                                         Case{six, compared("2.16 L"), "yes", "recognized", "G2"},
                                         Case{six, compared("216 cm^2"), "no", "right", ""},
                                         Case{six, compared("216 cm^2"), "yes", "recognized", "G1"}));

// Source: face 3 of the box is the front, 9 by 5.
const std::string face_3 = R"("face": 3)";
INSTANTIATE_TEST_SUITE_P(Lengths, Answers,
                         testing::Values(Case{box, face_3, "9 cm and 5 cm", "right", ""},
                                         Case{box, face_3, "5 cm, 9 cm", "right", ""},
                                         Case{box, face_3, "9 by 5 cm", "right", ""},
                                         Case{box, face_3, "50 mm x 90 mm", "right", ""},
                                         Case{box, face_3, "9 cm and 7 cm", "recognized", "B6"},
                                         Case{box, face_3, "3 cm and 2 cm", "unrecognized", ""},
                                         Case{box, face_3, "the front", "unrecognized", ""}));

// Source: 10 · 13 · 2 = 260 are the four triangles of the pyramid without its base (B10).
const std::string sum_of_sides = R"("find": ["surface_area"], "wrong": {"answer": "260 cm^2"})";
TEST(Mistake, IsChosenByWhatTheNumberWouldBe) {
  const lessons::Problem problem = problem_of(peak, sum_of_sides);
  const auto choices = choices_of(problem, 3);
  ASSERT_TRUE(choices.has_value()) << said(choices.error());
  ASSERT_EQ(choices->size(), 4U);
  std::size_t right = 0;
  for (std::size_t i = 0; i < choices->size(); ++i) {
    const Choice& one = (*choices)[i];
    EXPECT_EQ(said(one.text).rfind("260 ", 0), 0U) << said(one.text);
    right += one.is_right ? 1U : 0U;
    EXPECT_EQ(one.is_right, one.cause == "B4" || one.cause == "B10") << one.cause;
    const Diagnosis diagnosis = *diagnosed(problem, letter(i), "", 3);
    EXPECT_EQ(diagnosis.verdict == AnswerVerdict::Right, one.is_right);
    EXPECT_EQ(said(diagnosis.message), said(one.message));
  }
  EXPECT_EQ(right, 1U);
  EXPECT_EQ(diagnosed(problem, "360 cm^2")->verdict, AnswerVerdict::Right);
  EXPECT_EQ(diagnosed(problem, "400 cm^2")->causes.front().id, "A1");
}

TEST(Mistake, MustBeOne) {
  EXPECT_EQ(
      said(choices_of(problem_of(peak, R"("find": ["surface_area"], "wrong": {"answer": "357 cm^2"})"), 1).error()),
      "the wrong answer 357 cm^2 does not come from a usual mistake, so the problem can't ask which one it was: give a "
      "different answer");
}

TEST(TaskChoices, KeepTheirOrderWhereTheyHaveOne) {
  const auto yes_no = choices_of(problem_of(peak, slant_9), 5);
  ASSERT_EQ(yes_no->size(), 2U);
  EXPECT_EQ(said((*yes_no)[0].message), "\"Yes\" would need 13 cm. What length do the other labels give?");
  EXPECT_EQ(said((*yes_no)[1].message), "Right. 9 cm is impossible; 13 cm would fit.");
  const auto intervals = choices_of(problem_of(box, bounds), 5);
  ASSERT_EQ(intervals->size(), 3U);
  EXPECT_EQ(said((*intervals)[1].text), "between 200 cm² and 300 cm²");
  EXPECT_EQ(said((*intervals)[2].message),
            "That's too high. 315 is the space inside. Surface area is the wrapping paper. Which faces does the "
            "paper cover?");
  EXPECT_EQ(choices_of(problem_of(box, covered), 5)->size(), 4U);
}

TEST(TaskChoices, OfNumbersAreFour) {
  for (const auto& [solid, members, right] :
       {std::tuple{crate, cubes, "12 candles"}, std::tuple{box, copied_area, "4576 cm²"},
        std::tuple{box, copied_volume, "20,160 cm³"}, std::tuple{box, factor, "4 times"},
        std::tuple{box, in_m2, "0.0286 m²"}, std::tuple{box, in_liters, "0.315 L"}}) {
    const lessons::Problem problem = problem_of(solid, members);
    const auto choices = choices_of(problem, 2);
    ASSERT_TRUE(choices.has_value());
    EXPECT_EQ(choices->size(), 4U) << members;
    for (std::size_t i = 0; i < choices->size(); ++i) {
      const Choice& one = (*choices)[i];
      EXPECT_EQ(one.is_right, said(one.text) == right) << said(one.text);
      EXPECT_EQ(diagnosed(problem, letter(i), "", 2)->verdict == AnswerVerdict::Right, one.is_right);
      EXPECT_EQ(diagnosed(problem, said(one.text))->verdict == AnswerVerdict::Right, one.is_right) << said(one.text);
    }
  }
}

TEST(RightAnswer, IsToldAsAKeyHasIt) {
  for (const auto& [solid, members, answer] :
       {std::tuple{crate, cubes, "12"}, std::tuple{box, copied_area, "4576 cm²"}, std::tuple{box, factor, "4"},
        std::tuple{box, in_m3, "0.000315 m³"}, std::tuple{peak, slant_9, "no, 13 cm would fit"},
        std::tuple{peak, slant_13, "yes"}, std::tuple{box, bounds, "between 200 cm² and 300 cm²"},
        std::tuple{box, stood_on, "one face"}, std::tuple{box, face_3, "9 cm and 5 cm"},
        std::tuple{peak, sum_of_sides, "260 is the area of the triangles alone. 360 cm²"}}) {
    const auto told = right_answer(problem_of(solid, members));
    ASSERT_TRUE(told.has_value()) << members << ": " << said(told.error());
    EXPECT_EQ(said(*told), answer);
  }
  EXPECT_EQ(said(*right_answer(test::problem_of("pyramid | height: 12 cm | base square | side: 10 cm", "name"))),
            "square pyramid");
}

TEST(TaskHints, LeadOnWithoutTheAnswer) {
  for (const auto& [solid, members, answer] :
       {std::tuple{crate, cubes, "12"}, std::tuple{box, copied_area, "4576"}, std::tuple{box, factor, "= 4"},
        std::tuple{box, in_m2, "0.0286"}, std::tuple{peak, slant_9, "13 cm"}, std::tuple{peak, sum_of_sides, "= 360"},
        std::tuple{box, bounds, "286"}, std::tuple{box, covered, "areas"}, std::tuple{box, face_3, "9 cm and 5 cm"}}) {
    const auto hints = hints_of(problem_of(solid, members));
    ASSERT_TRUE(hints.has_value()) << members;
    EXPECT_GE(hints->size(), 3U) << members;
    for (const Hint& hint : *hints) {
      const std::string told = said(hint.text) + (hint.line ? " " + algebra::plain_text(*hint.line) : "");
      EXPECT_EQ(told.find(answer), std::string::npos) << told;
    }
  }
}

}  // namespace
}  // namespace fw::tasks::tasks_test
