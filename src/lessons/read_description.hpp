#pragma once

#include <optional>

#include "lessons/report.hpp"
#include "solids/description.hpp"

namespace fw::lessons {

/// The solid that a lesson describes, its form checked against the fields that its kind and base shape state.
/// Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<solids::Description> read_description(const JsonNode& node, const Context& context);

/// The value of one field. Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<solids::FieldValue> read_field(const JsonNode& node, const solids::Field& field,
                                                           const Context& context);

}  // namespace fw::lessons
