#include "reasoning/conversions.hpp"

#include "exact/print_number.hpp"

namespace fw::reasoning {
namespace {

using algebra::Notation;
using algebra::Symbol;
using exact::Number;
using units::Unit;

Notation quantity(const Number& amount, const Unit& unit) {
  return algebra::row({algebra::leaf(Notation::Kind::Number, exact::class_text(amount)),
                       algebra::leaf(Notation::Kind::Unit, unit.text())});
}

words::Amount amount_of(const Number& amount, const Unit& unit) { return {exact::class_text(amount), unit.text()}; }

}  // namespace

Message conversion_sentence(const Unit& from, const Unit& to) {
  Number factor = units::conversion(from, to);
  // Always told from the larger unit, "1 ft = 12 in", whichever way the number goes.
  const bool is_larger = factor >= Number::whole(1);
  const Unit& larger = is_larger ? from : to;
  const Unit& smaller = is_larger ? to : from;
  factor = is_larger ? factor : Number::whole(1) / factor;
  const std::string number = exact::class_text(factor);
  const words::Amount one{"1", larger.text()};
  const words::Amount many = amount_of(factor, smaller);
  const Message what_to_do = is_larger ? message("multiply by {factor}", {{"factor", number}})
                                       : message("divide by {factor}", {{"factor", number}});
  const std::optional<Unit> large_root = larger.root();
  const std::optional<Unit> small_root = smaller.root();
  if (larger.dimension() < 2 || !large_root || !small_root) {
    return message("{one} = {many}, so {what}.", {{"one", one}, {"many", many}, {"what", what_to_do}});
  }
  const words::Amount side = amount_of(units::conversion(*large_root, *small_root), *small_root);
  const Message product = larger.dimension() == 2 ? message("{side} × {side}", {{"side", side}})
                                                  : message("{side} × {side} × {side}", {{"side", side}});
  return message("{long} = {side}, so {one} = {product} = {many}: {what}.",
                 {{"long", words::Amount{"1", large_root->text()}},
                  {"side", side},
                  {"one", one},
                  {"product", product},
                  {"many", many},
                  {"what", what_to_do}});
}

void convert_givens(Worksheet& sheet, const std::vector<Symbol>& used) {
  const solids::Solid& solid = sheet.solid();
  for (const Symbol& measure : used) {
    const units::WrittenQuantity* written = solid.written(measure);
    const Unit unit = solid.unit().to_the(measure.dimension);
    const bool is_mixed = written != nullptr && written->has_unit && written->number.text == written->text;
    if (written == nullptr || !written->has_unit || (written->unit == unit && !is_mixed)) {
      continue;
    }
    const Number& value = solid.values().at(measure.name);
    const std::size_t index = sheet.steps().size();
    Step& step = sheet.say(StepKind::Convert,
                           message("Write every measure in the same unit. {conversion}",
                                   {{"conversion", written->unit == unit ? message("A foot has 12 inches.")
                                                                         : conversion_sentence(written->unit, unit)}}));
    step.line = algebra::NotationLine{algebra::leaf(Notation::Kind::Words, written->text), "=", quantity(value, unit)};
    step.outcome = Outcome{value, unit};
    step.marks = sheet.marks_of({measure});
    step.faces = sheet.faces_of(measure);
    Source source{Source::Kind::EarlierStep, worked_out_in(index), std::nullopt, index, step.faces};
    sheet.set_numeral(measure, sheet.sourced_numeral(value, measure.dimension, std::move(source)));
  }
}

void convert_answer(Worksheet& sheet, const Symbol& asked, const Number& value, const Unit& from, const Unit& to) {
  const Number amount = value * units::conversion(from, to);
  const std::vector<FaceId> faces = sheet.faces_of(asked);
  Step& step =
      sheet.say(StepKind::Convert, message("The question asks for {unit}. {conversion}",
                                           {{"unit", to.text()}, {"conversion", conversion_sentence(from, to)}}));
  step.line = algebra::NotationLine{algebra::leaf(Notation::Kind::Letter, asked.letter), "=", quantity(amount, to)};
  step.outcome = Outcome{amount, to};
  step.faces = faces;
}

}  // namespace fw::reasoning
