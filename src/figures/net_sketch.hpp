#pragma once

#include "figures/canvas.hpp"
#include "figures/face_style.hpp"
#include "figures/solid_sketch.hpp"
#include "nets/layout.hpp"
#include "solids/solid.hpp"

namespace fw::figures {

/// How a net lies on the paper: turned, and flipped first if wished.
struct NetTurn {
  double angle_rad = 0;  ///< counterclockwise as seen
  bool flipped = false;
};

/// Draws a flat net fitted into `rect`: cut edges as lines, hinges thinner and dashed.
/// `Groups` paints each face with its group's color and hatch.
void draw_net_sketch(Canvas& canvas, const solids::Solid& solid, const nets::HingeTree& tree, const Rect& rect,
                     const Palette& palette, SketchFill fill = SketchFill::Outline, NetTurn turn = {});

/// The net's polygons on the canvas (y down), fitted into `rect`. Shape: [face][corner].
[[nodiscard]] std::vector<std::vector<Vec2>> fitted_net(const std::vector<geometry::Polygon>& faces, const Rect& rect,
                                                        NetTurn turn = {});

/// Scales and shifts points given y up into `rect`, y down, keeping their shape. Shape: the same lists.
[[nodiscard]] std::vector<std::vector<Vec2>> fitted(const std::vector<std::vector<Vec2>>& shapes, const Rect& rect);

}  // namespace fw::figures
