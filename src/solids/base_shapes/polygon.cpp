#include <algorithm>

#include "solids/base_shapes/shape_table.hpp"
#include "solids/base_shapes/strips.hpp"

#include "geometry/polygon.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;

constexpr std::size_t most_corners = 40;

std::vector<ExactPoint> corners_of(const Description& description) {
  std::vector<ExactPoint> corners;
  const auto found = description.fields.find("vertices");
  if (found != description.fields.end()) {
    if (const auto* points = std::get_if<std::vector<PointEntry>>(&found->second)) {
      for (const PointEntry& point : *points) {
        corners.push_back({point.x.value, point.y.value});
      }
    }
  }
  return corners;
}

/// Twice the area of the triangle a, b, c: positive for a turn to the left.
Number turn(const ExactPoint& a, const ExactPoint& b, const ExactPoint& c) {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool is_same(const ExactPoint& a, const ExactPoint& b) { return a.x == b.x && a.y == b.y; }

/// A corner that is listed twice, or that makes no corner.
std::optional<words::Message> corner_fault(const std::vector<ExactPoint>& corners) {
  const std::size_t count = corners.size();
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t j = i + 1; j < count; ++j) {
      if (is_same(corners[i], corners[j])) {
        const bool are_neighbors = j == i + 1 || (i == 0 && j + 1 == count);
        return are_neighbors
                   ? message("corners {first} and {second} of the polygon are the same point: list it once",
                             {{"first", i + 1}, {"second", j + 1}})
                   : message(
                         "corners {first} and {second} of the polygon are the same point: its sides must not touch "
                         "each other",
                         {{"first", i + 1}, {"second", j + 1}});
      }
    }
  }
  for (std::size_t i = 0; i < count; ++i) {
    const ExactPoint& before = corners[(i + count - 1) % count];
    const ExactPoint& after = corners[(i + 1) % count];
    if (!turn(before, corners[i], after).is_zero()) {
      continue;
    }
    const Number straight =
        (corners[i].x - before.x) * (after.x - corners[i].x) + (corners[i].y - before.y) * (after.y - corners[i].y);
    return straight.sign() > 0
               ? message("corner {corner} of the polygon lies on the line through its neighbors: leave it out",
                         {{"corner", i + 1}})
               : message("at corner {corner} the polygon turns back along the side that it came: leave that corner out",
                         {{"corner", i + 1}});
  }
  return std::nullopt;
}

std::vector<Fault> faults_of(const std::vector<ExactPoint>& corners) {
  const std::string measure = "base.vertices";
  if (corners.size() < 3 || corners.size() > most_corners) {
    return {
        impossible(measure, message("a polygon here has 3 to 40 corners, not {count}", {{"count", corners.size()}}))};
  }
  if (const auto fault = corner_fault(corners)) {
    return {impossible(measure, *fault)};
  }
  geometry::Polygon outline;
  for (const ExactPoint& corner : corners) {
    outline.push_back(flat(corner));
  }
  if (!geometry::is_simple(outline)) {
    return {impossible(measure, message("the sides of a polygon must not cross or touch each other"))};
  }
  return {};
}

bool is_convex(const std::vector<ExactPoint>& corners) {
  for (std::size_t i = 0; i < corners.size(); ++i) {
    if (turn(corners[i], corners[(i + 1) % corners.size()], corners[(i + 2) % corners.size()]).sign() < 0) {
      return false;
    }
  }
  return true;
}

/// "Cut it into 2 rectangles and 1 triangle, and add their areas: 9 × 4 + ...", as long as a class would.
words::Message area_reason(const std::vector<ExactPoint>& corners) {
  constexpr std::size_t most_pieces = 8;
  const Strips strips = cut_into_strips(corners);
  if (strips.count() > most_pieces) {
    return message("cut the polygon into {count} strips, straight through its corners, and add their areas",
                   {{"count", strips.count()}});
  }
  std::vector<words::Message> pieces;
  if (strips.rectangles > 0) {
    pieces.push_back(message("{count} {count:rectangle|rectangles}", {{"count", strips.rectangles}}));
  }
  if (strips.triangles > 0) {
    pieces.push_back(message("{count} {count:triangle|triangles}", {{"count", strips.triangles}}));
  }
  if (strips.trapezoids > 0) {
    pieces.push_back(message("{count} {count:trapezoid|trapezoids}", {{"count", strips.trapezoids}}));
  }
  return strips.count() == 1 ? message("find the area of the base: {work}", {{"work", strips.work}})
                             : message("cut the base into {pieces:and}, and add their areas: {work}",
                                       {{"pieces", pieces}, {"work", strips.work}});
}

Stated stated_polygon(const Description& description) {
  std::vector<ExactPoint> corners = corners_of(description);
  const std::vector<Fault> faults = faults_of(corners);
  if (!faults.empty()) {
    return failure(faults);
  }
  const bool runs_clockwise = exact_area(corners).sign() < 0;
  if (runs_clockwise) {
    // The first side stays the first.
    std::reverse(corners.begin(), corners.end());
    std::rotate(corners.begin(), corners.end() - 2, corners.end());
  }
  const int count = static_cast<int>(corners.size());
  ShapeStatement shape;
  shape.noun = polygon_noun(count);
  shape.adjective = polygon_adjective(count);
  shape.other_adjectives.push_back("polygonal");
  shape.other_adjectives.push_back(name_of({std::to_string(count), "sided"}));
  if (count == 3) {
    shape.pyramid_names = {"tetrahedron"};
  }
  shape.is_convex = is_convex(corners);
  std::vector<Expression> lengths;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Symbol side = base_symbol("side." + std::to_string(i + 1), "s" + subscript(i + 1));
    shape.sides.push_back(side);
    shape.measures.push_back(base_measure(side, "side", "vertices", i));
    shape.relations.push_back({{side, distance(corners[i], corners[(i + 1) % corners.size()])},
                               message("the distance between two corners of the polygon")});
    lengths.emplace_back(side);
  }
  shape.area = Expression(exact_area(corners));
  add_perimeter_and_area(shape, sum_of(lengths), message("the perimeter is the sum of all the sides"),
                         area_reason(corners));
  shape.body = [corners, sides = shape.sides, runs_clockwise](const algebra::Bindings&) {
    ShapeBody body;
    body.ran_clockwise = runs_clockwise;
    body.corners = corners;
    body.sides = sides;
    return body;
  };
  return shape;
}

PointEntry point(const std::string& x, const std::string& y) {
  return {*exact::parse_number(x), *exact::parse_number(y)};
}

}  // namespace

ShapeKind polygon() {
  Field vertices;
  vertices.key = "vertices";
  vertices.type = FieldType::Points;
  vertices.title = "corners";
  vertices.least = 3;
  vertices.most = static_cast<int>(most_corners);
  Field unit;
  unit.key = "unit";
  unit.type = FieldType::Word;
  unit.title = "unit";
  for (const units::Unit& length : units::Unit::lengths()) {
    unit.words.push_back(length.text());
  }
  const std::vector<PointEntry> house{point("0", "0"), point("12", "0"), point("12", "7"), point("6", "15"),
                                      point("0", "7")};
  const std::vector<PointEntry> angle{point("0", "0"), point("12", "0"), point("12", "5"),
                                      point("5", "5"), point("5", "11"), point("0", "11")};
  return {"polygon",
          {vertices, unit},
          &stated_polygon,
          example("polygon", {{"vertices", house}, {"unit", std::string("cm")}}),
          {example("polygon", {{"vertices", angle}, {"unit", std::string("cm")}})}};
}

}  // namespace fw::solids::shape
