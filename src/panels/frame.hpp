#pragma once

#include "panels/panels.hpp"

namespace fw::panels {

/// One frame of the program without a window: what is shown, and what the user wants. The toolkit's frame is open.
struct FrameResult {
  Commands commands;
  BenchPicture picture;  ///< to be drawn behind the panels; empty looks when nothing is to be seen
  bool shows_bench = true;
};
/// `height`: what texts are sized from, see reading_height.
[[nodiscard]] FrameResult draw_frame(Ui& ui, const Fonts& fonts, const Model& model, const Derived& derived,
                                     double height);

/// What the screen does with keys while no text field has the focus.
[[nodiscard]] ui::KeyScene key_scene(const Model& model, const Derived& derived);
/// The commands of the keys that no widget has used.
void shortcuts(Ui& ui, const Model& model, const Derived& derived, Commands& out);

}  // namespace fw::panels
