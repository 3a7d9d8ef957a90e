#pragma once

#include <cstddef>
#include <utility>

#include "render/gl/loader.hpp"

namespace fw::render::gl {

/// Owns one OpenGL object; gone when this goes. Requires: the context that made it is current at both ends.
template <void (*Make)(GLuint*), void (*Remove)(const GLuint*)>
class Owned {
 public:
  Owned() { Make(&name_); }
  Owned(const Owned&) = delete;
  Owned& operator=(const Owned&) = delete;
  Owned(Owned&& other) noexcept : name_(std::exchange(other.name_, 0)) {}
  Owned& operator=(Owned&& other) noexcept {
    std::swap(name_, other.name_);
    return *this;
  }
  ~Owned() {
    if (name_ != 0) Remove(&name_);
  }
  [[nodiscard]] GLuint name() const { return name_; }
  /// After the context was lost, and its objects with it: there is nothing left to remove.
  void forget() { name_ = 0; }

 private:
  GLuint name_ = 0;
};

// The loader's functions are variables, so plain functions stand before them.
void make_buffer(GLuint* name);
void remove_buffer(const GLuint* name);
void make_vertex_array(GLuint* name);
void remove_vertex_array(const GLuint* name);
void make_texture(GLuint* name);
void remove_texture(const GLuint* name);
void make_framebuffer(GLuint* name);
void remove_framebuffer(const GLuint* name);
void make_renderbuffer(GLuint* name);
void remove_renderbuffer(const GLuint* name);

using Buffer = Owned<make_buffer, remove_buffer>;
using VertexArray = Owned<make_vertex_array, remove_vertex_array>;
using Texture = Owned<make_texture, remove_texture>;
using Framebuffer = Owned<make_framebuffer, remove_framebuffer>;
using Renderbuffer = Owned<make_renderbuffer, remove_renderbuffer>;

/// One attribute of a vertex: where in it, how many numbers, and of which type. Bytes stand for 0 to 1.
struct Attribute {
  GLuint index = 0;
  GLint count = 0;
  std::size_t offset = 0;
  GLenum type = GL_FLOAT;
};
/// Describes an attribute of the vertices in the buffer that is bound, for the vertex array that is bound.
void describe(const Attribute& attribute, std::size_t vertex_size);

/// Puts numbers into a buffer that is filled anew in each frame.
void fill(GLenum target, const Buffer& buffer, const void* data, std::size_t bytes);

}  // namespace fw::render::gl
