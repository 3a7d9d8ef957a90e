#include "render/gl/shown_window.hpp"

#include "render/gl/frame.hpp"
#include "render/gl/loader.hpp"

namespace fw::render::gl {

Picture read_shown_window(int width_px, int height_px) {
  GLint before = 0;
  glGetIntegerv(GL_READ_BUFFER, &before);
  glReadBuffer(GL_FRONT);
  Picture picture = read_frame(width_px, height_px);
  glReadBuffer(static_cast<GLenum>(before));
  return picture;
}

}  // namespace fw::render::gl
