#include "solids/body/body.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"

namespace fw::solids {

using geometry::Polyhedron;

namespace {

/// Distance of a point from the line through a segment.
double distance_to(Vec3 point, Vec3 from, Vec3 to) {
  const Vec3 along = to - from;
  const double length = glm::length(along);
  return length == 0 ? glm::length(point - from) : glm::length(glm::cross(along, point - from)) / length;
}

}  // namespace

std::vector<std::size_t> Body::faces_at_vertices() const {
  std::vector<std::size_t> meeting(vertex_count(), 0);
  for (const Polyhedron::Loop& loop : facets_.faces()) {
    for (const geometry::VertexId vertex : loop) {
      ++meeting[vertex.index()];
    }
  }
  return meeting;
}

std::pair<FaceId, FaceId> Body::faces_at(EdgeId edge) const {
  const geometry::Edge& found = facets_.edges()[edge];
  return {found.left, found.right};
}

std::optional<EdgeId> Body::edge_along(FaceId face, Vec3 from, Vec3 to, double slack) const {
  const std::vector<Vec3> corners = facets_.corners(face);
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Vec3& a = corners[i];
    const Vec3& b = corners[(i + 1) % corners.size()];
    if (distance_to(from, a, b) < slack && distance_to(to, a, b) < slack) {
      return edges_of(face)[i];
    }
  }
  return std::nullopt;
}

std::vector<double> Body::edge_lengths() const {
  std::vector<double> lengths;
  for (std::size_t i = 0; i < edge_count(); ++i) {
    const auto [from, to] = facets_.ends(EdgeId::at(i));
    lengths.push_back(glm::length(to - from));
  }
  return lengths;
}

FlatFace Body::flat(FaceId face) const {
  return {geometry::face_plane(facets_, face), geometry::flat_face(facets_, face)};
}

std::vector<FaceId> Body::faces_toward(Vec3 outward) const {
  constexpr double level = 1e-12;  // the slope of a pyramid as flat as its numbers can be is more
  std::vector<FaceId> faces;
  for (std::size_t i = 0; i < face_count(); ++i) {
    const Vec3 normal = facets_.normal(FaceId::at(i));
    if (glm::dot(normal, outward) > 0 && glm::length(glm::cross(normal, outward)) < level) {
      faces.push_back(FaceId::at(i));
    }
  }
  return faces;
}

bool Body::is_before(FaceId face, Vec3 eye) const {
  const Vec3 corner = facets_.vertices()[facets_.faces()[face].front()];
  return glm::dot(facets_.normal(face), corner - eye) < 0;
}

double Body::height_over(FaceId face) const {
  const geometry::FacePlane floor = geometry::face_plane(facets_, face);
  double height = 0;
  for (const Vec3& vertex : facets_.vertices()) {
    height = std::max(height, std::abs(glm::dot(vertex - floor.origin, floor.normal)));
  }
  return height;
}

Body mirrored(const Body& body) {
  std::vector<Vec3> vertices;
  for (const Vec3& v : body.facets().vertices()) {
    vertices.push_back({-v.x, v.y, v.z});
  }
  std::vector<Polyhedron::Loop> loops;
  for (Polyhedron::Loop loop : body.facets().faces()) {
    std::reverse(loop.begin(), loop.end());
    loops.push_back(std::move(loop));
  }
  auto image = Polyhedron::make(std::move(vertices), std::move(loops));
  ensure(image.has_value(), "the mirror image of a polyhedron is a polyhedron");
  return Body(std::move(image).value());
}

}  // namespace fw::solids
