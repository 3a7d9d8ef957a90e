#pragma once

#include "base/color.hpp"
#include "render/gl/loader.hpp"
#include "render/picture.hpp"

namespace fw::render::gl {

/// Starts a frame of the bound framebuffer: the viewport is all of it, and it is cleared, depth included.
void begin_frame(int width_px, int height_px, const Color& ground);

/// What the bound framebuffer (of reading) holds, from its lower left corner on; of a window, before its buffers
/// are swapped.
[[nodiscard]] Picture read_frame(int width_px, int height_px);

}  // namespace fw::render::gl
