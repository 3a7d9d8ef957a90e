#pragma once

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The keys of a problem that say what is asked in another way than "find" alone: "scale" with "copy", "unit", "claim",
/// "face", "wrong", "between".
[[nodiscard]] const std::vector<std::string>& task_keys();

/// Reads these keys into a problem whose solid stands already.
/// Errors: told to the context; what is read then is of no use.
void read_task(const JsonNode& node, Problem& problem, const Context& context);

}  // namespace fw::lessons
