#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "algebra/isolate.hpp"
#include "base/result.hpp"
#include "units/unit.hpp"
#include "words/message.hpp"

// What a student types for one side of an equation; private to the room.
namespace fw::reasoning {

/// A side of an equation as it was typed: "2 × 60 cm² + 252 cm²", "2B + L", "4 * (1/2) * s * l", "s^2".
struct TypedSide {
  algebra::Expression expression;  ///< numbers with a unit are numerals, in the units built on one length unit
  algebra::Numerals numerals;
  bool has_units = false;  ///< some number has one
};

/// Reads a side. `letters`: what may stand there besides numbers; "l" is read as ℓ, "s1" as s₁ where those are among
/// them. An equation is read from its last sign of equality on.
/// Errors: a sentence that says what cannot be read, and what would be right.
[[nodiscard]] Result<TypedSide, words::Message> read_side(std::string_view text,
                                                          const std::vector<algebra::Symbol>& letters,
                                                          const units::Unit& length_unit);

/// The dimension of a typed side where a number without a unit passes beside one that has a unit; nothing where unlike
/// units are added.
[[nodiscard]] std::optional<int> typed_dimension(const algebra::Expression& side);

}  // namespace fw::reasoning
