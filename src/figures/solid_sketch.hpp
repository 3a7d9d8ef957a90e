#pragma once

#include "figures/canvas.hpp"
#include "figures/face_style.hpp"
#include "solids/solid.hpp"

namespace fw::figures {

/// Draws a small textbook picture of a solid, fitted into `rect`: seen from in front, above and a little to the right,
/// parallel edges parallel, hidden edges dashed.
/// `filled` paints the faces that are seen in their groups' colors.
enum class SketchFill { Outline, Groups };
void draw_solid_sketch(Canvas& canvas, const solids::Solid& solid, const Rect& rect, const Palette& palette,
                       SketchFill fill = SketchFill::Outline);

}  // namespace fw::figures
