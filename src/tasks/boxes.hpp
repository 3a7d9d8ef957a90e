#pragma once

#include <optional>
#include <string>

#include "lessons/asked_value.hpp"
#include "tasks/generate/made_up.hpp"

// Boxes with whole edges, to make problems of; private to the room.
namespace fw::tasks {

/// The box of the blueprint's family with these edges, in an order that the seed draws, and this asked.
[[nodiscard]] std::optional<lessons::Problem> box_with_edges(const Blueprint& blueprint, lessons::WholeBox edges,
                                                             Seed& seed, lessons::Task task, const std::string& prompt);

}  // namespace fw::tasks
