#pragma once

#include <functional>
#include <string>

#include "algebra/expression.hpp"

namespace fw::algebra {

/// How a leaf is written; gives the text for a symbol ("ℓ", or "9", or "9 cm").
using LeafText = std::function<std::string(const Symbol&)>;

/// A number of a formula: "½", "⅓" and the like, else its exact form, else six decimals.
[[nodiscard]] std::string formula_number(const exact::Number& number);

/// Letters, as a formula is printed: "s²", "s · ℓ ÷ 2", "½ · P · ℓ", "2lw" is written "2 · l · w".
[[nodiscard]] std::string formula_text(const Expression& expression);
[[nodiscard]] std::string formula_text(const Equation& equation);

/// As a student writes the work, with numbers put in for the letters: "6 × 9 ÷ 2", "(16 + 10) × 4 ÷ 2",
/// "√(3² + 4²)". Parentheses stand only where they are needed.
[[nodiscard]] std::string work_text(const Expression& expression, const LeafText& leaf);

}  // namespace fw::algebra
