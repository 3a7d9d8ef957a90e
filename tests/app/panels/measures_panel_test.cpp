#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"

// Changing the solid by hand: fields, refusals, the shelf.
namespace fw::panels::test::measures_panel_test {

namespace {

Model at_measures(const std::string& problem) { return after(demo_model(problem), {ShowPanel{SidePanel::Measures}}); }

// A number that is cut off reads as another.
TEST(MeasuresPanel, AFieldShowsAllOfItsNumber) {
  ProgramDriver program(after(at_measures("candle-box"), {SetMeasure{"length", "12 3/4", false}}), 1280, 720);
  program.user().frames(2);
  const ItemRecord& field = program.user().item(ids::measure_field.at(0));
  ASSERT_EQ(program.frame().picture.labels.front().text, "12 3/4 in");
  EXPECT_GE(field.rect.w, program.user().ui().text_width("12 3/4") + 0.7 * program.user().ui().sizes().label);
}

TEST(MeasuresPanel, AClickIntoAFieldSelectsItsNumber) {
  ProgramDriver program(at_measures("candle-box"), 1280, 720);
  program.user().frames(2);
  program.user().click(ids::measure_field.at(0));
  program.user().type("8");
  program.user().press(Key::Enter);
  EXPECT_EQ(program.frame().picture.labels.front().text, "8 in");
}

TEST(MeasuresPanel, OneEscClosesTheRefusal) {
  ProgramDriver program(at_measures("shade"), 1280, 720);
  program.user().frames(2);
  program.user().click(ids::measure_field.at(1));
  program.user().type("1");
  program.user().press(Key::Enter);
  ASSERT_TRUE(program.model().view.notice.has_value());
  program.user().press(Key::Escape);
  EXPECT_FALSE(program.model().view.notice.has_value());
}

TEST(ShelfPanel, TheWordsOfTheProblemGoWithItsSolid) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  program.user().frames(2);
  ASSERT_TRUE(program.user().shows_text("A candle box"));
  program.give(PutOnBench{solids::shelf().back()});
  EXPECT_FALSE(program.user().shows_text("A candle box"));
}

// What is refused is told beside the count too, where H and a drag are used.
TEST(NoticePanel, TellsOfAFaceThatCannotMove) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  program.user().press(Key::H);
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("Lift out a face first"));
  program.user().click(ids::dismiss_notice);
  EXPECT_FALSE(program.user().shows_text("Lift out a face first"));
}

}  // namespace
}  // namespace fw::panels::test::measures_panel_test
