#include <array>

#include "solids/kind_table.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;

StatedSolid stated_cube(const Description&, const ShapeStatement*) {
  const algebra::Symbol s{"edge", "s", 1};
  SolidStatement statement;
  statement.name = "cube";
  statement.other_names = {"regular hexahedron", "hexahedron", "square prism", "rectangular prism", "cuboid"};
  statement.family = "prism";
  statement.measures = {measure(s, "edge", "edge")};
  statement.volume = algebra::Equation{symbols::volume(), power(s, 3)};
  statement.relations = {
      {{symbols::surface_area(), Expression(6) * square(s)}, message("a cube has six congruent square faces")},
      {*statement.volume, message("the volume of a cube is edge times edge times edge")}};
  statement.body = [s](const algebra::Bindings& bindings) {
    return box_body({s, s, s, "edge", "edge", "edge", false}, bindings);
  };
  return statement;
}

}  // namespace

Kind cube() {
  const algebra::Symbol edge{"edge", "s", 1};
  return {"cube",
          {length_field("edge", "edge", "edge")},
          false,
          &stated_cube,
          {.is_all_alike = true, .box_edges = std::array{edge, edge, edge}},
          example("cube", {{"edge", length_entry("8 cm")}}),
          {},
          {Use::Block}};
}

}  // namespace fw::solids::kind
