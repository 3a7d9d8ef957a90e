#include <gmock/gmock.h>

#include <set>

#include "app/state/quiz/quiz_support.hpp"
#include "state/derived.hpp"
#include "tasks/generate/generate.hpp"

// The quiz for one student, on the state alone.
namespace fw::state::test::quiz_commands_test {
namespace {

using practice::AnswerVerdict;
using testing::HasSubstr;
using testing::SizeIs;

constexpr QuizSetup nets{Audience::Student, QuizSource::Nets, {}, 1, 1};

Model net_of(const std::string& name) {
  Model model = after(at_start(nets), {StartQuiz{}});
  while (model.state.in_item() && model.state.current().solid.name() != name) {
    model = after(std::move(model), {StepItem{1}});
    if (!model.state.in_item()) {
      model = after(std::move(model), {NewNumbers{}, StartQuiz{}});
    }
  }
  return model;
}

TEST(QuizStart, TypesAboveTheLevelAreLeftOut) {
  const Model model = after(at_start(), {SetQuizSource{QuizSource::MadeUp}, SetQuizLevel{3}, ToggleQuizType{"chain"},
                                         ToggleQuizType{"name"}, SetQuizLevel{1}, StartQuiz{}});
  ASSERT_TRUE(model.state.in_item());
  for (const QuizItem& one : *model.state.quiz.set) {
    EXPECT_EQ(one.skill, "name");
  }
  EXPECT_TRUE(after(model, {EndQuiz{}, ToggleQuizType{""}}).state.quiz.setup.types.empty());
}

TEST(QuizStart, EndingTheSetCountsTheSeedUp) {
  const Model model = after(at_start(made_up(7)), {StartQuiz{}, EndQuiz{}});
  EXPECT_FALSE(model.state.in_item());
  EXPECT_EQ(model.state.quiz.setup.seed, 8U);
}

TEST(QuizNet, ShowsTheNetOpenAndHidesTheFoldUntilTheAnswer) {
  const Model model = after(at_start(nets), {StartQuiz{}});
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(after(model, {SetFold{0.2}}).view.fold, 1.0);
  EXPECT_EQ(after(model, {PlayFold{Motion::Closing}}).view.motion, Motion::Still);
}

TEST(QuizNet, FoldsUpAfterTheRightName) {
  const Model model = after(net_of("square pyramid"), {AnswerTyped{"Square pyramid"}});
  EXPECT_TRUE(item(model).done);
  EXPECT_EQ(model.view.motion, Motion::Closing);
  EXPECT_EQ(after(model, {Tick{0.1}, Tick{0.1}, Tick{0.1}}).view.motion, Motion::Closing);
}

TEST(QuizNet, AsksPyramidBackForItsBaseAndCountsItAsNoTry) {
  const Model model = after(net_of("square pyramid"), {AnswerTyped{"pyramid"}, AnswerTyped{"pyramid"}});
  EXPECT_FALSE(item(model).done);
  ASSERT_FALSE(item(model).replies.empty());
  EXPECT_EQ(item(model).replies.back().verdict, AnswerVerdict::Ask);
  EXPECT_TRUE(model.state.quiz.attempts.empty());
}

TEST(QuizNet, OffersNamesOfTheSameFaceCount) {
  Model model = after(at_start(nets), {StartQuiz{}, SetAnswerStyle{AnswerStyle::Options}});
  const practice::NetQuestion asked = question(model.state);
  ASSERT_GE(asked.options.size(), 2U);
  const std::size_t wrong = asked.right_option == 0 ? 1 : 0;
  model = after(model, {AnswerOption{wrong}});
  EXPECT_FALSE(item(model).done);
  EXPECT_EQ(item(model).tried, std::vector<std::size_t>{wrong});
  EXPECT_TRUE(item(after(model, {AnswerOption{asked.right_option}})).done);
}

TEST(QuizAnswer, ARightNumberIsRight) {
  // 6 cm by 6 cm and four triangles of 6 cm by 9 cm: 36 + 108.
  const Model model = after(at_item("shade"), {AnswerTyped{right_answer(at_item("shade").state)}});
  EXPECT_TRUE(item(model).done);
  ASSERT_THAT(model.state.quiz.attempts, SizeIs(1));
  EXPECT_EQ(model.state.quiz.attempts.front(), (practice::Attempt{"surface", "", true}));
}

TEST(QuizAnswer, AMissingUnitIsSaidAndIsNoFailedTry) {
  const Model start = at_item("candle-box");
  const std::string whole = right_answer(start.state);
  const std::string number = whole.substr(0, whole.find(' '));
  const Model model = after(start, {AnswerTyped{number}, AnswerTyped{number + " cm"}});
  EXPECT_FALSE(item(model).done);
  EXPECT_EQ(item(model).replies.back().verdict, AnswerVerdict::RightNumber);
  EXPECT_FALSE(item(model).solution_shown);
  EXPECT_TRUE(item(after(model, {AnswerTyped{whole}})).done);
}

TEST(QuizAnswer, ARecognizedMistakeLightsItsFaces) {
  const Model start = at_item("shade");
  const double lateral = start.state.current().solid.lateral_area()->amount().to_double();
  const Model model = after(start, {AnswerTyped{std::to_string(lateral) + " cm^2"}});
  const Reply& reply = item(model).replies.back();
  EXPECT_EQ(reply.verdict, AnswerVerdict::Recognized) << said(reply.message);
  EXPECT_EQ(reply.cause, "B10");
  EXPECT_FALSE(reply.faces.empty());
  DerivedMemo memo;
  EXPECT_EQ(memo.of(model.state).item->faces, reply.faces);
}

TEST(QuizAnswer, TheThirdWrongAnswerShowsTheSolutionWithItsStepMarked) {
  const Model start = at_item("shade");
  const double lateral = start.state.current().solid.lateral_area()->amount().to_double();
  const std::string typed = std::to_string(lateral) + " cm^2";
  const Model once = after(start, {AnswerTyped{typed}});
  const Model twice = after(once, {AnswerTyped{"7 cm^2"}});
  EXPECT_FALSE(item(twice).solution_shown);
  const Model thrice = after(twice, {AnswerTyped{"11 cm^2"}});
  EXPECT_TRUE(item(thrice).solution_shown);
  EXPECT_TRUE(item(thrice).done);
  const WorkedProblem worked = worked_for(thrice.state);
  EXPECT_EQ(item(thrice).desk->work.reached, worked.count);
  ASSERT_TRUE(item(thrice).failing.has_value());
  EXPECT_EQ(item(thrice).desk->work.present, *item(thrice).failing);
  ASSERT_THAT(thrice.state.quiz.attempts, SizeIs(1)) << "a problem counts once, with its first answer";
  EXPECT_EQ(thrice.state.quiz.attempts.front(), (practice::Attempt{"surface", "B10", false}));
  EXPECT_TRUE(thrice.state.desks[thrice.state.problem]->work == Work{}) << "the lesson's own desk is left alone";
}

TEST(QuizAnswer, WhatNamesNoFaceMarksTheLastRelation) {
  const Model start = at_item("sand-box");
  const Model model = after(start, {AnswerTyped{"7 cm^3"}, AnswerTyped{"11 cm^3"}, AnswerTyped{"13 cm^3"}});
  const WorkedProblem worked = worked_for(model.state);
  ASSERT_TRUE(item(model).failing.has_value());
  EXPECT_EQ(worked.step(*item(model).failing).kind, reasoning::StepKind::Relation);
}

TEST(QuizAnswer, AWordThatIsNoNumberIsNoTry) {
  const Model model = after(at_item("shade"), {AnswerTyped{"many"}, AnswerTyped{"very many"}, AnswerTyped{"more"}});
  EXPECT_FALSE(item(model).done);
  EXPECT_THAT(item(model).replies, SizeIs(3));
  EXPECT_TRUE(model.state.quiz.attempts.empty());
}

// A letter stands for an option only where options are to be seen.
TEST(QuizAnswer, NonsenseForANameIsNoTryAndALetterIsNoHiddenOption) {
  const Model start = net_of("square pyramid");
  for (const std::string typed : {"b", "B", " c ", "a)", "d.", "xyz", "hmm what", "42", "?"}) {
    const Model model = after(start, {AnswerTyped{typed}, AnswerTyped{typed}, AnswerTyped{typed}, AnswerTyped{typed}});
    EXPECT_FALSE(item(model).done) << typed;
    EXPECT_TRUE(model.state.quiz.attempts.empty()) << typed;
    EXPECT_THAT(said(item(model).replies.back().message), HasSubstr("isn't the name of a solid")) << typed;
  }
  EXPECT_TRUE(item(after(start, {AnswerTyped{"b"}, AnswerTyped{"square pyramid"}})).done);
}

TEST(QuizAnswer, ASolutionWithoutAnAnswerCountsAsNotKnownAndComesBackTheSameDay) {
  const Model model = after(at_item("shade"), {RevealAnswer{}});
  ASSERT_THAT(model.state.quiz.attempts, SizeIs(1));
  EXPECT_EQ(model.state.quiz.attempts.front(), (practice::Attempt{"surface", practice::solution_read, false}));
  const practice::Progress kept = practice::recorded({}, model.state.quiz.attempts.front(), 100);
  EXPECT_TRUE(practice::is_due(kept.skills.at("surface"), 100));
  const Model after_answer = after(at_item("shade"), {AnswerTyped{"7 cm^2"}, RevealAnswer{}});
  EXPECT_THAT(after_answer.state.quiz.attempts, SizeIs(1)) << "the wrong answer has counted";
  EXPECT_THAT(after(model, {Undo{}}).state.quiz.attempts, SizeIs(0));
}

TEST(QuizAnswer, RightAfterAHintIsKeptApart) {
  const Model model = after(at_item("shade"), {ShowHint{}, AnswerTyped{right_answer(at_item("shade").state)}});
  ASSERT_TRUE(item(model).done);
  EXPECT_EQ(model.state.quiz.attempts.front(), (practice::Attempt{"surface", "", true, true}));
  EXPECT_EQ(end_of(item(model)), ItemEnd::WithHelp);
}

// What is right is typed, so that no option gives it away.
TEST(QuizMistake, AsksForTheRightValueOnceTheMistakeIsFound) {
  QuizSetup setup = made_up(4, Audience::Student, 2);
  setup.types = {"find-mistake"};
  const Model start = after(at_start(setup), {StartQuiz{}});
  const auto question = practice::question_of(start.state.current());
  const std::string value = std::to_string(question->truth->to_double()) + " " + question->unit->ascii();
  const std::size_t right = right_options(start.state).front();
  const Model found = after(start, {AnswerOption{right}});
  EXPECT_FALSE(item(found).done);
  ASSERT_TRUE(item(found).asks_value);
  EXPECT_THAT(said(item(found).replies.back().message), HasSubstr("What is the right value?"));
  EXPECT_TRUE(found.state.quiz.attempts.empty());
  const Model wrong = after(found, {AnswerTyped{"1 " + question->unit->ascii()}});
  EXPECT_FALSE(item(wrong).done);
  EXPECT_TRUE(item(wrong).replies.back().is_try);
  EXPECT_FALSE(item(after(found, {AnswerTyped{"b"}})).replies.back().is_try) << "nonsense is no try";
  const Model done = after(found, {AnswerTyped{value}});
  EXPECT_TRUE(item(done).done);
  ASSERT_EQ(done.state.quiz.attempts.size(), 1U);
  EXPECT_TRUE(done.state.quiz.attempts.front().right);
  for (const practice::Choice& choice : choices_for(start.state.quiz.item(), 4, start.state.quiz.number)) {
    EXPECT_THAT(said(choice.text), testing::Not(HasSubstr("right value"))) << said(choice.text);
  }
}

TEST(QuizRetry, PutsTheSameKindWithNewNumbersInThePlaceOfTheOneThatIsDone) {
  const Model start = after(at_start(made_up(3)), {StartQuiz{}});
  EXPECT_EQ(after(start, {TryNewNumbers{}}).state, start.state) << "not before the answer is out";
  for (Model at = start; at.state.in_item(); at = after(std::move(at), {StepItem{1}})) {
    const Model done = after(at, {RevealAnswer{}});
    const Model again = after(done, {TryNewNumbers{}});
    const QuizItem& fresh = again.state.quiz.item();
    EXPECT_EQ(fresh.skill, at.state.quiz.item().skill);
    EXPECT_EQ(again.state.quiz.number, at.state.quiz.number);
    EXPECT_EQ(again.state.quiz.set->size(), at.state.quiz.set->size());
    EXPECT_FALSE(item(again).done);
    EXPECT_FALSE(fresh.problem.solid == at.state.current().solid) << fresh.skill;
    const Model thrice = after(again, {RevealAnswer{}, TryNewNumbers{}});
    EXPECT_FALSE(thrice.state.current().solid == again.state.current().solid) << fresh.skill;
    EXPECT_EQ(after(again, {Undo{}}).state, done.state);
  }
}

TEST(QuizResults, TellWhatWasRightMissedAndSkippedAndAskTheMissedOnesAgain) {
  Model model = after(at_start(made_up(5)), {StartQuiz{}});
  model = after(model, {AnswerTyped{right_answer(model.state)}});
  if (!item(model).done) {
    model = after(model, {RevealAnswer{}, StepItem{1}});
  }
  std::size_t missed = item(model).solution_shown ? 1 : 0;
  const lessons::Problem second = after(model, {StepItem{1}}).state.current();
  model = after(model, {StepItem{1}, RevealAnswer{}});
  ++missed;
  for (int i = 0; i < 12 && model.state.in_item(); ++i) {
    model = after(model, {StepItem{1}});
  }
  ASSERT_TRUE(model.state.quiz.results.has_value());
  const std::vector<ItemEnd>& ends = model.state.quiz.results->ends;
  EXPECT_EQ(std::count(ends.begin(), ends.end(), ItemEnd::Missed), static_cast<std::ptrdiff_t>(missed));
  EXPECT_EQ(std::count(ends.begin(), ends.end(), ItemEnd::Skipped), 8);
  const Model again = after(model, {AskMissedAgain{}});
  ASSERT_TRUE(again.state.in_item());
  EXPECT_EQ(again.state.quiz.set->size(), missed);
  EXPECT_EQ((*again.state.quiz.set)[missed - 1].problem.solid, second.solid);
  EXPECT_FALSE(after(model, {CloseResults{}}).state.quiz.results.has_value());
}

TEST(QuizResults, ASetThatNobodyTouchedHasNone) {
  EXPECT_FALSE(after(at_start(made_up(5)), {StartQuiz{}, StepItem{1}, EndQuiz{}}).state.quiz.results.has_value());
  const Model of_class =
      after(at_start(made_up(5, Audience::Class)), {StartQuiz{}, StepQuiz{1}, StepQuiz{1}, EndQuiz{}});
  EXPECT_FALSE(of_class.state.quiz.results.has_value());
}

TEST(QuizAnswer, AClosedSolidStaysClosedUntilTheAnswer) {
  const Model model = at_item("shade");
  EXPECT_EQ(model.view.fold, 0.0);
  EXPECT_EQ(after(model, {SetFold{0.5}, StepFold{1}}).view.fold, 0.0);
  EXPECT_EQ(after(model, {RevealAnswer{}, SetFold{0.5}}).view.fold, 0.5);
}

TEST(QuizHints, ComeOneByOneAndNeverTheAnswer) {
  for (const char* id : {"shade", "crate", "tea-tin", "window-star", "tea-bag", "dice-lamp"}) {
    Model model = at_item(id);
    const std::vector<practice::Hint> hints = hints_for(model.state.quiz.item(), {});
    ASSERT_FALSE(hints.empty()) << id;
    for (std::size_t i = 1; i <= hints.size() + 1; ++i) {
      model = after(model, {ShowHint{}});
      EXPECT_EQ(item(model).hints, std::min(i, hints.size())) << id;
    }
    EXPECT_FALSE(item(model).done);
    for (const practice::Hint& hint : hints) {
      EXPECT_THAT(said(hint.text), testing::Not(HasSubstr(right_answer(model.state)))) << id;
    }
  }
}

TEST(QuizRemote, GoesFromHintsToTheSolutionToTheNextItem) {
  Model model = at_item("shade");
  const std::size_t number = model.state.quiz.number;
  for (std::size_t i = 0; i < hints_for(model.state.quiz.item(), {}).size(); ++i) {
    model = after(model, {StepQuiz{1}});
    EXPECT_FALSE(item(model).done);
  }
  model = after(model, {StepQuiz{1}});
  EXPECT_TRUE(item(model).solution_shown);
  model = after(model, {StepQuiz{1}});
  EXPECT_EQ(model.state.quiz.number, number + 1);
  model = after(model, {StepQuiz{-1}});
  EXPECT_TRUE(item(model).solution_shown) << "what was done with an item is kept";
}

TEST(QuizRemote, AMixedSetOfTenIsRunThrough) {
  for (int level = 1; level <= 3; ++level) {
    Model model = after(at_start(made_up(11, Audience::Student, level)), {StepQuiz{1}});
    std::size_t items = 0;
    while (model.state.in_item() && items < 20) {
      EXPECT_TRUE(item(after(model, {AnswerTyped{right_answer(model.state)}})).done)
          << model.state.current().prompt << " " << right_answer(model.state);
      for (int i = 0; i < 9 && !item(model).done; ++i) {
        model = after(model, {StepQuiz{1}});
      }
      ASSERT_TRUE(item(model).done);
      model = after(model, {StepQuiz{1}});
      ++items;
    }
    EXPECT_EQ(items, 10U);
    ASSERT_TRUE(model.state.quiz.results.has_value());
    EXPECT_EQ(model.state.quiz.results->ends.size(), 10U);
    EXPECT_EQ(model.state.quiz.setup.seed, 12U) << "the next set has new numbers";
  }
}

TEST(QuizUndo, TakesEachThingBack) {
  Model model = at_start(made_up(2));
  std::vector<State> states{model.state};
  for (const Command& command : std::vector<Command>{StartQuiz{}, ShowHint{}, AnswerTyped{"7 cm^2"}, AnswerTyped{"11"},
                                                     RevealAnswer{}, StepItem{1}, EndQuiz{}}) {
    model = after(model, {command});
    if (!(model.state == states.back())) {
      states.push_back(model.state);
    }
  }
  ASSERT_GE(states.size(), 6U);
  for (std::size_t i = states.size() - 1; i > 0; --i) {
    model = after(model, {Undo{}});
    EXPECT_EQ(model.state, states[i - 1]) << i;
  }
}

}  // namespace
}  // namespace fw::state::test::quiz_commands_test
