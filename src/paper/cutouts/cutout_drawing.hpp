#pragma once

#include "paper/cutouts/cutout.hpp"
#include "paper/packet.hpp"

namespace fw::paper {

/// What stands on a net.
struct CutoutLook {
  bool has_letters = true;  ///< of the groups of congruent faces
  bool has_lengths = true;
  bool has_areas = false;  ///< the number, in place of a rule to write it on
  bool asks_areas = true;
  bool has_mates = true;  ///< the same number at two sides that meet
};

/// Which lines a net has, for the legend.
struct CutoutLines {
  bool folds_toward = false;  ///< some fold goes the other way
  bool has_tape = false;
  bool has_tabs = false;
  bool is_rolled = false;         ///< a face bends
  std::size_t circles = 0;        ///< that are glued on, by their teeth
  std::size_t taped_circles = 0;  ///< without room for teeth
};
[[nodiscard]] CutoutLines lines_on(const lessons::Problem& problem, const Cutout& cutout);

/// Draws the net with its lower left corner at `at` of the page. The lines are in parts named "cut", "fold-away",
/// "fold-toward", "tab-fold" and "text".
void draw_cutout(PageCanvas& canvas, const lessons::Problem& problem, const Cutout& cutout, Vec2 at,
                 const CutoutLook& look);

/// Bars of 100 mm and 4 in, with what to do with them. `at`: the left end.
void draw_check_ruler(PageCanvas& canvas, Vec2 at, double width);
inline constexpr double ruler_height = 14;

/// A sample of each line that occurs, with its meaning, and the caution about scissors.
void draw_cutout_legend(PageCanvas& canvas, const Rect& rect, const CutoutLines& lines);
inline constexpr double legend_height = 17;

/// The pens of a net.
[[nodiscard]] Pen cut_pen();
[[nodiscard]] Pen fold_pen();
[[nodiscard]] Pen toward_pen();

}  // namespace fw::paper
