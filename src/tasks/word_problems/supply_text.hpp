#pragma once

#include <optional>
#include <string>

#include "lessons/supply.hpp"
#include "practice/packing.hpp"
#include "tasks/row.hpp"

// How a lesson writes what a word problem counts: {"cover": "surface_area", "each": "40 ft^2", "item": "roll"}; private
// to the room.
namespace fw::tasks {

/// A supply as it is written.
struct SupplyText {
  std::string purpose;  ///< "cover", "fill", "edge" or "pack"; empty, with a fault, where there is none
  lessons::Supply terms;
  std::optional<practice::ItemBox> box;  ///< of what is packed
  bool joined = true;                    ///< false: leftover pieces cannot be joined into one edge
  [[nodiscard]] bool packs() const { return purpose == "pack"; }
};
/// What can be judged before the solid stands. Errors: told to the context; what is returned then is of no use.
[[nodiscard]] SupplyText read_supply(const JsonNode& node, const Context& context);
/// Whether the solid has what the supply is for, and in units that compare. Requires: it packs nothing.
void check_supply(const JsonNode& node, const lessons::Supply& supply, const solids::Solid& solid,
                  const Context& context);
/// As JSON text.
[[nodiscard]] std::string supply_text(const lessons::Supply& supply);

}  // namespace fw::tasks
