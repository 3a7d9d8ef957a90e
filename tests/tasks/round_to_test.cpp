// A problem that says what to round to: judged, explained, told and written that way.
#include <gmock/gmock.h>

#include "lessons/write_lesson.hpp"
#include "practice/diagnosis.hpp"
#include "practice/figure.hpp"
#include "practice/task_type.hpp"
#include "practice/told_prompt.hpp"
#include "tasks/catalog.hpp"

namespace fw::tasks::round_to_test {
namespace {

std::string lesson_with(const std::string& members) {
  return R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": {"kind": "regular polyhedron", "faces": 8,
      "edge": "9 cm"}, )" +
         members + "}]}";
}

Result<lessons::Lesson, std::vector<lessons::Finding>> lesson_of(const std::string& members) {
  return tasks::read_lesson(lesson_with(members));
}

// 2√3 · 9² = 280.592…, from memory.
std::string verdict(const std::string& round_to, const std::string& typed) {
  const auto lesson =
      lesson_of(R"("find": ["surface_area"])" + (round_to.empty() ? "" : R"(, "round_to": ")" + round_to + "\""));
  EXPECT_TRUE(lesson.has_value());
  return text(practice::diagnosed(lesson->problems.front(), typed)->verdict);
}

TEST(RoundTo, IsRightAsTheProblemSays) {
  EXPECT_EQ(verdict("whole", "281 cm^2"), "right");
  EXPECT_EQ(verdict("whole", "280 cm^2"), "recognized") << "cut off, not rounded";
  EXPECT_EQ(verdict("whole", "281"), "right_number");
  EXPECT_EQ(verdict("tenth", "280.6 cm^2"), "right");
  EXPECT_EQ(verdict("tenth", "162√3 cm^2"), "right");
  EXPECT_EQ(verdict("thousandth", "280.592 cm^2"), "right");
  EXPECT_EQ(verdict("", "280.59 cm^2"), "right");
}

// A tiny block's answer, the line of its ledger and its key say the same, and what was cut to nothing is not right.
TEST(RoundTo, LeavesTwoDigitsOfASmallAnswer) {
  const auto lesson = tasks::read_lesson(
      R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "prompt": "How much paint?", "solid": {"kind":
      "rectangular prism", "length": "0.03 m", "width": "0.02 m", "height": "0.05 m"}, "find": ["surface_area"]},
      {"id": "q", "prompt": "How much sand?", "solid": {"kind": "regular polyhedron", "faces": 8, "edge": "0.05 m"},
      "find": ["volume"]}]})");
  ASSERT_TRUE(lesson.has_value());
  const lessons::Problem& block = lesson->problems.front();
  EXPECT_EQ(said(practice::explained(block)->front().answer), "0.0062 m²");
  EXPECT_EQ(said(practice::right_answer(block).value()), "0.0062 m²");
  EXPECT_EQ(practice::told_prompt(block), "How much paint?") << "it ends";
  EXPECT_EQ(text(practice::diagnosed(block, "0.0062 m^2")->verdict), "right");
  EXPECT_NE(text(practice::diagnosed(block, "0.01 m^2")->verdict), "right");
  // √2/3 · 0.05³ = 0.0000589…, from memory.
  const lessons::Problem& ball = lesson->problems.back();
  EXPECT_EQ(said(practice::right_answer(ball).value()), "≈ 0.000059 m³");
  EXPECT_EQ(practice::told_prompt(ball), "How much sand? Round to the nearest millionth.");
  EXPECT_EQ(text(practice::diagnosed(ball, "0.000059 m^3")->verdict), "right");
  EXPECT_NE(text(practice::diagnosed(ball, "0.00 m^3")->verdict), "right");
}

TEST(RoundTo, IsHeededByTheSolutionAndTheKey) {
  for (const auto& [round_to, answer] : std::map<std::string, std::string>{{"whole", "≈ 281 cm²"},
                                                                           {"tenth", "≈ 280.6 cm²"},
                                                                           {"hundredth", "≈ 280.59 cm²"},
                                                                           {"thousandth", "≈ 280.592 cm²"}}) {
    const auto lesson = lesson_of(R"("find": ["surface_area"], "round_to": ")" + round_to + "\"");
    const lessons::Problem& problem = lesson->problems.front();
    EXPECT_EQ(said(practice::explained(problem)->front().answer), answer);
    EXPECT_EQ(said(practice::right_answer(problem).value()), answer);
    EXPECT_THAT(lessons::write_lesson(*lesson), testing::HasSubstr("\"round_to\": \"" + round_to + "\""));
    EXPECT_EQ(tasks::read_lesson(lessons::write_lesson(*lesson)).value(), *lesson);
    reasoning::SolutionOptions options;
    options.places = 1;
    EXPECT_EQ(said(practice::explained(problem, options)->front().answer), "≈ 280.6 cm²")
        << "whoever asks has the last word";
  }
}

std::string error_of(const std::string& members) {
  const auto lesson = lesson_of(members);
  return lesson ? "" : said(lesson.error().front().message);
}

TEST(RoundTo, ThatCannotBeIsTold) {
  EXPECT_THAT(error_of(R"("find": ["surface_area"], "round_to": "tenths")"),
              testing::HasSubstr(R"("round_to" is "whole", "tenth", "hundredth", "thousandth", "ten-thousandth", )"
                                 R"("hundred-thousandth" or "millionth"; found)"));
  EXPECT_EQ(error_of(R"("find": ["name"], "round_to": "tenth")"),
            "\"round_to\" goes with a measure to find, as in \"find\": [\"surface_area\"]");
  EXPECT_NE(error_of(R"("find": ["surface_area"], "round_to": 2)"), "");
}

TEST(RoundTo, ThatOnlyThePromptSaysIsRemarked) {
  const std::string prompt = R"("find": ["surface_area"], "prompt": "Find S. Round to the nearest whole number.")";
  EXPECT_THAT(tasks::findings_of(lesson_with(prompt + R"(, "round_to": "whole")")), testing::IsEmpty());
  const std::vector<lessons::Finding> findings = tasks::findings_of(lesson_with(prompt));
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_TRUE(findings.front().is_remark);
  EXPECT_EQ(said(findings.front().message),
            "the prompt says to round to the nearest whole number: add \"round_to\": \"whole\", so that answers are "
            "checked that way");
}

}  // namespace
}  // namespace fw::tasks::round_to_test
