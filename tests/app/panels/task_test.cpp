#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"

// A user's tasks at the whole program, by mouse and by keyboard; what is checked is the state.
namespace fw::panels::test::task_test {
namespace {

std::string so_far(const ProgramDriver& program) {
  return units::text(
      reasoning::ledger(program.state().desk().solid, program.state().desk().counted, program.state().desk().grouping)
          .so_far,
      2);
}

TEST(Task, CountAllFacesWithTheButton) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  for (int i = 0; i < 5; ++i) {
    program.user().click(ids::lesson_on);
  }
  EXPECT_EQ(so_far(program), "360 cm²");
  EXPECT_TRUE(program.user().shows_text("360 cm²"));
}

TEST(Task, CountAllFacesFromTheRemote) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  for (int i = 0; i < 5; ++i) {
    program.user().press(Key::PageDown);
  }
  EXPECT_EQ(so_far(program), "360 cm²");
  program.user().press(Key::PageUp);
  EXPECT_EQ(so_far(program), "295 cm²");
}

// The whole of a problem with one button, which says what comes next.
TEST(Task, GoThroughAProblemWithOneButton) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.give(SetReducedMotion{true});
  std::vector<std::string> says;
  for (int i = 0; i < 30 && program.state().current().id == "shade"; ++i) {
    for (const char* text :
         {"count the first face", "count the next face", "show how many there are", "unfold it", "fold it up"}) {
      if (program.user().shows_text(text) && (says.empty() || says.back() != text)) {
        says.emplace_back(text);
      }
    }
    program.user().click(ids::lesson_on);
  }
  EXPECT_EQ(says, (std::vector<std::string>{"count the first face", "count the next face", "show how many there are",
                                            "unfold it", "fold it up"}));
  program.user().click(ids::lesson_back);
  EXPECT_EQ(program.state().current().id, "shade");
}

// A problem about how many faces there are adds no areas up; one about the volume starts with the volume.
TEST(Task, TheLedgerFollowsWhatIsAsked) {
  ProgramDriver counting(demo_model("window-star"), 1280, 720);
  counting.user().click(ids::lesson_on);
  EXPECT_TRUE(counting.user().shows_text("equilateral triangle"));
  EXPECT_FALSE(counting.user().shows_text("so far"));
  ProgramDriver filling(demo_model("sand-box"), 1280, 720);
  EXPECT_TRUE(filling.user().shows_text("show the volume"));
  EXPECT_TRUE(filling.user().shows_text("Volume"));
  EXPECT_FALSE(filling.user().shows_text("How many faces does it have? Say a number, then count."));
  filling.user().click(ids::lesson_on);
  EXPECT_TRUE(filling.user().shows_text("next problem"));
}

TEST(Task, TheNumberOfFacesIsNotGivenAwayBeforeTheClassSaysIt) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().click(ids::lesson_on);
  EXPECT_TRUE(program.user().shows_text("1 of ? faces"));
  program.user().click(ids::show_total);
  EXPECT_TRUE(program.user().shows_text("1 of 5 faces"));
}

TEST(Task, PickAFaceOnTheBench) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().click_at(program.place_of(FaceId{1}));
  EXPECT_EQ(program.state().desk().picked, FaceId{1});
  EXPECT_EQ(program.state().desk().counted, std::vector<FaceId>{FaceId{1}});
  EXPECT_TRUE(program.user().shows_text("10 cm × 13 cm ÷ 2 = 65 cm²"));
  program.user().press(Key::Escape);
  EXPECT_FALSE(program.state().desk().picked.has_value());
  EXPECT_EQ(program.state().desk().counted.size(), 1U) << "Esc loses nothing";
}

TEST(Task, PickAFaceByItsDigit) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().press(Key::Digit3);
  EXPECT_EQ(program.state().desk().picked, FaceId{2});
}

TEST(Task, UnfoldWithTheSliderAndFoldBackWithKeys) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().drag(ids::fold_slider, {0.02, 0.5}, {0.98, 0.5});
  EXPECT_GT(program.model().view.fold, 0.9);
  program.user().press(Key::F);
  program.user().press(Key::F);
  EXPECT_LE(program.model().view.fold, 0.55);
}

TEST(Task, DragAFaceToAnotherHinge) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.give(SetFold{1});
  const nets::HingeTree before = program.state().desk().net;
  program.user().drag_between(program.place_of(FaceId{1}), program.place_of(FaceId{2}));
  EXPECT_FALSE(program.state().desk().net == before);
  const auto edge = program.state().desk().solid.body().edge_between(FaceId{1}, FaceId{2});
  ASSERT_TRUE(edge.has_value());
  EXPECT_TRUE(program.state().desk().net.is_hinge(*edge));
  program.user().press(Key::Z, with_control);
  EXPECT_EQ(program.state().desk().net, before);
}

TEST(Task, TypeAMeasureAndTakeWhatCanBe) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.give(ShowPanel{SidePanel::Measures});
  program.user().type_into(ids::measure_field.at(1), "14.5");
  program.user().press(Key::Enter);
  EXPECT_EQ(units::text(program.state().desk().solid.surface_area(), 2), "390 cm²");
  program.user().type_into(ids::measure_field.at(1), "4");
  program.user().press(Key::Enter);
  ASSERT_TRUE(program.model().view.notice.has_value());
  EXPECT_EQ(units::text(program.state().desk().solid.surface_area(), 2), "390 cm²");
  program.user().click(ids::take_remedy);
  EXPECT_FALSE(program.model().view.notice.has_value());
  program.user().click(ids::undo);
  EXPECT_EQ(units::text(program.state().desk().solid.surface_area(), 2), "390 cm²");
}

TEST(Task, TakeASolidFromTheShelf) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.give(ShowPanel{SidePanel::Solids});
  program.user().click(ids::shelf_item.at(0));
  EXPECT_EQ(program.state().desk().solid.description(), solids::shelf().front());
}

TEST(Task, LettersTypedIntoAFieldAreNoShortcuts) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().click(ids::modes.at(2));
  program.user().click(ids::quiz_start);
  program.user().click(ids::answer_field);
  program.user().press(Key::B);
  EXPECT_FALSE(program.model().view.blank);
}

TEST(Task, BlankTheScreenAndComeBack) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  program.user().press(Key::PageDown);
  for (const Key key : {Key::B, Key::Period}) {
    program.user().press(key);
    EXPECT_TRUE(program.model().view.blank);
    program.user().press(key);
    EXPECT_FALSE(program.model().view.blank);
  }
  EXPECT_EQ(program.state().desk().counted.size(), 1U);
}

TEST(Task, EverythingIsReachedByTab) {
  ProgramDriver program(demo_model("shade"), 1280, 720);
  std::vector<std::string> reached;
  for (int i = 0; i < 120; ++i) {
    program.user().press(Key::Tab);
    if (const auto focus = program.user().ui().focus()) {
      reached.push_back(std::string(focus->name));
    }
  }
  for (const WidgetId id : {ids::modes, ids::fold_slider, ids::lesson_on, ids::net_next, ids::side_tabs,
                            ids::show_total, ids::turn_left, ids::problem}) {
    EXPECT_NE(std::find(reached.begin(), reached.end(), std::string(id.name)), reached.end()) << id.name;
  }
}

}  // namespace
}  // namespace fw::panels::test::task_test
