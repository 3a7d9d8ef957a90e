#include "figures/face_style.hpp"

#include <algorithm>
#include <array>

namespace fw::figures {
namespace {

constexpr std::array<std::uint32_t, 6> colors{0x0072B2, 0xE69F00, 0x009E73, 0xF0E442, 0xCC79A7, 0xD55E00};
constexpr std::array<Hatch, 6> hatches{Hatch::None, Hatch::Rising,  Hatch::Level,
                                       Hatch::Dots, Hatch::Falling, Hatch::Crossed};
constexpr double least_contrast = 4.5;  // of large text: WCAG 2.2, success criterion 1.4.6
constexpr Color white = Color::hex(0xFFFFFF);
constexpr Color black = Color::hex(0x000000);
constexpr Color dark_ink = Color::hex(0x1A1D26);

bool is_dark(const Color& color) { return contrast(color, white) > contrast(color, black); }

/// The color with as much of a dark ground mixed in as light edges need to stand out on it.
Color toned_down(const Color& color, const Palette& palette) {
  Color toned = color;
  for (float share = 1.0F; share > 0.2F; share -= 0.02F) {
    toned = over(color.with_opacity(share), palette.ground);
    if (contrast(palette.ink, toned) >= least_contrast) break;
  }
  return toned;
}

}  // namespace

Color group_color(solids::GroupId group) { return Color::hex(colors[group.index() % colors.size()]); }

Hatch group_hatch(solids::GroupId group) {
  const std::size_t round = group.index() / colors.size();
  return hatches[(group.index() + round) % hatches.size()];
}

std::string group_letter(solids::GroupId group) {
  std::string letters;
  for (std::size_t n = group.index() + 1; n > 0; n = (n - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('A' + static_cast<int>((n - 1) % 26)));
  }
  return letters;
}

FaceStyle face_style(solids::GroupId group, const Palette& palette) {
  FaceStyle style;
  style.hatch = group_hatch(group);
  style.letter = group_letter(group);
  if (palette.fills == Fills::HatchOnly) {
    style.fill = palette.ground;
    style.on_fill = palette.ink;
    style.hatch_ink = palette.ink;
    return style;
  }
  if (is_dark(palette.ground)) {
    style.fill = toned_down(group_color(group), palette);
    style.on_fill = palette.ink;
  } else {
    style.fill = group_color(group);
    style.on_fill = contrast(dark_ink, style.fill) >= contrast(white, style.fill) ? dark_ink : white;
    if (contrast(style.on_fill, style.fill) < least_contrast) style.on_fill = black;
  }
  style.hatch_ink = over(style.on_fill.with_opacity(0.6F), style.fill);
  return style;
}

}  // namespace fw::figures
