#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;

void add_relations(ShapeStatement& shape, const algebra::Symbol& a, const algebra::Symbol& b,
                   const algebra::Symbol& c) {
  shape.relations.push_back({{solids::square(c), solids::square(a) + solids::square(b)},
                             message("Pythagorean theorem: leg² + leg² = hypotenuse²")});
  add_perimeter_and_area(shape, algebra::sum_of({a, b, c}), message("the perimeter is the sum of all three sides"),
                         message("the legs of a right triangle are its base and its height"));
  for (const algebra::Symbol& leg : {a, b}) {
    shape.conditions.push_back({c, leg, c.name, message("the hypotenuse must be longer than each leg")});
  }
}

Stated stated_right_triangle(const Description&) {
  const algebra::Symbol a = base_symbol("legs.1", "a");
  const algebra::Symbol b = base_symbol("legs.2", "b");
  const algebra::Symbol c = base_symbol("hypotenuse", "c");
  ShapeStatement shape;
  shape.noun = "right triangle";
  shape.adjective = "triangular";
  shape.other_adjectives = {"right triangular", "right angled triangular"};
  shape.pyramid_names = {"tetrahedron"};
  shape.sides = {a, c, b};
  shape.measures = {base_measure(a, "leg", "legs", 0), base_measure(b, "leg", "legs", 1),
                    base_measure(c, "hypotenuse", "hypotenuse")};
  shape.area = half(Expression(a) * b);
  add_relations(shape, a, b, c);
  shape.centroid_distances = {Expression(b) / 3, Expression(a) * b / (Expression(3) * c), Expression(a) / 3};
  shape.centroid_distance_names = {message("one third of the other leg"),
                                   message("the distance from the centroid to the hypotenuse"),
                                   message("one third of the other leg")};
  shape.body = [a, b, c](const algebra::Bindings& bindings) {
    const exact::Number zero;
    ShapeBody body;
    body.corners = {{zero, zero}, {value_of(bindings, a), zero}, {zero, value_of(bindings, b)}};
    body.sides = {a, c, b};
    ShapeLength upright{b, "leg", body.corners[2], body.corners[0]};
    upright.square_at_to = true;
    body.lengths = {{a, "leg", body.corners[0], body.corners[1]}, upright};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind right_triangle() {
  return {"right triangle",
          {lengths_field("legs", "legs", {"base.legs.1", "base.legs.2"}, 2, 2),
           length_field("hypotenuse", "hypotenuse", "base.hypotenuse")},
          &stated_right_triangle,
          example("right triangle", {{"legs", length_entries({"8 cm", "15 cm"})}}),
          {}};
}

}  // namespace fw::solids::shape
