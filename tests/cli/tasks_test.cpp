// What a lesson asks in another way than by a measure, as a shell sees it.
#include <gmock/gmock.h>

#include <nlohmann/json.hpp>

#include "program.hpp"

namespace fw::cli::tasks_test {
namespace {

using nlohmann::json;
using testing::EndsWith;
using testing::HasSubstr;
using testing::StartsWith;

const std::string box = R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"})";

class TaskVerbs : public testing::Test {
 protected:
  Outcome run(const std::string& verb, const std::string& members, const std::string& options = "") {
    path_ = folder_.file("market.json", R"({"lesson": 1, "title": "Market", "problems": [
  {"id": "p", "solid": )" + box + ", " + members +
                                            "}]}");
    return run_program(verb + " '" + path_ + "' " + options);
  }
  Folder folder_;
  std::string path_;
};

TEST_F(TaskVerbs, ExplainTellsTheTaskAfterItsMeasure) {
  const std::string copy = R"("scale": "4", "find": ["surface_area"])";
  const Outcome explained = run("explain", copy);
  EXPECT_EQ(explained.status, 0) << explained.error;
  EXPECT_THAT(
      explained.out,
      StartsWith(
          "p: rectangular prism\n   1. Find the surface area of the scaled copy, in square centimeters (cm²).\n"));
  EXPECT_THAT(explained.out, EndsWith("  Answer: 4576 cm²\n\n"));
  const json problem = json::parse(run("explain", copy, "--json").out)["problems"][0];
  EXPECT_EQ(problem["find"], "surface_area");
  EXPECT_EQ(problem["answer"]["exact"], "4576");
  EXPECT_EQ(problem["answer"]["unit"], "cm^2");
  EXPECT_EQ(problem["task"]["name"], "copy");
  EXPECT_EQ(problem["task"]["steps"].size(), 5U);
}

TEST_F(TaskVerbs, DiagnoseReadsALetterAndAWord) {
  const std::string bounds = R"("find": ["surface_area"], "between": ["100 cm^2", "200 cm^2", "300 cm^2"])";
  EXPECT_EQ(run("diagnose", bounds, "--problem p --answer B").status, 0);
  const Outcome wrong = run("diagnose", bounds, "--problem p --answer '100 to 200' --json");
  EXPECT_EQ(wrong.status, 0);
  EXPECT_EQ(json::parse(wrong.out)["verdict"], "recognized");
}

TEST_F(TaskVerbs, CheckTellsOfAWrongAnswerWithoutOneMistake) {
  const Outcome checked = run("check", R"("find": ["surface_area"], "wrong": {"answer": "283.7 cm^2"})");
  EXPECT_EQ(checked.status, 1);
  EXPECT_EQ(checked.out, path_ +
                             ":2:134: problem p, wrong: the wrong answer 283.7 cm^2 does not come from a usual "
                             "mistake, so the problem can't ask which one it was: give a different answer\n" +
                             path_ + ": 1 error, 0 remarks\n");
  EXPECT_EQ(run("check", R"("find": ["surface_area"], "wrong": {"answer": "268 cm^2"})").status, 1)
      << "two digits of 286 exchanged, or one product off by 18";
  EXPECT_EQ(run("check", R"("find": ["surface_area"], "wrong": {"answer": "143 cm^2"})").status, 0);
  EXPECT_EQ(run("check", R"("find": ["surface_area"], "wrong": {"answer": "315 cm^2"})").status, 0);
}

TEST_F(TaskVerbs, PracticeTellsTheKeyOfEachTask) {
  const std::string path = folder_.path("set.json");
  const Outcome made = run_program(
      "practice --types pack,can-it-be,estimate,purpose,find-mistake,asked-unit,copy,factor "
      "--level 3 --count 40 -o '" +
      path + "'");
  EXPECT_EQ(made.status, 0) << made.error;
  EXPECT_THAT(made.out, testing::AllOf(HasSubstr("would fit"), HasSubstr("between "), HasSubstr("one face")));
  EXPECT_EQ(run_program("check '" + path + "'").status, 0);
  EXPECT_EQ(run_program("explain '" + path + "'").status, 0);
}

}  // namespace
}  // namespace fw::cli::tasks_test
