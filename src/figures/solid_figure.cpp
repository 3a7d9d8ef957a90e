#include "figures/solid_figure.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "figures/label_layout.hpp"
#include "figures/net_sketch.hpp"
#include "figures/typeset.hpp"
#include "solids/body/sight.hpp"

namespace fw::figures {
namespace {

using geometry::Vec3;
using solids::Mark;
using solids::MarkPlace;
using solids::SightLine;

/// A view from far away.
struct FarView {
  Vec3 toward_viewer, right, up;
  [[nodiscard]] Vec2 seen(Vec3 p) const { return {glm::dot(p, right), glm::dot(p, up)}; }
};

FarView far_view(double turn_degrees, double rise_degrees) {
  const double turn = turn_degrees * std::numbers::pi / 180;
  const double rise = rise_degrees * std::numbers::pi / 180;
  const Vec3 toward{std::sin(turn) * std::cos(rise), -std::cos(turn) * std::cos(rise), std::sin(rise)};
  const Vec3 right{std::cos(turn), std::sin(turn), 0};
  return {toward, right, glm::cross(toward, right)};
}

/// The ways in which a textbook shows a solid, the most usual first.
std::vector<FarView> views() {
  std::vector<FarView> all;
  for (const double rise : {19.0, 27.0, 14.0}) {
    for (const double turn : {27.0, 36.0, 18.0, -27.0}) {
      all.push_back(far_view(turn, rise));
    }
  }
  return all;
}

double distance_to(Vec2 p, Vec2 a, Vec2 b) {
  const Vec2 way = b - a;
  const double length = glm::dot(way, way);
  const double share = length > 0 ? std::clamp(glm::dot(p - a, way) / length, 0.0, 1.0) : 0;
  return glm::length(p - (a + way * share));
}

/// The least inner angle of a face as it is seen, in radians.
double least_angle(const FarView& view, const std::vector<Vec3>& outline) {
  double least = std::numbers::pi;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vec2 corner = view.seen(outline[i]);
    const Vec2 a = view.seen(outline[(i + 1) % outline.size()]) - corner;
    const Vec2 b = view.seen(outline[(i + outline.size() - 1) % outline.size()]) - corner;
    const double lengths = glm::length(a) * glm::length(b);
    least = std::min(least, lengths > 0 ? std::acos(std::clamp(glm::dot(a, b) / lengths, -1.0, 1.0)) : 0.0);
  }
  return least;
}

/// How much a view hides; 0 is best.
int faults_of(const FarView& view, const solids::Body& body, const solids::Sight& sight) {
  constexpr double sliver = 12 * std::numbers::pi / 180;
  std::vector<Vec2> corners;
  for (const SightLine& line : sight.lines) {
    corners.push_back(view.seen(line.from));
    corners.push_back(view.seen(line.to));
  }
  const Rect box = bounding_rect(corners);
  const double near = 0.03 * std::hypot(box.w, box.h);
  int faults = 0;
  for (const solids::FaceId face : body.faces_toward(view.toward_viewer)) {
    faults += least_angle(view, sight.faces[face.index()].outline) < sliver ? 3 : 0;
  }
  for (const SightLine& hidden : sight.lines) {
    for (const SightLine& line : sight.lines) {
      if (!hidden.hidden || line.hidden || hidden.is_curve || line.is_curve) continue;
      const Vec2 a = view.seen(line.from);
      const Vec2 b = view.seen(line.to);
      const Vec2 from = view.seen(hidden.from);
      const Vec2 to = view.seen(hidden.to);
      const bool covers =
          distance_to(from + (to - from) * 0.3, a, b) < near && distance_to(from + (to - from) * 0.7, a, b) < near;
      faults += covers ? 2 : 0;
      const double apart = std::min({glm::length(hidden.from - line.from), glm::length(hidden.from - line.to)});
      faults += apart > 1e-9 && std::min(glm::length(from - a), glm::length(from - b)) < near ? 1 : 0;
    }
  }
  return faults;
}

/// What is drawn, in the canvas's own coordinates.
struct Drawing {
  const solids::Solid* solid = nullptr;
  FarView view;
  solids::Sight sight;
  double scale = 1;
  Vec2 shift{};
  [[nodiscard]] Vec2 at(Vec3 p) const {
    const Vec2 q = view.seen(p);
    return {shift.x + q.x * scale, shift.y - q.y * scale};
  }
  [[nodiscard]] Segment at(Vec3 from, Vec3 to) const { return {at(from), at(to)}; }
  [[nodiscard]] bool has_curves() const { return !solid->body().is_flat_faced(); }
  [[nodiscard]] bool is_in_sight(Vec3 from, Vec3 to) const {
    const double slack = 1e-6 * glm::length(to - from);
    return std::any_of(sight.lines.begin(), sight.lines.end(), [&](const SightLine& line) {
      const auto joins = [&](Vec3 a, Vec3 b) {
        return glm::length(line.from - a) < slack && glm::length(line.to - b) < slack;
      };
      return !line.hidden && (joins(from, to) || joins(to, from));
    });
  }
};

Drawing fitted_drawing(const solids::Solid& solid, const Rect& rect) {
  Drawing best;
  int least = std::numeric_limits<int>::max();
  for (const FarView& view : views()) {
    solids::Sight sight = solids::seen_from_afar(solid.body(), view.toward_viewer);
    const int faults = faults_of(view, solid.body(), sight);
    if (faults < least) {
      least = faults;
      best = {&solid, view, std::move(sight)};
    }
    if (least == 0) break;
  }
  std::vector<Vec2> points;
  for (const SightLine& line : best.sight.lines) {
    points.push_back(best.view.seen(line.from));
    points.push_back(best.view.seen(line.to));
  }
  const Rect box = bounding_rect(points);
  best.scale = std::min(rect.w / std::max(box.w, 1e-12), rect.h / std::max(box.h, 1e-12));
  best.shift = {rect.center().x - box.center().x * best.scale, rect.center().y + box.center().y * best.scale};
  return best;
}

void draw_edges(Canvas& canvas, const Drawing& drawing, const SolidFigureLook& look) {
  const Stroke seen{look.ink, look.edge};
  const Stroke hidden{look.ink, look.hidden, look.hidden_dash};
  for (const bool pass : {true, false}) {
    for (const std::vector<SightLine>& stroke : drawing.sight.strokes()) {
      if (stroke.front().hidden != pass) continue;
      std::vector<Vec2> points{drawing.at(stroke.front().from)};
      for (const SightLine& line : stroke) points.push_back(drawing.at(line.to));
      draw_stroke(canvas, points, pass ? hidden : seen);
    }
  }
}

void draw_height(Canvas& canvas, const Drawing& drawing, const Mark& mark, const SolidFigureLook& look) {
  const Segment line = drawing.at(mark.from, mark.to);
  if (mark.place != MarkPlace::Edge) {
    canvas.line(line.from, line.to, {look.ink, look.hidden, look.height_dash});
  }
  if (glm::length(mark.square_to) <= 0) return;
  const double side = std::min(look.right_angle / drawing.scale, glm::length(mark.from - mark.to) * 0.3);
  const Vec3 up = glm::normalize(mark.from - mark.to) * side;
  const Vec3 aside = glm::normalize(mark.square_to) * side;
  canvas.polyline({drawing.at(mark.to + up), drawing.at(mark.to + up + aside), drawing.at(mark.to + aside)},
                  {look.ink, look.leader});
}

/// Edges in sight that the same letter stands for: the label may stand there as well.
std::vector<Segment> others_of(const Drawing& drawing, const Mark& mark) {
  std::vector<Segment> others;
  for (const SightLine& line : drawing.sight.lines) {  // a face that bends has no edge of that length, but an outline
    const double slack = 1e-6 * glm::length(mark.to - mark.from);
    const bool is_as_long = std::abs(glm::length(line.to - line.from) - glm::length(mark.to - mark.from)) < slack;
    if (line.is_curve && is_as_long && !line.hidden) others.push_back(drawing.at(line.from, line.to));
  }
  for (const solids::Face& face : drawing.solid->faces()) {
    for (const solids::FaceLength& length : face.lengths) {
      if (length.symbol == mark.symbol && !length.is_height && drawing.is_in_sight(length.from, length.to)) {
        others.push_back(drawing.at(length.from, length.to));
      }
    }
  }
  return others;
}

LabelSurroundings surroundings_of(const Drawing& drawing, const std::vector<const Mark*>& marks, const Rect& rect,
                                  const SolidFigureLook& look) {
  LabelSurroundings around;
  around.viewport = rect;
  around.gap = 0.4 * look.text_size;
  Vec2 sum{};
  for (const SightLine& line : drawing.sight.lines) {
    const Segment seen = drawing.at(line.from, line.to);
    sum += (seen.from + seen.to) * 0.5;
    around.lines.push_back(seen);
    if (!line.hidden) around.rivals.push_back(seen);
  }
  around.away_from = sum / static_cast<double>(std::max<std::size_t>(1, drawing.sight.lines.size()));
  for (const Mark* mark : marks) {
    if (mark->place != MarkPlace::Edge) around.lines.push_back(drawing.at(mark->from, mark->to));
  }
  for (const solids::FaceId face : drawing.solid->body().faces_toward(drawing.view.toward_viewer)) {
    around.faces.emplace_back();
    for (const Vec3& corner : drawing.sight.faces[face.index()].outline)
      around.faces.back().push_back(drawing.at(corner));
  }
  return around;
}

}  // namespace

