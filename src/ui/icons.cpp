#include "ui/icons.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace fw::ui {
namespace {

constexpr double pi = std::numbers::pi;

/// Draws in a square of 24 by 24 units, y down.
class Pen {
 public:
  Pen(figures::Canvas& canvas, const Rect& square, Color ink, Color back, double width)
      : canvas_(canvas), square_(square), unit_(square.w / 24), ink_(ink), back_(back), width_(width) {}

  void path(const std::vector<Vec2>& points) { canvas_.polyline(placed(points), stroke()); }
  void loop(const std::vector<Vec2>& points) { canvas_.polygon(placed(points), std::nullopt, stroke()); }
  void solid(const std::vector<Vec2>& points) { canvas_.polygon(placed(points), ink_, std::nullopt); }
  void dashed(const std::vector<Vec2>& points) {
    Stroke thin = stroke();
    thin.dash = 2.2 * unit_;
    canvas_.polyline(placed(points), thin);
  }
  void ring(Vec2 center, double radius) { canvas_.circle(placed(center), radius * unit_, std::nullopt, stroke()); }
  void disc(Vec2 center, double radius) { canvas_.circle(placed(center), radius * unit_, ink_, std::nullopt); }
  void gap(Vec2 center, double radius) { canvas_.circle(placed(center), radius * unit_, back_, std::nullopt); }
  void arc(Vec2 center, double radius, double from, double to) {
    canvas_.arc(placed(center), radius * unit_, from, to, stroke());
  }
  void word(std::string_view text, Vec2 center, double size) {
    canvas_.text(placed(center), HAlign::Center, VAlign::Middle, text, {size * unit_, ink_, true});
  }
  /// A filled arrow head at `tip`, pointing along `angle`.
  void head(Vec2 tip, double angle, double size = 5) {
    const auto corner = [&](double turn) {
      return Vec2{tip.x - size * std::cos(angle + turn), tip.y - size * std::sin(angle + turn)};
    };
    solid({tip, corner(0.52), corner(-0.52)});
  }
  /// An arc with an arrow head at its end.
  void turn(Vec2 center, double from, double to) {
    constexpr double radius = 11;
    arc(center, radius, std::min(from, to), std::max(from, to));
    const Vec2 end = center + radius * Vec2{std::cos(to), std::sin(to)};
    const double angle = to + (to > from ? 0.5 : -0.5) * pi;
    head(end + 3.0 * Vec2{std::cos(angle), std::sin(angle)}, angle, 8);
  }

 private:
  [[nodiscard]] Vec2 placed(Vec2 p) const { return {square_.x + p.x * unit_, square_.y + p.y * unit_}; }
  [[nodiscard]] std::vector<Vec2> placed(std::vector<Vec2> points) const {
    for (Vec2& p : points) p = placed(p);
    return points;
  }
  [[nodiscard]] Stroke stroke() const { return {ink_, width_}; }

