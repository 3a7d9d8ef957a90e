#include <gmock/gmock.h>

#include <set>

#include "app/state/quiz/forms_support.hpp"
#include "bench/bench_picture.hpp"
#include "state/derived.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"
#include "tasks/quiz/cutouts.hpp"

// Questions that are answered by choosing, and questions about nets, on the state alone.
namespace fw::bench::test::forms_test {

using namespace state;
using namespace state::test;

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

constexpr QuizSetup of_class{Audience::Class, QuizSource::Lesson, {}, 1, 1};

Derived derived(const Model& model) {
  DerivedMemo memo;
  return memo.of(model.state);
}

std::size_t option_of(const std::vector<practice::Choice>& choices, bool right) {
  const auto found =
      std::find_if(choices.begin(), choices.end(), [&](const practice::Choice& one) { return one.is_right == right; });
  return static_cast<std::size_t>(found - choices.begin());
}

practice::Attempt last_attempt(const Model& model) {
  return model.state.quiz.attempts.empty() ? practice::Attempt{} : model.state.quiz.attempts.back();
}

TEST(Forms, AChoiceIsJudgedWithItsMistakeAndASecondTry) {
  for (const char* id : {"tower-label", "tent-label", "lost-base", "quick-look", "frost", "dry-spot", "wire-frame"}) {
    const Model start = at_market(id);
    const std::vector<practice::Choice> choices = derived(start).item->choices;
    ASSERT_GE(choices.size(), 2U) << id;
    const std::size_t right = option_of(choices, true);
    const std::size_t wrong = option_of(choices, false);
    const Model missed = after(start, {AnswerOption{wrong}});
    EXPECT_FALSE(item(missed).done) << id << ": a second try";
    EXPECT_EQ(said(item(missed).replies.back().message), said(choices[wrong].message)) << id;
    EXPECT_EQ(last_attempt(missed).cause, choices[wrong].cause) << id;
    EXPECT_EQ(last_attempt(missed).skill, missed.state.quiz.item().skill) << id;
    const Model mended = after(missed, {AnswerOption{wrong}, AnswerOption{right}});
    EXPECT_TRUE(item(mended).done || item(mended).asks_value) << id;
    EXPECT_THAT(item(mended).replies, SizeIs(2)) << id << ": the same option twice is one answer";
    EXPECT_THAT(mended.state.quiz.attempts, SizeIs(1)) << id << ": a problem counts once";
  }
}

TEST(Forms, WhereOnlyTheRightOptionIsLeftTheSolutionComes) {
  const Model start = at_market("quick-look");
  ASSERT_THAT(derived(start).item->choices, SizeIs(3));
  Model model = start;
  for (std::size_t i = 0; i < derived(start).item->choices.size(); ++i) {
    model = derived(start).item->choices[i].is_right ? model : after(model, {AnswerOption{i}});
  }
  EXPECT_TRUE(item(model).done);
  EXPECT_TRUE(item(model).solution_shown);
  ASSERT_TRUE(derived(model).worked.has_value());
  EXPECT_GT(derived(model).worked->count, 0U);
}

// 20 × 14 × 9 in, boxes of 6 × 4 × 4 in: 5 · 2 · 2 the long side along the width, counted by hand. Kettle: 25 · 18 · 16
// cm³ = 7200 cm³. Stage: 2(90·50 + 90·40 + 50·40) cm² = 20200 cm². Ice: 100 + 4 · 10 · 13 ÷ 2 = 360 cm², and 2250 ÷ 360
// = 2.5².
TEST(Forms, NumbersOfTasksAreJudgedWithTheirUnits) {
  const struct {
    const char *id, *right, *wrong_unit;
  } rows[] = {{"candle-crate", "20", ""},
              {"candle-crate", "20 boxes of candles", ""},
              {"ice-copy", "2.5", ""},
              {"ice-copy", "2.5 times", ""},
              {"tea-kettle", "7.2 L", "7200 cm^3"},
              {"stage-cloth", "2.02 m^2", "20200 cm^2"}};
  for (const auto& row : rows) {
    const Model start = at_market(row.id);
    const Model right = after(start, {AnswerTyped{row.right}});
    EXPECT_TRUE(item(right).done) << row.right << ": " << said(item(right).replies.back().message);
    if (*row.wrong_unit != '\0') {
      const Model other = after(start, {AnswerTyped{row.wrong_unit}});
      EXPECT_EQ(item(other).replies.back().verdict, practice::AnswerVerdict::RightNumber) << row.id;
    }
  }
}

TEST(Forms, ANetThatIsNoneAsksForTheReasonThenFoldsUp) {
  Model model = at_net("gift-box");
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(after(model, {SetFold{0}, StepFold{-1}, PlayFold{Motion::Closing}}).view.fold, 1.0) << "decide first";
  model = after(model, {AnswerOption{1}});
  EXPECT_TRUE(item(model).asks_why);
  EXPECT_FALSE(item(model).done);
  EXPECT_THAT(item(model).replies, IsEmpty()) << "nothing is told before the reason is given";
  const std::vector<practice::Choice> reasons = derived(model).item->reasons;
  ASSERT_THAT(reasons, SizeIs(4));
  model = after(model, {AnswerOption{option_of(reasons, false)}});
  EXPECT_FALSE(item(model).done);
  model = after(model, {AnswerOption{option_of(reasons, true)}});
  EXPECT_TRUE(item(model).done);
  EXPECT_EQ(model.view.motion, Motion::Closing);
  const tasks::CutoutBench bench = *derived(model).cutouts;
  EXPECT_THAT(bench.bad, SizeIs(2)) << "the pieces that meet";
  EXPECT_FALSE(bench.lying.front().test.is_net());
}

TEST(Forms, AWrongYesTellsWhyAndComesBackForASecondTry) {
  const Model model = after(at_net("low-spire"), {AnswerOption{0}});
  EXPECT_FALSE(item(model).done);
  EXPECT_EQ(last_attempt(model).cause, "N7");
  EXPECT_THAT(said(item(model).replies.back().message), HasSubstr("too short"));
  EXPECT_TRUE(item(after(model, {AnswerOption{1}})).asks_why);
}

TEST(Forms, ANetThatIsOneOffersNoReasons) {
  const Model missed = after(at_net("display-stand"), {AnswerOption{1}});
  EXPECT_FALSE(item(missed).asks_why);
  EXPECT_EQ(last_attempt(missed).right, false);
  const Model model = after(missed, {AnswerOption{0}});
  EXPECT_TRUE(item(model).done);
  EXPECT_THAT(derived(model).cutouts->bad, IsEmpty());
}

TEST(Forms, OfSeveralCutOutsTheRightOneFoldsAndEachCanBeFoldedAfterwards) {
  Model model = at_net("lantern-top");
  EXPECT_THAT(derived(model).cutouts->lying, SizeIs(4));
  const std::size_t right = option_of(derived(model).item->choices, true);
  const std::size_t wrong = option_of(derived(model).item->choices, false);
  model = after(model, {AnswerOption{right}});
  ASSERT_TRUE(item(model).done);
  ASSERT_THAT(derived(model).cutouts->lying, SizeIs(1));
  EXPECT_TRUE(derived(model).cutouts->lying.front().test.is_net());
  for (int i = 0; i < 100; ++i) {
    model = after(model, {Tick{0.05}});
  }
  EXPECT_EQ(model.view.fold, 0.0);
  model = after(model, {AnswerOption{wrong}});
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(model.view.motion, Motion::Closing);
  EXPECT_FALSE(derived(model).cutouts->lying.front().test.is_net());
  EXPECT_THAT(model.state.quiz.attempts, SizeIs(1)) << "looking is no answer";
}

TEST(Forms, EveryPlaceOfAMissingPieceIsAskedFor) {
  Model model = at_net("planter");
  const std::vector<practice::Choice> choices = derived(model).item->choices;
  EXPECT_THAT(derived(model).cutouts->places, SizeIs(6));
  ASSERT_TRUE(derived(model).cutouts->missing.has_value());
  std::size_t right = 0;
  for (std::size_t i = 0; i < choices.size(); ++i) {
    EXPECT_FALSE(item(model).done);
    if (choices[i].is_right) {
      model = after(model, {AnswerOption{i}});
      EXPECT_EQ(derived(model).cutouts->places.empty() || derived(model).cutouts->places[i].is_right == true, true);
      ++right;
    }
    if (item(model).done) {
      break;
    }
  }
  EXPECT_GT(right, 1U);
  EXPECT_TRUE(item(model).done);
  EXPECT_TRUE(last_attempt(model).right);
  EXPECT_EQ(derived(model).cutouts->lying.front().cutout.pieces().size(), model.state.current().solid.faces().size());
}

TEST(Forms, ASolidIsNamedFromItsCutOutByTypingAndByChoosing) {
  const Model start = at_net("folded-card");
  EXPECT_THAT(derived(start).item->hints, IsEmpty());
  ASSERT_GT(derived(start).item->hints_left, 0U);
  const Model hinted = after(start, std::vector<Command>(derived(start).item->hints_left, ShowHint{}));
  const ItemShown told = *derived(hinted).item;
  EXPECT_EQ(told.hints_left, 0U);
  for (const practice::Hint& hint : told.hints) {
    EXPECT_THAT(said(hint.text), testing::Not(HasSubstr(start.state.current().solid.name()))) << "a hint names it";
  }
  EXPECT_FALSE(derived(start).cutouts->shows_solid);
  EXPECT_TRUE(item(after(start, {AnswerTyped{"triangular prism"}})).done);
  const ItemShown shown = *derived(start).item;
  const Model chosen = after(start, {SetAnswerStyle{AnswerStyle::Options}, AnswerOption{shown.right_name}});
  EXPECT_TRUE(item(chosen).done);
  EXPECT_EQ(chosen.view.motion, Motion::Closing);
}

TEST(Forms, ANetIsWorkedWhateverStandsOnTheBench) {
  for (const solids::Description& description : solids::shelf()) {
    const Model model = after(at_net("folded-card"), {PutOnBench{description}});
    EXPECT_FALSE(worked_for(model.state).parts.empty());
  }
}

TEST(Forms, ReducedMotionShowsTheFoldedCardAtOnceAndStepsIt) {
  const Model model = after(at_net("display-stand"), {SetReducedMotion{true}, AnswerOption{0}});
  EXPECT_EQ(model.view.fold, 0.0);
  EXPECT_EQ(model.view.motion, Motion::Still);
  EXPECT_EQ(after(model, {StepFold{1}}).view.fold, 0.25);
}

TEST(Forms, AClassSeesTheSameOptionsWithHands) {
  for (const char* id : {"lantern-top", "gift-box", "planter"}) {
    Model model = after(at_net(id, of_class), {StepQuiz{1}});
    const std::size_t count = tasks::net_choices(model.state.current()).size();
    EXPECT_EQ(item(model).hands.size(), count) << id;
    EXPECT_EQ(model.view.fold, 1.0) << id;
    model = after(model, {SetHands{0, "7"}, StepQuiz{1}});
    EXPECT_TRUE(item(model).done) << id;
    EXPECT_EQ(model.view.motion, Motion::Closing) << id;
    model = after(model, {StepQuiz{-1}});
    EXPECT_EQ(model.view.fold, 1.0) << id;
  }
  EXPECT_THAT(derived(after(at_market("frost", of_class), {StepQuiz{1}})).item->choices, SizeIs(4));
}

TEST(Forms, AClaimedLabelStandsOnTheBenchAndTheTrueLengthDoesNot) {
  // 9² + 12² = 15², so that 16 cm cannot be. Source: the rule of Pythagoras, by hand.
  const Model start = at_market("tower-label");
  const auto labels = [](const Model& model) {
    std::string text;
    const MeasureText measure = [](const std::string&) { return figures::Vec2{40, 20}; };
    const Theme theme = Theme::make(ThemeName::Paper, 720);
    for (const BenchLabel& label : bench_picture(model, derived(model), theme, {0, 0, 600, 500}, measure).labels) {
      text += label.text + "|";
    }
    return text;
  };
  EXPECT_THAT(labels(start), HasSubstr("16 cm?"));
  EXPECT_THAT(labels(start), testing::Not(HasSubstr("15 cm")));
}

TEST(Forms, NetQuestionsAreWorkedOutInSentencesWithTheCardOnTheBench) {
  Model model = after(lesson_model("lantern_nets.json"), {OpenProblem{6}, SetMode{Mode::Work}});
  EXPECT_TRUE(shows_cutouts(model.state));
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(derived(model).worked->count, tasks::net_steps(model.state.current()).size());
  EXPECT_THAT(derived(model).cutouts->places, SizeIs(6));
  model = after(model, {StepWork{1}, StepWork{1}});
  EXPECT_THAT(derived(model).cutouts->lying.front().letter, "B");
  model = after(model, {AskFor{"volume", std::nullopt}});
  EXPECT_FALSE(shows_cutouts(model.state)) << "another thing is asked: the solid stands there";
  EXPECT_EQ(model.view.fold, 0.0);
}

TEST(Forms, TheExplorerShowsTheCardsThatAreAskedAboutUntilSomebodyLooksIntoTheSolid) {
  const Model model = lesson_model("lantern_nets.json");
  const std::size_t count = model.state.lesson->problems.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Model open = after(model, {OpenProblem{(i + 1) % count}, OpenProblem{i}});
    EXPECT_EQ(open.view.fold, 1.0) << i;
    if (tasks::net_asked(open.state.current()) == nullptr) {
      continue;
    }
    EXPECT_TRUE(shows_cutouts(open.state)) << i;
    const Model counted = after(open, {CountFace{FaceId{0}}});
    EXPECT_FALSE(shows_cutouts(counted.state)) << i;
    EXPECT_TRUE(shows_cutouts(after(counted, {Undo{}}).state)) << i;
  }
}

}  // namespace
}  // namespace fw::bench::test::forms_test
