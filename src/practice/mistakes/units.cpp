#include <cmath>

#include "practice/signatures.hpp"

// Labels in unlike units, taken as if they were in one; an answer converted by a wrong factor, or not at all.
// Source: common practice, no source.
namespace fw::practice {
namespace {

// The labels as bare numbers, in place of the lengths; nothing where all are in one unit.
std::optional<Figure::Values> bare_labels(const Figure& figure) {
  const solids::Solid& solid = figure.problem->solid;
  Figure::Values values = figure.values;
  bool is_mixed = false;
  for (const solids::Measure& measure : solid.statement().measures) {
    const units::WrittenQuantity* written = solid.written(measure.symbol);
    if (written == nullptr || measure.symbol.dimension != 1) {
      continue;
    }
    values[measure.symbol.name] = written->number.value.to_double();
    is_mixed = is_mixed || (written->has_unit && !(written->unit == solid.unit()));
  }
  return is_mixed ? std::optional(std::move(values)) : std::nullopt;
}

void unlike_units(const Figure& figure, Finds& finds) {
  std::optional<Figure::Values> values = bare_labels(figure);
  if (!values) {
    return;
  }
  if (figure.question->asked != Asked::Volume) {
    double area = 0;
    for (const FigureFace& face : figure.faces) {
      area += face.counts ? algebra::rough_value(figure.face(face).work, *values) : 0;
    }
    finds.push_back({area, {}});
    return;
  }
  const solids::SolidStatement& statement = figure.problem->solid.statement();
  if (figure.traits().has_base) {
    (*values)[solids::symbols::base_area().name] = algebra::rough_value(figure.face(figure.faces[0]).work, *values);
  }
  finds.push_back({statement.volume ? algebra::rough_value(statement.volume->right, *values) : 0, {}});
}

// ---- the answer is asked in another unit; numbers that a student would give in that unit ----

int asked_dimension(const Figure& figure) { return figure.question->unit->dimension(); }

// How many of the asked unit's lengths make one of the solid's: 0.01 from cm to m.
double length_factor(const Figure& figure) { return std::pow(figure.to_asked, 1.0 / asked_dimension(figure)); }

bool is_converted(const Figure& figure) { return figure.question->is_converted; }
bool is_capacity(const Figure& figure) { return figure.question->unit->is_capacity(); }
bool is_decimal(const Figure& figure) {
  const double tens = std::log10(length_factor(figure));
  return std::abs(tens - std::round(tens)) < 1e-6;
}

void push_asked(const Figure& figure, double number, Finds& finds) { finds.push_back({number / figure.to_asked, {}}); }

void lower_powers(const Figure& figure, Finds& finds) {
  for (int power = 1; power < asked_dimension(figure); ++power) {
    push_asked(figure, figure.truth * std::pow(length_factor(figure), power), finds);
  }
}
void area_by_length_factor(const Figure& figure, Finds& finds) {
  if (is_converted(figure) && is_decimal(figure) && asked_dimension(figure) == 2) {
    lower_powers(figure, finds);
  }
}
void volume_by_lower_power(const Figure& figure, Finds& finds) {
  if (is_converted(figure) && is_decimal(figure) && asked_dimension(figure) == 3 && !is_capacity(figure)) {
    lower_powers(figure, finds);
  }
}
void customary_by_lower_power(const Figure& figure, Finds& finds) {
  if (is_converted(figure) && !is_decimal(figure) && !is_capacity(figure)) {
    lower_powers(figure, finds);
  }
}
void the_other_way(const Figure& figure, Finds& finds) {
  if (is_converted(figure)) {
    push_asked(figure, figure.truth / figure.to_asked, finds);
  }
}
void capacity_by_other_ten(const Figure& figure, Finds& finds) {
  if (is_converted(figure) && is_capacity(figure)) {
    for (const double step : {10.0, 100.0, 0.1}) {
      push_asked(figure, figure.truth * figure.to_asked * step, finds);
    }
  }
}
void not_converted(const Figure& figure, Finds& finds) {
  if (is_converted(figure)) {
    push_asked(figure, figure.truth, finds);
  }
}

}  // namespace

std::vector<Signature> unit_signatures() {
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral, Asked::BaseArea};
  const std::vector<Asked> volume{Asked::Volume};
  const std::vector<Asked> all{Asked::Surface, Asked::Lateral, Asked::BaseArea, Asked::Volume};
  const Saying lower_power =
      Saying("{n} is what you get if you convert too few times.", "How many dimensions are you converting?");
  return {
      {"G3", areas, area_by_length_factor,
       Saying("{n} is what you get if you convert as if it were a length.",
              "How many small squares make one large square?")},
      {"G4", volume, volume_by_lower_power, lower_power},
      {"G8", all, customary_by_lower_power, lower_power},
      {"G5", all, the_other_way,
       Saying("{n} is what you get if you convert the wrong way.", "Does it take more of a larger unit, or fewer?")},
      {"G7", volume, capacity_by_other_ten,
       Saying("{n} is off by a power of ten.", "How many of the small cubes fill one of the large ones?")},
      {"G9", all, not_converted,
       Saying("{n} is the number before you convert it.", "What unit does the question ask for?")},
      {"G6",
       {Asked::Surface, Asked::Lateral, Asked::Volume},
       unlike_units,
       Saying("{n} is what you get if you ignore the units.",
              "Which labels are in a different unit? Convert those first.")},
  };
}

}  // namespace fw::practice
