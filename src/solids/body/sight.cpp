#include "solids/body/sight.hpp"

#include "geometry/measure.hpp"
#include "geometry/ray.hpp"

namespace fw::solids {
namespace {

/// The edge in pieces of equal visibility, for bodies of which one part may hide another.
void add_pieces(const std::vector<std::vector<Vec3>>& faces, Vec3 toward_viewer, Vec3 from, Vec3 to, double off,
                std::vector<SightLine>& lines) {
  constexpr int pieces = 24;
  for (int i = 0; i < pieces; ++i) {
    const Vec3 a = from + (to - from) * (static_cast<double>(i) / pieces);
    const Vec3 b = from + (to - from) * (static_cast<double>(i + 1) / pieces);
    const bool hidden = geometry::nearest_hit(faces, {(a + b) * 0.5 + toward_viewer * off, toward_viewer}).has_value();
    if (i > 0 && lines.back().hidden == hidden) {
      lines.back().to = b;
    } else {
      lines.push_back({a, b, hidden});
    }
  }
}

}  // namespace

Sight seen_from_afar(const Body& body, Vec3 toward_viewer) {
  const geometry::Polyhedron& facets = body.facets();
  const bool is_convex = geometry::is_convex(facets);
  const auto facing = [&](FaceId face) { return glm::dot(facets.normal(face), toward_viewer); };
  Sight sight;
  std::vector<std::vector<Vec3>> outlines;
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    const FaceId face = FaceId::at(i);
    outlines.push_back(facets.corners(face));
    sight.faces.push_back({face, outlines.back(), is_convex && facing(face) > 0});
  }
  const double off = geometry::bounding_box({facets.vertices().begin(), facets.vertices().end()}).diagonal() * 1e-6;
  const auto looks_away = [&](FaceId face) { return facing(face) <= 1e-9; };
  for (std::size_t i = 0; i < body.edge_count(); ++i) {
    const auto [from, to] = facets.ends(EdgeId::at(i));
    const auto [left, right] = body.faces_at(EdgeId::at(i));
    if (looks_away(left) && looks_away(right)) {
      sight.lines.push_back({from, to, true});
    } else if (is_convex) {
      sight.lines.push_back({from, to, false});
    } else {
      add_pieces(outlines, toward_viewer, from, to, off, sight.lines);
    }
  }
  return sight;
}

}  // namespace fw::solids
