#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "support/sanitized.hpp"

// A user's tasks in the mode "Work it out", by mouse and by keyboard.
namespace fw::panels::test::work_task_test {
namespace {

using testing::HasSubstr;

const Work& work(const ProgramDriver& program) { return program.state().desk().work; }

Model working(const std::string& problem, const std::vector<Command>& commands = {}) {
  return after(after(demo_model(problem), {SetMode{Mode::Work}}), commands);
}

/// Presses the remote's forward key until this many steps are shown.
void reach(ProgramDriver& program, std::size_t steps) {
  for (int i = 0; i < 60 && work(program).reached < steps; ++i) {
    program.user().press(Key::PageDown);
  }
}

/// The last step of work that a gap can be put into; the answer after it only says the same again.
std::size_t last_gap(const WorkedProblem& worked) {
  std::size_t found = 0;
  for (std::size_t i = 0; i < worked.parts.front().steps.size(); ++i) {
    const reasoning::Step& step = worked.step(i);
    const bool is_answer = step.kind == reasoning::StepKind::Answer || step.kind == reasoning::StepKind::Check;
    found = step.outcome && step.outcome->unit && step.line && !is_answer ? i : found;
  }
  return found;
}

std::string number_of(const reasoning::Step& step) { return exact::shown(step.outcome->amount, 6).text; }

TEST(WorkTask, OpenTheModeAndGoThroughTheStepsFromTheRemote) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().click(ids::modes.at(1));
  ASSERT_EQ(program.state().mode, Mode::Work);
  EXPECT_TRUE(program.user().shows_text("A lampshade is a square pyramid"));
  const std::size_t count = worked_for(program.state()).count;
  reach(program, count);
  EXPECT_EQ(work(program).reached, count);
  EXPECT_TRUE(program.user().shows_text("360 cm²"));
  program.user().press(Key::PageUp);
  EXPECT_EQ(work(program).reached, count - 1);
}

// The short way: its lines open by a click and by a key, and the switch goes back to every step.
TEST(WorkTask, ReadTheBoardAndOpenALine) {
  ProgramDriver program(working("shade"), 1280, 720);
  program.user().click(ids::work_detail);
  program.user().click(ids::work_all);
  EXPECT_TRUE(program.user().shows_text("The base and the 4 triangles make up the surface."));
  const WorkedProblem worked = worked_for(program.state());
  const std::string step = said(worked.step(worked.board.lines[1].steps.front()).reason);
  EXPECT_FALSE(program.user().shows_text(step));
  program.user().click(ids::work_line.at(1));
  EXPECT_TRUE(program.user().shows_text(step));
  program.user().press(Key::O);
  EXPECT_FALSE(program.user().shows_text(step)) << "the key closes the line that is spoken of";
  program.user().press(Key::D);
  EXPECT_TRUE(program.user().shows_text(said(worked.step(0).reason)));
}

TEST(WorkTask, GoForwardAndBackWithTheButtons) {
  ProgramDriver program(working("crate"), 1280, 720);
  program.user().click(ids::work_forward);
  program.user().click(ids::work_forward);
  EXPECT_EQ(work(program).reached, 2U);
  program.user().click(ids::work_back);
  EXPECT_EQ(work(program).reached, 1U);
}

TEST(WorkTask, WhatIsHiddenIsNotOnTheScreen) {
  ProgramDriver program(working("shade"), 1280, 720);
  program.user().frames(2);
  EXPECT_FALSE(program.user().shows_text("360"));
  program.user().press(Key::A);
  EXPECT_EQ(work(program).reached, worked_for(program.state()).count);
  program.user().press(Key::End);
  program.user().frames(1);
  EXPECT_TRUE(program.user().shows_text("360"));
  program.user().press(Key::A, with_shift);
  EXPECT_FALSE(program.user().shows_text("360"));
}

TEST(WorkTask, ThePresentStepIsInViewSlow) {
  for (const char* problem : {"shade", "counter", "planter"}) {
    ProgramDriver program(working(problem), 1280, 720);
    const std::size_t count = worked_for(program.state()).count;
    for (std::size_t step = 1; step <= count; ++step) {
      reach(program, step);
      program.user().frames(2);
      const ItemRecord& card = program.user().item(ids::work_step.at(step - 1));
      const figures::Rect seen = figures::common_part(card.rect, card.clip);
      EXPECT_GE(seen.h + 1, std::min(card.rect.h, card.clip.h)) << problem << ", step " << step;
    }
  }
}

TEST(WorkTask, AStudentFillsAGap) {
  ProgramDriver program(working("shade"), 1280, 720);
  const WorkedProblem worked = worked_for(program.state());
  const std::size_t step = last_gap(worked);
  reach(program, step + 1);
  program.user().press(Key::G);
  ASSERT_TRUE(is_blank(work(program), worked, step));
  program.user().frames(2);
  EXPECT_EQ(program.user().ui().focus(), ids::work_field) << "typing goes into the gap";
  EXPECT_FALSE(program.user().shows_text("= " + number_of(worked.step(step)) + " cm²"));

  program.user().type_into(ids::work_field, "17 cm^2");
  program.user().press(Key::Enter);
  EXPECT_TRUE(is_blank(work(program), worked, step));
  EXPECT_TRUE(program.user().shows_text("Not yet."));

  program.user().type_into(ids::work_field, number_of(worked.step(step)));
  program.user().press(Key::Enter);
  EXPECT_TRUE(is_blank(work(program), worked, step));
  EXPECT_TRUE(program.user().shows_text("unit"));

  program.user().type_into(ids::work_field, number_of(worked.step(step)) + " cm^2");
  program.user().click(ids::work_enter);
  EXPECT_FALSE(is_blank(work(program), worked, step));
  EXPECT_TRUE(program.user().shows_text("Right."));
}

TEST(WorkTask, TheTeacherPutsGapsIntoAllStepsAndShowsOne) {
  ProgramDriver program(working("shade"), 1280, 720);
  program.user().click(ids::work_tabs.at(2));
  program.user().click(ids::work_fade.at(2));
  EXPECT_EQ(work(program).fade, Fade::All);
  program.user().click(ids::work_tabs.at(0));
  const WorkedProblem worked = worked_for(program.state());
  const std::size_t step = last_gap(worked);
  reach(program, step + 1);
  ASSERT_TRUE(is_blank(work(program), worked, step));
  program.user().frames(1);
  EXPECT_EQ(program.user().item(ids::work_forward).text, "show what goes here");
  program.user().click(ids::work_forward);
  EXPECT_FALSE(is_blank(work(program), worked, step));
}

TEST(WorkTask, AskForAnotherMeasureByOneClick) {
  ProgramDriver program(working("shade"), 1280, 720);
  program.user().click(ids::work_tabs.at(1));
  const std::vector<reasoning::Askable> list = worked_for(program.state()).askable;
  for (std::size_t i = 0; i < list.size(); ++i) {
    if (list[i].name == "volume") {
      program.user().click(ids::ask_measure.at(i));
    }
  }
  EXPECT_EQ(work(program).asked, "volume");
  EXPECT_EQ(program.model().view.work_panel, WorkPanel::Steps);
  program.user().press(Key::Z, with_control);
  EXPECT_EQ(work(program).asked, "");
}

TEST(WorkTask, WhatIsMissingIsSaidAndCanBeGiven) {
  ProgramDriver program(working("shade", {ShowWorkPanel{WorkPanel::Ask}, AskFor{"slant_height", std::nullopt}}), 1280,
                        720);
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("something is missing"));
  program.user().click(ids::give_measure);
  EXPECT_TRUE(work(program).instead.has_value());
  EXPECT_GT(worked_for(program.state()).count, 0U);
}

