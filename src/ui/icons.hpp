#pragma once

#include "ui/items.hpp"

namespace fw::ui {

/// Draws an icon in the middle of a square, with lines of this width. `back` is what it stands on.
void draw_icon(figures::Canvas& canvas, Icon icon, const Rect& square, Color ink, Color back, double width);

}  // namespace fw::ui
