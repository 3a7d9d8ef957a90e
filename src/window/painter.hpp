#pragma once

#include <memory>
#include <optional>
#include <string>

#include "panels/frame.hpp"
#include "render/gl/draw_scene.hpp"

namespace fw::window {

using panels::FrameResult;
using theme::Theme;
using ui::Fonts;

/// The toolkit's context; one at a time, as the toolkit has it.
class ToolkitContext {
 public:
  ToolkitContext();
  ~ToolkitContext();
  ToolkitContext(const ToolkitContext&) = delete;
  ToolkitContext& operator=(const ToolkitContext&) = delete;
};

/// Puts frames on the framebuffer that is bound: the ground, the bench in space, the panels over it.
/// Requires: an OpenGL context that is current in every call, and a toolkit context; both outlive it.
class Painter {
 public:
  /// Errors: a sentence when the shaders or the toolkit's drawing cannot be set up.
  [[nodiscard]] static Result<Painter, std::string> make(render::gl::Dialect dialect);
  Painter(Painter&&) noexcept;
  Painter& operator=(Painter&&) noexcept;
  ~Painter();

  /// Builds the type for this height if need be, for so many pixels a unit, and opens a frame of the toolkit.
  /// Its size, time and input were set before.
  void begin_frame(double height, double pixel_ratio = 1);
  [[nodiscard]] const Fonts& fonts() const;
  /// Closes the toolkit's frame and draws everything on the framebuffer of this size.
  void paint(const FrameResult& frame, const Theme& theme, int width_px, int height_px);
  /// The context was lost, and with it all that lay on the graphics card: nothing is removed there any more.
  void forget();
  /// Makes anew what was lost, in the context that is current now. Errors: as make(); nothing is drawn then.
  [[nodiscard]] std::optional<std::string> restore(render::gl::Dialect dialect);

 private:
  struct Parts;
  explicit Painter(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace fw::window
