#include "geometry/ray.hpp"

#include <cmath>

#include "geometry/surface_defects.hpp"

namespace fw::geometry {
namespace {

/// The plane seen along the axis that it faces most, which keeps every polygon in it open to view.
Vec2 seen_along(Vec3 normal, Vec3 point) {
  const Vec3 facing = {std::abs(normal.x), std::abs(normal.y), std::abs(normal.z)};
  if (facing.z >= facing.x && facing.z >= facing.y) {
    return {point.x, point.y};
  }
  return facing.x >= facing.y ? Vec2{point.y, point.z} : Vec2{point.z, point.x};
}

}  // namespace

std::optional<RayHit> nearest_hit(const std::vector<std::vector<Vec3>>& faces, const Ray& ray) {
  std::optional<RayHit> nearest;
  Polygon flat;
  for (std::size_t f = 0; f < faces.size(); ++f) {
    if (faces[f].size() < 3) {
      continue;
    }
    const Vec3 normal = area_vector(faces[f]);
    const double approach = glm::dot(ray.direction, normal);
    if (!(std::abs(approach) > 0)) {
      continue;  // along the face, or a face without an area
    }
    const double distance = glm::dot(faces[f].front() - ray.origin, normal) / approach;
    if (!(distance >= 0) || !std::isfinite(distance) || (nearest && distance >= nearest->distance)) {
      continue;
    }
    flat.clear();
    for (const Vec3& corner : faces[f]) {
      flat.push_back(seen_along(normal, corner - ray.origin));
    }
    if (contains(flat, seen_along(normal, ray.direction * distance))) {
      nearest = RayHit{FaceId::at(f), distance};
    }
  }
  return nearest;
}

}  // namespace fw::geometry
