#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;

Stated stated_isosceles_triangle(const Description&) {
  const algebra::Symbol b = base_symbol("base", "b");
  const algebra::Symbol c = base_symbol("leg", "c");
  const algebra::Symbol t = base_symbol("height", "t");
  ShapeStatement shape;
  shape.noun = "isosceles triangle";
  shape.adjective = "triangular";
  shape.other_adjectives = {"isosceles triangular"};
  shape.pyramid_names = {"tetrahedron"};
  shape.sides = {b, c, c};
  shape.measures = {base_measure(b, "base of the triangle", "base"), base_measure(c, "leg of the triangle", "leg"),
                    base_measure(t, "height of the triangle", "height")};
  shape.area = half(Expression(b) * t);
  shape.relations = {{{solids::square(c), solids::square(t) + solids::square(half(b))},
                      message("the height splits the isosceles triangle into two congruent right triangles, so use the "
                              "Pythagorean theorem")}};
  add_perimeter_and_area(shape, Expression(b) + Expression(2) * c, message("the two legs are equal"),
                         message("the area of a triangle is half the base times the height"));
  shape.conditions = {{c, half(b), c.name, message("the leg must be longer than half the base of the triangle")},
                      {c, t, t.name, message("the height of the triangle must be shorter than its leg")}};
  const Expression to_leg = Expression(b) * t / (Expression(3) * c);
  shape.centroid_distances = {Expression(t) / 3, to_leg, to_leg};
  shape.centroid_distance_names = {message("one third of the height of the base"),
                                   message("the distance from the centroid to the leg"),
                                   message("the distance from the centroid to the leg")};
  shape.body = [b, c, t](const algebra::Bindings& bindings) {
    const exact::Number base = value_of(bindings, b);
    const exact::Number zero;
    const exact::Number middle = base / whole(2);
    ShapeBody body;
    body.corners = {{zero, zero}, {base, zero}, {middle, value_of(bindings, t)}};
    body.sides = {b, c, c};
    body.lengths = {{b, "base of the triangle", body.corners[0], body.corners[1]},
                    {t, "height of the triangle", body.corners[2], {middle, zero}, true}};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind isosceles_triangle() {
  return {"isosceles triangle",
          {length_field("base", "base", "base.base"), length_field("leg", "leg", "base.leg"),
           length_field("height", "height", "base.height")},
          &stated_isosceles_triangle,
          example("isosceles triangle", {{"base", length_entry("10 cm")}, {"height", length_entry("12 cm")}}),
          {}};
}

}  // namespace fw::solids::shape
