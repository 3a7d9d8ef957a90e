#pragma once

#include "practice/diagnosis.hpp"
#include "practice/read_answer.hpp"

// Mistakes that depend on how an answer is written: its unit, its digits. Private to the room.
namespace fw::practice {

/// Whether number and unit are the answer; `from_roots` are further numbers that count as right.
[[nodiscard]] bool is_right(const TypedAnswer& typed, const Question& question,
                            const std::vector<exact::Number>& from_roots);
/// Whether the number alone is.
[[nodiscard]] bool has_right_number(const TypedAnswer& typed, const Question& question,
                                    const std::vector<exact::Number>& from_roots);

/// What is wrong with the unit of a right number: G1, G2. Requires: the question has a unit.
[[nodiscard]] Cause wrong_unit(const TypedAnswer& typed, const Question& question);

/// What is left to do with a right answer in another unit than the prompt asks for in words, as in "How many cubic
/// centimeters ...?"; nothing where it asks for none, or for this one.
[[nodiscard]] std::optional<Cause> unit_still_asked(const TypedAnswer& typed, const Question& question,
                                                    const std::string& prompt);

/// Conversions by a wrong factor (G3 to G8). `number`: what was typed, as shown to the student.
[[nodiscard]] std::vector<Cause> wrong_conversions(const TypedAnswer& typed, const Figure& figure);

/// A converted answer of which too few digits are left.
[[nodiscard]] Cause rounded_too_far(const TypedAnswer& typed);

/// Place value, exchanged digits, a product from the next row of the times table, rounding on the way, a
/// ten that was not carried, a part that was missed or counted twice (M1 to M6).
[[nodiscard]] std::vector<Cause> slips(const TypedAnswer& typed, const Figure& figure);

}  // namespace fw::practice
