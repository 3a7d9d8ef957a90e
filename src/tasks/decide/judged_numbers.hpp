#pragma once

#include "exact/print_number.hpp"
#include "units/quantity.hpp"
#include "words/message.hpp"

// How numbers are told that somebody claims, got or estimates; private to the room.
namespace fw::tasks {

/// "12 cm", "≈ 12.37 cm".
[[nodiscard]] words::Message judged_amount(const exact::Number& amount, const units::Unit& unit, int places);
[[nodiscard]] exact::Number amount_in(const units::WrittenQuantity& quantity, const units::Unit& unit);

}  // namespace fw::tasks
