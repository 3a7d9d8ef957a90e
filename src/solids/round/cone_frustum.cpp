#include <cmath>

#include "solids/kind_table.hpp"
#include "solids/round/round_parts.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;
using geometry::Vec2;
using geometry::Vec3;

/// Capital letters for the larger circle, as US textbooks write R and r here; numbered letters would be four subscripts
/// in one formula.
struct FrustumSymbols {
  CircleSymbols bottom{{"radius", "R", 1}, {"diameter", "D", 1}, {"circumference", "C", 1}, " of the bottom"};
  CircleSymbols top{{"top_radius", "r", 1}, {"top_diameter", "d", 1}, {"top_circumference", "c", 1}, " of the top"};
  Symbol height{"height", "h", 1};
  Symbol slant{"slant_height", "ℓ", 1};
};

Expression top_area(const FrustumSymbols& symbols) { return symbols.top.times_pi(square(symbols.top.radius)); }

/// The two circles in corners, the smaller one above the other.
struct Rings {
  RoundOutline bottom, top;
  double height;

  Rings(const FrustumSymbols& symbols, const algebra::Bindings& bindings)
      : bottom(double_of(bindings, symbols.bottom.radius), double_of(bindings, symbols.bottom.circumference)),
        top(double_of(bindings, symbols.top.radius), double_of(bindings, symbols.top.circumference)),
        height(double_of(bindings, symbols.height)) {}

  [[nodiscard]] Vec3 below(std::size_t i) const { return {bottom.corner(i).x, bottom.corner(i).y, 0}; }
  [[nodiscard]] Vec3 above(std::size_t i) const { return {top.corner(i).x, top.corner(i).y, height}; }
};

/// Where an arc of the side ends when it is unrolled about the middle strip. `ring`: the circle that it was.
/// Worked from the middle and not from the tip, which is far away where the circles are nearly as large.
Vec3 end_of_arc(const Rings& rings, const RoundOutline& ring, double level) {
  const double lean = rings.bottom.corner_radius() - rings.top.corner_radius();
  const double edge = std::hypot(rings.height, lean);
  const double half_strip = std::asin((rings.bottom.strip_width() - rings.top.strip_width()) / 2 / edge);
  const double half_turn = static_cast<double>(strip_count) * half_strip;
  const double from_tip = edge * ring.corner_radius() / lean;
  const Vec3 middle{0, ring.front(), level};
  const Vec3 down = glm::normalize(Vec3{0, rings.bottom.front(), 0} - Vec3{0, rings.top.front(), rings.height});
  const double sunk = -2 * from_tip * std::sin((half_turn + half_strip) / 2) * std::sin((half_turn - half_strip) / 2);
  return middle + down * sunk + Vec3{from_tip * std::sin(half_turn), 0, 0};
}

/// The side unrolled: a part of a ring, as long outside as the bottom is around, and inside as the top.
void add_side(BodyStatement& body, const FrustumSymbols& symbols, const Rings& rings) {
  constexpr std::size_t left = strip_count / 2;
  constexpr std::size_t right = left + 1;
  FaceStatement side;
  side.role = FaceRole::Lateral;
  side.shape = "ring sector";
  side.facets = strip_count;
  side.area = half((Expression(symbols.bottom.circumference) + symbols.top.circumference) * symbols.slant);
  side.lengths = {
      {symbols.bottom.circumference, "circumference of the bottom", rings.below(left), rings.below(right)},
      {symbols.top.circumference, "circumference of the top", rings.above(right), rings.above(left)},
      {symbols.slant, "slant height", end_of_arc(rings, rings.bottom, 0), end_of_arc(rings, rings.top, rings.height)}};
  body.faces.push_back(side);
}

/// The corner of a rim at which its lengths end, and the one beside it, where its circumference is written.
struct RimPlace {
  std::size_t corner, next;
};

void add_disk(BodyStatement& body, const CircleSymbols& circle, const RoundOutline& ring, double level,
              RimPlace place) {
  const auto on = [level](Vec2 point) { return Vec3{point, level}; };
  const Vec2 rim = ring.corner(place.corner) * (ring.radius() / ring.corner_radius());
  const Vec2 clear = Vec2{rim.y, -rim.x} * (rim.x > 0 ? 1.0 : -1.0);
  body.faces.push_back(disk(circle, on({0, 0}), on(rim), on(clear)));
  add_circle_marks(body, circle, body.faces.size() - 1, on({0, 0}), on(rim), on(-rim), on(ring.corner(place.next)));
}

