#include "solids/base_shapes/shape_table.hpp"

namespace fw::solids::shape {
namespace {

using algebra::Expression;
using algebra::Symbol;

/// b₁ is the longer base, drawn at the bottom; c is the leg on its right, d the one on its left.
struct TrapezoidLetters {
  Symbol p = base_symbol("bases.1", "b₁");
  Symbol q = base_symbol("bases.2", "b₂");
  Symbol t = base_symbol("height", "t");
  Symbol c = base_symbol("legs.1", "c");
  Symbol d = base_symbol("legs.2", "d");
};

bool has_equal_legs(const Description& description) {
  const auto legs = written_lengths(description, "legs");
  if (legs.size() < 2 || (!legs[0] && !legs[1])) {
    return true;
  }
  return legs[0] && legs[1] && *legs[0] == *legs[1];
}

/// Whether the lesson itself says that the legs are equal.
bool states_equal_legs(const Description& description) {
  const auto legs = written_lengths(description, "legs");
  return legs.size() == 1 || (legs.size() == 2 && legs[0] && legs[1] && *legs[0] == *legs[1]);
}

void add_leg_relations(ShapeStatement& shape, const TrapezoidLetters& n, const Description& description) {
  const Expression difference = Expression(n.p) - n.q;
  const Expression c = n.c;
  const Expression d = n.d;
  if (has_equal_legs(description)) {
    shape.relations.push_back({{solids::square(n.c), solids::square(n.t) + solids::square(half(difference))},
                               message("each end of an isosceles trapezoid is a right triangle, and its base is half "
                                       "the difference of the two bases")});
    return;
  }
  const auto legs = written_lengths(description, "legs");
  if (legs[0] && legs[1]) {
    // The trapezoid less a parallelogram leaves a triangle. Source: Heron, Metrica I.8.
    const Expression product =
        ((difference + c + d) * (c + d - difference)) * ((difference + c - d) * (difference + d - c));
    shape.relations.push_back(
        {{Expression(4) * solids::square(difference) * solids::square(n.t), product},
         message("without the parallelogram on the shorter base, a triangle with the two legs remains")});
    const words::Message sentence = message(
        "the difference of the bases, as a side of a triangle with the two legs, must be "
        "shorter than the legs together");
    shape.conditions.push_back({c + d, difference, n.p.name, sentence});
    return;
  }
  const Symbol known = legs[0] ? n.c : n.d;
  const Symbol unknown = legs[0] ? n.d : n.c;
  shape.relations.push_back(
      {{solids::square(unknown),
        solids::square(n.t) + solids::square(difference - root(solids::square(known) - solids::square(n.t)))},
       message("the height cuts a right triangle off the end of the trapezoid")});
}

void add_conditions(ShapeStatement& shape, const TrapezoidLetters& n, bool equal_legs) {
  shape.conditions.push_back({n.p, n.q, n.q.name, message("the bases of a trapezoid must be of different lengths")});
  const std::vector<Symbol> legs = equal_legs ? std::vector<Symbol>{n.c} : std::vector<Symbol>{n.c, n.d};
  for (const Symbol& leg : legs) {
    Condition condition{leg, n.t, leg.name, message("a leg of a trapezoid cannot be shorter than its height")};
    condition.may_be_equal = true;
    shape.conditions.push_back(condition);
  }
}

ShapeBody body_of(const TrapezoidLetters& n, const Symbol& left_leg, const algebra::Bindings& bindings) {
  const exact::Number p = value_of(bindings, n.p);
  const exact::Number q = value_of(bindings, n.q);
  const exact::Number t = value_of(bindings, n.t);
  const exact::Number right = value_of(bindings, n.c);
  const exact::Number left = value_of(bindings, left_leg);
  const exact::Number difference = p - q;
  const exact::Number zero;
  // How far the left leg leans inward; negative where it leans outward.
  const exact::Number lean = (difference * difference + left * left - right * right) / (whole(2) * difference);
  ShapeBody body;
  body.corners = {{zero, zero}, {p, zero}, {lean + q, t}, {lean, t}};
  body.sides = {n.p, n.c, n.q, left_leg};
  body.lengths = {{n.p, "longer base of the trapezoid", body.corners[0], body.corners[1]},
                  {n.q, "shorter base of the trapezoid", body.corners[3], body.corners[2]},
                  {n.t, "height of the trapezoid", body.corners[3], {lean, zero}, true}};
  return body;
}

void add_measures(ShapeStatement& shape, const TrapezoidLetters& n, const Description& description) {
  const auto bases = written_lengths(description, "bases");
  const bool turned = bases.size() == 2 && bases[0] && bases[1] && *bases[0] < *bases[1];
  const Symbol left_leg = has_equal_legs(description) ? n.c : n.d;
  shape.measures = {base_measure(turned ? n.q : n.p, "base of the trapezoid", "bases", 0),
                    base_measure(turned ? n.p : n.q, "base of the trapezoid", "bases", 1),
                    base_measure(n.c, "leg", "legs", 0), base_measure(left_leg, "leg", "legs", 1),
                    base_measure(n.t, "height of the trapezoid", "height")};
}

Stated stated_trapezoid(const Description& description) {
  const TrapezoidLetters n;
  const bool equal_legs = has_equal_legs(description);
  const Symbol left_leg = equal_legs ? n.c : n.d;
  ShapeStatement shape;
  shape.noun = "trapezoid";
  shape.adjective = "trapezoidal";
  shape.other_adjectives = {"trapezoid", "trapezium", "quadrilateral"};
  shape.sides = {n.p, n.c, n.q, left_leg};
  add_measures(shape, n, description);
  shape.area = half((Expression(n.p) + n.q) * n.t);
  add_leg_relations(shape, n, description);
  add_perimeter_and_area(
      shape, equal_legs ? algebra::sum_of({n.p, n.q, Expression(2) * n.c}) : algebra::sum_of({n.p, n.c, n.q, n.d}),
      equal_legs ? message("the two legs are equal") : message("the perimeter is the sum of all four sides"),
      message("the area of a trapezoid is half the sum of its bases times its height"));
  add_conditions(shape, n, equal_legs);
  if (equal_legs && !states_equal_legs(description)) {
    shape.assumptions = {
        message("no legs are given, so the trapezoid is drawn with two equal legs; answers that depend on the legs are "
                "for that trapezoid only")};
  }
  shape.body = [n, left_leg](const algebra::Bindings& bindings) { return body_of(n, left_leg, bindings); };
  return shape;
}

}  // namespace

ShapeKind trapezoid() {
  return {"trapezoid",
          {lengths_field("bases", "bases", {"base.bases.1", "base.bases.2"}, 2, 2),
           length_field("height", "height", "base.height"),
           lengths_field("legs", "legs", {"base.legs.1", "base.legs.2"}, 1, 2)},
          &stated_trapezoid,
          example("trapezoid", {{"bases", length_entries({"16 cm", "10 cm"})},
                                {"height", length_entry("4 cm")},
                                {"legs", length_entries({"5 cm"})}}),
          {}};
}

}  // namespace fw::solids::shape
