#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;

Stated stated_equilateral_triangle(const Description&) {
  const algebra::Symbol s = base_symbol("side", "s");
  const algebra::Symbol t = base_symbol("height", "t");
  ShapeStatement shape;
  shape.noun = "equilateral triangle";
  shape.adjective = "triangular";
  shape.other_adjectives = {"equilateral triangular"};
  shape.pyramid_names = {"tetrahedron"};
  shape.is_regular = true;
  shape.sides = {s, s, s};
  shape.measures = {base_measure(s, "base edge", "side"), base_measure(t, "height of the triangle", "height")};
  shape.area = half(Expression(s) * t);
  shape.relations = {{{solids::square(t), solids::square(s) - solids::square(half(s))},
                      message("the height splits the equilateral triangle into two congruent right triangles, so use "
                              "the Pythagorean theorem")},
                     {{t, Expression(s) * square_root(whole(3)) / 2},
                      message("the height of an equilateral triangle is √3 ÷ 2 times its side")}};
  add_perimeter_and_area(shape, Expression(3) * s, message("an equilateral triangle has three equal sides"),
                         message("the area of a triangle is half the base times the height"));
  shape.conditions = {{s, t, t.name, message("the height of the triangle must be shorter than its side")}};
  shape.centroid_distances.assign(3, Expression(t) / 3);
  shape.centroid_distance_names.assign(3, message("one third of the height of the base"));
  shape.corner_distance_squared = solids::square(Expression(t) / 3) + solids::square(half(s));
  shape.body = [s, t](const algebra::Bindings& bindings) {
    const exact::Number side = value_of(bindings, s);
    const exact::Number height = value_of(bindings, t);
    const exact::Number zero;
    const exact::Number middle = side / whole(2);
    ShapeBody body;
    body.corners = {{zero, zero}, {side, zero}, {middle, height}};
    body.sides = {s, s, s};
    body.lengths = {{s, "side of the triangle", body.corners[0], body.corners[1]},
                    {t, "height of the triangle", body.corners[2], {middle, zero}, true}};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind equilateral_triangle() {
  return {"equilateral triangle",
          {length_field("side", "side", "base.side"), length_field("height", "height", "base.height")},
          &stated_equilateral_triangle,
          example("equilateral triangle", {{"side", length_entry("12 cm")}}),
          {}};
}

}  // namespace fw::solids::shape