BodyStatement body_of(const FrustumSymbols& symbols, const algebra::Bindings& bindings) {
  const Rings rings(symbols, bindings);
  BodyStatement body;
  add_rings(
      body, [&](std::size_t i) { return rings.below(i); }, [&](std::size_t i) { return rings.above(i); });
  // Seen from the right, the lengths of the top lie to the left and those of the bottom to the right, so that labels
  // have room.
  constexpr std::size_t left_corner = strip_count / 2 - strip_count / 18;
  add_disk(body, symbols.bottom, rings.bottom, 0, {labelled_corner, labelled_corner + 1});
  add_disk(body, symbols.top, rings.top, rings.height, {left_corner, left_corner - 1});
  add_side(body, symbols, rings);
  Mark height{symbols.height, "height of the frustum", MarkPlace::Inside, {0, 0, rings.height}, {0, 0, 0}};
  height.square_to = glm::normalize(rings.below(labelled_corner));
  body.marks.push_back(height);
  body.marks.push_back({symbols.slant, "slant height", MarkPlace::Edge, rings.above(labelled_corner + 1),
                        rings.below(labelled_corner + 1)});
  body.classic_hinges = strip_hinges(2, {0, 1});
  return body;
}

void add_relations(SolidStatement& statement, const FrustumSymbols& symbols) {
  const Expression b = symbols::base_area();
  const Expression large = symbols.bottom.radius;
  const Expression small = symbols.top.radius;
  const Expression middle = square(large) + large * small + square(small);
  statement.volume = algebra::Equation{symbols::volume(), symbols.bottom.times_pi(symbols.height * middle) / 3};
  statement.relations.push_back(
      {{square(symbols.slant), square(symbols.height) + square(large - small)},
       message("the height, the difference of the two radii and the slant height form a right triangle, so use the "
               "Pythagorean theorem")});
  statement.relations.push_back(
      {{symbols::lateral_area(), symbols.bottom.times_pi((large + small) * symbols.slant)},
       symbols.bottom.with_pi(
           message("unrolled, the side is part of a ring: its area is π times the sum of the two radii times the slant "
                   "height"))});
  statement.relations.push_back({{symbols::surface_area(), b + top_area(symbols) + symbols::lateral_area()},
                                 message("two circles and the side make up the surface")});
  statement.relations.push_back(
      {*statement.volume, message("the volume of a frustum is that of the whole cone less that of the tip cut off, "
                                  "which comes to this formula")});
}

void add_conditions(SolidStatement& statement, const FrustumSymbols& symbols) {
  const Expression b = symbols::base_area();
  const Expression large = symbols.bottom.radius;
  const Expression small = symbols.top.radius;
  const auto must = [&](const Expression& greater, const Expression& less, const char* subject,
                        words::Message sentence) {
    statement.conditions.push_back({greater, less, subject, std::move(sentence)});
  };
  // One for each way to give a circle: only a condition on what is labelled refuses equal circles.
  must(large, small, "top_radius", message("the radius of the top must be less than that of the bottom"));
  must(symbols.bottom.diameter, symbols.top.diameter, "top_diameter",
       message("the diameter of the top must be less than that of the bottom"));
  must(symbols.bottom.circumference, symbols.top.circumference, "top_circumference",
       message("the circumference of the top must be less than that of the bottom"));
  must(symbols.slant, large - small, "slant_height",
       message("the slant height must be longer than the difference of the two radii"));
  must(symbols.slant, symbols.height, "slant_height", message("the slant height must be longer than the height"));
  must(symbols::lateral_area(), b - top_area(symbols), "lateral_area",
       message("the lateral area must be more than the difference of the areas of the two circles"));
  must(symbols::surface_area(), Expression(2) * b, "surface_area",
       message("the surface area must be more than twice the area of the bottom"));
  must(symbols::volume(), b * symbols.height / 3, "volume",
       message("the volume must be more than that of a whole cone with this bottom and height"));
  must(b * symbols.height, symbols::volume(), "volume",
       message("the volume must be less than that of a cylinder with this bottom and height"));
}

StatedSolid stated_frustum(const Description& description, const ShapeStatement* /*base*/) {
  FrustumSymbols symbols;
  symbols.bottom.pi = symbols.top.pi = pi_of(description);
  SolidStatement statement;
  statement.name = "frustum of a cone";
  statement.other_names = {"cone frustum", "conical frustum", "frustum", "right circular frustum", "truncated cone"};
  add_circle(statement, symbols.bottom);
  add_rim(statement, symbols.top);
  statement.measures.push_back(measure(symbols.height, "height", "height"));
  statement.measures.push_back(measure(symbols.slant, "slant height", "slant_height"));
  add_relations(statement, symbols);
  add_conditions(statement, symbols);
  statement.body = [symbols](const algebra::Bindings& bindings) { return body_of(symbols, bindings); };
  return statement;
}

}  // namespace

Kind cone_frustum() {
  const FrustumSymbols symbols;
  std::vector<Field> fields = circle_fields(symbols.bottom);
  const std::vector<Field> of_top = circle_fields(symbols.top);
  fields.insert(fields.end(), of_top.begin(), of_top.end());
  fields.push_back(pi_field());
  fields.push_back(length_field("height", "height", "height"));
  fields.push_back(length_field("slant_height", "slant height", "slant_height"));
  return {"cone frustum",
          fields,
          false,
          &stated_frustum,
          round({.has_base = true, .has_second_base = true}),
          example("cone frustum", {{"radius", length_entry("9 cm")},
                                   {"top_radius", length_entry("4 cm")},
                                   {"height", length_entry("12 cm")}}),
          {},
          {}};
}

}  // namespace fw::solids::kind
