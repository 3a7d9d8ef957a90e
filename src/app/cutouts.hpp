#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/state.hpp"
#include "nets/fold_test.hpp"

namespace fw::app {

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

/// Card lies on the bench: an item of the quiz asks about it, or it is worked out.
[[nodiscard]] bool shows_cutouts(const State& state);
/// What comes onto the bench lies flat at first: card that is asked about, or a net whose solid is to be named.
[[nodiscard]] bool lies_flat(const State& state);
/// Requires: shows_cutouts(state).
[[nodiscard]] CutoutBench cutouts_on_bench(const State& state);

}  // namespace fw::app
