#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "exact/number.hpp"
#include "solids/solid.hpp"

namespace fw::tasks {

/// Pieces of one length that are cut.
struct PieceKind {
  exact::Number length;
  std::size_t count = 0;
};
/// A way to cut one item, and how many items are cut so.
struct Cut {
  std::vector<std::size_t> pieces;  ///< of each kind
  std::size_t items = 1;
};
/// How pieces that cannot be joined are cut from as few items as can be.
struct CutPlan {
  std::vector<Cut> cuts;
  std::size_t items = 0;
  exact::Number joined;  ///< how many items their length alone makes up, not rounded
};

/// The most pieces for which the least number is looked for.
constexpr std::size_t most_pieces = 30;

/// The plan with the fewest items, exact: packing in bins, by branch and bound. Nothing for more than `most_pieces`,
/// for a piece longer than an item, and where the search takes too many steps.
[[nodiscard]] std::optional<CutPlan> least_cuts(const std::vector<PieceKind>& pieces, const exact::Number& item);

/// The edges of a solid as pieces, their lengths in `unit`. Requires: the solid's unit converts to it.
[[nodiscard]] std::vector<PieceKind> edge_pieces(const solids::Solid& solid, const units::Unit& unit);

}  // namespace fw::tasks
