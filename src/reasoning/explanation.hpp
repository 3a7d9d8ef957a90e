#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "reasoning/solution.hpp"
#include "reasoning/supply.hpp"
#include "reasoning/tasks/task.hpp"

namespace fw::reasoning {

/// One thing that a problem asks for.
struct Ask {
  enum class Kind {
    Measure,  ///< of the solid; a word problem's count stands with the measure that it needs
    Task,     ///< in another way than by a measure
    Look,     ///< told by looking at the solid
    Amount,   ///< of a word problem, where it is no measure of the solid: the length of all edges
  };
  Kind kind = Kind::Measure;
  std::string find;  ///< "surface_area", "base.side", "claim", "name", "edges"
};
/// Everything that the problem asks for, in its order.
[[nodiscard]] std::vector<Ask> asks_of(const lessons::Problem& problem);

/// One of these worked out.
struct Explanation {
  std::string find;                  ///< as it was asked for, or the key of the task
  Solution solution;                 ///< the name of the solid alone where nothing is worked out of measures
  std::optional<SupplyWork> packs;   ///< of a word problem: from the amount on
  std::optional<TaskWork> task;      ///< what is asked in another way: from the measure on
  std::string answer;                ///< all in one text: "144 cm²", "square pyramid", "5 faces", "4 rolls"
  std::optional<Solution> by_faces;  ///< the second way to the same measure, where both are gone
};
/// Errors: a sentence for what cannot be worked out.
[[nodiscard]] Result<Explanation, std::string> explained_ask(const lessons::Problem& problem, const Ask& ask,
                                                             const SolutionOptions& options = {});
/// Everything that the problem asks for. Errors: the same.
[[nodiscard]] Result<std::vector<Explanation>, std::string> explained(const lessons::Problem& problem,
                                                                      const SolutionOptions& options = {});

/// Steps that belong together: what comes before the measure, one way to it, what is done with it.
struct WorkPart {
  std::string title;  ///< "by formula", "then the count"; may be empty
  std::vector<Step> steps;
  std::vector<Source> sources;  ///< of the numbers in its lines; Source::step is one of `steps`
  algebra::Bindings values;     ///< of the numbers in the equations of its steps
  std::size_t first = 0;        ///< of its steps among those of all parts
  bool is_other_way = false;    ///< to a measure that the part before has led to
};
/// The decision, the way to the measure or both, and what follows from it. Sentences of sources name steps by their
/// number among all. Step::before counts within a part.
[[nodiscard]] std::vector<WorkPart> parts_of(const Explanation& explanation);
/// The steps of all parts, one after another.
[[nodiscard]] std::vector<Step> all_steps(const Explanation& explanation);

/// For a terminal: numbered reasons, each with its line and its asides under it.
[[nodiscard]] std::string steps_text(const std::vector<Step>& steps);

}  // namespace fw::reasoning
