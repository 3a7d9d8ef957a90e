#include "practice/signatures.hpp"

// Labels in unlike units, taken as if they were in one.
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
  if (figure.bases > 0) {
    (*values)[solids::symbols::base_area().name] = algebra::rough_value(figure.face(figure.faces[0]).work, *values);
  }
  finds.push_back({statement.volume ? algebra::rough_value(statement.volume->right, *values) : 0, {}});
}

}  // namespace

std::vector<Signature> unit_signatures() {
  return {{"G6",
           {Asked::Surface, Asked::Lateral, Asked::Volume},
           unlike_units,
           "{n} is what the bare numbers would give. Which labels are in another unit? Convert those first."}};
}

}  // namespace fw::practice
