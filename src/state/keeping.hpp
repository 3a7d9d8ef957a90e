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
/// `kept`: the text of the file as it lies there, or empty; the places of other lessons in it are kept, thirty in all.
[[nodiscard]] std::string place_text(const State& state, std::string_view kept);
/// The state of a freshly opened lesson, brought back to where it was left. A lesson is known by its text, so that its
/// file may be renamed or have none; one whose text was changed is known by its file and title. The same state when no
/// place in the text is this lesson's.
/// Errors: a sentence when the text is damaged.
[[nodiscard]] Result<State, std::string> at_place(State fresh, std::string_view text);

}  // namespace fw::state
