#include "tasks/catalog.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "exact/print_number.hpp"
#include "lessons/write_lesson.hpp"
#include "reasoning/blank.hpp"
#include "solids/catalog.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"

// Every row of the table of questions is held to the same laws.
namespace fw::tasks::catalog_test {
namespace {

using practice::AnswerForm;
using practice::AnswerVerdict;
using practice::TaskType;

Problem problem_of(const std::string& example) {
  const auto lesson = read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", )" + example + "}]}");
  EXPECT_TRUE(lesson.has_value()) << example << ": " << (lesson ? "" : text(lesson.error().front(), "example"));
  return lesson->problems.front();
}

bool is_made_by(const Row& row, const std::string& type) {
  return std::any_of(row.made.begin(), row.made.end(), [&](const MadeUp& made) { return made.key == type; });
}

class EveryRow : public testing::TestWithParam<std::size_t> {
 protected:
  [[nodiscard]] static const Row& row() { return rows()[GetParam()]; }

  /// Runs over what the examples of the row ask for and can be answered.
  template <class Visit>
  static void for_each_question(const Visit& visit) {
    for (const std::string& example : row().examples) {
      const Problem problem = problem_of(example);
      for (const Task& task : problem.tasks) {
        if (practice::stated(task).has_question()) {
          visit(problem, practice::stated(task));
        }
      }
    }
  }
};

TEST_P(EveryRow, HasExamplesThatAreOfItsOwnTypes) {
  ASSERT_FALSE(row().examples.empty());
  ASSERT_FALSE(row().made.empty());
  for (const std::string& example : row().examples) {
    EXPECT_TRUE(is_made_by(row(), practice::type_of(problem_of(example)))) << example;
  }
}

TEST_P(EveryRow, ReadsWhatItWrites) {
  for (const std::string& example : row().examples) {
    const Problem problem = problem_of(example);
    const std::string written = lessons::write_lesson({"T", {problem}});
    const auto again = read_lesson(written);
    ASSERT_TRUE(again.has_value()) << written;
    EXPECT_EQ(again->problems.front(), problem) << written;
    EXPECT_EQ(lessons::write_lesson(*again), written);
    for (std::size_t i = 0; i < problem.tasks.size(); ++i) {
      for (std::size_t k = 0; k < problem.tasks.size(); ++k) {
        EXPECT_EQ(problem.tasks[i] == again->problems.front().tasks[k], i == k) << "equal as they are written";
      }
    }
  }
}

TEST_P(EveryRow, FindsItsQuestionsByTheirKeys) {
  for_each_question([](const Problem& problem, const TaskType& task) {
    EXPECT_EQ(practice::task_asked(problem, task.key()), &task);
    const auto question = practice::question_of(problem, task.key());
    ASSERT_TRUE(question.has_value()) << said(question.error());
    EXPECT_EQ(question->find, task.key());
    EXPECT_NE(said(task.sentence(problem)).find_first_of("?."), std::string::npos) << "a sentence ends";
    EXPECT_FALSE(task.asks_to_type().empty());
    const bool is_number = task.form() == AnswerForm::Number || task.form() == AnswerForm::Count;
    EXPECT_TRUE(question->truth.has_value() || !is_number) << "it is answered by a number";
    EXPECT_TRUE(question->truth.has_value() || question->asked == Asked::None) << "no mistake leads to a word";
  });
}

TEST_P(EveryRow, EndsItsWorkWithItsAnswer) {
  for_each_question([](const Problem& problem, const TaskType& task) {
    const auto all = task.explained(problem, {});
    ASSERT_TRUE(all.has_value()) << said(all.error());
    EXPECT_FALSE(all->answer.empty());
    EXPECT_FALSE(reasoning::all_steps(*all).empty());
    if (const auto work = task.work(problem, 2)) {
      EXPECT_EQ(work->steps.back().kind, reasoning::StepKind::Answer) << words::said(work->steps.back().reason);
      EXPECT_EQ(said(all->answer), said(work->answer));
    }
    EXPECT_TRUE(task.hints(problem, {}).has_value());
  });
}

TEST_P(EveryRow, HidesTheNumberOfAStepThatIsFilledIn) {
  for_each_question([](const Problem& problem, const TaskType& task) {
    const auto work = task.work(problem, 2);
    for (const reasoning::Step& step : work ? work->steps : std::vector<reasoning::Step>{}) {
      if (reasoning::blank_kind(step) == reasoning::BlankKind::Number) {
        const std::string asks = said(reasoning::with_blank(step).reason);
        const std::string number = exact::shown(step.outcome->amount, 2).text;
        EXPECT_TRUE(step.line || asks.find("____") != std::string::npos) << asks;
        EXPECT_TRUE(step.line || (" " + asks).find(" " + number + " ") == std::string::npos) << asks;
      }
    }
  });
}

TEST_P(EveryRow, JudgesItsAnswerRight) {
  for_each_question([](const Problem& problem, const TaskType& task) {
    const auto key = practice::right_answer(problem, task.key());
    ASSERT_TRUE(key.has_value()) << said(key.error());
    const auto all = task.explained(problem, {});
    const std::string typed = said(task.form() == AnswerForm::Option ? all->answer : *key);
    const auto diagnosis = practice::diagnosed(problem, typed, task.key());
    ASSERT_TRUE(diagnosis.has_value()) << said(diagnosis.error());
    EXPECT_EQ(diagnosis->verdict, AnswerVerdict::Right)
        << task.key() << ": " << typed << ": " << said(diagnosis->message);
    EXPECT_NE(practice::diagnosed(problem, "gibberish", task.key())->verdict, AnswerVerdict::Right);
  });
}

TEST_P(EveryRow, HoldsExactlyTheRightOptionAmongItsOptions) {
  for_each_question([](const Problem& problem, const TaskType& task) {
    constexpr std::uint64_t seed = 7;
    const auto options = practice::choices_of(problem, seed, task.key());
    ASSERT_TRUE(options.has_value()) << task.key() << ": " << said(options.error());
    const auto right = std::count_if(options->begin(), options->end(), [](const Choice& one) { return one.is_right; });
    const NetTask* net = net_asked(problem);
    EXPECT_TRUE(right == 1 || (right > 1 && net != nullptr && net->takes_several())) << task.key() << ": " << right;
    EXPECT_GE(options->size(), 2U);
    std::set<std::string> texts;
    for (std::size_t i = 0; i < options->size(); ++i) {
      const std::string text = said((*options)[i].text);
      EXPECT_TRUE(texts.insert(text).second) << text;
      EXPECT_FALSE((*options)[i].message.empty()) << text;
      const bool by_letter = net == nullptr || net->has_letters();
      const std::string typed = by_letter ? practice::letter(i) : text;
      const AnswerVerdict verdict = practice::diagnosed(problem, typed, task.key(), seed)->verdict;
      const bool is_one_of_several = verdict == AnswerVerdict::Ask;
      EXPECT_EQ(verdict == AnswerVerdict::Right || is_one_of_several, (*options)[i].is_right) << text;
    }
  });
}

TEST_P(EveryRow, MakesUpProblemsOfItsOwnType) {
  for (const MadeUp& made : row().made) {
    PracticeRequest request;
    request.types = {made.key};
    request.level = made.level;
    request.seed = 11;
    request.count = 3;
    const auto lessons = generated(request);
    ASSERT_TRUE(lessons.has_value()) << said(lessons.error());
    for (const Problem& problem : lessons->front().problems) {
      // A surface area that is to be found in two ways asks for no more than a surface area.
      EXPECT_EQ(practice::type_of(problem), made.key == "routes" ? "surface" : made.key) << problem.prompt;
    }
    const auto again = read_lesson(lessons::write_lesson(lessons->front()));
    ASSERT_TRUE(again.has_value()) << made.key;
    EXPECT_EQ(*again, lessons->front());
  }
}

INSTANTIATE_TEST_SUITE_P(Rows, EveryRow, testing::Range<std::size_t>(0, rows().size()),
                         [](const testing::TestParamInfo<std::size_t>& one) {
                           std::string name = rows()[one.param].key;
                           std::replace(name.begin(), name.end(), '-', '_');
                           return name;
                         });

TEST(Rows, HaveKeysOfTheirOwn) {
  std::set<std::string> keys, members, types;
  int number = 0;
  for (const Row& row : rows()) {
    EXPECT_TRUE(keys.insert(row.key).second) << row.key;
    EXPECT_EQ(row.read == nullptr, row.keys.empty()) << row.key;
    for (const std::string& key : row.keys) {
      EXPECT_TRUE(members.insert(key).second) << key;
    }
  }
  for (const MadeUp& made : made_up()) {
    EXPECT_EQ(made.number, ++number) << made.key << ": a new type takes the next number";
    EXPECT_TRUE(types.insert(made.key).second) << made.key;
    EXPECT_FALSE(made.title.empty() || made.method.empty());
  }
}

TEST(Asking, AddsWhatIsNotAskedYet) {
  const Problem cube = problem_of(R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["volume"])");
  EXPECT_EQ(asking(cube, "").tasks, cube.tasks);
  EXPECT_EQ(asking(cube, "volume").tasks, cube.tasks);
  EXPECT_EQ(said(*practice::right_answer(asking(cube, "surface_area"), "surface_area")), "294 cm²");
  EXPECT_EQ(said(practice::question_of(asking(cube, "glory"), "glory").error()), "a cube has no measure \"glory\"");
}

// Of every solid, with the article that its name has.
TEST(Asking, ForWhatASolidHasNotNamesItRightly) {
  std::vector<solids::Description> all = solids::shelf();
  const Problem octagonal =
      problem_of(R"("solid": {"kind": "pyramid", "base": {"shape": "regular polygon", "count": 8, "side": "4 cm"},
    "height": "7 cm"}, "find": ["volume"])");
  all.push_back(octagonal.description);
  std::set<std::string> articles;
  for (const solids::Description& description : all) {
    const solids::Solid solid = solids::Solid::make(description).value();
    Problem problem = octagonal;
    problem.solid = solid;
    const std::string told = said(practice::question_of(asking(problem, "glory"), "glory").error());
    const bool has_vowel = std::string("aeiou").find(solid.name().front()) != std::string::npos;
    EXPECT_EQ(told, (has_vowel ? "an " : "a ") + solid.name() + " has no measure \"glory\"");
    articles.insert(told.substr(0, told.find(' ')));
  }
  EXPECT_EQ(articles.size(), 2U);
}

}  // namespace
}  // namespace fw::tasks::catalog_test
