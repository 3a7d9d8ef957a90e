#include "tasks/quiz/quiz_set.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>

#include "practice/diagnosis.hpp"
#include "support/diagnosed_problems.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/quiz/quiz_help.hpp"

namespace fw::tasks::quiz_set_test {
namespace {

using namespace practice;

using testing::SizeIs;

lessons::Lesson demo_lesson(const std::string& name = "lantern_fair.json") {
  std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/demo_scenes/" + name);
  const std::string text((std::istreambuf_iterator<char>(file)), {});
  return tasks::read_lesson(text).value();
}

lessons::Problem shade() {
  const lessons::Lesson lesson = demo_lesson();
  return *std::find_if(lesson.problems.begin(), lesson.problems.end(),
                       [](const lessons::Problem& problem) { return problem.id == "shade"; });
}

QuizSetup made_up(std::uint64_t seed, Audience audience = Audience::Student, int level = 1) {
  return {audience, QuizSource::MadeUp, {}, level, seed};
}

TEST(QuizSetOf, TheLessonAsksEachProblemInItsOrder) {
  const lessons::Lesson lesson = demo_lesson();
  const QuizSet set = quiz_set({}, lesson).value();
  ASSERT_EQ(set.size(), lesson.problems.size());
  for (std::size_t i = 0; i < set.size(); ++i) {
    EXPECT_EQ(set[i].problem.id, lesson.problems[i].id);
  }
}

TEST(QuizSetOf, AProblemThatAsksForTwoThingsIsTwoItems) {
  lessons::Lesson lesson{"two", {shade()}};
  lesson.problems.front().tasks = test::tasks_of({"surface_area", "volume"});
  lesson.problems.front().prompt = "A shade.";
  const auto set = quiz_set({}, lesson);
  ASSERT_TRUE(set.has_value());
  ASSERT_THAT(*set, SizeIs(2));
  EXPECT_EQ(set->front().problem.prompt, "A shade. What is the surface area?");
  EXPECT_EQ(set->back().problem.prompt, "A shade. What is the volume?");
  EXPECT_EQ(set->back().skill, "volume");
}

// A claim is asked for itself, and beside it each measure: nothing of a problem is left unasked.
TEST(QuizSetOf, AClaimAndTheMeasuresBesideItAreItemsEach) {
  for (const auto& [find, items] : {std::pair(R"("volume")", 2U), std::pair(R"("volume", "surface_area")", 3U)}) {
    const auto lesson = tasks::read_lesson(
        R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "prompt": "A roof.", "solid": {"kind": "pyramid",
        "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"}, "claim": {"slant_height": "9 cm"},
        "find": [)" +
        std::string(find) + "]}]}");
    ASSERT_TRUE(lesson.has_value());
    const auto set = quiz_set({}, *lesson);
    ASSERT_TRUE(set.has_value());
    ASSERT_THAT(*set, SizeIs(items));
    EXPECT_EQ(set->front().skill, "can-it-be");
    EXPECT_EQ((*set)[1].skill, "volume");
  }
}

TEST(QuizSetOf, ALessonThatAsksForNothingSaysWhatToChoose) {
  lessons::Lesson lesson{"none", {shade()}};
  lesson.problems.front().tasks.clear();
  const auto set = quiz_set({}, lesson);
  ASSERT_FALSE(set.has_value());
  EXPECT_EQ(said(set.error()), "This lesson asks no questions. Choose its nets, or new problems.");
}

TEST(QuizSetOf, MadeUpIsMixedAndTheSameForASeed) {
  const lessons::Lesson lesson = demo_lesson();
  const auto one = quiz_set(made_up(3), lesson);
  const auto same = quiz_set(made_up(3), lesson);
  const auto other = quiz_set(made_up(4), lesson);
  ASSERT_TRUE(one.has_value() && same.has_value() && other.has_value());
  ASSERT_THAT(*one, SizeIs(10));
  std::set<std::string> skills;
  bool differs = false;
  for (std::size_t i = 0; i < one->size(); ++i) {
    EXPECT_EQ((*one)[i].problem, (*same)[i].problem);
    differs = differs || !((*one)[i].problem == (*other)[i].problem);
    skills.insert((*one)[i].skill);
  }
  EXPECT_TRUE(differs);
  EXPECT_GE(skills.size(), 5U);
}

TEST(QuizSetOf, ASkillIsTheTypeThatWasAskedFor) {
  const lessons::Lesson lesson = demo_lesson();
  for (const TypeName& type : tasks::type_names()) {
    if (type.key == "units" || type.key == "routes") {  // by what is asked, a volume and a surface area
      continue;
    }
    const auto set = quiz_set({Audience::Student, QuizSource::MadeUp, {type.key}, 3, 5}, lesson);
    ASSERT_TRUE(set.has_value()) << said(set.error());
    for (const QuizItem& one : *set) {
      EXPECT_EQ(one.skill, type.key);
    }
  }
}

TEST(QuizSetOf, NetsHaveNeighborsThatAreOtherSolids) {
  for (std::uint64_t seed = 1; seed < 6; ++seed) {
    const QuizSetup setup{Audience::Student, QuizSource::Nets, {}, 1, seed};
    const auto set = quiz_set(setup, demo_lesson());
    for (std::size_t i = 1; i < set->size(); ++i) {
      EXPECT_NE((*set)[i].problem.solid.name(), (*set)[i - 1].problem.solid.name());
    }
  }
}

TEST(QuizSetOf, EveryProblemOfTheDemoLessonsIsAnItem) {
  for (const char* name : {"lantern_nets.json", "lantern_market.json"}) {
    const lessons::Lesson lesson = demo_lesson(name);
    const auto set = quiz_set({}, lesson);
    ASSERT_TRUE(set.has_value());
    std::set<std::string> ids;
    for (const QuizItem& item : *set) {
      ids.insert(item.problem.id);
      EXPECT_FALSE(item.problem.prompt.empty());
      EXPECT_FALSE(item.skill.empty()) << item.problem.id;
      EXPECT_FALSE(answer_text(item).empty()) << item.problem.id;
    }
    EXPECT_EQ(ids.size(), lesson.problems.size()) << name;
  }
}

TEST(QuizSetOf, MadeUpProblemsOfEveryTypeCanBeAnswered) {
  const lessons::Lesson lesson = demo_lesson("lantern_market.json");
  for (const TypeName& type : tasks::type_names()) {
    QuizSetup setup{Audience::Student, QuizSource::MadeUp, {type.key}, 3, 4};
    const auto set = quiz_set(setup, lesson);
    ASSERT_TRUE(set.has_value()) << type.key << ": " << (set ? "" : said(set.error()));
    const QuizItem& one = set->front();
    EXPECT_EQ(one.skill, type.key == "routes" ? "surface" : type.key);
    const AnswerForm form = answer_form(one);
    const std::vector<Choice> choices = choices_for(one, 4, 0);
    EXPECT_TRUE(!is_chosen(form) || choices.size() > 1) << type.key;
    EXPECT_FALSE(answer_text(one).empty()) << type.key;
  }
}

TEST(QuizSetOf, EachWrongOptionIsOneMistakeAndOneIsRight) {
  const lessons::Lesson lesson = demo_lesson();
  for (std::uint64_t seed = 1; seed <= 4; ++seed) {
    const auto set = quiz_set(made_up(seed, Audience::Class, 3), lesson);
    ASSERT_TRUE(set.has_value());
    for (std::size_t i = 0; i < set->size(); ++i) {
      const std::vector<Choice> choices = choices_for((*set)[i], seed, i);
      ASSERT_GE(choices.size(), 2U) << (*set)[i].problem.prompt;
      std::set<std::string> texts;
      for (const Choice& one : choices) {
        texts.insert(said(one.text));
        EXPECT_FALSE(one.message.empty());
        // The right answer to "which mistake?" is a mistake.
        EXPECT_TRUE(one.is_right ? one.cause.empty() || (*set)[i].skill == "find-mistake" : !one.cause.empty())
            << said(one.text);
        // What the diagnosis says of an option is not another thing than the option says of itself.
        const auto diagnosis = diagnosed((*set)[i].problem, said(one.text), "", choice_seed(seed, i));
        ASSERT_TRUE(diagnosis.has_value());
        const bool is_part = diagnosis->verdict == AnswerVerdict::Ask;  // of several places
        EXPECT_EQ(diagnosis->verdict == AnswerVerdict::Right || is_part, one.is_right)
            << said(one.text) << " of " << (*set)[i].problem.prompt;
      }
      EXPECT_EQ(texts.size(), choices.size());
      const auto right = std::count_if(choices.begin(), choices.end(), [](const Choice& one) { return one.is_right; });
      EXPECT_EQ(right > 1, (*set)[i].skill == "complete-net") << (*set)[i].problem.prompt;
      EXPECT_GE(right, 1);
    }
  }
}

}  // namespace
}  // namespace fw::tasks::quiz_set_test
