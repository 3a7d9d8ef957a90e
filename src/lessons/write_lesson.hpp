#pragma once

#include <string>

#include "lessons/lesson.hpp"

namespace fw::lessons {

/// The lesson as text of the file format, numbers as they were written. Guarantee: reading it gives the same lesson.
[[nodiscard]] std::string write_lesson(const Lesson& lesson);

}  // namespace fw::lessons
