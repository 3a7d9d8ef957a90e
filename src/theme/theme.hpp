#pragma once

#include <string_view>
#include <vector>

#include "base/color.hpp"
#include "figures/face_style.hpp"

namespace fw::theme {

/// Of what cannot be used at present.
inline constexpr float disabled_opacity = 0.4F;

enum class ThemeName { Paper, Slate, BrightRoom };
[[nodiscard]] const std::vector<ThemeName>& theme_names();
/// "Paper", "Slate", "Bright room".
[[nodiscard]] std::string_view title(ThemeName name);

/// Every size of the interface, from the window's height. Units: pixels.
struct Sizes {
  double window_height = 1080;
  double small = 0;       ///< em of the smallest text, 3.5 % of the height
  double label = 0;       ///< em of labels, steps and the ledger, 4.5 %
  double heading = 0;     ///< em of headings, 6 %
  double edge = 0;        ///< width of a figure's edge, a rule under a sum, an underline: 0.4 %
  double rule = 0;        ///< width of a separating line, 0.15 %
  double rim = 0;         ///< width of the outline of a widget, 0.3 %
  double space = 0;       ///< the step of all spacing, 1 % : space, 2 * space, 3 * space
  double radius = 0;      ///< of rounded corners, 1 %
  double focus_ring = 0;  ///< width of the ring, 0.4 %, at least 3 px
  double focus_gap = 0;   ///< between a widget and its ring
  double target = 24;     ///< least width and height of what can be clicked, 24 px or more
  double button = 0;      ///< usual height of a button
  double field = 0;       ///< usual height of a text field, a tab, an option
  double icon = 0;        ///< usual width and height of an icon button
  double scroll_bar = 0;  ///< width of a scroll bar

  [[nodiscard]] static Sizes for_height(double window_height);
  friend bool operator==(const Sizes&, const Sizes&) = default;
};

/// A face of the program: its colors and sizes. Every text and edge has a contrast of 7:1 or more to what it stands on.
struct Theme {
  ThemeName name = ThemeName::Paper;
  Color ground{};        ///< the bench, the rail, the bars
  Color panel{};         ///< the ledger and other sheets
  Color ink{};           ///< text and lines
  Color quiet_ink{};     ///< text of less weight
  Color primary{};       ///< fill of the one button that matters most
  Color on_primary{};    ///< its text
  Color hover{};         ///< fill of a quiet widget under the pointer; text stands on it
  Color selection{};     ///< behind selected text
  Color on_selection{};  ///< selected text
  Color focus{};         ///< the ring round the widget that has the keyboard
  Color good{};          ///< text and marks of what is right, on ground and panel; never without a word or mark
  Color bad{};           ///< text and marks of what is wrong
  Color scrim{};         ///< laid over everything below a sheet; see-through
  Sizes sizes{};

  /// `height`: reading_height of the window, in pixels.
  [[nodiscard]] static Theme make(ThemeName name, double height);
  /// What figures on the ground are drawn with.
  [[nodiscard]] figures::Palette palette() const;
  /// The same on a panel.
  [[nodiscard]] figures::Palette panel_palette() const;
  friend bool operator==(const Theme& a, const Theme& b) { return a.name == b.name && a.sizes == b.sizes; }
};

/// Pairs of (what is read, what it stands on) that must have a contrast of 7:1.
struct ThemePair {
  std::string_view what;
  Color front, back;
};
[[nodiscard]] std::vector<ThemePair> reading_pairs(const Theme& theme);

/// What texts are sized from: the height of the window, and where it is narrower than 4 : 3 what its width holds; in
/// pixels.
[[nodiscard]] double reading_height(double width, double height);

}  // namespace fw::theme
