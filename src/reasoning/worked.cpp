#include "reasoning/worked.hpp"

#include <optional>

#include "algebra/print.hpp"
#include "exact/print_number.hpp"
#include "reasoning/ledger.hpp"

namespace fw::reasoning {
namespace {

using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;

/// The number of a label that can be worked with as it is written.
const units::WrittenQuantity* label_of(const solids::Solid& solid, const Symbol& symbol) {
  const units::WrittenQuantity* written = solid.written(symbol);
  // "3 ft 6 in" is no one number to work with.
  const bool is_one_number = written != nullptr && (!written->has_unit || written->number.text != written->text);
  return is_one_number && written->unit == solid.unit() ? written : nullptr;
}

/// "10π" is worked with as it stands.
bool is_of_pi(const exact::Number& value) {
  return value.is_exact() && (value / exact::Number::pi()).is_rational() && !value.is_zero();
}

std::string number_text(const solids::Solid& solid, const Symbol& symbol, int places) {
  if (const units::WrittenQuantity* label = label_of(solid, symbol)) {
    return label->number.text;
  }
  const auto value = solid.values().find(symbol.name);
  if (value == solid.values().end()) {
    return symbol.letter;
  }
  return is_of_pi(value->second) ? exact::class_text(value->second) : exact::shown(value->second, places).text;
}

/// Whether a reader who works out the expression with numbers of so many decimals gets its value as it is shown.
bool comes_out(const solids::Solid& solid, const Expression& expression, const WorkedResult& result, int places) {
  algebra::Bindings printed;
  for (const Symbol& symbol : algebra::symbols_of(expression)) {
    const auto value = solid.values().find(symbol.name);
    if (value == solid.values().end()) {
      return true;  // a letter stands there
    }
    const bool is_label = label_of(solid, symbol) != nullptr || is_of_pi(value->second);
    printed[symbol.name] =
        is_label ? value->second : exact::rounded(value->second, exact::enough_places(value->second, places));
  }
  const auto got = algebra::evaluate(expression, printed);
  const auto meant = algebra::evaluate(expression, solid.values());
  const auto as_shown = [&](const exact::Number& number) {
    return exact::shown(exact::Number::whole(static_cast<long long>(result.times)) * number, result.places).text;
  };
  return !got || !meant || as_shown(*got) == as_shown(*meant);
}

}  // namespace

std::string worked_numbers(const solids::Solid& solid, const Expression& expression, WorkedUnits units,
                           const WorkedResult& result) {
  constexpr int most_places = 12;
  int places = work_places;
  while (places < most_places && !comes_out(solid, expression, result, places)) {
    ++places;
  }
  return algebra::work_text(expression, [&](const Symbol& symbol) {
    std::string text = number_text(solid, symbol, places);
    if (units == WorkedUnits::With && symbol.dimension > 0) {
      text += " " + solid.unit().to_the(symbol.dimension).text();
    }
    return text;
  });
}

std::string repeated(const std::string& text, const Expression& expression, std::size_t times,
                     std::string_view times_sign) {
  if (times == 1) {
    return text;
  }
  const Operation operation = expression.operation();
  const bool stands_alone =
      operation == Operation::Number || operation == Operation::Symbol || operation == Operation::Power;
  return std::to_string(times) + std::string(times_sign) + (stands_alone ? text : "(" + text + ")");
}

std::string worked_area(const solids::Solid& solid, FaceId face, int places) {
  const solids::Face& of = solid.faces()[face];
  const std::string area = units::text(of.area, places);
  const bool is_exact = exact::shown(of.area.amount(), places).exact;
  return worked_numbers(solid, of.work, WorkedUnits::With, {1, places}) + (is_exact ? " = " : " ") + area;
}

std::vector<std::string> worked_volume(const solids::Solid& solid, int places) {
  const std::string letter = solids::symbols::volume().letter;
  const std::string volume = units::text(solid.volume(), places);
  const bool is_exact = exact::shown(solid.volume().amount(), places).exact;
  const std::string result = letter + (is_exact ? " = " : " ") + volume;
  const std::optional<algebra::Equation>& formula = solid.statement().volume;
  if (!formula) {
    return {result};
  }
  return {algebra::formula_text(*formula),
          letter + " = " + worked_numbers(solid, formula->right, WorkedUnits::With, {1, places}), result};
}

}  // namespace fw::reasoning
