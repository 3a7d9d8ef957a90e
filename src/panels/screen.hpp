#pragma once

#include "figures/canvas.hpp"
#include "state/apply.hpp"
#include "theme/theme.hpp"

namespace fw::panels {

using state::Model;
using theme::Sizes;

/// The regions of the window. Those that are hidden have no size.
struct Screen {
  figures::Rect title;    ///< title and modes
  figures::Rect news;     ///< what has to be known of files, across the window
  figures::Rect rail;     ///< the numbered problems
  bool has_rail = false;  ///< whether it has a place, be it open or not
  figures::Rect prompt;   ///< the words of the problem; where it is not shown it has its width alone
  figures::Rect bench;
  figures::Rect tools;      ///< buttons for turning and zooming, under the bench
  figures::Rect bar;        ///< the fold and its buttons
  figures::Rect side;       ///< ledger, measures, solids, quiz
  bool side_below = false;  ///< the side panel lies below the bench, wide and low
  bool tight = false;       ///< the bench beside the panel is hardly wider than high: its extras lie under it
};

/// The buttons for turning and zooming: the width and height of one.
[[nodiscard]] double tool_size(const Sizes& sizes);
[[nodiscard]] double tools_width(const Sizes& sizes);  ///< of all of them, with what lies between

/// Width by height of the window, under which the side panel goes below the bench, and under which it is tight. Texts
/// grow with the height, so that what fits hangs on the shape alone.
inline constexpr double upright_shape = 1.2;
inline constexpr double tight_shape = 1.5;  // 4 : 3 and 5 : 4

/// Heights of texts that are wrapped.
struct TextHeights {
  double prompt = 0;
  double news = 0;
};
[[nodiscard]] Screen screen_for(const figures::Rect& window, const Model& model, const Sizes& sizes,
                                const TextHeights& heights);

}  // namespace fw::panels
