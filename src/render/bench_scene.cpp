#include "render/bench_scene.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"
#include "render/face_order.hpp"

namespace fw::render {
namespace {

using geometry::Polygon;
using geometry::Vec2;

Vec3 normal_of(const std::vector<Vec3>& corners) {
  Vec3 sum{};
  for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
    sum += glm::cross(corners[i] - corners[0], corners[i + 1] - corners[0]);
  }
  return glm::length(sum) > 0 ? glm::normalize(sum) : Vec3(0, 0, 1);
}

/// The face in its own plane, first side level.
Polygon along_first_side(const std::vector<Vec3>& corners, Vec3 normal) {
  const Vec3 right = glm::normalize(corners[1] - corners[0]);
  const Vec3 up = glm::cross(normal, right);
  Polygon flat;
  for (const Vec3& corner : corners) {
    flat.push_back({glm::dot(corner - corners[0], right), glm::dot(corner - corners[0], up)});
  }
  return flat;
}

std::array<float, 3> near_origin(Vec3 point, Vec3 origin) {
  const Vec3 offset = point - origin;
  return {static_cast<float>(offset.x), static_cast<float>(offset.y), static_cast<float>(offset.z)};
}

/// A side of one face or of two, with its look.
struct DrawnSide {
  Vec3 from{}, to{};
  Stroke stroke;
  std::optional<Stroke> hidden;
  bool is_outline = false;
  bool faces_eye = false;  ///< one of its faces does
  int owners = 1;
};

class SceneMaker {
 public:
  SceneMaker(const BenchLook& look, const Camera& camera) : look_(look) {
    ensure(look.looks.size() == look.faces.size(), "every face of the bench has a look");
    ensure(look.flat_faces.empty() || look.flat_faces.size() == look.faces.size(),
           "the bench's faces and their flat forms are as many");
    scene_.camera = camera;
    scene_.origin = camera.target;
  }

  [[nodiscard]] Scene made() && {
    lift_faces();
    std::vector<std::vector<Vec3>> shown_corners;
    for (const std::size_t face : shown_) shown_corners.push_back(corners_[face]);
    if (!shown_.empty()) {
      for (const std::size_t place : back_to_front(shown_corners, scene_.camera)) add_face(shown_[place]);
    }
    add_edges();
    for (const LineLook& line : look_.lines) add_line(line.from, line.to, line.stroke, line.hidden);
    return std::move(scene_);
  }

 private:
  void lift_faces() {
    for (std::size_t face = 0; face < look_.faces.size(); ++face) {
      ensure(look_.faces[face].size() >= 3, "a face of the bench has three corners or more");
      std::vector<Vec3> corners = look_.faces[face];
      normals_.push_back(normal_of(corners));
      for (Vec3& corner : corners) {
        corner += normals_.back() * look_.looks[face].lift;
        size_ = std::max(size_, glm::length(corner - scene_.origin));
      }
      corners_.push_back(std::move(corners));
      if (look_.looks[face].is_shown) shown_.push_back(face);
    }
  }

  void add_face(std::size_t face) {
    const FaceLook& look = look_.looks[face];
    const std::vector<Vec3>& corners = corners_[face];
    const Polygon flat = look_.flat_faces.empty() ? along_first_side(corners, normals_[face]) : look_.flat_faces[face];
    ensure(flat.size() == corners.size(), "a flat face has as many corners as the face");
    SceneFace added{FaceId::at(face),
                    normals_[face],
                    corners,
                    shaded(look.fill, normals_[face], scene_.camera),
                    look.hatch,
                    shaded(look.hatch_ink, normals_[face], scene_.camera),
                    look.hatch_period,
                    scene_.vertices.size(),
                    0};
    for (const auto& triangle : geometry::triangulated(flat)) {
      for (const std::size_t corner : triangle) {
        scene_.vertices.push_back({near_origin(corners[corner], scene_.origin),
                                   {static_cast<float>(flat[corner].x), static_cast<float>(flat[corner].y)}});
      }
    }
    added.vertex_count = scene_.vertices.size() - added.first_vertex;
    scene_.faces.push_back(std::move(added));
  }

