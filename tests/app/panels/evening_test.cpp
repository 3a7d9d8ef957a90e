#include <gmock/gmock.h>

#include <set>
#include <sstream>

#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/forms_support.hpp"
#include "panels/ids.hpp"
#include "panels/sheets/key_list.hpp"
#include "support/sanitized.hpp"

// What a student at home and a teacher at the projector must find where they look for it.
namespace fw::panels::test::evening_test {
namespace {

using testing::HasSubstr;

constexpr figures::Vec2 window_sizes[] = {{1280, 720}, {1024, 768}, {1920, 1080}, {800, 1000}};

/// Whether a text stands on the screen whole, not scrolled away.
bool is_in_sight(ProgramDriver& program, const std::string& text) {
  for (const ItemRecord& item : program.user().ui().items()) {
    if (item.text.find(text) != std::string::npos && item.clip.contains(item.rect, 2)) {
      return true;
    }
  }
  return false;
}

// The question and what was said to the last answer are read together.
TEST(Evening, QuestionAndReplyStayInSightThroughHintsAndTries) {
  const std::vector<const char*> asked{"shade", "tent", "crate", "candle-box"};
  for (const figures::Vec2& size : window_sizes) {
    for (std::size_t i = 0; i < fw::test::cases(asked.size(), 1); ++i) {
      const char* id = asked[i];
      Model model = at_item(id);
      for (const Command& command :
           std::vector<Command>{AnswerTyped{"7"}, ShowHint{}, ShowHint{}, ShowHint{}, AnswerTyped{"11"}}) {
        model = after(std::move(model), {command});
        if (item(model).done || item(model).replies.empty()) {
          continue;
        }
        ProgramDriver program(model, size.x, size.y);
        program.user().frames(3);
        const std::string where = std::string(id) + " at " + std::to_string(size.x);
        EXPECT_TRUE(is_in_sight(program, said(item(model).replies.back().message))) << where;
        DerivedMemo memo;
        EXPECT_TRUE(program.user().shows_text(memo.of(model.state).prompt)) << where;
      }
    }
  }
}

TEST(Evening, TheReplyToAChosenOptionHasItsPlaceBesideFourOptions) {
  for (const figures::Vec2& size : window_sizes) {
    for (std::uint64_t seed = 1; seed < 1 + fw::test::cases(3, 1); ++seed) {
      Model model = after(at_start(made_up(seed, Audience::Student, 2)), {StartQuiz{}});
      for (; model.state.in_item(); model = after(std::move(model), {StepItem{1}})) {
        if (answer_form(model.state.quiz.item()) != AnswerForm::Option) {
          continue;
        }
        const std::size_t wrong = right_options(model.state).front() == 0 ? 1 : 0;
        const Model tried = after(model, {AnswerOption{wrong}});
        ProgramDriver program(tried, size.x, size.y);
        program.user().frames(3);
        ASSERT_FALSE(item(tried).replies.empty());
        EXPECT_TRUE(is_in_sight(program, said(item(tried).replies.back().message)))
            << size.x << " " << tried.state.current().prompt;
      }
    }
  }
}

TEST(Evening, NewNumbersAreOfferedWhereAProblemWasNotFoundAlone) {
  ProgramDriver program(after(at_item("shade"), {RevealAnswer{}}), 1280, 720);
  program.user().frames(2);
  ASSERT_TRUE(program.user().shows(ids::try_again));
  program.user().click(ids::try_again);
  EXPECT_FALSE(item(program.model()).done);
  EXPECT_EQ(program.user().ui().focus(), ids::answer_field);
  program.show(after(at_item("shade"), {AnswerTyped{right_answer(at_item("shade").state)}}));
  EXPECT_FALSE(program.user().shows(ids::try_again));
}

TEST(Evening, TheEndSaysWhatWasRightMissedAndSkippedByKindOfProblem) {
  Model model = after(at_start(made_up(5)), {StartQuiz{}, RevealAnswer{}});
  while (model.state.in_item()) {
    model = after(std::move(model), {StepItem{1}});
  }
  for (const figures::Vec2& size : window_sizes) {
    ProgramDriver program(model, size.x, size.y);
    program.user().frames(2);
    EXPECT_TRUE(program.user().shows_text("10 problems"));
    EXPECT_TRUE(program.user().shows_text("1 not yet, 9 skipped."));
    EXPECT_TRUE(program.user().shows_text("1 not yet"));
    for (const std::string& fault : program.user().layout_faults()) {
      ADD_FAILURE() << size.x << ": " << fault;
    }
    program.user().click(ids::missed_again);
    ASSERT_TRUE(program.state().in_item());
    EXPECT_EQ(program.state().quiz.set->size(), 1U);
  }
}

// --- what is spoken of can be seen ---

TEST(Evening, TheFaceThatIsAskedAboutShowsItsNumber) {
  std::size_t asked = 0;
  for (const int level : fw::test::some_of<int>({1, 2, 3}, 3)) {
    for (std::uint64_t seed = 1; seed <= fw::test::cases(4, 1); ++seed) {
      QuizSetup setup = made_up(seed, Audience::Student, level);
      setup.types = {"face-lengths"};
      Model model = after(at_start(setup), {StartQuiz{}});
      for (; model.state.in_item(); model = after(std::move(model), {StepItem{1}})) {
        DerivedMemo memo;
        const std::vector<FaceId> faces = memo.of(model.state).item->faces;
        ASSERT_EQ(faces.size(), 1U);
        ProgramDriver program(model, 1280, 720);
        program.user().frames(2);
        EXPECT_NO_THROW(std::ignore = program.place_of(faces.front()))
            << model.state.current().solid.name() << " face " << faces.front().index() + 1;
        ++asked;
      }
    }
  }
  EXPECT_GE(asked, fw::test::cases(100, 8));
}

TEST(Evening, TheUserTurnsTheBenchOnFromTheFaceThatIsAskedAbout) {
  QuizSetup setup = made_up(1, Audience::Student, 1);
  setup.types = {"face-lengths"};
  ProgramDriver program(after(at_start(setup), {StartQuiz{}}), 1280, 720);
  program.user().frames(2);
  const render::Camera before = program.frame().picture.camera;
  program.give(Orbit{0.2, 0});
  EXPECT_NEAR(program.frame().picture.camera.yaw_rad - before.yaw_rad, 0.2, 1e-9);
}

TEST(Evening, CandidatesCarryTheNumbersOfTheirPiecesOnceAReplySpeaksOfThem) {
  QuizSetup setup = made_up(2, Audience::Student, 3);
  setup.types = {"choose-net"};
  const Model start = after(at_start(setup), {StartQuiz{}});
  ASSERT_TRUE(start.state.in_item());
  ProgramDriver program(start, 1280, 720);
  program.user().frames(2);
  const auto numbers = [&] {
    return std::count_if(program.frame().picture.labels.begin(), program.frame().picture.labels.end(),
                         [](const BenchLabel& label) { return label.text == "1"; });
  };
  EXPECT_EQ(numbers(), 0);
  const std::size_t wrong = right_options(start.state).front() == 0 ? 1 : 0;
  program.give(AnswerOption{wrong});
  EXPECT_EQ(static_cast<std::size_t>(numbers()), choices_for(start.state.quiz.item(), 2, 0).size());
}

// --- keys ---

TEST(KeyList, NamesEachKeyOfAModeOnce) {
  for (const Mode mode : {Mode::Explore, Mode::Work, Mode::Quiz}) {
    std::set<std::string> seen;
    std::string all;
    for (const KeyRow& row : key_rows(mode)) {
      const std::string keys = std::string(row.keys) + "  ";
      all += keys;
      for (std::size_t at = 0, end = keys.find("  "); end != std::string::npos; end = keys.find("  ", at)) {
        const std::string key = keys.substr(at, end - at);
        EXPECT_TRUE(key.empty() || seen.insert(key).second) << key << " is listed twice";
        at = end + 2;
      }
    }
    EXPECT_THAT(all, HasSubstr("Ctrl+1"));
    EXPECT_THAT(all, mode == Mode::Explore ? HasSubstr("T  V") : HasSubstr("PgDn"));
  }
}

TEST(KeyList, TheModesHaveKeysAlsoWhileOneTypes) {
  ProgramDriver program(at_item("shade"), 1280, 720);
  program.user().strike("12");
  program.user().press(Key::Digit1, with_control);
  EXPECT_EQ(program.state().mode, Mode::Explore);
  program.user().press(Key::Digit2, with_control);
  EXPECT_EQ(program.state().mode, Mode::Work);
  program.user().press(Key::Digit3, with_control);
  EXPECT_EQ(program.state().mode, Mode::Quiz);
}

// --- presenting ---

TEST(Presenting, FillsTheScreenAndGivesItBackInOneAct) {
  const Model start = demo_model();
  const Outcome begun = apply(start, SetPresenting{true});
  EXPECT_EQ(begun.effects, std::vector<Effect>{Effect::EnterFullScreen});
  EXPECT_EQ(apply(begun.model, SetPresenting{false}).effects, std::vector<Effect>{Effect::LeaveFullScreen});
  const Model full = after(start, {SetFullScreen{true}});
  EXPECT_TRUE(apply(full, SetPresenting{true}).effects.empty()) << "it fills the screen already";
  EXPECT_TRUE(apply(after(full, {SetPresenting{true}}), SetPresenting{false}).effects.empty());
}

TEST(Presenting, LeavesAWayToTheNextProblemByMouseAtEverySize) {
  for (const figures::Vec2& size : window_sizes) {
    for (const Mode mode : {Mode::Explore, Mode::Work}) {
      ProgramDriver program(after(demo_model(), {SetMode{mode}, SetPresenting{true}}), size.x, size.y);
      program.user().frames(2);
      const std::size_t problem = program.state().problem;
      ASSERT_TRUE(program.user().shows(ids::problem_next)) << size.x;
      program.user().click(ids::problem_next);
      EXPECT_EQ(program.state().problem, problem + 1) << size.x;
    }
  }
}

TEST(Presenting, TheRemoteNeverWorksUnseen) {
  ProgramDriver program(after(demo_model(), {ShowPanel{SidePanel::Measures}}), 1280, 720);
  program.user().press(Key::PageDown);
  EXPECT_EQ(program.model().view.panel, SidePanel::Faces);
  EXPECT_EQ(program.state().desk().counted.size(), 1U);
  program.show(after(demo_model(), {SetMode{Mode::Work}, ShowWorkPanel{WorkPanel::Options}}));
  program.user().press(Key::PageDown);
  EXPECT_EQ(program.model().view.work_panel, WorkPanel::Steps);
  EXPECT_EQ(program.state().desk().work.reached, 1U);
  for (const Mode mode : {Mode::Explore, Mode::Work}) {
    const std::vector<Command> elsewhere{SetMode{mode}, ShowPanel{SidePanel::Measures},
                                         ShowWorkPanel{WorkPanel::Options}};
    program.show(after(demo_model("shade"), elsewhere));
    program.user().press(Key::PageUp);
    EXPECT_EQ(mode == Mode::Work ? program.model().view.work_panel == WorkPanel::Steps
                                 : program.model().view.panel == SidePanel::Faces,
              true);
  }
}

// Each switch of the notation changes its own part, and back.
TEST(Notation, IsSwitchedPartByPart) {
  ProgramDriver program(after(demo_model("shade"), {SetMode{Mode::Work}, ShowWorkPanel{WorkPanel::Options}}), 1280,
                        720);
  const algebra::ClassNotation usual = class_notation(program.state());
  std::vector<algebra::ClassNotation> seen{usual};
  for (std::uint32_t row = 0; row < 4; ++row) {
    program.user().click(ids::work_notation.at(row));
    const algebra::ClassNotation now = class_notation(program.state());
    EXPECT_EQ(std::find(seen.begin(), seen.end(), now), seen.end()) << row << " changes nothing, or what another does";
    seen.push_back(now);
    program.user().click(ids::work_notation.at(row));
    EXPECT_EQ(class_notation(program.state()), usual) << row;
  }
}

}  // namespace
}  // namespace fw::panels::test::evening_test