void draw_solid_figure(Canvas& canvas, const solids::Solid& solid,
                       const std::vector<std::optional<std::string>>& labels, const Rect& rect,
                       const SolidFigureLook& look) {
  const TextStyle style{look.text_size, look.ink};
  std::vector<const Mark*> marks;
  std::vector<std::string> texts;
  double widest = 0;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (!labels[i]) continue;
    marks.push_back(&solid.marks()[solids::MarkId::at(i)]);
    texts.push_back(*labels[i]);
    widest = std::max(widest, typeset_size(canvas, texts.back(), style).x);
  }
  const double beside = marks.empty() ? look.edge : std::min(widest + 0.5 * look.text_size, 0.25 * rect.w);
  const double above = marks.empty() ? look.edge : std::min(1.4 * look.text_size, 0.2 * rect.h);
  const Drawing drawing = fitted_drawing(solid, rect.inset(beside, above));
  draw_edges(canvas, drawing, look);
  std::vector<LabelRequest> requests;
  for (std::size_t i = 0; i < marks.size(); ++i) {
    draw_height(canvas, drawing, *marks[i], look);
    const double height = (ink_above + ink_below) * look.text_size;
    requests.push_back({drawing.at(marks[i]->from, marks[i]->to), {typeset_size(canvas, texts[i], style).x, height}});
    if (marks[i]->place == MarkPlace::Edge) requests.back().others = others_of(drawing, *marks[i]);
    std::vector<Segment>& others = requests.back().others;
    if (!others.empty() && !drawing.is_in_sight(marks[i]->from, marks[i]->to) && drawing.has_curves()) {
      requests.back().segment = others.back();  // its own line is none of those that are drawn
      others.pop_back();
    }
  }
  const std::vector<PlacedLabel> placed = place_labels(requests, surroundings_of(drawing, marks, rect, look));
  for (std::size_t i = 0; i < placed.size(); ++i) {
    if (placed[i].leader) canvas.line(placed[i].leader->from, placed[i].leader->to, {look.ink, look.leader});
    typeset(canvas, placed[i].center, HAlign::Center, VAlign::Middle, texts[i], style);
  }
}

}  // namespace fw::figures
