#pragma once

#include <cstddef>
#include <vector>

#include "geometry/vectors.hpp"
#include "render/camera.hpp"

namespace fw::render {

/// The order in which flat faces are painted so that each covers what lies behind it: indices, farthest first.
/// Two faces are ordered by which side of each other's plane they lie on, and where neither plane parts them by
/// the depths where their pictures overlap; in a ring of faces that cover each other in turn the one with the
/// farthest middle comes first.
/// Source: the plane tests of Newell, Newell and Sancha (1972), from memory.
[[nodiscard]] std::vector<std::size_t> back_to_front(const std::vector<std::vector<geometry::Vec3>>& faces,
                                                     const Camera& camera);

}  // namespace fw::render
