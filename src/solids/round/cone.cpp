#include <cmath>

#include "solids/kind_table.hpp"
#include "solids/round/round_parts.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;
using geometry::Vec2;
using geometry::Vec3;

struct ConeSymbols {
  CircleSymbols circle;
  Symbol height{"height", "h", 1};
  Symbol slant{"slant_height", "ℓ", 1};
};

/// The side unrolled: a sector whose arc is the circumference, about the middle strip.
void add_side(BodyStatement& body, const ConeSymbols& symbols, const RoundOutline& outline, double top) {
  FaceStatement side;
  side.role = FaceRole::Lateral;
  side.shape = "sector";
  side.facets = strip_count;
  side.area = half(Expression(symbols.circle.circumference) * symbols.slant);
  const Vec3 tip{0, 0, top};
  const Vec3 down = glm::normalize(Vec3{0, outline.front(), 0} - tip);
  const double edge = std::hypot(top, outline.corner_radius());
  const double angle = static_cast<double>(strip_count) * std::asin(outline.strip_width() / 2 / edge);
  const Vec3 end = tip + (down * std::cos(angle) + Vec3{std::sin(angle), 0, 0}) * edge;
  const auto front = [&](std::size_t i) {
    const Vec2 corner = outline.corner(i);
    return Vec3{corner.x, corner.y, 0};
  };
  side.lengths = {
      {symbols.circle.circumference, "circumference of the base", front(strip_count / 2), front(strip_count / 2 + 1)},
      {symbols.slant, "slant height", tip, end}};
  body.faces.push_back(side);
}

BodyStatement body_of(const ConeSymbols& symbols, const algebra::Bindings& bindings) {
  const double top = double_of(bindings, symbols.height);
  const RoundOutline outline(double_of(bindings, symbols.circle.radius),
                             double_of(bindings, symbols.circle.circumference));
  const auto level = [](Vec2 point) { return Vec3{point.x, point.y, 0}; };
  const Vec3 tip{0, 0, top};
  BodyStatement body;
  body.loops.resize(1);
  for (std::size_t i = 0; i < strip_count; ++i) {
    body.vertices.push_back(level(outline.corner(i)));
    body.loops[0].push_back(strip_count - 1 - i);
  }
  body.vertices.push_back(tip);
  for (std::size_t i = 0; i < strip_count; ++i) {
    body.loops.push_back({i, (i + 1) % strip_count, strip_count});
  }
  const Vec2 rim = outline.corner(labelled_corner) * (outline.radius() / outline.corner_radius());
  body.faces = {disk(symbols.circle, {0, 0, 0}, level(rim), level({rim.y, -rim.x}))};
  add_side(body, symbols, outline, top);
  add_circle_marks(body, symbols.circle, 0, {0, 0, 0}, level(rim), level(-rim),
                   level(outline.corner(labelled_corner + 1)));
  Mark height{symbols.height, "height of the cone", MarkPlace::Inside, tip, {0, 0, 0}};
  height.square_to = glm::normalize(level(rim));
  body.marks.push_back(height);
  body.marks.push_back(
      {symbols.slant, "slant height", MarkPlace::Edge, tip, level(outline.corner(labelled_corner + 1))});
  body.classic_hinges = strip_hinges(1, {0});
  return body;
}

void add_relations(SolidStatement& statement, const ConeSymbols& symbols) {
  const Expression b = symbols::base_area();
  const Expression r = symbols.circle.radius;
  statement.volume = algebra::Equation{symbols::volume(), b * symbols.height / 3};
  statement.relations.push_back(
      {{square(symbols.slant), square(symbols.height) + square(r)},
       message("the height, the radius and the slant height form a right triangle, so use the "
               "Pythagorean theorem")});
  statement.relations.push_back(
      {{symbols::lateral_area(), symbols.circle.times_pi(r * symbols.slant)},
       symbols.circle.with_pi(
           message("unrolled, the side is a sector: its area is π times the radius times the slant height"))});
  statement.relations.push_back(
      {{symbols::surface_area(), b + symbols::lateral_area()}, message("the base and the side make up the surface")});
  statement.relations.push_back(
      {*statement.volume, message("the volume of a cone is one third of the base area times the height")});
  statement.conditions.push_back(
      {symbols.slant, r, symbols.slant.name, message("the slant height must be longer than the radius")});
  statement.conditions.push_back(
      {symbols.slant, symbols.height, symbols.slant.name, message("the slant height must be longer than the height")});
  statement.conditions.push_back(
      {symbols::lateral_area(), b, "lateral_area", message("the side must be more than the base")});
  statement.conditions.push_back({symbols::surface_area(), Expression(2) * b, "surface_area",
                                  message("the surface area must be more than twice the base area")});
}

StatedSolid stated_cone(const Description& description, const ShapeStatement* /*base*/) {
  ConeSymbols symbols;
  symbols.circle.pi = pi_of(description);
  SolidStatement statement;
  statement.name = "cone";
  statement.other_names = {"right cone", "circular cone", "right circular cone"};
  add_circle(statement, symbols.circle);
  statement.measures.push_back(measure(symbols.height, "height", "height"));
  statement.measures.push_back(measure(symbols.slant, "slant height", "slant_height"));
  add_relations(statement, symbols);
  statement.body = [symbols](const algebra::Bindings& bindings) { return body_of(symbols, bindings); };
  return statement;
}

}  // namespace

Kind cone() {
  std::vector<Field> fields = circle_fields();
  fields.push_back(pi_field());
  fields.push_back(length_field("height", "height", "height"));
  fields.push_back(length_field("slant_height", "slant height", "slant_height"));
  return {"cone",
          fields,
          false,
          &stated_cone,
          round({.has_base = true, .has_apex = true}),
          example("cone", {{"radius", length_entry("5 cm")}, {"height", length_entry("12 cm")}}),
          {},
          {Use::RoundPointed}};
}

}  // namespace fw::solids::kind
