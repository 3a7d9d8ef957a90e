#include <gtest/gtest.h>

#include "practice/diagnosis.hpp"
#include "practice/signatures.hpp"
#include "support/diagnosed_problems.hpp"
#include "tasks/word_problems/word_problem.hpp"

// Mistakes that are rarer, which somebody made up who had seen the problems alone. All numbers are worked by hand.
namespace fw::practice::rare_mistakes_test {
namespace {

using test::problem_of;

const std::string box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";
const std::string tent = "prism | height: 7 cm | base isosceles triangle | base: 10 cm | height: 12 cm | leg: 13 cm";
const std::string peak = "pyramid | height: 12 cm | slant_height: 13 cm | base square | side: 10 cm";
const std::string block = "cube | edge: 7 cm";
const std::string ramp = "prism | height: 10 cm | base right triangle | legs: 6 cm, 8 cm";
const std::string kite = "prism | height: 7 cm | base rhombus | diagonals: 24 cm, 10 cm";
const std::string bench = "rectangular prism | length: 15 in | width: 4 ft | height: 1 ft 4 in";
const std::string crate = "rectangular prism | length: 12 in | width: 5 in | height: 8.5 in";
const std::string tent_of_volume =
    "prism | height: ? | base isosceles triangle | base: 10 cm | height: 12 cm | known volume: 420 cm^3";
const std::string peak_of_volume = "pyramid | height: ? | base square | side: 10 cm | known volume: 400 cm^3";
const std::string peak_of_surface =
    "pyramid | slant_height: ? | base square | side: 10 cm | known surface_area: 360 cm^2";
const std::string box_of_surface =
    "rectangular prism | length: 9 cm | width: 7 cm | height: ? | known surface_area: 286 cm^2";
const std::string tent_of_surface =
    "prism | height: ? | base isosceles triangle | base: 10 cm | height: 12 cm | leg: 13 cm | known surface_area: "
    "372 cm^2";

std::string ids_of(const Diagnosis& diagnosis) {
  std::string ids = " ";
  for (const Cause& cause : diagnosis.causes) {
    ids += cause.id + " ";
  }
  return ids;
}

struct Case {
  std::string solid, find, typed, id;
};
void PrintTo(const Case& one, std::ostream* out) { *out << one.solid << ": " << one.find << " " << one.typed; }

class RareMistakes : public testing::TestWithParam<Case> {};

TEST_P(RareMistakes, AreNamed) {
  const Case& one = GetParam();
  const Diagnosis diagnosis = *diagnosed(problem_of(one.solid, one.find), one.typed);
  EXPECT_NE(ids_of(diagnosis).find(" " + one.id + " "), std::string::npos)
      << ids_of(diagnosis) << text(diagnosis.verdict);
  EXPECT_NE(diagnosis.verdict, AnswerVerdict::Unrecognized);
}

// 286 = 2 · 63 + 2 · 45 + 2 · 35. The tent: 2 · 60 + 70 + 2 · 91. The ramp: 48 + 10 · (6 + 8 + 10).
INSTANTIATE_TEST_SUITE_P(
    Areas, RareMistakes,
    testing::Values(Case{box, "surface_area", "216", "B22"}, Case{box, "surface_area", "196", "B22"},
                    Case{block, "surface_area", "196", "B21"}, Case{block, "surface_area", "98", "B21"},
                    Case{block, "surface_area", "42", "A11"}, Case{block, "surface_area", "168", "A12"},
                    Case{peak, "surface_area", "1300", "A13"}, Case{peak, "surface_area", "433.33", "A13"},
                    Case{peak, "surface_area", "520", "C9"}, Case{peak, "surface_area", "500", "B24"},
                    Case{tent, "surface_area", "358", "D7"}, Case{tent, "surface_area", "190", "B23"},
                    Case{ramp, "surface_area", "328", "D8"}, Case{kite, "lateral_area", "476", "D9"},
                    Case{peak, "base_area", "50", "F8"}, Case{peak, "base_area", "20", "F9"},
                    Case{peak, "base_area", "1200", "A14"}, Case{peak, "base_area", "120", "A15"},
                    Case{box, "volume", "157.5", "F8"}, Case{box, "lateral_area", "80", "B27"},
                    Case{kite, "base_area", "169", "E8"}, Case{tent, "volume", "1560", "E9"},
                    Case{ramp, "surface_area", "10", "A16"}));
INSTANTIATE_TEST_SUITE_P(Counts, RareMistakes,
                         testing::Values(Case{box, "edges", "4", "B25"}, Case{box, "edges", "10", "M6"},
                                         Case{peak, "faces", "6", "M6"}, Case{box, "vertices", "10", "M6"}));
// 15 · 48 · 16 = 11520 in³; 15 · 4 · 16, 15 · 48 · 14, 15 · 48 · 16.8, and 6 2/3 ft³. 12 · 5 · 8.5 = 510.
INSTANTIATE_TEST_SUITE_P(
    Labels, RareMistakes,
    testing::Values(Case{bench, "volume", "960 in^3", "G11"}, Case{bench, "volume", "10080 in^3", "G12"},
                    Case{bench, "volume", "12096 in^3", "G12"}, Case{bench, "volume", "6.67 in^3", "G13"},
                    Case{crate, "volume", "480 in^3", "F10"}, Case{crate, "volume", "480.5 in^3", "F10"},
                    Case{box, "volume", "305", "M5"}, Case{box, "surface_area", "386", "M5"}));
INSTANTIATE_TEST_SUITE_P(
    MissingMeasures, RareMistakes,
    testing::Values(Case{tent_of_volume, "height", "14", "K21"}, Case{tent_of_volume, "height", "21", "K22"},
                    Case{tent_of_volume, "height", "25200", "K23"}, Case{tent_of_volume, "height", "6.46", "K20"},
                    Case{peak_of_volume, "height", "13", "K24"}, Case{peak_of_surface, "slant_height", "6.5", "K25"},
                    Case{box_of_surface, "height", "4.54", "K27"}, Case{tent_of_surface, "height", "3.67", "K28"}));

// The edges of the box are 84 cm: 2.8 rolls of 30 cm, so 3. Its faces are 286 cm², its volume is 315 cm³.
TEST(RareMistakesOfWordProblems, FollowAnAmountThatIsNotConvertedOrAnotherOne) {
  const auto rolls = [](const char* each) {
    lessons::Problem problem = problem_of(box, "surface_area");
    problem.tasks = {
        tasks::WordProblem(lessons::Supply{lessons::Purpose::Edge, "edges", *units::parse_quantity(each), "roll"})};
    return problem;
  };
  EXPECT_NE(ids_of(*diagnosed(rolls("30 cm"), "10 rolls")).find(" L24 "), std::string::npos);
  EXPECT_NE(ids_of(*diagnosed(rolls("30 cm"), "11 rolls")).find(" L24 "), std::string::npos);
  EXPECT_NE(ids_of(*diagnosed(rolls("3 dm"), "28 rolls")).find(" L21 "), std::string::npos);
  EXPECT_NE(ids_of(*diagnosed(rolls("3 dm"), "84")).find(" L21 "), std::string::npos);
  EXPECT_NE(ids_of(*diagnosed(rolls("3 dm"), "9 rolls")).find(" L23 "), std::string::npos);
}

// The answer is asked in another unit: a volume of 315 cm³ in place of the area, which is not converted either; and 286
// cm² by tens, as if a foot had ten inches.
TEST(RareMistakesOfUnits, AreNamedTogetherWithTheMistakeBeforeThem) {
  const auto asked_in = [](const std::string& unit, const std::string& length_unit) {
    std::string solid = R"("solid": {"kind": "rectangular prism", "length": "9 #", "width": "7 #", "height": "5 #"})";
    for (std::size_t at = solid.find('#'); at != std::string::npos; at = solid.find('#')) {
      solid.replace(at, 1, length_unit);
    }
    const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", )" + solid +
                                           R"(, "find": ["surface_area"], "unit": ")" + unit + "\"}]}");
    return lesson.value().problems.front();
  };
  EXPECT_NE(ids_of(*diagnosed(asked_in("dm^2", "cm"), "315 dm^2")).find(" A1 "), std::string::npos);
  EXPECT_NE(ids_of(*diagnosed(asked_in("ft^2", "in"), "2.86 ft^2")).find(" G10 "), std::string::npos);
}

