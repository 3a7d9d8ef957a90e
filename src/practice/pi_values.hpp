#pragma once

#include <optional>

#include "practice/figure.hpp"
#include "practice/read_answer.hpp"

// Classes work with 3.14, with 22/7 and with the key of a calculator.
namespace fw::practice {

enum class PiValue { Decimal, Fraction, Between };

/// The other value of π with which a typed number is the answer; Between: it lies between those that the usual values
/// give, within half a unit of the place that is asked. Nothing where the answer doesn't rest on π, or the number is
/// none of them.
[[nodiscard]] std::optional<PiValue> other_pi(const exact::Written& typed, const Question& question);
/// "Right, with 3.14 for π."
[[nodiscard]] words::Message right_with(PiValue value);

/// Whether the number is the value as it comes out with one of the usual values of π.
[[nodiscard]] bool stands_for_with_some_pi(const exact::Written& number, double value, const Question& question);

}  // namespace fw::practice
