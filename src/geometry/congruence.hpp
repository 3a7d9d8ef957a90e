#pragma once

#include "geometry/polyhedron.hpp"

namespace fw::geometry {

/// Whether one polygon can be laid on the other, turned or flipped. Tolerance: geometry/tolerance.hpp.
[[nodiscard]] bool congruent(const Polygon& a, const Polygon& b);

/// The congruence class of each face, numbered from 0 in the order of first appearance.
[[nodiscard]] IdVector<FaceId, std::size_t> congruence_groups(const Polyhedron& polyhedron);

}  // namespace fw::geometry
