#pragma once

#include <string>

#include "figures/canvas.hpp"
#include "figures/face_style.hpp"

namespace fw::figures {

/// Face number as everyone reads it: FaceId 0 is face 1.
[[nodiscard]] std::string face_number(solids::FaceId face);

/// The number in a circle, as it stands on a face: a ground-colored disc with an ink rim.
void draw_number_circle(Canvas& canvas, Vec2 center, double radius, const std::string& number, const Palette& palette);

/// The small square that stands for a face in the ledger: its color, hatch and number.
void draw_face_chip(Canvas& canvas, const Rect& rect, const FaceStyle& style, const std::string& number,
                    const Palette& palette);

/// A right-angle mark at `corner`, between the directions to `a` and to `b`.
void draw_right_angle(Canvas& canvas, Vec2 corner, Vec2 toward_a, Vec2 toward_b, double size, const Stroke& stroke);

}  // namespace fw::figures