  figures::Canvas& canvas_;
  Rect square_;
  double unit_;
  Color ink_, back_;
  double width_;
};

void draw_folding(Pen& pen, Icon icon) {
  switch (icon) {
    case Icon::Fold:
      pen.loop({{12, 3}, {21.5, 20}, {2.5, 20}});
      break;
    case Icon::Unfold:
      pen.loop({{8, 8}, {16, 8}, {16, 16}, {8, 16}});
      pen.path({{8, 8}, {12, 1}, {16, 8}, {23, 12}, {16, 16}, {12, 23}, {8, 16}, {1, 12}, {8, 8}});
      break;
    case Icon::Play:
      pen.solid({{6, 3.5}, {20.5, 12}, {6, 20.5}});
      break;
    case Icon::Pause:
      pen.solid({{5.5, 4}, {10, 4}, {10, 20}, {5.5, 20}});
      pen.solid({{14, 4}, {18.5, 4}, {18.5, 20}, {14, 20}});
      break;
    case Icon::Stop:
      pen.solid({{5, 5}, {19, 5}, {19, 19}, {5, 19}});
      break;
    case Icon::OneByOne:
      pen.loop({{3, 13}, {10, 13}, {10, 20}, {3, 20}});
      pen.path({{10, 13}, {15, 6}, {21, 10}, {10, 20}});
      pen.dashed({{3, 13}, {3, 5}, {10, 5}, {10, 13}});
      break;
    case Icon::Together:
      pen.path({{7, 17}, {2, 7}});
      pen.path({{7, 17}, {17, 17}, {22, 7}});
      pen.head({2, 7}, -2.03);
      pen.head({22, 7}, -1.11);
      break;
    default:
      break;
  }
}

void draw_turning(Pen& pen, Icon icon) {
  switch (icon) {
    case Icon::Previous:
      pen.path({{15.5, 4}, {7.5, 12}, {15.5, 20}});
      break;
    case Icon::Next:
      pen.path({{8.5, 4}, {16.5, 12}, {8.5, 20}});
      break;
    // The near side of the solid goes the way of the arrow.
    case Icon::TurnLeft:
      pen.turn({12, 4}, 0.18 * pi, 0.8 * pi);
      break;
    case Icon::TurnRight:
      pen.turn({12, 4}, 0.82 * pi, 0.2 * pi);
      break;
    case Icon::TurnUp:
      pen.turn({5, 12}, 0.32 * pi, -0.3 * pi);
      break;
    case Icon::TurnDown:
      pen.turn({5, 12}, -0.32 * pi, 0.3 * pi);
      break;
    case Icon::Undo:
      pen.path({{7, 8}, {15, 8}});
      pen.arc({15, 13.5}, 5.5, -0.5 * pi, 0.5 * pi);
      pen.path({{15, 19}, {8, 19}});
      pen.head({2.5, 8}, pi, 7);
      break;
    case Icon::Redo:
      pen.path({{17, 8}, {9, 8}});
      pen.arc({9, 13.5}, 5.5, 0.5 * pi, 1.5 * pi);
      pen.path({{9, 19}, {16, 19}});
      pen.head({21.5, 8}, 0, 7);
      break;
    case Icon::Flip:
      pen.dashed({{12, 2}, {12, 22}});
      pen.loop({{9, 5}, {9, 19}, {2, 19}});
      pen.solid({{15, 5}, {15, 19}, {22, 19}});
      break;
    default:
      break;
  }
}

void draw_viewing(Pen& pen, Icon icon) {
  const auto lens = [&pen] {
    pen.ring({10, 10}, 7);
    pen.path({{15, 15}, {21.5, 21.5}});
  };
  switch (icon) {
    case Icon::ZoomIn:
      lens();
      pen.path({{6.5, 10}, {13.5, 10}});
      pen.path({{10, 6.5}, {10, 13.5}});
      break;
    case Icon::ZoomOut:
      lens();
      pen.path({{6.5, 10}, {13.5, 10}});
      break;
    case Icon::Fit:
      pen.path({{3, 8.5}, {3, 3}, {8.5, 3}});
      pen.path({{15.5, 3}, {21, 3}, {21, 8.5}});
      pen.path({{21, 15.5}, {21, 21}, {15.5, 21}});
      pen.path({{8.5, 21}, {3, 21}, {3, 15.5}});
      pen.solid({{8.5, 8.5}, {15.5, 8.5}, {15.5, 15.5}, {8.5, 15.5}});
      break;
    case Icon::FullScreen:
      pen.path({{3, 9}, {3, 3}, {9, 3}});
      pen.path({{15, 3}, {21, 3}, {21, 9}});
      pen.path({{21, 15}, {21, 21}, {15, 21}});
      pen.path({{9, 21}, {3, 21}, {3, 15}});
      break;
    case Icon::Eye:
    case Icon::EyeClosed:
      pen.arc({12, 18}, 11.5, -0.84 * pi, -0.16 * pi);
      pen.arc({12, 5}, 11.5, 0.16 * pi, 0.84 * pi);
      pen.disc({12, 11.6}, 3.4);
      if (icon == Icon::EyeClosed) pen.path({{4, 20}, {20, 3}});
      break;
    default:
      break;
  }
}

void draw_writing(Pen& pen, Icon icon) {
  switch (icon) {
    case Icon::NumberCircle:
      pen.ring({12, 12}, 9.5);
      pen.word("1", {12, 12}, 14);
      break;
    case Icon::Letters:
      pen.loop({{3, 3}, {21, 3}, {21, 21}, {3, 21}});
      pen.word("A", {12, 12}, 15);
      break;
    case Icon::Grid:
      pen.loop({{3, 3}, {21, 3}, {21, 21}, {3, 21}});
      for (const double at : {9.0, 15.0}) {
        pen.path({{at, 3}, {at, 21}});
        pen.path({{3, at}, {21, at}});
      }
      break;
    case Icon::Measures:
      pen.loop({{2, 8}, {22, 8}, {22, 16}, {2, 16}});
      for (const double at : {6.0, 10.0, 14.0, 18.0}) pen.path({{at, 8}, {at, 12}});
      break;
    case Icon::Board:  // two lines of work on it
      pen.loop({{2, 3}, {22, 3}, {22, 19}, {2, 19}});
      pen.path({{6, 8}, {14, 8}});
      pen.path({{6, 13.5}, {18, 13.5}});
      pen.path({{8, 22}, {16, 22}});
      break;
    default:
      break;
  }
}

void draw_rooms(Pen& pen, Icon icon) {
  switch (icon) {
    case Icon::Paper:  // a sun
      pen.ring({12, 12}, 4.5);
      for (int i = 0; i < 8; ++i) {
        const double a = i * pi / 4;
        const Vec2 ray{std::cos(a), std::sin(a)};
        pen.path({Vec2{12, 12} + ray * 7.5, Vec2{12, 12} + ray * 11.0});
      }
      break;
    case Icon::Slate:  // a moon
      pen.disc({12, 12}, 9);
      pen.gap({16, 9}, 7.5);
      break;
    case Icon::BrightRoom:  // half white, half black
      pen.ring({12, 12}, 9.5);
      pen.solid({{12, 2.5},
                 {15.6, 3.2},
                 {18.7, 5.3},
                 {20.8, 8.4},
                 {21.5, 12},
                 {20.8, 15.6},
                 {18.7, 18.7},
                 {15.6, 20.8},
                 {12, 21.5}});
      break;
    case Icon::Present:
      pen.loop({{2, 4}, {22, 4}, {22, 16}, {2, 16}});
      pen.path({{12, 16}, {12, 19}});
      pen.path({{7, 22}, {12, 18}, {17, 22}});
      break;
    case Icon::Blank:
      pen.solid({{2, 5}, {22, 5}, {22, 19}, {2, 19}});
      break;
    case Icon::Motion:
      for (const double y : {6.0, 12.0, 18.0}) pen.path({{y == 12.0 ? 2.0 : 5.0, y}, {11, y}});
      pen.loop({{14, 5}, {22, 5}, {22, 19}, {14, 19}});
      break;
    case Icon::Rail:
      for (const double y : {5.0, 12.0, 19.0}) {
        pen.disc({4.5, y}, 2);
        pen.path({{9.5, y}, {21.5, y}});
      }
      break;
    default:
      break;
  }
}

void draw_marks(Pen& pen, Icon icon) {
  switch (icon) {
    case Icon::Shelf:
      pen.path({{2, 21}, {22, 21}});
      pen.loop({{3, 11}, {10, 11}, {10, 20}, {3, 20}});
      pen.loop({{17, 6}, {21.5, 20}, {12.5, 20}});
      pen.path({{2, 4}, {12, 4}});
      break;
    case Icon::Close:
    case Icon::Cross:
      pen.path({{5, 5}, {19, 19}});
      pen.path({{19, 5}, {5, 19}});
      break;
    case Icon::Plus:
      pen.path({{12, 4}, {12, 20}});
      pen.path({{4, 12}, {20, 12}});
      break;
    case Icon::Minus:
      pen.path({{4, 12}, {20, 12}});
      break;
    case Icon::Check:
      pen.path({{4, 13}, {9.5, 19}, {20, 5}});
      break;
    case Icon::Gap:
      pen.dashed({{3, 6}, {21, 6}, {21, 18}, {3, 18}, {3, 6}});
      break;
    case Icon::Origin:  // a number, and the arrow back from it
      pen.word("7", {17, 7}, 15);
      pen.path({{15, 20}, {6, 20}, {6, 12}});
      pen.head({6, 8}, -0.5 * pi, 7);
      break;
    case Icon::Open:
      pen.path({{2, 20}, {2, 5}, {9, 5}, {11, 8}, {19, 8}, {19, 11}});
      pen.loop({{6, 11}, {23, 11}, {19, 20}, {2, 20}});
      break;
    case Icon::Save:
      pen.path({{12, 3}, {12, 13}});
      pen.head({12, 16}, 0.5 * pi, 7);
      pen.path({{3, 14}, {3, 21}, {21, 21}, {21, 14}});
      break;
    case Icon::Printer:
      pen.path({{7, 8}, {7, 2}, {17, 2}, {17, 8}});
      pen.path({{7, 17}, {2, 17}, {2, 8}, {22, 8}, {22, 17}, {17, 17}});
      pen.loop({{7, 14}, {17, 14}, {17, 22}, {7, 22}});
      break;
    case Icon::Help:
      pen.ring({12, 12}, 10);
      pen.word("?", {12, 12}, 16);
      break;
    default:
      break;
  }
}

}  // namespace

void draw_icon(figures::Canvas& canvas, Icon icon, const Rect& square, Color ink, Color back, double width) {
  Pen pen(canvas, square, ink, back, width);
  draw_folding(pen, icon);
  draw_turning(pen, icon);
  draw_viewing(pen, icon);
  draw_writing(pen, icon);
  draw_rooms(pen, icon);
  draw_marks(pen, icon);
}

}  // namespace fw::ui
