#pragma once

#include <numeric>

#include "nets/hinge_tree.hpp"
#include "support/polyhedra.hpp"
#include "support/random.hpp"

namespace fw::test {

/// A hinge tree of the edges in a random order, each taken in that closes no ring, on a random root.
inline nets::HingeTree random_tree(const Polyhedron& solid, Dice& dice) {
  std::vector<std::size_t> piece(solid.faces().size());
  std::iota(piece.begin(), piece.end(), std::size_t{0});
  std::vector<std::size_t> order(solid.edges().size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  dice.shuffle(order);
  std::vector<nets::EdgeId> hinges;
  for (const std::size_t edge : order) {
    const geometry::Edge& found = solid.edges()[nets::EdgeId::at(edge)];
    const std::size_t kept = piece[found.left.index()];
    const std::size_t merged = piece[found.right.index()];
    if (kept != merged) {
      std::replace(piece.begin(), piece.end(), merged, kept);
      hinges.push_back(nets::EdgeId::at(edge));
    }
  }
  auto made = nets::HingeTree::make(solid, nets::FaceId::at(dice.below(piece.size())), std::move(hinges));
  ensure(made.has_value(), "the random tree is none");
  return std::move(made).value();
}

inline const std::vector<NamedSolid>& samples() {
  static const std::vector<NamedSolid> solids = sample_solids();
  return solids;
}

}  // namespace fw::test
