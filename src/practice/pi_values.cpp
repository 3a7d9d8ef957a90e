#include "practice/pi_values.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fw::practice {
namespace {

using words::message;

// As parts of π.
constexpr double decimal_share = 3.14 / 3.14159265358979323846;
constexpr double fraction_share = 22.0 / 7 / 3.14159265358979323846;
constexpr double least_share = 1e-9;  // of a value: nearer numbers are equal

bool rests_on_pi(const Question& question) {
  return question.has_circle && question.truth && question.unit && !question.truth->is_rational();
}

// What the answer is multiplied by under another value of π. An area of given radii has π once; a length that is worked
// back has it below, or under a root.
std::vector<double> shares(const Question& question, double share) {
  const bool is_plain = (*question.truth / exact::Number::pi()).is_rational();
  return is_plain ? std::vector{share} : std::vector{share, 1 / share, std::sqrt(share), std::sqrt(1 / share)};
}

double half_unit(int places) { return 0.5 * std::pow(10.0, -places); }

// Whether it is written to as many places as the problem asks for.
bool has_places(const exact::Written& typed, const Question& question) {
  return !typed.is_fraction && (question.round_to ? typed.places >= *question.round_to : typed.places > 0);
}

bool comes_with(const exact::Written& typed, const Question& question, double share) {
  const std::vector<double> all = shares(question, share);
  return std::any_of(all.begin(), all.end(), [&](double one) {
    const double value = question.truth->to_double() * one;
    const double half = has_places(typed, question) ? half_unit(question.round_to.value_or(typed.places)) : 0;
    return std::abs(typed.value.to_double() - value) <= half + least_share * value;
  });
}

bool lies_between(const exact::Written& typed, const Question& question) {
  if (!has_places(typed, question)) {
    return false;
  }
  std::vector<double> all = shares(question, decimal_share);
  const std::vector<double> others = shares(question, fraction_share);
  all.insert(all.end(), others.begin(), others.end());
  const auto [least, greatest] = std::minmax_element(all.begin(), all.end());
  const double truth = question.truth->to_double();
  const double half = half_unit(question.round_to.value_or(typed.places)) + least_share * truth;
  const double number = typed.value.to_double();
  return number >= truth * *least - half && number <= truth * *greatest + half;
}

}  // namespace

std::optional<PiValue> other_pi(const exact::Written& typed, const Question& question) {
  if (!rests_on_pi(question) || !typed.value.is_rational()) {
    return std::nullopt;
  }
  return comes_with(typed, question, decimal_share)    ? std::optional(PiValue::Decimal)
         : comes_with(typed, question, fraction_share) ? std::optional(PiValue::Fraction)
         : lies_between(typed, question)               ? std::optional(PiValue::Between)
                                                       : std::nullopt;
}

words::Message right_with(PiValue value) {
  return value == PiValue::Decimal    ? message("Right, with 3.14 for π.")
         : value == PiValue::Fraction ? message("Right, with 22/7 for π.")
                                      : message("Right. The last digits depend on the value of π you use.");
}

bool stands_for_with_some_pi(const exact::Written& number, double value, const Question& question) {
  const bool is_worked_out = rests_on_pi(question) && number.value.is_rational();
  return stands_for(number, value) ||
         (is_worked_out && (stands_for(number, value * decimal_share) || stands_for(number, value * fraction_share)));
}

}  // namespace fw::practice
