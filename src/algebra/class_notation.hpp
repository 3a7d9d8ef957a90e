#pragma once

#include <string_view>

#include "algebra/notation.hpp"

// How a class writes its lines, which every class settles for itself.
namespace fw::algebra {

struct ClassNotation {
  enum class Parts { Fraction, Division };          ///< ½Pℓ, or P · ℓ ÷ 2
  enum class Times { Dot, Cross };                  ///< 8 · 5, or 8 × 5
  enum class Units { InAnswer, OnEveryLine };       ///< numbers alone with the unit in the answer, or 8 cm · 5 cm
  enum class BoxVolume { Edges, BaseTimesHeight };  ///< V = lwh, or V = Bh
  Parts parts = Parts::Fraction;
  Times times = Times::Dot;
  Units units = Units::InAnswer;
  BoxVolume box_volume = BoxVolume::Edges;
  friend bool operator==(const ClassNotation&, const ClassNotation&) = default;
};

/// The words of lessons and of the command line for it: "fraction", "division"; "dot", "cross"; "unit-in-answer",
/// "unit-on-every-line"; "lwh", "Bh".
[[nodiscard]] std::vector<std::string> notation_words();
/// With what the word says. Nothing for another word.
[[nodiscard]] std::optional<ClassNotation> with_word(ClassNotation style, std::string_view word);
/// The words for what is not the usual.
[[nodiscard]] std::vector<std::string> words_for(const ClassNotation& style);

/// The expression in the way of the class: "2lw + 2lh", "½ · 32 · ℓ", "16ℓ"; "P · ℓ ÷ 2" where it divides. `symbol`
/// says whether a number has its unit.
[[nodiscard]] Notation class_notation(const Expression& expression, const SymbolNotation& symbol,
                                      const ClassNotation& style);

/// A line that is written already, with the class's sign for times, and without units where these stand in the answer.
[[nodiscard]] NotationLine in_class_notation(const NotationLine& line, const ClassNotation& style);

}  // namespace fw::algebra