// "How many cubic centimeters" wants them: another unit is right, but not what was asked for.
TEST(RightInAnotherUnit, IsToldWhichUnitTheProblemAsksFor) {
  lessons::Problem problem = problem_of(box, "volume");
  EXPECT_EQ(diagnosed(problem, "0.315 L")->verdict, AnswerVerdict::Right);
  for (const char* prompt : {"How many cubic centimeters of tea fill it?",
                             "It is full. How much is that in cubic "
                             "centimeters?"}) {
    problem.prompt = prompt;
    for (const char* typed : {"0.315 L", "315 mL", "0.000315 m^3"}) {
      const Diagnosis diagnosis = *diagnosed(problem, typed);
      EXPECT_EQ(diagnosis.verdict, AnswerVerdict::RightNumber) << typed;
      EXPECT_EQ(said(diagnosis.message), "That is right. The problem asks for cubic centimeters: write it in cm³.");
    }
    EXPECT_EQ(diagnosed(problem, "315 cm^3")->verdict, AnswerVerdict::Right);
    EXPECT_EQ(diagnosed(problem, "315")->verdict, AnswerVerdict::RightNumber);
  }
  problem.prompt = "A jar holds 20 cubic centimeters of glitter. What does the box hold?";
  EXPECT_EQ(diagnosed(problem, "0.315 L")->verdict, AnswerVerdict::Right);
}

// A cube without top and bottom: a fifth face that is counted is an open one, and none that was counted twice.
TEST(OpenFaces, AreAskedForWhereTooManyFacesAreCounted) {
  lessons::Problem open = problem_of(block, "surface_area");
  open.open = {{"top", {geometry::FaceId::at(1)}}, {"bottom", {geometry::FaceId::at(0)}}};
  const Diagnosis diagnosis = *diagnosed(open, "245 cm^2");
  ASSERT_FALSE(diagnosis.causes.empty());
  EXPECT_EQ(said(diagnosis.causes.front().message),
            "With 245, it looks like the face of 49 cm² 5 times, not 4 times. Which faces are open?");
}

// What is rare is said only where no likelier way leads to the number: 143 is half of a box's faces, those in sight.
TEST(RareMistakes, KeepQuietBesideALikelierOne) {
  for (const auto& [solid, find, typed] :
       {std::tuple{box, "surface_area", "143"}, std::tuple{box, "surface_area", "160"},
        std::tuple{peak, "surface_area", "260"}, std::tuple{box, "edges", "8"}}) {
    const Diagnosis diagnosis = *diagnosed(problem_of(solid, find), typed);
    for (const Cause& cause : diagnosis.causes) {
      const auto& all = signatures();
      EXPECT_TRUE(
          std::any_of(all.begin(), all.end(), [&](const Signature& one) { return one.id == cause.id && !one.is_rare; }))
          << typed << ": " << cause.id;
    }
  }
}

}  // namespace
}  // namespace fw::practice::rare_mistakes_test
