#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace fw::render {

/// A raster picture. Shape: rows from the top down, 4 bytes a pixel: red, green, blue, opacity.
/// The colors are premultiplied by the opacity; over an opaque ground that makes no difference.
struct Picture {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgba;

  /// Requires: 0 <= x < width, 0 <= y < height; y counts from the top.
  [[nodiscard]] std::array<std::uint8_t, 4> at(int x, int y) const {
    const auto start =
        4 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x));
    return {rgba[start], rgba[start + 1], rgba[start + 2], rgba[start + 3]};
  }
  friend bool operator==(const Picture&, const Picture&) = default;
};

}  // namespace fw::render
