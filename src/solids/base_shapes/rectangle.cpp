#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

Stated stated_rectangle(const Description&) {
  const algebra::Symbol l = base_symbol("length", "l");
  const algebra::Symbol w = base_symbol("width", "w");
  ShapeStatement shape;
  shape.noun = "rectangle";
  shape.adjective = "rectangular";
  shape.prism_names = {"cuboid", "rectangular solid", "rectangular parallelepiped"};
  shape.sides = {l, w, l, w};
  shape.measures = {base_measure(l, "length of the base", "length"), base_measure(w, "width of the base", "width")};
  shape.area = algebra::Expression(l) * w;
  add_perimeter_and_area(shape, algebra::Expression(2) * l + algebra::Expression(2) * w,
                         message("opposite sides of a rectangle are equal"),
                         message("the area of a rectangle is length times width"));
  shape.centroid_distances = {half(w), half(l), half(w), half(l)};
  shape.centroid_distance_names = {message("half the width of the base"), message("half the length of the base"),
                                   message("half the width of the base"), message("half the length of the base")};
  shape.corner_distance_squared = solids::square(half(l)) + solids::square(half(w));
  shape.body = [l, w](const algebra::Bindings& bindings) {
    const exact::Number length = value_of(bindings, l);
    const exact::Number width = value_of(bindings, w);
    const exact::Number zero;
    ShapeBody body;
    body.corners = {{zero, zero}, {length, zero}, {length, width}, {zero, width}};
    body.sides = {l, w, l, w};
    body.lengths = {{l, "length of the rectangle", body.corners[0], body.corners[1]},
                    {w, "width of the rectangle", body.corners[1], body.corners[2]}};
    return body;
  };
  return shape;
}

}  // namespace

ShapeKind rectangle() {
  return {"rectangle",
          {length_field("length", "length", "base.length"), length_field("width", "width", "base.width")},
          &stated_rectangle,
          example("rectangle", {{"length", length_entry("18 cm")}, {"width", length_entry("10 cm")}}),
          {}};
}

}  // namespace fw::solids::shape
