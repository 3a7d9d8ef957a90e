#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;

Stated stated_parallelogram(const Description& description) {
  const algebra::Symbol b = base_symbol("base", "b");
  const algebra::Symbol c = base_symbol("side", "c");
  const algebra::Symbol t = base_symbol("height", "t");
  ShapeStatement shape;
  shape.noun = "parallelogram";
  shape.adjective = "parallelogram";
  shape.other_adjectives = {"quadrilateral"};
  shape.prism_names = {"parallelepiped"};
  shape.sides = {b, c, b, c};
  shape.measures = {base_measure(b, "base of the parallelogram", "base"),
                    base_measure(c, "side of the parallelogram", "side"),
                    base_measure(t, "height of the parallelogram", "height")};
  shape.area = Expression(b) * t;
  add_perimeter_and_area(shape, Expression(2) * b + Expression(2) * c,
                         message("opposite sides of a parallelogram are equal"),
                         message("the area of a parallelogram is base times height"));
  if (!has_field(description, "side")) {
    shape.relations.push_back({{solids::square(c), solids::square(t) + solids::square(Expression(b) / 3)},
                               message("the parallelogram is drawn leaning by one third of its base, so use the "
                                       "Pythagorean theorem")});
    shape.assumptions = {
        message("no side is given, so the parallelogram is drawn leaning by one third of its base; answers that depend "
                "on the side are for that parallelogram only")};
  }
  Condition leans{c, t, c.name, message("the side of a parallelogram cannot be shorter than its height")};
  leans.may_be_equal = true;
  shape.conditions = {leans};
  const Expression to_side = Expression(b) * t / (Expression(2) * c);
  shape.centroid_distances = {half(t), to_side, half(t), to_side};
  shape.centroid_distance_names = {
      message("half the height of the base"), message("half the distance between the sides of the base"),
      message("half the height of the base"), message("half the distance between the sides of the base")};
  shape.body = [b, c, t](const algebra::Bindings& bindings) {
    const exact::Number base = value_of(bindings, b);
    const exact::Number side = value_of(bindings, c);
    const exact::Number height = value_of(bindings, t);
    const exact::Number lean = square_root(side * side - height * height);
    const exact::Number zero;
    ShapeBody body;
    body.corners = {{zero, zero}, {base, zero}, {base + lean, height}, {lean, height}};
    body.sides = {b, c, b, c};
    body.lengths = {{b, "base of the parallelogram", body.corners[0], body.corners[1]},
                    {t, "height of the parallelogram", body.corners[3], {lean, zero}, true}};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind parallelogram() {
  return {"parallelogram",
          {length_field("base", "base", "base.base"), length_field("side", "side", "base.side"),
           length_field("height", "height", "base.height")},
          &stated_parallelogram,
          example("parallelogram",
                  {{"base", length_entry("14 cm")}, {"side", length_entry("10 cm")}, {"height", length_entry("8 cm")}}),
          {}};
}

}  // namespace fw::solids::shape
