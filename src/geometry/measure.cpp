#include "geometry/measure.hpp"

#include <cmath>

#include "base/ensure.hpp"
#include "geometry/surface_defects.hpp"
#include "geometry/tolerance.hpp"

namespace fw::geometry {
namespace {

constexpr double pi = 3.14159265358979323846;

/// The angle from `a` to `b` seen against `axis`, from -pi to pi.
double turn_rad(Vec3 a, Vec3 b, Vec3 axis) { return std::atan2(glm::dot(glm::cross(a, b), axis), glm::dot(a, b)); }

}  // namespace

double area(const Polyhedron& polyhedron, FaceId face) { return glm::length(area_vector(polyhedron.corners(face))); }

double surface_area(const Polyhedron& polyhedron) {
  double sum = 0;
  for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
    sum += area(polyhedron, FaceId::at(f));
  }
  return sum;
}

double volume(const Polyhedron& polyhedron) {
  return enclosed_volume({polyhedron.vertices().begin(), polyhedron.vertices().end()},
                         {polyhedron.faces().begin(), polyhedron.faces().end()});
}

double dihedral_angle_rad(const Polyhedron& polyhedron, EdgeId edge) {
  const Edge& found = polyhedron.edges()[edge];
  const auto [from, to] = polyhedron.ends(edge);
  return pi - turn_rad(polyhedron.normal(found.left), polyhedron.normal(found.right), glm::normalize(to - from));
}

double angle_defect_rad(const Polyhedron& polyhedron, VertexId vertex) {
  double sum = 0;
  for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
    const Polyhedron::Loop& loop = polyhedron.faces()[FaceId::at(f)];
    for (std::size_t i = 0; i < loop.size(); ++i) {
      if (loop[i] != vertex) {
        continue;
      }
      const Vec3 here = polyhedron.vertices()[vertex];
      const Vec3 next = polyhedron.vertices()[loop[(i + 1) % loop.size()]] - here;
      const Vec3 last = polyhedron.vertices()[loop[(i + loop.size() - 1) % loop.size()]] - here;
      const double angle_rad = turn_rad(next, last, polyhedron.normal(FaceId::at(f)));
      sum += angle_rad < 0 ? angle_rad + 2 * pi : angle_rad;
    }
  }
  return 2 * pi - sum;
}

bool is_convex(const Polyhedron& polyhedron) {
  const Box box = bounding_box({polyhedron.vertices().begin(), polyhedron.vertices().end()});
  for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
    const Vec3 normal = polyhedron.normal(FaceId::at(f));
    const Vec3 corner = polyhedron.vertices()[polyhedron.faces()[FaceId::at(f)].front()];
    for (const Vec3& vertex : polyhedron.vertices()) {
      if (glm::dot(vertex - corner, normal) > tolerance * box.diagonal()) {
        return false;
      }
    }
  }
  return true;
}

Box bounding_box(const std::vector<Vec3>& points) {
  ensure(!points.empty(), "no points have no bounding box");
  Box box{points.front(), points.front()};
  for (const Vec3& point : points) {
    box.lowest = {std::fmin(box.lowest.x, point.x), std::fmin(box.lowest.y, point.y), std::fmin(box.lowest.z, point.z)};
    box.highest = {std::fmax(box.highest.x, point.x), std::fmax(box.highest.y, point.y),
                   std::fmax(box.highest.z, point.z)};
  }
  return box;
}

}  // namespace fw::geometry
