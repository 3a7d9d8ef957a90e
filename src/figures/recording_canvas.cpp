#include "figures/recording_canvas.hpp"

#include <cmath>

#include "base/ensure.hpp"
#include "base/utf8.hpp"

namespace fw::figures {
namespace {

template <class T>
std::vector<T> calls_of(const std::vector<RecordingCanvas::Call>& calls) {
  std::vector<T> found;
  for (const auto& call : calls) {
    if (const T* item = std::get_if<T>(&call)) found.push_back(*item);
  }
  return found;
}

}  // namespace

std::vector<RecordingCanvas::Path> RecordingCanvas::paths() const { return calls_of<Path>(calls_); }
std::vector<RecordingCanvas::Circle> RecordingCanvas::circles() const { return calls_of<Circle>(calls_); }
std::vector<RecordingCanvas::Text> RecordingCanvas::texts() const { return calls_of<Text>(calls_); }

bool RecordingCanvas::shows(std::string_view text) const {
  std::string all;
  double baseline = 0;
  for (const Text& item : texts()) {
    // Powers stand higher than their line; the next line lies more than one text's height away.
    if (!all.empty() && std::abs(item.box.y - baseline) > item.box.h) all += '\n';
    baseline = item.box.y;
    all += item.text;
  }
  return all.find(text) != std::string::npos;
}

void RecordingCanvas::line(Vec2 from, Vec2 to, const Stroke& stroke) {
  calls_.push_back(Path{{from, to}, false, std::nullopt, stroke});
}

void RecordingCanvas::polyline(const std::vector<Vec2>& points, const Stroke& stroke) {
  calls_.push_back(Path{points, false, std::nullopt, stroke});
}

void RecordingCanvas::polygon(const std::vector<Vec2>& points, std::optional<Color> fill,
                              std::optional<Stroke> stroke) {
  calls_.push_back(Path{points, true, fill, stroke});
}

void RecordingCanvas::rounded(const Rect& rect, double, std::optional<Color> fill, std::optional<Stroke> stroke) {
  calls_.push_back(
      Path{{{rect.x, rect.y}, {rect.right(), rect.y}, {rect.right(), rect.bottom()}, {rect.x, rect.bottom()}},
           true,
           fill,
           stroke});
}

void RecordingCanvas::circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) {
  calls_.push_back(Circle{center, radius, fill, stroke});
}

void RecordingCanvas::arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) {
  std::vector<Vec2> points;
  constexpr int pieces = 16;
  for (int i = 0; i <= pieces; ++i) {
    const double angle = from_rad + (to_rad - from_rad) * i / pieces;
    points.push_back(center + radius * Vec2{std::cos(angle), std::sin(angle)});
  }
  calls_.push_back(Path{std::move(points), false, std::nullopt, stroke});
}

void RecordingCanvas::text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) {
  calls_.push_back(Text{std::string(text), text_box(anchor, h, v, text_size(text, style), style.size), style});
}

Vec2 RecordingCanvas::text_size(std::string_view text, const TextStyle& style) const {
  return {static_cast<double>(character_count(text)) * style.size * (style.bold ? 0.6 : 0.55),
          style.size * line_height};
}

void RecordingCanvas::push_clip(const Rect& rect) { clips_.push_back(rect); }

void RecordingCanvas::pop_clip() {
  ensure(!clips_.empty(), "a clip was taken away that was never set");
  clips_.pop_back();
}

}  // namespace fw::figures
