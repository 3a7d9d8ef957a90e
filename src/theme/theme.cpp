#include "theme/theme.hpp"

#include <algorithm>
#include <cmath>

namespace fw::theme {
namespace {

Theme paper() {
  Theme t;
  t.ground = Color::hex(0xFBF9F4);
  t.panel = Color::hex(0xFFFFFF);
  t.ink = Color::hex(0x1A1D26);
  t.quiet_ink = Color::hex(0x454A57);
  t.primary = Color::hex(0x1A1D26);
  t.on_primary = Color::hex(0xFBF9F4);
  t.hover = Color::hex(0xECE7DB);
  t.selection = Color::hex(0xC5DAEC);
  t.on_selection = Color::hex(0x1A1D26);
  t.focus = Color::hex(0x6A1B9A);
  t.good = Color::hex(0x0A5236);
  t.bad = Color::hex(0x8E1B12);
  t.scrim = Color::hex(0x1A1D26, 0.45F);
  return t;
}

Theme slate() {
  Theme t;
  t.ground = Color::hex(0x14171F);
  t.panel = Color::hex(0x1B1F29);
  t.ink = Color::hex(0xF3F5F9);
  t.quiet_ink = Color::hex(0xC3C8D2);
  t.primary = Color::hex(0xF3F5F9);
  t.on_primary = Color::hex(0x14171F);
  t.hover = Color::hex(0x2C3240);
  t.selection = Color::hex(0x2F4A70);
  t.on_selection = Color::hex(0xF3F5F9);
  t.focus = Color::hex(0xFFD166);
  t.good = Color::hex(0x86E3B5);
  t.bad = Color::hex(0xFFB5A9);
  t.scrim = Color::hex(0x000000, 0.6F);
  return t;
}

Theme bright_room() {
  constexpr Color white = Color::hex(0xFFFFFF);
  constexpr Color black = Color::hex(0x000000);
  Theme t;
  t.ground = t.panel = t.on_primary = t.hover = t.on_selection = white;
  t.ink = t.quiet_ink = t.primary = t.selection = t.focus = t.good = t.bad = black;
  t.scrim = white.with_opacity(0.85F);
  return t;
}

}  // namespace

const std::vector<ThemeName>& theme_names() {
  static const std::vector<ThemeName> names{ThemeName::Paper, ThemeName::Slate, ThemeName::BrightRoom};
  return names;
}

std::string_view title(ThemeName name) {
  switch (name) {
    case ThemeName::Paper:
      return "Paper";
    case ThemeName::Slate:
      return "Slate";
    case ThemeName::BrightRoom:
      return "Bright room";
  }
  return "";
}

Sizes Sizes::for_height(double window_height) {
  const double h = window_height;
  Sizes s;
  s.window_height = h;
  s.small = 0.035 * h;
  s.label = 0.045 * h;
  s.heading = 0.06 * h;
  s.edge = std::max(2.0, 0.004 * h);
  s.rule = std::max(1.0, 0.0015 * h);
  s.rim = std::max(2.0, 0.003 * h);
  s.space = 0.01 * h;
  s.radius = 0.01 * h;
  s.focus_ring = std::max(3.0, 0.004 * h);
  s.focus_gap = std::max(2.0, 0.003 * h);
  s.target = std::max(24.0, 0.04 * h);
  s.button = std::max(24.0, 0.08 * h);
  s.field = std::max(24.0, 0.068 * h);
  s.icon = std::max(24.0, 0.068 * h);
  s.scroll_bar = std::max(24.0, 0.024 * h);
  return s;
}

double reading_height(double width, double height) { return std::min(height, width * 0.75); }

Theme Theme::make(ThemeName name, double height) {
  Theme theme = name == ThemeName::Paper ? paper() : name == ThemeName::Slate ? slate() : bright_room();
  theme.name = name;
  theme.sizes = Sizes::for_height(height);
  return theme;
}

figures::Palette Theme::palette() const {
  return {ground, ink, name == ThemeName::BrightRoom ? figures::Fills::HatchOnly : figures::Fills::Colors, sizes.edge,
          sizes.label};
}

figures::Palette Theme::panel_palette() const {
  figures::Palette p = palette();
  p.ground = panel;
  return p;
}

std::vector<ThemePair> reading_pairs(const Theme& t) {
  return {{"ink on the ground", t.ink, t.ground},         {"ink on a panel", t.ink, t.panel},
          {"ink under the pointer", t.ink, t.hover},      {"quiet ink on the ground", t.quiet_ink, t.ground},
          {"quiet ink on a panel", t.quiet_ink, t.panel}, {"text of the main button", t.on_primary, t.primary},
          {"selected text", t.on_selection, t.selection}, {"what is right, on the ground", t.good, t.ground},
          {"what is right, on a panel", t.good, t.panel}, {"what is wrong, on the ground", t.bad, t.ground},
          {"what is wrong, on a panel", t.bad, t.panel},  {"focus ring on the ground", t.focus, t.ground},
          {"focus ring on a panel", t.focus, t.panel}};
}

}  // namespace fw::theme
