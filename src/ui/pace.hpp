#pragma once

#include <algorithm>

#include "ui/ui.hpp"

namespace fw::ui {

/// When a frame is due: a few after each input or change, while something moves, and none else.
class Pace {
 public:
  /// Input came, or the window is another one.
  void wake() { settle_ = settling_frames; }
  /// Nothing can be drawn until input comes.
  void rest() { settle_ = 0; }
  /// A frame was drawn. `changed`: what is shown; `waits`: input that had to wait for it.
  void drawn(bool changed, bool waits, const Ui& ui) {
    settle_ = changed || waits || ui.wants_frame() ? settling_frames : settle_ - 1;
  }
  [[nodiscard]] bool wants_frame(bool is_moving) const { return settle_ > 0 || is_moving; }
  /// How long to wait for input, at most this long.
  [[nodiscard]] static double wait(double seconds, const Ui& ui) {
    return std::min(seconds, ui.wakes_in().value_or(seconds));
  }

 private:
  static constexpr int settling_frames = 3;  // hover, focus and layout follow one another
  int settle_ = settling_frames;
};

}  // namespace fw::ui