  void add_edges() {
    const std::vector<std::vector<bool>> drawn = drawn_sides(look_, scene_.camera);
    for (const std::size_t face : shown_) {
      const std::vector<Vec3>& corners = corners_[face];
      const bool faces_eye = glm::dot(normals_[face], scene_.camera.eye() - corners.front()) > 0;
      for (std::size_t i = 0; i < corners.size(); ++i) {
        if (drawn[face][i]) add_side(face, i, faces_eye);
      }
    }
    // Outlines last, so that they lie over the ends of their neighbors.
    std::stable_partition(sides_.begin(), sides_.end(), [](const DrawnSide& side) { return !side.is_outline; });
    const bool is_closed = !look_.smooth.empty() && std::all_of(sides_.begin(), sides_.end(),
                                                                [](const DrawnSide& side) { return side.owners > 1; });
    for (DrawnSide& side : sides_) {
      // Where a rim turns out of sight it lies so near to the surface before it that depth does not tell them apart.
      if (is_closed && !side.faces_eye) side.stroke.width_px = 0;
      add_line(side.from, side.to, side.stroke, side.hidden);
    }
  }

  /// How what is hidden of a side is drawn. A rim comes in so short pieces that each would be one dash: every other
  /// piece is.
  [[nodiscard]] std::optional<Stroke> hidden_side(std::size_t face, std::size_t side) const {
    std::optional<Stroke> hidden = look_.hidden_edge;
    if (!hidden || look_.smooth.empty() || look_.smooth[face][side]) return hidden;
    const std::vector<bool>& smooth = look_.smooth[face];
    const bool is_strip = std::find(smooth.begin(), smooth.end(), true) != smooth.end();
    if ((is_strip ? face : side) % 2 == 1) return std::nullopt;
    hidden->dash_px = 0;
    return hidden;
  }

  /// Two faces that share a side give one line; the look of an outlined face goes before the other's.
  void add_side(std::size_t face, std::size_t number, bool faces_eye) {
    const FaceLook& look = look_.looks[face];
    const Vec3 from = corners_[face][number], to = corners_[face][(number + 1) % corners_[face].size()];
    DrawnSide side{from, to, look_.edge, hidden_side(face, number), false, faces_eye};
    if (look.outline) {
      side.stroke = *look.outline;
      if (side.hidden) side.hidden->ink = look.outline->ink;
      side.is_outline = true;
    }
    const double slack = size_ * 1e-6;
    const auto same = [&](Vec3 a, Vec3 b) { return glm::length(a - b) <= slack; };
    for (DrawnSide& known : sides_) {
      if ((same(known.from, to) && same(known.to, from)) || (same(known.from, from) && same(known.to, to))) {
        if (side.is_outline && !known.is_outline) {
          known.stroke = side.stroke;
          known.hidden = side.hidden;
          known.is_outline = true;
        }
        known.faces_eye = known.faces_eye || faces_eye;
        ++known.owners;
        return;
      }
    }
    sides_.push_back(side);
  }

  void add_line(Vec3 from, Vec3 to, const Stroke& stroke, const std::optional<Stroke>& hidden) {
    if (!clip_before_eye(from, to)) return;
    const auto start = near_origin(from, scene_.origin);
    const auto end = near_origin(to, scene_.origin);
    if (stroke.width_px > 0) scene_.visible_lines.push_back({start, end, stroke});
    if (hidden && hidden->width_px > 0) scene_.hidden_lines.push_back({start, end, *hidden});
  }

