#include "nets/folding.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"
#include "geometry/measure.hpp"
#include "nets/motion.hpp"

namespace fw::nets {

double opening_angle_rad(const Polyhedron& polyhedron, EdgeId hinge) {
  constexpr double pi = 3.14159265358979323846;
  return pi - geometry::dihedral_angle_rad(polyhedron, hinge);
}

Pose pose(const Polyhedron& polyhedron, const HingeTree& tree, const IdVector<FaceId, double>& amounts) {
  ensure(tree.order().size() == polyhedron.faces().size() && amounts.size() == polyhedron.faces().size(),
         "a net was folded that belongs to another solid");
  IdVector<FaceId, Motion> motions(polyhedron.faces().size());
  Pose found(polyhedron.faces().size());
  for (const FaceId face : tree.order()) {
    const std::optional<HingeTree::Link>& link = tree.link(face);
    if (link) {
      motions[face] = motions[link->parent];
      if (amounts[face] != 0) {
        const geometry::Edge& edge = polyhedron.edges()[link->hinge];
        const auto [from, to] = polyhedron.ends(link->hinge);
        // Seen along an edge that runs counterclockwise round the parent, folding up is turning on.
        const Vec3 axis = glm::normalize(edge.left == link->parent ? to - from : from - to);
        motions[face] = hinge_motion(motions[link->parent], from, axis,
                                     -amounts[face] * opening_angle_rad(polyhedron, link->hinge));
      }
    }
    std::vector<Vec3> corners = polyhedron.corners(face);
    for (Vec3& corner : corners) {
      corner = motions[face].moved(corner);
    }
    found[face.index()] = std::move(corners);
  }
  return found;
}

Pose pose(const Polyhedron& polyhedron, const HingeTree& tree, double amount, FoldOrder order) {
  return pose(polyhedron, tree, hinge_amounts(tree, amount, order));
}

IdVector<FaceId, double> hinge_amounts(const HingeTree& tree, double amount, FoldOrder order) {
  ensure(amount >= 0 && amount <= 1, "a net can only be opened by an amount from 0 to 1");
  IdVector<FaceId, double> amounts(tree.order().size(), amount);
  if (order == FoldOrder::OneByOne) {
    const auto hinge_count = static_cast<double>(tree.hinges().size());
    double turn = 0;
    for (auto face = tree.order().rbegin(); face != tree.order().rend(); ++face) {
      amounts[*face] = std::clamp(amount * hinge_count - turn, 0.0, 1.0);
      turn += 1;
    }
  }
  amounts[tree.root()] = 0;
  return amounts;
}

}  // namespace fw::nets
