#include "solids/round/round_parts.hpp"

#include <cmath>

namespace fw::solids {

using algebra::Expression;
using geometry::Vec2;
using geometry::Vec3;

namespace {
constexpr double half_turn = 3.14159265358979323846;

std::vector<std::pair<algebra::Symbol, std::string>> titled(const CircleSymbols& circle) {
  return {{circle.radius, "radius" + circle.of_which},
          {circle.diameter, "diameter" + circle.of_which},
          {circle.circumference, "circumference" + circle.of_which}};
}
}  // namespace

Expression CircleSymbols::times_pi(const Expression& factor, int count) const {
  const auto counted = [&](const Expression& value) { return count == 1 ? value : Expression(count) * value; };
  if (pi == "22/7") {
    return counted(Expression(22)) * factor / 7;
  }
  return counted(pi == "3.14" ? exact::Number::ratio(157, 50) : exact::Number::pi()) * factor;
}

words::Message CircleSymbols::with_pi(words::Message sentence) const {
  return pi == "exact"
             ? std::move(sentence)
             : message("{sentence}; here, use {value} for π", {{"sentence", std::move(sentence)}, {"value", pi}});
}

std::string pi_of(const Description& description) {
  const auto field = description.fields.find("pi");
  const auto* word = field == description.fields.end() ? nullptr : std::get_if<std::string>(&field->second);
  return word == nullptr ? "exact" : *word;
}

Traits round(Traits traits) {
  traits.has_round_base = true;
  return traits;
}

Field pi_field() {
  Field pi;
  pi.key = "pi";
  pi.type = FieldType::Word;
  pi.title = "value of π";
  pi.words = {"exact", "3.14", "22/7"};
  return pi;
}

std::vector<Field> circle_fields(const CircleSymbols& circle) {
  std::vector<Field> fields;
  for (const auto& [symbol, title] : titled(circle)) {
    fields.push_back(length_field(symbol.name, title, symbol.name));
  }
  return fields;
}

void add_rim(SolidStatement& statement, const CircleSymbols& circle) {
  for (const auto& [symbol, title] : titled(circle)) {
    statement.measures.push_back(measure(symbol, title, symbol.name));
  }
  statement.relations.push_back(
      {{circle.diameter, Expression(2) * circle.radius}, message("the diameter is twice the radius")});
  statement.relations.push_back(
      {{circle.circumference, circle.times_pi(circle.radius, 2)},
       circle.with_pi(message("the circumference of a circle is 2 times π times the radius"))});
}

void add_circle(SolidStatement& statement, const CircleSymbols& circle) {
  add_rim(statement, circle);
  statement.relations.push_back({{symbols::base_area(), circle.times_pi(square(circle.radius))},
                                 circle.with_pi(message("the area of a circle is π times the radius squared"))});
}

RoundOutline::RoundOutline(double radius, double circumference)
    : radius_(radius),
      strip_width_(circumference / static_cast<double>(strip_count)),
      corner_radius_(strip_width_ / 2 / std::sin(half_turn / static_cast<double>(strip_count))) {}

Vec2 RoundOutline::corner(std::size_t i) const {
  const double step = 2 * half_turn / static_cast<double>(strip_count);
  const double angle = (static_cast<double>(i % strip_count) - static_cast<double>(strip_count / 2) - 0.5) * step;
  return Vec2{std::sin(angle), -std::cos(angle)} * corner_radius_;
}

double RoundOutline::front() const { return -corner_radius_ * std::cos(half_turn / static_cast<double>(strip_count)); }

void add_rings(BodyStatement& body, const std::function<Vec3(std::size_t)>& below,
               const std::function<Vec3(std::size_t)>& above) {
  body.loops.resize(2);
  for (std::size_t i = 0; i < strip_count; ++i) {
    body.vertices.push_back(below(i));
    body.loops[0].push_back(strip_count - 1 - i);
    body.loops[1].push_back(strip_count + i);
  }
  for (std::size_t i = 0; i < strip_count; ++i) {
    const std::size_t next = (i + 1) % strip_count;
    body.vertices.push_back(above(i));
    body.loops.push_back({i, next, strip_count + next, strip_count + i});
  }
}

HingePairs strip_hinges(std::size_t first, const std::vector<std::size_t>& hanging) {
  HingePairs hinges;
  for (std::size_t i = 0; i + 1 < strip_count; ++i) {
    hinges.push_back({first + i, first + i + 1});
  }
  for (const std::size_t loop : hanging) {
    hinges.push_back({loop, first + strip_count / 2});
  }
  return hinges;
}

FaceStatement disk(const CircleSymbols& circle, Vec3 center, Vec3 rim, Vec3 clear) {
  FaceStatement face;
  face.role = FaceRole::Base;
  face.shape = "circle";
  face.area = circle.times_pi(square(circle.radius));
  face.lengths = {{circle.radius, "radius" + circle.of_which, center, rim}};
  face.number_at = center + (clear - center) * 0.5;
  return face;
}

void add_circle_marks(BodyStatement& body, const CircleSymbols& circle, std::size_t face, Vec3 center, Vec3 rim,
                      Vec3 across, Vec3 next) {
  Mark radius{circle.radius, "radius" + circle.of_which, MarkPlace::OnFace, center, rim};
  radius.face = face;
  body.marks.push_back(radius);
  Mark diameter{circle.diameter, "diameter" + circle.of_which, MarkPlace::OnFace, across, rim};
  diameter.face = face;
  body.marks.push_back(diameter);
  body.marks.push_back({circle.circumference, "circumference" + circle.of_which, MarkPlace::Edge, rim, next});
}

}  // namespace fw::solids
