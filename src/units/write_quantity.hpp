#pragma once

#include "units/quantity.hpp"

namespace fw::units {

/// What is written for a number in a unit, where the number comes first: "49.5 cm" where it ends within the places,
/// "20.60 cm" where it is rounded to them.
[[nodiscard]] WrittenQuantity written_as_shown(const exact::Number& value, const Unit& unit, int places);
/// In its exact form where it has one, "5 1/3 ft" or "3√2 cm"; otherwise as shown.
[[nodiscard]] WrittenQuantity written_exactly(const exact::Number& value, const Unit& unit, int places);
/// "36 cm".
[[nodiscard]] WrittenQuantity written_whole(long long number, const Unit& unit);
/// A number that was written, with a unit put behind it.
[[nodiscard]] WrittenQuantity written_in(const Unit& unit, exact::Written number);

}  // namespace fw::units
