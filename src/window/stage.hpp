#pragma once

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "base/result.hpp"
#include "render/gl/loader.hpp"
#include "state/session.hpp"
#include "ui/ui.hpp"
#include "window/input.hpp"

namespace fw::window {

/// What is drawn on: its size in the units of the pointer, and in pixels.
struct Surface {
  int width = 0;
  int height = 0;
  int width_px = 0;
  int height_px = 0;
};

/// The way to the system's clipboard; either may be missing.
struct Clipboard {
  std::function<void(const std::string&)> copy;
  std::function<std::string()> paste;
};

/// What a frame does, without a window system: time passes, panels are drawn, what the user wants is done, and what is
/// to be kept is saved when it is due. The window that it is shown in hands in time, size and input.
/// Requires: the OpenGL context that was current in make() is current in every call, and outlives the stage.
class Stage {
 public:
  /// Errors: a sentence when the drawing cannot be set up.
  [[nodiscard]] static Result<Stage, std::string> make(state::Session& session, render::gl::Dialect dialect);
  Stage(Stage&&) noexcept;
  Stage& operator=(Stage&&) noexcept;
  ~Stage();

  [[nodiscard]] Input& input();
  void use_clipboard(Clipboard clipboard);

  /// Draws one frame on the framebuffer that is bound. `now`: seconds, never less than before.
  /// Returns whether another frame is wanted at once. What is too small to be seen is not drawn.
  bool frame(double now, const Surface& surface);
  /// The same answer without a frame.
  [[nodiscard]] bool wants_frame() const;
  /// Input came, or the surface is another one.
  void wake();
  /// Time passed in which nothing moved: the next frame begins here.
  void resume_at(double now);
  /// How long the window may sleep at most, if no input comes, and whether it is worth a frame then.
  struct Sleep {
    double seconds = 0;
    bool then_frame = false;
  };
  [[nodiscard]] Sleep sleep(double at_most) const;
  /// Saves what is to be kept when two seconds have passed since it changed, or at once.
  void save_if_due(double now);
  void save();

  /// The context was lost: nothing is drawn until restore().
  void forget();
  /// Errors: a sentence when the drawing cannot be set up in the context that is current now.
  [[nodiscard]] std::optional<std::string> restore(render::gl::Dialect dialect);

  /// The widget has the focus from the next frame on. `id`: of one of ui().items().
  void focus(ui::WidgetId id);
  [[nodiscard]] std::size_t frames_drawn() const;
  [[nodiscard]] const fw::ui::Ui& ui() const;

 private:
  struct Parts;
  explicit Stage(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace fw::window
