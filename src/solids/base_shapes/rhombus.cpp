#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;
using algebra::Symbol;

struct RhombusLetters {
  Symbol s = base_symbol("side", "s");
  Symbol t = base_symbol("height", "t");
  Symbol d = base_symbol("diagonals.1", "d₁");
  Symbol e = base_symbol("diagonals.2", "d₂");
};

ShapeBody on_its_side(const RhombusLetters& n, const algebra::Bindings& bindings) {
  const exact::Number side = value_of(bindings, n.s);
  const exact::Number height = value_of(bindings, n.t);
  const exact::Number lean = square_root(side * side - height * height);
  const exact::Number zero;
  ShapeBody body;
  body.corners = {{zero, zero}, {side, zero}, {side + lean, height}, {lean, height}};
  body.sides = {n.s, n.s, n.s, n.s};
  body.lengths = {{n.s, "side of the rhombus", body.corners[0], body.corners[1]},
                  {n.t, "height of the rhombus", body.corners[3], {lean, zero}, true}};
  return body;
}

ShapeBody on_its_corner(const RhombusLetters& n, const algebra::Bindings& bindings) {
  const exact::Number across = value_of(bindings, n.d) / whole(2);
  const exact::Number along = value_of(bindings, n.e) / whole(2);
  const exact::Number zero;
  ShapeBody body;
  body.corners = {{zero, -along}, {across, zero}, {zero, along}, {-across, zero}};
  body.sides = {n.s, n.s, n.s, n.s};
  body.lengths = {{n.d, "diagonal of the rhombus", body.corners[3], body.corners[1]},
                  {n.e, "diagonal of the rhombus", body.corners[2], body.corners[0]}};
  return body;
}

void state_by_diagonals(ShapeStatement& shape, const RhombusLetters& n) {
  shape.measures = {base_measure(n.d, "diagonal", "diagonals", 0), base_measure(n.e, "diagonal", "diagonals", 1),
                    base_measure(n.s, "side of the rhombus", "side"),
                    base_measure(n.t, "height of the rhombus", "height")};
  shape.area = half(Expression(n.d) * n.e);
  shape.relations = {{{solids::square(n.s), solids::square(half(n.d)) + solids::square(half(n.e))},
                      message("the diagonals cut the rhombus into four congruent right triangles")},
                     {{symbols::base_area(), Expression(n.s) * n.t},
                      message("the area of a rhombus is also the side times the height")}};
  shape.body = [n](const algebra::Bindings& bindings) { return on_its_corner(n, bindings); };
}

void state_by_height(ShapeStatement& shape, const RhombusLetters& n) {
  shape.measures = {base_measure(n.s, "side of the rhombus", "side"),
                    base_measure(n.t, "height of the rhombus", "height")};
  shape.area = Expression(n.s) * n.t;
  shape.body = [n](const algebra::Bindings& bindings) { return on_its_side(n, bindings); };
}

Stated stated_rhombus(const Description& description) {
  const RhombusLetters n;
  ShapeStatement shape;
  shape.noun = "rhombus";
  shape.adjective = "rhombic";
  shape.other_adjectives = {"rhombus", "parallelogram", "quadrilateral"};
  shape.prism_names = {"parallelepiped"};
  shape.sides = {n.s, n.s, n.s, n.s};
  const bool by_diagonals = has_field(description, "diagonals");
  by_diagonals ? state_by_diagonals(shape, n) : state_by_height(shape, n);
  add_perimeter_and_area(shape, Expression(4) * n.s, message("a rhombus has four equal sides"),
                         by_diagonals ? message("the area of a rhombus is half the product of its diagonals")
                                      : message("the area of a rhombus is side times height"));
  Condition leans{n.s, n.t, n.s.name, message("the side of a rhombus cannot be shorter than its height")};
  leans.may_be_equal = true;
  shape.conditions = {leans};
  if (by_diagonals) {
    for (const Symbol& diagonal : {n.d, n.e}) {
      shape.conditions.push_back({Expression(2) * n.s, diagonal, diagonal.name,
                                  message("each diagonal of a rhombus must be shorter than two of its sides")});
    }
  }
  shape.centroid_distances.assign(4, half(n.t));
  shape.centroid_distance_names.assign(4, message("half the height of the base"));
  return shape;
}

}  // namespace

ShapeKind rhombus() {
  return {"rhombus",
          {length_field("side", "side", "base.side"), length_field("height", "height", "base.height"),
           lengths_field("diagonals", "diagonals", {"base.diagonals.1", "base.diagonals.2"}, 2, 2)},
          &stated_rhombus,
          example("rhombus", {{"diagonals", length_entries({"24 cm", "10 cm"})}}),
          {example("rhombus", {{"side", length_entry("10 cm")}, {"height", length_entry("8 cm")}})}};
}

}  // namespace fw::solids::shape
