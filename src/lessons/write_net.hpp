#pragma once

#include <string>

#include "lessons/net_task.hpp"

// A part of the writer; private to the room.
namespace fw::lessons {

/// The value of the key "net" as JSON text; cut-outs to choose from stand on lines of their own.
[[nodiscard]] std::string net_text(const NetTask& task);

/// As a number where JSON has a number of that form, so that nothing of what was written is lost.
[[nodiscard]] std::string coordinate_text(const exact::Written& coordinate);

}  // namespace fw::lessons
