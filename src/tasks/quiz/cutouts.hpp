#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "nets/fold_test.hpp"

namespace fw::tasks {

/// A cut-out as it lies on the bench.
struct LyingCutout {
  nets::Cutout cutout;
  nets::FoldTest test;  ///< of it and the problem's solid
  double turn_rad = 0;
  bool flipped = false;
  std::string letter;  ///< of a candidate; empty: it lies alone
};

/// An edge where a missing piece could hang.
struct CutoutPlace {
  nets::PieceEdge edge;
  std::string letter;
  std::optional<bool> is_right;  ///< none: it was not tried yet
};

/// What a question about nets shows in the place of its solid.
struct CutoutBench {
  std::vector<LyingCutout> lying;       ///< one, or the candidates side by side
  std::vector<nets::PieceId> bad;       ///< pieces of the one that does not fold
  std::vector<nets::PieceEdge> differ;  ///< two edges of it that would meet and are unlike
  std::vector<CutoutPlace> places;
  std::optional<geometry::Polygon> missing;  ///< the piece that lies beside
  solids::Solid solid;                       ///< that it should fold into
  bool shows_solid = false;                  ///< beside it; not while its name is asked
  bool has_numbers = false;                  ///< its pieces are spoken of by their numbers
};

/// How far a question about nets has come.
struct CutoutProgress {
  bool is_out = false;                ///< the answer, or the sentences on it
  std::optional<std::size_t> spoken;  ///< the choice that is spoken of then; none: the first right one
  std::vector<std::size_t> tried;     ///< places that were chosen
  bool is_replied = false;            ///< a reply can speak of pieces by their numbers
};
/// Requires: the problem asks about a net.
[[nodiscard]] CutoutBench cutout_bench(const lessons::Problem& problem, const CutoutProgress& progress);

}  // namespace fw::tasks
