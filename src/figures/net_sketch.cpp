#include "figures/net_sketch.hpp"

#include <algorithm>
#include <cmath>

#include "figures/face_figure.hpp"
#include "figures/hatch.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::figures {

std::vector<std::vector<Vec2>> fitted(const std::vector<std::vector<Vec2>>& shapes, const Rect& rect) {
  std::vector<Vec2> all;
  for (const auto& shape : shapes) all.insert(all.end(), shape.begin(), shape.end());
  const Rect box = bounding_rect(all);
  if (box.w <= 0 && box.h <= 0) return shapes;
  const double across = box.w > 0 ? rect.w / box.w : rect.h / box.h;
  const double up = box.h > 0 ? rect.h / box.h : across;
  const double scale = std::min(across, up);
  const Vec2 middle = box.center();
  std::vector<std::vector<Vec2>> result = shapes;
  for (auto& shape : result) {
    for (Vec2& p : shape) {
      p = {rect.center().x + (p.x - middle.x) * scale, rect.center().y - (p.y - middle.y) * scale};
    }
  }
  return result;
}

std::vector<std::vector<Vec2>> fitted_net(const std::vector<geometry::Polygon>& faces, const Rect& rect, NetTurn turn) {
  const double c = std::cos(turn.angle_rad);
  const double s = std::sin(turn.angle_rad);
  std::vector<std::vector<Vec2>> shapes = faces;
  for (auto& shape : shapes) {
    for (Vec2& p : shape) {
      const Vec2 q{turn.flipped ? -p.x : p.x, p.y};
      p = {c * q.x - s * q.y, s * q.x + c * q.y};
    }
  }
  return fitted(shapes, rect);
}

void draw_net_sketch(Canvas& canvas, const solids::Solid& solid, const nets::HingeTree& tree, const Rect& rect,
                     const Palette& palette, SketchFill fill, NetTurn turn) {
  const solids::Body& body = solid.body();
  const auto shapes = fitted_net(solids::laid_faces(body, tree), rect.inset(palette.line_width), turn);
  const double spacing = std::max(palette.text_size * 0.4, 4 * palette.line_width);
  for (std::size_t i = 0; fill == SketchFill::Groups && i < shapes.size(); ++i) {
    const FaceStyle style = face_style(solid.faces()[geometry::FaceId::at(i)].group, palette);
    canvas.polygon(shapes[i], style.fill, std::nullopt);
    draw_hatch(canvas, shapes[i], style.hatch, spacing, {style.hatch_ink, palette.line_width * 0.5});
  }
  const Stroke cut{palette.ink, palette.line_width};
  const Stroke hinge{palette.ink, palette.line_width * 0.6, palette.line_width * 2.5};
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    const auto face = geometry::FaceId::at(i);
    if (!body.is_flat_faced()) {  // a disk touches the side that it hangs on in one point: nothing to fold along
      canvas.polygon(shapes[i], std::nullopt, cut);
      continue;
    }
    const auto& edges = body.edges_of(face);
    for (std::size_t side = 0; side < edges.size(); ++side) {
      const bool joined = tree.is_hinge(edges[side]);
      if (joined && body.faces_at(edges[side]).first != face) continue;  // drawn once
      canvas.line(shapes[i][side], shapes[i][(side + 1) % shapes[i].size()], joined ? hinge : cut);
    }
  }
}

}  // namespace fw::figures
