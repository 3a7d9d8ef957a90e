#pragma once

#include <optional>

#include "reasoning/board/board_page.hpp"

// An equation solved on the board, line by line; private to the room.
namespace fw::reasoning {

/// The lines that an equation was solved in.
struct SolvedLines {
  std::size_t simplify = 0;  ///< the first; the line before, where there is none of its own
  std::optional<std::size_t> add, multiply, divide, root, last;  ///< each where there is one; the last one always
  /// The line that a step with this change belongs to; `before`: of the step before it.
  [[nodiscard]] std::size_t line_of(const Step& step, std::size_t before) const;
};

/// Simplifies the equation and solves it for `unknown`, whose value is `numeral`. `before`: the line that it stands on.
/// Nothing, and nothing is written, where the unknown stands under a root, below a line, on both sides, or in two
/// powers: there the way is that of the steps.
[[nodiscard]] std::optional<SolvedLines> write_solving(BoardPage& page, std::size_t before,
                                                       const algebra::Equation& equation,
                                                       const algebra::Symbol& unknown, const algebra::Symbol& numeral);

}  // namespace fw::reasoning
