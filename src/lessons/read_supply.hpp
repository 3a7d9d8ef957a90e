#pragma once

#include <optional>

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The supply of a problem, at the node of its key "supply".
/// Errors: told to the context; what is returned then is of no use.
[[nodiscard]] std::optional<Supply> read_supply(const JsonNode& node, const Context& context);

/// What can only be judged once the solid stands: whether it has what the supply is for, and in units that compare.
/// Requires: the problem has a supply, which was read without a fault.
void check_supply(const JsonNode& node, const Problem& problem, const Context& context);

}  // namespace fw::lessons
