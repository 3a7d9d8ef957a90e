#pragma once

#include <utility>
#include <vector>

#include "geometry/polyhedron.hpp"

namespace fw::solids {

/// A regular polyhedron of edge 1, with its usual net. Loops run counterclockwise seen from outside.
struct RegularShape {
  std::vector<geometry::Vec3> vertices;
  std::vector<std::vector<std::size_t>> loops;
  std::vector<std::pair<std::size_t, std::size_t>> hinges;
};
[[nodiscard]] RegularShape regular_tetrahedron();   ///< net: a star of three triangles round one
[[nodiscard]] RegularShape regular_hexahedron();    ///< net: the cross
[[nodiscard]] RegularShape regular_octahedron();    ///< net: a band of six triangles, one more on each side
[[nodiscard]] RegularShape regular_dodecahedron();  ///< net: two flowers of six pentagons
[[nodiscard]] RegularShape regular_icosahedron();   ///< net: a band of ten triangles, five more on each side
/// Turned and moved so that face 0 lies level at the bottom, at z = 0, with an edge in front and the z axis
/// through its center.
[[nodiscard]] RegularShape laid_down(RegularShape shape);

}  // namespace fw::solids
