#pragma once

#include <vector>

#include "base/color.hpp"
#include "figures/canvas.hpp"
#include "figures/label_layout.hpp"

namespace fw::figures {

/// The strokes of a hatch inside a polygon: lines, and for dots very short lines.
///
/// Shape:    any simple polygon. Units: the polygon's; y down, so that a rising line goes up to the right as seen.
/// Requires: spacing > 0.
/// Guarantees: (1) every stroke lies inside the polygon or on its border.
[[nodiscard]] std::vector<Segment> hatch_strokes(const std::vector<Vec2>& polygon, Hatch hatch, double spacing);

/// Draws a hatch on a polygon; dots as discs.
void draw_hatch(Canvas& canvas, const std::vector<Vec2>& polygon, Hatch hatch, double spacing, const Stroke& stroke);

}  // namespace fw::figures
