#include <cmath>

#include "solids/kind_table.hpp"
#include "solids/round/round_parts.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;
using geometry::Vec2;
using geometry::Vec3;

const Symbol& height() {
  static const Symbol h{"height", "h", 1};
  return h;
}

/// A point over the base, on a cylinder that stands or lies.
Vec3 placed(Vec2 point, double level, double height_of_all, double front, bool lies) {
  return lies ? Vec3(point.x, height_of_all / 2 - level, point.y - front) : Vec3(point.x, point.y, level);
}

void add_side(BodyStatement& body, const CircleSymbols& circle, double width,
              const std::function<Vec3(Vec2, double)>& at, double front, double top) {
  FaceStatement side;
  side.role = FaceRole::Lateral;
  side.shape = "rectangle";
  side.facets = strip_count;
  side.area = Expression(circle.circumference) * height();
  const Vec2 left{-width / 2, front};
  const Vec2 right{width / 2, front};
  side.lengths = {{circle.circumference, "circumference", at(left, 0), at(right, 0)},
                  {height(), "height", at(right, 0), at(right, top)}};
  body.faces.push_back(side);
}

BodyStatement body_of(const CircleSymbols& circle, bool lies, const algebra::Bindings& bindings) {
  const double top = double_of(bindings, height());
  const double around = double_of(bindings, circle.circumference);
  const RoundOutline outline(double_of(bindings, circle.radius), around);
  const auto at = [&](Vec2 point, double level) { return placed(point, level, top, outline.front(), lies); };
  BodyStatement body;
  add_rings(
      body, [&](std::size_t i) { return at(outline.corner(i), 0); },
      [&](std::size_t i) { return at(outline.corner(i), top); });
  const Vec2 rim = outline.corner(labelled_corner) * (outline.radius() / outline.corner_radius());
  const Vec2 clear{rim.y, -rim.x};
  body.faces = {disk(circle, at({0, 0}, 0), at(rim, 0), at(clear, 0)),
                disk(circle, at({0, 0}, top), at(rim, top), at(clear, top))};
  add_side(body, circle, around, at, outline.front(), top);
  add_circle_marks(body, circle, 1, at({0, 0}, top), at(rim, top), at(-rim, top),
                   at(outline.corner(labelled_corner + 1), top));
  body.marks.push_back({height(), "height", MarkPlace::Edge, at(outline.corner(labelled_corner), 0),
                        at(outline.corner(labelled_corner), top)});
  body.table_face = lies ? 2 + strip_count / 2 : 0;
  body.classic_hinges = strip_hinges(2, {0, 1});
  return body;
}

void add_relations(SolidStatement& statement, const CircleSymbols& circle) {
  const Expression b = symbols::base_area();
  statement.volume = algebra::Equation{symbols::volume(), b * height()};
  statement.relations.push_back(
      {{symbols::lateral_area(), Expression(circle.circumference) * height()},
       message("unrolled, the side is a rectangle: as long as the circumference, and as high as the cylinder")});
  statement.relations.push_back({{symbols::surface_area(), Expression(2) * b + symbols::lateral_area()},
                                 message("two circles and the side make up the surface")});
  statement.relations.push_back(
      {*statement.volume, message("the volume of a cylinder is the base area times the height")});
  statement.conditions.push_back({symbols::surface_area(), Expression(2) * b, "surface_area",
                                  message("the surface area must be more than the two bases together")});
}

StatedSolid stated_cylinder(const Description& description, const ShapeStatement* /*base*/) {
  CircleSymbols circle;
  circle.pi = pi_of(description);
  SolidStatement statement;
  statement.name = "cylinder";
  statement.other_names = {"right cylinder", "circular cylinder", "right circular cylinder"};
  add_circle(statement, circle);
  statement.measures.push_back(measure(height(), "height", "height"));
  add_relations(statement, circle);
  const bool lies =
      description.fields.count("lies") != 0 && description.fields.at("lies") == FieldValue(std::string("side"));
  statement.body = [circle, lies](const algebra::Bindings& bindings) { return body_of(circle, lies, bindings); };
  return statement;
}

}  // namespace

Kind cylinder() {
  std::vector<Field> fields = circle_fields();
  fields.push_back(pi_field());
  fields.push_back(length_field("height", "height", "height"));
  Field lies;
  lies.key = "lies";
  lies.type = FieldType::Word;
  lies.title = "how it lies";
  lies.words = {"base", "side"};
  fields.push_back(lies);
  return {"cylinder",
          fields,
          false,
          &stated_cylinder,
          round(upright_traits()),
          example("cylinder", {{"radius", length_entry("5 cm")}, {"height", length_entry("8 cm")}}),
          {},
          {Use::Round}};
}

}  // namespace fw::solids::kind
