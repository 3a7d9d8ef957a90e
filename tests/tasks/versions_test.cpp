// Parallel versions of a teacher's own problems.
#include "tasks/generate/versions.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "exact/print_number.hpp"
#include "lessons/write_lesson.hpp"
#include "practice/diagnosis.hpp"
#include "practice/task_type.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::tasks::versions_test {
namespace {

lessons::Lesson lesson_with(const std::string& problems) {
  auto lesson = read_lesson(R"({"lesson": 1, "title": "Mine", "problems": [)" + problems + "]}");
  EXPECT_TRUE(lesson.has_value());
  return std::move(lesson).value();
}

std::string digits_only(const std::string& text) {
  std::string shape;
  for (const char c : text) {
    shape += c >= '0' && c <= '9' ? '#' : c;
  }
  return shape;
}

// Every rule of what parallel means, for all pairs of versions.
void check_parallel(const Versions& versions) {
  for (const lessons::Lesson& version : versions.lessons) {
    const auto again = read_lesson(lessons::write_lesson(version));
    ASSERT_TRUE(again.has_value()) << lessons::write_lesson(version);
    EXPECT_EQ(*again, version);
  }
  const std::size_t problems = versions.lessons.front().problems.size();
  for (std::size_t i = 0; i < problems; ++i) {
    const lessons::Problem& first = versions.lessons.front().problems[i];
    for (std::size_t v = 1; v < versions.lessons.size(); ++v) {
      const lessons::Problem& made = versions.lessons[v].problems[i];
      if (made == first) {
        continue;  // told, see below
      }
      EXPECT_EQ(made.solid.name(), first.solid.name());
      EXPECT_EQ(made.solid.group_count(), first.solid.group_count());
      EXPECT_EQ(practice::type_of(made), practice::type_of(first));
      EXPECT_EQ(digits_only(made.prompt), digits_only(first.prompt)) << made.prompt;
      EXPECT_TRUE(is_masked(first) || !is_masked(made)) << made.id;
      for (std::size_t w = 0; w < v; ++w) {
        const lessons::Problem& other = versions.lessons[w].problems[i];
        const auto a = practice::question_of(made);
        const auto b = practice::question_of(other);
        ASSERT_TRUE(a.has_value() && b.has_value());
        if (!a->truth || practice::counts_parts(a->asked)) {
          continue;
        }
        const double apart = std::abs(a->truth->to_double() - b->truth->to_double());
        EXPECT_GT(apart, 0.05 * std::max(a->truth->to_double(), b->truth->to_double())) << made.id;
      }
    }
  }
}

TEST(Versions, HaveOtherNumbersOfTheSameKind) {
  const lessons::Lesson lesson = lesson_with(R"(
      {"id": "box", "prompt": "A box is 9 in long and 7 in wide. How much paper covers it?", "find": ["surface_area"],
       "solid": {"kind": "rectangular prism", "length": "9 in", "width": "7 in", "height": "5 in"}},
      {"id": "crate", "prompt": "A crate holds 240 cubic feet. How tall is it?", "find": ["height"],
       "known": {"volume": "240 ft^3"},
       "solid": {"kind": "rectangular prism", "length": "12 ft", "width": "5 ft", "height": "?"}},
      {"id": "tent", "prompt": "How much cloth?", "find": ["surface_area"],
       "solid": {"kind": "prism", "height": "7 ft",
                 "base": {"shape": "isosceles triangle", "base": "24 ft", "height": "9 ft", "leg": "15 ft"}}},
      {"id": "shade", "prompt": "What is the area?", "find": ["lateral_area"],
       "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "10.5 cm"}, "slant_height": "12 cm"}})");
  const Versions versions = versions_like(lesson, 4, 1);
  for (const words::Message& one : versions.unchanged) {
    ADD_FAILURE() << said(one);
  }
  ASSERT_EQ(versions.lessons.size(), 4U);
  EXPECT_EQ(versions.lessons.front(), lesson);
  check_parallel(versions);
  for (std::size_t v = 1; v < 4; ++v) {
    for (std::size_t i = 0; i < 4; ++i) {
      EXPECT_FALSE(versions.lessons[v].problems[i].solid == lesson.problems[i].solid) << lesson.problems[i].id;
    }
  }
  EXPECT_EQ(versions.lessons, versions_like(lesson, 4, 1).lessons) << "the same seed gives the same versions";
}

TEST(Versions, SayWhatCannotBeVaried) {
  const lessons::Lesson lesson = lesson_with(R"(
      {"id": "slab", "prompt": "What is the base area?", "find": ["base_area"],
       "solid": {"kind": "pyramid", "height": "7 1/2 cm",
                 "base": {"shape": "polygon", "unit": "cm", "vertices": [[0, 0], [4, 0], [4, 3], [0, 3]]}}},
      {"id": "claim", "prompt": "Can it be?", "claim": {"slant_height": "3 cm"},
       "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "8 cm"}, "height": "3 cm"}})");
  const Versions versions = versions_like(lesson, 2, 1);
  ASSERT_EQ(versions.unchanged.size(), 2U);
  EXPECT_THAT(said(versions.unchanged[0]), testing::StartsWith("Problem slab is the same in all versions: "));
  EXPECT_EQ(said(versions.unchanged[1]), "Problem claim is the same in all versions: its options go with its numbers.");
  EXPECT_EQ(versions.lessons[1], lesson);
}

// The problems of the demo lesson: most of them have versions, and each that has none is told.
TEST(Versions, OfTheDemoLessonSlow) {
  std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/demo_scenes/lantern_fair.json");
  std::ostringstream text;
  text << file.rdbuf();
  const lessons::Lesson lesson = read_lesson(text.str()).value();
  const Versions versions = versions_like(lesson, 4, 1);
  check_parallel(versions);
  EXPECT_LE(versions.unchanged.size(), lesson.problems.size() / 3);
}

}  // namespace
}  // namespace fw::tasks::versions_test
