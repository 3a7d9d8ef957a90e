#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/id.hpp"
#include "base/result.hpp"
#include "geometry/polygon.hpp"
#include "geometry/vectors.hpp"

namespace fw::geometry {

using VertexId = Id<struct VertexTag>;
using EdgeId = Id<struct EdgeTag>;
using FaceId = Id<struct FaceTag>;

struct Edge {
  VertexId from, to;   ///< from -> to runs counterclockwise round `left`, seen from outside
  FaceId left, right;  ///< the two faces that meet there
  friend bool operator==(const Edge&, const Edge&) = default;
};

/// A closed surface of flat faces in space: a value that cannot be half built.
class Polyhedron {
 public:
  using Loop = std::vector<VertexId>;

  /// Shape:  each loop runs counterclockwise round its face, seen from outside.
  /// Errors: a sentence for each defect: fewer than 4 faces, a face with fewer than 3 corners, a vertex
  ///         named twice in a face, an edge that does not belong to exactly two faces in opposite
  ///         directions, a face that is not flat or has no area, a surface in several pieces, a volume
  ///         that is not positive.
  [[nodiscard]] static Result<Polyhedron, std::vector<std::string>> make(std::vector<Vec3> vertices,
                                                                         std::vector<Loop> faces);

  [[nodiscard]] const IdVector<VertexId, Vec3>& vertices() const;
  [[nodiscard]] const IdVector<FaceId, Loop>& faces() const;
  [[nodiscard]] const IdVector<EdgeId, Edge>& edges() const;  ///< ordered by (face, side) of first appearance
  [[nodiscard]] const std::vector<EdgeId>& edges_of(FaceId face) const;        ///< side i runs from corner i to i + 1
  [[nodiscard]] std::optional<EdgeId> edge_between(FaceId a, FaceId b) const;  ///< the first one they share
  [[nodiscard]] FaceId other_face(EdgeId edge, FaceId face) const;
  [[nodiscard]] Vec3 normal(FaceId face) const;  ///< outward, length 1
  [[nodiscard]] std::vector<Vec3> corners(FaceId face) const;
  [[nodiscard]] std::pair<Vec3, Vec3> ends(EdgeId edge) const;
  /// Every defect of make(), found again; empty for a polyhedron. Called by tests after each operation.
  [[nodiscard]] std::vector<std::string> defects() const;
  friend bool operator==(const Polyhedron& a, const Polyhedron& b);

 private:
  struct Table;
  explicit Polyhedron(std::shared_ptr<const Table> table) : table_(std::move(table)) {}
  std::shared_ptr<const Table> table_;
};

/// The plane frame of a face: its corners as a counterclockwise polygon, and the way back to space.
struct FacePlane {
  Vec3 origin, right, up, normal;  ///< right x up = normal; each of length 1
  [[nodiscard]] Vec2 flat(Vec3 point) const;
  [[nodiscard]] Vec3 lifted(Vec2 point) const;
};
/// A frame in which the face "lies as it does in the solid": `up` is the direction in the face that
/// rises most steeply toward +z; for a level face +y (seen from above or, for the underside, kept unmirrored
/// from outside).
[[nodiscard]] FacePlane face_plane(const Polyhedron& polyhedron, FaceId face);
[[nodiscard]] Polygon flat_face(const Polyhedron& polyhedron, FaceId face);

}  // namespace fw::geometry
