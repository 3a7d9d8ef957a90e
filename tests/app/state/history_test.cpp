#include <rapidcheck.h>

#include "app/state/model_support.hpp"
#include "state/keeping.hpp"

namespace fw::state::test::history_test {
namespace {

/// Any command that a user can give in Explore or Quiz, with arguments in and out of range.
rc::Gen<Command> any_command() {
  const auto face = rc::gen::map(rc::gen::inRange(0U, 9U), [](unsigned i) { return FaceId{i}; });
  const auto index = rc::gen::inRange<std::size_t>(0, 30);
  const auto number = rc::gen::map(rc::gen::inRange(1, 30), [](int n) { return std::to_string(n); });
  return rc::gen::oneOf(
      rc::gen::map(index, [](std::size_t i) { return Command(OpenProblem{i}); }),
      rc::gen::map(face, [](FaceId f) { return Command(CountFace{f}); }),
      rc::gen::map(face, [](FaceId f) { return Command(PickFace{f}); }), rc::gen::just(Command(CountNext{})),
      rc::gen::just(Command(UncountLast{})), rc::gen::just(Command(ClearCount{})), rc::gen::just(Command(StepNet{1})),
      rc::gen::just(Command(MovePicked{})),
      rc::gen::map(number,
                   [](const std::string& n) {
                     return Command(SetMeasure{"slant_height", n, false});
                   }),
      rc::gen::map(number,
                   [](const std::string& n) {
                     return Command(SetMeasure{"base.side", n, true});
                   }),
      rc::gen::just(Command(SetMode{Mode::Quiz})), rc::gen::just(Command(SetMode{Mode::Explore})),
      rc::gen::just(Command(StartQuiz{})), rc::gen::just(Command(StepQuiz{1})), rc::gen::just(Command(StepItem{-1})),
      rc::gen::just(Command(AnswerTyped{"cube"})), rc::gen::just(Command(RevealAnswer{})),
      rc::gen::just(Command(ShowTotal{true})), rc::gen::just(Command(SetGrouping{reasoning::Grouping::AlikeTogether})),
      rc::gen::just(Command(ResetProblem{})), rc::gen::just(Command(PlayFold{Motion::Opening})),
      rc::gen::just(Command(Tick{0.05})));
}

// A step of undo brings back the state before it. What is picked is no step of its own, and is looked past here.
State without_picks(State state) {
  for (std::optional<Desk>& desk : state.desks) {
    if (desk) {
      desk->picked.reset();
    }
  }
  return state;
}

TEST(History, UndoesEverythingAndRedoesEverything) {
  const bool held = rc::check("all commands, undone and done again", [] {
    const Model start = demo_model("shade");
    const auto commands = *rc::gen::resize(24, rc::gen::container<std::vector<Command>>(any_command()));
    Model model = after(start, commands);
    const Model end = model;
    while (model.history.can_undo()) {
      model = after(model, {Undo{}});
    }
    RC_ASSERT(without_picks(model.state) == without_picks(start.state));
    while (model.history.can_redo()) {
      model = after(model, {Redo{}});
    }
    RC_ASSERT(without_picks(model.state) == without_picks(end.state));
  });
  EXPECT_TRUE(held);
}

TEST(History, ANewStepEndsWhatCouldBeRedone) {
  Model model = after(demo_model("shade"), {CountNext{}, CountNext{}, Undo{}});
  EXPECT_TRUE(model.history.can_redo());
  model = after(model, {CountFace{FaceId{3}}});
  EXPECT_FALSE(model.history.can_redo());
}

}  // namespace
}  // namespace fw::state::test::history_test
