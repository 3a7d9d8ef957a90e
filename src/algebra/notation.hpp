#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "algebra/expression.hpp"

namespace fw::algebra {

/// Mathematics as it is written on a page: numbers, letters, units and signs, stacked and set side by side. Made
/// from expressions; drawn, printed as plain text and written as MathML from this one tree.
struct Notation {
  enum class Kind {
    Number,    ///< text "49.5", "7 1/2" (drawn as a mixed number), "3√2"
    Letter,    ///< text "ℓ", "s₁", "π"
    Unit,      ///< text "cm", "cm²"
    Sign,      ///< text "+", "−", "×", "·", "÷", "=", "≈"
    Words,     ///< text "base area"
    Row,       ///< parts side by side
    Fraction,  ///< two parts: above, below
    Power,     ///< one part, raised to `degree`
    Root,      ///< one part under the root of `degree`
    Brackets,  ///< one part in parentheses
    Blank,     ///< a gap to be filled, as wide as its text
  };
  Kind kind = Kind::Row;
  std::string text;
  std::vector<Notation> parts;
  int degree = 2;
  std::optional<std::size_t> group;   ///< the congruence group of faces that this term stands for
  std::optional<std::size_t> source;  ///< where a number comes from: a row of the solution's table
  bool canceled = false;              ///< struck through
  bool changed = false;               ///< what this line changed in the one before
  friend bool operator==(const Notation&, const Notation&) = default;
};

/// A line of work: two sides with "=" or "≈" between them, which stand under each other down a page.
struct NotationLine {
  Notation left;
  std::string sign = "=";
  Notation right;
  friend bool operator==(const NotationLine&, const NotationLine&) = default;
};

[[nodiscard]] Notation leaf(Notation::Kind kind, std::string text);
[[nodiscard]] Notation row(std::vector<Notation> parts);
/// A power, a root or brackets round one part.
[[nodiscard]] Notation with_part(Notation::Kind kind, Notation part, int degree = 2);

/// How a symbol is written: a letter, or a number with its unit.
using SymbolNotation = std::function<Notation(const Symbol&)>;

/// The expression as a class writes it: quotients stacked, powers raised, "24ℓ" for a number times a letter, "×"
/// between numbers, "·" between letters, brackets only where they are needed.
[[nodiscard]] Notation notation(const Expression& expression, const SymbolNotation& symbol);

/// For a terminal: "24ℓ = 348", "6 cm × 9 cm ÷ 2", "√(3² + 4²)", "(16 + 10) × 4 ÷ 2"; a canceled part stands between
/// strokes, "/12/"; a blank is "____".
[[nodiscard]] std::string plain_text(const Notation& notation);
[[nodiscard]] std::string plain_text(const NotationLine& line);

/// MathML Core, an element <math> of its own. Source: W3C, MathML Core.
[[nodiscard]] std::string mathml(const NotationLine& line);

}  // namespace fw::algebra
