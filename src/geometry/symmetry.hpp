#pragma once

#include "geometry/polyhedron.hpp"

namespace fw::geometry {

/// One way to lay a polyhedron on itself: where each vertex, edge and face goes.
struct Symmetry {
  IdVector<VertexId, VertexId> vertex;
  IdVector<EdgeId, EdgeId> edge;
  IdVector<FaceId, FaceId> face;
  bool is_reflection = false;
};

/// All turns and flips that carry the polyhedron to itself, the identity first.
[[nodiscard]] std::vector<Symmetry> symmetries(const Polyhedron& polyhedron);

}  // namespace fw::geometry
