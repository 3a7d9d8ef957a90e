#pragma once

#include "reasoning/solution.hpp"

namespace fw::reasoning {

/// Two ways to the same area: by formula and face by face. They end in the same number.
struct Routes {
  Solution by_formula;
  Solution by_faces;
  std::size_t formula_lines = 0;  ///< lines of work in each
  std::size_t face_lines = 0;
  Message comparison;  ///< "Face by face is shorter here: 8 lines of work instead of 11. Both give 144 cm²."
};
/// Errors: a sentence, where one of the two does not lead to the measure: only areas of faces have both.
[[nodiscard]] Result<Routes, Message> two_routes(const solids::Solid& solid, const std::string& asked,
                                                 const SolutionOptions& options = {});

}  // namespace fw::reasoning
