#pragma once

#include "reasoning/chain.hpp"
#include "reasoning/worksheet.hpp"

// The steps that one formula takes; private to the room.
namespace fw::reasoning {

/// The formula, the numbers put in, and the way to its unknown, which is known on the sheet from then on.
/// Requires: all other letters of it are.
void write_link(Worksheet& sheet, const Link& link);

/// Arithmetic and what is done to both sides, from the sheet's last line to "unknown = number".
/// Returns the number; nothing, and nothing is written, where no way of school leads there.
std::optional<algebra::Symbol> write_isolation(Worksheet& sheet, const algebra::Symbol& unknown,
                                               const exact::Number& value);

/// "s ≈ 10.39 cm": rounded once, at the end. `amount` in `unit`.
void write_rounded(Worksheet& sheet, const algebra::Symbol& asked, const exact::Number& amount, const units::Unit& unit,
                   int places);
void write_answer(Worksheet& sheet, const algebra::Symbol& asked, const Answer& answer);
/// Puts the answer back into the formula that it was solved from; nothing where it stood solved for it.
void write_check(Worksheet& sheet, const Link& link);

}  // namespace fw::reasoning
