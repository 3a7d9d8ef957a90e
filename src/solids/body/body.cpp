#include "solids/body/body.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "base/ensure.hpp"
#include "geometry/congruence.hpp"
#include "geometry/flat_math.hpp"
#include "geometry/tolerance.hpp"
#include "nets/layout.hpp"

namespace fw::solids {

using geometry::Polyhedron;

namespace {

/// Distance of a point from the line through a segment.
double distance_to(Vec3 point, Vec3 from, Vec3 to) {
  const Vec3 along = to - from;
  const double length = glm::length(along);
  return length == 0 ? glm::length(point - from) : glm::length(glm::cross(along, point - from)) / length;
}

/// The facet edges that make one edge of the solid: those of a rim, along which the same two faces meet, together.
std::vector<std::vector<EdgeId>> rims_of(const Polyhedron& facets, const std::vector<FaceId>& faces,
                                         const std::vector<std::size_t>& counts) {
  std::vector<std::vector<EdgeId>> rims;
  std::map<std::pair<FaceId, FaceId>, std::size_t> known;
  for (std::size_t i = 0; i < facets.edges().size(); ++i) {
    const geometry::Edge& edge = facets.edges()[EdgeId::at(i)];
    const auto meeting = std::minmax(faces[edge.left.index()], faces[edge.right.index()]);
    if (meeting.first == meeting.second) {
      continue;
    }
    const bool is_rim = counts[meeting.second.index()] > 1;
    const auto place = is_rim ? known.try_emplace(meeting, rims.size()) : std::pair{known.end(), true};
    if (place.second) {
      rims.emplace_back();
    }
    (is_rim ? rims[place.first->second] : rims.back()).push_back(EdgeId::at(i));
  }
  return rims;
}

/// The strips of a face that bends laid beside each other, from the first on the left, the middle one where it is.
std::vector<geometry::Polygon> strips_laid(const Polyhedron& facets, std::size_t first, std::size_t count) {
  const auto flat = [&](std::size_t place) { return geometry::flat_face(facets, FaceId::at(first + place)); };
  const std::size_t middle = count / 2;
  std::vector<geometry::Polygon> laid(count);
  laid[middle] = flat(middle);
  // Side 1 of a strip is the last side of the next one.
  for (std::size_t i = middle + 1; i < count; ++i) {
    const geometry::Polygon& before = laid[i - 1];
    laid[i] = nets::laid_on(flat(i), before.size() - 1, before[2], before[1]);
  }
  for (std::size_t i = middle; i > 0; --i) {
    const geometry::Polygon& after = laid[i];
    laid[i - 1] = nets::laid_on(flat(i - 1), 1, after.front(), after.back());
  }
  return laid;
}

/// Strips side by side in one outline.
geometry::Polygon outline_of(const std::vector<geometry::Polygon>& strips) {
  geometry::Polygon outline;
  for (const geometry::Polygon& strip : strips) {
    outline.push_back(strip[0]);
  }
  outline.push_back(strips.back()[1]);
  for (auto strip = strips.rbegin(); strip != strips.rend(); ++strip) {
    if (strip->size() > 3 || strip == strips.rbegin()) {  // the tip of a cone is one corner
      outline.push_back((*strip)[2]);
    }
  }
  if (strips.front().size() > 3) {
    outline.push_back(strips.front()[3]);
  }
  geometry::Polygon corners;  // without those on a straight side
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const geometry::Vec2 in = outline[i] - outline[(i + outline.size() - 1) % outline.size()];
    const geometry::Vec2 out = outline[(i + 1) % outline.size()] - outline[i];
    if (std::abs(geometry::cross(in, out)) > geometry::tolerance * glm::length(in) * glm::length(out)) {
      corners.push_back(outline[i]);
    }
  }
  return corners;
}

}  // namespace

Body::Body(Polyhedron facets) : Body(facets, std::vector<std::size_t>(facets.faces().size(), 1)) {}

Body::Body(Polyhedron facets, const std::vector<std::size_t>& counts, std::vector<std::optional<Vec3>> number_at)
    : facets_(std::move(facets)), number_at_(std::move(number_at)) {
  number_at_.resize(counts.size());
  for (std::size_t i = 0; i < counts.size(); ++i) {
    starts_.push_back(faces_.size());
    faces_.insert(faces_.end(), counts[i], FaceId::at(i));
  }
  ensure(faces_.size() == facets_.faces().size(), "each facet of a body belongs to a face");
  rims_ = rims_of(facets_, faces_, counts);
  for (std::size_t i = 0; i < counts.size(); ++i) {
    strips_.push_back(counts[i] > 1 ? strips_laid(facets_, starts_[i], counts[i]) : std::vector<geometry::Polygon>{});
  }
}

geometry::Polygon Body::outline_of_strips(FaceId face, const std::vector<geometry::Polygon>& facets) const {
  const auto first = facets.begin() + static_cast<std::ptrdiff_t>(starts_[face.index()]);
  return outline_of({first, first + static_cast<std::ptrdiff_t>(facet_count(face))});
}

std::size_t Body::facet_count(FaceId face) const {
  const std::size_t next = face.index() + 1;
  return (next < starts_.size() ? starts_[next] : faces_.size()) - starts_[face.index()];
}

bool Body::is_smooth(EdgeId facet_edge) const {
  const auto [left, right] = faces_at(facet_edge);
  return face_of(left) == face_of(right);
}

