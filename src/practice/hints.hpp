#pragma once

#include <optional>
#include <string>
#include <vector>

#include "algebra/notation.hpp"
#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "reasoning/explanation.hpp"

namespace fw::practice {

/// A rung of the ladder of hints.
struct Hint {
  words::Message text;                        ///< a sentence or two
  std::optional<algebra::NotationLine> line;  ///< set under the text
  std::vector<geometry::FaceId> faces;        ///< that it speaks of
  std::vector<solids::MarkId> marks;          ///< lengths that it speaks of
};

/// The hints to a question of a problem, each saying more than the one before:
///   1 what kind of quantity is asked, and its unit
///   2 which faces or lengths it is made of
///   3 the relation written down, as on the board: "S = B + ½Pℓ"
///   4 the first line with numbers: "224 = 8² + ½ · 32 · ℓ"
/// All of them are lines of the worked solution, and none of them holds its answer. Fewer where nothing is worked out.
/// An empty `find` is the first thing that is asked. `notation`: how the class writes.
/// Errors: a sentence, when the problem does not ask for it, or it cannot be worked out.
[[nodiscard]] Result<std::vector<Hint>, words::Message> hints_of(const lessons::Problem& problem,
                                                                 const std::string& find = "",
                                                                 const reasoning::ClassNotation& notation = {});

[[nodiscard]] Hint hint_of(const reasoning::Step& step);
/// Of what is told by looking: what leads to the answer, but not the line that gives it, nor the second of two lengths.
[[nodiscard]] std::vector<Hint> hints_to_look(const reasoning::TaskWork& work);
/// The first steps of a task: what is asked, what it starts from, and the first line, told before it is shown.
[[nodiscard]] std::vector<Hint> hints_to_task(const reasoning::TaskWork& work);
/// Of a measure that is worked out by formula or face by face, or of the amount of a word problem: as on the board
/// where the explanation has one, else by its steps.
[[nodiscard]] std::vector<Hint> hints_to_measure(const reasoning::Explanation& explanation, const solids::Solid& solid,
                                                 const std::string& measure);

}  // namespace fw::practice
