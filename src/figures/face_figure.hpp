#pragma once

#include <string>

#include "figures/canvas.hpp"
#include "figures/face_marks.hpp"
#include "figures/face_style.hpp"
#include "solids/solid.hpp"

namespace fw::figures {

/// Draws one face lifted out of the solid: flat, as it lies there, to scale, filled with its group's color
/// and hatch, its two lengths marked and labelled (a height dashed with its right-angle mark), its number in a circle.
/// A length whose label stands on another edge is written with an equals sign before it: "= 6 cm".
void draw_face(Canvas& canvas, const solids::Solid& solid, solids::FaceId id, const Rect& rect, const Palette& wished);

/// The text beside a length of a face: the mark's label as the lesson writes it, or the worked-out value with its unit.
[[nodiscard]] std::string face_length_label(const solids::Solid& solid, const solids::FaceLength& length);

}  // namespace fw::figures