  /// Cuts off what is nearer than the near plane, where a quad could not be put on the screen. Returns whether
  /// anything is left.
  [[nodiscard]] bool clip_before_eye(Vec3& from, Vec3& to) const {
    const Vec3 eye = scene_.camera.eye(), forward = scene_.camera.forward();
    const double nearest = scene_.camera.near_plane();
    const double depth_from = glm::dot(from - eye, forward) - nearest;
    const double depth_to = glm::dot(to - eye, forward) - nearest;
    if (depth_from <= 0 && depth_to <= 0) return false;
    if (depth_from < 0) from += (to - from) * (depth_from / (depth_from - depth_to));
    if (depth_to < 0) to += (from - to) * (depth_to / (depth_to - depth_from));
    return true;
  }

  const BenchLook& look_;
  Scene scene_;
  std::vector<std::vector<Vec3>> corners_;
  std::vector<Vec3> normals_;
  std::vector<std::size_t> shown_;
  std::vector<DrawnSide> sides_;
  double size_ = 0;
};

}  // namespace

std::vector<std::vector<bool>> drawn_sides(const BenchLook& look, const Camera& camera) {
  std::vector<std::vector<bool>> drawn;
  std::vector<bool> faces_eye;
  for (const std::vector<Vec3>& corners : look.faces) {
    drawn.emplace_back(corners.size(), true);
    faces_eye.push_back(glm::dot(normal_of(corners), camera.eye() - corners.front()) > 0);
  }
  if (look.smooth.empty()) return drawn;
  double size = 0;
  for (const auto& corners : look.faces) size = std::max(size, glm::length(corners.front() - look.faces[0][0]));
  const double slack = size * 1e-6;
  const auto same = [slack](Vec3 a, Vec3 b) { return glm::length(a - b) <= slack; };
  for (std::size_t face = 0; face < look.faces.size(); ++face) {
    const std::vector<Vec3>& corners = look.faces[face];
    for (std::size_t side = 0; side < corners.size(); ++side) {
      if (!look.smooth[face][side]) continue;
      const Vec3 from = corners[side], to = corners[(side + 1) % corners.size()];
      // The strip on the other side, where it is still joined: the strips of a face come one after another.
      const auto meets = [&](std::size_t other) {
        const std::vector<Vec3>& theirs = look.faces[other];
        for (std::size_t i = 0; i < theirs.size(); ++i) {
          if (look.smooth[other][i] && same(theirs[i], to) && same(theirs[(i + 1) % theirs.size()], from)) return true;
        }
        return false;
      };
      std::optional<std::size_t> beyond;
      if (face > 0 && meets(face - 1)) beyond = face - 1;
      if (face + 1 < look.faces.size() && meets(face + 1)) beyond = face + 1;
      for (std::size_t other = 0; !beyond && other < look.faces.size(); ++other) {
        if (meets(other)) beyond = other;
      }
      drawn[face][side] = !beyond || faces_eye[face] != faces_eye[*beyond];
    }
  }
  return drawn;
}

Scene bench_scene(const BenchLook& look, const Camera& camera) { return SceneMaker(look, camera).made(); }

Color shaded(const Color& color, Vec3 normal, const Camera& camera) {
  // Over the viewer's left shoulder. Both sides of a face are lit alike, so that no face flickers as it turns over.
  const Vec3 toward_light = glm::normalize(camera.up() * 0.6 - camera.right() * 0.35 - camera.forward() * 0.7);
  const double facing = std::min(1.0, std::abs(glm::dot(normal, toward_light)));
  const auto factor = static_cast<float>(0.82 + 0.18 * facing);
  return {color.r * factor, color.g * factor, color.b * factor, color.a};
}

std::vector<LineLook> right_angle_mark(Vec3 corner, Vec3 one_way, Vec3 other_way, double size, const Stroke& stroke,
                                       const std::optional<Stroke>& hidden) {
  const Vec3 a = corner + glm::normalize(one_way) * size;
  const Vec3 b = corner + glm::normalize(other_way) * size;
  const Vec3 opposite = a + b - corner;
  return {{a, opposite, stroke, hidden}, {opposite, b, stroke, hidden}};
}

}  // namespace fw::render
