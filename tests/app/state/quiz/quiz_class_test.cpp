#include <gmock/gmock.h>

#include <set>

#include "app/state/quiz/quiz_support.hpp"
#include "state/derived.hpp"

// The quiz for a class, on the state alone.
namespace fw::state::test::quiz_class_test {
namespace {

using testing::SizeIs;

constexpr QuizSetup of_class{Audience::Class, QuizSource::Lesson, {}, 1, 1};

ItemShown shown(const Model& model) {
  DerivedMemo memo;
  return *memo.of(model.state).item;
}

std::size_t right_of(const std::vector<practice::Choice>& choices) {
  const auto right =
      std::find_if(choices.begin(), choices.end(), [](const practice::Choice& one) { return one.is_right; });
  return static_cast<std::size_t>(right - choices.begin());
}

TEST(QuizClass, GoesFromTheQuestionToOptionsToTheAnswerToTheNextAndBack) {
  Model model = at_item("shade", of_class);
  const std::size_t number = model.state.quiz.number;
  EXPECT_TRUE(shown(model).choices.empty()) << "the question stands alone";
  model = after(model, {StepQuiz{1}});
  EXPECT_EQ(item(model).stage, ClassStage::Options);
  EXPECT_THAT(shown(model).choices, SizeIs(4));
  EXPECT_FALSE(item(model).done);
  model = after(model, {StepQuiz{1}});
  EXPECT_EQ(item(model).stage, ClassStage::Answer);
  EXPECT_TRUE(item(model).done);
  EXPECT_EQ(after(model, {StepQuiz{1}}).state.quiz.number, number + 1);
  model = after(model, {StepQuiz{-1}});
  EXPECT_EQ(item(model).stage, ClassStage::Options);
  EXPECT_FALSE(item(model).done);
  model = after(model, {StepQuiz{-1}});
  EXPECT_EQ(item(model).stage, ClassStage::Question);
  EXPECT_EQ(after(model, {StepQuiz{-1}}).state.quiz.number, number - 1);
}

TEST(QuizClass, CountsHandsAndSaysWhichIdeaToTakeUp) {
  Model model = after(at_item("shade", of_class), {StepHands{0, 1}});
  EXPECT_TRUE(item(model).hands.empty()) << "no hands before there are options";
  model = after(model, {StepQuiz{1}});
  const std::size_t right = right_of(shown(model).choices);
  const std::size_t wrong = right == 0 ? 1 : 0;
  const std::size_t other = right == 3 ? 2 : 3;
  model = after(model, {SetHands{right, "12"}, SetHands{wrong, "5"}, StepHands{other, 1}, StepHands{other, 1},
                        StepHands{other, -1}, StepHands{other, -1}, StepHands{other, -1}, SetHands{wrong, "x"}});
  EXPECT_EQ(item(model).hands[right], 12);
  EXPECT_EQ(item(model).hands[wrong], 5);
  EXPECT_EQ(item(model).hands[other], 0);
  EXPECT_FALSE(shown(model).take_up.has_value()) << "the answer is not out yet";
  model = after(model, {StepQuiz{1}});
  EXPECT_EQ(shown(model).take_up, wrong);
  EXPECT_EQ(shown(model).faces, shown(model).choices[wrong].faces);
  EXPECT_EQ(after(model, {Undo{}, Undo{}, Undo{}}).state.quiz.items[model.state.quiz.number].hands[wrong], 5);
}

TEST(QuizClass, WithoutHandsNothingIsTakenUp) {
  const Model model = after(at_item("shade", of_class), {StepQuiz{1}, StepQuiz{1}});
  EXPECT_FALSE(shown(model).take_up.has_value());
  EXPECT_TRUE(shown(model).faces.empty());
}

TEST(QuizClass, AnOptionCanBeSpokenOf) {
  Model model = after(at_item("shade", of_class), {StepQuiz{1}, AnswerOption{2}});
  EXPECT_EQ(item(model).hands[2], 1) << "a press is a hand while they are counted";
  model = after(model, {StepQuiz{1}, AnswerOption{1}});
  EXPECT_EQ(item(model).spoken, 1U);
  EXPECT_EQ(shown(model).faces, shown(model).choices[1].faces);
  EXPECT_FALSE(item(after(model, {AnswerOption{1}})).spoken.has_value());
}

TEST(QuizClass, KeepsNoAnswerOfAnyone) {
  const Model model = after(at_item("shade", of_class), {StepQuiz{1}, SetHands{0, "9"}, StepQuiz{1}});
  EXPECT_TRUE(model.state.quiz.attempts.empty());
  EXPECT_TRUE(after(model, {AnswerTyped{"7"}}).state.quiz.attempts.empty());
}

TEST(QuizClass, AMixedSetOfTenIsRunThroughFromTheRemote) {
  Model model = after(at_start(made_up(5, Audience::Class)), {StepQuiz{1}});
  std::size_t presses = 0;
  while (model.state.in_item() && presses < 60) {
    model = after(model, {StepQuiz{1}});
    ++presses;
  }
  EXPECT_EQ(presses, 30U) << "three for each of ten items";
}

TEST(QuizClass, ANetFoldsUpWithTheAnswerAndLiesOpenAgainOneStageBack) {
  QuizSetup setup = of_class;
  setup.source = QuizSource::Nets;
  Model model = after(at_start(setup), {StartQuiz{}, StepQuiz{1}});
  EXPECT_EQ(model.view.fold, 1.0);
  model = after(model, {StepQuiz{1}});
  EXPECT_EQ(model.view.motion, Motion::Closing);
  model = after(model, {Tick{0.3}, StepQuiz{-1}});
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(model.view.motion, Motion::Still);
}

}  // namespace
}  // namespace fw::state::test::quiz_class_test
