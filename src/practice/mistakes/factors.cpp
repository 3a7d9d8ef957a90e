#include <algorithm>

#include "practice/signatures.hpp"

// A half, a third or a power is missing, or is one too many.
// Source: TIMSS 2019, problem solving and inquiry task "Building", grade 8, for the triangle taken as a rectangle (C1,
// C2, C6); the rest is common practice, no source.
namespace fw::practice {
namespace {

using algebra::Expression;
using algebra::Operation;
using solids::FaceRole;

struct Half {
  double area = 0;
  std::vector<FaceId> faces;
};
// The faces of a role that count and are worked as half of a product.
Half halved(const Figure& figure, FaceRole role) {
  Half half;
  for (const FigureFace& face : figure.faces) {
    if (face.role == role && face.is_halved && face.counts) {
      half.area += face.area;
      half.faces.push_back(face.id);
    }
  }
  return half;
}

bool has_sum(const Expression& expression) {
  return expression.operation() == Operation::Sum ||
         std::any_of(expression.operands().begin(), expression.operands().end(), has_sum);
}
// The ends are trapezoids: their work has a sum in it.
bool averages(const Figure& figure) {
  return figure.traits().bases_match && has_sum(figure.face(figure.faces[0]).work);
}

bool stands_between_halves(const Figure& figure) { return figure.traits().bases_match && figure.faces[0].is_halved; }

void ends_not_halved(const Figure& figure, Finds& finds) {
  const Half ends = halved(figure, FaceRole::Base);
  if (figure.traits().bases_match && !averages(figure)) {
    finds.push_back({ends.area > 0 ? figure.truth + ends.area : 0, ends.faces});
  }
}
void volume_not_halved(const Figure& figure, Finds& finds) {
  if (stands_between_halves(figure) && !averages(figure)) {
    finds.push_back({2 * figure.volume, {figure.faces[0].id}});
  }
}
void pair_halved_again(const Figure& figure, Finds& finds) {
  const Half ends = halved(figure, FaceRole::Base);
  if (figure.traits().bases_match && ends.faces.size() == figure.of_role(FaceRole::Base).size()) {
    finds.push_back({figure.truth - ends.area / 2, ends.faces});
  }
}

// The base worked with one of its longer sides where its height belongs: the area in place of the base's.
std::vector<double> bases_with_a_side(const Figure& figure) {
  std::vector<double> areas;
  if (!stands_between_halves(figure)) {
    return areas;
  }
  const FigureFace& base = figure.faces[0];
  const std::vector<algebra::Symbol> in_work = algebra::symbols_of(figure.face(base).work);
  for (const solids::FaceLength& length : figure.face(base).lengths) {
    if (!length.is_height) {
      continue;
    }
    const double height = length.value.to_double();
    for (const solids::Measure& side : figure.problem->solid.statement().measures) {
      const auto value = figure.value(side.symbol.name);
      const bool is_worked_with = std::find(in_work.begin(), in_work.end(), side.symbol) != in_work.end();
      if (side.in_base && !is_worked_with && value && *value > height) {
        areas.push_back(figure.area_with(base, {{length.symbol.name, *value}}));
      }
    }
  }
  return areas;
}
void with_base_area(const Figure& figure, double base, Finds& finds) {
  if (figure.question->asked == Asked::Volume) {
    finds.push_back({figure.volume / figure.base() * base, {figure.faces[0].id}});
    return;
  }
  const Half ends = halved(figure, FaceRole::Base);
  const double count = static_cast<double>(ends.faces.size());
  finds.push_back({figure.truth - ends.area + count * base, ends.faces});
}
void side_for_height(const Figure& figure, Finds& finds) {
  for (const double area : bases_with_a_side(figure)) {
    with_base_area(figure, area, finds);
  }
}
void side_for_height_not_halved(const Figure& figure, Finds& finds) {
  for (const double area : bases_with_a_side(figure)) {
    with_base_area(figure, 2 * area, finds);
  }
}

void slopes_not_halved(const Figure& figure, Finds& finds) {
  const Half slopes = halved(figure, FaceRole::Lateral);
  if (figure.has_triangles() && slopes.area > 0) {
    finds.push_back({figure.truth + slopes.area, slopes.faces});
  }
}
// Where a class speaks of a half at all: some face is a triangle.
void total_halved(const Figure& figure, Finds& finds) {
  if (!figure.traits().has_round_base && std::any_of(figure.faces.begin(), figure.faces.end(),
                                                     [](const auto& face) { return face.counts && face.is_halved; })) {
    finds.push_back({figure.truth / 2, {}});
  }
}

void trapezoid(const Figure& figure, Finds& finds) {
  if (!averages(figure)) {
    return;
  }
  const FigureFace& base = figure.faces[0];
  with_base_area(figure, 2 * base.area, finds);
  for (const solids::FaceLength& side : figure.face(base).lengths) {
    for (const solids::FaceLength& height : figure.face(base).lengths) {
      if (!side.is_height && height.is_height) {
        with_base_area(figure, side.value.to_double() * height.value.to_double(), finds);
      }
    }
  }
}

void no_third(const Figure& figure, Finds& finds) {
  if (figure.has_triangles()) {
    finds.push_back({3 * figure.volume, {}});
  }
}
void half_for_third(const Figure& figure, Finds& finds) {
  if (figure.has_triangles()) {
    finds.push_back({1.5 * figure.volume, {}});
  }
}
void third_too_many(const Figure& figure, Finds& finds) {
  const bool is_told_elsewhere = figure.traits().has_round_base && figure.traits().has_apex;
  finds.push_back({is_told_elsewhere ? 0 : figure.volume / 3, {}});
}

// The value with "times itself" read as "times the exponent"; `changed` tells whether there was a power.
double doubled_powers(const Expression& expression, const Figure::Values& values, bool& changed) {
  switch (expression.operation()) {
    case Operation::Power:
      changed = true;
      return expression.exponent() * doubled_powers(expression.operands()[0], values, changed);
    case Operation::Product: {
      double product = 1;
      for (const Expression& factor : expression.operands()) {
        product *= doubled_powers(factor, values, changed);
      }
      return product;
    }
    case Operation::Quotient:
      return doubled_powers(expression.operands()[0], values, changed) /
             doubled_powers(expression.operands()[1], values, changed);
    case Operation::Sum: {
      double sum = 0;
      for (const Expression& term : expression.operands()) {
        sum += doubled_powers(term, values, changed);
      }
      return sum;
    }
    default:
      return algebra::rough_value(expression, values);
  }
}
void power_as_product(const Figure& figure, Finds& finds) {
  const bool asks_volume = figure.question->asked == Asked::Volume;
  if (!figure.problem->open.empty()) {
    return;
  }
  Figure::Values values = figure.values;
  bool changed = false;
  const algebra::Symbol& wanted = asks_volume ? solids::symbols::volume() : solids::symbols::surface_area();
  for (const algebra::Symbol* symbol : {&solids::symbols::base_area(), &wanted}) {
    for (const solids::Relation& relation : figure.problem->solid.statement().relations) {
      const Expression& left = relation.equation.left;
      if (left.operation() == Operation::Symbol && left.symbol() == *symbol) {
        values[symbol->name] = doubled_powers(relation.equation.right, values, changed);
        break;
      }
    }
  }
  if (changed) {
    finds.push_back({values[wanted.name], {}});
  }
}

}  // namespace

std::vector<Signature> factor_signatures() {
  const std::vector<Asked> surface{Asked::Surface};
  const std::vector<Asked> volume{Asked::Volume};
  const std::vector<Asked> both{Asked::Surface, Asked::Volume};
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  return {
      {"C1", surface, ends_not_halved,
       Saying("{n} is what you get if each base were a whole rectangle.",
              "What fraction of the rectangle around it is one base?")},
      {"C2", volume, volume_not_halved,
       Saying("{n} is the volume with a whole rectangle as the base.", "What fraction of that rectangle is the base?")},
      {"C3", surface, pair_halved_again,
       Saying("{n} is what you get if you take half of the two bases again.", "How many bases did you add?")},
      {"C4", both, side_for_height,
       Saying("{n} is what you get with a slanted side instead of the height.",
              "Which length meets the base at a right angle?")},
      {"C5", both, side_for_height_not_halved,
       Saying("{n} is what you get with a slanted side as the height, and without the ½.",
              "What is the area of one base?")},
      {"C6", areas, slopes_not_halved,
       Saying("{n} is what you get if the lateral faces were rectangles.",
              "What fraction of base times slant height is one triangle?")},
      {"C7",
       {Asked::Surface, Asked::Lateral, Asked::Volume},
       total_halved,
       Saying("{n} is half of the whole thing.", "Which faces are triangles, and which keep their whole area?")},
      {"C8", both, trapezoid,
       Saying("{n} is what you get if the trapezoid were a rectangle.",
              "What do you do with its two parallel sides first?")},
      {"F1", volume, no_third,
       Saying("{n} is the volume of the prism around it.", "How many of these pyramids fill the prism?")},
      {"F2", volume, half_for_third,
       Saying("{n} is what you get with ½. That goes with a flat triangle.",
              "What fraction of the prism is a pyramid?")},
      {"F3", volume, third_too_many, Saying("{n} is what you get if you take a third.", "Does this solid need the ⅓?")},
      {"F7", both, power_as_product,
       Saying("{n} is what you get if you double where you should square.", "What does the exponent tell you to do?")},
  };
}

}  // namespace fw::practice