TEST(WorkTask, AskWhereANumberComesFromByPointerAndByKey) {
  ProgramDriver program(working("shade", {LastStep{}}), 1280, 720);
  const WorkedProblem worked = worked_for(program.state());
  while (!worked.step(work(program).present).line || sources_in(*worked.step(work(program).present).line).empty()) {
    program.user().press(Key::PageUp);
  }
  program.user().press(Key::W);
  ASSERT_TRUE(program.model().view.pointed.has_value());
  program.user().frames(1);
  const std::string sentence = said(pointed_source(program.model(), worked)->sentence);
  EXPECT_TRUE(program.user().shows_text(sentence));
  program.user().press(Key::Escape);
  EXPECT_FALSE(program.model().view.pointed.has_value());
  const std::size_t present = work(program).present;
  program.user().click(ids::work_number.at(present * 64));
  EXPECT_EQ(program.model().view.pointed, (NumberPlace{present, 0}));
}

TEST(WorkTask, NumbersOnTheScreenStandInTheOrderThatTheKeyStepsThrough) {
  for (const char* problem : fw::test::some_of<const char*>({"shade", "tent", "wax", "star-point"}, 4)) {
    ProgramDriver program(working(problem, {ShowSteps{true}}), 1920, 1080);
    const WorkedProblem worked = worked_for(program.state());
    for (std::size_t i = 0; i < worked.count; ++i) {
      program.give(SelectStep{i});
      const std::size_t count = worked.step(i).line ? sources_in(*worked.step(i).line).size() : 0;
      std::size_t drawn = 0;
      while (program.user().shows(ids::work_number.at(i * 64 + drawn))) {
        ++drawn;
      }
      EXPECT_EQ(drawn, count) << problem << ", step " << i;
    }
  }
}

