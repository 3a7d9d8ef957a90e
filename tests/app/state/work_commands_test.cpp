#include <gmock/gmock.h>

#include <algorithm>

#include "app/state/model_support.hpp"
#include "state/worked.hpp"
#include "support/sanitized.hpp"

// The mode "Work it out" on the state, without a window.
namespace fw::state::test::work_commands_test {
namespace {

using reasoning::Purpose;
using testing::HasSubstr;
using testing::IsEmpty;

Model working(const std::string& problem, const std::vector<Command>& commands = {}) {
  Model model = after(demo_model(problem), {SetMode{Mode::Work}});
  model.history = {};
  return after(std::move(model), commands);
}

const Work& work(const Model& model) { return model.state.desk().work; }

/// The first step from `from` on that can have a gap.
std::size_t step_with_number(const WorkedProblem& worked, std::size_t from = 0) {
  for (std::size_t i = from; i < worked.count; ++i) {
    if (worked.step(i).outcome && worked.step(i).line && worked.step(i).outcome->unit) {
      return i;
    }
  }
  throw std::runtime_error("no step has a number with a unit");
}

std::vector<Command> forward(std::size_t times) { return std::vector<Command>(times, Command(StepWork{1})); }

/// What a student would write for a step's number.
std::string answer_to(const reasoning::Step& step) {
  const exact::Shown shown = exact::shown(step.outcome->amount, 6);
  return shown.text + (step.outcome->unit ? " " + step.outcome->unit->ascii() : "");
}

TEST(WorkSteps, AreShownOneByOneAndHiddenOneByOne) {
  Model model = working("shade");
  EXPECT_EQ(work(model).reached, 0U);
  model = after(std::move(model), forward(3));
  EXPECT_EQ(work(model).reached, 3U);
  EXPECT_EQ(work(model).present, 2U);
  model = after(std::move(model), {StepWork{-1}});
  EXPECT_EQ(work(model).reached, 2U);
  EXPECT_EQ(work(model).present, 1U);
  model = after(std::move(model), {StepWork{-1}, StepWork{-1}, StepWork{-1}});
  EXPECT_EQ(work(model).reached, 0U) << "before the first step there is nothing to hide";
}

TEST(WorkSteps, LayAFaceBackThatWasLiftedOutBeforeThem) {
  const Model model = after(demo_model("shade"), {CountFace{FaceId::at(1)}, SetMode{Mode::Work}});
  EXPECT_FALSE(model.state.desk().picked.has_value());
  EXPECT_EQ(model.state.desk().counted.size(), 1U) << "what is counted stays";
}

TEST(WorkSteps, EndWithTheLastOneAndGoOnToTheNextProblemAndBack) {
  const Model begun = working("shade");
  const std::size_t count = worked_for(begun.state).count;
  ASSERT_GT(count, 4U);
  const Model ended = after(begun, forward(count));
  EXPECT_EQ(work(ended).reached, count);
  EXPECT_EQ(work(ended).present, count - 1);
  const Model next = after(ended, forward(1));
  EXPECT_EQ(next.state.problem, begun.state.problem + 1);
  EXPECT_EQ(work(next).reached, 0U);
  const Model back = after(next, {StepWork{-1}});
  EXPECT_EQ(back.state.problem, begun.state.problem);
  EXPECT_EQ(work(back), work(ended)) << "back to where it was left";
}

// One button through a whole lesson, however it is worked, and the same way back to its beginning.
TEST(WorkSteps, GoThroughTheWholeLessonAndBack) {
  const std::vector<Detail> details{Detail::Board, Detail::EveryStep};
  for (std::size_t i = 0; i < fw::test::cases(details.size(), 1); ++i) {
    Model model = after(demo_model(), {SetMode{Mode::Work}, SetDetail{details[i]}, OpenProblem{0}});
    const std::size_t last = model.state.lesson->problems.size() - 1;
    std::size_t pressed = 0;
    for (; pressed < 2000 && next_work(model.state, worked_for(model.state), 1); ++pressed) {
      model = after(std::move(model), {StepWork{1}});
    }
    EXPECT_EQ(model.state.problem, last);
    for (pressed = 0; pressed < 2000; ++pressed) {
      Model before = after(model, {StepWork{-1}});
      if (before.state == model.state) {
        break;
      }
      model = std::move(before);
    }
    EXPECT_EQ(model.state.problem, 0U);
    EXPECT_EQ(work(model).reached, 0U);
  }
}

TEST(WorkSteps, AnEarlierOneIsSpokenOfWithoutHidingTheLaterOnes) {
  Model model = working("shade", {LastStep{}});
  const std::size_t count = work(model).reached;
  model = after(std::move(model), {SelectStep{0}});
  EXPECT_EQ(work(model).present, 0U);
  EXPECT_EQ(work(model).reached, count);
  model = after(std::move(model), {StepWork{-1}});
  EXPECT_EQ(work(model).reached, count) << "back at the first of many shown steps hides none";
  model = after(std::move(model), {StepWork{1}, StepWork{1}, StepWork{-1}});
  EXPECT_EQ(work(model).present, 1U);
  model = after(std::move(model), {SelectStep{count}});
  EXPECT_EQ(work(model).present, 1U) << "there is no such step";
}

// Each solid of the shelf after the one before it: some have fewer steps than were shown.
TEST(WorkSteps, OfAnotherSolidAreSpokenOfWithinTheirNumber) {
  const std::vector<solids::Description> shelf = solids::shelf();
  for (std::size_t i = 0; i < shelf.size(); ++i) {
    const solids::Description& next = shelf[(i + 1) % shelf.size()];
    const Model model =
        after(demo_model("shade"), {PutOnBench{shelf[i]}, LastStep{}, PutOnBench{next}, ShowSteps{true}});
    const Work& work = model.state.desk().work;
    EXPECT_LT(work.present, std::max<std::size_t>(work.reached, 1)) << shelf[i].kind << ", then " << next.kind;
  }
}

TEST(WorkSteps, AllAreShownAndHiddenAtOnce) {
  Model model = working("crate", {ShowSteps{true}});
  EXPECT_EQ(work(model).reached, worked_for(model.state).count);
  model = after(std::move(model), {ShowSteps{false}});
  EXPECT_EQ(work(model).reached, 0U);
}

TEST(WorkSteps, UndoTakesThemBackOneByOne) {
  Model model = working("shade", forward(2));
  EXPECT_EQ(model.history.undo_text(), "show step 2");
  model = after(std::move(model), {Undo{}});
  EXPECT_EQ(work(model).reached, 1U);
  model = after(std::move(model), {Undo{}, Redo{}, Redo{}});
  EXPECT_EQ(work(model).reached, 2U);
}

TEST(WorkSteps, EveryDemoProblemHasSomeOrSaysWhyNot) {
  const Model demo = demo_model();
  for (const lessons::Problem& problem : demo.state.lesson->problems) {
    const WorkedProblem worked = worked_for(working(problem.id).state);
    EXPECT_TRUE(worked.count > 0 || !worked.missing.empty()) << problem.id;
    EXPECT_THAT(said(worked.missing), IsEmpty()) << problem.id;
  }
}

TEST(WorkSteps, NoneSpeaksOfAFaceOrALengthThatTheSolidDoesNotHave) {
  const Model demo = demo_model();
  for (const lessons::Problem& problem : demo.state.lesson->problems) {
    Model model = working(problem.id, {LastStep{}});
    const WorkedProblem worked = worked_for(model.state);
    for (std::size_t i = 0; i < worked.count; ++i) {
      model = after(std::move(model), {SelectStep{i}});
      const Lit told = lit(model, worked);
      for (const FaceId face : told.faces) {
        EXPECT_LT(face.index(), worked.solid->faces().size()) << problem.id;
      }
      for (const solids::MarkId mark : told.marks) {
        EXPECT_LT(mark.index(), worked.solid->marks().size()) << problem.id;
      }
    }
  }
}

TEST(Gap, TakesTheRightNumberWithItsUnitAndNothingElse) {
  Model model = working("shade");
  const WorkedProblem worked = worked_for(model.state);
  const std::size_t step = step_with_number(worked);
  model = after(std::move(model), forward(step + 1));
  model = after(std::move(model), {SetFade{Fade::ThisStep}});
  EXPECT_TRUE(is_blank(work(model), worked, step));
  EXPECT_THAT(algebra::plain_text(*shown_step(work(model), worked, step).line), HasSubstr("____"));

  model = after(std::move(model), {FillBlank{step, "1 cm^2"}});
  ASSERT_NE(filled(work(model), step), nullptr);
  EXPECT_FALSE(filled(work(model), step)->is_right);
  EXPECT_TRUE(is_blank(work(model), worked, step));

  const std::string number = exact::shown(worked.step(step).outcome->amount, 6).text;
  model = after(std::move(model), {FillBlank{step, number}});
  EXPECT_TRUE(is_blank(work(model), worked, step)) << "a number without its unit is not enough";
  EXPECT_THAT(said(filled(work(model), step)->message), HasSubstr("unit"));

  model = after(std::move(model), {FillBlank{step, answer_to(worked.step(step))}});
  EXPECT_TRUE(filled(work(model), step)->is_right);
  EXPECT_FALSE(is_blank(work(model), worked, step));
  EXPECT_EQ(shown_step(work(model), worked, step).line, worked.step(step).line);

  model = after(std::move(model), {Undo{}});
  EXPECT_TRUE(is_blank(work(model), worked, step));
}

TEST(Gap, IsShownByTheRemoteBeforeTheNextStepComes) {
  Model model = working("shade", {SetFade{Fade::All}});
  const WorkedProblem worked = worked_for(model.state);
  const std::size_t step = step_with_number(worked);
  while (work(model).reached <= step) {
    model = after(std::move(model), {StepWork{1}});
  }
  const std::size_t reached = work(model).reached;
  ASSERT_TRUE(is_blank(work(model), worked, step));
  model = after(std::move(model), {StepWork{1}});
  EXPECT_FALSE(is_blank(work(model), worked, step));
  EXPECT_EQ(work(model).reached, reached);
  model = after(std::move(model), {StepWork{1}});
  EXPECT_EQ(work(model).reached, reached + 1);
}

TEST(Gap, OfAnEarlierStepIsKeptShutInLaterLines) {
  Model model = working("shade", {SetFade{Fade::All}, ShowSteps{true}});
  const WorkedProblem worked = worked_for(model.state);
  for (std::size_t i = 0; i < worked.count; ++i) {
    if (!worked.step(i).line) {
      continue;
    }
    const algebra::NotationLine line = *shown_step(work(model), worked, i).line;
    for (const std::size_t row : sources_in(line)) {
      const reasoning::Source& source = worked.part_of(i).sources[row];
      EXPECT_FALSE(source.step && is_blank(work(model), worked, *source.step)) << algebra::plain_text(line);
    }
  }
}

TEST(Gap, InOneStepStaysThereWhenTheNextOneComes) {
  Model model = working("shade");
  const WorkedProblem worked = worked_for(model.state);
  const std::size_t step = step_with_number(worked);
  model = after(std::move(model), forward(step + 1));
  model = after(std::move(model), {SetFade{Fade::ThisStep}, ShowSteps{true}});
  for (std::size_t i = 0; i < worked.count; ++i) {
    EXPECT_EQ(is_blank(work(model), worked, i), i == step);
  }
}

TEST(Gap, CanStandInAnyStepOfAnyDemoProblem) {
  const Model demo = demo_model();
  for (const lessons::Problem& problem : demo.state.lesson->problems) {
    Model model = working(problem.id, {ShowSteps{true}});
    const WorkedProblem worked = worked_for(model.state);
    for (std::size_t i = 0; i < worked.count; ++i) {
      model = after(std::move(model), {SelectStep{i}, SetFade{Fade::ThisStep}});
      ASSERT_TRUE(is_blank(work(model), worked, i)) << problem.id << i;
      const ShownStep shown = shown_step(work(model), worked, i);
      const bool hides = shown.reason != worked.step(i).reason || shown.line != worked.step(i).line;
      EXPECT_TRUE(hides) << problem.id << ": " << said(worked.step(i).reason);
      model = after(std::move(model), {StepWork{1}});
      EXPECT_FALSE(is_blank(work(model), worked, i)) << "the remote shows it";
    }
  }
}

TEST(Gap, OfASumTakesTheWholeSide) {
  Model model = working("shade", {ShowSteps{true}});
  const WorkedProblem worked = worked_for(model.state);
  std::size_t step = 0;
  while (!worked.step(step).line || algebra::plain_text(*worked.step(step).line) != "S = B + L") {
    ++step;
  }
  model = after(std::move(model), {SelectStep{step}, SetFade{Fade::ThisStep}, FillBlank{step, "L - B"}});
  EXPECT_TRUE(is_blank(work(model), worked, step));
  model = after(std::move(model), {FillBlank{step, "L+B"}});
  EXPECT_TRUE(filled(work(model), step)->is_right);
}

TEST(Gap, OfAnEarlierStepIsKeptOutOfLaterReasons) {
  Model model = working("shade", {SetFade{Fade::All}, ShowSteps{true}});
  const WorkedProblem worked = worked_for(model.state);
  std::size_t answer = worked.count - 1;
  while (said(worked.step(answer).reason).find("360") == std::string::npos) {
    --answer;
  }
  EXPECT_THAT(said(shown_step(work(model), worked, answer).reason), testing::Not(HasSubstr("360")));
}

TEST(Route, BothGiveTheSameAndAreCompared) {
  Model model = working("shade", {SetRoute{RouteChoice::Both}, LastStep{}});
  const WorkedProblem worked = worked_for(model.state);
  ASSERT_EQ(worked.parts.size(), 2U);
  EXPECT_EQ(worked.parts[1].first, worked.parts[0].steps.size());
  EXPECT_THAT(said(worked.comparison), HasSubstr("360 cm²")) << "10 · 10 + 4 · 10 · 13 ÷ 2, worked by hand";
  model = after(std::move(model), {SetRoute{RouteChoice::Faces}});
  EXPECT_EQ(work(model).reached, 0U) << "another way begins anew";
  EXPECT_EQ(worked_for(model.state).parts.size(), 1U);
}

TEST(AskFor, MakesAnotherMeasureTheUnknown) {
  Model model = working("shade", {StepWork{1}, AskFor{"volume", std::nullopt}});
  EXPECT_EQ(work(model).reached, 0U);
  WorkedProblem worked = worked_for(model.state);
  EXPECT_EQ(worked.asked, "volume");
  // A height of 12 from 13 and half of 10; 10 · 10 · 12 ÷ 3 = 400, worked by hand.
  EXPECT_EQ(worked.parts.front().steps.back().kind == reasoning::StepKind::Check ||
                worked.parts.front().steps.back().kind == reasoning::StepKind::Answer,
            true);
  bool found = false;
  for (std::size_t i = 0; i < worked.count; ++i) {
    found = found || (worked.step(i).outcome && worked.step(i).outcome->amount == exact::Number::whole(400));
  }
  EXPECT_TRUE(found);
  model = after(std::move(model), {Undo{}});
  EXPECT_EQ(worked_for(model.state).asked, "surface_area");
}

TEST(AskFor, SaysWhatIsMissingAndOffersWhatCouldBeGiven) {
  Model model = working("shade", {AskFor{"slant_height", std::nullopt}});
  WorkedProblem worked = worked_for(model.state);
  EXPECT_THAT(said(worked.missing), testing::Not(IsEmpty()));
  EXPECT_EQ(worked.count, 0U);
  ASSERT_THAT(worked.offered, testing::Not(IsEmpty()));
  const auto area = std::find_if(worked.offered.begin(), worked.offered.end(),
                                 [](const reasoning::Askable& one) { return one.name == "surface_area"; });
  ASSERT_NE(area, worked.offered.end());
  model = after(std::move(model), {AskFor{"slant_height", "surface_area"}, LastStep{}});
  worked = worked_for(model.state);
  EXPECT_THAT(said(worked.missing), IsEmpty());
  bool found = false;
  for (std::size_t i = 0; i < worked.count; ++i) {
    found = found || (worked.step(i).outcome && worked.step(i).outcome->amount == exact::Number::whole(13));
  }
  EXPECT_TRUE(found) << "the slant height that the lesson gave";
  model = after(std::move(model), {AskFor{"", std::nullopt}});
  EXPECT_EQ(worked_for(model.state).asked, "surface_area");
}

TEST(AskFor, StepsOfOneProblemAreKeptWhileAnotherIsOpen) {
  Model model = working("shade", forward(3));
  const std::size_t shade = model.state.problem;
  model = after(std::move(model), {OpenProblem{0}});
  EXPECT_EQ(work(model).reached, 0U);
  model = after(std::move(model), {OpenProblem{shade}});
  EXPECT_EQ(work(model).reached, 3U);
}

TEST(Decision, ComesBeforeAnyStep) {
  Model model = working("tent");
  ASSERT_TRUE(worked_for(model.state).supply);
  model = after(std::move(model), {Decide{Purpose::Fill}});
  EXPECT_FALSE(work(model).decided);
  EXPECT_EQ(work(model).decision, Purpose::Fill);
  model = after(std::move(model), {Decide{Purpose::Cover}});
  EXPECT_TRUE(work(model).decided);
  EXPECT_EQ(work(model).reached, 0U);
  model = after(std::move(model), {StepWork{1}});
  EXPECT_EQ(work(model).reached, 1U);
  model = after(std::move(model), {Undo{}, Undo{}});
  EXPECT_FALSE(work(model).decided);
}

TEST(Decision, IsShownByTheRemote) {
  Model model = working("tent", {StepWork{1}});
  EXPECT_TRUE(work(model).decided);
  EXPECT_EQ(work(model).decision, std::nullopt);
  EXPECT_EQ(work(model).reached, 0U);
}

TEST(WordProblem, EndsWithItsCount) {
  // Two triangles 8 by 3 and rectangles 7 by 8, 5 and 5: 24 + 126 = 150; 150 ÷ 45 is more than 3: worked by hand.
  const Model model = working("tent", {ShowSteps{true}});
  const WorkedProblem worked = worked_for(model.state);
  ASSERT_GE(worked.parts.size(), 2U);
  const std::vector<reasoning::Step>& count = worked.parts.back().steps;
  EXPECT_TRUE(std::any_of(count.begin(), count.end(), [](const reasoning::Step& step) {
    return step.kind == reasoning::StepKind::Count && step.outcome && step.outcome->amount == exact::Number::whole(4);
  }));
}

TEST(WordProblem, FacesThatDoNotCountAreSwitchedOff) {
  const Model model = working("counter", {ShowSteps{true}});
  const WorkedProblem worked = worked_for(model.state);
  ASSERT_EQ(worked.open.size(), 1U);
  EXPECT_EQ(lit(model, worked).open, worked.open);
  // 12 by 5 and 5 by 6 twice over, and four high round 46, less the bottom 90: 90 + 184 = 274, worked by hand.
  bool found = false;
  for (std::size_t i = 0; i < worked.count; ++i) {
    found = found || (worked.step(i).outcome && worked.step(i).outcome->amount == exact::Number::whole(274));
  }
  EXPECT_TRUE(found);
}

TEST(Counting, PassesOverFacesThatDoNotCount) {
  Model model = demo_model("cookie-tin");
  const std::vector<FaceId> open = open_on_desk(model.state);
  ASSERT_EQ(open.size(), 1U);
  model = after(std::move(model), std::vector<Command>(8, Command(CountNext{})));
  const std::vector<FaceId>& counted = model.state.desk().counted;
  EXPECT_EQ(counted.size(), 5U);
  EXPECT_EQ(std::count(counted.begin(), counted.end(), open.front()), 0);
}

TEST(Origin, EveryNumberOfALineSaysWhereItComesFrom) {
  Model model = working("shade", {LastStep{}});
  const WorkedProblem worked = worked_for(model.state);
  std::size_t asked = 0;
  for (std::size_t i = 0; i < worked.count; ++i) {
    model = after(std::move(model), {SelectStep{i}});
    const std::size_t count = worked.step(i).line ? sources_in(*worked.step(i).line).size() : 0;
    for (std::size_t k = 0; k < count; ++k) {
      model = after(std::move(model), {StepNumber{1}});
      ASSERT_EQ(model.view.pointed, (NumberPlace{i, k}));
      const reasoning::Source* source = pointed_source(model, worked);
      ASSERT_NE(source, nullptr);
      EXPECT_THAT(said(source->sentence), testing::Not(IsEmpty()));
      ++asked;
    }
    model = after(std::move(model), {StepNumber{1}});
    EXPECT_EQ(model.view.pointed, std::nullopt) << "past the last number there is none";
  }
  EXPECT_GT(asked, 5U);
}

TEST(Origin, IsForgottenWhenTheStepsGoOn) {
  Model model = working("shade", {LastStep{}});
  while (!model.view.pointed) {
    model = after(std::move(model), {StepWork{-1}, StepNumber{1}});
  }
  const State before = model.state;
  model = after(std::move(model), {StepNumber{-1}});
  EXPECT_EQ(model.state, before) << "to ask is not to change";
  model = after(std::move(model), {StepNumber{1}, StepWork{1}});
  EXPECT_EQ(model.view.pointed, std::nullopt);
}

TEST(WorkMode, KeepsTheFoldAndTheEyeThatExploreHad) {
  Model model = after(demo_model("shade"), {SetFold{0.5}, Orbit{0.3, 0.1}, SetMode{Mode::Work}});
  EXPECT_EQ(model.view.fold, 0.5);
  EXPECT_EQ(model.view.turn, 0.3);
  model = after(std::move(model), {SetMode{Mode::Quiz}, SetMode{Mode::Work}});
  EXPECT_EQ(model.view.fold, 0.0) << "another thing stood there";
}

}  // namespace
}  // namespace fw::state::test::work_commands_test
