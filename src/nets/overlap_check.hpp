#pragma once

#include <vector>

#include "nets/spanning_trees.hpp"

namespace fw::nets {

/// Asks many nets of one polyhedron whether they overlap themselves, as overlapping(unfolded(...)) would say,
/// without building each. Requires: at most 64 edges.
class OverlapCheck {
 public:
  explicit OverlapCheck(const Polyhedron& polyhedron);
  [[nodiscard]] bool overlaps(EdgeMask hinges);

 private:
  /// A turn (cosine, sine) and then a shift of the plane.
  struct Placing {
    geometry::Vec2 turn{1, 0}, shift{0, 0};
    [[nodiscard]] geometry::Vec2 turned(geometry::Vec2 p) const {
      return {p.x * turn.x - p.y * turn.y, p.x * turn.y + p.y * turn.x};
    }
    [[nodiscard]] Placing then_in(const Placing& outer) const {
      return {outer.turned(turn), outer.turned(shift) + outer.shift};
    }
  };
  struct Side {
    std::size_t neighbor = 0;
    EdgeMask edge = 0;
    Placing placing;  ///< of the neighbor, in the frame of this face
  };
  struct Face {
    geometry::Polygon polygon;            ///< about the center of its bounding circle
    std::vector<geometry::Vec2> outward;  ///< of each side, length 1
    std::vector<Side> sides;
    double radius = 0;
  };

  void lay(EdgeMask hinges);
  [[nodiscard]] bool pair_overlaps(std::size_t a, std::size_t b) const;
  [[nodiscard]] bool side_separates(std::size_t a, std::size_t b) const;

  std::vector<Face> faces_;
  bool all_convex_ = true;
  double reach_ = 0;
  std::vector<Placing> placings_;
  std::vector<std::size_t> order_;
  std::vector<std::size_t> parent_;
};

}  // namespace fw::nets
