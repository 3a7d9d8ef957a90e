#pragma once

#include "geometry/polyhedron.hpp"

namespace fw::geometry {

[[nodiscard]] double area(const Polyhedron& polyhedron, FaceId face);
[[nodiscard]] double surface_area(const Polyhedron& polyhedron);
/// Source: the divergence theorem (a sum of signed tetrahedra).
[[nodiscard]] double volume(const Polyhedron& polyhedron);
/// Angle inside the solid between the two faces at an edge, 0 to 2 pi.
[[nodiscard]] double dihedral_angle_rad(const Polyhedron& polyhedron, EdgeId edge);
/// 2 pi less the face angles at the vertex. Their sum is 4 pi. Source: Descartes.
[[nodiscard]] double angle_defect_rad(const Polyhedron& polyhedron, VertexId vertex);
[[nodiscard]] bool is_convex(const Polyhedron& polyhedron);

struct Box {
  Vec3 lowest, highest;
  [[nodiscard]] Vec3 center() const { return (lowest + highest) * 0.5; }
  [[nodiscard]] double diagonal() const { return glm::length(highest - lowest); }
};
[[nodiscard]] Box bounding_box(const std::vector<Vec3>& points);

}  // namespace fw::geometry
