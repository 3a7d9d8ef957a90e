// The verb explain as a shell runs it.
#include <gmock/gmock.h>

#include <nlohmann/json.hpp>

#include "program.hpp"

namespace fw::cli::explain_test {
namespace {

using nlohmann::json;
using testing::EndsWith;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

const std::string shade = R"({"id": "shade", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"},
  "slant_height": "9 cm"}, "find": ["surface_area"]})";
const std::string tall = R"({"id": "tall", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"},
  "slant_height": "9 cm"}, "find": ["volume"]})";

class ExplainVerb : public testing::Test {
 protected:
  Outcome run(const std::string& problems, const std::string& options = "") {
    path_ = folder_.file("fair.json", R"({"lesson": 1, "title": "Winter fair", "problems": [)" + problems + "]}");
    return run_program("explain '" + path_ + "' " + options);
  }
  Folder folder_;
  std::string path_;
};

TEST_F(ExplainVerb, WritesEachStepWithItsReason) {
  const Outcome explained = run(shade);
  EXPECT_EQ(explained.status, 0) << explained.error;
  EXPECT_THAT(explained.error, IsEmpty());
  EXPECT_THAT(explained.out, StartsWith("shade: square pyramid\n   1. Find the surface area, S."));
  EXPECT_THAT(explained.out, HasSubstr("\n          S = 36 cm² + 108 cm²\n"));
  // The aside: carried digit, addends, rule, sum.
  EXPECT_THAT(explained.out,
              HasSubstr("                 36\n              + 108\n              -----\n                144\n"));
  EXPECT_THAT(explained.out, EndsWith("  Answer: 144 cm²\n\n"));
}

TEST_F(ExplainVerb, WritesTheLinesOfTheBoard) {
  const Outcome explained = run(shade, "--detail board");
  EXPECT_EQ(explained.status, 0) << explained.error;
  EXPECT_THAT(explained.out, HasSubstr("\n    S = B + ½Pℓ "));
  EXPECT_THAT(explained.out, HasSubstr("\n    S = 6² + ½ · 24 · 9   Substitute. B = 6 · 6, P = 4 · 6.\n"));
  EXPECT_THAT(explained.out, HasSubstr("\n    S = 36 + 108 "));
  EXPECT_THAT(explained.out, EndsWith("  Answer: 144 cm²\n\n"));
}

// The command line has the last word on the notation, then the lesson.
TEST_F(ExplainVerb, WritesTheBoardAsTheClassDoes) {
  EXPECT_THAT(run(shade, "--detail board --notation division,cross").out, HasSubstr("\n    S = B + P × ℓ ÷ 2 "));
  EXPECT_THAT(run(shade, "--detail board --notation unit-on-every-line").out, HasSubstr("\n    S = 36 cm² + 108 cm² "));
  const std::string lesson = folder_.file(
      "class.json", R"({"lesson": 1, "title": "T", "notation": ["division"], "problems": [)" + shade + "]}");
  EXPECT_THAT(run_program("explain '" + lesson + "' --detail board").out, HasSubstr("\n    S = B + P · ℓ ÷ 2 "));
  EXPECT_THAT(run_program("explain '" + lesson + "' --detail board --notation fraction").out,
              HasSubstr("\n    S = B + ½Pℓ "));
  EXPECT_EQ(run(shade, "--notation fractions").status, 2);
}

// A line on the board names its steps; together they are all steps.
TEST_F(ExplainVerb, JsonHasTheBoardBesideTheSteps) {
  const Outcome explained = run(shade, "--json");
  const json problem = json::parse(explained.out)["problems"][0];
  EXPECT_EQ(problem["board"][1]["equations"][0]["text"], "S = B + ½Pℓ");
  std::size_t steps = 0;
  for (const json& line : problem["board"]) {
    steps += line["steps"].size();
  }
  EXPECT_EQ(steps, problem["steps"].size());
}

TEST_F(ExplainVerb, PrintsJsonForPrograms) {
  const Outcome explained = run(shade + "," + tall, "--json");
  EXPECT_EQ(explained.status, 0) << explained.error;
  const json problems = json::parse(explained.out)["problems"];
  ASSERT_EQ(problems.size(), 2U);
  EXPECT_EQ(problems[0]["id"], "shade");
  EXPECT_EQ(problems[0]["find"], "surface_area");
  EXPECT_EQ(problems[0]["route"], "formula");
  EXPECT_EQ(problems[0]["answer"],
            json::parse(R"({"exact": "144", "value": 144.0, "unit": "cm^2", "text": "144 cm²", "notes": []})"));
  EXPECT_EQ(problems[1]["answer"]["exact"], "72√2");
  EXPECT_EQ(problems[1]["answer"]["text"], "≈ 101.82 cm³");
  for (const json& problem : problems) {
    ASSERT_GT(problem["steps"].size(), 5U);
    for (const json& step : problem["steps"]) {
      EXPECT_FALSE(step["reason"].get<std::string>().empty());
      EXPECT_EQ(step["equation"].is_null(), step["mathml"].is_null());
      EXPECT_TRUE(step["asides"].is_array());
      for (const json& face : step["faces"]) {
        EXPECT_GE(face.get<int>(), 1);
        EXPECT_LE(face.get<int>(), 5);
      }
    }
  }
}