TEST(WorkTask, DecideBeforeAnyNumberIsShown) {
  ProgramDriver program(working("tent"), 1280, 720);
  program.user().click(ids::decision.at(1));
  EXPECT_FALSE(work(program).decided);
  EXPECT_TRUE(program.user().shows_text("Read again"));
  program.user().press(Key::Digit1);
  EXPECT_TRUE(work(program).decided);
  EXPECT_TRUE(program.user().shows_text("Yes: cover."));
  EXPECT_EQ(work(program).reached, 0U);
  program.user().press(Key::PageDown);
  EXPECT_EQ(work(program).reached, 1U);
}

TEST(WorkTask, ThePresentStepsFacesAreOutlinedAndTheOthersCalm) {
  ProgramDriver program(working("shade", {ShowSteps{true}}), 1280, 720);
  const WorkedProblem worked = worked_for(program.state());
  bool seen = false;
  for (std::size_t i = 0; i < worked.count; ++i) {
    const std::vector<FaceId>& faces = worked.step(i).faces;
    if (faces.empty() || faces.size() == worked.solid->faces().size()) {
      continue;
    }
    program.give(SelectStep{i});
    seen = true;
    const auto& looks = program.frame().picture.look.looks;
    for (std::size_t face = 0; face < looks.size(); ++face) {
      const bool spoken = std::find(faces.begin(), faces.end(), FaceId::at(face)) != faces.end();
      EXPECT_EQ(looks[face].outline.has_value(), spoken) << "step " << i << ", face " << face + 1;
    }
  }
  EXPECT_TRUE(seen);
}

TEST(WorkTask, FacesThatDoNotCountAreOutlines) {
  ProgramDriver program(working("counter", {ShowSteps{true}}), 1280, 720);
  program.user().frames(1);
  const std::vector<FaceId> open = open_on_desk(program.state());
  ASSERT_EQ(open.size(), 1U);
  EXPECT_EQ(program.frame().picture.look.looks[open.front().index()].fill.a, 0.0F);
}

TEST(WorkTask, TheNumberThatIsAskedForIsNotOnTheBenchBeforeItIsFound) {
  ProgramDriver program(working("spire"), 1280, 720);
  const auto labels = [&program] {
    std::string all;
    for (const BenchLabel& label : program.frame().picture.labels) {
      all += label.text + ";";
    }
    return all;
  };
  program.user().frames(1);
  EXPECT_THAT(labels(), HasSubstr("?"));
  EXPECT_THAT(labels(), testing::Not(HasSubstr("12 ft")));
  program.give(LastStep{});
  EXPECT_THAT(labels(), HasSubstr("12 ft")) << "3 · 400 ÷ 100, worked by hand";
}

TEST(WorkTask, EverythingIsReachedByTheKeyboard) {
  ProgramDriver program(working("shade", {ShowSteps{true}}), 1280, 720);
  std::size_t step = 1;
  const WorkedProblem worked = worked_for(program.state());
  while (!worked.step(step).outcome || !worked.step(step).line || sources_in(*worked.step(step).line).empty()) {
    ++step;
  }
  program.give(SelectStep{step});
  std::vector<std::string_view> reached;
  for (int i = 0; i < 60; ++i) {
    program.user().press(Key::Tab);
    if (program.user().ui().focus()) {
      reached.push_back(program.user().ui().focus()->name);
    }
  }
  for (const WidgetId id : {ids::modes, ids::work_tabs, ids::work_back, ids::work_all, ids::work_gap, ids::work_origin,
                            ids::work_forward}) {
    EXPECT_NE(std::find(reached.begin(), reached.end(), id.name), reached.end()) << id.name;
  }
}

}  // namespace
}  // namespace fw::panels::test::work_task_test
