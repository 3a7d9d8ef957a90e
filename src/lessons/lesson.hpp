#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solids/solid.hpp"

namespace fw::lessons {

/// What turns a problem into a word problem: {"cover": "surface_area", "each": "40 ft^2", "item": "roll"}.
struct Supply {
  std::string purpose;                         ///< "cover", "fill" or "edge"
  std::string measure;                         ///< "surface_area", "lateral_area", "volume", ...
  std::optional<units::WrittenQuantity> each;  ///< what one item covers or holds
  std::string item;                            ///< "roll"
  friend bool operator==(const Supply&, const Supply&) = default;
};

struct Problem {
  std::string id;
  std::string prompt;
  solids::Description description;
  solids::Known known;
  std::vector<std::string> find;  ///< "surface_area", "volume", "height", "name", ...
  std::optional<Supply> supply;
  solids::Solid solid;  ///< made from the description and what is known
  friend bool operator==(const Problem&, const Problem&) = default;
};

struct Lesson {
  std::string title;
  std::vector<Problem> problems;
  friend bool operator==(const Lesson&, const Lesson&) = default;
};

}  // namespace fw::lessons
