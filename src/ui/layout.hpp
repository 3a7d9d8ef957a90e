#pragma once

#include "figures/canvas.hpp"

namespace fw::ui {

/// Cuts a rectangle into parts, from the top.
class Column {
 public:
  explicit Column(const figures::Rect& rect, double gap = 0) : rest_(rect), gap_(gap) {}
  /// The next `height` pixels, and a gap after them.
  figures::Rect take(double height) {
    const figures::Rect part{rest_.x, rest_.y, rest_.w, height};
    skip(height + gap_);
    return part;
  }
  /// The same from the bottom.
  figures::Rect take_bottom(double height) {
    const figures::Rect part{rest_.x, rest_.bottom() - height, rest_.w, height};
    rest_.h -= height + gap_;
    return part;
  }
  void skip(double height) {
    rest_.y += height;
    rest_.h -= height;
  }
  [[nodiscard]] const figures::Rect& rest() const { return rest_; }

 private:
  figures::Rect rest_;
  double gap_;
};

/// Cuts a rectangle into parts, from the left.
class Row {
 public:
  explicit Row(const figures::Rect& rect, double gap = 0) : rest_(rect), gap_(gap) {}
  figures::Rect take(double width) {
    const figures::Rect part{rest_.x, rest_.y, width, rest_.h};
    skip(width + gap_);
    return part;
  }
  figures::Rect take_right(double width) {
    const figures::Rect part{rest_.right() - width, rest_.y, width, rest_.h};
    rest_.w -= width + gap_;
    return part;
  }
  void skip(double width) {
    rest_.x += width;
    rest_.w -= width;
  }
  [[nodiscard]] const figures::Rect& rest() const { return rest_; }

 private:
  figures::Rect rest_;
  double gap_;
};

}  // namespace fw::ui
