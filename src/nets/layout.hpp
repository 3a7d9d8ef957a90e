#pragma once

#include "geometry/polygon.hpp"
#include "nets/hinge_tree.hpp"

namespace fw::nets {

using Layout = IdVector<FaceId, geometry::Polygon>;

/// The flat layout of `polyhedron` cut open along every edge that is no hinge of `tree`.
///
/// Shape:    one polygon a face, corner i of the polygon is corner i of the face; counterclockwise as
///           seen from outside.
/// Units:    those of the polyhedron's coordinates.
/// Guarantees:
///   (1) each polygon is congruent to its face;
///   (2) two faces joined by a hinge share that edge in the plane;
///   (3) the layout depends on the tree's root only by a rigid motion of the plane.
/// It may overlap itself: ask overlapping(). Source: definition of an edge unfolding.
[[nodiscard]] Layout unfolded(const Polyhedron& polyhedron, const HingeTree& tree);

/// The pairs of faces whose insides meet in the plane; empty for a net that can be cut from card.
[[nodiscard]] std::vector<std::pair<FaceId, FaceId>> overlapping(const Layout& layout);

/// The same for any polygons, as pairs of their places in the list.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> overlapping_pairs(
    const std::vector<geometry::Polygon>& polygons);

/// `polygon` turned and shifted so that the middle of its side comes to lie on the middle of `from` and `to`, running
/// that way.
[[nodiscard]] geometry::Polygon laid_on(const geometry::Polygon& polygon, std::size_t side, geometry::Vec2 from,
                                        geometry::Vec2 to);

}  // namespace fw::nets
