#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/quiz_support.hpp"
#include "panels/ids.hpp"

// A user's tasks in the quiz, by mouse and by keyboard.
namespace fw::panels::test::quiz_task_test {
namespace {

/// Walks the buttons until this one has the keyboard.
void tab_to(ProgramDriver& program, WidgetId id) {
  for (int i = 0; i < 80 && program.user().ui().focus() != id; ++i) {
    program.user().press(Key::Tab);
  }
  ASSERT_EQ(program.user().ui().focus(), id) << id.name;
}

void press_letter(ProgramDriver& program, std::size_t option) {
  program.user().press(static_cast<Key>(static_cast<int>(Key::A) + static_cast<int>(option)));
}

/// The right options by their letters, and of a net that is none the reason.
void choose_by_keys(ProgramDriver& program) {
  for (const std::size_t option : right_options(program.state())) {
    press_letter(program, option);
  }
  if (program.state().quiz.work().asks_why) {
    const std::vector<practice::Choice> reasons = reasons_for(program.state().quiz.item());
    const auto right =
        std::find_if(reasons.begin(), reasons.end(), [](const practice::Choice& one) { return one.is_right; });
    press_letter(program, static_cast<std::size_t>(right - reasons.begin()));
  }
  if (program.state().quiz.work().asks_value) {  // the mistake is found, and what is right is typed
    const auto question = practice::question_of(program.state().current());
    program.user().strike(std::to_string(question->truth->to_double()) + " " + question->unit->ascii());
    program.user().press(Key::Enter);
  }
}

TEST(QuizTask, AStudentGoesThroughAMadeUpSetOfTenByKeysAlone) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  tab_to(program, ids::modes.at(0));
  program.user().press(Key::Right);
  program.user().press(Key::Right);
  program.user().press(Key::Enter);
  ASSERT_EQ(program.state().mode, Mode::Quiz);
  tab_to(program, ids::quiz_source.at(0));
  program.user().press(Key::Right);
  program.user().press(Key::Right);
  program.user().press(Key::Enter);
  ASSERT_EQ(program.state().quiz.setup.source, QuizSource::MadeUp);
  tab_to(program, ids::quiz_start);
  program.user().press(Key::Enter);
  ASSERT_TRUE(program.state().in_item());
  for (int i = 0; i < 10; ++i) {
    ASSERT_TRUE(program.state().in_item());
    if (is_chosen(answer_form(program.state().quiz.item()))) {
      choose_by_keys(program);
      ASSERT_TRUE(program.state().quiz.work().done) << program.state().current().prompt;
      program.user().press(Key::Enter);
      continue;
    }
    EXPECT_EQ(program.user().ui().focus(), ids::answer_field) << "the keyboard stays in the field, item " << i;
    program.user().press(Key::A, with_control);
    program.user().type(i % 3 == 0 ? "777" : right_answer(program.state()));
    program.user().press(Key::Enter);
    if (i % 3 == 0) {
      EXPECT_FALSE(program.state().quiz.work().replies.empty());
      program.user().press(Key::A, with_control);
      program.user().type(right_answer(program.state()));
      program.user().press(Key::Enter);
    }
    ASSERT_TRUE(program.state().quiz.work().done) << program.state().current().prompt;
    program.user().press(Key::Enter);
  }
  EXPECT_FALSE(program.state().in_item());
  EXPECT_EQ(program.state().quiz.attempts.size(), 10U) << "a problem counts once";
  ASSERT_TRUE(program.state().quiz.results.has_value());
  EXPECT_TRUE(program.user().shows_text("10 problems"));
  EXPECT_FALSE(program.user().shows_text("skipped"));
  program.user().press(Key::Enter);
  EXPECT_TRUE(program.user().shows(ids::quiz_start)) << "Enter leads back to the start page";
}

TEST(QuizTask, TheAnswerIsNotOnTheScreenBeforeItIsOut) {
  for (const char* id : {"shade", "crate", "lamp-cube", "window-star", "tea-bag", "tent"}) {
    ProgramDriver program(at_item(id), 1280, 720);
    program.user().frames(2);
    const std::string answer = right_answer(program.state());
    EXPECT_FALSE(program.user().shows_text(answer)) << id;
    for (const BenchLabel& label : program.frame().picture.labels) {
      EXPECT_NE(label.text, answer) << id;
    }
    EXPECT_TRUE(program.frame().picture.numbers.empty()) << "faces are not numbered";
    EXPECT_FALSE(program.user().shows_text("faces have")) << id;
  }
}

TEST(QuizTask, TheFacesOfAMistakeAreOutlinedOnTheBench) {
  const Model start = at_item("shade");
  const double lateral = start.state.current().solid.lateral_area()->amount().to_double();
  ProgramDriver program(start, 1280, 720);
  const auto is_outlined = [&](std::size_t face) {
    return program.frame().picture.look.looks[face].outline.has_value();
  };
  program.user().frames(1);
  EXPECT_FALSE(is_outlined(0) || is_outlined(1));
  program.give(AnswerTyped{std::to_string(lateral) + " cm^2"});
  const std::vector<FaceId> faces = program.state().quiz.work().replies.back().faces;
  ASSERT_FALSE(faces.empty());
  const std::size_t other = faces.front().index() == 0 ? 1 : 0;
  EXPECT_TRUE(is_outlined(faces.front().index()));
  EXPECT_FALSE(is_outlined(other));
}

// A question alone would not say that the answer was wrong.
TEST(QuizTask, AWrongAnswerIsToldToBeSo) {
  ProgramDriver program(at_item("candle-box"), 1280, 720);
  program.user().click(ids::answer_field);
  program.user().type_into(ids::answer_field, "268 in^2");  // 286 with two digits switched, or off by 18
  program.user().press(Key::Enter);
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("You wrote 268 in^2. Not yet."));
  EXPECT_TRUE(
      program.user().shows_text("There is more than one way to get 268. What did you find first, and what does "
                                "it measure?"));
}

