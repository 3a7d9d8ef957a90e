#include "tasks/judged_numbers.hpp"

#include "reasoning/supply_steps.hpp"

namespace fw::tasks {

using exact::Number;

std::string judged_amount(const Number& amount, const units::Unit& unit, int places) {
  const exact::Shown rounded = reasoning::shown_apart(amount, places);
  return (rounded.exact ? "" : "≈ ") + rounded.text + " " + unit.text();
}

Number amount_in(const units::WrittenQuantity& quantity, const units::Unit& unit) {
  return quantity.number.value * units::conversion(quantity.unit, unit);
}

std::string shown_quantity(const units::WrittenQuantity& quantity) {
  return quantity.has_unit && quantity.number.text != quantity.text ? quantity.number.text + " " + quantity.unit.text()
                                                                    : quantity.text;
}

}  // namespace fw::tasks
