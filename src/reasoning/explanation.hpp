#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reasoning/solution.hpp"
#include "reasoning/supply.hpp"
#include "reasoning/task_sheet.hpp"

namespace fw::reasoning {

/// One thing that a problem asks for, worked out.
struct Explanation {
  std::string find;                  ///< as it was asked for, or the key of the task
  Solution solution;                 ///< the name of the solid alone where nothing is worked out of measures
  std::optional<SupplyWork> packs;   ///< of a word problem: from the amount on
  std::optional<TaskWork> task;      ///< what is asked in another way: from the measure on
  Message answer;                    ///< all in one: "144 cm²", "square pyramid", "5 faces", "4 rolls"
  std::optional<Solution> by_faces;  ///< the second way to the same measure, where both are gone
  std::vector<Solution> edges = {};  ///< lengths that are added up and not given, each worked out
};
/// Of what is told by looking at the solid.
[[nodiscard]] Explanation explained_alone(const solids::Solid& solid, TaskWork task);
/// Of a task with the measure that it rests on, by the name of `find`. Where no formula leads to this measure, the task
/// tells its value.
[[nodiscard]] Explanation explained_with_measure(const solids::Solid& solid, const std::string& find, TaskWork task,
                                                 const SolutionOptions& options);
/// Of a word problem by itself: its amount, told from the name of the solid on, and its count. Edges that are added up
/// and not given are worked out first.
[[nodiscard]] Explanation explained_amount(const solids::Solid& solid, const std::string& measure, SupplyWork packs,
                                           const SolutionOptions& options);
/// With the count of a word problem after it.
[[nodiscard]] Explanation with_count(Explanation explanation, SupplyWork packs);

/// Steps that belong together: what comes before the measure, one way to it, what is done with it.
struct WorkPart {
  Message title;  ///< "by formula", "then the count"; may be empty
  std::vector<Step> steps;
  std::vector<Source> sources;  ///< of the numbers in its lines; Source::step is one of `steps`
  algebra::Bindings values;     ///< of the numbers in the equations of its steps
  Board board = {};             ///< of its steps alone; none where they are not worked out of measures
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
