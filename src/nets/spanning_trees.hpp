#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <vector>

#include "geometry/symmetry.hpp"
#include "nets/hinge_tree.hpp"

namespace fw::nets {

/// A set of edges: bit i is EdgeId i.
using EdgeMask = std::uint64_t;
inline constexpr std::size_t most_mask_edges = 64;

[[nodiscard]] EdgeMask mask_of(const HingeTree& tree);
[[nodiscard]] std::vector<EdgeId> edges_of_mask(EdgeMask mask);

/// Where a symmetry carries a set of edges, eight edges a step.
class EdgeAction {
 public:
  explicit EdgeAction(const geometry::Symmetry& symmetry);
  [[nodiscard]] EdgeMask operator()(EdgeMask mask) const {
    EdgeMask image = 0;
    for (std::size_t byte = 0; byte < byte_count_; ++byte) {
      image |= table_[byte][static_cast<std::uint8_t>(mask >> (8 * byte))];
    }
    return image;
  }

 private:
  std::vector<std::array<EdgeMask, 256>> table_;
  std::size_t byte_count_;
};

/// Walks through the spanning trees of the faces that no symmetry carries to a lesser mask, in rising order
/// of their masks, until `found` returns false.
///
/// Edges are decided from the highest down, left out before taken in, and a branch is left as soon as a
/// symmetry shows it to hold no least mask.
/// Source: orderly generation (R. C. Read, Annals of Discrete Mathematics 2, 1978; from memory).
class TreeWalk {
 public:
  using Found = std::function<bool(EdgeMask)>;
  TreeWalk(const Polyhedron& polyhedron, const Found& found);
  void run();

 private:
  /// The symmetries that may still carry the branch to a lesser mask; the first `open` of a list.
  using Rivals = std::vector<std::uint32_t>;
  enum class Verdict { Prune, Go };

  void decide(std::size_t edges_left, EdgeMask taken, std::size_t taken_count, const Rivals& rivals);
  [[nodiscard]] Verdict compare(std::size_t edges_left, EdgeMask taken, const Rivals& before, Rivals& after) const;
  [[nodiscard]] bool connected(std::size_t from, std::size_t to, EdgeMask usable) const;

  const Found& found_;
  std::size_t edge_count_;
  std::size_t face_count_;
  std::vector<std::array<std::size_t, 2>> ends_;  ///< the two faces of each edge
  std::vector<EdgeMask> around_;                  ///< the edges of each face
  std::vector<EdgeAction> actions_;
  std::vector<std::vector<EdgeMask>> known_;  ///< [edges left][action]: the top bits whose image is decided
  bool stopped_ = false;
};

}  // namespace fw::nets
