#pragma once

#include "reasoning/board/board.hpp"
#include "reasoning/solution.hpp"

// Any step of a solution turned into a blank that a student fills.
namespace fw::reasoning {

/// What is asked for in the place of a step.
enum class BlankKind {
  Number,  ///< what the step comes out with, and its unit
  Side,    ///< the right side of its line
  Unit,    ///< what is counted in
  Words,   ///< nothing that can be judged: it is said, then shown
};
[[nodiscard]] BlankKind blank_kind(const Step& step);

/// What of a step is read.
struct StepText {
  std::optional<algebra::NotationLine> line;
  Message reason;
};
/// The step without what its blank asks for.
[[nodiscard]] StepText with_blank(const Step& step);
/// "____" for each argument of a reason that is said as `hidden`, and for the number of an amount.
[[nodiscard]] Message without(const Message& reason, const std::string& hidden);

/// A line on the board without what it comes to: the right side of its last equation, the left one of "5 = ℓ" or, where
/// it is the answer, all of it. `hidden`: what may be read nowhere on it; empty where the line asks for nothing.
struct BlankedLine {
  std::vector<algebra::NotationLine> equations;
  Message reason;
  std::vector<std::string> hidden;
};
[[nodiscard]] BlankedLine with_blank(const BoardLine& line);

enum class BlankVerdict { Right, RightNumberWrongUnit, RightNumberNoUnit, Wrong, Unreadable };
struct BlankCheck {
  BlankVerdict verdict = BlankVerdict::Unreadable;
  Message message;  ///< a sentence to the student
};
/// Judges what was typed into a blank.
/// A number with its unit is taken as a student types it ("36 sq cm", "36cm^2", "6√3 cm"); a decimal counts as right if
/// it is the value rounded to as many places as are written, two or more where the value does not end before.
/// A side is right if it is equal to the step's at any values of the letters, however it is written
/// ("2B + L", "2 x 60 + 252 sq cm").
/// `values`: of the numbers in the step's equation, as in Solution::values.
/// Requires: the kind of the blank is not Words.
[[nodiscard]] BlankCheck check_blank(const Step& step, const solids::Solid& solid, const algebra::Bindings& values,
                                     const std::string& typed);

}  // namespace fw::reasoning
