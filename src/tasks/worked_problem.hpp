#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "reasoning/explanation.hpp"
#include "reasoning/unknown.hpp"

namespace fw::tasks {

/// By which way an area is worked out.
enum class RouteChoice { Formula, Faces, Both };

/// What of a problem is to be worked out, and how.
struct WorkChoice {
  std::string asked;                   ///< a measure; empty: what the problem asks for first
  std::optional<std::string> instead;  ///< the measure that is given in its place
  RouteChoice route = RouteChoice::Formula;
  algebra::ClassNotation notation = {};  ///< of the lines on the board
};

/// A problem worked out for going through it step by step.
struct WorkedProblem {
  std::string asked;     ///< the measure; empty: nothing is worked out of measures
  words::Message title;  ///< "slant height"
  std::string letter;
  std::optional<solids::Solid> solid;  ///< with the measure as its unknown; none: nothing was asked
  std::vector<reasoning::WorkPart> parts;
  std::size_t count = 0;                      ///< of all steps
  reasoning::Board board;                     ///< the same in few lines; none for a question about nets
  words::Message comparison;                  ///< of two ways; empty for one
  std::vector<words::Message> notes;          ///< to the answer
  words::Message missing;                     ///< why there are no steps; empty: there are
  std::vector<reasoning::Askable> offered;    ///< what could be given instead
  std::vector<reasoning::Askable> askable;    ///< every measure that can be asked for
  std::vector<reasoning::Askable> by_lesson;  ///< those that the problem asks for
  bool has_two_routes = false;
  std::optional<reasoning::SupplyWork> supply;  ///< of a word problem
  std::optional<reasoning::TaskWork> task;      ///< what is asked in another way than by a measure
  std::vector<geometry::FaceId> open;           ///< faces that do not count

  /// Requires: step < count.
  [[nodiscard]] const reasoning::WorkPart& part_of(std::size_t step) const;
  [[nodiscard]] const reasoning::Step& step(std::size_t index) const;
};

/// What the problem asks for has the steps of its Explanation; any other measure is asked for by itself.
[[nodiscard]] WorkedProblem worked_problem(const lessons::Problem& problem, const WorkChoice& choice = {});
/// A question about nets, told choice by choice.
[[nodiscard]] WorkedProblem worked_net(const lessons::Problem& problem);

}  // namespace fw::tasks
