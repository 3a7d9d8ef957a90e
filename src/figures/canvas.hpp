#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/color.hpp"
#include "geometry/vectors.hpp"

namespace fw::figures {

using geometry::Vec2;

/// An upright rectangle, y down.
struct Rect {
  double x = 0, y = 0, w = 0, h = 0;

  [[nodiscard]] double right() const { return x + w; }
  [[nodiscard]] double bottom() const { return y + h; }
  [[nodiscard]] Vec2 center() const { return {x + w / 2, y + h / 2}; }
  [[nodiscard]] bool contains(Vec2 p) const { return p.x >= x && p.x < right() && p.y >= y && p.y < bottom(); }
  /// Whether `other` lies inside, by no more than `slack` outside.
  [[nodiscard]] bool contains(const Rect& other, double slack = 0) const;
  /// Whether the insides meet by more than `slack`; touching is not overlapping.
  [[nodiscard]] bool overlaps(const Rect& other, double slack = 0) const;
  [[nodiscard]] Rect inset(double by) const { return {x + by, y + by, w - 2 * by, h - 2 * by}; }
  [[nodiscard]] Rect inset(double by_x, double by_y) const { return {x + by_x, y + by_y, w - 2 * by_x, h - 2 * by_y}; }
  [[nodiscard]] Rect moved(double by_x, double by_y) const { return {x + by_x, y + by_y, w, h}; }
  /// A rectangle of this size in the middle of this one.
  [[nodiscard]] Rect middle(double width, double height) const;
  friend bool operator==(const Rect&, const Rect&) = default;
};
/// What two rectangles share; of no size when they do not meet.
[[nodiscard]] Rect common_part(const Rect& a, const Rect& b);
/// The smallest rectangle round the points; nothing but zeros for none.
[[nodiscard]] Rect bounding_rect(const std::vector<Vec2>& points);

enum class CanvasUnit { Pixel, Millimeter };

/// How a line is drawn; widths and dashes in the canvas's unit.
struct Stroke {
  Color color{};
  double width = 1;
  double dash = 0;  ///< length of a dash, with a gap of 0.8 of it; 0: unbroken
  friend bool operator==(const Stroke&, const Stroke&) = default;
};

/// How a text is drawn. `size` is the em, of which capitals are about 0.7.
struct TextStyle {
  double size = 12;
  Color color{};
  bool bold = false;
  friend bool operator==(const TextStyle&, const TextStyle&) = default;
};
enum class HAlign { Left, Center, Right };
enum class VAlign { Top, Middle, Baseline, Bottom };

/// A text of one line fills a box of this many sizes' height, its baseline this many sizes below the top:
/// so chosen that capitals and digits stand in the middle of the box.
inline constexpr double line_height = 1.3;
inline constexpr double line_baseline = 1.01;

/// Where every flat drawing goes: a window, a page, a record for a test.
///
/// Shape: x to the right, y down. Units: those of unit(), which the canvas says.
class Canvas {
 public:
  Canvas() = default;
  Canvas(const Canvas&) = delete;
  Canvas& operator=(const Canvas&) = delete;
  virtual ~Canvas() = default;

  [[nodiscard]] virtual CanvasUnit unit() const = 0;
  virtual void line(Vec2 from, Vec2 to, const Stroke& stroke) = 0;
  virtual void polyline(const std::vector<Vec2>& points, const Stroke& stroke) = 0;
  /// Any simple polygon, in either direction.
  virtual void polygon(const std::vector<Vec2>& points, std::optional<Color> fill, std::optional<Stroke> stroke) = 0;
  virtual void rounded(const Rect& rect, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) = 0;
  virtual void circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) = 0;
  /// Angles from +x toward +y (clockwise as seen), in radians.
  virtual void arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) = 0;
  /// One line of UTF-8 text as it stands, its box hung on `anchor`. Use typeset() for text that may hold powers.
  virtual void text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) = 0;
  /// Width of the text; height is line_height sizes.
  [[nodiscard]] virtual Vec2 text_size(std::string_view text, const TextStyle& style) const = 0;
  /// Nothing is drawn outside `rect` (nor outside the clips around it) until pop_clip().
  virtual void push_clip(const Rect& rect) = 0;
  virtual void pop_clip() = 0;
};

/// One stroke along these points, so that its dashes run through. Requires: two points or more.
void draw_stroke(Canvas& canvas, const std::vector<Vec2>& points, const Stroke& stroke);

/// Where the box of a text of this size hangs when anchored so.
[[nodiscard]] Rect text_box(Vec2 anchor, HAlign h, VAlign v, Vec2 size, double em);

}  // namespace fw::figures
