#include "figures/face_figure.hpp"

#include <algorithm>
#include <cmath>

#include "figures/hatch.hpp"
#include "figures/label_layout.hpp"
#include "figures/typeset.hpp"
#include "geometry/polyhedron.hpp"
#include "units/quantity.hpp"

namespace fw::figures {
namespace {

/// The face on the canvas, with its lengths in the same order as the face's.
struct Flat {
  std::vector<Vec2> corners;
  std::vector<Segment> lengths;
  Vec2 middle;
};

struct Labels {
  std::vector<std::string> texts;
  std::vector<Vec2> sizes;
};

TextStyle label_style(const Palette& palette) { return {palette.text_size, palette.ink}; }

Labels labels_of(const Canvas& canvas, const solids::Solid& solid, const solids::Face& face, const Palette& palette) {
  Labels labels;
  for (const solids::FaceLength& length : face.lengths) {
    labels.texts.push_back(face_length_label(solid, length));
    labels.sizes.push_back(typeset_size(canvas, labels.texts.back(), label_style(palette)));
  }
  return labels;
}

Flat flat_on_canvas(const solids::Solid& solid, const solids::Face& face, const Labels& labels, const Rect& rect,
                    const Palette& palette) {
  const geometry::FacePlane plane = geometry::face_plane(solid.polyhedron(), face.id);
  std::vector<Vec2> points = geometry::flat_face(solid.polyhedron(), face.id);
  const std::size_t corner_count = points.size();
  for (const solids::FaceLength& length : face.lengths) {
    points.push_back(plane.flat(length.from));
    points.push_back(plane.flat(length.to));
  }
  // Room for the labels around, though never more than the face itself needs to be seen.
  double widest = 0;
  for (const Vec2& size : labels.sizes) widest = std::max(widest, size.x);
  const double margin_x = std::min(widest + palette.text_size * 0.6, rect.w * 0.3);
  const double margin_y = std::min(palette.text_size * 1.8, rect.h * 0.25);
  const Rect box = bounding_rect(points);
  const double scale = std::min((rect.w - 2 * margin_x) / box.w, (rect.h - 2 * margin_y) / box.h);
  for (Vec2& p : points) {
    p = {rect.center().x + (p.x - box.center().x) * scale, rect.center().y - (p.y - box.center().y) * scale};
  }
  Flat flat{{points.begin(), points.begin() + static_cast<std::ptrdiff_t>(corner_count)}, {}, {}};
  for (std::size_t i = corner_count; i + 1 < points.size(); i += 2) flat.lengths.push_back({points[i], points[i + 1]});
  flat.middle = bounding_rect(flat.corners).center();
  return flat;
}

double distance_to(const Segment& s, Vec2 p) {
  const Vec2 along = s.to - s.from;
  const double length = glm::dot(along, along);
  const double t = length > 0 ? std::clamp(glm::dot(p - s.from, along) / length, 0.0, 1.0) : 0.0;
  return glm::distance(p, s.from + along * t);
}

double room_at(const Flat& flat, Vec2 p) {
  double room = geometry::contains(flat.corners, p) ? 1e9 : 0;
  for (std::size_t i = 0; i < flat.corners.size(); ++i) {
    room = std::min(room, distance_to({flat.corners[i], flat.corners[(i + 1) % flat.corners.size()]}, p));
  }
  return room;
}

/// A place for the number circle: well inside, and off the heights if there is room beside them.
Vec2 number_place(const solids::Face& face, const Flat& flat, double radius) {
  std::vector<Vec2> up = flat.corners;
  for (Vec2& p : up) p.y = -p.y;
  if (geometry::signed_area(up) < 0) std::reverse(up.begin(), up.end());
  const Vec2 best = [&up] {
    const Vec2 p = geometry::label_point(up);
    return Vec2{p.x, -p.y};
  }();
  const auto free_at = [&](Vec2 p) {
    double room = room_at(flat, p);
    for (std::size_t i = 0; i < face.lengths.size(); ++i) {
      if (face.lengths[i].is_height) room = std::min(room, distance_to(flat.lengths[i], p));
    }
    return room;
  };
  for (double step = 0; step <= 5; step += 0.25) {
    for (const Vec2& direction : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}}) {
      const Vec2 p = best + direction * (step * radius);
      if (free_at(p) > radius * 1.1) return p;
    }
  }
  return best;
}

bool is_side(const Flat& flat, const Segment& s) {
  const double near = 1e-6 * (1 + glm::distance(s.from, s.to));
  for (std::size_t i = 0; i < flat.corners.size(); ++i) {
    const Segment side{flat.corners[i], flat.corners[(i + 1) % flat.corners.size()]};
    if (distance_to(side, s.from) < near && distance_to(side, s.to) < near) return true;
  }
  return false;
}

