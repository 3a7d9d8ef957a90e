#pragma once

#include <array>
#include <cstddef>

#include "render/gl/loader.hpp"

namespace fw::render::gl {

/// Remembers the state of OpenGL that drawing the bench changes, and puts it back when it goes.
class SavedState {
 public:
  SavedState();
  SavedState(const SavedState&) = delete;
  SavedState& operator=(const SavedState&) = delete;
  ~SavedState();

  /// The switches that are saved.
  static constexpr std::array<GLenum, 6> switches{GL_SCISSOR_TEST, GL_DEPTH_TEST,   GL_BLEND,
                                                  GL_CULL_FACE,    GL_STENCIL_TEST, GL_POLYGON_OFFSET_FILL};

 private:
  std::array<GLboolean, switches.size()> is_on_{};
  std::array<GLint, 4> viewport_{}, scissor_{};
  std::array<GLboolean, 4> color_mask_{};
  GLboolean depth_mask_ = GL_TRUE;
  GLint depth_function_ = 0;
  std::array<GLint, 4> blend_factors_{};  ///< source and target of the colors, then of the opacity
  std::array<GLint, 2> blend_equations_{};
  GLfloat offset_factor_ = 0, offset_units_ = 0;
  GLint program_ = 0, vertex_array_ = 0, array_buffer_ = 0;
};

}  // namespace fw::render::gl
