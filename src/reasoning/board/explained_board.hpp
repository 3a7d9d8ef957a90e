#pragma once

#include "reasoning/explanation.hpp"

// A whole problem as on the board.
namespace fw::reasoning {

/// The lines of all parts, one after another. BoardLine::steps and the steps of all parts are counted alike, from 0.
/// A measure that something else is worked out of, a count or a copy, takes one line, which opens into its steps.
[[nodiscard]] Board board_of(const std::vector<WorkPart>& parts, const ClassNotation& notation = {});

}  // namespace fw::reasoning