std::size_t Body::side_count(FaceId face) const {
  const auto belongs = [&](const std::vector<EdgeId>& rim) {
    const auto [left, right] = faces_at(rim.front());
    return face_of(left) == face || face_of(right) == face;
  };
  return static_cast<std::size_t>(std::count_if(rims_.begin(), rims_.end(), belongs));
}

std::vector<std::size_t> Body::faces_at_vertices() const {
  std::vector<std::set<FaceId>> faces(facets_.vertices().size());
  std::vector<std::size_t> facets(facets_.vertices().size(), 0);
  for (std::size_t i = 0; i < facets_.faces().size(); ++i) {
    for (const geometry::VertexId vertex : facets_.faces()[FaceId::at(i)]) {
      faces[vertex.index()].insert(faces_[i]);
      ++facets[vertex.index()];
    }
  }
  std::vector<std::size_t> meeting;
  for (std::size_t i = 0; i < faces.size(); ++i) {
    const bool is_tip = faces[i].size() == 1 && facets[i] > 2;
    if (is_tip || faces[i].size() > 2) {
      meeting.push_back(faces[i].size());
    }
  }
  return meeting;
}

std::pair<FaceId, FaceId> Body::faces_at(EdgeId edge) const {
  const geometry::Edge& found = facets_.edges()[edge];
  return {found.left, found.right};
}

std::optional<EdgeId> Body::edge_along(FaceId face, Vec3 from, Vec3 to, double slack) const {
  const std::size_t first = first_facet(face).index();
  for (std::size_t facet = first; facet < first + facet_count(face); ++facet) {
    const std::vector<Vec3> corners = facets_.corners(FaceId::at(facet));
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Vec3& a = corners[i];
      const Vec3& b = corners[(i + 1) % corners.size()];
      if (distance_to(from, a, b) < slack && distance_to(to, a, b) < slack) {
        return facets_.edges_of(FaceId::at(facet))[i];
      }
    }
  }
  return std::nullopt;
}

std::vector<double> Body::edge_lengths() const {
  std::vector<double> lengths;
  for (const std::vector<EdgeId>& rim : rims_) {
    lengths.push_back(0);
    for (const EdgeId edge : rim) {
      const auto [from, to] = facets_.ends(edge);
      lengths.back() += glm::length(to - from);
    }
  }
  return lengths;
}

FlatFace Body::flat(FaceId face) const {
  if (!bends(face)) {
    return {geometry::face_plane(facets_, face), geometry::flat_face(facets_, face)};
  }
  const FaceId middle = FaceId::at(first_facet(face).index() + facet_count(face) / 2);
  return {geometry::face_plane(facets_, middle), outline_of(strips(face))};
}

geometry::Vec2 Body::label_point(FaceId face) const {
  const FlatFace laid = flat(face);
  const std::optional<Vec3>& stated = number_at_[face.index()];
  return stated ? laid.plane.flat(*stated) : geometry::label_point(laid.outline);
}

std::vector<FaceId> Body::faces_toward(Vec3 outward) const {
  constexpr double level = 1e-12;  // the slope of a pyramid as flat as its numbers can be is more
  std::vector<FaceId> faces;
  for (std::size_t i = 0; i < face_count() && !bends(FaceId::at(i)); ++i) {
    const Vec3 normal = facets_.normal(FaceId::at(i));
    if (glm::dot(normal, outward) > 0 && glm::length(glm::cross(normal, outward)) < level) {
      faces.push_back(FaceId::at(i));
    }
  }
  return faces;
}

bool Body::is_before(FaceId face, Vec3 eye) const {
  const std::size_t first = first_facet(face).index();
  for (std::size_t i = first; i < first + facet_count(face); ++i) {
    const Vec3 corner = facets_.vertices()[facets_.faces()[FaceId::at(i)].front()];
    if (glm::dot(facets_.normal(FaceId::at(i)), corner - eye) < 0) {
      return true;
    }
  }
  return false;
}

double Body::height_over(FaceId face) const {
  const geometry::FacePlane floor = geometry::face_plane(facets_, face);
  double height = 0;
  for (const Vec3& vertex : facets_.vertices()) {
    height = std::max(height, std::abs(glm::dot(vertex - floor.origin, floor.normal)));
  }
  return height;
}

std::vector<std::size_t> congruence_groups(const Body& body) {
  if (body.is_flat_faced()) {
    const auto groups = geometry::congruence_groups(body.facets());
    return {groups.begin(), groups.end()};
  }
  std::vector<geometry::Polygon> kinds;
  std::vector<std::size_t> groups;
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    const geometry::Polygon outline = body.flat(FaceId::at(i)).outline;
    const auto found = std::find_if(kinds.begin(), kinds.end(),
                                    [&](const geometry::Polygon& kind) { return geometry::congruent(kind, outline); });
    groups.push_back(static_cast<std::size_t>(found - kinds.begin()));
    if (found == kinds.end()) {
      kinds.push_back(outline);
    }
  }
  return groups;
}

Body mirrored(const Body& body) {
  if (!body.is_flat_faced()) {
    return body;  // every round solid is its own mirror image
  }
  std::vector<Vec3> vertices;
  for (const Vec3& v : body.facets().vertices()) {
    vertices.push_back({-v.x, v.y, v.z});
  }
  std::vector<Polyhedron::Loop> loops;
  for (Polyhedron::Loop loop : body.facets().faces()) {
    std::reverse(loop.begin(), loop.end());
    loops.push_back(std::move(loop));
  }
  auto image = Polyhedron::make(std::move(vertices), std::move(loops));
  ensure(image.has_value(), "the mirror image of a polyhedron is a polyhedron");
  return Body(std::move(image).value());
}

}  // namespace fw::solids
