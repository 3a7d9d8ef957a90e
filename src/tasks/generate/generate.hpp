#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "practice/type_name.hpp"

namespace fw::tasks {

/// The types of problems that can be made up, in the order of their numbers.
[[nodiscard]] const std::vector<practice::TypeName>& type_names();

struct PracticeRequest {
  std::vector<std::string> types;  ///< keys; none: every type of the level
  int level = 1;                   ///< 1 to 3
  std::uint64_t seed = 1;
  std::size_t count = 10;    ///< problems in a version
  std::size_t versions = 1;  ///< parallel ones
  std::string title = "Practice for the lantern fair";
};

/// One lesson a version. The same request gives the same lessons on every machine.
///   mixed:    no two neighbors are solved by the same method, where the types have two
///   valid:    every solid exists, and no label fits only by rounding
///   unmasked: no usual mistake comes within 1 % of the right number
///   parallel: problem i of every version has the same type, solid, unit, story and number of digits, and answers more
///             than 5 % apart; no figure, and no area or volume asked for, comes twice in the lessons
/// Errors: a sentence, for a type that is not known or not used at this level, and where the types have too few
///         different figures for so many problems.
[[nodiscard]] Result<std::vector<lessons::Lesson>, words::Message> generated(const PracticeRequest& request);

/// Whether some usual mistake comes within 1 % of what the problem asks for, 3 % for the volume in place of an area and
/// the reverse, so that the mistake would not show.
[[nodiscard]] bool is_masked(const lessons::Problem& problem);

}  // namespace fw::tasks
