#include "figures/canvas.hpp"

#include <algorithm>

namespace fw::figures {

bool Rect::contains(const Rect& other, double slack) const {
  return other.x >= x - slack && other.y >= y - slack && other.right() <= right() + slack &&
         other.bottom() <= bottom() + slack;
}

bool Rect::overlaps(const Rect& other, double slack) const {
  return std::min(right(), other.right()) - std::max(x, other.x) > slack &&
         std::min(bottom(), other.bottom()) - std::max(y, other.y) > slack;
}

Rect Rect::middle(double width, double height) const {
  return {x + (w - width) / 2, y + (h - height) / 2, width, height};
}

Rect common_part(const Rect& a, const Rect& b) {
  const double x = std::max(a.x, b.x);
  const double y = std::max(a.y, b.y);
  return {x, y, std::max(0.0, std::min(a.right(), b.right()) - x), std::max(0.0, std::min(a.bottom(), b.bottom()) - y)};
}

Rect bounding_rect(const std::vector<Vec2>& points) {
  if (points.empty()) return {};
  Vec2 low = points.front();
  Vec2 high = points.front();
  for (const Vec2& p : points) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
  return {low.x, low.y, high.x - low.x, high.y - low.y};
}

Rect text_box(Vec2 anchor, HAlign h, VAlign v, Vec2 size, double em) {
  const double left = h == HAlign::Left ? 0 : h == HAlign::Center ? size.x / 2 : size.x;
  double above = 0;
  switch (v) {
    case VAlign::Top:
      break;
    case VAlign::Middle:
      above = size.y / 2;
      break;
    case VAlign::Baseline:
      above = em * line_baseline;
      break;
    case VAlign::Bottom:
      above = size.y;
      break;
  }
  return {anchor.x - left, anchor.y - above, size.x, size.y};
}

void draw_stroke(Canvas& canvas, const std::vector<Vec2>& points, const Stroke& stroke) {
  if (points.size() == 2) {
    canvas.line(points[0], points[1], stroke);
  } else {
    canvas.polyline(points, stroke);
  }
}

}  // namespace fw::figures
