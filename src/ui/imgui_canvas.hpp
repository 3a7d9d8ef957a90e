#pragma once

#include <vector>

#include "figures/canvas.hpp"
#include "ui/fonts.hpp"

struct ImDrawList;

namespace fw::ui {

using figures::HAlign;
using figures::Rect;
using figures::Stroke;
using figures::TextStyle;
using figures::VAlign;
using figures::Vec2;

/// A canvas on one of the toolkit's draw lists; pixels of the window. Lives for one frame.
class ImguiCanvas final : public figures::Canvas {
 public:
  ImguiCanvas(ImDrawList& list, const Fonts& fonts) : list_(&list), fonts_(&fonts) {}

  [[nodiscard]] figures::CanvasUnit unit() const override { return figures::CanvasUnit::Pixel; }
  void line(Vec2 from, Vec2 to, const Stroke& stroke) override;
  void polyline(const std::vector<Vec2>& points, const Stroke& stroke) override;
  void polygon(const std::vector<Vec2>& points, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void rounded(const Rect& rect, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) override;
  void text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) override;
  [[nodiscard]] Vec2 text_size(std::string_view text, const TextStyle& style) const override;
  void push_clip(const Rect& rect) override;
  void pop_clip() override;

 private:
  void dashed(const std::vector<Vec2>& points, bool closed, const Stroke& stroke);
  ImDrawList* list_;
  const Fonts* fonts_;
};

}  // namespace fw::ui
