#pragma once

#include <string>
#include <variant>

#include "figures/canvas.hpp"

namespace fw::figures {

/// Keeps every call, for tests and for asking a drawing what it shows.
class RecordingCanvas final : public Canvas {
 public:
  struct Path {
    std::vector<Vec2> points;
    bool closed = false;
    std::optional<Color> fill;
    std::optional<Stroke> stroke;
  };
  struct Circle {
    Vec2 center;
    double radius = 0;
    std::optional<Color> fill;
    std::optional<Stroke> stroke;
  };
  struct Text {
    std::string text;
    Rect box;
    TextStyle style;
  };
  using Call = std::variant<Path, Circle, Text>;

  explicit RecordingCanvas(CanvasUnit unit = CanvasUnit::Pixel) : unit_(unit) {}

  [[nodiscard]] const std::vector<Call>& calls() const { return calls_; }
  [[nodiscard]] std::vector<Path> paths() const;
  [[nodiscard]] std::vector<Circle> circles() const;
  [[nodiscard]] std::vector<Text> texts() const;
  /// Every text that was drawn, pieces of one line joined by nothing, lines by a line feed.
  [[nodiscard]] bool shows(std::string_view text) const;
  [[nodiscard]] std::size_t open_clips() const { return clips_.size(); }

  [[nodiscard]] CanvasUnit unit() const override { return unit_; }
  void line(Vec2 from, Vec2 to, const Stroke& stroke) override;
  void polyline(const std::vector<Vec2>& points, const Stroke& stroke) override;
  void polygon(const std::vector<Vec2>& points, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void rounded(const Rect& rect, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) override;
  void arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) override;
  void text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) override;
  /// Every character counts 0.55 sizes, bold ones 0.6.
  [[nodiscard]] Vec2 text_size(std::string_view text, const TextStyle& style) const override;
  void push_clip(const Rect& rect) override;
  void pop_clip() override;

 private:
  CanvasUnit unit_;
  std::vector<Call> calls_;
  std::vector<Rect> clips_;
};

}  // namespace fw::figures
