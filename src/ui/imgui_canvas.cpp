#include "ui/imgui_canvas.hpp"

#include <imgui.h>

#include <algorithm>
#include <cfloat>
#include <cmath>

#include "geometry/polygon.hpp"

namespace fw::ui {
namespace {

ImVec2 at(Vec2 p) { return {static_cast<float>(p.x), static_cast<float>(p.y)}; }

ImU32 packed(const Color& c) {
  const auto channel = [](float v) { return static_cast<ImU32>(std::lround(std::clamp(v, 0.0F, 1.0F) * 255.0F)); };
  return (channel(c.a) << 24U) | (channel(c.b) << 16U) | (channel(c.g) << 8U) | channel(c.r);
}

float width_of(const Stroke& stroke) { return static_cast<float>(stroke.width); }

double turned_area(const std::vector<Vec2>& points) {
  double sum = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Vec2& a = points[i];
    const Vec2& b = points[(i + 1) % points.size()];
    sum += a.x * b.y - b.x * a.y;
  }
  return sum;
}

}  // namespace

void ImguiCanvas::line(Vec2 from, Vec2 to, const Stroke& stroke) { polyline({from, to}, stroke); }

void ImguiCanvas::dashed(const std::vector<Vec2>& points, bool closed, const Stroke& stroke) {
  const std::size_t sides = closed ? points.size() : points.size() - 1;
  for (std::size_t i = 0; i < sides; ++i) {
    const Vec2& a = points[i];
    const Vec2& b = points[(i + 1) % points.size()];
    const double length = glm::distance(a, b);
    // Whole dashes, so that each side begins and ends with one.
    const double wished = stroke.dash * 1.8;
    const double count = std::max(1.0, std::round((length + 0.8 * stroke.dash) / wished));
    const double unit = length / (count - 0.8 / 1.8);
    for (int k = 0; k < static_cast<int>(count) && length > 0; ++k) {
      const double from = k * unit / length;
      const double to = std::min(1.0, from + unit / 1.8 / length);
      list_->AddLine(at(a + (b - a) * from), at(a + (b - a) * to), packed(stroke.color), width_of(stroke));
    }
  }
}

void ImguiCanvas::polyline(const std::vector<Vec2>& points, const Stroke& stroke) {
  if (points.size() < 2) return;
  if (stroke.dash > 0) {
    dashed(points, false, stroke);
    return;
  }
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    list_->AddLine(at(points[i]), at(points[i + 1]), packed(stroke.color), width_of(stroke));
    if (i > 0 && stroke.width > 1.5) {
      // Round joints: the toolkit's miters run far out at sharp corners.
      const ImVec2 joint{static_cast<float>(points[i].x) + 0.5F, static_cast<float>(points[i].y) + 0.5F};
      list_->AddCircleFilled(joint, width_of(stroke) / 2, packed(stroke.color));
    }
  }
}

void ImguiCanvas::polygon(const std::vector<Vec2>& points, std::optional<Color> fill, std::optional<Stroke> stroke) {
  if (points.size() < 3) return;
  if (fill) {
    std::vector<Vec2> ordered = points;
    if (turned_area(ordered) < 0) std::reverse(ordered.begin(), ordered.end());
    if (geometry::is_convex(ordered)) {
      std::vector<ImVec2> corners;
      corners.reserve(ordered.size());
      for (const Vec2& p : ordered) corners.push_back(at(p));
      list_->AddConvexPolyFilled(corners.data(), static_cast<int>(corners.size()), packed(*fill));
    } else {
      // Smoothed triangles would show their seams.
      const ImDrawListFlags flags = list_->Flags;
      list_->Flags &= ~ImDrawListFlags_AntiAliasedFill;
      for (const auto& t : geometry::triangulated(ordered)) {
        list_->AddTriangleFilled(at(ordered[t[0]]), at(ordered[t[1]]), at(ordered[t[2]]), packed(*fill));
      }
      list_->Flags = flags;
    }
  }
  if (!stroke) return;
  if (stroke->dash > 0) {
    dashed(points, true, *stroke);
    return;
  }
  std::vector<Vec2> loop = points;
  loop.push_back(points[0]);
  loop.push_back(points[1]);
  polyline(loop, *stroke);
}

void ImguiCanvas::rounded(const Rect& rect, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) {
  const ImVec2 low = at({rect.x, rect.y});
  const ImVec2 high = at({rect.right(), rect.bottom()});
  const float r = static_cast<float>(std::min({radius, rect.w / 2, rect.h / 2}));
  if (fill) list_->AddRectFilled(low, high, packed(*fill), r);
  if (!stroke) return;
  if (stroke->dash > 0) {
    dashed({{rect.x, rect.y}, {rect.right(), rect.y}, {rect.right(), rect.bottom()}, {rect.x, rect.bottom()}}, true,
           *stroke);
  } else {
    list_->AddRect(low, high, packed(stroke->color), r, 0, width_of(*stroke));
  }
}

void ImguiCanvas::circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) {
  const float r = static_cast<float>(radius);
  if (fill) list_->AddCircleFilled(at(center), r, packed(*fill));
  if (stroke) list_->AddCircle(at(center), r, packed(stroke->color), 0, width_of(*stroke));
}

void ImguiCanvas::arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) {
  const int pieces = std::clamp(static_cast<int>(std::abs(to_rad - from_rad) * std::sqrt(radius) * 2), 6, 64);
  list_->PathArcTo(at(center), static_cast<float>(radius), static_cast<float>(from_rad), static_cast<float>(to_rad),
                   pieces);
  list_->PathStroke(packed(stroke.color), 0, width_of(stroke));
}

void ImguiCanvas::text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) {
  if (text.empty()) return;
  const Fonts::Built& built = fonts_->nearest(style.size, style.bold);
  const double size = style.size * built.size_per_em;
  const Rect box = figures::text_box(anchor, h, v, text_size(text, style), style.size);
  const double ascent = static_cast<double>(built.font->Ascent) * size / static_cast<double>(built.font->FontSize);
  const Vec2 top{std::round(box.x), std::round(box.y + figures::line_baseline * style.size - ascent)};
  list_->AddText(built.font, static_cast<float>(size), at(top), packed(style.color), text.data(),
                 text.data() + text.size());
}

Vec2 ImguiCanvas::text_size(std::string_view text, const TextStyle& style) const {
  const Fonts::Built& built = fonts_->nearest(style.size, style.bold);
  const ImVec2 size = built.font->CalcTextSizeA(static_cast<float>(style.size * built.size_per_em), FLT_MAX, 0.0F,
                                                text.data(), text.data() + text.size());
  return {static_cast<double>(size.x), style.size * figures::line_height};
}

void ImguiCanvas::push_clip(const Rect& rect) {
  list_->PushClipRect(at({rect.x, rect.y}), at({rect.right(), rect.bottom()}), true);
}

void ImguiCanvas::pop_clip() { list_->PopClipRect(); }

}  // namespace fw::ui
