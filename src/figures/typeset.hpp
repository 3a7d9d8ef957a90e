#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "figures/canvas.hpp"

namespace fw::figures {

/// A run of a text that is drawn in one way.
struct TextPiece {
  std::string text;     ///< powers as plain digits: "2" for ²
  bool raised = false;  ///< a power, drawn large and above the line
  friend bool operator==(const TextPiece&, const TextPiece&) = default;
};
/// The text cut at its powers: "90 cm²" gives "90 cm" and a raised "2".
[[nodiscard]] std::vector<TextPiece> text_pieces(std::string_view text);

/// A power is drawn at this share of the text's size (a type's own ² is smaller), its top a little above
/// the capitals.
inline constexpr double power_size = 0.72;
inline constexpr double power_rise = 0.36;
/// How far letters reach above and below the baseline, in ems of the type that we embed.
inline constexpr double ink_above = 0.79;
inline constexpr double ink_below = 0.24;

/// The size of a text as typeset() draws it.
[[nodiscard]] Vec2 typeset_size(const Canvas& canvas, std::string_view text, const TextStyle& style);
/// One line of text with its powers drawn large.
void typeset(Canvas& canvas, Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style);

/// The lines of a text that is broken at spaces to fit `width`; a line feed breaks as well; a number and its unit, and
/// the words beside a sign of equality, stay together where a line has room for them. A word wider than `width` stands
/// alone and sticks out.
[[nodiscard]] std::vector<std::string> wrapped(const Canvas& canvas, std::string_view text, const TextStyle& style,
                                               double width);

}  // namespace fw::figures
