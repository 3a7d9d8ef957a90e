#include "solids/body/sight.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/measure.hpp"
#include "geometry/ray.hpp"

namespace fw::solids {
namespace {

/// Edges as they are seen, for bodies of which one part may hide another.
class SeenEdges {
 public:
  SeenEdges(const geometry::Polyhedron& facets, Vec3 toward_viewer) : toward_viewer_(toward_viewer) {
    const Vec3 aside = std::abs(toward_viewer.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
    right_ = glm::normalize(glm::cross(aside, toward_viewer));
    up_ = glm::cross(toward_viewer, right_);
    for (std::size_t i = 0; i < facets.faces().size(); ++i) {
      faces_.push_back(facets.corners(FaceId::at(i)));
    }
    for (std::size_t i = 0; i < facets.edges().size(); ++i) {
      const auto [from, to] = facets.ends(EdgeId::at(i));
      edges_.emplace_back(flat(from), flat(to));
    }
    off_ = geometry::bounding_box({facets.vertices().begin(), facets.vertices().end()}).diagonal() * 1e-6;
  }

  /// The edge cut where it passes behind or before another one; pieces that are seen alike are one.
  void add_pieces(Vec3 from, Vec3 to, std::vector<SightLine>& lines) const {
    const std::vector<double> cuts = crossings(flat(from), flat(to));
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      const auto at = [&](double share) { return from + (to - from) * share; };
      const bool hidden = is_hidden(at((cuts[i] + cuts[i + 1]) / 2));
      if (i > 0 && lines.back().hidden == hidden) {
        lines.back().to = at(cuts[i + 1]);
      } else {
        lines.push_back({at(cuts[i]), at(cuts[i + 1]), hidden});
      }
    }
  }

 private:
  using Flat = geometry::Vec2;
  [[nodiscard]] Flat flat(Vec3 p) const { return {glm::dot(p, right_), glm::dot(p, up_)}; }
  [[nodiscard]] bool is_hidden(Vec3 p) const {
    return geometry::nearest_hit(faces_, {p + toward_viewer_ * off_, toward_viewer_}).has_value();
  }
  /// The shares of the way at which the picture of another edge meets this one's, with 0 and 1, rising.
  [[nodiscard]] std::vector<double> crossings(Flat from, Flat to) const {
    constexpr double slack = 1e-9;
    const auto cross = [](Flat a, Flat b) { return a.x * b.y - a.y * b.x; };
    const Flat way = to - from;
    std::vector<double> cuts{0, 1};
    for (const auto& [a, b] : edges_) {
      const double turn = cross(way, b - a);
      if (std::abs(turn) <= slack * glm::length(way) * glm::length(b - a)) {
        continue;  // parallel as seen
      }
      const double here = cross(a - from, b - a) / turn;
      const double there = cross(a - from, way) / turn;
      if (here > slack && here < 1 - slack && there > -slack && there < 1 + slack) {
        cuts.push_back(here);
      }
    }
    std::sort(cuts.begin(), cuts.end());
    cuts.erase(std::unique(cuts.begin(), cuts.end(), [](double a, double b) { return b - a < 1e-9; }), cuts.end());
    return cuts;
  }

  Vec3 toward_viewer_, right_{}, up_{};
  std::vector<std::vector<Vec3>> faces_;
  std::vector<std::pair<Flat, Flat>> edges_;
  double off_ = 0;
};

bool continues(const SightLine& before, const SightLine& line) {
  return before.is_curve && before.hidden == line.hidden && before.to == line.from;
}

}  // namespace

Sight seen_from_afar(const Body& body, Vec3 toward_viewer) {
  const geometry::Polyhedron& facets = body.facets();
  const bool is_convex = geometry::is_convex(facets);
  const auto facing = [&](FaceId face) { return glm::dot(facets.normal(face), toward_viewer); };
  Sight sight;
  for (std::size_t i = 0; i < facets.faces().size(); ++i) {
    const FaceId facet = FaceId::at(i);
    sight.faces.push_back({body.face_of(facet), facets.corners(facet), is_convex && facing(facet) > 0});
  }
  const SeenEdges seen(facets, toward_viewer);
  const auto looks_away = [&](FaceId face) { return facing(face) <= 1e-9; };
  for (std::size_t i = 0; i < facets.edges().size(); ++i) {
    const EdgeId edge = EdgeId::at(i);
    const auto [from, to] = facets.ends(edge);
    const auto [left, right] = body.faces_at(edge);
    const bool is_curve = body.bends(body.face_of(left)) || body.bends(body.face_of(right));
    if (body.is_smooth(edge) && looks_away(left) == looks_away(right)) {
      continue;
    }
    const std::size_t first = sight.lines.size();
    if (looks_away(left) && looks_away(right)) {
      sight.lines.push_back({from, to, true});
    } else if (is_convex) {
      sight.lines.push_back({from, to, false});
    } else {
      seen.add_pieces(from, to, sight.lines);
    }
    for (std::size_t line = first; line < sight.lines.size(); ++line) {
      sight.lines[line].is_curve = is_curve;
      sight.lines[line].continues = is_curve && line > 0 && continues(sight.lines[line - 1], sight.lines[line]);
    }
  }
  return sight;
}

std::vector<std::vector<SightLine>> Sight::strokes() const {
  std::vector<std::vector<SightLine>> strokes;
  for (const SightLine& line : lines) {
    if (!line.continues) {
      strokes.emplace_back();
    }
    strokes.back().push_back(line);
  }
  return strokes;
}

}  // namespace fw::solids
