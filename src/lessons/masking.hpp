#pragma once

#include <string>
#include <vector>

#include "lessons/lesson.hpp"

namespace fw::lessons {

/// One sentence for each usual mistake that would give the right number in this problem, because of the numbers
/// chosen: a class that makes it is not found out. Hints for the teacher, never errors. Only what the problem
/// asks for is looked at.
/// Source: the mistakes are the documented ones of taking volume for surface area (Tan Sisman & Aksu, 2016) and of
/// counting the faces in sight (Ben-Chaim, Lappan & Houang, 1985); the rest is common practice, no source.
[[nodiscard]] std::vector<std::string> masking_hints(const Problem& problem);

}  // namespace fw::lessons
