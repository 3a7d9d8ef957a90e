#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "lessons/report.hpp"
#include "solids/description.hpp"

namespace fw::lessons {

enum class Zero { Refused, Allowed };

/// "length", "area", "volume".
[[nodiscard]] words::Noun noun_of_dimension(int dimension);

/// A quantity of dimension 1, 2 or 3 that stands as text at a node: above zero, and within the limits.
/// Errors: told to the context; nothing is returned then.
[[nodiscard]] std::optional<units::WrittenQuantity> read_quantity(const JsonNode& node, int dimension,
                                                                  const Context& context, Zero zero = Zero::Refused);

/// As above for a length, which may also be the unknown: "?".
[[nodiscard]] std::optional<solids::LengthEntry> read_length(const JsonNode& node, const Context& context,
                                                             Zero zero = Zero::Refused);

/// A coordinate: a number, or text with a number.
[[nodiscard]] std::optional<exact::Written> read_coordinate(const JsonNode& node, const Context& context);

}  // namespace fw::lessons
