#include "geometry/polyhedron.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "geometry/surface_defects.hpp"

namespace fw::geometry {

struct Polyhedron::Table {
  IdVector<VertexId, Vec3> vertices;
  IdVector<FaceId, Loop> faces;
  IdVector<EdgeId, Edge> edges;
  IdVector<FaceId, std::vector<EdgeId>> sides;
  IdVector<FaceId, Vec3> normals;
};

Result<Polyhedron, std::vector<std::string>> Polyhedron::make(std::vector<Vec3> vertices, std::vector<Loop> faces) {
  std::vector<std::string> found = surface_defects(vertices, faces);
  if (!found.empty()) {
    return failure(std::move(found));
  }
  auto table = std::make_shared<Table>();
  const SideTable sides = side_table(faces);
  table->sides = IdVector<FaceId, std::vector<EdgeId>>(faces.size());
  for (std::size_t f = 0; f < faces.size(); ++f) {
    const FaceId face = FaceId::at(f);
    const Loop& loop = faces[f];
    for (std::size_t i = 0; i < loop.size(); ++i) {
      const VertexId from = loop[i];
      const VertexId to = loop[(i + 1) % loop.size()];
      const SidePlace across = sides.at({to, from}).front();
      if (across.face < face) {
        table->sides[face].push_back(table->sides[across.face][across.side]);
      } else {
        table->sides[face].push_back(EdgeId::at(table->edges.size()));
        table->edges.push_back({from, to, face, across.face});
      }
    }
    table->normals.push_back(glm::normalize(area_vector(corners_of(vertices, loop))));
  }
  table->vertices = IdVector<VertexId, Vec3>(std::move(vertices));
  table->faces = IdVector<FaceId, Loop>(std::move(faces));
  return Polyhedron(std::move(table));
}

const IdVector<VertexId, Vec3>& Polyhedron::vertices() const { return table_->vertices; }
const IdVector<FaceId, Polyhedron::Loop>& Polyhedron::faces() const { return table_->faces; }
const IdVector<EdgeId, Edge>& Polyhedron::edges() const { return table_->edges; }
const std::vector<EdgeId>& Polyhedron::edges_of(FaceId face) const { return table_->sides[face]; }

std::optional<EdgeId> Polyhedron::edge_between(FaceId a, FaceId b) const {
  for (const EdgeId edge : edges_of(a)) {
    if (other_face(edge, a) == b) {
      return edge;
    }
  }
  return std::nullopt;
}

FaceId Polyhedron::other_face(EdgeId edge, FaceId face) const {
  const Edge& found = table_->edges[edge];
  ensure(found.left == face || found.right == face, "a face was asked for its neighbor at an edge that is not its own");
  return found.left == face ? found.right : found.left;
}

Vec3 Polyhedron::normal(FaceId face) const { return table_->normals[face]; }

std::vector<Vec3> Polyhedron::corners(FaceId face) const {
  std::vector<Vec3> points;
  points.reserve(table_->faces[face].size());
  for (const VertexId vertex : table_->faces[face]) {
    points.push_back(table_->vertices[vertex]);
  }
  return points;
}

std::pair<Vec3, Vec3> Polyhedron::ends(EdgeId edge) const {
  const Edge& found = table_->edges[edge];
  return {table_->vertices[found.from], table_->vertices[found.to]};
}

std::vector<std::string> Polyhedron::defects() const {
  return surface_defects({table_->vertices.begin(), table_->vertices.end()},
                         {table_->faces.begin(), table_->faces.end()});
}

bool operator==(const Polyhedron& a, const Polyhedron& b) {
  return a.table_ == b.table_ || (a.vertices() == b.vertices() && a.faces() == b.faces());
}

Vec2 FacePlane::flat(Vec3 point) const { return {glm::dot(point - origin, right), glm::dot(point - origin, up)}; }
Vec3 FacePlane::lifted(Vec2 point) const { return origin + right * point.x + up * point.y; }

FacePlane face_plane(const Polyhedron& polyhedron, FaceId face) {
  const Vec3 normal = polyhedron.normal(face);
  const auto in_face = [&normal](Vec3 direction) { return direction - normal * glm::dot(direction, normal); };
  constexpr double level = 1e-9;  // a slope this small is rounding, and its direction means nothing
  Vec3 up = in_face({0, 0, 1});
  if (glm::length(up) < level) {
    up = in_face({0, 1, 0});
  }
  up = glm::normalize(up);
  return {polyhedron.vertices()[polyhedron.faces()[face].front()], glm::normalize(glm::cross(up, normal)), up, normal};
}

Polygon flat_face(const Polyhedron& polyhedron, FaceId face) {
  const FacePlane plane = face_plane(polyhedron, face);
  Polygon polygon;
  polygon.reserve(polyhedron.faces()[face].size());
  for (const VertexId vertex : polyhedron.faces()[face]) {
    polygon.push_back(plane.flat(polyhedron.vertices()[vertex]));
  }
  return polygon;
}

}  // namespace fw::geometry
