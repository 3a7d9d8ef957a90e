#pragma once

#include <memory>
#include <string>

#include "base/result.hpp"
#include "render/picture.hpp"
#include "state/session.hpp"
#include "ui/ui.hpp"

namespace fw::window {

struct WindowOptions {
  int width = 1280;
  int height = 720;
  bool wait_for_display = true;  ///< in step with the screen; off for measuring
};

/// The window: input to commands, frames to the screen. Draws only when something changed.
class Window {
 public:
  /// Errors: a sentence when there is no display or no OpenGL 3.3.
  [[nodiscard]] static Result<Window, std::string> make(state::Session& session, const WindowOptions& options);
  Window(Window&&) noexcept;
  Window& operator=(Window&&) noexcept;
  ~Window();

  /// Runs until it is closed. The kept place is written on the way and at the end.
  void run();
  /// Takes the input that is there, draws one frame, and says whether another one is wanted at once.
  bool frame();
  /// Waits for input up to `seconds`, and draws frames while any is wanted. Returns false when it was closed.
  bool wait(double seconds);
  [[nodiscard]] std::size_t frames_drawn() const;
  [[nodiscard]] const fw::ui::Ui& ui() const;
  /// What the window shows, read back from it.
  [[nodiscard]] render::Picture screenshot() const;
  void resize(int width, int height);
  /// As if its close button were pressed; from any thread.
  void ask_to_close();

 private:
  struct Parts;
  explicit Window(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace fw::window
