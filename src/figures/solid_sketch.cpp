#include "figures/solid_sketch.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "figures/hatch.hpp"
#include "figures/net_sketch.hpp"
#include "geometry/measure.hpp"
#include "geometry/ray.hpp"

namespace fw::figures {
namespace {

using geometry::Polyhedron;
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

std::vector<std::vector<Vec3>> face_corners(const Polyhedron& polyhedron) {
  std::vector<std::vector<Vec3>> faces;
  for (std::size_t i = 0; i < polyhedron.faces().size(); ++i) {
    faces.push_back(polyhedron.corners(geometry::FaceId::at(i)));
  }
  return faces;
}

/// The edge in pieces of equal visibility, for solids of which one part may hide another.
void add_pieces(const std::vector<std::vector<Vec3>>& faces, const View& view, Vec3 from, Vec3 to, double size,
                std::vector<SketchEdge>& edges) {
  constexpr int pieces = 24;
  const double off = size * 1e-6;
  for (int i = 0; i < pieces; ++i) {
    const Vec3 a = from + (to - from) * (static_cast<double>(i) / pieces);
    const Vec3 b = from + (to - from) * (static_cast<double>(i + 1) / pieces);
    const bool hidden =
        geometry::nearest_hit(faces, {(a + b) * 0.5 + view.toward_viewer * off, view.toward_viewer}).has_value();
    if (i > 0 && edges.back().hidden == hidden) {
      edges.back().to = view.seen(b);
    } else {
      edges.push_back({view.seen(a), view.seen(b), hidden});
    }
  }
}

}  // namespace

std::vector<SketchEdge> sketch_edges(const Polyhedron& polyhedron) {
  const View view = textbook_view();
  const bool convex = geometry::is_convex(polyhedron);
  const auto faces = face_corners(polyhedron);
  const double size = geometry::bounding_box({polyhedron.vertices().begin(), polyhedron.vertices().end()}).diagonal();
  std::vector<SketchEdge> edges;
  for (std::size_t i = 0; i < polyhedron.edges().size(); ++i) {
    const auto id = geometry::EdgeId::at(i);
    const auto& edge = polyhedron.edges()[id];
    const auto [from, to] = polyhedron.ends(id);
    const auto looks_away = [&](geometry::FaceId face) {
      return glm::dot(polyhedron.normal(face), view.toward_viewer) <= 1e-9;
    };
    if (looks_away(edge.left) && looks_away(edge.right)) {
      edges.push_back({view.seen(from), view.seen(to), true});
    } else if (convex) {
      edges.push_back({view.seen(from), view.seen(to), false});
    } else {
      add_pieces(faces, view, from, to, size, edges);
    }
  }
  return edges;
}

void draw_solid_sketch(Canvas& canvas, const solids::Solid& solid, const Rect& rect, const Palette& palette,
                       SketchFill fill) {
  const View view = textbook_view();
  const Polyhedron& polyhedron = solid.polyhedron();
  const std::vector<SketchEdge> edges = sketch_edges(polyhedron);
  std::vector<std::vector<Vec2>> shapes;
  for (const SketchEdge& edge : edges) shapes.push_back({edge.from, edge.to});
  for (const auto& corners : face_corners(polyhedron)) {
    std::vector<Vec2> shape;
    for (const Vec3& corner : corners) shape.push_back(view.seen(corner));
    shapes.push_back(std::move(shape));
  }
  shapes = fitted(shapes, rect.inset(palette.line_width));
  const bool convex = geometry::is_convex(polyhedron);
  // Faces of a concave solid may hide each other, so that they are left unfilled.
  for (std::size_t i = 0; fill == SketchFill::Groups && convex && i < polyhedron.faces().size(); ++i) {
    const auto face = geometry::FaceId::at(i);
    if (glm::dot(polyhedron.normal(face), view.toward_viewer) <= 0) continue;
    const FaceStyle style = face_style(solid.faces()[face].group, palette);
    const auto& shape = shapes[edges.size() + i];
    canvas.polygon(shape, style.fill, std::nullopt);
    draw_hatch(canvas, shape, style.hatch, std::max(palette.text_size * 0.4, 4 * palette.line_width),
               {style.hatch_ink, palette.line_width * 0.5});
  }
  const Stroke seen{palette.ink, palette.line_width};
  const Stroke hidden{palette.ink, palette.line_width * 0.7, palette.line_width * 3};
  for (const bool pass : {true, false}) {
    for (std::size_t i = 0; i < edges.size(); ++i) {
      if (edges[i].hidden == pass) canvas.line(shapes[i][0], shapes[i][1], pass ? hidden : seen);
    }
  }
}

}  // namespace fw::figures
