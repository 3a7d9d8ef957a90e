#include "units/write_quantity.hpp"

namespace fw::units {

WrittenQuantity written_in(const Unit& unit, exact::Written number) {
  const std::string text = number.text + " " + unit.ascii();
  return {std::move(number), unit, true, text};
}

WrittenQuantity written_as_shown(const exact::Number& value, const Unit& unit, int places) {
  const exact::Shown shown = exact::shown(value, places);
  const int written = shown.exact ? exact::decimals_needed(value, places).value_or(0) : places;
  return written_in(unit, {shown.text, exact::rounded(value, places), written, false});
}

WrittenQuantity written_exactly(const exact::Number& value, const Unit& unit, int places) {
  constexpr int most_decimals = 6;  // of an exact text
  const std::string text = exact::exact_text(value);
  if (text.empty()) {
    return written_as_shown(value, unit, places);
  }
  const std::optional<int> decimals = exact::decimals_needed(value, most_decimals);
  return written_in(unit, {text, value, decimals.value_or(0), !decimals.has_value()});
}

WrittenQuantity written_whole(long long number, const Unit& unit) {
  return written_as_shown(exact::Number::whole(number), unit, 0);
}

}  // namespace fw::units
