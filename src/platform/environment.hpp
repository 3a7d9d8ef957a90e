#pragma once

#include <optional>
#include <string>

namespace fw::platform {

/// The value of an environment variable; nothing when it is not set or empty.
[[nodiscard]] std::optional<std::string> environment_variable(const char* name);

/// The language that the environment asks for, "en_US"; from LC_ALL, LC_MESSAGES, LANG in this order, as POSIX
/// has it; nothing for "C" and "POSIX".
[[nodiscard]] std::optional<std::string> environment_language();

/// Whether somebody watches what goes to the standard error stream.
[[nodiscard]] bool errors_go_to_a_terminal();

}  // namespace fw::platform
