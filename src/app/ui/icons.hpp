#pragma once

#include "app/ui/items.hpp"

namespace fw::app {

/// Draws an icon in the middle of a square, with lines of this width. `back` is what it stands on.
void draw_icon(figures::Canvas& canvas, Icon icon, const Rect& square, Color ink, Color back, double width);

}  // namespace fw::app
