#pragma once

#include <string>
#include <vector>

#include "exact/column_work.hpp"
#include "figures/canvas.hpp"
#include "figures/face_style.hpp"

namespace fw::figures {

/// The written arithmetic of an aside, its caption above (in several lines if it is long): digits under each other,
/// points in narrow columns, carried digits small.
///
/// Units: those of the canvas that it was measured on.
/// Guarantees: (1) everything is drawn inside size(); (2) cells of one column have one middle.
class ColumnWorkFigure {
 public:
  ColumnWorkFigure(const Canvas& canvas, exact::ColumnWork work, double em);

  [[nodiscard]] Vec2 size() const { return size_; }
  void draw(Canvas& canvas, Vec2 top_left, const Palette& palette) const;

 private:
  exact::ColumnWork work_;
  double em_ = 0;
  std::vector<std::string> caption_;  ///< its lines
  std::vector<double> columns_;       ///< left ends, and the right end of the last
  std::vector<double> rows_;          ///< baselines, from the top
  Vec2 size_{0, 0};
};

}  // namespace fw::figures
