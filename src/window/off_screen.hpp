#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "render/picture.hpp"
#include "state/apply.hpp"

namespace fw::window {

enum class PictureOf {
  Bench,   ///< the solid or net with its labels, alone
  Window,  ///< the whole window
};

/// What becomes of a picture, told by its place among all. Returns a sentence where it could not be kept.
using TakePicture = std::function<std::optional<std::string>(std::size_t, const render::Picture&)>;

/// Draws each model without window or display and hands it over. Shape of a picture: width x height pixels.
/// Returns a sentence when there is no OpenGL 3.3, the size is beyond what it can draw, or `take` gave one.
[[nodiscard]] std::optional<std::string> off_screen_pictures(const std::vector<state::Model>& models, PictureOf what,
                                                             int width, int height, const TakePicture& take);

}  // namespace fw::window
