#pragma once

#include <string>

#include "base/color.hpp"
#include "base/result.hpp"
#include "render/gl/objects.hpp"
#include "render/picture.hpp"

namespace fw::render::gl {

/// A framebuffer of its own, 8 bits a channel, with depth.
class Offscreen {
 public:
  /// Errors: a sentence when the size is not positive or beyond what the driver can do.
  [[nodiscard]] static Result<Offscreen, std::string> make(int width, int height);

  [[nodiscard]] int width() const { return width_; }
  [[nodiscard]] int height() const { return height_; }
  /// Makes it the framebuffer that is drawn to, viewport and all, and clears it to `ground`.
  void begin(const Color& ground) const;
  /// What has been drawn since begin(); leaves the framebuffer bindings as they are.
  [[nodiscard]] Picture read_back() const;

 private:
  Offscreen(int width, int height) : width_(width), height_(height) {}
  int width_ = 0;
  int height_ = 0;
  Framebuffer framebuffer_;
  Renderbuffer color_;
  Renderbuffer depth_;
};

}  // namespace fw::render::gl
