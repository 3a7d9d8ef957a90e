#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

Stated stated_square(const Description&) {
  const algebra::Symbol s = base_symbol("side", "s");
  ShapeStatement shape;
  shape.noun = "square";
  shape.adjective = "square";
  shape.prism_names = {"rectangular prism", "cuboid", "rectangular solid", "rectangular parallelepiped"};
  shape.pyramid_names = {"rectangular pyramid"};
  shape.is_regular = true;
  shape.sides = {s, s, s, s};
  shape.measures = {base_measure(s, "base edge", "side")};
  shape.area = solids::square(s);
  add_perimeter_and_area(shape, algebra::Expression(4) * s, message("a square has four equal sides"),
                         message("the area of a square is side times side"));
  // On the face the two sides are seen, so the work names both.
  shape.area = algebra::Expression(s) * s;
  shape.centroid_distances.assign(4, half(s));
  shape.centroid_distance_names.assign(4, message("half the base edge"));
  shape.corner_distance_squared = solids::square(half(s)) + solids::square(half(s));
  shape.body = [s](const algebra::Bindings& bindings) {
    const exact::Number side = value_of(bindings, s);
    const exact::Number zero;
    ShapeBody body;
    body.corners = {{zero, zero}, {side, zero}, {side, side}, {zero, side}};
    body.sides = {s, s, s, s};
    body.lengths = {{s, "side of the square", body.corners[0], body.corners[1]},
                    {s, "side of the square", body.corners[1], body.corners[2]}};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind square() {
  return {"square",
          {length_field("side", "side", "base.side")},
          &stated_square,
          example("square", {{"side", length_entry("10 cm")}}),
          {}};
}

}  // namespace fw::solids::shape
