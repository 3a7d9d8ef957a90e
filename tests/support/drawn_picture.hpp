#pragma once

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "base/color.hpp"
#include "figures/canvas.hpp"

namespace fw::test {

/// What the toolkit's triangles of the last frame look like, each pixel asked at its middle. It knows no graphics card
/// and takes the type from the toolkit's own table of characters.
class DrawnPicture {
 public:
  /// Requires: ImGui::Render() was called, and the toolkit's state is the current one.
  explicit DrawnPicture(const Color& ground)
      : width_(static_cast<int>(ImGui::GetIO().DisplaySize.x)),
        height_(static_cast<int>(ImGui::GetIO().DisplaySize.y)) {
    pixels_.assign(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_), ground);
    ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&type_, &type_width_, &type_height_);
    const ImDrawData& all = *ImGui::GetDrawData();
    for (int i = 0; i < all.CmdListsCount; ++i) {
      const ImDrawList& list = *all.CmdLists[i];
      for (const ImDrawCmd& command : list.CmdBuffer) {
        for (unsigned k = 0; k < command.ElemCount; k += 3) {
          const auto corner = [&](unsigned n) -> const ImDrawVert& {
            return list.VtxBuffer[static_cast<int>(command.VtxOffset +
                                                   list.IdxBuffer[static_cast<int>(command.IdxOffset + k + n)])];
          };
          fill(corner(0), corner(1), corner(2), command.ClipRect);
        }
      }
    }
  }

  [[nodiscard]] Color at(int x, int y) const { return pixels_[index(x, y)]; }
  [[nodiscard]] Color at(figures::Vec2 p) const { return at(static_cast<int>(p.x), static_cast<int>(p.y)); }
  [[nodiscard]] int width() const { return width_; }
  [[nodiscard]] int height() const { return height_; }

  /// Whether two colors are the same but for rounding.
  [[nodiscard]] static bool is_close(const Color& a, const Color& b, float slack = 0.02F) {
    return std::abs(a.r - b.r) < slack && std::abs(a.g - b.g) < slack && std::abs(a.b - b.b) < slack;
  }
  /// The smallest rectangle round all pixels within `where` that have this color; of no size if there is none.
  [[nodiscard]] figures::Rect box_of(const Color& color, const figures::Rect& where) const {
    return box_where(where, [&](int x, int y) { return is_close(at(x, y), color); });
  }
  /// The same of all pixels that do not have it.
  [[nodiscard]] figures::Rect box_beside(const Color& color, const figures::Rect& where) const {
    return box_where(where, [&](int x, int y) { return !is_close(at(x, y), color); });
  }
  /// The smallest rectangle round all pixels within `where` that are not the same in both pictures.
  [[nodiscard]] figures::Rect changed(const DrawnPicture& other, const figures::Rect& where) const {
    return box_where(where, [&](int x, int y) { return !is_close(at(x, y), other.at(x, y)); });
  }

 private:
  template <class Wanted>
  [[nodiscard]] figures::Rect box_where(const figures::Rect& where, const Wanted& is_wanted) const {
    const int right = std::min(width_, static_cast<int>(std::ceil(where.right())));
    const int bottom = std::min(height_, static_cast<int>(std::ceil(where.bottom())));
    int low_x = right, low_y = bottom, high_x = -1, high_y = -1;
    for (int y = std::max(0, static_cast<int>(where.y)); y < bottom; ++y) {
      for (int x = std::max(0, static_cast<int>(where.x)); x < right; ++x) {
        if (!is_wanted(x, y)) continue;
        low_x = std::min(low_x, x);
        low_y = std::min(low_y, y);
        high_x = std::max(high_x, x);
        high_y = std::max(high_y, y);
      }
    }
    if (high_x < 0) return {};
    return {1.0 * low_x, 1.0 * low_y, 1.0 * (high_x - low_x + 1), 1.0 * (high_y - low_y + 1)};
  }
  [[nodiscard]] std::size_t index(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) + static_cast<std::size_t>(x);
  }
  [[nodiscard]] float type_at(double u, double v) const {
    const int x = std::clamp(static_cast<int>(u * type_width_), 0, type_width_ - 1);
    const int y = std::clamp(static_cast<int>(v * type_height_), 0, type_height_ - 1);
    return static_cast<float>(type_[y * type_width_ + x]) / 255.0F;
  }
  void fill(const ImDrawVert& a, const ImDrawVert& b, const ImDrawVert& c, const ImVec4& clip) {
    const auto across = [](const ImVec2& p, const ImVec2& q, double x, double y) {
      return (static_cast<double>(q.x) - static_cast<double>(p.x)) * (y - static_cast<double>(p.y)) -
             (static_cast<double>(q.y) - static_cast<double>(p.y)) * (x - static_cast<double>(p.x));
    };
    const double whole = across(a.pos, b.pos, static_cast<double>(c.pos.x), static_cast<double>(c.pos.y));
    if (whole == 0) return;
    const int left = static_cast<int>(std::max({0.0F, clip.x, std::floor(std::min({a.pos.x, b.pos.x, c.pos.x}))}));
    const int top = static_cast<int>(std::max({0.0F, clip.y, std::floor(std::min({a.pos.y, b.pos.y, c.pos.y}))}));
    const int right =
        std::min(width_, static_cast<int>(std::min(clip.z, std::ceil(std::max({a.pos.x, b.pos.x, c.pos.x})))));
    const int bottom =
        std::min(height_, static_cast<int>(std::min(clip.w, std::ceil(std::max({a.pos.y, b.pos.y, c.pos.y})))));
    for (int y = top; y < bottom; ++y) {
      for (int x = left; x < right; ++x) {
        const double of_a = across(b.pos, c.pos, x + 0.5, y + 0.5) / whole;
        const double of_b = across(c.pos, a.pos, x + 0.5, y + 0.5) / whole;
        const double of_c = 1 - of_a - of_b;
        if (of_a < 0 || of_b < 0 || of_c < 0) continue;
        const auto mixed = [&](float at_a, float at_b, float at_c) {
          return of_a * static_cast<double>(at_a) + of_b * static_cast<double>(at_b) + of_c * static_cast<double>(at_c);
        };
        const auto channel = [&](unsigned shift) {
          return static_cast<float>(mixed(static_cast<float>((a.col >> shift) & 0xFFU),
                                          static_cast<float>((b.col >> shift) & 0xFFU),
                                          static_cast<float>((c.col >> shift) & 0xFFU)) /
                                    255);
        };
        const float alpha = channel(24) * type_at(mixed(a.uv.x, b.uv.x, c.uv.x), mixed(a.uv.y, b.uv.y, c.uv.y));
        Color& pixel = pixels_[index(x, y)];
        pixel.r += (channel(0) - pixel.r) * alpha;
        pixel.g += (channel(8) - pixel.g) * alpha;
        pixel.b += (channel(16) - pixel.b) * alpha;
      }
    }
  }

  int width_, height_;
  std::vector<Color> pixels_;
  unsigned char* type_ = nullptr;
  int type_width_ = 0, type_height_ = 0;
};

}  // namespace fw::test
