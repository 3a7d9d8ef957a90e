#pragma once

#include <string>

#include "base/color.hpp"
#include "solids/solid.hpp"

namespace fw::figures {

/// Whether faces are filled with their group's color, or left white with a black hatch alone
/// (for a bright room and for copies without color).
enum class Fills { Colors, HatchOnly };

/// What a figure needs to know of its surroundings; sizes in the canvas's unit.
struct Palette {
  Color ground{1, 1, 1, 1};  ///< behind the figure
  Color ink{0, 0, 0, 1};     ///< edges and text on the ground
  Fills fills = Fills::Colors;
  double line_width = 2;  ///< of an edge
  double text_size = 24;  ///< em of labels
};

/// The three marks by which a congruence group is known everywhere, never color alone.
struct FaceStyle {
  Color fill{};       ///< opaque
  Color on_fill{};    ///< text on the fill: ink (black if ink is not dark enough) or white
  Color hatch_ink{};  ///< lines of the hatch on the fill
  Hatch hatch = Hatch::None;
  std::string letter;  ///< "A", "B" ... "Z", "AA"
  friend bool operator==(const FaceStyle&, const FaceStyle&) = default;
};

/// The style of a group. Colors in this order: blue #0072B2, orange #E69F00, green #009E73, yellow #F0E442,
/// purple #CC79A7, vermilion #D55E00; hatches none, rising, level, dots, falling, crossed beside them. From the
/// seventh group on the colors repeat, each time with the next hatch, so that a pair comes back only after 36.
/// On a dark ground the colors are toned down until the ground's light ink stands out on them.
/// Source: the colors of Okabe and Ito, Color Universal Design (2002).
[[nodiscard]] FaceStyle face_style(solids::GroupId group, const Palette& palette);

/// The plain color and hatch of a group, whatever the surroundings.
[[nodiscard]] Color group_color(solids::GroupId group);
[[nodiscard]] Hatch group_hatch(solids::GroupId group);
[[nodiscard]] std::string group_letter(solids::GroupId group);

}  // namespace fw::figures
