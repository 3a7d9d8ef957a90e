#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "geometry/polyhedron.hpp"

namespace fw::nets {

using geometry::EdgeId;
using geometry::FaceId;
using geometry::Polyhedron;

/// Which edges of a polyhedron stay joined when it is cut open, seen from the face that stays on the
/// table: a spanning tree of its faces. Immutable and comparable.
class HingeTree {
 public:
  /// Errors: a sentence when the hinges do not join all faces into one piece, or join some twice.
  [[nodiscard]] static Result<HingeTree, std::string> make(const Polyhedron& polyhedron, FaceId root,
                                                           std::vector<EdgeId> hinges);

  [[nodiscard]] FaceId root() const { return root_; }
  [[nodiscard]] const std::vector<EdgeId>& hinges() const { return hinges_; }  ///< rising ids
  struct Link {
    FaceId parent;
    EdgeId hinge;
    friend bool operator==(const Link&, const Link&) = default;
  };
  [[nodiscard]] const std::optional<Link>& link(FaceId face) const { return links_[face]; }  ///< nothing at the root
  /// Every face after its parent, nearest the root first.
  [[nodiscard]] const std::vector<FaceId>& order() const { return order_; }
  [[nodiscard]] bool is_hinge(EdgeId edge) const;
  [[nodiscard]] std::vector<FaceId> subtree(FaceId face) const;  ///< the face and all that hangs on it
  friend bool operator==(const HingeTree&, const HingeTree&) = default;

 private:
  HingeTree(FaceId root, std::vector<EdgeId> hinges) : root_(root), hinges_(std::move(hinges)) {}
  FaceId root_;
  std::vector<EdgeId> hinges_;
  IdVector<FaceId, std::optional<Link>> links_;
  std::vector<FaceId> order_;
};

/// The net with `face` (and all that hangs on it) moved so that it hangs on the face across `edge`.
/// Errors: a sentence when `edge` is no edge of `face`, is already its hinge, or leads into its own subtree.
[[nodiscard]] Result<HingeTree, std::string> moved(const Polyhedron& polyhedron, const HingeTree& tree, FaceId face,
                                                   EdgeId edge);
/// The same net standing on another face.
[[nodiscard]] HingeTree rerooted(const Polyhedron& polyhedron, const HingeTree& tree, FaceId root);
/// The edges that `face` could be moved to by moved(), in side order.
[[nodiscard]] std::vector<EdgeId> possible_hinges(const Polyhedron& polyhedron, const HingeTree& tree, FaceId face);

}  // namespace fw::nets
