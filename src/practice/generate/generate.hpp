#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "lessons/lesson.hpp"

namespace fw::practice {

/// A type of problem that can be asked for by its key.
struct TypeName {
  std::string key;    ///< "surface"
  std::string title;  ///< "surface area"
  int level = 1;      ///< from which level on it is used: 1 to 3
};
[[nodiscard]] const std::vector<TypeName>& type_names();

/// The key of the type that the problem is of, by what it asks for first; empty where it asks for nothing. A surface
/// area that is to be found in two ways ("routes") asks for no more than "surface".
[[nodiscard]] std::string type_of(const lessons::Problem& problem);

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
[[nodiscard]] Result<std::vector<lessons::Lesson>, std::string> generated(const PracticeRequest& request);

/// Whether some usual mistake comes within 1 % of what the problem asks for, 3 % for the volume in place of an area and
/// the reverse, so that the mistake would not show.
[[nodiscard]] bool is_masked(const lessons::Problem& problem);

}  // namespace fw::practice
