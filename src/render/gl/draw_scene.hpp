#pragma once

#include <functional>
#include <memory>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "render/bench_scene.hpp"
#include "render/gl/loader.hpp"

namespace fw::render::gl {

/// A rectangle of the framebuffer in its pixels, from the lower left corner, as OpenGL counts.
struct Rectangle {
  int left = 0;
  int bottom = 0;
  int width = 0;
  int height = 0;
  friend bool operator==(const Rectangle&, const Rectangle&) = default;
};

/// Gives the text of a shader file by its name ("bench_face.vert"): platform::asset in the program.
using ShaderTexts = std::function<std::string_view(std::string_view name)>;

/// Draws scenes with OpenGL. Requires: the context that was current in make() is current in every call.
class BenchPainter {
 public:
  /// Errors: a sentence of Program::make.
  [[nodiscard]] static Result<BenchPainter, std::string> make(Dialect dialect, const ShaderTexts& shaders);
  BenchPainter(BenchPainter&&) noexcept;
  BenchPainter& operator=(BenchPainter&&) noexcept;
  ~BenchPainter();

  /// Draws over what is there, within `viewport` of the bound framebuffer, which has a depth buffer (its part is
  /// cleared). Sets every state of OpenGL that it needs, asks for none, and leaves them so: as does each painter.
  void draw(const Scene& scene, const Rectangle& viewport) const;

  /// Draws each face in one flat color that tells its id: red + 256 * green = id + 1; ground untouched.
  /// For tests: picking is geometry::nearest_hit's business.
  void draw_face_ids(const Scene& scene, const Rectangle& viewport) const;
  /// After the context was lost: nothing is removed when this goes, and nothing can be drawn with it.
  void forget();

 private:
  struct Parts;
  explicit BenchPainter(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace fw::render::gl
