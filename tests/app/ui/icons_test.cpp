#include "ui/icons.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>

#include "figures/label_layout.hpp"
#include "figures/recording_canvas.hpp"

// How icons look, each as a drawing in a square of 24 units: nobody should have to look twice.
namespace fw::ui::icons_test {
namespace {

using figures::RecordingCanvas;
using figures::Segment;

constexpr Color ink = Color::hex(0x1A1D26);
constexpr Color back = Color::hex(0xFBF9F4);
constexpr double width = 2;
constexpr Rect square{0, 0, 24, 24};

std::vector<Icon> all_icons() {
  std::vector<Icon> icons;
  for (int i = static_cast<int>(Icon::None) + 1; i <= static_cast<int>(Icon::Origin); ++i) {
    icons.push_back(static_cast<Icon>(i));
  }
  return icons;
}

std::string name(Icon icon) { return "icon " + std::to_string(static_cast<int>(icon)); }

using Drawing = std::vector<RecordingCanvas::Call>;

Drawing drawing(Icon icon, const Rect& where = square) {
  RecordingCanvas canvas;
  draw_icon(canvas, icon, where, ink, back, width);
  return canvas.calls();
}

std::vector<RecordingCanvas::Path> paths_of(const Drawing& drawing) {
  std::vector<RecordingCanvas::Path> paths;
  for (const auto& call : drawing) {
    if (const auto* path = std::get_if<RecordingCanvas::Path>(&call)) paths.push_back(*path);
  }
  return paths;
}

std::vector<Vec2> outline(const RecordingCanvas::Path& path) {
  std::vector<Vec2> points = path.points;
  if (path.closed) points.push_back(points.front());
  return points;
}

void add_lines(const std::vector<Vec2>& points, std::vector<Segment>& lines) {
  for (std::size_t i = 0; i + 1 < points.size(); ++i) lines.push_back({points[i], points[i + 1]});
}

/// The lines and rims of a drawing; of a text the box of its capitals.
std::vector<Segment> lines_of(const Drawing& drawing) {
  std::vector<Segment> lines;
  for (const auto& call : drawing) {
    std::vector<Vec2> points;
    if (const auto* circle = std::get_if<RecordingCanvas::Circle>(&call)) {
      constexpr int pieces = 32;
      for (int i = 0; i <= pieces; ++i) {
        const double angle = i * 2 * 3.141592653589793 / pieces;
        points.push_back(circle->center + circle->radius * Vec2{std::cos(angle), std::sin(angle)});
      }
    } else if (const auto* text = std::get_if<RecordingCanvas::Text>(&call)) {
      const Rect b = text->box.middle(text->box.w, 0.72 * text->style.size);
      points = {{b.x, b.y}, {b.right(), b.y}, {b.right(), b.bottom()}, {b.x, b.bottom()}, {b.x, b.y}};
    } else {
      points = outline(std::get<RecordingCanvas::Path>(call));
    }
    add_lines(points, lines);
  }
  return lines;
}

double distance_to(const std::vector<Segment>& lines, Vec2 p) {
  double least = 1e9;
  for (const Segment& line : lines) {
    const Vec2 along = line.to - line.from;
    const double t = std::clamp(glm::dot(p - line.from, along) / std::max(1e-9, glm::dot(along, along)), 0.0, 1.0);
    least = std::min(least, glm::distance(p, line.from + along * t));
  }
  return least;
}

/// Whether no point of these lines lies farther than this from the others.
bool lie_on(const std::vector<Segment>& lines, const std::vector<Segment>& others, double far) {
  return std::all_of(lines.begin(), lines.end(), [&](const Segment& line) {
    const int steps = 1 + static_cast<int>(glm::distance(line.from, line.to));
    for (int k = 0; k <= steps; ++k) {
      if (distance_to(others, glm::mix(line.from, line.to, 1.0 * k / steps)) > far) return false;
    }
    return true;
  });
}

bool are_alike(const std::vector<Segment>& a, const std::vector<Segment>& b, double far = 0.3) {
  return lie_on(a, b, far) && lie_on(b, a, far);
}

using Turn = std::function<Vec2(Vec2)>;
const Turn left_right = [](Vec2 p) { return Vec2{24 - p.x, p.y}; };
const Turn up_down = [](Vec2 p) { return Vec2{p.x, 24 - p.y}; };
const Turn quarter = [](Vec2 p) { return Vec2{24 - p.y, p.x}; };

bool turn_into(Icon a, Icon b, const Turn& turn) {
  std::vector<Segment> turned = lines_of(drawing(a));
  for (Segment& line : turned) line = {turn(line.from), turn(line.to)};
  return are_alike(turned, lines_of(drawing(b)));
}

TEST(Icons, StayInTheirSquareFillItAndStandInItsMiddle) {
  for (const Icon icon : all_icons()) {
    std::vector<Vec2> points;
    for (const Segment& line : lines_of(drawing(icon))) points.insert(points.end(), {line.from, line.to});
    ASSERT_FALSE(points.empty()) << name(icon) << " shows nothing";
    const Rect box = figures::bounding_rect(points);
    EXPECT_TRUE(square.contains(box, 0.01)) << name(icon) << " sticks out";
    EXPECT_GE(std::max(box.w, box.h), 14) << name(icon) << " is too small to be seen from the back";
    EXPECT_LE(glm::distance(box.center(), square.center()), 2.6) << name(icon) << " stands aside";
  }
}

TEST(Icons, AreDrawnInInkAndInTheGroundsColorAlone) {
  for (const Icon icon : all_icons()) {
    const Drawing calls = drawing(icon);
    for (const auto& call : calls) {
      if (const auto* path = std::get_if<RecordingCanvas::Path>(&call)) {
        EXPECT_TRUE(!path->fill || *path->fill == ink) << name(icon);
        EXPECT_TRUE(path->fill.has_value() ||
                    (path->stroke && path->stroke->color == ink && path->stroke->width == width))
            << name(icon);
      } else if (const auto* circle = std::get_if<RecordingCanvas::Circle>(&call)) {
        EXPECT_TRUE(!circle->fill || *circle->fill == ink || (icon == Icon::Slate && *circle->fill == back));
        EXPECT_TRUE(circle->fill.has_value() || (circle->stroke && circle->stroke->color == ink)) << name(icon);
      } else {
        EXPECT_EQ(std::get<RecordingCanvas::Text>(call).style.color, ink) << name(icon);
        EXPECT_TRUE(std::get<RecordingCanvas::Text>(call).style.bold) << name(icon);
      }
    }
  }
}

TEST(Icons, AreTheSameAtAnyPlaceAndSize) {
  for (const Icon icon : all_icons()) {
    std::vector<Segment> lines = lines_of(drawing(icon));
    for (Segment& line : lines) line = {Vec2{100, 50} + 2.0 * line.from, Vec2{100, 50} + 2.0 * line.to};
    EXPECT_TRUE(are_alike(lines, lines_of(drawing(icon, {100, 50, 48, 48})))) << name(icon);
  }
}

TEST(Icons, ThatLookTheSameBothWaysDoSo) {
  using enum Icon;
  for (const Icon icon :
       {Fold,  Unfold,       Pause,   Stop,    Together, Fit,  FullScreen, Plus, Minus, Grid, Close,   Cross,
        Blank, NumberCircle, Letters, Present, Paper,    Save, Printer,    Help, Eye,   Gap,  Measures}) {
    EXPECT_TRUE(turn_into(icon, icon, left_right)) << name(icon) << " is not alike on the left and on the right";
  }
  for (const Icon icon : {Unfold, Play,  Pause, Stop, Previous, Next, Fit,    FullScreen, Plus, Minus,
                          Close,  Cross, Blank, Grid, Letters,  Rail, Motion, Paper,      Gap,  NumberCircle}) {
    EXPECT_TRUE(turn_into(icon, icon, up_down)) << name(icon) << " is not alike above and below";
  }
  for (const Icon icon : {Unfold, Stop, Fit, FullScreen, Plus, Close, Cross, Grid, Paper}) {
    EXPECT_TRUE(turn_into(icon, icon, quarter)) << name(icon) << " changes with a quarter turn";
  }
}

TEST(Icons, AnEyeHasItsPupilBetweenItsLids) {
  const Turn about_the_lids = [](Vec2 p) { return Vec2{p.x, 23 - p.y}; };
  EXPECT_TRUE(turn_into(Icon::Eye, Icon::Eye, about_the_lids));
}

TEST(Icons, ForTheOtherWayAreTheMirrorImage) {
  using enum Icon;
  EXPECT_TRUE(turn_into(Previous, Next, left_right));
  EXPECT_TRUE(turn_into(TurnLeft, TurnRight, left_right));
  EXPECT_TRUE(turn_into(Undo, Redo, left_right));
  EXPECT_TRUE(turn_into(TurnUp, TurnDown, up_down));
}

/// What lines alone don't tell: how many shapes are filled, how many dashed, and what is written.
std::string beside_lines(Icon icon) {
  std::string told;
  const Drawing calls = drawing(icon);
  for (const auto& call : calls) {
    const auto* path = std::get_if<RecordingCanvas::Path>(&call);
    const auto* text = std::get_if<RecordingCanvas::Text>(&call);
    told += text != nullptr ? text->text : path != nullptr && path->fill ? "filled " : "";
    told += path != nullptr && path->stroke && path->stroke->dash > 0 ? "dashed " : "";
  }
  return told;
}

TEST(Icons, AreAllDifferent) {
  const std::vector<Icon> icons = all_icons();
  for (std::size_t i = 0; i < icons.size(); ++i) {
    for (std::size_t k = i + 1; k < icons.size(); ++k) {
      const bool same_on_purpose = icons[i] == Icon::Close && icons[k] == Icon::Cross;
      const bool alike = beside_lines(icons[i]) == beside_lines(icons[k]) &&
                         are_alike(lines_of(drawing(icons[i])), lines_of(drawing(icons[k])), 1.5);
      EXPECT_EQ(alike, same_on_purpose) << name(icons[i]) << " and " << name(icons[k]);
    }
  }
}

// On a projector a line that is nearly level looks like a mistake. Arcs and rims are chains of many short lines, and an
// arrow head points where it has to.
TEST(Icons, HaveLinesThatAreLevelUprightOrClearlySlanted) {
  for (const Icon icon : all_icons()) {
    const std::vector<RecordingCanvas::Path> paths = paths_of(drawing(icon));
    for (const auto& path : paths) {
      const std::vector<Vec2> points = outline(path);
      const bool is_head = path.fill && path.points.size() == 3;
      if (path.points.size() > 8 || is_head) continue;
      for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Vec2 along = glm::abs(points[i + 1] - points[i]);
        ASSERT_GT(glm::length(along), 0) << name(icon);
        const double slant = std::min(along.x, along.y) / glm::length(along);
        EXPECT_TRUE(slant < 0.01 || slant > 0.2) << name(icon) << " has a line that is off by a little";
      }
    }
  }
}

TEST(Icons, HalfADiscHasItsRimOnTheRingAroundIt) {
  const Drawing half = drawing(Icon::BrightRoom);
  const auto& ring = std::get<RecordingCanvas::Circle>(half.front());
  const std::vector<RecordingCanvas::Path> paths = paths_of(half);
  for (const auto& path : paths) {
    for (const Vec2& p : path.points) EXPECT_NEAR(glm::distance(p, ring.center), ring.radius, 0.2);
    EXPECT_NEAR(path.points.front().x, ring.center.x, 0.01);
    EXPECT_NEAR(path.points.back().x, ring.center.x, 0.01);
  }
}

// Arrows are read by their heads: each stands at the end of its line and is large enough.
TEST(Icons, ThatTurnOrLeadSomewhereHaveAnArrowHead) {
  using enum Icon;
  for (const Icon icon : {TurnLeft, TurnRight, TurnUp, TurnDown, Undo, Redo, Save, Origin, Together}) {
    const std::vector<RecordingCanvas::Path> paths = paths_of(drawing(icon));
    std::size_t heads = 0;
    for (const auto& path : paths) {
      if (!path.fill || path.points.size() != 3) continue;
      ++heads;
      Drawing others;
      for (const auto& other : paths) {
        if (!other.fill) others.emplace_back(other);
      }
      const double long_side = glm::distance(path.points[0], path.points[1]);
      EXPECT_NEAR(long_side, glm::distance(path.points[0], path.points[2]), 0.01) << name(icon);
      EXPECT_GE(long_side, 4) << name(icon);
      EXPECT_LE(glm::distance(path.points[1], path.points[2]), 1.1 * long_side) << name(icon);
      const Vec2 middle = (path.points[0] + path.points[1] + path.points[2]) / 3.0;
      EXPECT_LE(distance_to(lines_of(others), middle), 2.6) << name(icon) << " has a head that floats";
    }
    EXPECT_EQ(heads, icon == Together ? 2U : 1U) << name(icon);
  }
}

}  // namespace
}  // namespace fw::ui::icons_test
