#pragma once

#include <optional>

#include "geometry/polyhedron.hpp"

namespace fw::geometry {

struct Ray {
  Vec3 origin;
  Vec3 direction;  ///< of any length but zero
};
struct RayHit {
  FaceId face;
  double distance = 0;  ///< along the ray, in lengths of `direction`; >= 0
};

/// The nearest of several flat faces that the ray meets, from either side; faces[i] is the FaceId i.
/// Serves picking in any pose of a net. Shape: corners in order, flat, any simple polygon.
[[nodiscard]] std::optional<RayHit> nearest_hit(const std::vector<std::vector<Vec3>>& faces, const Ray& ray);

}  // namespace fw::geometry
