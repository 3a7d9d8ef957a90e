#pragma once

#include <vector>

#include "state/command.hpp"
#include "state/history.hpp"

namespace fw::state {

/// What the world outside must do after a command.
enum class Effect {
  SaveSettings,
  SavePlace,
  EnterFullScreen,
  LeaveFullScreen,
  ExportProgress,
  EraseProgress,
  SavePrint,
  SaveAsPage
};

/// Everything the window shows: the state, the way it is looked at, and the way back.
struct Model {
  State state;
  View view;
  History history;
  friend bool operator==(const Model&, const Model&) = default;
};

struct Outcome {
  Model model;
  std::vector<Effect> effects;
  bool changed = false;  ///< the state, or how it is looked at
};

/// The model after a command. Pure: no clock, no file, no window.
[[nodiscard]] Outcome apply(Model model, const Command& command);

/// Whether time must pass for what is shown to come to rest (a fold under way, pages being made).
[[nodiscard]] bool is_moving(const View& view);

}  // namespace fw::state
