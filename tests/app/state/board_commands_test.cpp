#include <gmock/gmock.h>

#include "app/state/model_support.hpp"
#include "app/state/quiz/quiz_support.hpp"
#include "state/derived.hpp"
#include "state/worked.hpp"

// The lines of the board in the mode "Work it out", on the state without a window.
namespace fw::state::test::board_commands_test {
namespace {

Model on_board(const std::string& problem, const std::vector<Command>& commands = {}) {
  return after(after(demo_model(problem), {SetMode{Mode::Work}, SetDetail{Detail::Board}}), commands);
}
Progressed at(const Model& model) { return progressed(model, worked_for(model.state)); }
const Work& work(const Model& model) { return model.state.desk().work; }

// Forward shows a line at a time up to the last, which is all steps; back hides them again.
TEST(BoardLines, AreShownOneByOneAndHiddenOneByOne) {
  Model model = on_board("shade");
  const std::size_t count = worked_for(model.state).board.lines.size();
  EXPECT_LE(count, 8U);
  for (std::size_t shown = 1; shown <= count; ++shown) {
    model = after(std::move(model), {StepWork{1}});
    EXPECT_EQ(at(model).shown, shown);
    EXPECT_EQ(at(model).present, shown - 1);
  }
  EXPECT_EQ(work(model).reached, worked_for(model.state).count) << "all lines are all steps";
  const Model next = after(model, {StepWork{1}});
  EXPECT_EQ(next.state.problem, model.state.problem + 1) << "after the last line comes the next problem";
  EXPECT_EQ(work(next).reached, 0U);
  for (std::size_t shown = count; shown-- > 0;) {
    model = after(std::move(model), {StepWork{-1}});
    EXPECT_EQ(at(model).shown, shown);
  }
  EXPECT_EQ(work(model).reached, 0U);
}

TEST(BoardLines, OpenIntoTheirStepsAndClose) {
  Model model = on_board("shade", {StepWork{1}, StepWork{1}, OpenLine{1}});
  EXPECT_EQ(work(model).opened, std::vector<std::size_t>{1});
  EXPECT_EQ(at(model).present, 1U);
  model = after(std::move(model), {OpenLine{1}});
  EXPECT_TRUE(work(model).opened.empty());
  EXPECT_EQ(after(model, {OpenLine{5}}).state, model.state) << "a line that is not shown";
  EXPECT_EQ(
      after(after(demo_model("shade"), {SetMode{Mode::Work}, StepWork{1}}), {OpenLine{0}}).state.desk().work.opened,
      std::vector<std::size_t>{})
      << "every step is shown, and no line";
}

// A class that is presented to sees the board; the teacher may choose otherwise, and gaps are in steps.
TEST(BoardLines, AreTheUsualFormWhilePresenting) {
  const Model working = after(demo_model("shade"), {SetMode{Mode::Work}});
  const auto shows = [](const Model& model) { return shows_board(model, worked_for(model.state)); };
  EXPECT_FALSE(shows(working));
  const Model presented = after(working, {SetPresenting{true}});
  EXPECT_TRUE(shows(presented));
  EXPECT_FALSE(shows(after(presented, {SetDetail{Detail::EveryStep}})));
  EXPECT_FALSE(shows(after(presented, {SetFade{Fade::All}})));
}

// In the quiz a class sees the board; a student sees every step, with the one to compare marked.
TEST(BoardLines, AreWhatAClassSeesInTheQuiz) {
  const auto shows = [](const Model& model) { return shows_board(model, worked_for(model.state)); };
  QuizSetup setup;
  setup.audience = Audience::Class;
  const Model of_class = after(at_item("shade", setup), {StepQuiz{1}, StepQuiz{1}, RevealAnswer{}});
  EXPECT_TRUE(shows(of_class));
  EXPECT_EQ(at(of_class).shown, at(of_class).count) << "the whole solution stands there";
  EXPECT_EQ(work(after(of_class, {OpenLine{1}})).opened, std::vector<std::size_t>{1});
  const Model alone = after(at_item("shade"), {RevealAnswer{}});
  EXPECT_FALSE(shows(alone));
  Model compares = after(at_item("shade"), {SetPresenting{true}, AnswerTyped{"1 cm"}, AnswerTyped{"2 cm"},
                                            AnswerTyped{"3 cm"}, RevealAnswer{}});
  ASSERT_TRUE(item(compares).failing.has_value());
  EXPECT_FALSE(shows(compares));
}

// Hints are written as the class writes.
TEST(BoardLines, GiveHintsTheirNotation) {
  const auto formula = [](const Model& model) {
    const auto hints = hints_for(model.state.quiz.item(), class_notation(model.state));
    return algebra::plain_text(*hints.at(2).line);
  };
  Model model = at_item("shade");
  EXPECT_EQ(formula(model), "S = B + ½Pℓ");
  algebra::ClassNotation notation;
  notation.parts = algebra::ClassNotation::Parts::Division;
  model = after(std::move(model), {SetNotation{notation}, ShowHint{}, ShowHint{}, ShowHint{}});
  EXPECT_EQ(formula(model), "S = B + P · ℓ ÷ 2");
  DerivedMemo memo;
  EXPECT_EQ(algebra::plain_text(*memo.of(model.state).item->hints.back().line), "S = B + P · ℓ ÷ 2");
}

// What the other form has shown is shown after the switch.
TEST(BoardLines, FollowTheStepsThatWereShown) {
  Model model = after(demo_model("shade"), {SetMode{Mode::Work}, StepWork{1}, SetDetail{Detail::Board}});
  EXPECT_EQ(at(model).shown, 1U);
  model = after(std::move(model), {SetDetail{Detail::EveryStep}, LastStep{}, SetDetail{Detail::Board}});
  EXPECT_EQ(at(model).shown, at(model).count);
}

TEST(BoardLines, NumbersSayWhichLineTheyComeFrom) {
  const Model model = on_board("shade", {LastStep{}, PointNumber{NumberPlace{4, 0, true}}});
  const WorkedProblem worked = worked_for(model.state);
  const reasoning::Source* source = pointed_source(model, worked);
  ASSERT_NE(source, nullptr);
  EXPECT_TRUE(source->step.has_value());
  EXPECT_EQ(lit(model, worked).line, source->step);
}

TEST(BoardLines, AreWrittenAsTheClassWrites) {
  const auto formula = [](const Model& model) { return equation_text(worked_for(model.state).board.lines[1]); };
  Model model = on_board("shade");
  EXPECT_EQ(formula(model), "S = B + ½Pℓ");
  algebra::ClassNotation notation;
  notation.parts = algebra::ClassNotation::Parts::Division;
  model = after(std::move(model), {SetNotation{notation}});
  EXPECT_EQ(formula(model), "S = B + P · ℓ ÷ 2");
  EXPECT_EQ(formula(after(std::move(model), {Undo{}})), "S = B + ½Pℓ");
}

}  // namespace
}  // namespace fw::state::test::board_commands_test
