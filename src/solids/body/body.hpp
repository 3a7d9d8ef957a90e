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

/// A face laid flat: its outline in its own plane, and the way back to space. A face that bends is unrolled onto the
/// plane of its middle strip.
struct FlatFace {
  geometry::FacePlane plane;  ///< as the face lies in the solid: up is up
  geometry::Polygon outline;  ///< counterclockwise from outside; side i runs from corner i to i + 1
};

/// A solid as it stands in space, asked for what a caller needs: how many faces, which edge, how long, seen from where.
/// All in coordinates; exact numbers are the Solid's. Nothing of how it is kept shows. Immutable; copies share.
class Body {
 public:
  /// Each facet is a face.
  explicit Body(geometry::Polyhedron facets);
  /// `counts`: how many facets each face takes. Requires: faces of several facets come last, each a row of strips.
  /// `number_at`: beside them, where the number of a face stands; nothing: well inside.
  Body(geometry::Polyhedron facets, const std::vector<std::size_t>& counts,
       std::vector<std::optional<Vec3>> number_at = {});

  [[nodiscard]] std::size_t face_count() const { return starts_.size(); }
  [[nodiscard]] std::size_t edge_count() const { return rims_.size(); }  ///< a rim is one edge
  [[nodiscard]] std::size_t vertex_count() const { return faces_at_vertices().size(); }
  /// Whether the face unrolls: a part of a cylinder or a cone.
  [[nodiscard]] bool bends(FaceId face) const { return facet_count(face) > 1; }
  /// Whether all faces are flat.
  [[nodiscard]] bool is_flat_faced() const { return face_count() == facets_.faces().size(); }
  /// How many edges a face has round it: of a disk one, of a polygon as many as corners.
  [[nodiscard]] std::size_t side_count(FaceId face) const;
  /// How many faces meet at each vertex. The tip of a cone is one; a rim has none.
  [[nodiscard]] std::vector<std::size_t> faces_at_vertices() const;

  /// The edges of a flat face in the order of its sides.
  [[nodiscard]] const std::vector<EdgeId>& edges_of(FaceId face) const { return facets_.edges_of(face); }
  /// The two faces that meet along an edge; it runs counterclockwise round the first.
  [[nodiscard]] std::pair<FaceId, FaceId> faces_at(EdgeId edge) const;
  /// The face on the other side of one of its edges. Requires: both are flat.
  [[nodiscard]] FaceId across(EdgeId edge, FaceId face) const { return facets_.other_face(edge, face); }
  [[nodiscard]] std::optional<EdgeId> edge_between(FaceId a, FaceId b) const { return facets_.edge_between(a, b); }
  /// The edge of the face that a length lies along, whose ends are less than `slack` from it; on a face that bends also
  /// a straight line on it that isn't an edge.
  [[nodiscard]] std::optional<EdgeId> edge_along(FaceId face, Vec3 from, Vec3 to, double slack) const;
  /// Whether faces, edges and vertices are joined in the same way, so that a net of one is a net of the other.
  [[nodiscard]] bool is_joined_like(const Body& other) const { return facets_.edges() == other.facets_.edges(); }

  [[nodiscard]] std::vector<double> edge_lengths() const;  ///< one an edge, in order; of a rim all round it
  [[nodiscard]] FlatFace flat(FaceId face) const;
  /// Where the number of the face stands, in the plane of flat().
  [[nodiscard]] geometry::Vec2 label_point(FaceId face) const;
  /// The flat faces whose outside looks this way. Requires: length 1.
  [[nodiscard]] std::vector<FaceId> faces_toward(Vec3 outward) const;
  /// Whether the eye is on the outer side of the face: it sees it, if nothing stands between.
  [[nodiscard]] bool is_before(FaceId face, Vec3 eye) const;
  /// How far the body reaches from the plane of one of its faces.
  [[nodiscard]] double height_over(FaceId face) const;

  /// The body in flat pieces, for the rooms where polyhedra are at home (geometry, nets), for this one and for tests.
  /// A flat face is the facet of the same id, and exact; one that bends is a row of strips, as long as the rim
  /// together.
  [[nodiscard]] const geometry::Polyhedron& facets() const { return facets_; }
  [[nodiscard]] FaceId first_facet(FaceId face) const { return FaceId::at(starts_[face.index()]); }
  [[nodiscard]] std::size_t facet_count(FaceId face) const;
  [[nodiscard]] FaceId face_of(FaceId facet) const { return faces_[facet.index()]; }
  [[nodiscard]] std::size_t facet_edge_count() const { return facets_.edges().size(); }
  /// The strips of a face that bends as they lie unrolled, in the plane of flat(); of a flat face none.
  [[nodiscard]] const std::vector<geometry::Polygon>& strips(FaceId face) const { return strips_[face.index()]; }
  /// A face that bends in one piece. `facets`: all of them, laid out in some plane.
  [[nodiscard]] geometry::Polygon outline_of_strips(FaceId face, const std::vector<geometry::Polygon>& facets) const;
  /// Whether two strips of one face meet there, so that nobody sees an edge.
  [[nodiscard]] bool is_smooth(EdgeId facet_edge) const;

 private:
  geometry::Polyhedron facets_;
  std::vector<std::size_t> starts_;        ///< of each face: its first facet
  std::vector<FaceId> faces_;              ///< of each facet: its face
  std::vector<std::vector<EdgeId>> rims_;  ///< of each edge: the facet edges that it is made of
  std::vector<std::vector<geometry::Polygon>> strips_;
  std::vector<std::optional<Vec3>> number_at_;
};

/// The faces that can be laid on each other, turned or flipped: of each the number of its group, in the order of first
/// appearance.
[[nodiscard]] std::vector<std::size_t> congruence_groups(const Body& body);

/// The mirror image in the plane x = 0, its faces in the same order.
[[nodiscard]] Body mirrored(const Body& body);

}  // namespace fw::solids
