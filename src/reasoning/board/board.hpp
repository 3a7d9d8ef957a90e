#pragma once

#include <string>
#include <vector>

#include "algebra/class_notation.hpp"
#include "reasoning/step.hpp"

// The short way: a worked solution in the lines that a teacher writes on the board.
namespace fw::reasoning {

using algebra::ClassNotation;

/// One line on the board, and the steps that it takes together.
struct BoardLine {
  enum class Kind {
    Ask,         ///< what is asked, of which solid, and what is given; words alone
    Convert,     ///< to one unit
    Formula,     ///< as it is taught, in letters
    Part,        ///< what the formula needs before: "B = ½ · 8 · 3 = 12"
    Substitute,  ///< the numbers, or formulas, in place of letters
    Simplify,
    Solve,   ///< the same done to both sides, or a sum that is worked out
    Count,   ///< of a word problem or another task
    Answer,  ///< a sentence with the unit; rounded here, where it is rounded
  };
  Kind kind = Kind::Ask;
  Message reason;
  std::vector<algebra::NotationLine> equations;  ///< side by side; none: words alone
  /// Beside the equations the same in symbols, each as what is equal on it; empty where a line has no symbols.
  std::vector<std::vector<algebra::Expression>> equal;
  std::vector<std::size_t> steps;  ///< that it opens into, rising
};

/// A solution as on the board. Each step of the solution belongs to one line.
struct Board {
  std::vector<BoardLine> lines;
  std::vector<Source> sources;  ///< of the numbers: Notation::source is a row of it; Source::step is one of `lines`
};

/// "224 = 64 + 16ℓ"; equations side by side with a comma between them; empty for words alone.
[[nodiscard]] std::string equation_text(const BoardLine& line);
/// A line as one: its equations with a comma between them. Requires: it has some.
[[nodiscard]] algebra::NotationLine in_one_line(const BoardLine& line);
/// For a terminal: each line with its reason beside it.
[[nodiscard]] std::string board_text(const std::vector<BoardLine>& lines);

}  // namespace fw::reasoning
