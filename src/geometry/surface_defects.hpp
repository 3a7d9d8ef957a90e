#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "geometry/polyhedron.hpp"

namespace fw::geometry {

/// What keeps these loops from being the faces of a polyhedron: see Polyhedron::make.
[[nodiscard]] std::vector<std::string> surface_defects(const std::vector<Vec3>& vertices,
                                                       const std::vector<Polyhedron::Loop>& faces);

/// Where a directed side occurs.
struct SidePlace {
  FaceId face;
  std::size_t side = 0;
};
/// All sides of all faces by their ends, in running direction; one place each for a sound surface.
using SideTable = std::map<std::pair<VertexId, VertexId>, std::vector<SidePlace>>;
[[nodiscard]] SideTable side_table(const std::vector<Polyhedron::Loop>& faces);

[[nodiscard]] std::vector<Vec3> corners_of(const std::vector<Vec3>& vertices, const Polyhedron::Loop& loop);
/// The vector that stands upright on a flat polygon and is as long as its area. Source: Newell's method.
[[nodiscard]] Vec3 area_vector(const std::vector<Vec3>& corners);
/// A sixth of the triple products of all faces cut into triangles. Source: the divergence theorem.
[[nodiscard]] double enclosed_volume(const std::vector<Vec3>& vertices, const std::vector<Polyhedron::Loop>& faces);

}  // namespace fw::geometry
