#pragma once

#include <optional>
#include <string>

#include "exact/number.hpp"
#include "tasks/generate/made_up.hpp"
#include "tasks/row.hpp"

// A copy of the solid, every edge of it as many times as long: what its two types of questions share; private to the
// room.
namespace fw::tasks {

/// Which measure of the copy a factor is worked out from, and what the lesson says of it.
struct KnownOfCopy {
  std::string measure;
  units::WrittenQuantity quantity;
};
/// "4", "1/2", "≈ 2.714".
[[nodiscard]] std::string plain_factor(const exact::Number& number);
/// The measure of the solid itself. Requires: it has one.
[[nodiscard]] exact::Number of_original(const Problem& problem, const std::string& find);
/// The task of a copy whose factor is asked for; `copy` is the node of what is known of it.
/// Errors: told to the context; none then.
[[nodiscard]] std::vector<Task> read_factor_asked(const JsonNode& copy, const TaskText& text);

}  // namespace fw::tasks
