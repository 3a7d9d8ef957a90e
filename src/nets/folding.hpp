#pragma once

#include "nets/hinge_tree.hpp"

namespace fw::nets {

enum class FoldOrder {
  Together,  ///< all hinges turn at once
  OneByOne,  ///< each hinge in its turn, the outermost faces open first
};

/// Where each face's corners are with the net opened by `amount`: 0 closed solid, 1 flat.
/// The root's face does not move.
///
/// Shape:    [face][corner], corners in the order of the polyhedron's loops.
/// Requires: 0 <= amount <= 1.
/// Guarantees:
///   (1) every distance within a face is the same at every amount;
///   (2) at 0 each corner is the polyhedron's vertex; at 1 all corners lie in the root's plane;
///   (3) faces joined by a hinge share it at every amount.
using Pose = std::vector<std::vector<geometry::Vec3>>;
[[nodiscard]] Pose pose(const Polyhedron& polyhedron, const HingeTree& tree, double amount, FoldOrder order);

/// As above with an amount of its own for each face's hinge (the root's is not used).
[[nodiscard]] Pose pose(const Polyhedron& polyhedron, const HingeTree& tree, const IdVector<FaceId, double>& amounts);

/// The amounts of each face's hinge at an overall amount. At OneByOne with n hinges, hinge k turns while the
/// overall amount runs from k/n to (k+1)/n.
[[nodiscard]] IdVector<FaceId, double> hinge_amounts(const HingeTree& tree, double amount, FoldOrder order);

/// How far each hinge must turn to lie flat, in radians (pi less the dihedral angle; negative at a concave edge).
[[nodiscard]] double opening_angle_rad(const Polyhedron& polyhedron, EdgeId hinge);

}  // namespace fw::nets
