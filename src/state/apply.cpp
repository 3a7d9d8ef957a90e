#include "state/apply.hpp"

#include <optional>
#include <utility>

namespace fw::state {
namespace {

/// Commands with the same key, one after another, are one step of undo.
std::string merge_key(const Command& command) {
  if (const auto* set = command.as<SetMeasure>(); set != nullptr && set->by_slider) {
    return "measure " + set->field;
  }
  return {};
}

/// The program fills the screen: set so, or for as long as it is presented.
bool fills_screen(const View& view) { return view.settings.full_screen || view.presenting; }

std::vector<Effect> effects_between(const Model& before, const Model& after, bool state_changed) {
  std::vector<Effect> effects;
  if (!(before.view.settings == after.view.settings)) {
    effects.push_back(Effect::SaveSettings);
  }
  if (fills_screen(before.view) != fills_screen(after.view)) {
    effects.push_back(fills_screen(after.view) ? Effect::EnterFullScreen : Effect::LeaveFullScreen);
  }
  if (state_changed) {
    effects.push_back(Effect::SavePlace);
  }
  return effects;
}

/// What a command asks of the world outside, without a change of the model that would tell it.
std::optional<Effect> asked_outside(const Model& before, const Command& command) {
  if (command.as<ExportProgress>() != nullptr) {
    return Effect::ExportProgress;
  }
  if (command.as<SavePrint>() != nullptr) {
    return Effect::SavePrint;
  }
  if (command.as<SaveAsPage>() != nullptr) {
    return Effect::SaveAsPage;
  }
  const auto* erase = command.as<EraseProgress>();
  const bool is_sure = erase != nullptr && erase->sure && before.view.progress.asks;
  return is_sure ? std::optional(Effect::EraseProgress) : std::nullopt;
}

/// What the view remembers of a solid is void when another one stands there.
void mend_view(const Model& before, Model& after) {
  const bool in_quiz = before.state.mode == Mode::Quiz || after.state.mode == Mode::Quiz;
  const bool same_mode = before.state.mode == after.state.mode || !in_quiz;
  const bool same_place = before.state.problem == after.state.problem && same_mode &&
                          before.state.quiz.number == after.state.quiz.number &&
                          before.state.quiz.set == after.state.quiz.set;
  const std::size_t faces = after.state.desk().solid.faces().size();
  const bool same_faces = faces == before.state.desk().solid.faces().size();
  if (!same_place || !(before.state.desk().work == after.state.desk().work)) {
    after.view.pointed.reset();
  }
  const bool same_bench = shows_cutouts(before.state) == shows_cutouts(after.state);
  if (!same_place || !same_faces || !same_bench) {
    after.view.hovered.reset();
    after.view.dragged.reset();
    after.view.motion = Motion::Still;
    after.view.fold = lies_flat(after.state) ? 1.0 : 0.0;
  }
}

}  // namespace

Outcome apply(Model model, const Command& command) {
  const Model before{model.state, model.view, {}};  // the way back is long, and nothing looks at it here
  std::string step = command.change(model);
  const bool state_changed = !(before.state == model.state);
  if (!step.empty() && state_changed) {
    model.history.record(before.state, std::move(step), merge_key(command));
  }
  mend_view(before, model);
  std::vector<Effect> effects = effects_between(before, model, state_changed);
  if (const auto effect = asked_outside(before, command)) {
    effects.push_back(*effect);
  }
  const bool changed = state_changed || !(before.view == model.view);
  return {std::move(model), std::move(effects), changed};
}

bool is_moving(const View& view) { return (view.motion != Motion::Still || view.print.is_making()) && !view.blank; }

}  // namespace fw::state
