#pragma once

#include <string>

#include "units/quantity.hpp"

// How numbers are told that somebody claims, got or estimates; private to the room.
namespace fw::tasks {

/// "12 cm", "≈ 12.37 cm".
[[nodiscard]] std::string judged_amount(const exact::Number& amount, const units::Unit& unit, int places);
[[nodiscard]] exact::Number amount_in(const units::WrittenQuantity& quantity, const units::Unit& unit);
/// "260 cm²": as written, its unit with a raised digit.
[[nodiscard]] std::string shown_quantity(const units::WrittenQuantity& quantity);

}  // namespace fw::tasks
