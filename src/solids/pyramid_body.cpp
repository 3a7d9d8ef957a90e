#include <algorithm>

#include "geometry/measure.hpp"
#include "geometry/polygon.hpp"
#include "solids/pyramid.hpp"

namespace fw::solids {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;
using geometry::Vec2;
using geometry::Vec3;

ExactPoint foot_of_apex(const PyramidPlan& plan, const ShapeBody& base, const algebra::Bindings& bindings) {
  if (!plan.apex_over) {
    return exact_centroid(base.corners);
  }
  const ExactPoint& start = base.corners[base.ran_clockwise ? 1 : 0];
  const ExactPoint& next = base.corners[base.ran_clockwise ? 0 : 1];
  const Number side = distance(start, next);
  const Number along = value_of(bindings, plan.over_along) / side;
  const Number inward = value_of(bindings, plan.over_across) / side;
  const Number across = base.ran_clockwise ? -inward : inward;
  const Number x = next.x - start.x;
  const Number y = next.y - start.y;
  return {start.x + along * x - across * y, start.y + along * y + across * x};
}

namespace {

/// The pyramid's points in space, about the middle of its base.
struct Points {
  std::vector<Vec3> corners;
  Vec3 foot, apex;
  Vec3 middle;
  Vec2 shift;
  [[nodiscard]] Vec3 on_base(const ExactPoint& point) const {
    const Vec2 place = flat(point) - shift;
    return {place.x, place.y, 0};
  }
  /// Where the slant height of side i meets that side's line.
  [[nodiscard]] Vec3 slant_foot(std::size_t i) const {
    const Vec3 start = corners[i];
    const Vec3 along = corners[(i + 1) % corners.size()] - start;
    return start + along * (glm::dot(foot - start, along) / glm::dot(along, along));
  }
  [[nodiscard]] Vec3 outward(std::size_t i) const {
    const Vec3 along = corners[(i + 1) % corners.size()] - corners[i];
    return glm::normalize(Vec3(along.y, -along.x, 0));
  }
  /// How much side i faces somebody who stands in front, a little to the right.
  [[nodiscard]] double facing(std::size_t i) const { return outward(i).x * 0.5 - outward(i).y; }
};

Points points_of(const PyramidPlan& plan, const ShapeBody& base, const algebra::Bindings& bindings) {
  std::vector<Vec3> corners;
  for (const ExactPoint& corner : base.corners) {
    const Vec2 place = flat(corner);
    corners.emplace_back(place.x, place.y, 0.0);
  }
  const Vec3 center = geometry::bounding_box(corners).center();
  Points points;
  points.shift = {center.x, center.y};
  geometry::Polygon outline;
  for (const Vec3& corner : corners) {
    points.corners.push_back(corner - center);
    outline.emplace_back(points.corners.back().x, points.corners.back().y);
  }
  const Vec2 middle = geometry::centroid(outline);
  points.middle = {middle.x, middle.y, 0};
  points.foot = points.on_base(foot_of_apex(plan, base, bindings));
  points.apex = points.foot + Vec3(0, 0, double_of(bindings, plan.height));
  return points;
}

Mark mark_at(const Symbol& symbol, const std::string& title, MarkPlace place, Vec3 from, Vec3 to) {
  Mark mark{symbol, title};
  mark.place = place;
  mark.from = from;
  mark.to = to;
  return mark;
}

/// For each distinct symbol of the sides, the side with it that is seen best.
std::vector<std::size_t> best_sides(const std::vector<Symbol>& of_side, const Points& points) {
  std::vector<std::size_t> best;
  for (std::size_t i = 0; i < of_side.size(); ++i) {
    const auto same = std::find_if(best.begin(), best.end(), [&](std::size_t j) { return of_side[j] == of_side[i]; });
    if (same == best.end()) {
      best.push_back(i);
    } else if (points.facing(i) > points.facing(*same)) {
      *same = i;
    }
  }
  return best;
}

void add_base_marks(BodyStatement& body, const PyramidPlan& plan, const ShapeBody& base, const Points& points) {
  for (const std::size_t i : best_sides(base.sides, points)) {
    Mark mark = mark_at(base.sides[i], plan.side_titles[i], MarkPlace::Edge, points.corners[i],
                        points.corners[(i + 1) % points.corners.size()]);
    for (const ShapeLength& length : base.lengths) {
      if (length.square_at_to && length.symbol == base.sides[i]) {
        mark.square_to = glm::normalize(points.corners[1] - points.corners[0]);
        mark.from = points.on_base(length.from);
        mark.to = points.on_base(length.to);
      }
    }
    body.marks.push_back(mark);
  }
  for (const ShapeLength& length : base.lengths) {
    if (std::find(base.sides.begin(), base.sides.end(), length.symbol) != base.sides.end()) {
      continue;
    }
    Mark mark =
        mark_at(length.symbol, length.title, MarkPlace::OnFace, points.on_base(length.from), points.on_base(length.to));
    mark.face = 0;
    if (length.is_height) {
      mark.square_to = opening(mark.from, mark.to, {0, 0, 1}, points.middle);
    }
    body.marks.push_back(mark);
  }
}

void add_apex_marks(BodyStatement& body, const PyramidPlan& plan, const ShapeBody& base, const Points& points) {
  const std::vector<std::size_t> slant_sides = best_sides(plan.slants, points);
  const std::size_t n = points.corners.size();
  std::size_t front = 0;
  for (std::size_t i = 0; i < n; ++i) {
    front = points.facing(i) > points.facing(front) ? i : front;
  }
  Mark height = mark_at(plan.height, "height of the pyramid", MarkPlace::Inside, points.apex, points.foot);
  const Vec3 to_side = points.slant_foot(front) - points.foot;
  height.square_to =
      glm::length(to_side) > 1e-9 * glm::length(points.apex - points.foot) ? glm::normalize(to_side) : Vec3(1, 0, 0);
  body.marks.push_back(height);
  for (const std::size_t i : slant_sides) {
    Mark slant = mark_at(plan.slants[i], plan.slant_titles[i], MarkPlace::OnFace, points.apex, points.slant_foot(i));
    slant.face = i + 1;
    slant.square_to = glm::normalize(points.corners[(i + 1) % n] - points.corners[i]);
    body.marks.push_back(slant);
  }
  if (plan.lateral_edge) {
    std::size_t corner = 0;
    const auto score = [&](std::size_t i) { return points.corners[i].x - points.corners[i].y; };
    for (std::size_t i = 1; i < n; ++i) {
      corner = score(i) > score(corner) ? i : corner;
    }
    body.marks.push_back(
        mark_at(*plan.lateral_edge, "lateral edge", MarkPlace::Edge, points.apex, points.corners[corner]));
  }
  if (plan.apex_over) {
    const Vec3 start = points.corners[base.ran_clockwise ? 1 : 0];
    const Vec3 along = glm::normalize(points.corners[base.ran_clockwise ? 0 : 1] - start);
    const Vec3 turn = start + along * glm::dot(points.foot - start, along);
    const double least = 1e-9 * glm::length(points.corners[1] - points.corners[0]);
    if (glm::length(turn - start) > least) {
      body.marks.push_back(mark_at(plan.over_along, "distance along the first side", MarkPlace::OnFace, start, turn));
      body.marks.back().face = 0;
    }
    if (glm::length(points.foot - turn) > least) {
      Mark across = mark_at(plan.over_across, "distance from the first side", MarkPlace::OnFace, points.foot, turn);
      across.face = 0;
      across.square_to = along;
      body.marks.push_back(across);
    }
  }
}

void add_faces(BodyStatement& body, const PyramidPlan& plan, const ShapeBody& base, const Points& points) {
  FaceStatement bottom;
  bottom.role = FaceRole::Base;
  bottom.shape = plan.base.noun;
  bottom.area = plan.base.area;
  for (const ShapeLength& length : base.lengths) {
    bottom.lengths.push_back(
        {length.symbol, length.title, points.on_base(length.from), points.on_base(length.to), length.is_height});
  }
  body.faces = {bottom};
  const std::size_t n = points.corners.size();
  for (std::size_t i = 0; i < n; ++i) {
    FaceStatement face;
    face.role = FaceRole::Lateral;
    face.shape = "triangle";
    face.area = half(Expression(base.sides[i]) * plan.slants[i]);
    face.lengths = {{base.sides[i], plan.side_titles[i], points.corners[i], points.corners[(i + 1) % n]},
                    {plan.slants[i], plan.slant_titles[i], points.apex, points.slant_foot(i), true}};
    body.faces.push_back(face);
  }
}

}  // namespace

BodyStatement pyramid_body(const PyramidPlan& plan, const algebra::Bindings& bindings) {
  const ShapeBody base = plan.base.body(bindings);
  const Points points = points_of(plan, base, bindings);
  const std::size_t n = points.corners.size();
  BodyStatement body;
  body.vertices = points.corners;
  body.vertices.push_back(points.apex);
  std::vector<std::size_t> bottom;
  for (std::size_t i = 0; i < n; ++i) {
    bottom.push_back(n - 1 - i);
  }
  body.loops = {bottom};
  for (std::size_t i = 0; i < n; ++i) {
    body.loops.push_back({i, (i + 1) % n, n});
    body.classic_hinges.push_back({0, i + 1});  // the star round the base
  }
  add_faces(body, plan, base, points);
  add_base_marks(body, plan, base, points);
  add_apex_marks(body, plan, base, points);
  if (plan.apex_over || !plan.lateral_edge) {
    choose_net(body, 1, n);
  }
  return body;
}

}  // namespace fw::solids