/// A height whose foot lies beyond the face stands on its base's extension, drawn thin.
void draw_extension(Canvas& canvas, const Flat& flat, const Segment& height, const Stroke& stroke) {
  if (room_at(flat, height.to) > -1 && geometry::contains(flat.corners, height.to)) return;
  const Vec2 along = height.to - height.from;
  const Vec2* nearest = nullptr;
  for (const Vec2& corner : flat.corners) {
    const bool on_base = std::abs(glm::dot(corner - height.to, along)) < 1e-6 * glm::dot(along, along);
    if (on_base && (nearest == nullptr || glm::distance(corner, height.to) < glm::distance(*nearest, height.to))) {
      nearest = &corner;
    }
  }
  if (nearest != nullptr) canvas.line(*nearest, height.to, stroke);
}

void draw_lengths(Canvas& canvas, const solids::Face& face, const Flat& flat, const Palette& palette) {
  const Stroke dashed{palette.ink, palette.line_width, palette.line_width * 3};
  for (std::size_t i = 0; i < face.lengths.size(); ++i) {
    const Segment& s = flat.lengths[i];
    if (face.lengths[i].is_height && !is_side(flat, s)) {
      draw_extension(canvas, flat, s, {palette.ink, palette.line_width * 0.6, palette.line_width * 2});
      canvas.line(s.from, s.to, dashed);
      const Vec2 along = s.from - s.to;
      Vec2 beside{-along.y, along.x};
      if (glm::dot(beside, flat.middle - s.to) < 0) beside = -beside;
      const double size = std::min(palette.text_size * 0.42, glm::length(along) * 0.3);
      draw_right_angle(canvas, s.to, s.from, s.to + beside, size, {palette.ink, palette.line_width * 0.7});
    } else if (is_side(flat, s)) {
      canvas.line(s.from, s.to, {palette.ink, palette.line_width * 1.8});
    } else {
      canvas.line(s.from, s.to, dashed);
    }
  }
}

void draw_labels(Canvas& canvas, const Labels& labels, const Flat& flat, const Disc& number, const Rect& rect,
                 const Palette& palette) {
  LabelSurroundings around;
  around.viewport = rect;
  around.away_from = flat.middle;
  around.gap = palette.text_size * 0.2;
  around.discs = {number};
  around.lines = flat.lengths;
  for (std::size_t i = 0; i < flat.corners.size(); ++i) {
    around.lines.push_back({flat.corners[i], flat.corners[(i + 1) % flat.corners.size()]});
  }
  std::vector<LabelRequest> requests;
  for (std::size_t i = 0; i < labels.texts.size(); ++i) requests.push_back({flat.lengths[i], labels.sizes[i]});
  const std::vector<PlacedLabel> placed = place_labels(requests, around);
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const PlacedLabel& label = placed[i];
    if (label.leader) canvas.line(label.leader->from, label.leader->to, {palette.ink, palette.line_width * 0.6});
    const Rect box{label.center.x - labels.sizes[i].x / 2, label.center.y - labels.sizes[i].y / 2, labels.sizes[i].x,
                   labels.sizes[i].y};
    // On a hatch a label stands on a plate of the ground's color.
    if (geometry::contains(flat.corners, label.center)) {
      canvas.rounded(box.inset(-palette.text_size * 0.1, palette.text_size * 0.12), palette.text_size * 0.2,
                     palette.ground, std::nullopt);
    }
    typeset(canvas, label.center, HAlign::Center, VAlign::Middle, labels.texts[i], label_style(palette));
  }
}

}  // namespace

std::string face_length_label(const solids::Solid& solid, const solids::FaceLength& length) {
  const std::string text =
      length.mark ? solid.label(*length.mark) : units::text(units::Length::of(length.value, solid.unit()), 2);
  return length.origin == solids::LengthOrigin::EqualEdge ? "= " + text : text;
}

void draw_face(Canvas& canvas, const solids::Solid& solid, solids::FaceId id, const Rect& rect,
               const Palette& palette) {
  const solids::Face& face = solid.faces()[id];
  const FaceStyle style = face_style(face.group, palette);
  const Labels labels = labels_of(canvas, solid, face, palette);
  const Flat flat = flat_on_canvas(solid, face, labels, rect, palette);
  canvas.polygon(flat.corners, style.fill, std::nullopt);
  draw_hatch(canvas, flat.corners, style.hatch, palette.text_size * 0.55, {style.hatch_ink, palette.line_width * 0.5});
  canvas.polygon(flat.corners, std::nullopt, Stroke{palette.ink, palette.line_width});
  draw_lengths(canvas, face, flat, palette);
  const double radius = palette.text_size * 0.72;
  const Vec2 number = number_place(face, flat, radius);
  draw_number_circle(canvas, number, radius, face_number(id), palette);
  draw_labels(canvas, labels, flat, {number, radius}, rect, palette);
}

}  // namespace fw::figures
