#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "reasoning/board/board.hpp"
#include "reasoning/step.hpp"

namespace fw::reasoning {

enum class Route { Formula, FaceByFace };

struct SolutionOptions {
  Route route = Route::Formula;
  std::optional<int> places = std::nullopt;        ///< decimals of an answer that does not end; none: two
  std::optional<units::Unit> unit = std::nullopt;  ///< of the answer; none: the solid's own
  /// Decimals of the lines before the answer.
  [[nodiscard]] int line_places() const { return places.value_or(2); }
  /// Faces of an open solid that do not count: an area asked for is then added up from the others, face by face.
  std::vector<FaceId> open = {};
  std::optional<ClassNotation> notation = {};  ///< of the lines on the board; none: no board is written
};

struct Answer {
  exact::Number amount;  ///< in `unit`
  units::Unit unit = units::Unit::none();
  int places = 2;
  std::string text;            ///< "9 cm", "≈ 10.39 cm"
  std::string exact_text;      ///< "6√3 cm"; empty where a class would not write it or `text` is exact
  std::vector<Message> notes;  ///< "the label 5.2 cm is a rounded number, so the answer is one too"
};

/// A problem worked out: every line follows from one before.
struct Solution {
  std::string asked;  ///< "slant_height"
  std::string title;  ///< "slant height"
  std::vector<Step> steps;
  std::vector<Source> sources;  ///< of the numbers: Notation::source is a row of it
  algebra::Bindings values;     ///< of the symbols that stand for numbers in Step::equation
  Answer answer;
  Board board = {};  ///< the same steps in few lines, if they were asked for and something is worked out
};

/// What is asked of the solid, from what its lesson gives, by the shortest and most usual chain of its relations.
/// `asked`: a measure of the whole ("surface_area") or of the solid ("slant_height", "base.side").
/// Errors: a sentence, when the solid has no such measure, or the route does not lead to it.
[[nodiscard]] Result<Solution, Message> worked_solution(const solids::Solid& solid, const std::string& asked,
                                                        const SolutionOptions& options = {});

}  // namespace fw::reasoning
