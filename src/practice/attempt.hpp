#pragma once

#include <string>

namespace fw::practice {

/// The cause of a problem whose solution was read before any answer: it counts as not known.
inline constexpr const char* solution_read = "solution";

/// How a problem was first answered, without who answered it.
struct Attempt {
  std::string skill;  ///< key of the problem's type: "surface"
  std::string cause;  ///< id of the mistake that a wrong answer shows: "A1"; empty where it shows none
  bool right = false;
  bool helped = false;  ///< a hint was read before it
  friend bool operator==(const Attempt&, const Attempt&) = default;
};

}  // namespace fw::practice
