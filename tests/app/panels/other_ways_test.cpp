#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "reasoning/explanation.hpp"

// Problems that ask in another way than by a measure, in the mode "Work it out".
namespace fw::panels::test::other_ways_test {
namespace {

std::shared_ptr<const lessons::Lesson> market() {
  auto lesson = tasks::read_lesson(platform::asset("lantern_market.json"));
  return std::make_shared<const lessons::Lesson>(std::move(lesson).value());
}

Model working_on(std::size_t problem) {
  Model model;
  model.state = opened(*market(), "");
  model = apply(std::move(model), OpenProblem{problem}).model;
  return after(std::move(model), {SetMode{Mode::Work}});
}

TEST(OtherWays, EachIsWorkedOutToItsAnswer) {
  const auto lesson = market();
  for (std::size_t i = 0; i < lesson->problems.size(); ++i) {
    const WorkedProblem worked = worked_for(working_on(i).state);
    ASSERT_TRUE(worked.task.has_value() || practice::type_of(lesson->problems[i]) == "asked-unit")
        << lesson->problems[i].id;
    ASSERT_GT(worked.count, 1U) << lesson->problems[i].id;
    EXPECT_TRUE(worked.missing.empty()) << said(worked.missing);
    EXPECT_FALSE(worked.title.empty()) << lesson->problems[i].id;
    for (std::size_t step = 0; step < worked.count; ++step) {
      EXPECT_FALSE(worked.step(step).reason.empty());
      for (const WorkPart& part : worked.parts) {
        for (const reasoning::Source& source : part.sources) {
          EXPECT_TRUE(!source.step || *source.step < part.steps.size()) << said(source.sentence);
        }
      }
    }
    if (worked.task) {
      EXPECT_EQ(worked.step(worked.count - 1).kind, reasoning::StepKind::Answer) << lesson->problems[i].id;
    }
  }
}

TEST(OtherWays, AreShownOnTheScreenToTheLastStep) {
  const std::vector<std::pair<std::size_t, std::string>> answers{{0, "20 boxes of candles fit"},
                                                                 {1, "7648 in²"},
                                                                 {4, "2.02 m²"},
                                                                 {5, "this figure is impossible"},
                                                                 {8, "400 in² and 800 in²"}};
  for (const auto& [problem, answer] : answers) {
    ProgramDriver program(working_on(problem), 1280, 720);
    program.user().frames(2);
    EXPECT_FALSE(program.user().shows_text(answer)) << answer;
    program.user().press(Key::A);
    program.user().press(Key::End);
    program.user().frames(1);
    EXPECT_EQ(program.state().desk().work.reached, worked_for(program.state()).count);
    EXPECT_TRUE(program.user().shows_text(answer)) << answer;
  }
}

}  // namespace
}  // namespace fw::panels::test::other_ways_test
