#include "solids/body/standing.hpp"

#include <cmath>

namespace fw::solids {

using geometry::Vec2;

Standing standing(const Body& body, const nets::HingeTree& net, double amount, nets::FoldOrder order) {
  Standing result;
  result.corners = nets::pose(body.facets(), net, amount, order);
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    result.faces.push_back(FaceId::at(i));
    result.outlines.push_back(body.flat(FaceId::at(i)).outline);
  }
  return result;
}

void lay_on_table(Standing& standing, const Body& body, FaceId root, double turn_rad) {
  const Vec3 normal = body.flat(root).plane.normal;
  const Vec3 corner = standing.corners[root.index()].front();
  const Vec3 down{0, 0, -1};
  const Vec3 axis_raw = glm::cross(normal, down);
  const double sine = glm::length(axis_raw);
  const Vec3 axis = sine > 1e-12 ? axis_raw / sine : Vec3{1, 0, 0};
  const double angle = std::atan2(sine, glm::dot(normal, down));
  const auto rotated = [](Vec3 v, Vec3 k, double a) {
    return v * std::cos(a) + glm::cross(k, v) * std::sin(a) + k * (glm::dot(k, v) * (1 - std::cos(a)));
  };
  for (std::vector<Vec3>& facet : standing.corners) {
    for (Vec3& point : facet) {
      point = rotated(rotated(point - corner, axis, angle), {0, 0, 1}, turn_rad);
    }
  }
}

PlacedFace::PlacedFace(const Body& body, const nets::Pose& pose, FaceId face) : rest_(body.flat(face)) {
  // The frame that the face has now, found from two of its corners far apart.
  const std::vector<Vec3>& now = pose[face.index()];
  const Vec2 corner = rest_.outline[0];
  const Vec2 flat_side = rest_.outline[1] - corner;
  const Vec3 side = glm::normalize(now[1] - now[0]);
  Vec3 normal{};
  for (std::size_t i = 0; i < now.size(); ++i) {
    normal += glm::cross(now[i] - now[0], now[(i + 1) % now.size()] - now[0]);
  }
  normal_ = glm::normalize(normal);
  const Vec3 across = glm::cross(normal_, side);
  const double length = glm::length(flat_side);
  const double cosine = flat_side.x / length;
  const double sine = flat_side.y / length;
  right_ = side * cosine - across * sine;
  up_ = side * sine + across * cosine;
  origin_ = now[0] - right_ * corner.x - up_ * corner.y;
}

Vec3 PlacedFace::at(Vec2 point) const { return origin_ + right_ * point.x + up_ * point.y; }

Vec3 PlacedFace::carried(Vec3 point) const {
  const double above = glm::dot(point - rest_.plane.origin, rest_.plane.normal);
  return at(rest_.plane.flat(point)) + normal_ * above;
}

Vec3 PlacedFace::label_point() const { return at(geometry::label_point(rest_.outline)); }

}  // namespace fw::solids
