#include "render/gl/saved_state.hpp"

namespace fw::render::gl {
namespace {

GLenum as_enum(GLint value) { return static_cast<GLenum>(value); }

}  // namespace

SavedState::SavedState() {
  for (std::size_t i = 0; i < switches.size(); ++i) is_on_[i] = glIsEnabled(switches[i]);
  glGetIntegerv(GL_VIEWPORT, viewport_.data());
  glGetIntegerv(GL_SCISSOR_BOX, scissor_.data());
  glGetBooleanv(GL_COLOR_WRITEMASK, color_mask_.data());
  glGetBooleanv(GL_DEPTH_WRITEMASK, &depth_mask_);
  glGetIntegerv(GL_DEPTH_FUNC, &depth_function_);
  glGetIntegerv(GL_BLEND_SRC_RGB, &blend_factors_[0]);
  glGetIntegerv(GL_BLEND_DST_RGB, &blend_factors_[1]);
  glGetIntegerv(GL_BLEND_SRC_ALPHA, &blend_factors_[2]);
  glGetIntegerv(GL_BLEND_DST_ALPHA, &blend_factors_[3]);
  glGetIntegerv(GL_BLEND_EQUATION_RGB, &blend_equations_[0]);
  glGetIntegerv(GL_BLEND_EQUATION_ALPHA, &blend_equations_[1]);
  glGetFloatv(GL_POLYGON_OFFSET_FACTOR, &offset_factor_);
  glGetFloatv(GL_POLYGON_OFFSET_UNITS, &offset_units_);
  glGetIntegerv(GL_CURRENT_PROGRAM, &program_);
  glGetIntegerv(GL_VERTEX_ARRAY_BINDING, &vertex_array_);
  glGetIntegerv(GL_ARRAY_BUFFER_BINDING, &array_buffer_);
}

SavedState::~SavedState() {
  for (std::size_t i = 0; i < switches.size(); ++i) {
    if (is_on_[i] == GL_TRUE) {
      glEnable(switches[i]);
    } else {
      glDisable(switches[i]);
    }
  }
  glViewport(viewport_[0], viewport_[1], viewport_[2], viewport_[3]);
  glScissor(scissor_[0], scissor_[1], scissor_[2], scissor_[3]);
  glColorMask(color_mask_[0], color_mask_[1], color_mask_[2], color_mask_[3]);
  glDepthMask(depth_mask_);
  glDepthFunc(as_enum(depth_function_));
  glBlendFuncSeparate(as_enum(blend_factors_[0]), as_enum(blend_factors_[1]), as_enum(blend_factors_[2]),
                      as_enum(blend_factors_[3]));
  glBlendEquationSeparate(as_enum(blend_equations_[0]), as_enum(blend_equations_[1]));
  glPolygonOffset(offset_factor_, offset_units_);
  glUseProgram(static_cast<GLuint>(program_));
  glBindVertexArray(static_cast<GLuint>(vertex_array_));
  glBindBuffer(GL_ARRAY_BUFFER, static_cast<GLuint>(array_buffer_));
}

}  // namespace fw::render::gl
