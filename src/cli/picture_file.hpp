#pragma once

#include <optional>
#include <string>

#include "base/result.hpp"
#include "render/picture.hpp"

namespace fw::cli {

struct PictureSize {
  int width = 0;
  int height = 0;
};
/// Reads "1280x720". Errors: told on standard error; each side is 64 to 8192 pixels.
[[nodiscard]] std::optional<PictureSize> picture_size(const std::string& text);

/// The bytes of a PNG file. Errors: what the encoder says.
[[nodiscard]] Result<std::string, std::string> png_bytes(const render::Picture& picture);

}  // namespace fw::cli
