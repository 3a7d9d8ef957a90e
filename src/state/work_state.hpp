#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "tasks/worked_problem.hpp"

namespace fw::state {

/// Which steps are gaps.
enum class Fade { None, ThisStep, All };

using tasks::RouteChoice;

/// How much of a solution is shown: each step, or the lines on the board, which open into their steps.
enum class Detail { EveryStep, Board };

/// What was typed into the gap of a step, or that its number was shown.
struct FilledBlank {
  std::size_t step = 0;  ///< of all steps
  std::string typed;
  words::Message message;  ///< the reply to it
  bool is_open = false;    ///< right, or shown: the number stands there
  bool is_right = false;
  friend bool operator==(const FilledBlank&, const FilledBlank&) = default;
};

/// How far a problem is worked out, and what is asked of it.
struct Work {
  std::string asked;                   ///< a measure; empty: what the lesson asks for first
  std::optional<std::string> instead;  ///< the measure that is given in its place
  RouteChoice route = RouteChoice::Formula;
  std::size_t reached = 0;  ///< steps that are shown; 0: the problem alone
  std::size_t present = 0;  ///< the step that is spoken of; less than `reached`, or 0
  Fade fade = Fade::None;
  std::size_t faded = 0;  ///< the step of Fade::ThisStep
  /// Lines of the board that are shown while `reached` is `lines_at`; else they follow from `reached`.
  std::size_t lines = 0;
  std::size_t lines_at = 0;
  std::size_t line = 0;             ///< that is spoken of
  std::vector<std::size_t> opened;  ///< lines that show their steps
  std::vector<FilledBlank> blanks;
  std::optional<reasoning::Purpose> decision;  ///< cover, fill or edge, as the class said last
  bool decided = false;                        ///< rightly said, or shown
  friend bool operator==(const Work&, const Work&) = default;
};

}  // namespace fw::state
