#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;

constexpr int least_count = 3;
constexpr int most_count = 40;

/// Corners with side 0 from (0, 0) to (side, 0), each further side turned by 360° / count.
std::vector<ExactPoint> regular_corners(int count, const Number& side) {
  const Number cotangent = Number::polygon_cotangent(count);
  // cos and sin of the turn, 360° / count, from the cotangent of half of it.
  const Number square = cotangent * cotangent;
  const Number cosine = (square - whole(1)) / (square + whole(1));
  const Number sine = whole(2) * cotangent / (square + whole(1));
  std::vector<ExactPoint> corners{origin(), {side, Number()}};
  // cos(k·turn) and sin(k·turn) ÷ sin(turn) by the Chebyshev recurrence, which stays in the field of cosine.
  Number cosine_before = whole(1);
  Number cosine_now = cosine;
  Number ratio_before;
  Number ratio_now = whole(1);
  while (corners.size() < static_cast<std::size_t>(count)) {
    const ExactPoint& last = corners.back();
    corners.push_back({last.x + side * cosine_now, last.y + side * sine * ratio_now});
    const Number cosine_next = whole(2) * cosine * cosine_now - cosine_before;
    const Number ratio_next = whole(2) * cosine * ratio_now - ratio_before;
    cosine_before = cosine_now;
    cosine_now = cosine_next;
    ratio_before = ratio_now;
    ratio_now = ratio_next;
  }
  return corners;
}

ShapeBody body_of(int count, const Symbol& s, const Symbol& a, const algebra::Bindings& bindings) {
  const Number side = value_of(bindings, s);
  const Number middle = side / whole(2);
  ShapeBody body;
  body.corners = regular_corners(count, side);
  body.sides.assign(static_cast<std::size_t>(count), s);
  const Number apothem = side * Number::polygon_cotangent(count) / whole(2);
  body.lengths = {{s, "side of the polygon", body.corners[0], body.corners[1]},
                  {a, "apothem", {middle, apothem}, {middle, Number()}, true}};
  return body;
}

ShapeStatement stated(int count) {
  const Symbol s = base_symbol("side", "s");
  const Symbol a = base_symbol("apothem", "a");
  const auto size = static_cast<std::size_t>(count);
  ShapeStatement shape;
  shape.noun = count == 4 ? "square" : polygon_noun(count);
  shape.adjective = count == 4 ? "square" : polygon_adjective(count);
  shape.other_adjectives = {name_of({"regular", shape.adjective}), name_of({std::to_string(count), "sided"})};
  if (count == 3) {
    shape.pyramid_names = {"tetrahedron"};
  }
  if (count == 4) {
    shape.prism_names = {"rectangular prism", "cuboid"};
  }
  shape.is_regular = true;
  shape.sides.assign(size, s);
  shape.measures = {base_measure(s, "base edge", "side"), base_measure(a, "apothem", "apothem")};
  shape.area = Expression(count) * s * a / 2;
  shape.relations = {apothem_relation(a, s, count)};
  add_perimeter_and_area(
      shape, Expression(count) * s, message("a regular polygon has equal sides"),
      message("a regular polygon splits into congruent triangles: half the perimeter times the apothem"));
  shape.centroid_distances.assign(size, a);
  shape.centroid_distance_names.assign(size, message("the apothem of the base"));
  shape.corner_distance_squared = solids::square(a) + solids::square(half(s));
  shape.body = [count, s, a](const algebra::Bindings& bindings) { return body_of(count, s, a, bindings); };
  return shape;
}

Stated stated_regular_polygon(const Description& description) {
  const auto count = count_of(description, "count");
  if (!count) {
    return failure(
        std::vector<Fault>{missing("base.count", message("the number of sides of the regular polygon is needed"))});
  }
  if (*count < least_count || *count > most_count) {
    Fault fault =
        impossible("base.count", message("a regular polygon here has 3 to 40 sides, not {count}", {{"count", *count}}));
    fault.nearest = std::to_string(*count < least_count ? least_count : most_count);
    return failure(std::vector<Fault>{fault});
  }
  return stated(*count);
}

}  // namespace

ShapeKind regular_polygon() {
  Field count;
  count.key = "count";
  count.type = FieldType::Count;
  count.title = "number of sides";
  count.least = least_count;
  count.most = most_count;
  return {"regular polygon",
          {count, length_field("side", "side", "base.side"), length_field("apothem", "apothem", "base.apothem")},
          &stated_regular_polygon,
          example("regular polygon", {{"count", 6}, {"side", length_entry("6 cm")}}),
          {example("regular polygon", {{"count", 5}, {"side", length_entry("7 cm")}}),
           example("regular polygon", {{"count", 8}, {"side", length_entry("5 cm")}})}};
}

}  // namespace fw::solids::shape
