#pragma once

#include <string>
#include <variant>
#include <vector>

#include "algebra/notation.hpp"
#include "figures/canvas.hpp"
#include "figures/formula_layout.hpp"

// The boxes that a formula is set from. Only sources of this room include this header.
namespace fw::figures {

/// Where a part stands, measured from the left end of its box's baseline, y down.
struct FormulaText {
  Vec2 at;  ///< on the baseline
  std::string text;
  double em = 0;
  bool bold = false;
};
struct FormulaStroke {
  std::vector<Vec2> points;
  double width = 0;
};
struct FormulaArc {
  Vec2 center;
  double radius = 0, from_rad = 0, to_rad = 0, width = 0;
};
/// What marks a group's term: a soft ground behind it, a band in the group's color and hatch below.
struct FormulaBand {
  Rect behind;
  Rect band;
  std::size_t group = 0;
};
struct FormulaGap {
  Rect rect;
  double width = 0;  ///< of its outline
};
using FormulaItem = std::variant<FormulaText, FormulaStroke, FormulaArc, FormulaBand, FormulaGap>;

/// A part of a formula, set: everything it draws lies in [0, width] × [-above, below].
struct FormulaBox {
  double width = 0, above = 0, below = 0;
  std::vector<FormulaItem> items;
  std::vector<FormulaLayout::SourcedNumber> numbers;
  std::vector<Rect> blanks;

  [[nodiscard]] Rect rect() const { return {0, -above, width, above + below}; }
  /// Sets `other` into this box at `at`; the box grows to hold it.
  void put(const FormulaBox& other, Vec2 at);
};

/// Sets a notation at an em of `em`.
[[nodiscard]] FormulaBox formula_box(const Canvas& canvas, const algebra::Notation& notation, double em);
/// A sign between two sides, or in a row.
[[nodiscard]] FormulaBox text_box_of(const Canvas& canvas, std::string_view text, double em, bool bold);

}  // namespace fw::figures
