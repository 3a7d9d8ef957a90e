#include <gmock/gmock.h>

#include <algorithm>

#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/forms_support.hpp"
#include "panels/ids.hpp"
#include "reasoning/explanation.hpp"
#include "tasks/nets/net_task.hpp"

// The window and `explain` work a problem out alike: as many steps, the same sentences, the same lines.
namespace fw::panels::test::same_steps_test {
namespace {

using testing::ElementsAreArray;
using testing::Matcher;

constexpr const char* lessons_shown[] = {"lantern_fair.json", "lantern_market.json", "lantern_nets.json",
                                         "candle_boxes.json"};

using Lines = std::vector<std::string>;

void add_step(Lines& lines, const reasoning::Step& step) {
  lines.push_back(words::said(step.reason) + (step.line ? "  " + algebra::plain_text(*step.line) : ""));
}

Lines lines_of(const std::vector<reasoning::Step>& steps) {
  Lines lines;
  for (const reasoning::Step& step : steps) {
    add_step(lines, step);
  }
  return lines;
}

Lines window_lines(const State& state) {
  const WorkedProblem worked = worked_for(state);
  Lines lines;
  for (std::size_t i = 0; i < worked.count; ++i) {
    add_step(lines, worked.step(i));
  }
  return lines;
}

Model working_in(const std::string& lesson, std::size_t problem) {
  return after(lesson_model(lesson), {OpenProblem{problem}, SetMode{Mode::Work}});
}

/// Runs over the problems of the demo lessons, each opened to be worked out.
template <class Visit>
void for_each_demo_problem(const Visit& visit) {
  for (const char* lesson : lessons_shown) {
    const std::size_t count = working_in(lesson, 0).state.lesson->problems.size();
    for (std::size_t i = 0; i < count; ++i) {
      visit(working_in(lesson, i));
    }
  }
}

TEST(SameSteps, WhatIsAskedFirstHasThoseOfExplain) {
  std::size_t seen = 0;
  for_each_demo_problem([&](const Model& model) {
    const lessons::Problem& problem = model.state.current();
    std::vector<Matcher<Lines>> told;
    if (tasks::net_asked(problem) != nullptr) {
      told.emplace_back(ElementsAreArray(lines_of(tasks::net_steps(problem))));
    } else {
      const auto all = practice::explained(problem);
      ASSERT_TRUE(all) << problem.id;
      for (const reasoning::Explanation& one : *all) {
        told.emplace_back(ElementsAreArray(lines_of(reasoning::all_steps(one))));
      }
    }
    EXPECT_THAT(window_lines(model.state), testing::AnyOfArray(told)) << problem.id;
    ++seen;
  });
  EXPECT_EQ(seen, 58U);
}

TEST(SameSteps, WhateverElseTheLessonAsksForHasThemToo) {
  for_each_demo_problem([](const Model& model) {
    const lessons::Problem& problem = model.state.current();
    for (const lessons::Task& task : problem.tasks) {
      if (practice::stated(task).explained_at(problem) != practice::ExplainedAt::ItsPlace) {
        continue;  // asked for by the lesson alone
      }
      const auto told = practice::explained_task(problem, task);
      ASSERT_TRUE(told) << problem.id;
      EXPECT_EQ(window_lines(after(model, {AskFor{task->key(), std::nullopt}}).state),
                lines_of(reasoning::all_steps(*told)))
          << problem.id << ", " << task->key();
    }
  });
}

TEST(SameSteps, BeginWithTheDecisionAndNameTheSolid) {
  const State dice = after(demo_model("dice-lamp"), {SetMode{Mode::Work}}).state;
  const Lines lines = window_lines(dice);
  ASSERT_EQ(lines.size(), 9U);
  EXPECT_EQ(lines[0], "A wire runs along edges, so find a length.");
  EXPECT_EQ(lines[1], "The solid is a cube. It has 6 faces.");
  EXPECT_EQ(window_lines(after(demo_model("tent"), {SetMode{Mode::Work}}).state).size(), 26U);
}

TEST(SameSteps, AreNumberedAsTheHeadCountsThem) {
  ProgramDriver program(after(demo_model("tent"), {SetMode{Mode::Work}, LastStep{}}), 1280, 720);
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("26 of 26"));
  const std::vector<ItemRecord>& items = program.user().ui().items();
  EXPECT_TRUE(std::any_of(items.begin(), items.end(), [](const ItemRecord& item) { return item.text == "26"; }))
      << "the number of the last step, in the margin";
}

TEST(SameSteps, SourcesNameStepsByTheirNumberAmongAll) {
  for_each_demo_problem([](const Model& model) {
    const WorkedProblem worked = worked_for(model.state);
    for (const WorkPart& part : worked.parts) {
      for (const reasoning::Source& source : part.sources) {
        const std::string begin = "worked out in step ";
        const std::string sentence = words::said(source.sentence);
        if (sentence.rfind(begin, 0) == 0) {
          EXPECT_EQ(sentence, begin + std::to_string(part.first + *source.step + 1)) << model.state.current().id;
        }
      }
    }
  });
}

TEST(SameSteps, TheSecondWayStandsForItself) {
  const State state = after(demo_model("tent"), {SetMode{Mode::Work}, SetRoute{RouteChoice::Both}, LastStep{}}).state;
  std::vector<std::string> titles;
  std::vector<bool> other_ways;
  for (const WorkPart& part : worked_for(state).parts) {
    titles.push_back(said(part.title));
    other_ways.push_back(part.is_other_way);
  }
  EXPECT_THAT(titles, testing::ElementsAre("", "by formula", "face by face", "then the count"));
  EXPECT_THAT(other_ways, testing::ElementsAre(false, false, true, false));
}

}  // namespace
}  // namespace fw::panels::test::same_steps_test
