#include "render/gl/offscreen.hpp"

#include "render/gl/frame.hpp"

namespace fw::render::gl {

Result<Offscreen, std::string> Offscreen::make(int width, int height) {
  GLint most = 0;
  glGetIntegerv(GL_MAX_RENDERBUFFER_SIZE, &most);
  const std::string size = std::to_string(width) + " x " + std::to_string(height);
  if (width < 1 || height < 1 || width > most || height > most) {
    return failure("A picture of " + size + " pixels cannot be drawn; each side may have 1 to " + std::to_string(most) +
                   ".");
  }
  Offscreen made(width, height);
  GLint draw_before = 0, read_before = 0, renderbuffer_before = 0;
  glGetIntegerv(GL_DRAW_FRAMEBUFFER_BINDING, &draw_before);
  glGetIntegerv(GL_READ_FRAMEBUFFER_BINDING, &read_before);
  glGetIntegerv(GL_RENDERBUFFER_BINDING, &renderbuffer_before);
  glBindFramebuffer(GL_FRAMEBUFFER, made.framebuffer_.name());
  glBindRenderbuffer(GL_RENDERBUFFER, made.color_.name());
  glRenderbufferStorage(GL_RENDERBUFFER, GL_RGBA8, width, height);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, made.color_.name());
  glBindRenderbuffer(GL_RENDERBUFFER, made.depth_.name());
  glRenderbufferStorage(GL_RENDERBUFFER, GL_DEPTH_COMPONENT24, width, height);
  glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, made.depth_.name());
  const GLenum status = glCheckFramebufferStatus(GL_FRAMEBUFFER);
  glBindFramebuffer(GL_DRAW_FRAMEBUFFER, static_cast<GLuint>(draw_before));
  glBindFramebuffer(GL_READ_FRAMEBUFFER, static_cast<GLuint>(read_before));
  glBindRenderbuffer(GL_RENDERBUFFER, static_cast<GLuint>(renderbuffer_before));
  if (status != GL_FRAMEBUFFER_COMPLETE) {
    return failure("The graphics driver has no room for a picture of " + size + " pixels.");
  }
  return made;
}

void Offscreen::begin(const Color& ground) const {
  glBindFramebuffer(GL_FRAMEBUFFER, framebuffer_.name());
  begin_frame(width_, height_, ground);
}

Picture Offscreen::read_back() const {
  GLint read_before = 0;
  glGetIntegerv(GL_READ_FRAMEBUFFER_BINDING, &read_before);
  glBindFramebuffer(GL_READ_FRAMEBUFFER, framebuffer_.name());
  Picture picture = read_frame(width_, height_);
  glBindFramebuffer(GL_READ_FRAMEBUFFER, static_cast<GLuint>(read_before));
  return picture;
}

}  // namespace fw::render::gl
