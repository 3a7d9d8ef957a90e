#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "state/lesson_steps.hpp"
#include "support/sanitized.hpp"

// The ledger as a class sees it: all of it, nothing over another, the solid beside it as large as before.
namespace fw::panels::test::ledger_test {

namespace {

struct Size {
  double width, height;
};
constexpr Size projectors[] = {{1024, 768}, {1280, 720}, {1920, 1080}};

/// Whether a text is wholly inside of the list, where it can be read without scrolling.
bool is_in_sight(const ItemRecord& item) {
  return item.rect.y >= item.clip.y - 1 && item.rect.bottom() <= item.clip.bottom() + 1;
}

std::vector<Command> all_counted(std::size_t faces) {
  std::vector<Command> commands;
  for (std::size_t i = 0; i < faces; ++i) {
    commands.push_back(CountNext{});
  }
  commands.push_back(ShowTotal{true});
  return commands;
}

TEST(LedgerPanel, ShowsAllRowsOfABoxItsSurfaceAreaAndItsVolumeTogether) {
  for (const Size size : projectors) {
    for (const bool presents : {false, true}) {
      ProgramDriver program(after(demo_model("candle-box"), all_counted(6)), size.width, size.height);
      program.give(ShowVolume{true});
      program.give(SetPresenting{presents});
      const std::string where = std::to_string(static_cast<int>(size.width)) + (presents ? ", presenting" : "");
      std::size_t rows = 0;
      for (const ItemRecord& item : program.user().ui().items()) {
        if (item.id.name == ids::ledger_row.name) {
          ++rows;
          EXPECT_TRUE(is_in_sight(item)) << where << ", row " << rows;
        }
      }
      EXPECT_EQ(rows, 6U) << where;
      EXPECT_TRUE(program.user().shows_text("286 in")) << where;
      EXPECT_TRUE(program.user().shows_text("V = 315 in")) << where;
    }
  }
}

// The card opens where the row of the face is: on the bench nothing moves.
TEST(LedgerPanel, TheSolidStaysAsItIsWhenAFaceIsLiftedOut) {
  for (const Size size : projectors) {
    ProgramDriver program(demo_model("shade"), size.width, size.height);
    const BenchPicture before = program.frame().picture;
    program.give(CountNext{});
    ASSERT_TRUE(program.user().shows(ids::card_close));
    const BenchPicture& now = program.frame().picture;
    EXPECT_EQ(now.camera, before.camera);
    EXPECT_EQ(now.viewport, before.viewport);
    EXPECT_TRUE(is_in_sight(program.user().item(ids::card_close)));
    EXPECT_TRUE(is_in_sight(program.user().item(ids::ledger_row.at(program.state().desk().picked->index()))));
  }
}

// Texts of any length: each solid of the shelf with short and long numbers, at each stage of its count.
TEST(SlowLedgerPanel, NothingIsWrittenOverAnother) {
  for (const Size size : {Size{1024, 768}, Size{1280, 720}}) {
    ProgramDriver program(demo_model("candle-box"), size.width, size.height);
    for (const solids::Description& shelf : solids::shelf()) {
      const Model start = after(demo_model("candle-box"), {PutOnBench{shelf}});
      for (const char* long_number : {"", "98765.432"}) {
        for (const auto grouping : {reasoning::Grouping::EachFace, reasoning::Grouping::AlikeTogether}) {
          Model model = after(start, {SetGrouping{grouping}});
          for (const auto& measure :
               reasoning::editable_measures(start.state.desk().solid, start.state.current().solid)) {
            model = *long_number == '\0' ? model : after(model, {SetMeasure{measure.field, long_number, false}});
          }
          for (const std::size_t count : {std::size_t{1}, model.state.desk().solid.faces().size()}) {
            program.show(after(model, all_counted(count)));
            for (const std::string& fault : program.user().layout_faults()) {
              ADD_FAILURE() << model.state.desk().solid.name() << " " << long_number << ", " << size.width << ": "
                            << fault;
            }
          }
        }
      }
    }
  }
}

// A face whose area is no product says what it is, and not its area twice.
TEST(LedgerPanel, NamesAFaceThatHasNoProduct) {
  ProgramDriver program(after(demo_model("counter"), all_counted(8)), 1280, 720);
  program.user().frames(2);
  EXPECT_TRUE(program.user().shows_text("area of the hexagon"));
}

// The volume of some solids is a number alone, without a formula that is taught.
TEST(LedgerPanel, ShowsTheVolumeOfEverySolidOfTheShelf) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  for (const solids::Description& shelf : fw::test::some_of(solids::shelf(), 5)) {
    program.show(after(demo_model("candle-box"), {PutOnBench{shelf}, ShowVolume{true}}));
    const units::Volume volume = program.state().desk().solid.volume();
    EXPECT_TRUE(program.user().shows_text(units::text(volume, places))) << program.state().desk().solid.name();
  }
}

TEST(LedgerPanel, CountsEverySolidOfTheShelfInEightPressesAtMost) {
  for (const solids::Description& shelf : solids::shelf()) {
    Model model = after(demo_model("candle-box"), {PutOnBench{shelf}});
    std::size_t presses = 0;
    while (next_lesson_step(model) == LessonStep::CountFace) {
      model = after(std::move(model), {StepLesson{1}});
      ++presses;
    }
    EXPECT_LE(presses, 8U) << model.state.desk().solid.name();
    EXPECT_EQ(model.state.desk().counted.size(), model.state.desk().solid.faces().size());
  }
}

}  // namespace
}  // namespace fw::panels::test::ledger_test
