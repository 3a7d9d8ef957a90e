#pragma once

#include "reasoning/worksheet.hpp"

// From one unit to another, as a step; private to the room.
namespace fw::reasoning {

/// "1 ft = 12 in, so 1 ft² = 12 in × 12 in = 144 in²."
[[nodiscard]] Message conversion_sentence(const units::Unit& from, const units::Unit& to);

/// A step for each measure that the lesson writes in another unit than the solid's, or in a mixed one.
void convert_givens(Worksheet& sheet, const std::vector<algebra::Symbol>& used);

/// The asked measure in the unit in which it is asked. `value` in `from`.
void convert_answer(Worksheet& sheet, const algebra::Symbol& asked, const exact::Number& value, const units::Unit& from,
                    const units::Unit& to);

}  // namespace fw::reasoning
