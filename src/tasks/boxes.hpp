#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/asked_value.hpp"
#include "tasks/generate/made_up.hpp"

// Boxes with whole edges, to make problems of; private to the room.
namespace fw::tasks {

/// The orders of these edges, length first, in which a box of the form can have them; none where it cannot.
[[nodiscard]] std::vector<lessons::WholeBox> turned_to_fit(const Form& form, lessons::WholeBox edges);

/// The box of the blueprint's thing with these edges and this asked. Requires: the thing is a box.
[[nodiscard]] std::optional<lessons::Problem> box_with_edges(const Blueprint& blueprint, const lessons::WholeBox& edges,
                                                             lessons::Task task, const std::string& prompt);

}  // namespace fw::tasks
