#include "figures/face_figure.hpp"

#include <algorithm>
#include <cmath>

#include "figures/hatch.hpp"
#include "figures/label_layout.hpp"
#include "figures/typeset.hpp"
#include "units/quantity.hpp"

namespace fw::figures {
namespace {

/// The face as it lies, y down, about the middle of all that is drawn of it.
struct Shape {
  std::vector<Vec2> corners;
  std::vector<Segment> lengths;  ///< beside the face's lengths
  Vec2 inside;                   ///< well inside, for the number
  Vec2 extent;
};

/// The same on the canvas.
struct Flat {
  std::vector<Vec2> corners;
  std::vector<Segment> lengths;
  Vec2 inside;
  Vec2 middle;
};

struct Labels {
  std::vector<std::string> texts;
  std::vector<Vec2> sizes;
};

/// One way to fit it all into the rectangle.
struct Arrangement {
  Flat flat;
  std::optional<Disc> number;  ///< none: the face is too thin to hold its number
  std::vector<PlacedLabel> labels;
  double score = 0;
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

bool same(const Segment& a, const Segment& b, double near) {
  return (glm::distance(a.from, b.from) < near && glm::distance(a.to, b.to) < near) ||
         (glm::distance(a.from, b.to) < near && glm::distance(a.to, b.from) < near);
}

/// Two lengths that were told of one and the same side are shown on two sides of that length, as a square's are.
void spread(Shape& shape) {
  for (std::size_t i = 1; i < shape.lengths.size(); ++i) {
    const double length = glm::distance(shape.lengths[i].from, shape.lengths[i].to);
    const double near = 1e-6 * length;
    const auto is_taken = [&](const Segment& s) {
      return std::any_of(shape.lengths.begin(), shape.lengths.begin() + static_cast<std::ptrdiff_t>(i),
                         [&](const Segment& earlier) { return same(earlier, s, near); });
    };
    const Vec2 told = shape.lengths[i].to - shape.lengths[i].from;
    // A neighboring side rather than the opposite one: a square's two lengths meet at a corner.
    for (const bool parallel : {false, true}) {
      for (std::size_t k = 0; is_taken(shape.lengths[i]) && k < shape.corners.size(); ++k) {
        const Segment side{shape.corners[k], shape.corners[(k + 1) % shape.corners.size()]};
        const Vec2 along = side.to - side.from;
        const bool is_parallel = std::abs(told.x * along.y - told.y * along.x) < near * length;
        const bool is_as_long = std::abs(glm::length(along) - length) < near;
        if (is_as_long && is_parallel == parallel && !is_taken(side)) shape.lengths[i] = side;
      }
    }
  }
}

Shape shape_of(const solids::Solid& solid, const solids::Face& face) {
  const auto [plane, polygon] = solid.body().flat(face.id);
  std::vector<Vec2> points = polygon;
  for (const solids::FaceLength& length : face.lengths) {
    points.push_back(plane.flat(length.from));
    points.push_back(plane.flat(length.to));
  }
  points.push_back(solid.body().label_point(face.id));
  const Rect box = bounding_rect(points);
  for (Vec2& p : points) p = {p.x - box.center().x, box.center().y - p.y};
  Shape shape;
  shape.corners.assign(points.begin(), points.begin() + static_cast<std::ptrdiff_t>(polygon.size()));
  for (std::size_t i = polygon.size(); i + 1 < points.size(); i += 2)
    shape.lengths.push_back({points[i], points[i + 1]});
  shape.inside = points.back();
  shape.extent = {box.w, box.h};
  spread(shape);
  return shape;
}

Flat placed(const Shape& shape, double scale, Vec2 center) {
  const auto at = [scale, center](Vec2 p) { return center + p * scale; };
  Flat flat;
  for (const Vec2& p : shape.corners) flat.corners.push_back(at(p));
  for (const Segment& s : shape.lengths) flat.lengths.push_back({at(s.from), at(s.to)});
  flat.inside = at(shape.inside);
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
std::optional<Disc> number_place(const solids::Face& face, const Flat& flat, double radius) {
  const auto free_at = [&](Vec2 p) {
    double room = room_at(flat, p);
    for (std::size_t i = 0; i < face.lengths.size(); ++i) {
      if (face.lengths[i].is_height) room = std::min(room, distance_to(flat.lengths[i], p));
    }
    return room;
  };
  for (double step = 0; step <= 4; step += 0.5) {
    for (const Vec2& direction : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}}) {
      const Vec2 p = flat.inside + direction * (step * radius);
      if (free_at(p) > radius * 1.1) return Disc{p, radius};
    }
  }
  // On a height, then, rather than nowhere.
  if (room_at(flat, flat.inside) > radius * 1.05) return Disc{flat.inside, radius};
  return std::nullopt;
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

std::vector<PlacedLabel> labels_around(const Labels& labels, const Arrangement& made, const Rect& rect,
                                       const Rect& number_box, const Palette& palette) {
  const Flat& flat = made.flat;
  LabelSurroundings around;
  around.viewport = rect;
  around.away_from = flat.middle;
  around.gap = palette.text_size * 0.2;
  around.lines = flat.lengths;
  if (made.number) {
    around.discs = {*made.number};
  } else {
    around.boxes = {number_box};
  }
  for (std::size_t i = 0; i < flat.corners.size(); ++i) {
    around.lines.push_back({flat.corners[i], flat.corners[(i + 1) % flat.corners.size()]});
  }
  std::vector<LabelRequest> requests;
  for (std::size_t i = 0; i < labels.texts.size(); ++i) requests.push_back({flat.lengths[i], labels.sizes[i]});
  return place_labels(requests, around);
}

/// How large and how readable: a label that is not clear, or needs a leader, must be worth a larger face.
double score_of(const Arrangement& made, const solids::Face& face, double share) {
  double score = share;
  for (std::size_t i = 0; i < made.labels.size(); ++i) {
    if (!made.labels[i].clear) score *= 0.3;
    if (made.labels[i].leader) score *= face.lengths[i].is_height ? 0.9 : 0.6;
    // Sides are labelled outside, as textbooks do.
    if (!face.lengths[i].is_height && geometry::contains(made.flat.corners, made.labels[i].center)) score *= 0.7;
  }
  return made.number ? score : score * 0.8;
}

/// Where the number stands when the face cannot hold it: the corner of the card.
Disc number_corner(const Rect& rect, double radius) { return {{rect.x + radius * 1.2, rect.y + radius * 1.2}, radius}; }

Arrangement arranged(const solids::Face& face, const Shape& shape, const Labels& labels, const Rect& rect,
                     const Palette& palette) {
  const double radius = palette.text_size * 0.66;
  const Disc corner = number_corner(rect, radius);
  const Rect number_box{corner.center.x - radius, corner.center.y - radius, 2 * radius, 2 * radius};
  const Rect room = rect.inset(palette.line_width * 2);
  const double largest = std::min(room.w / shape.extent.x, room.h / shape.extent.y);
  Arrangement best;
  for (double share = 1; share > 0.25 && share > best.score; share *= 0.86) {
    const Vec2 spare = Vec2{room.w, room.h} - shape.extent * (share * largest);
    for (const Vec2& side : {Vec2{0, 0}, Vec2{-1, 0}, Vec2{1, 0}, Vec2{0, -1}, Vec2{0, 1}}) {
      Arrangement made;
      made.flat = placed(shape, share * largest, room.center() + side * spare * 0.5);
      made.number = number_place(face, made.flat, radius);
      made.labels = labels_around(labels, made, rect, number_box, palette);
      made.score = score_of(made, face, share);
      if (made.score > best.score) best = std::move(made);
    }
  }
  return best;
}

void draw_labels(Canvas& canvas, const Labels& labels, const Arrangement& made, const Palette& palette) {
  for (std::size_t i = 0; i < made.labels.size(); ++i) {
    const PlacedLabel& label = made.labels[i];
    if (label.leader) canvas.line(label.leader->from, label.leader->to, {palette.ink, palette.line_width * 0.6});
    const Rect box{label.center.x - labels.sizes[i].x / 2, label.center.y - labels.sizes[i].y / 2, labels.sizes[i].x,
                   labels.sizes[i].y};
    // On a hatch a label stands on a plate of the ground's color.
    if (geometry::contains(made.flat.corners, label.center)) {
      canvas.rounded(box.inset(-palette.text_size * 0.1, palette.text_size * 0.12), palette.text_size * 0.2,
                     palette.ground, std::nullopt);
    }
    typeset(canvas, label.center, HAlign::Center, VAlign::Middle, labels.texts[i], label_style(palette));
  }
}

/// Labels may be as small as the smallest text where the card is narrow.
Palette fitting(Palette palette, const Rect& rect) {
  constexpr double smallest = 0.035 / 0.045;
  constexpr double wide_enough = 10;
  palette.text_size *= std::clamp(rect.w / (wide_enough * palette.text_size), smallest, 1.0);
  return palette;
}

}  // namespace

std::string face_length_label(const solids::Solid& solid, const solids::FaceLength& length) {
  const std::string text =
      length.mark ? solid.label(*length.mark) : units::text(units::Length::of(length.value, solid.unit()), 2);
  const bool is_about = text.rfind("≈", 0) == 0;
  return length.origin == solids::LengthOrigin::EqualEdge && !is_about ? "= " + text : text;
}

void draw_face(Canvas& canvas, const solids::Solid& solid, solids::FaceId id, const Rect& rect, const Palette& wished) {
  const Palette palette = fitting(wished, rect);
  const solids::Face& face = solid.faces()[id];
  const FaceStyle style = face_style(face.group, palette);
  const Labels labels = labels_of(canvas, solid, face, palette);
  const Arrangement made = arranged(face, shape_of(solid, face), labels, rect, palette);
  const std::vector<Vec2>& corners = made.flat.corners;
  canvas.polygon(corners, style.fill, std::nullopt);
  draw_hatch(canvas, corners, style.hatch, palette.text_size * 0.55, {style.hatch_ink, palette.line_width * 0.5});
  canvas.polygon(corners, std::nullopt, Stroke{palette.ink, palette.line_width});
  draw_lengths(canvas, face, made.flat, palette);
  const Disc number = made.number.value_or(number_corner(rect, palette.text_size * 0.66));
  draw_number_circle(canvas, number.center, number.radius, face_number(id), palette);
  draw_labels(canvas, labels, made, palette);
}

}  // namespace fw::figures
