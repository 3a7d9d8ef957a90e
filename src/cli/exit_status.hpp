#pragma once

#include <algorithm>

namespace fw::cli {

/// What the program tells the shell.
enum class ExitStatus : int {
  Done = 0,
  LessonAtFault = 1,  ///< the lesson or the answer is at fault; the message says what would be right
  WrongUsage = 2,     ///< wrong usage, or input that cannot be read
};

[[nodiscard]] constexpr ExitStatus worse(ExitStatus a, ExitStatus b) { return std::max(a, b); }

}  // namespace fw::cli
