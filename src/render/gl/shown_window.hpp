#pragma once

#include "render/picture.hpp"

namespace fw::render::gl {

/// What a window shows, after its buffers were swapped; a browser has no such thing.
/// Requires: Dialect::Core33; the window's framebuffer is bound.
[[nodiscard]] Picture read_shown_window(int width_px, int height_px);

}  // namespace fw::render::gl
