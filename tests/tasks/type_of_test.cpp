#include <gtest/gtest.h>

#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::tasks::type_of_test {
namespace {

using namespace practice;

TEST(TypeOf, TellsTheTypeThatAProblemWasMadeFromSlow) {
  for (const TypeName& type : tasks::type_names()) {
    if (type.key == "routes") {
      continue;  // asks for a surface area and no more
    }
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
      PracticeRequest request;
      request.types = {type.key};
      request.level = 3;
      request.seed = seed;
      request.count = 4;
      const auto lessons = generated(request);
      ASSERT_TRUE(lessons.has_value()) << type.key << ": " << (lessons ? "" : said(lessons.error()));
      for (const lessons::Problem& problem : lessons->front().problems) {
        EXPECT_EQ(type_of(problem), type.key) << problem.prompt;
      }
    }
  }
}

TEST(TypeOf, IsEmptyWhereNothingIsAsked) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "t", "problems": [
    {"id": "a", "prompt": "Look.", "solid": {"kind": "cube", "edge": "2 cm"}}]})");
  ASSERT_TRUE(lesson.has_value());
  EXPECT_EQ(type_of(lesson->problems.front()), "");
}

}  // namespace
}  // namespace fw::tasks::type_of_test
