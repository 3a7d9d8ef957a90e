#pragma once

#include <string>
#include <string_view>

#include "base/result.hpp"
#include "state/state.hpp"
#include "state/view.hpp"

namespace fw::state {

/// Settings as the text of a file, and back.
/// Errors: a sentence when the text is no settings file; unknown entries of later versions are passed over.
[[nodiscard]] std::string settings_text(const Settings& settings);
[[nodiscard]] Result<Settings, std::string> read_settings(std::string_view text);

/// Where the lesson was left: the problem in view, changed measures, the faces counted. No names, no answers.
[[nodiscard]] std::string place_text(const State& state);
/// The state of a freshly opened lesson, brought back to where it was left. The same state when the text
/// belongs to another lesson.
/// Errors: a sentence when the text is damaged.
[[nodiscard]] Result<State, std::string> at_place(State fresh, std::string_view text);

}  // namespace fw::state
