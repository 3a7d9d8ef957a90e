#include "nets/folding.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"
#include "geometry/measure.hpp"

namespace fw::nets {
namespace {

using geometry::Vec3;

/// A motion of space: turn, then shift.
struct Motion {
  Vec3 right{1, 0, 0}, up{0, 1, 0}, out{0, 0, 1};  ///< where the axes go
  Vec3 shift{0, 0, 0};
  [[nodiscard]] Vec3 turned(Vec3 way) const { return right * way.x + up * way.y + out * way.z; }
  [[nodiscard]] Vec3 moved(Vec3 point) const { return turned(point) + shift; }
};

/// Source: Rodrigues' rotation formula.
Vec3 turned_about(Vec3 way, Vec3 axis, double angle_rad) {
  const double cosine = std::cos(angle_rad);
  return way * cosine + glm::cross(axis, way) * std::sin(angle_rad) + axis * (glm::dot(axis, way) * (1 - cosine));
}

/// First the turn by an angle about the line through `from` along `axis`, then `after`.
Motion hinge_motion(const Motion& after, Vec3 from, Vec3 axis, double angle_rad) {
  const auto turned = [&](Vec3 way) { return turned_about(way, axis, angle_rad); };
  const Vec3 shift = from - turned(from);
  return {after.turned(turned({1, 0, 0})), after.turned(turned({0, 1, 0})), after.turned(turned({0, 0, 1})),
          after.moved(shift)};
}

}  // namespace

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
