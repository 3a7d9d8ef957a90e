#include "render/gl/objects.hpp"

namespace fw::render::gl {

void make_buffer(GLuint* name) { glGenBuffers(1, name); }
void remove_buffer(const GLuint* name) { glDeleteBuffers(1, name); }
void make_vertex_array(GLuint* name) { glGenVertexArrays(1, name); }
void remove_vertex_array(const GLuint* name) { glDeleteVertexArrays(1, name); }
void make_texture(GLuint* name) { glGenTextures(1, name); }
void remove_texture(const GLuint* name) { glDeleteTextures(1, name); }
void make_framebuffer(GLuint* name) { glGenFramebuffers(1, name); }
void remove_framebuffer(const GLuint* name) { glDeleteFramebuffers(1, name); }
void make_renderbuffer(GLuint* name) { glGenRenderbuffers(1, name); }
void remove_renderbuffer(const GLuint* name) { glDeleteRenderbuffers(1, name); }

void describe(const Attribute& attribute, std::size_t vertex_size) {
  glEnableVertexAttribArray(attribute.index);
  const GLboolean is_share = attribute.type == GL_UNSIGNED_BYTE ? GL_TRUE : GL_FALSE;
  // NOLINTNEXTLINE(performance-no-int-to-ptr): OpenGL takes the offset as a pointer
  const void* offset = reinterpret_cast<const void*>(attribute.offset);
  glVertexAttribPointer(attribute.index, attribute.count, attribute.type, is_share, static_cast<GLsizei>(vertex_size),
                        offset);
}

void fill(GLenum target, const Buffer& buffer, const void* data, std::size_t bytes) {
  glBindBuffer(target, buffer.name());
  glBufferData(target, static_cast<GLsizeiptr>(bytes), data, GL_STREAM_DRAW);
}

}  // namespace fw::render::gl
