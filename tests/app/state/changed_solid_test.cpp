#include "app/state/model_support.hpp"
#include "reasoning/measures.hpp"
#include "state/derived.hpp"
#include "state/worked.hpp"
#include "support/sanitized.hpp"

// Whatever a question asks of its own solid, somebody changes the solid's numbers on the bench and asks for the steps.
namespace fw::state::test::changed_solid_test {
namespace {

Model lesson_model(const std::string& name) {
  Model model;
  model.state = opened(tasks::read_lesson(platform::asset(name)).value(), "");
  return model;
}

TEST(ChangedSolid, IsWorkedOutWhateverTheProblemAsks) {
  const std::vector<const char*> values{"0.5", "3", "7.25", "40", "1001"};
  std::size_t changed = 0;
  for (const char* name : {"lantern_fair.json", "lantern_market.json", "candle_boxes.json", "lantern_nets.json"}) {
    const Model lesson = lesson_model(name);
    for (std::size_t i = 0; i < lesson.state.lesson->problems.size(); i += fw::test::cases(1, 3)) {
      const Model open = after(lesson, {OpenProblem{i}, SetMode{Mode::Work}, ShowSteps{true}});
      for (const reasoning::EditableMeasure& measure :
           reasoning::editable_measures(open.state.desk().solid, open.state.current().solid)) {
        for (std::size_t turn = 0; turn < fw::test::cases(values.size(), 1); ++turn) {
          const char* text = values[(i + turn) % values.size()];
          const Model model = after(open, {SetMeasure{measure.field, text, false}, ShowSteps{true}});
          if (model.state.desk().solid == open.state.desk().solid) {
            continue;
          }
          ++changed;
          DerivedMemo memo;
          EXPECT_TRUE(memo.of(model.state).worked) << open.state.current().id << ": " << measure.field << " = " << text;
        }
      }
    }
  }
  EXPECT_GT(changed, fw::test::cases(200, 15));
}

}  // namespace
}  // namespace fw::state::test::changed_solid_test
