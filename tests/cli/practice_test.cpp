// The verb practice as a shell runs it.
#include <gmock/gmock.h>

#include "program.hpp"
#include "tasks/catalog.hpp"

namespace fw::cli::practice_test {
namespace {

using testing::HasSubstr;

TEST(Practice, WritesALessonThatTheOtherVerbsRead) {
  const Folder folder;
  const std::string path = folder.path("set.json");
  const Outcome outcome = run_program("practice --level 2 --seed 9 --count 12 -o '" + path + "'");
  ASSERT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_THAT(outcome.out, HasSubstr("set.json: 12 problems\n"));
  const auto lesson = tasks::read_lesson(contents(path));
  ASSERT_TRUE(lesson.has_value());
  EXPECT_EQ(lesson->problems.size(), 12U);
  EXPECT_EQ(run_program("check '" + path + "'").status, 0);
  EXPECT_EQ(run_program("explain '" + path + "'").status, 0);
}

TEST(Practice, GivesTheSameLessonForTheSameSeed) {
  const Folder folder;
  const std::string once = folder.path("once.json");
  const std::string again = folder.path("again.json");
  ASSERT_EQ(run_program("practice --seed 4 -o '" + once + "'").status, 0);
  ASSERT_EQ(run_program("practice --seed 4 -o '" + again + "'").status, 0);
  EXPECT_EQ(contents(once), contents(again));
  ASSERT_EQ(run_program("practice --seed 5 -o '" + again + "'").status, 0);
  EXPECT_NE(contents(once), contents(again));
}

TEST(Practice, WritesEachVersionToAFileOfItsOwn) {
  const Folder folder;
  const Outcome outcome =
      run_program("practice --types surface,volume --count 4 --versions 3 -o '" + folder.path("quiz.json") + "'");
  ASSERT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_THAT(outcome.out, HasSubstr("version 3"));
  for (const char* name : {"quiz-1.json", "quiz-2.json", "quiz-3.json"}) {
    const auto lesson = tasks::read_lesson(contents(folder.path(name)));
    ASSERT_TRUE(lesson.has_value()) << name;
    for (std::size_t i = 1; i < lesson->problems.size(); ++i) {
      EXPECT_NE(lessons::find_of(lesson->problems[i]), lessons::find_of(lesson->problems[i - 1]))
          << "neighbors are solved alike";
    }
  }
}

// The key with every problem worked out: as on the board, or every step.
TEST(Practice, WorksTheKeyOut) {
  const Folder folder;
  const std::string path = folder.path("set.json");
  const std::string call = "practice --types volume,is-net --level 2 --count 4 --force -o '" + path + "' ";
  EXPECT_THAT(run_program(call).out, testing::Not(HasSubstr("Answer: ")));
  const std::string board = run_program(call + "--worked").out;
  EXPECT_THAT(board, HasSubstr("\n  Answer: "));
  const std::string steps = run_program(call + "--worked --detail every").out;
  EXPECT_THAT(steps, HasSubstr("\n   2. "));
  EXPECT_LT(board.size(), steps.size());
  const std::string explained = run_program("explain '" + path + "' --detail board").out;
  EXPECT_THAT(board, HasSubstr(explained)) << "the key is what explain says";
}

// The class's notation goes into the lesson, so that the screen and the key follow.
TEST(Practice, WritesTheNotationIntoTheLesson) {
  const Folder folder;
  const std::string path = folder.path("set.json");
  ASSERT_EQ(run_program("practice --count 2 --notation cross,division -o '" + path + "'").status, 0);
  EXPECT_THAT(contents(path), HasSubstr("\"notation\": [\"division\", \"cross\"]"));
  EXPECT_EQ(run_program("check '" + path + "'").status, 0);
}

TEST(Practice, RefusesWhatItDoesNotKnow) {
  const Folder folder;
  const Outcome outcome = run_program("practice --types poems -o '" + folder.path("x.json") + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("there is no type \"poems\""));
  EXPECT_EQ(run_program("practice --level 4 -o x.json").status, 2);
}

}  // namespace
}  // namespace fw::cli::practice_test
