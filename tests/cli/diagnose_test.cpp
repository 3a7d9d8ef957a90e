// The verb diagnose as a shell runs it.
#include <gmock/gmock.h>

#include <nlohmann/json.hpp>

#include "program.hpp"

namespace fw::cli::diagnose_test {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string lesson = R"({"lesson": 1, "title": "Winter fair", "problems": [
  {"id": "candle-box", "solid": {"kind": "rectangular prism", "length": "9 in", "width": "7 in", "height": "5 in"},
   "find": ["surface_area", "volume"]},
  {"id": "tent", "solid": {"kind": "prism", "height": "7 ft",
     "base": {"shape": "isosceles triangle", "base": "10 ft", "height": "12 ft", "leg": "13 ft"}},
   "find": ["volume"]}]})";

class Diagnose : public testing::Test {
 protected:
  Outcome run(const std::string& options) {
    return run_program("diagnose '" + folder_.file("fair.json", lesson) + "' " + options);
  }
  Folder folder_;
};

TEST_F(Diagnose, NamesTheLikeliestCause) {
  // 9 × 7 × 5 = 315, the volume.
  const Outcome outcome = run("--problem candle-box --answer '315 sq in'");
  EXPECT_EQ(outcome.status, 0);
  EXPECT_THAT(outcome.error, IsEmpty());
  EXPECT_EQ(outcome.out,
            "candle-box: 315 sq in: recognized\n  315 is the space inside. Surface area is the wrapping paper. "
            "Which faces does the paper cover?\n");
}

TEST_F(Diagnose, IsDoneWithARightAnswer) {
  const Outcome outcome = run("--problem candle-box --answer '286 in^2'");
  EXPECT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_THAT(outcome.out, HasSubstr("right"));
  EXPECT_EQ(run("--problem candle-box --find volume --answer '315 in^3'").status, 0);
}

TEST_F(Diagnose, PrintsJson) {
  const Outcome outcome = run("--problem tent --answer '840 ft^3' --json");
  const json document = json::parse(outcome.out);
  EXPECT_EQ(document["verdict"], "ask");
  EXPECT_EQ(document["message"], "Which face did you take as the base, and what was its area?");
  ASSERT_GE(document["causes"].size(), 2U);
  for (const json& cause : document["causes"]) {
    EXPECT_TRUE(cause["id"].is_string());
    EXPECT_THAT(cause["message"].get<std::string>(), HasSubstr("840"));
  }
  EXPECT_EQ(json::parse(run("--problem candle-box --answer 286 --json").out)["verdict"], "right_number");
}

TEST_F(Diagnose, CountsTheCausesOfABatch) {
  const std::string batch = folder_.file("answers.csv",
                                         "problem,answer\r\n"
                                         "candle-box,315\r\n"
                                         "candle-box,\"315 cu in\"\n"
                                         "candle-box,286 in^2\n"
                                         "\n"
                                         "tent,\"1,234.5 ft^3\"\n");
  const Outcome outcome = run("--batch '" + batch + "' --json");
  EXPECT_EQ(outcome.status, 0) << outcome.error;
  const json document = json::parse(outcome.out);
  EXPECT_EQ(document["answers"].size(), 4U);
  EXPECT_EQ(document["counts"]["candle-box"]["A1"], 2);
  EXPECT_EQ(document["counts"]["candle-box"]["right"], 1);
  EXPECT_EQ(document["counts"]["tent"]["unrecognized"], 1);
  EXPECT_THAT(
      run("--batch '" + batch + "'").out,
      HasSubstr(
          "  candle-box\n    2 × 315 is the space inside. Surface area is the wrapping paper. Which faces does the "
          "paper cover?\n    1 × right\n"));
}

TEST_F(Diagnose, TellsWhatItCannotRead) {
  const std::string batch = folder_.file("answers.csv", "candle-box,286,in\n");
  const Outcome outcome = run("--batch '" + batch + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("answers.csv:1: a row has two cells"));
  EXPECT_EQ(run("--problem candle-box").status, 2);
  EXPECT_EQ(run("--problem kennel --answer 4").status, 2);
  EXPECT_EQ(run("--problem candle-box --find slant_height --answer 4").status, 1);
}

}  // namespace
}  // namespace fw::cli::diagnose_test
