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

// The area or volume that is asked for, of these lengths.
double worked_with(const Figure& figure, Figure::Values values) {
  if (figure.question->asked != Asked::Volume) {
    double area = 0;
    for (const FigureFace& face : figure.faces) {
      area += face.counts ? algebra::rough_value(figure.face(face).work, values) : 0;
    }
    return area;
  }
  const solids::SolidStatement& statement = figure.problem->solid.statement();
  if (figure.traits().has_base) {
    values[solids::symbols::base_area().name] = algebra::rough_value(figure.face(figure.faces[0]).work, values);
  }
  return statement.volume ? algebra::rough_value(statement.volume->right, values) : 0;
}

void unlike_units(const Figure& figure, Finds& finds) {
  if (const std::optional<Figure::Values> values = bare_labels(figure)) {
    finds.push_back({worked_with(figure, *values), {}});
  }
}

// ---- rarer: one label alone ----

// Calls `visit(name, written)` for each length that the lesson labels.
template <class Visit>
void for_each_label(const Figure& figure, const Visit& visit) {
  const solids::Solid& solid = figure.problem->solid;
  for (const solids::Measure& measure : solid.statement().measures) {
    const units::WrittenQuantity* written = solid.written(measure.symbol);
    if (written != nullptr && measure.symbol.dimension == 1) {
      visit(measure.symbol.name, *written);
    }
  }
}
void push_with(const Figure& figure, const std::string& name, double length, Finds& finds) {
  Figure::Values values = figure.values;
  values[name] = length;
  finds.push_back({worked_with(figure, std::move(values)), {}});
}
void one_label_bare(const Figure& figure, Finds& finds) {
  for_each_label(figure, [&](const std::string& name, const units::WrittenQuantity& written) {
    if (written.has_unit && !(written.unit == figure.problem->solid.unit())) {
      push_with(figure, name, written.number.value.to_double(), finds);
    }
  });
}
// "1 ft 4 in" as 14, or as 1.4 ft.
void feet_and_inches_run_together(const Figure& figure, Finds& finds) {
  for_each_label(figure, [&](const std::string& name, const units::WrittenQuantity& written) {
    std::string numbers;
    for (const char c : written.text) {
      const bool is_digit = c >= '0' && c <= '9';
      if (is_digit || (!numbers.empty() && numbers.back() != ' ')) {
        numbers += is_digit ? c : ' ';
      }
    }
    const std::size_t gap = numbers.find(' ');
    const std::size_t next = gap == std::string::npos ? gap : gap + 1;
    if (next == std::string::npos || next >= numbers.size() || written.number.text.find('/') != std::string::npos ||
        written.text.find('.') != std::string::npos || written.text.find(' ') == std::string::npos) {
      return;
    }
    const std::string first = numbers.substr(0, gap);
    const std::string second = numbers.substr(next, numbers.find(' ', next) - next);
    const double larger =
        written.unit.is_capacity() ? 0 : units::conversion(written.unit, figure.problem->solid.unit()).to_double();
    push_with(figure, name, std::stod(first + second), finds);
    push_with(figure, name, std::stod(first + "." + second) * larger, finds);
  });
}
void fraction_left_behind(const Figure& figure, Finds& finds) {
  for_each_label(figure, [&](const std::string& name, const units::WrittenQuantity&) {
    const double length = figure.value(name).value_or(0);
    const double part = length - std::floor(length);
    if (part < 1e-9 || length < 1) {
      return;
    }
    push_with(figure, name, length - part, finds);
    if (figure.question->asked == Asked::Volume) {  // the fraction is put back at the end
      finds.back().value += part;
      push_with(figure, name, length - part, finds);
      return;
    }
    for (const FigureFace& face : figure.faces) {  // 8 1/2 · 6 = 48 1/2
      const double other = figure.area_with(face, {{name, length - part}});
      if (face.counts && std::abs(other - face.area) > 1e-9) {
        finds.push_back({figure.truth - face.area + other + part, {face.id}});
      }
    }
  });
}
// Right in the unit of a label, but written with the solid's.
void unit_of_a_label(const Figure& figure, Finds& finds) {
  for_each_label(figure, [&](const std::string&, const units::WrittenQuantity& written) {
    const units::Unit own = figure.problem->solid.unit();
    if (written.has_unit && !(written.unit == own) && figure.question->unit) {
      const double factor = units::conversion(own, written.unit).to_double();
      finds.push_back({figure.truth * std::pow(factor, figure.question->unit->dimension()), {}});
    }
  });
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
// As if 10 of one made one of the other.
void by_tens(const Figure& figure, Finds& finds) {
  if (is_converted(figure) && !is_decimal(figure)) {
    const double tens = std::pow(10.0, asked_dimension(figure));
    push_asked(figure, figure.to_asked < 1 ? figure.truth / tens : figure.truth * tens, finds);
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
      {"G10", all, by_tens,
       Saying("{n} is what you get if you convert by tens.", "How many of one unit make one of the other?"), true},
      {"G11", all, one_label_bare,
       Saying("{n} is what you get if one label isn't converted.", "Are all the lengths in the same unit now?"), true},
      {"G12", all, feet_and_inches_run_together,
       Saying("{n} is what you get if feet and inches run together.", "How many inches are in the feet?"), true},
      {"G13", all, unit_of_a_label, Saying("{n} is right in a different unit.", "Which unit goes with your number?"),
       true},
      {"F10", all, fraction_left_behind,
       Saying("{n} is what you get if only the whole number is multiplied.", "Did you multiply the fraction too?"),
       true},
  };
}

}  // namespace fw::practice
