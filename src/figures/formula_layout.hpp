#pragma once

#include <cstddef>
#include <memory>
#include <vector>

#include "algebra/notation.hpp"
#include "figures/canvas.hpp"
#include "figures/face_style.hpp"

namespace fw::figures {

struct FormulaBox;

/// Mathematics set for a canvas, to be asked for its size and drawn where it fits. Fractions are stacked, roots have
/// their bar, brackets grow with what they hold, canceled parts are struck through, changed parts are bold, a blank is
/// an empty box, and a group's term stands on a soft ground over a band of the group's color and hatch with its letter.
///
/// Units: those of the canvas that it was measured on. A value; cheap to copy.
/// Guarantees:
///   (1) everything is drawn inside size();
///   (2) no two texts of it overlap: their ink, from 0.79 em above the baseline to 0.24 em below;
///   (3) twice the em gives twice the size on a canvas whose texts grow evenly.
class FormulaLayout {
 public:
  struct SourcedNumber {
    Rect rect;
    std::size_t source = 0;  ///< Notation::source
  };

  FormulaLayout(const Canvas& canvas, const algebra::Notation& notation, double em);
  /// A line of work. A right side that is a sum goes on under itself where the line is wider than `width`; 0: never.
  FormulaLayout(const Canvas& canvas, const algebra::NotationLine& line, double em, double width = 0);

  [[nodiscard]] Vec2 size() const;
  /// From the top.
  [[nodiscard]] double baseline() const;
  /// From the left end to the middle of a line's sign; 0 without one.
  [[nodiscard]] double sign_middle() const { return sign_middle_; }
  /// Where the parts with a source stand, when it is drawn at `top_left`.
  [[nodiscard]] std::vector<SourcedNumber> numbers(Vec2 top_left) const;
  [[nodiscard]] std::vector<Rect> blanks(Vec2 top_left) const;
  /// Ink, ground and fills are the palette's; its sizes are not looked at.
  void draw(Canvas& canvas, Vec2 top_left, const Palette& palette) const;

 private:
  std::shared_ptr<const FormulaBox> box_;
  double sign_middle_ = 0;
};

/// Lines set down a page, their signs under each other.
struct FormulaPage {
  std::vector<Vec2> places;  ///< the top left corner of each line, from the page's
  Vec2 size{0, 0};
};
[[nodiscard]] FormulaPage set_down(const std::vector<FormulaLayout>& lines, double gap);

}  // namespace fw::figures