TEST_F(ExplainVerb, GoesByTheRouteAsked) {
  const Outcome both = run(shade, "--route both");
  EXPECT_EQ(both.status, 0) << both.error;
  EXPECT_THAT(both.out, HasSubstr("shade: square pyramid (formula)\n"));
  EXPECT_THAT(both.out, HasSubstr("shade: square pyramid (faces)\n"));
  const json problems = json::parse(run(shade, "--route both --json").out)["problems"];
  ASSERT_EQ(problems.size(), 2U);
  EXPECT_EQ(problems[0]["route"], "formula");
  EXPECT_EQ(problems[1]["route"], "faces");
  EXPECT_EQ(problems[0]["answer"], problems[1]["answer"]);
  EXPECT_NE(problems[0]["steps"], problems[1]["steps"]);
}

TEST_F(ExplainVerb, RoundsAndConvertsAsAsked) {
  EXPECT_THAT(run(tall, "--places 4").out, HasSubstr("  Answer: ≈ 101.8234 cm³  (exactly 72√2 cm³)\n"));
  EXPECT_THAT(run(tall, "--places 0").out, HasSubstr("  Answer: ≈ 102 cm³  (exactly 72√2 cm³)\n"));
  // 144 cm² = 14 400 mm², since 1 cm² = 100 mm².
  EXPECT_EQ(json::parse(run(shade, "--unit mm^2 --json").out)["problems"][0]["answer"]["text"], "14,400 mm²");
}

// A problem that asks nothing is fine to look at, for check and for explain alike.
TEST_F(ExplainVerb, AProblemThatAsksNothingIsNoMistake) {
  const Outcome outcome = run(R"({"id": "look", "solid": {"kind": "cube", "edge": "4 cm"}})", "");
  EXPECT_EQ(outcome.status, 0);
  EXPECT_THAT(outcome.error, HasSubstr("problem look: asks nothing, so there is nothing to work out"));
}

// One mistake does not lock the file: it is told, and the other problems work.
TEST_F(ExplainVerb, AMistakeInOneProblemLeavesTheOthers) {
  const std::string bad = R"({"id": "bad", "solid": {"kind": "cube", "edge": "-4 cm"}, "find": ["volume"]})";
  const Outcome all = run(shade + "," + bad, "");
  EXPECT_EQ(all.status, 1);
  EXPECT_THAT(all.error, HasSubstr("problem bad, edge: "));
  EXPECT_THAT(all.out, HasSubstr("shade: square pyramid"));
  EXPECT_THAT(run(shade + "," + bad, "--problem shade").out, HasSubstr("shade: square pyramid"));
  const Outcome faulty = run(shade + "," + bad, "--problem bad");
  EXPECT_EQ(faulty.status, 1);
  EXPECT_EQ(faulty.out, "");
  EXPECT_THAT(faulty.error, testing::Not(HasSubstr("has no problem")));
}

TEST_F(ExplainVerb, SaysWhatCannotBeWorkedOut) {
  const Outcome no_area = run(tall, "--route faces");
  EXPECT_EQ(no_area.status, 1);
  EXPECT_EQ(no_area.error,
            "foldwright: " + path_ + ": problem tall: asks for no area, so there is nothing to add up face by face\n");
  const Outcome wrong_unit = run(shade + "," + tall, "--unit cm^3");
  EXPECT_EQ(wrong_unit.status, 1);
  EXPECT_EQ(wrong_unit.error, "foldwright: " + path_ + ": problem shade: the surface area is not measured in cm³\n");
  EXPECT_THAT(wrong_unit.out, HasSubstr("tall: square pyramid\n"));  // the other problem is explained all the same
}

TEST_F(ExplainVerb, AWrongLessonIsStatusOneWithItsPlace) {
  const Outcome flat = run(R"({"id": "flat", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"},
    "slant_height": "2 cm"}, "find": ["volume"]})");
  EXPECT_EQ(flat.status, 1);
  EXPECT_THAT(flat.out, IsEmpty());
  EXPECT_THAT(flat.error, StartsWith(path_ + ":"));
  EXPECT_THAT(flat.error, HasSubstr("slant height"));
}

TEST_F(ExplainVerb, WrongUsageIsStatusTwoAndSaysWhatWouldBeRight) {
  const Outcome no_unit = run(shade, "--unit blob");
  EXPECT_EQ(no_unit.status, 2);
  EXPECT_THAT(no_unit.error, HasSubstr("\"blob\" is no unit; cm, ft^2 and L are some"));
  EXPECT_THAT(run(shade, "--places 10").error, HasSubstr("not in range 0 to 9"));
  const Outcome route = run(shade, "--route corners");
  EXPECT_EQ(route.status, 2);
  EXPECT_THAT(route.error, HasSubstr("formula"));
  const Outcome near_miss = run(shade, "--problem shad");
  EXPECT_EQ(near_miss.status, 2);
  EXPECT_THAT(near_miss.out, IsEmpty());
  EXPECT_EQ(near_miss.error, "foldwright: " + path_ + " has no problem \"shad\"; did you mean \"shade\"?\n");
  EXPECT_EQ(run_program("explain /nowhere/at-all.json").status, 2);
}

TEST(DemoLessons, ExplainThemselves) {
  for (const std::string name : {"lantern_fair", "candle_boxes", "lantern_nets", "lantern_market"}) {
    const Outcome explained = run_program("explain '" FOLDWRIGHT_SOURCE_DIR "/demo_scenes/" + name + ".json'");
    EXPECT_EQ(explained.status, 0) << explained.error;
    EXPECT_THAT(explained.error, IsEmpty());
  }
}

}  // namespace
}  // namespace fw::cli::explain_test
