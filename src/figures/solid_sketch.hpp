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

/// The edges of a convex or concave solid as the sketch sees them: an edge is hidden when both its faces look away.
struct SketchEdge {
  Vec2 from, to;
  bool hidden = false;
};
[[nodiscard]] std::vector<SketchEdge> sketch_edges(const geometry::Polyhedron& polyhedron);

}  // namespace fw::figures
