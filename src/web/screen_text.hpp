#pragma once

#include <string>

#include "ui/ui.hpp"

namespace fw::web {

/// What is on the screen, from the widgets' own records, as a JSON list in reading order:
/// {"at": 0, "id": "count_next", "item": 0, "kind": "button", "text": "...", "x": 0, "y": 0, "w": 0, "h": 0,
/// "seen": true, "share": 0, "on": true, "focused": false, "current": false}. Only what can be reached: with a sheet
/// open, the sheet. Units of the window. "at": its place in ui.items(); "seen": its middle is not scrolled away.
[[nodiscard]] std::string screen_text(const ui::Ui& ui);

}  // namespace fw::web
