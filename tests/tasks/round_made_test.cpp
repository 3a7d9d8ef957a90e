#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <set>

#include "practice/diagnosis.hpp"
#include "practice/task_type.hpp"
#include "tasks/generate/draw.hpp"
#include "tasks/generate/generate.hpp"

// Made-up problems about things on a circle.
namespace fw::tasks::round_made_test {
namespace {

using lessons::Problem;
using practice::AnswerVerdict;

const std::vector<std::string>& round_types() {
  static const std::vector<std::string> types{"round-surface", "round-lateral", "round-volume", "round-length"};
  return types;
}

std::vector<Problem> problems_of(const std::vector<std::string>& types, int level, std::size_t count) {
  PracticeRequest request;
  request.types = types;
  request.level = level;
  request.seed = 31;
  request.count = count;
  const auto lessons = generated(request);
  EXPECT_TRUE(lessons.has_value()) << level << ": " << (lessons ? "" : said(lessons.error()));
  return lessons ? lessons->front().problems : std::vector<Problem>{};
}

bool is_round(const Problem& problem) { return problem.solid.traits().has_round_base; }

// The same seed goes on to give the same problems: other types know nothing of circles.
TEST(RoundThings, ServeTheTypesOfTheirOwnAlone) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of({}, level, 60)) {
      EXPECT_FALSE(is_round(problem)) << problem.prompt;
    }
    for (const std::string& type : round_types()) {
      for (const Problem& problem : problems_of({type}, level, 12)) {
        EXPECT_TRUE(is_round(problem)) << problem.prompt;
        EXPECT_EQ(practice::type_of(problem), type);
        EXPECT_FALSE(is_masked(problem)) << problem.prompt;
      }
    }
  }
}

// Level 1: nothing comes to a point, and the radius is given or known. Level 3: of what does, one more length is to be
// worked out, the slant height for an area and the height for a volume.
TEST(RoundThings, AskMoreAtEachLevel) {
  std::set<std::string> asked;
  for (const std::string& type : round_types()) {
    for (const Problem& problem : problems_of({type}, 1, 12)) {
      EXPECT_FALSE(problem.solid.traits().has_apex) << problem.prompt;
      EXPECT_EQ(problem.description.fields.count("radius"), 1U) << problem.prompt;
    }
    for (const Problem& problem : problems_of({type}, 3, 20)) {
      asked.insert(practice::question_of(problem)->find);
      const char* spared = type == "round-volume" ? "height" : "slant_height";
      EXPECT_TRUE(type == "round-length" || !problem.solid.traits().has_apex ||
                  problem.description.fields.count(spared) == 0)
          << problem.prompt;
    }
  }
  for (const char* find : {"height", "radius", "diameter", "slant_height"}) {
    EXPECT_EQ(asked.count(find), 1U) << find;
  }
}

std::string in_tenths(double value) {
  char text[64];
  std::snprintf(static_cast<char*>(text), sizeof text, "%.1f", value);
  return static_cast<char*>(text);
}

// With any of the values of π that classes use, and exactly.
TEST(RoundThings, AreAnsweredWithAnyUsualValueOfPi) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of({"round-surface", "round-lateral", "round-volume"}, level, 30)) {
      const practice::Question question = *practice::question_of(problem);
      const double parts = question.truth->to_double() / 3.14159265358979323846;
      for (const double pi : {3.14, 3.14159265358979323846, 22.0 / 7}) {
        const std::string typed = in_tenths(parts * pi) + " " + question.unit->ascii();
        EXPECT_EQ(practice::diagnosed(problem, typed)->verdict, AnswerVerdict::Right) << problem.prompt << typed;
      }
      const std::string exact = in_tenths(parts) + "π " + question.unit->ascii();
      EXPECT_EQ(practice::diagnosed(problem, exact)->verdict, AnswerVerdict::Right) << problem.prompt << exact;
      const std::string bare = in_tenths(parts) + " " + question.unit->ascii();
      EXPECT_NE(practice::diagnosed(problem, bare)->verdict, AnswerVerdict::Right) << problem.prompt << bare;
    }
  }
}

TEST(RoundThings, HaveFourOptionsAndHints) {
  for (const Problem& problem : problems_of(round_types(), 3, 40)) {
    const auto options = practice::choices_of(problem, 3);
    ASSERT_TRUE(options.has_value()) << problem.prompt;
    EXPECT_EQ(options->size(), 4U) << problem.prompt;
    const auto hints = practice::hints_of(problem, "", {});
    ASSERT_TRUE(hints.has_value()) << problem.prompt;
    EXPECT_GE(hints->size(), 3U) << problem.prompt;
  }
}

}  // namespace
}  // namespace fw::tasks::round_made_test
