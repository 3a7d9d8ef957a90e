#pragma once

#include <optional>

#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "paper/cutouts/flat_net.hpp"
#include "paper/cutouts/scale.hpp"
#include "paper/page.hpp"
#include "words/message.hpp"

namespace fw::paper {

/// What a cut-out is to be like.
struct CutoutWish {
  double width = 0, height = 0;              ///< of the room on an upright page, in millimeters
  double lying_width = 0, lying_height = 0;  ///< the same on a page that lies
  bool only_usual_net = false;
  std::optional<PaperScale> scale = std::nullopt;  ///< that it must have; nothing: the largest that fits on one page
};

/// A net to cut out, with its tabs, as large as can be on its paper.
struct Cutout {
  nets::HingeTree tree;
  FlatNet net;  ///< turned as it lies on the page, its lower left corner at the origin
  PaperScale scale;
  Vec2 size{};                        ///< of net and tabs
  bool lies = false;                  ///< the page lies
  bool is_usual = true;               ///< the net that the screen shows first
  std::size_t columns = 1, rows = 1;  ///< of pages
};

/// No straight side of a cut-out is shorter, in millimeters.
inline constexpr double least_side = 5;
/// What two tiles share, in millimeters.
inline constexpr double tile_overlap = 10;
inline constexpr std::size_t most_tiles = 12;

/// The best net of a problem's solid, without the faces that do not count: on the fewest pages, at the largest scale,
/// with the fewest sides that have to be taped; the usual one where it is as good. Errors: a sentence, where no scale
/// has sides long enough to be cut, or it takes too many pages.
[[nodiscard]] Result<Cutout, words::Message> best_cutout(const lessons::Problem& problem, const CutoutWish& wish);

/// How many millimeters one unit of the solid's coordinates is; of a solid without a unit a centimeter.
[[nodiscard]] double mm_per_unit(const solids::Solid& solid);

}  // namespace fw::paper
