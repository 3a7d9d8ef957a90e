#include "solids/kind_table.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;

std::array<Symbol, 3> box_edges() {
  return {Symbol{"length", "l", 1}, Symbol{"width", "w", 1}, Symbol{"height", "h", 1}};
}

void name(SolidStatement& statement, const Description& description) {
  statement.name = "rectangular prism";
  statement.other_names = {
      "cuboid",          "rectangular solid",    "right rectangular prism", "rectangular parallelepiped",
      "rectangle prism", "rectangle based prism"};
  statement.family = "prism";
  const auto l = written_length(description, "length");
  const auto w = written_length(description, "width");
  const auto h = written_length(description, "height");
  const auto equal = [](const auto& a, const auto& b) { return a && b && *a == *b; };
  if (equal(l, w) || equal(w, h) || equal(l, h)) {
    statement.other_names.push_back("square prism");
  }
  if (equal(l, w) && equal(w, h)) {
    call_it(statement, "cube");
  }
}

void add_relations(SolidStatement& statement, const Symbol& l, const Symbol& w, const Symbol& h) {
  const Expression lw = Expression(2) * l * w;
  const Expression lh = Expression(2) * l * h;
  const Expression wh = Expression(2) * w * h;
  statement.volume = algebra::Equation{symbols::volume(), Expression(l) * w * h};
  statement.relations = {
      {{symbols::surface_area(), algebra::sum_of({lw, lh, wh})},
       message("the six faces are three pairs of congruent rectangles")},
      {*statement.volume, message("the volume of a box is the length times the width times the height")},
      {{symbols::perimeter(), Expression(2) * l + Expression(2) * w}, message("opposite sides of the base are equal")},
      {{symbols::base_area(), Expression(l) * w}, message("the base is a rectangle")},
      {{symbols::lateral_area(), lh + wh}, message("the lateral faces are two pairs of congruent rectangles")}};
  statement.conditions = {{symbols::surface_area(), lw, "surface_area",
                           message("the surface area must be more than the bottom and the top together")},
                          {symbols::surface_area(), lh, "surface_area",
                           message("the surface area must be more than the front and the back together")},
                          {symbols::surface_area(), wh, "surface_area",
                           message("the surface area must be more than the two ends together")}};
  // Of all boxes with one surface area the cube holds most.
  Condition holds_less{power(root(Expression(symbols::surface_area()) / 6), 3), symbols::volume(), "volume",
                       message("the volume of a box cannot be more than that of a cube with the same surface area")};
  holds_less.may_be_equal = true;
  statement.conditions.push_back(holds_less);
}

StatedSolid stated_rectangular_prism(const Description& description, const ShapeStatement*) {
  const std::array<Symbol, 3> edges = box_edges();
  SolidStatement statement;
  name(statement, description);
  for (const Symbol& edge : edges) {
    statement.measures.push_back(measure(edge, edge.name, edge.name));
  }
  add_relations(statement, edges[0], edges[1], edges[2]);
  statement.body = [edges](const algebra::Bindings& bindings) {
    return box_body({edges[0], edges[1], edges[2], "length", "width", "height", true}, bindings);
  };
  return statement;
}

}  // namespace

Kind rectangular_prism() {
  Traits traits = upright_traits();
  traits.box_edges = box_edges();
  return {
      "rectangular prism",
      {length_field("length", "length", "length"), length_field("width", "width", "width"),
       length_field("height", "height", "height")},
      false,
      &stated_rectangular_prism,
      traits,
      example("rectangular prism",
              {{"length", length_entry("9 cm")}, {"width", length_entry("7 cm")}, {"height", length_entry("5 cm")}}),
      {},
      {Use::Box}};
}

}  // namespace fw::solids::kind
