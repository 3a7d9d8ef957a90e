#pragma once

#include <string>
#include <vector>

#include "reasoning/board/explained_board.hpp"

namespace CLI {
class App;
}

// A worked solution as the verbs print it.
namespace fw::cli {

/// "tent: How much canvas ...?", or the name of the solid if the problem has no words.
[[nodiscard]] std::string told_heading(const lessons::Problem& problem);

/// How solutions are written, with options of their own: `--notation`, and `--detail` board or every.
struct SolutionStyle {
  std::string detail;
  std::vector<std::string> words;  ///< for the notation, after those of the lesson
  [[nodiscard]] bool is_board() const { return detail == "board"; }
  [[nodiscard]] algebra::ClassNotation notation(const lessons::Lesson& lesson) const;
};
/// `style.detail` is the default.
void add_style_options(CLI::App& verb, SolutionStyle& style);

[[nodiscard]] reasoning::Board board_of(const reasoning::Explanation& explanation,
                                        const algebra::ClassNotation& notation);
/// The lines on the board, or every step, and the answer under them. The explanation has its board for the first.
[[nodiscard]] std::string told_solution(const reasoning::Explanation& explanation, bool is_board,
                                        const algebra::ClassNotation& notation);
/// Of a question about nets: every step of the folding.
[[nodiscard]] std::string told_net(const lessons::Problem& problem);

}  // namespace fw::cli
