#include "app/state/model_support.hpp"
#include "reasoning/measures.hpp"
#include "support/sanitized.hpp"

namespace fw::state::test::measure_commands_test {
namespace {

// Whether the solid on the bench has a measure as it was typed.
bool holds(const Model& model, const std::string& field, const std::string& text) {
  for (const reasoning::EditableMeasure& measure :
       reasoning::editable_measures(model.state.desk().solid, model.state.current().solid)) {
    if (measure.field == field) {
      return measure.text == text;
    }
  }
  return false;
}

std::string surface(const Model& model) { return units::text(model.state.desk().solid.surface_area(), 2); }

TEST(Measures, ChangeTheSolidAndComeBack) {
  const Model changed = after(demo_model("shade"), {CountNext{}, SetMeasure{"slant_height", "14", false}});
  EXPECT_EQ(surface(changed), "380 cm²");
  EXPECT_EQ(changed.state.desk().counted.size(), 1U) << "the count goes on";
  EXPECT_EQ(changed.history.undo_text(), "set the slant height to 14");
  EXPECT_EQ(surface(after(changed, {Undo{}})), "360 cm²");
  EXPECT_EQ(surface(after(changed, {Undo{}, Redo{}})), "380 cm²");
  EXPECT_EQ(surface(after(changed, {ResetProblem{}})), "360 cm²");
}

TEST(Measures, AreRefusedWithTheReasonAndTheNearestThatCanBe) {
  const Model model = demo_model("shade");
  const Model refused = after(model, {SetMeasure{"slant_height", "4", false}});
  EXPECT_EQ(refused.state, model.state);
  ASSERT_TRUE(refused.view.notice.has_value());
  EXPECT_NE(refused.view.notice->text.find("slant height"), std::string::npos) << refused.view.notice->text;
  EXPECT_FALSE(refused.view.notice->remedy_text.empty());
  const Model taken = after(refused, {TakeRemedy{}});
  EXPECT_FALSE(taken.view.notice.has_value());
  EXPECT_FALSE(taken.state == model.state);
}

TEST(Measures, OfferAValueThatIsTakenWhateverWasTyped) {
  const Model model = demo_model();
  std::size_t offered = 0;
  for (std::size_t i = 0; i < model.state.lesson->problems.size(); i += fw::test::cases(1, 3)) {
    const Model open = after(model, {OpenProblem{i}});
    for (const reasoning::EditableMeasure& measure :
         reasoning::editable_measures(open.state.desk().solid, open.state.current().solid)) {
      for (const char* text : {"0.3", "1", "4.5", "7", "25", "1000"}) {
        const Model refused = after(open, {SetMeasure{measure.field, text, false}});
        if (!refused.view.notice || refused.view.notice->remedy_field.empty()) {
          continue;
        }
        ++offered;
        const std::string what = open.state.current().id + ": " + measure.field + " = " + text;
        Model taken = refused;
        std::vector<std::string> set{measure.field};
        for (int again = 0; again < 3 && taken.view.notice && !taken.view.notice->remedy_field.empty(); ++again) {
          set.push_back(taken.view.notice->remedy_field);
          taken = after(taken, {TakeRemedy{}});
        }
        const std::string last = taken.view.notice.value_or(Notice{}).text;
        EXPECT_TRUE(last.empty() || last.find("rounded number") != std::string::npos) << what << ": " << last;
        if (std::count(set.begin(), set.end(), measure.field) == 1) {
          EXPECT_TRUE(holds(taken, measure.field, text)) << what;
        }
      }
    }
  }
  EXPECT_GT(offered, fw::test::cases(50, 15));
}

TEST(Measures, ThatFitOnlyByRoundingAreTakenAndRemarkedOn) {
  const Model model = demo_model("bunting-tube");
  const Model rounded = after(model, {SetMeasure{"base.height", "7.79", false}});
  EXPECT_FALSE(rounded.state == model.state);
  ASSERT_TRUE(rounded.view.notice.has_value());
  EXPECT_NE(rounded.view.notice->text.find("7.79"), std::string::npos) << rounded.view.notice->text;
  const Model longer = after(model, {SetMeasure{"height", "21", false}});
  EXPECT_FALSE(longer.view.notice.has_value()) << "what the lesson itself rounds is no news";
}

TEST(Measures, RefuseWhatIsNoNumber) {
  const Model model = demo_model("shade");
  const Model refused = after(model, {SetMeasure{"slant_height", "tall", false}});
  EXPECT_EQ(refused.state, model.state);
  EXPECT_TRUE(refused.view.notice.has_value());
  EXPECT_EQ(after(model, {SetMeasure{"weight", "4", false}}).state, model.state);
}

TEST(Measures, OneDragOfASliderIsOneStepOfUndo) {
  Model model = demo_model("shade");
  for (const char* text : {"14", "15", "16"}) {
    model = after(model, {SetMeasure{"slant_height", text, true}});
  }
  EXPECT_EQ(surface(after(model, {Undo{}})), "360 cm²");
}

TEST(Measures, UnitsSwitchWithoutLoss) {
  const Model model = demo_model("shade");
  const auto choice = reasoning::units_to_choose(model.state.desk().solid.description());
  const auto millimeter = *units::Unit::find("mm");
  EXPECT_NE(std::find(choice.begin(), choice.end(), millimeter), choice.end());
  const Model switched = after(model, {SetUnit{millimeter}});
  EXPECT_EQ(surface(switched), "36,000 mm²");
  EXPECT_EQ(surface(after(switched, {SetUnit{units::Unit::centimeter()}})), "360 cm²");
}

TEST(Shelf, PutsEverySolidOnTheBench) {
  for (const solids::Description& description : fw::test::some_of(solids::shelf(), 5)) {
    const Model model = after(demo_model("shade"), {CountNext{}, PutOnBench{description}});
    EXPECT_EQ(model.state.desk().solid.description(), description);
    EXPECT_TRUE(model.state.desk().counted.empty());
    EXPECT_EQ(after(model, {Undo{}}).state.desk().counted.size(), 1U);
  }
}

}  // namespace
}  // namespace fw::state::test::measure_commands_test
