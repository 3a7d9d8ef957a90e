#include "platform/environment.hpp"

#include <array>
#include <cstdlib>

#include <unistd.h>

namespace fw::platform {

std::optional<std::string> environment_variable(const char* name) {
  const char* value = std::getenv(name);
  if (value == nullptr || *value == '\0') return std::nullopt;
  return std::string(value);
}

std::optional<std::string> environment_language() {
  for (const char* name : std::array{"LC_ALL", "LC_MESSAGES", "LANG"}) {
    const auto value = environment_variable(name);
    if (!value) continue;
    const std::string language = value->substr(0, value->find_first_of(".@"));
    if (language == "C" || language == "POSIX" || language.empty()) return std::nullopt;
    return language;
  }
  return std::nullopt;
}

bool errors_go_to_a_terminal() { return isatty(STDERR_FILENO) == 1; }

}  // namespace fw::platform
