#pragma once

#include <optional>
#include <string>

#include "render/picture.hpp"

namespace fw::cli {

struct PictureSize {
  int width = 0;
  int height = 0;
};
/// Reads "1280x720". Errors: told on standard error; each side is 64 to 8192 pixels.
[[nodiscard]] std::optional<PictureSize> picture_size(const std::string& text);

/// Writes a PNG file. Returns what went wrong, empty when it is written.
[[nodiscard]] std::string write_png(const render::Picture& picture, const std::string& path);

}  // namespace fw::cli
