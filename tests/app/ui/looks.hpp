#pragma once

#include "support/drawn_picture.hpp"
#include "support/ui_driver.hpp"

// A small window with the widgets of one frame, and its picture.
namespace fw::ui::looks {

using fw::test::DrawnPicture;
using fw::test::UiDriver;

inline constexpr WidgetId first{"first"};
inline constexpr WidgetId second{"second"};
inline constexpr theme::ThemeName paper = theme::ThemeName::Paper;
inline constexpr double wide = 480;
inline constexpr double high = 360;
inline constexpr Rect place{100, 120, 240, 48};
inline const Theme paper_theme = Theme::make(paper, high);

using Widgets = UiDriver::Widgets;

/// The picture after the frames so far.
inline DrawnPicture picture(theme::ThemeName name = paper) { return DrawnPicture(Theme::make(name, high).ground); }
inline DrawnPicture picture_of(const Widgets& widgets, theme::ThemeName name = paper) {
  UiDriver driver(wide, high, name, widgets);
  return picture(name);
}
inline Rect drawn(const Widgets& widgets) {
  return picture_of(widgets).box_beside(paper_theme.ground, {0, 0, wide, high});
}

inline bool is_nothing(const Rect& rect) { return rect.w == 0; }

}  // namespace fw::ui::looks
