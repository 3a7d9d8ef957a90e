#include "state/lesson_steps.hpp"

#include <gmock/gmock.h>

#include "app/state/model_support.hpp"

// One button through the whole lesson, and the same way back.
namespace fw::state::test::lesson_steps_test {
namespace {

/// What a class sees of a place in the lesson.
struct Place {
  std::string problem;
  std::vector<FaceId> counted;
  bool total;
  bool volume;
  NetSeen net_seen;
  double fold;
  friend bool operator==(const Place&, const Place&) = default;
  friend std::ostream& operator<<(std::ostream& out, const Place& place) {
    return out << place.problem << ", " << place.counted.size() << " counted" << (place.total ? ", total" : "")
               << (place.volume ? ", volume" : "") << ", net " << static_cast<int>(place.net_seen) << ", fold "
               << place.fold;
  }
};
Place place_of(const Model& model) {
  const Desk& desk = model.state.desk();
  return {model.state.current().id, desk.counted, desk.total_shown, desk.volume_shown, desk.net_seen, model.view.fold};
}

/// One press, and what it sets moving comes to rest.
Model pressed(Model model, int by) {
  model = after(std::move(model), {StepLesson{by}});
  for (int ticks = 0; is_moving(model.view) && ticks < 10000; ++ticks) {
    model = after(std::move(model), {Tick{0.1}});
  }
  return model;
}

Model first_problem(const char* file) {
  Model model;
  model.state = opened(tasks::read_lesson(platform::asset(file)).value(), "");
  model.view.fold = lies_flat(model.state) ? 1 : 0;
  return model;
}

TEST(LessonSteps, LeadThroughEveryLessonAndTheSameWayBack) {
  for (const char* file : {"lantern_fair.json", "lantern_market.json", "candle_boxes.json", "lantern_nets.json"}) {
    Model model = first_problem(file);
    std::vector<Place> places{place_of(model)};
    while (next_lesson_step(model) && places.size() < 3000) {
      model = pressed(std::move(model), 1);
      ASSERT_FALSE(place_of(model) == places.back()) << file << ": a press that does nothing, press " << places.size();
      places.push_back(place_of(model));
    }
    EXPECT_EQ(model.state.problem + 1, model.state.lesson->problems.size()) << file;
    EXPECT_EQ(after(model, {StepLesson{1}}), model) << file << ": after the end there is nothing";
    while (places.size() > 1) {
      places.pop_back();
      model = pressed(std::move(model), -1);
      ASSERT_EQ(place_of(model), places.back()) << file << ": back at press " << places.size();
    }
    EXPECT_FALSE(last_lesson_step(model).has_value());
    EXPECT_EQ(after(model, {StepLesson{-1}}), model) << file << ": before the beginning there is nothing";
  }
}

std::vector<LessonStep> steps_of(const std::string& problem, const std::vector<Command>& first = {}) {
  Model model = after(demo_model(problem), first);
  const std::size_t here = model.state.problem;
  std::vector<LessonStep> steps;
  while (next_lesson_step(model) && model.state.problem == here) {
    steps.push_back(*next_lesson_step(model));
    model = pressed(std::move(model), 1);
  }
  return steps;
}

using L = LessonStep;

TEST(LessonSteps, FollowWhatIsAsked) {
  EXPECT_EQ(steps_of("sand-box"), (std::vector<L>{L::ShowVolume, L::NextProblem})) << "asks for the volume";
  EXPECT_EQ(steps_of("tea-bag"), (std::vector<L>{L::CountFace, L::CountFace, L::CountFace, L::CountFace, L::ShowTotal,
                                                 L::Unfold, L::FoldUp, L::NextProblem}))
      << "asks for its name";
  EXPECT_EQ(class_goal(demo_model("window-star").state.current()), ClassGoal::Count) << "asks how many faces";
  EXPECT_EQ(class_goal(demo_model("crate").state.current()), ClassGoal::Areas);
}

TEST(LessonSteps, CountCongruentFacesInFewPresses) {
  const std::vector<Command> together{SetGrouping{reasoning::Grouping::AlikeTogether}};
  EXPECT_LE(steps_of("candle-box", together).size(), 8U);
  EXPECT_LE(steps_of("snow-ball", together).size(), 8U);
}

TEST(LessonSteps, PassOverWhatWasDoneByHand) {
  const Model model = after(demo_model("shade"), {ShowTotal{true}, SetFold{1}, CountNext{}, CountNext{}, CountNext{},
                                                  CountNext{}, CountNext{}});
  EXPECT_EQ(next_lesson_step(model), L::FoldUp);
}

TEST(LessonSteps, APressWhileTheNetMovesTakesItToItsEnd) {
  Model model = after(demo_model("shade"), {CountNext{}, CountNext{}, CountNext{}, CountNext{}, CountNext{},
                                            ShowTotal{true}, StepLesson{1}, Tick{0.2}});
  ASSERT_TRUE(is_moving(model.view));
  model = after(std::move(model), {StepLesson{1}});
  EXPECT_FALSE(is_moving(model.view));
  EXPECT_EQ(model.view.fold, 1);
  EXPECT_EQ(next_lesson_step(model), L::FoldUp);
}

// With reduced motion a press folds by one step, and never the other way.
TEST(LessonSteps, FoldInStepsWithReducedMotion) {
  Model model = after(demo_model("shade"), {SetReducedMotion{true}, CountNext{}, CountNext{}, CountNext{}, CountNext{},
                                            CountNext{}, ShowTotal{true}});
  std::vector<double> folds;
  for (int i = 0; i < 8; ++i) {
    model = after(std::move(model), {StepLesson{1}});
    folds.push_back(model.view.fold);
  }
  EXPECT_EQ(folds, (std::vector<double>{0.25, 0.5, 0.75, 1, 0.75, 0.5, 0.25, 0}));
  EXPECT_EQ(next_lesson_step(model), L::NextProblem);
}

TEST(LessonSteps, AreOnlyInExplore) {
  const Model working = after(demo_model("shade"), {SetMode{Mode::Work}});
  EXPECT_EQ(after(working, {StepLesson{1}}).state, working.state);
}

// Congruent faces together, or each by itself: the count goes on.
TEST(LessonSteps, TheCountIsKeptWhenFacesAreCountedAnotherWay) {
  using reasoning::Grouping;
  Model model = after(demo_model("shade"), {CountNext{}, CountNext{}, SetGrouping{Grouping::AlikeTogether}});
  const std::size_t together = model.state.desk().counted.size();
  EXPECT_EQ(together, 5U) << "the other triangles come with the first";
  EXPECT_EQ(after(model, {SetGrouping{Grouping::EachFace}}).state.desk().counted.size(), together);
  const Model twice =
      after(demo_model("shade"), {CountFace{FaceId{1}}, CountFace{FaceId{1}}, SetGrouping{Grouping::AlikeTogether}});
  EXPECT_EQ(twice.state.desk().counted.size(), 4U) << "each face once";
}

}  // namespace
}  // namespace fw::state::test::lesson_steps_test
