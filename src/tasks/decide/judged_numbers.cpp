#include "tasks/decide/judged_numbers.hpp"

#include "practice/choice_parts.hpp"
#include "reasoning/supply_steps.hpp"

namespace fw::tasks {

using exact::Number;

words::Message judged_amount(const Number& amount, const units::Unit& unit, int places) {
  return practice::amount_shown(reasoning::shown_apart(amount, places), unit);
}

Number amount_in(const units::WrittenQuantity& quantity, const units::Unit& unit) {
  return quantity.number.value * units::conversion(quantity.unit, unit);
}

}  // namespace fw::tasks
