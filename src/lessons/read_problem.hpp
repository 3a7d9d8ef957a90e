#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The id that findings of a problem name: its own, or "problem 3" by its number from 1.
[[nodiscard]] std::string problem_name(const JsonNode& node, std::size_t number);

/// What the tasks of a problem are read from.
struct TaskText {
  const JsonNode& node;                  ///< the whole problem
  const std::vector<std::string>& find;  ///< its list "find"; of each entry the node is node.find("find")->items[i]
  const Problem& problem;                ///< with its solid, without tasks yet
  const Context& context;
};

/// One problem of a lesson. `ids` holds the ids of those before it, and takes this one's.
/// Errors: told to the report; nothing is returned then. Remarks on a figure that exists are told as well.
[[nodiscard]] std::optional<Problem> read_problem(const JsonNode& node, std::size_t number, const TaskReader& tasks,
                                                  std::set<std::string>& ids, Report& report);

}  // namespace fw::lessons
