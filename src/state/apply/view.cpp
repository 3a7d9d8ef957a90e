#include <algorithm>
#include <cmath>

#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {
constexpr double full_turn = 6.283185307179586;
constexpr double tilt_most = 1.6;
constexpr double nearness_least = 0.4;
constexpr double nearness_most = 4.0;
}  // namespace

std::string on(Model& model, const Orbit& command) {
  model.view.turn = std::remainder(model.view.turn + command.turn_rad, full_turn);
  model.view.tilt = std::clamp(model.view.tilt + command.tilt_rad, -tilt_most, tilt_most);
  return {};
}

std::string on(Model& model, const Zoom& command) {
  model.view.nearness = std::clamp(model.view.nearness * command.factor, nearness_least, nearness_most);
  return {};
}

std::string on(Model& model, const FitView&) {
  model.view.turn = 0;
  model.view.tilt = 0;
  model.view.nearness = 1;
  return {};
}

std::string on(Model& model, const ShowPanel& command) {
  model.view.panel = command.panel;
  return {};
}

std::string on(Model& model, const SetTheme& command) {
  model.view.settings.theme = command.theme;
  return {};
}

std::string on(Model& model, const SetReducedMotion& command) {
  model.view.settings.reduced_motion = command.on;
  model.view.motion = Motion::Still;
  return {};
}

std::string on(Model& model, const SetPlaySpeed& command) {
  model.view.settings.speed = command.speed;
  return {};
}

std::string on(Model& model, const SetLetterKeys& command) {
  model.view.settings.letter_keys = command.on;
  return {};
}

std::string on(Model& model, const SetFullScreen& command) {
  model.view.settings.full_screen = command.on;
  return {};
}

std::string on(Model& model, const SetPresenting& command) {
  model.view.presenting = command.on;
  if (command.on) {
    model.view.panel = SidePanel::Faces;
  }
  return {};
}

std::string on(Model& model, const SetRail& command) {
  model.view.rail_open = command.open;
  return {};
}

std::string on(Model& model, const SetBlank& command) {
  model.view.blank = command.on;
  return {};
}

std::string on(Model& model, const ShowKeys& command) {
  model.view.keys_shown = command.on;
  model.view.progress.shown = model.view.progress.shown && !command.on;  // one page at a time
  model.view.print.shown = model.view.print.shown && !command.on;
  return {};
}

std::string on(Model& model, const ShowPrompt& command) {
  model.view.prompt_shown = command.on;
  return {};
}

std::string on(Model& model, const ShowHiddenNumbers& command) {
  model.view.hidden_numbers = command.on;
  return {};
}

std::string on(Model& model, const Hover& command) {
  if (!command.face || exists(desk(model), *command.face)) {
    model.view.hovered = command.face;
  }
  return {};
}

}  // namespace fw::state::handlers