TEST(QuizTask, TheSolutionStandsInThePanelWithItsStepMarked) {
  ProgramDriver program(at_item("shade"), 1920, 1080);
  program.user().click(ids::answer_field);
  for (const char* typed : {"7 cm^2", "11 cm^2", "13 cm^2"}) {
    program.user().type_into(ids::answer_field, typed);
    program.user().press(Key::Enter);
  }
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("Compare this step with yours."));
  EXPECT_TRUE(program.user().shows(ids::work_step.at(*program.state().quiz.work().failing)));
  program.user().click(ids::go_on);
  EXPECT_FALSE(program.user().shows_text("Compare this step with yours."));
}

TEST(QuizTask, HandsAreTypedAndSteppedAndTheRemoteGoesOn) {
  const QuizSetup of_class{Audience::Class, QuizSource::Lesson, {}, 1, 1};
  ProgramDriver program(at_item("shade", of_class), 1280, 720);
  program.user().press(Key::PageDown);
  ASSERT_EQ(program.state().quiz.work().stage, ClassStage::Options);
  program.user().type_into(ids::hands.at(1), "14");
  program.user().press(Key::Enter);
  program.user().click(ids::hands_more.at(0));
  program.user().click(ids::hands_more.at(0));
  program.user().click(ids::hands_less.at(0));
  program.user().click(ids::class_option.at(2));
  EXPECT_EQ(program.state().quiz.work().hands, (std::vector<int>{1, 14, 1, 0}));
  program.user().press(Key::PageDown);
  EXPECT_EQ(program.state().quiz.work().stage, ClassStage::Answer);
  EXPECT_TRUE(program.user().shows_text("Go over this idea again"));
  EXPECT_TRUE(program.user().shows_text("Right: "));
  const std::size_t number = program.state().quiz.number;
  program.user().press(Key::PageDown);
  EXPECT_EQ(program.state().quiz.number, number + 1);
}

TEST(QuizTask, EveryWidgetOfTheStartPageIsReachedByTab) {
  QuizSetup setup = made_up(1);
  ProgramDriver program(at_start(setup), 1280, 720);
  for (const WidgetId id : {ids::quiz_who.at(0), ids::quiz_source.at(2), ids::quiz_level.at(0), ids::quiz_numbers,
                            ids::quiz_mixed, ids::quiz_type.at(0), ids::quiz_start}) {
    tab_to(program, id);
  }
}

}  // namespace
}  // namespace fw::panels::test::quiz_task_test
