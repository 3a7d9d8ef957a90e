#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;
using algebra::Symbol;

struct TriangleLetters {
  Symbol b = base_symbol("base", "b");
  Symbol a = base_symbol("sides.2", "a");
  Symbol c = base_symbol("sides.3", "c");
  Symbol t = base_symbol("height", "t");
};

/// Which of the listed sides the height stands on: the one as long as the base, or the first.
Result<std::size_t, std::vector<Fault>> base_side(const Description& description) {
  const auto base = written_length(description, "base");
  const auto sides = written_lengths(description, "sides");
  if (!base || sides.empty()) {
    return std::size_t{0};
  }
  bool all_written = true;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (sides[i] && *sides[i] == *base) {
      return i;
    }
    all_written = all_written && sides[i].has_value();
  }
  if (all_written) {
    return failure(
        std::vector<Fault>{impossible("base.base", message("the base of a triangle must be one of its three sides"))});
  }
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (!sides[i]) {
      return i;
    }
  }
  return std::size_t{0};
}

void add_heron(ShapeStatement& shape, const TriangleLetters& n) {
  // Sixteen times the square of the area, two ways. Source: Heron, Metrica I.8.
  const Expression b = n.b;
  const Expression a = n.a;
  const Expression c = n.c;
  const Expression product = (algebra::sum_of({a, b, c}) * (a + c - b)) * ((a + b - c) * (b + c - a));
  shape.relations.push_back({{Expression(16) * solids::square(symbols::base_area()), product},
                             message("Heron's formula: 16 times the area squared is the sum of the three sides times "
                                     "each sum of two sides minus the third side")});
  const words::Message sentence = message("each side of a triangle must be shorter than the other two together");
  shape.conditions.push_back({a + c, b, n.b.name, sentence});
  shape.conditions.push_back({b + c, a, n.a.name, sentence});
  shape.conditions.push_back({a + b, c, n.c.name, sentence});
}

void add_measures(ShapeStatement& shape, const TriangleLetters& n, std::size_t base_item, bool has_sides) {
  const std::vector<Symbol> others{n.a, n.c};
  if (has_sides) {
    for (std::size_t item = 0; item < 3; ++item) {
      const std::size_t turn = (item + 3 - base_item) % 3;
      shape.measures.push_back(base_measure(turn == 0 ? n.b : others[turn - 1], "side", "sides", item));
    }
    shape.measures.push_back(base_measure(n.b, "base of the triangle", "base"));
  } else {
    shape.measures = {base_measure(n.b, "base of the triangle", "base"), base_measure(n.a, "side", ""),
                      base_measure(n.c, "side", "")};
  }
  shape.measures.push_back(base_measure(n.t, "height of the triangle", "height"));
}

ShapeBody body_of(const TriangleLetters& n, const algebra::Bindings& bindings) {
  const exact::Number b = value_of(bindings, n.b);
  const exact::Number a = value_of(bindings, n.a);
  const exact::Number c = value_of(bindings, n.c);
  const exact::Number zero;
  // Where the height's foot lies along the base; outside of it in an obtuse triangle.
  const exact::Number foot = (b * b + c * c - a * a) / (whole(2) * b);
  ShapeBody body;
  body.corners = {{zero, zero}, {b, zero}, {foot, value_of(bindings, n.t)}};
  body.sides = {n.b, n.a, n.c};
  body.lengths = {{n.b, "base of the triangle", body.corners[0], body.corners[1]},
                  {n.t, "height of the triangle", body.corners[2], {foot, zero}, true}};
  return body;
}

Stated stated_triangle(const Description& description) {
  const TriangleLetters n;
  const bool has_sides = has_field(description, "sides");
  const auto base_item = base_side(description);
  if (!base_item) {
    return failure(base_item.error());
  }
  ShapeStatement shape;
  shape.noun = "triangle";
  shape.adjective = "triangular";
  shape.pyramid_names = {"tetrahedron"};
  shape.sides = {n.b, n.a, n.c};
  shape.area = half(Expression(n.b) * n.t);
  add_measures(shape, n, *base_item, has_sides);
  if (has_sides) {
    add_heron(shape, n);
  } else {
    for (const Symbol& side : {n.a, n.c}) {
      shape.relations.push_back(
          {{solids::square(side), solids::square(n.t) + solids::square(half(n.b))},
           message("with two equal sides, the height splits the triangle into two congruent right triangles")});
    }
    shape.assumptions = {
        message("no sides are given, so the triangle is drawn with two equal sides; answers that depend on the sides "
                "are for that triangle only")};
  }
  add_perimeter_and_area(shape, algebra::sum_of({n.a, n.b, n.c}),
                         message("the perimeter is the sum of all three sides"),
                         message("the area of a triangle is half the base times the height"));
  const Expression twice_area = Expression(n.b) * n.t;
  shape.centroid_distances = {Expression(n.t) / 3, twice_area / (Expression(3) * n.a),
                              twice_area / (Expression(3) * n.c)};
  shape.centroid_distance_names = {message("one third of the height of the base"),
                                   message("the distance from the centroid to that side"),
                                   message("the distance from the centroid to that side")};
  shape.body = [n](const algebra::Bindings& bindings) { return body_of(n, bindings); };
  return shape;
}

}  // namespace

ShapeKind triangle() {
  return {"triangle",
          {lengths_field("sides", "sides", {"base.base", "base.sides.2", "base.sides.3"}, 3, 3),
           length_field("base", "base", "base.base"), length_field("height", "height", "base.height")},
          &stated_triangle,
          example("triangle", {{"sides", length_entries({"15 cm", "13 cm", "4 cm"})}}),
          {}};
}

}  // namespace fw::solids::shape
