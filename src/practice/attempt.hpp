#pragma once

#include <string>

namespace fw::practice {

/// An answer that was given, without who gave it.
struct Attempt {
  std::string skill;  ///< key of the problem's type: "surface"
  std::string cause;  ///< id of the mistake that a wrong answer shows: "A1"; empty where it shows none
  bool right = false;
  friend bool operator==(const Attempt&, const Attempt&) = default;
};

}  // namespace fw::practice
