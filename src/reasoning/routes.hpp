#pragma once

#include "reasoning/solution.hpp"

namespace fw::reasoning {

/// Two ways to the same area: by formula and face by face. They end in the same number.
struct Routes {
  Solution by_formula;
  Solution by_faces;
  std::size_t formula_lines = 0;  ///< lines of work in each
  std::size_t face_lines = 0;
  std::string comparison;  ///< "Face by face is shorter here: 8 lines of work instead of 11. Both give 144 cm²."
};
/// Errors: a sentence, where one of the two does not lead to the measure: only areas of faces have both.
[[nodiscard]] Result<Routes, std::string> two_routes(const solids::Solid& solid, const std::string& asked,
                                                     const SolutionOptions& options = {});

/// The places of an equation that can be filled in by a student, and whether what was typed is right.
enum class BlankVerdict { Right, RightNumberWrongUnit, RightNumberNoUnit, Wrong, Unreadable };
struct BlankCheck {
  BlankVerdict verdict = BlankVerdict::Unreadable;
  std::string message;  ///< a sentence to the student
};
/// Judges a number with its unit, typed as a student types it ("36 sq cm", "36cm^2", "6√3 cm"), against what a step
/// came out with. A decimal counts as right if it is the value rounded to as many places as are written, two or more
/// where the value does not end before.
/// Requires: the step has an outcome.
[[nodiscard]] BlankCheck check_blank(const Step& step, const std::string& typed);

}  // namespace fw::reasoning
