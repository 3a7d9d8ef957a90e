#include "solids/body/standing.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "geometry/flat_math.hpp"

namespace fw::solids {

using geometry::Vec2;

namespace {

/// What opens after each other: a hinge between two faces turns, or all strips of a face unroll together. Of each facet
/// the step in which its hinge turns, and how many there are; the ones next to the root first.
struct FoldSteps {
  IdVector<FaceId, std::size_t> of;
  std::size_t count = 0;
};

FoldSteps steps_of(const Body& body, const nets::HingeTree& net) {
  FoldSteps steps{IdVector<FaceId, std::size_t>(net.order().size()), 0};
  std::map<std::pair<FaceId, bool>, std::size_t> known;
  for (const FaceId facet : net.order()) {
    if (const auto& link = net.link(facet)) {
      steps.of[facet] =
          known.try_emplace({body.face_of(facet), body.is_smooth(link->hinge)}, known.size()).first->second;
    }
  }
  steps.count = known.size();
  return steps;
}

IdVector<FaceId, double> strip_amounts(const Body& body, const nets::HingeTree& net, double amount,
                                       nets::FoldOrder order) {
  IdVector<FaceId, double> amounts = nets::hinge_amounts(net, amount, nets::FoldOrder::Together);
  if (order == nets::FoldOrder::OneByOne) {
    const FoldSteps steps = steps_of(body, net);
    for (const FaceId facet : net.order()) {
      const std::size_t turn = steps.count - 1 - steps.of[facet];  // the outermost first
      amounts[facet] = std::clamp(amount * static_cast<double>(steps.count) - static_cast<double>(turn), 0.0, 1.0);
    }
  }
  amounts[net.root()] = 0;
  return amounts;
}

}  // namespace

std::size_t fold_steps(const Body& body, const nets::HingeTree& net) { return steps_of(body, net).count; }

Standing standing(const Body& body, const nets::HingeTree& net, double amount, nets::FoldOrder order) {
  Standing result;
  result.corners = body.is_flat_faced() ? nets::pose(body.facets(), net, amount, order)
                                        : nets::pose(body.facets(), net, strip_amounts(body, net, amount, order));
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    const FaceId face = FaceId::at(i);
    result.faces.insert(result.faces.end(), body.facet_count(face), face);
    if (!body.bends(face)) {
      result.outlines.push_back(body.flat(face).outline);
      continue;
    }
    const std::vector<geometry::Polygon>& strips = body.strips(face);
    result.outlines.insert(result.outlines.end(), strips.begin(), strips.end());
  }
  for (std::size_t i = 0; i < result.faces.size() && !body.is_flat_faced(); ++i) {
    result.smooth.emplace_back();
    for (const EdgeId edge : body.facets().edges_of(FaceId::at(i))) {
      result.smooth.back().push_back(body.is_smooth(edge));
    }
  }
  return result;
}

void lay_on_table(Standing& standing, const Body& body, FaceId root, double turn_rad) {
  const Vec3 normal = body.facets().normal(root);
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

namespace {

/// The frame that a facet has now, found from two of its corners far apart. `rest`: its outline in its own plane.
geometry::FacePlane plane_now(const std::vector<Vec3>& now, const geometry::Polygon& rest) {
  const Vec2 flat_side = rest[1] - rest[0];
  const Vec3 side = glm::normalize(now[1] - now[0]);
  Vec3 normal{};
  for (std::size_t i = 0; i < now.size(); ++i) {
    normal += glm::cross(now[i] - now[0], now[(i + 1) % now.size()] - now[0]);
  }
  normal = glm::normalize(normal);
  const Vec3 across = glm::cross(normal, side);
  const double length = glm::length(flat_side);
  const double cosine = flat_side.x / length;
  const double sine = flat_side.y / length;
  const Vec3 right = side * cosine - across * sine;
  const Vec3 up = side * sine + across * cosine;
  return {now[0] - right * rest[0].x - up * rest[0].y, right, up, normal};
}

/// How far a point is from a polygon; 0 within.
double distance_from(const geometry::Polygon& polygon, Vec2 point) {
  if (geometry::contains(polygon, point)) {
    return 0;
  }
  double least = 1e300;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    least = std::min(least, geometry::distance_to_segment(point, polygon[i], polygon[(i + 1) % polygon.size()]));
  }
  return least;
}

/// The point of one polygon that lies as `point` lies in a congruent one.
Vec2 moved_along(const geometry::Polygon& from, const geometry::Polygon& to, Vec2 point) {
  const Vec2 side = from[1] - from[0];
  const Vec2 other = to[1] - to[0];
  const double length = glm::dot(side, side);
  const Vec2 offset = point - from[0];
  const double along = glm::dot(offset, side) / length;
  const double across = (side.x * offset.y - side.y * offset.x) / length;
  return to[0] + other * along + Vec2{-other.y, other.x} * across;
}

}  // namespace

PlacedFace::PlacedFace(const Body& body, const nets::Pose& pose, FaceId face)
    : body_(&body), face_(face), rest_(body.flat(face)) {
  if (!body.bends(face)) {
    facets_.push_back({rest_.plane, rest_.outline, rest_.outline, plane_now(pose[face.index()], rest_.outline)});
    return;
  }
  const std::size_t first = body.first_facet(face).index();
  const std::vector<geometry::Polygon>& strips = body.strips(face);
  for (std::size_t i = 0; i < strips.size(); ++i) {
    const FaceId facet = FaceId::at(first + i);
    const geometry::Polygon outline = geometry::flat_face(body.facets(), facet);
    facets_.push_back(
        {geometry::face_plane(body.facets(), facet), outline, strips[i], plane_now(pose[facet.index()], outline)});
  }
}

Vec3 PlacedFace::at(Vec2 laid) const {
  const auto nearest = std::min_element(facets_.begin(), facets_.end(), [&](const Facet& a, const Facet& b) {
    return distance_from(a.laid, laid) < distance_from(b.laid, laid);
  });
  return nearest->now.lifted(moved_along(nearest->laid, nearest->outline, laid));
}

Vec3 PlacedFace::carried(Vec3 point) const {
  const auto off = [&](const Facet& facet) {
    const double above = glm::dot(point - facet.plane.origin, facet.plane.normal);
    return std::abs(above) + distance_from(facet.outline, facet.plane.flat(point));
  };
  const auto nearest =
      std::min_element(facets_.begin(), facets_.end(), [&](const Facet& a, const Facet& b) { return off(a) < off(b); });
  const double above = glm::dot(point - nearest->plane.origin, nearest->plane.normal);
  return nearest->now.lifted(nearest->plane.flat(point)) + nearest->now.normal * above;
}

Vec3 PlacedFace::laid(Vec3 point) const { return at(rest_.plane.flat(point)); }

Vec3 PlacedFace::label_point() const { return at(body_->label_point(face_)); }

Vec3 PlacedFace::middle_of(std::size_t facet) const {
  return facets_[facet].now.lifted(geometry::centroid(facets_[facet].outline));
}

}  // namespace fw::solids
