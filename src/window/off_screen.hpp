#pragma once

#include <string>

#include "base/result.hpp"
#include "render/picture.hpp"
#include "state/apply.hpp"

namespace fw::window {

enum class PictureOf {
  Bench,   ///< the solid or net with its labels, alone
  Window,  ///< the whole window
};

/// Draws a model without window or display. Shape: width x height pixels.
/// Errors: a sentence when there is no OpenGL 3.3, or the size is beyond what it can draw.
[[nodiscard]] Result<render::Picture, std::string> off_screen_picture(const state::Model& model, PictureOf what,
                                                                      int width, int height);

}  // namespace fw::window
