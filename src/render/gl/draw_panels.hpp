#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

#include "render/gl/draw_scene.hpp"

namespace fw::render::gl {

/// A corner of a triangle of the panels.
struct PanelVertex {
  std::array<float, 2> place;        ///< from the upper left corner, in units of the drawing
  std::array<float, 2> on_atlas;     ///< 0 to 1 across and down the picture of the type
  std::array<std::uint8_t, 4> tint;  ///< red, green, blue, opacity; not premultiplied
};

/// Triangles that are cut to the same rectangle.
struct PanelRun {
  Rectangle clip;               ///< in pixels of the framebuffer
  std::size_t index_count = 0;  ///< a run begins where the one before it ends
};

/// Panels as triangles, in the order in which they are painted. Shape: three indices a triangle.
struct PanelDrawing {
  double width = 0, height = 0;  ///< of the whole, in units of the places
  std::vector<PanelVertex> vertices;
  std::vector<std::uint32_t> indices;
  std::vector<PanelRun> runs;
};

/// Draws panels with OpenGL. Requires: the context that was current in make() is current in every call.
class PanelPainter {
 public:
  /// Errors: a sentence of Program::make.
  [[nodiscard]] static Result<PanelPainter, std::string> make(Dialect dialect, const ShaderTexts& shaders);
  PanelPainter(PanelPainter&&) noexcept;
  PanelPainter& operator=(PanelPainter&&) noexcept;
  ~PanelPainter();

  /// Takes a picture of the type: rows from the top down, one byte of opacity a pixel.
  void take_atlas(int width, int height, const std::uint8_t* opacities);
  /// Draws over what is on the bound framebuffer of this size. Sets every state of OpenGL that it needs.
  void draw(const PanelDrawing& drawing, int width_px, int height_px) const;
  /// After the context was lost: nothing is removed when this goes, and nothing can be drawn with it.
  void forget();

 private:
  struct Parts;
  explicit PanelPainter(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace fw::render::gl
