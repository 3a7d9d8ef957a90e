#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "units/quantity.hpp"

namespace fw::cli {

/// Objects keep their keys in the order in which they were set.
using Json = nlohmann::ordered_json;

/// The one shape of a quantity: {"exact": "36", "value": 36.0, "unit": "cm^2"}; exact is null where a number has no
/// closed form.
[[nodiscard]] Json quantity_json(const exact::Number& amount, const units::Unit& unit);

template <units::Dimension D>
[[nodiscard]] Json quantity_json(const units::Quantity<D>& quantity) {
  return quantity_json(quantity.amount(), quantity.unit());
}
/// Null for a quantity that the solid does not have.
template <units::Dimension D>
[[nodiscard]] Json quantity_json(const std::optional<units::Quantity<D>>& quantity) {
  return quantity ? quantity_json(*quantity) : Json(nullptr);
}

/// Prints the document with a line end, in two-space steps; bytes of a path that are not UTF-8 are replaced.
void print_json(const Json& document);

}  // namespace fw::cli
