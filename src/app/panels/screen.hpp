#pragma once

#include "app/apply.hpp"
#include "app/ui/theme.hpp"
#include "figures/canvas.hpp"

namespace fw::app {

/// The regions of the window. Those that are hidden have no size.
struct Screen {
  figures::Rect title;  ///< title, prompt and modes
  figures::Rect rail;   ///< the numbered problems
  figures::Rect bench;
  figures::Rect tools;      ///< buttons for turning and zooming, under the bench
  figures::Rect card;       ///< the face that is lifted out, beside or under the bench
  figures::Rect bar;        ///< the fold and its buttons
  figures::Rect side;       ///< ledger, measures, solids, quiz
  bool side_below = false;  ///< the side panel lies below the bench, wide and low
};

/// The buttons for turning and zooming: how many, and their width and height.
inline constexpr int tool_count = 7;
[[nodiscard]] double tool_size(const Sizes& sizes);

/// Under this width the side panel goes below the bench.
inline constexpr double narrow_width_px = 1200;

[[nodiscard]] Screen screen_for(const figures::Rect& window, const Model& model, const Sizes& sizes,
                                double prompt_height);

}  // namespace fw::app
