#pragma once

#include "lessons/lesson.hpp"
#include "reasoning/solution.hpp"
#include "reasoning/supply.hpp"
#include "reasoning/tasks/task.hpp"

namespace fw::reasoning {

/// One thing that a problem asks for, worked out.
struct Explanation {
  std::string find;                 ///< "surface_area", "base.side", "name", "faces", "edges"
  Solution solution;                ///< empty where nothing is worked out of measures
  std::optional<SupplyWork> packs;  ///< of a word problem: from the amount on
  std::optional<TaskWork> task;     ///< what is asked in another way: from the measure on
  std::string answer;               ///< all in one text: "144 cm²", "square pyramid", "5 faces", "4 rolls"
};

/// Everything that the problem asks for, in its order; a word problem's count stands with the measure that it needs.
/// Errors: a sentence for what cannot be worked out.
[[nodiscard]] Result<std::vector<Explanation>, std::string> explained(const lessons::Problem& problem,
                                                                      const SolutionOptions& options = {});

/// The decision, the steps to the amount and those from it on, one after another. Step::before counts within the
/// solution alone.
[[nodiscard]] std::vector<Step> all_steps(const Explanation& explanation);

/// For a terminal: numbered reasons, each with its line and its asides under it.
[[nodiscard]] std::string steps_text(const std::vector<Step>& steps);

}  // namespace fw::reasoning
