#pragma once

#include <optional>
#include <string>
#include <vector>

#include "figures/canvas.hpp"
#include "solids/solid.hpp"

namespace fw::figures {

/// How a solid is drawn with its lengths, in the canvas's unit.
struct SolidFigureLook {
  double edge = 0.35;        ///< width of an edge in sight
  double hidden = 0.26;      ///< of a hidden edge, a height and a slant height
  double hidden_dash = 2.5;  ///< of a hidden edge
  double height_dash = 1.5;  ///< of a height and a slant height
  double leader = 0.21;      ///< width of a leader and a right-angle mark
  double right_angle = 2.5;  ///< side of a right-angle mark
  double text_size = 4.2;    ///< em of the labels
  Color ink{0, 0, 0, 1};
};

/// Draws a solid with its lengths as a textbook does, fitted into `rect`: parallel edges parallel, hidden edges and
/// hidden parts of edges dashed, each label beside its own line. Of several views it takes the first of those that show
/// most: no face seen as a sliver, no two corners on one spot, no hidden edge behind one in sight.
///
/// Shape: one label a mark of the solid, in order; a height without a label is not drawn.
void draw_solid_figure(Canvas& canvas, const solids::Solid& solid,
                       const std::vector<std::optional<std::string>>& labels, const Rect& rect,
                       const SolidFigureLook& look);

}  // namespace fw::figures
