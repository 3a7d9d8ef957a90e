#pragma once

#include <string>
#include <vector>

#include "algebra/class_notation.hpp"
#include "lessons/task.hpp"
#include "solids/solid.hpp"

namespace fw::lessons {

/// Faces that do not count, as the lesson names them: a word for their place or role, or a face's number from 1.
struct OpenFaces {
  std::string name;  ///< "top", "bases", "3"
  std::vector<geometry::FaceId> faces;
  friend bool operator==(const OpenFaces&, const OpenFaces&) = default;
};

struct Problem {
  std::string id;
  std::string prompt;
  solids::Description description;
  solids::Known known;
  solids::Solid solid;                         ///< made from the description and what is known
  std::vector<OpenFaces> open = {};            ///< left out of a surface area that this problem asks for
  std::vector<Task> tasks = {};                ///< what it asks for, in order
  std::optional<int> round_to = std::nullopt;  ///< decimals that answers are rounded to; none: the problem does not say
  friend bool operator==(const Problem&, const Problem&) = default;
};
/// The entries of its list "find".
[[nodiscard]] std::vector<std::string> find_of(const Problem& problem);

struct Lesson {
  std::string title;
  std::vector<Problem> problems;
  std::vector<std::string> left_out = {};  ///< ids of problems that are missing here because they have a mistake
  algebra::ClassNotation notation = {};    ///< of the lines on the board
  friend bool operator==(const Lesson&, const Lesson&) = default;
};

}  // namespace fw::lessons
