#pragma once

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "geometry/polyhedron.hpp"

namespace fw::solids {

using geometry::EdgeId;
using geometry::FaceId;
using geometry::Vec3;

/// A face laid flat: its outline in its own plane, and the way back to space.
struct FlatFace {
  geometry::FacePlane plane;  ///< as the face lies in the solid: up is up
  geometry::Polygon outline;  ///< counterclockwise from outside; side i runs from corner i to i + 1
};

/// A solid as it stands in space, asked for what a caller needs: how many faces, which edge, how long, seen from where.
/// All in coordinates; exact numbers are the Solid's. Nothing of how it is kept shows. Immutable; copies share.
class Body {
 public:
  explicit Body(geometry::Polyhedron facets) : facets_(std::move(facets)) {}

  [[nodiscard]] std::size_t face_count() const { return facets_.faces().size(); }
  [[nodiscard]] std::size_t edge_count() const { return facets_.edges().size(); }
  [[nodiscard]] std::size_t vertex_count() const { return facets_.vertices().size(); }
  /// How many sides a face has; as many corners.
  [[nodiscard]] std::size_t side_count(FaceId face) const { return edges_of(face).size(); }
  /// How many faces meet at each vertex.
  [[nodiscard]] std::vector<std::size_t> faces_at_vertices() const;

  /// The edges of a face in the order of its sides.
  [[nodiscard]] const std::vector<EdgeId>& edges_of(FaceId face) const { return facets_.edges_of(face); }
  /// The two faces that meet along an edge; it runs counterclockwise round the first.
  [[nodiscard]] std::pair<FaceId, FaceId> faces_at(EdgeId edge) const;
  /// The face on the other side of one of its edges.
  [[nodiscard]] FaceId across(EdgeId edge, FaceId face) const { return facets_.other_face(edge, face); }
  [[nodiscard]] std::optional<EdgeId> edge_between(FaceId a, FaceId b) const { return facets_.edge_between(a, b); }
  /// The edge of the face that a length lies along, whose ends are less than `slack` from it.
  [[nodiscard]] std::optional<EdgeId> edge_along(FaceId face, Vec3 from, Vec3 to, double slack) const;
  /// Whether faces, edges and vertices are joined in the same way, so that a net of one is a net of the other.
  [[nodiscard]] bool is_joined_like(const Body& other) const { return facets_.edges() == other.facets_.edges(); }

  [[nodiscard]] std::vector<double> edge_lengths() const;  ///< one an edge, in order
  [[nodiscard]] FlatFace flat(FaceId face) const;
  /// The flat faces whose outside looks this way. Requires: length 1.
  [[nodiscard]] std::vector<FaceId> faces_toward(Vec3 outward) const;
  /// Whether the eye is on the outer side of the face: it sees it, if nothing stands between.
  [[nodiscard]] bool is_before(FaceId face, Vec3 eye) const;
  /// How far the body reaches from the plane of one of its faces.
  [[nodiscard]] double height_over(FaceId face) const;

  /// The body in flat pieces, for the rooms where polyhedra are at home (geometry, nets), for this one and for tests.
  /// Exact, each facet being the face of the same id.
  [[nodiscard]] const geometry::Polyhedron& facets() const { return facets_; }

 private:
  geometry::Polyhedron facets_;
};

/// The mirror image in the plane x = 0, its faces in the same order.
[[nodiscard]] Body mirrored(const Body& body);

}  // namespace fw::solids
