#pragma once

#include <vector>

#include "nets/folding.hpp"
#include "solids/body/body.hpp"

namespace fw::solids {

/// A body in flat pieces to draw and to pick, at one place of the fold; one entry of each list a facet. A face that
/// bends comes in strips, so narrow that it looks round.
struct Standing {
  nets::Pose corners;                       ///< [facet][corner], counterclockwise from outside
  std::vector<FaceId> faces;                ///< the face that a facet belongs to
  std::vector<geometry::Polygon> outlines;  ///< in the plane of its face (Body::flat): hatches move with the face
  std::vector<std::vector<bool>> smooth;    ///< [facet][side]: the face goes on there; empty where none does
};

/// The body with its net opened by `amount`, 0 closed and 1 flat. The face on which the net stands does not move.
[[nodiscard]] Standing standing(const Body& body, const nets::HingeTree& net, double amount, nets::FoldOrder order);

/// How many things turn after each other at FoldOrder::OneByOne: each hinge, and each face that unrolls.
[[nodiscard]] std::size_t fold_steps(const Body& body, const nets::HingeTree& net);

/// Turns what stands there so that the outside of the face `root` looks down onto the table, as the base of a solid
/// does, its first corner at the origin; then by `turn_rad` on the table.
void lay_on_table(Standing& standing, const Body& body, FaceId root, double turn_rad);

/// A face as it stands now: carries points of the closed solid to where the face took them. Lives no longer than its
/// body.
class PlacedFace {
 public:
  /// `pose`: Standing::corners.
  PlacedFace(const Body& body, const nets::Pose& pose, FaceId face);
  /// Where a point of the closed solid, moving with this face, stands now.
  [[nodiscard]] Vec3 carried(Vec3 point) const;
  /// Where a point of the face laid flat (in the plane of Body::flat), such as the end of a FaceLength, stands now.
  [[nodiscard]] Vec3 laid(Vec3 point) const;
  /// A point well inside the face, where its number stands now.
  [[nodiscard]] Vec3 label_point() const;
  /// A point in the middle of one of its facets.
  [[nodiscard]] Vec3 middle_of(std::size_t facet) const;

 private:
  [[nodiscard]] Vec3 at(geometry::Vec2 laid) const;
  /// A facet in its rest and now.
  struct Facet {
    geometry::FacePlane plane;  ///< in the closed solid
    geometry::Polygon outline;  ///< in that plane
    geometry::Polygon laid;     ///< in the plane of Body::flat
    geometry::FacePlane now;
  };
  const Body* body_;
  FaceId face_;
  FlatFace rest_;
  std::vector<Facet> facets_;
};

}  // namespace fw::solids
