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

}  // namespace fw::render::gl
