#include "geometry/congruence.hpp"

#include <cmath>

#include "geometry/flat_math.hpp"

namespace fw::geometry {
namespace {

/// What a turn of the polygon leaves as it is: at each corner the side that leaves it and the turn into it, and how far
/// the corners before and behind lie apart, which tells needles apart where angles do not.
struct CornerShape {
  double side = 0, before = 0, chord = 0, straight = 0, turned = 0;
};

std::vector<CornerShape> corner_shapes(const Polygon& polygon) {
  std::vector<CornerShape> shapes;
  const std::size_t count = polygon.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Vec2 in = polygon[i] - polygon[(i + count - 1) % count];
    const Vec2 out = polygon[(i + 1) % count] - polygon[i];
    shapes.push_back({glm::length(out), glm::length(in), glm::length(in + out), glm::dot(in, out), cross(in, out)});
  }
  return shapes;
}

bool same_when_turned(const Polygon& a, const Polygon& b) {
  const double blur = rounding * diagonal(a);
  const std::vector<CornerShape> shapes_a = corner_shapes(a);
  const std::vector<CornerShape> shapes_b = corner_shapes(b);
  const auto same = [blur](const CornerShape& p, const CornerShape& q) {
    const auto near = [blur](double one, double other) { return std::abs(one - other) <= tolerance * one + blur; };
    const double scale = p.side * p.before;
    const double reach = tolerance * scale + blur * (p.side + p.before);
    return near(p.side, q.side) && near(p.chord, q.chord) && std::abs(p.straight - q.straight) <= reach &&
           std::abs(p.turned - q.turned) <= reach;
  };
  for (std::size_t offset = 0; offset < a.size(); ++offset) {
    std::size_t agreed = 0;
    while (agreed < a.size() && same(shapes_a[agreed], shapes_b[(agreed + offset) % a.size()])) {
      ++agreed;
    }
    if (agreed == a.size()) {
      return true;
    }
  }
  return false;
}

}  // namespace

bool congruent(const Polygon& a, const Polygon& b) {
  if (a.size() != b.size()) {
    return false;
  }
  if (a.empty() || same_when_turned(a, b)) {
    return true;
  }
  Polygon flipped;
  for (auto corner = b.rbegin(); corner != b.rend(); ++corner) {
    flipped.push_back({-corner->x, corner->y});
  }
  return same_when_turned(a, flipped);
}

IdVector<FaceId, std::size_t> congruence_groups(const Polyhedron& polyhedron) {
  IdVector<FaceId, std::size_t> groups;
  std::vector<Polygon> first_of_group;
  for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
    const Polygon polygon = flat_face(polyhedron, FaceId::at(f));
    std::size_t group = 0;
    while (group < first_of_group.size() && !congruent(first_of_group[group], polygon)) {
      ++group;
    }
    if (group == first_of_group.size()) {
      first_of_group.push_back(polygon);
    }
    groups.push_back(group);
  }
  return groups;
}

}  // namespace fw::geometry
