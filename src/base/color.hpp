#pragma once

#include <cstdint>

namespace fw {

/// A color of the sRGB space; channels and opacity from 0 to 1.
struct Color {
  float r = 0, g = 0, b = 0, a = 1;
  /// From 0xRRGGBB.
  [[nodiscard]] static constexpr Color hex(std::uint32_t rgb, float opacity = 1.0F) {
    const auto channel = [rgb](unsigned shift) { return static_cast<float>((rgb >> shift) & 0xFFU) / 255.0F; };
    return {channel(16), channel(8), channel(0), opacity};
  }
  [[nodiscard]] constexpr Color with_opacity(float opacity) const { return {r, g, b, opacity}; }
  friend bool operator==(const Color&, const Color&) = default;
};

/// (L1 + 0.05) / (L2 + 0.05), from 1 to 21; opacity is not looked at. Source: WCAG 2.2, contrast ratio.
[[nodiscard]] double contrast(const Color& a, const Color& b);
/// `top`, at its opacity, over an opaque `below`.
[[nodiscard]] Color over(const Color& top, const Color& below);

/// How a surface is filled beside its color, so that color never stands alone.
enum class Hatch : std::uint8_t { None, Rising, Level, Dots, Falling, Crossed };

}  // namespace fw
