#pragma once

#include "lessons/lesson.hpp"

namespace fw::tasks {

/// Whether the problem asks which mistake leads to a wrong answer.
[[nodiscard]] bool asks_which_mistake(const lessons::Problem& problem);

}  // namespace fw::tasks
