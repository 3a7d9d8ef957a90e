#include "figures/solid_sketch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "figures/hatch.hpp"
#include "figures/net_sketch.hpp"
#include "solids/body/sight.hpp"

namespace fw::figures {
namespace {

using geometry::Vec3;

/// A view from far away: what lies in front, above and a little to the right.
struct View {
  Vec3 toward_viewer;
  Vec3 right;
  Vec3 up;
  [[nodiscard]] Vec2 seen(Vec3 p) const { return {glm::dot(p, right), glm::dot(p, up)}; }
};

View textbook_view() {
  constexpr double turn = 27 * std::numbers::pi / 180;
  constexpr double rise = 19 * std::numbers::pi / 180;
  const Vec3 toward{std::sin(turn) * std::cos(rise), -std::cos(turn) * std::cos(rise), std::sin(rise)};
  const Vec3 right{std::cos(turn), std::sin(turn), 0};
  return {toward, right, glm::cross(toward, right)};
}

}  // namespace

void draw_solid_sketch(Canvas& canvas, const solids::Solid& solid, const Rect& rect, const Palette& palette,
                       SketchFill fill) {
  const View view = textbook_view();
  const solids::Sight sight = solids::seen_from_afar(solid.body(), view.toward_viewer);
  std::vector<std::vector<Vec2>> shapes;
  for (const solids::SightLine& line : sight.lines) shapes.push_back({view.seen(line.from), view.seen(line.to)});
  for (const solids::SightFace& face : sight.faces) {
    shapes.emplace_back();
    for (const Vec3& corner : face.outline) shapes.back().push_back(view.seen(corner));
  }
  shapes = fitted(shapes, rect.inset(palette.line_width));
  for (std::size_t i = 0; fill == SketchFill::Groups && i < sight.faces.size(); ++i) {
    if (!sight.faces[i].is_whole) continue;
    const FaceStyle style = face_style(solid.faces()[sight.faces[i].face].group, palette);
    const auto& shape = shapes[sight.lines.size() + i];
    canvas.polygon(shape, style.fill, std::nullopt);
    draw_hatch(canvas, shape, style.hatch, std::max(palette.text_size * 0.4, 4 * palette.line_width),
               {style.hatch_ink, palette.line_width * 0.5});
  }
  const Stroke seen{palette.ink, palette.line_width};
  const Stroke hidden{palette.ink, palette.line_width * 0.7, palette.line_width * 3};
  for (const bool pass : {true, false}) {
    std::vector<Vec2> points;
    for (std::size_t i = 0; i < sight.lines.size(); ++i) {
      if (sight.lines[i].hidden != pass) continue;
      if (!sight.lines[i].continues) points = {shapes[i][0]};
      points.push_back(shapes[i][1]);
      const bool goes_on = i + 1 < sight.lines.size() && sight.lines[i + 1].continues;
      if (!goes_on) draw_stroke(canvas, points, pass ? hidden : seen);
    }
  }
}

}  // namespace fw::figures
