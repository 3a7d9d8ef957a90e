#include "render/gl/frame.hpp"

#include <algorithm>
#include <cstddef>

namespace fw::render::gl {

void begin_frame(int width_px, int height_px, const Color& ground) {
  glViewport(0, 0, width_px, height_px);
  glDisable(GL_SCISSOR_TEST);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glDepthMask(GL_TRUE);
  glClearColor(ground.r * ground.a, ground.g * ground.a, ground.b * ground.a, ground.a);
  glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
}

Picture read_frame(int width_px, int height_px) {
  const auto row_size = 4 * static_cast<std::size_t>(std::max(width_px, 0));
  const auto rows = static_cast<std::size_t>(std::max(height_px, 0));
  Picture picture{width_px, height_px, std::vector<std::uint8_t>(row_size * rows)};
  if (picture.rgba.empty()) return picture;
  glReadPixels(0, 0, width_px, height_px, GL_RGBA, GL_UNSIGNED_BYTE, picture.rgba.data());
  // OpenGL gives the lowest row first.
  for (std::size_t top = 0, bottom = rows - 1; top < bottom; ++top, --bottom) {
    const auto row = [&](std::size_t y) { return picture.rgba.begin() + static_cast<std::ptrdiff_t>(y * row_size); };
    std::swap_ranges(row(top), row(top + 1), row(bottom));
  }
  return picture;
}

}  // namespace fw::render::gl
