#pragma once

#include <optional>
#include <set>
#include <string>

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The id that findings of a problem name: its own, or "problem 3" by its number from 1.
[[nodiscard]] std::string problem_name(const JsonNode& node, std::size_t number);

/// One problem of a lesson. `ids` holds the ids of those before it, and takes this one's.
/// Errors: told to the report; nothing is returned then. Remarks on a figure that exists are told as well.
[[nodiscard]] std::optional<Problem> read_problem(const JsonNode& node, std::size_t number, std::set<std::string>& ids,
                                                  Report& report);

}  // namespace fw::lessons
