#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/forms_support.hpp"
#include "panels/ids.hpp"
#include "reasoning/blank.hpp"
#include "support/sanitized.hpp"

// Who gets a key: on every screen that has a field, after a click on anything that leaves the field there, what is
// typed stands in the field and nothing else happens.
namespace fw::panels::test::keyboard_test {
namespace {

using practice::AnswerForm;

struct FieldScreen {
  const char* title;
  WidgetId field;
  Model model;
  bool begins_in_it = true;  ///< the keyboard is in the field without a click
};

/// The first made-up item that is typed in this form.
Model typed_item(AnswerForm form, const std::string& skill = "") {
  for (std::uint64_t seed = 1; seed < 40; ++seed) {
    Model model = after(at_start(made_up(seed, Audience::Student, 3)), {StartQuiz{}});
    for (; model.state.in_item(); model = after(std::move(model), {StepItem{1}})) {
      const QuizItem& one = model.state.quiz.item();
      if (answer_form(one) == form && (skill.empty() || one.skill == skill)) {
        return model;
      }
    }
  }
  ADD_FAILURE() << "no such item";
  return at_start();
}

/// The problem worked out up to its first gap that is typed.
Model at_gap(const std::string& problem) {
  Model model = after(demo_model(problem), {SetMode{Mode::Work}, SetFade{Fade::All}});
  const WorkedProblem worked = worked_for(model.state);
  for (int i = 0; i < 40; ++i) {
    const Work& work = model.state.desk().work;
    const bool is_gap = work.reached > 0 && is_blank(work, worked, work.present) &&
                        reasoning::blank_kind(worked.step(work.present)) != reasoning::BlankKind::Words;
    if (is_gap) {
      return model;
    }
    model = after(std::move(model), {StepWork{1}});
  }
  ADD_FAILURE() << "no gap in " << problem;
  return model;
}

Model with(Model model, SidePanel panel) { return after(std::move(model), {ShowPanel{panel}}); }

std::vector<FieldScreen> screens() {
  const QuizSetup nets{Audience::Student, QuizSource::Nets, {}, 1, 1};
  Model replied = after(at_item("shade"), {AnswerTyped{"7 cm^2"}});
  Model lacks_unit = after(at_item("candle-box"), {AnswerTyped{"286"}});
  return {
      {"a number", ids::answer_field, at_item("shade")},
      {"a number, after a wrong one", ids::answer_field, std::move(replied)},
      {"a number that lacks its unit", ids::answer_field, std::move(lacks_unit)},
      {"a number, with a hint", ids::answer_field, after(at_item("crate"), {ShowHint{}})},
      {"a count", ids::answer_field, typed_item(AnswerForm::Count)},
      {"a name from a net", ids::answer_field, after(at_start(nets), {StartQuiz{}})},
      {"a name", ids::answer_field, typed_item(AnswerForm::Name)},
      {"a name from card", ids::answer_field, typed_item(AnswerForm::CutoutName)},
      {"a word problem", ids::answer_field, typed_item(AnswerForm::Number, "edging")},
      {"a gap", ids::work_field, at_gap("shade")},
      {"a gap in a word problem", ids::work_field, at_gap("tent")},
      {"measures", ids::measure_field.at(0), with(demo_model("shade"), SidePanel::Measures), false},
      {"measures of a box", ids::measure_field.at(1), with(demo_model("crate"), SidePanel::Measures), false},
  };
}

/// What typing must leave alone; a measure that is being changed is no such thing.
std::string aside_from_typing(const Model& model) {
  const State& state = model.state;
  std::string text = std::to_string(static_cast<int>(state.mode)) + (model.view.blank ? " blank" : "") + " problem " +
                     std::to_string(state.problem) + " fold " + std::to_string(model.view.fold);
  if (state.in_item()) {
    const ItemWork& work = state.quiz.work();
    text += " item " + std::to_string(state.quiz.number) + " hints " + std::to_string(work.hints) +
            (work.done ? " done" : "") + (work.solution_shown ? " solved" : "") + " replies " +
            std::to_string(work.replies.size());
  } else {
    const Desk& desk = state.desk();
    text += " counted " + std::to_string(desk.counted.size()) + " reached " + std::to_string(desk.work.reached) +
            " present " + std::to_string(desk.work.present) + " gaps " + std::to_string(desk.work.blanks.size()) +
            " panel " + std::to_string(static_cast<int>(model.view.panel));
    for (const FilledBlank& blank : desk.work.blanks) {
      text += blank.is_open ? " open" : " shut";
    }
  }
  return text;
}

bool is_clickable(const ItemRecord& item) {
  const bool is_widget = item.kind != ItemKind::Text && item.kind != ItemKind::Panel && item.kind != ItemKind::Sheet &&
                         item.kind != ItemKind::Scroll;
  const figures::Rect seen = figures::common_part(item.rect, item.clip);
  return is_widget && seen.w > 4 && seen.h > 4;
}

/// Places to click on: every widget, the bench in four corners and in the middle, and ground where nothing is.
std::vector<std::pair<std::string, figures::Vec2>> targets_of(ProgramDriver& program) {
  std::vector<std::pair<std::string, figures::Vec2>> targets;
  for (const ItemRecord& item : program.user().ui().items()) {
    if (!is_clickable(item)) {
      continue;
    }
    const figures::Rect seen = figures::common_part(item.rect, item.clip);
    const std::string name = std::string(item.id.name) + " " + std::to_string(item.id.item) + " " + item.text;
    targets.push_back({name, seen.center()});
    if (item.id == ids::bench) {
      for (const double share : {0.1, 0.3, 0.7, 0.9}) {
        targets.push_back({name, {seen.x + share * seen.w, seen.y + share * seen.h}});
      }
    }
  }
  targets.push_back({"the edge of the window", {2, 2}});
  return targets;
}

std::string field_text(ProgramDriver& program, WidgetId field) {
  return std::string(program.user().ui().field_text(field));
}

void click_everything(const FieldScreen& screen, figures::Vec2 size) {
  SCOPED_TRACE(screen.title);
  ProgramDriver program(screen.model, size.x, size.y);
  program.user().frames(3);
  if (!screen.begins_in_it) {
    program.user().click(screen.field);
  }
  ASSERT_EQ(program.user().ui().focus(), screen.field);
  const auto targets = targets_of(program);
  ASSERT_GT(targets.size(), 15U);
  std::size_t stayed = 0;
  const std::size_t apart = fw::test::cases(1, 8);
  for (std::size_t i = 0; i < targets.size(); i += apart) {
    const auto& [name, place] = targets[i];
    SCOPED_TRACE(name);
    program.show(at_start());
    program.show(screen.model);
    if (!screen.begins_in_it) {
      program.user().click(screen.field);
    }
    program.user().strike("1 ");
    program.user().click_at(place);
    program.user().frames(2);
    const ItemRecord* field = program.user().ui().item(screen.field);
    if (field == nullptr || field->layer != 0 || program.model().view.keys_shown ||
        program.model().view.progress.shown || program.model().view.print.shown) {
      continue;  // it led elsewhere
    }
    ++stayed;
    const std::string before = aside_from_typing(program.model());
    const bool other_field = program.user().ui().focus() != screen.field;
    if (other_field) {  // a click into another field means that one
      const ItemRecord* other = program.user().ui().item(*program.user().ui().focus());
      ASSERT_TRUE(other != nullptr && other->kind == ItemKind::Field) << program.user().ui().focus()->name;
      continue;
    }
    program.user().strike("2.5 b");
    EXPECT_EQ(aside_from_typing(program.model()), before);
    const std::string typed = field_text(program, screen.field);
    ASSERT_GE(typed.size(), 5U) << typed;
    EXPECT_EQ(typed.substr(typed.size() - 5), "2.5 b");
  }
  EXPECT_GT(stayed, targets.size() / apart / 3);
}

TEST(Keyboard, IsInTheFieldWhateverIsClicked) {
  const std::vector<FieldScreen> all = screens();
  for (const std::size_t number : fw::test::some_of<std::size_t>({2, 10, 12}, 3)) {
    click_everything(all[number], {1280, 720});
  }
}

TEST(Keyboard, IsInTheFieldWhateverIsClickedOnEveryScreenSlow) {
  for (const FieldScreen& screen : screens()) {
    click_everything(screen, {1280, 720});
    click_everything(screen, {1024, 768});
    click_everything(screen, {800, 1000});
  }
}

TEST(Keyboard, KeepsWhatWasTypedThroughAHintAndEnterAnswersIt) {
  ProgramDriver program(at_item("shade"), 1280, 720);
  program.user().strike("4.5");
  program.user().click(ids::hint);
  program.user().click(ids::turn_left);
  program.user().strike(" ft");
  program.user().press(Key::Enter);
  ASSERT_EQ(item(program.model()).replies.size(), 1U);
  EXPECT_EQ(item(program.model()).replies.back().typed, "4.5 ft");
  EXPECT_EQ(item(program.model()).hints, 1U);
  EXPECT_FALSE(item(program.model()).solution_shown);
}

TEST(Keyboard, OkTakesWhatStandsInTheFieldHoweverLongItIsHeld) {
  ProgramDriver program(at_item("shade"), 1280, 720);
  program.user().strike("45 cm");
  const figures::Rect ok = program.user().rect(ids::answer_enter);
  program.user().drag_between(ok.center(), ok.center() + figures::Vec2{1, 1});
  ASSERT_EQ(item(program.model()).replies.size(), 1U);
  EXPECT_EQ(item(program.model()).replies.back().typed, "45 cm");
}

TEST(Keyboard, EnterInAGapFillsItAndRevealsNothing) {
  ProgramDriver program(at_gap("shade"), 1280, 720);
  const std::string before = aside_from_typing(program.model());
  program.user().click(ids::bench);
  program.user().press(Key::Enter);
  EXPECT_EQ(aside_from_typing(program.model()), before) << "an empty answer is none";
  program.user().click(ids::turn_left);
  program.user().strike("63");
  program.user().press(Key::Enter);
  ASSERT_EQ(program.state().desk().work.blanks.size(), 1U);
  EXPECT_EQ(program.state().desk().work.blanks.front().typed, "63");
  EXPECT_FALSE(program.state().desk().work.blanks.front().is_open);
}

TEST(Keyboard, WalksFromTheFieldByTabAndComesBackWithWhatIsTyped) {
  ProgramDriver program(at_item("shade"), 1280, 720);
  program.user().strike("12");
  program.user().press(Key::Tab);
  program.user().press(Key::Tab);
  ASSERT_NE(program.user().ui().focus(), ids::answer_field);
  program.user().strike("5");
  EXPECT_EQ(program.user().ui().focus(), ids::answer_field);
  EXPECT_EQ(field_text(program, ids::answer_field), "125");
}

TEST(Keyboard, ANewItemHasAnEmptyField) {
  ProgramDriver program(at_item("shade"), 1280, 720);
  program.user().strike("12");
  program.user().click(ids::item_next);
  ASSERT_EQ(program.user().ui().focus(), ids::answer_field);
  EXPECT_EQ(field_text(program, ids::answer_field), "");
}

TEST(Keyboard, WhatIsTypedAfterTheAnswerIsOutMovesNothing) {
  ProgramDriver program(after(at_item("shade"), {RevealAnswer{}}), 1280, 720);
  program.user().frames(3);
  ASSERT_EQ(program.user().ui().focus(), ids::go_on) << "Enter alone goes on";
  const std::string before = aside_from_typing(program.model());
  program.user().strike("1 512.5 cm b");
  program.user().press(Key::Enter);
  EXPECT_EQ(aside_from_typing(program.model()), before);
}

TEST(Keyboard, EscapeInAnAnswerFieldFirstGivesBackTheTextAndThenClosesWhatIsOpen) {
  ProgramDriver program(after(at_item("shade"), {SetPresenting{true}}), 1280, 720);
  program.user().strike("12");
  program.user().press(Key::Escape);
  EXPECT_EQ(field_text(program, ids::answer_field), "");
  EXPECT_TRUE(program.model().view.presenting);
  program.user().press(Key::Escape);
  EXPECT_FALSE(program.model().view.presenting);
  EXPECT_EQ(program.user().ui().focus(), ids::answer_field);
}

TEST(Keyboard, LeavesAMeasureThatWasEnteredWithTheNextClick) {
  ProgramDriver program(with(demo_model("shade"), SidePanel::Measures), 1280, 720);
  program.user().type_into(ids::measure_field.at(0), "7");
  program.user().press(Key::Enter);
  program.user().click(ids::turn_left);
  program.user().press(Key::B);
  EXPECT_TRUE(program.model().view.blank) << "a teacher can blank the screen again";
}

}  // namespace
}  // namespace fw::panels::test::keyboard_test
