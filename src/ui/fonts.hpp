#pragma once

#include <cstdint>
#include <string_view>
#include <utility>
#include <vector>

struct ImFont;
struct ImFontAtlas;

namespace fw::ui {

/// The embedded type, drawn in the sizes that the window's height asks for.
class Fonts {
 public:
  /// A built font, and by what an em must be multiplied to give the toolkit's size of it.
  struct Built {
    ImFont* font = nullptr;
    double em = 0;  ///< size for which it was built
    double size_per_em = 1;
    bool bold = false;
  };

  /// Builds the type into the atlas when there is none yet, or the height has changed by more than 2 %, or there are
  /// other pixels: so many a unit of the window.
  /// Returns whether the atlas is new, so that its picture must be sent to the graphics card again.
  bool prepare(ImFontAtlas& atlas, double window_height, double pixel_ratio = 1);
  /// The built font whose size is nearest to `em`. Requires: prepare() was called.
  [[nodiscard]] const Built& nearest(double em, bool bold) const;
  [[nodiscard]] bool is_ready() const { return !built_.empty(); }

 private:
  std::vector<Built> built_;
  double height_ = 0;
  double pixel_ratio_ = 1;
};

/// The characters that the program may show, as pairs of first and last.
[[nodiscard]] const std::vector<std::pair<std::uint32_t, std::uint32_t>>& shown_characters();
/// Whether a text can be shown without a gap.
[[nodiscard]] bool can_show(std::string_view text);

}  // namespace fw::ui
