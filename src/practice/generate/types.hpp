#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "practice/generate/draw.hpp"

// The types of problems; private to the room.
namespace fw::practice {

/// What is fixed of a problem before its numbers are drawn, so that parallel versions share it.
struct Blueprint {
  const Family* family = nullptr;
  int level = 1;
  std::string unit = "cm";
  std::size_t story = 0;  ///< which of the type's sentences
  std::size_t thing = 0;  ///< which of the family's things
  std::size_t trap = 0;   ///< which wrong turn the problem offers, where its type has several
  std::size_t turn = 0;   ///< how many of this type were made before: what is to be balanced goes by it
};

/// A type of problem: a row of the table.
struct ProblemType {
  std::string key;     ///< "surface", as the command line names it
  std::string title;   ///< "surface area"
  int level = 1;       ///< from which on it is used
  std::string method;  ///< how it is solved: neighbors in a set differ in it
  bool (*serves)(const Family& family);
  /// Nothing where the numbers drawn make no good problem. Its id is left empty.
  std::optional<lessons::Problem> (*make)(const Blueprint& blueprint, Seed& seed);
};
[[nodiscard]] std::vector<ProblemType> measure_types();  ///< names, counts of faces, areas, volumes
[[nodiscard]] std::vector<ProblemType> unknown_types();  ///< missing measures
[[nodiscard]] std::vector<ProblemType> supply_types();   ///< word problems with a count
[[nodiscard]] std::vector<ProblemType> net_types();      ///< nets that are and are not
[[nodiscard]] std::vector<ProblemType> task_types();     ///< what is asked in another way than by a measure

[[nodiscard]] std::vector<ProblemType> comparison_types();  ///< numbers held against each other

/// The problem that this description and these known quantities make; nothing where they make no solid, or one whose
/// labels fit only by rounding.
[[nodiscard]] std::optional<lessons::Problem> made_problem(const solids::Description& description,
                                                           const solids::Known& known, const std::string& find,
                                                           const std::string& prompt);

/// A sentence with "{thing}", "{A thing}" and "{unit}" filled in.
[[nodiscard]] std::string told(const std::vector<std::string>& stories, const Blueprint& blueprint);

}  // namespace fw::practice
