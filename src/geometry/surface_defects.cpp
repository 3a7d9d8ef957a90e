#include "geometry/surface_defects.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/measure.hpp"
#include "geometry/tolerance.hpp"

namespace fw::geometry {
namespace {

using Loop = Polyhedron::Loop;
using Sentences = std::vector<std::string>;

std::string face_name(std::size_t face) { return "face " + std::to_string(face); }
std::string edge_name(VertexId from, VertexId to) {
  return "the edge from vertex " + std::to_string(from.value) + " to vertex " + std::to_string(to.value);
}

void check_loop(const Loop& loop, std::size_t face, std::size_t vertex_count, Sentences& found) {
  if (loop.size() < 3) {
    found.push_back(face_name(face) + " has only " + std::to_string(loop.size()) + " corners; a face needs 3");
  }
  std::vector<VertexId> sorted = loop;
  std::sort(sorted.begin(), sorted.end());
  if (!sorted.empty() && sorted.back().index() >= vertex_count) {
    found.push_back(face_name(face) + " names vertex " + std::to_string(sorted.back().value) + ", but there are only " +
                    std::to_string(vertex_count));
  }
  const auto twice = std::adjacent_find(sorted.begin(), sorted.end());
  if (twice != sorted.end()) {
    found.push_back(face_name(face) + " names vertex " + std::to_string(twice->value) + " twice");
  }
}

void check_sides(const SideTable& sides, Sentences& found) {
  for (const auto& [ends, places] : sides) {
    const auto& [from, to] = ends;
    if (places.size() > 1) {
      found.push_back(edge_name(from, to) + " runs the same way in " + face_name(places[0].face.index()) + " and " +
                      face_name(places[1].face.index()) + "; one of them is turned inside out or there are too many");
    }
    if (sides.count({to, from}) == 0) {
      found.push_back(edge_name(from, to) + " belongs to " + face_name(places[0].face.index()) +
                      " but to no face on its other side");
    }
  }
}

void check_flatness(const std::vector<Vec3>& corners, std::size_t face, double size, Sentences& found) {
  const Vec3 upright = area_vector(corners);
  const double area = glm::length(upright);
  const double own_size = bounding_box(corners).diagonal();
  if (!(area > rounding * own_size * own_size)) {
    found.push_back(face_name(face) + " has no area");
    return;
  }
  const Vec3 normal = upright / area;
  Vec3 middle{0, 0, 0};
  for (const Vec3& corner : corners) {
    middle += corner / static_cast<double>(corners.size());
  }
  double highest = 0;
  for (const Vec3& corner : corners) {
    highest = std::max(highest, std::abs(glm::dot(corner - middle, normal)));
  }
  if (!(highest <= tolerance * own_size + rounding * size)) {
    found.push_back(face_name(face) + " is not flat: a corner stands off its plane by " + std::to_string(highest));
    return;
  }
  const Vec3 right = glm::normalize(corners[1] - corners[0]);
  const Vec3 up = glm::cross(normal, right);
  Polygon flat;
  for (const Vec3& corner : corners) {
    flat.push_back({glm::dot(corner - middle, right), glm::dot(corner - middle, up)});
  }
  if (!is_simple(flat)) {
    found.push_back(face_name(face) + " crosses itself");
  }
}

std::size_t piece_count(const std::vector<Loop>& faces, const SideTable& sides) {
  std::vector<bool> reached(faces.size(), false);
  std::size_t pieces = 0;
  for (std::size_t first = 0; first < faces.size(); ++first) {
    if (reached[first]) {
      continue;
    }
    ++pieces;
    reached[first] = true;
    std::vector<std::size_t> open = {first};
    while (!open.empty()) {
      const Loop& loop = faces[open.back()];
      open.pop_back();
      for (std::size_t i = 0; i < loop.size(); ++i) {
        for (const SidePlace& place : sides.at({loop[(i + 1) % loop.size()], loop[i]})) {
          if (!reached[place.face.index()]) {
            reached[place.face.index()] = true;
            open.push_back(place.face.index());
          }
        }
      }
    }
  }
  return pieces;
}

void check_use(const std::vector<Loop>& faces, std::size_t vertex_count, Sentences& found) {
  std::vector<bool> used(vertex_count, false);
  for (const Loop& loop : faces) {
    for (const VertexId vertex : loop) {
      used[vertex.index()] = true;
    }
  }
  for (std::size_t v = 0; v < vertex_count; ++v) {
    if (!used[v]) {
      found.push_back("vertex " + std::to_string(v) + " belongs to no face");
    }
  }
}

}  // namespace

SideTable side_table(const std::vector<Loop>& faces) {
  SideTable sides;
  for (std::size_t f = 0; f < faces.size(); ++f) {
    for (std::size_t i = 0; i < faces[f].size(); ++i) {
      sides[{faces[f][i], faces[f][(i + 1) % faces[f].size()]}].push_back({FaceId::at(f), i});
    }
  }
  return sides;
}

std::vector<Vec3> corners_of(const std::vector<Vec3>& vertices, const Loop& loop) {
  std::vector<Vec3> corners;
  corners.reserve(loop.size());
  for (const VertexId vertex : loop) {
    corners.push_back(vertices[vertex.index()]);
  }
  return corners;
}

Vec3 area_vector(const std::vector<Vec3>& corners) {
  Vec3 sum{0, 0, 0};
  for (std::size_t i = 2; i < corners.size(); ++i) {
    sum += glm::cross(corners[i - 1] - corners[0], corners[i] - corners[0]);
  }
  return sum * 0.5;
}

namespace {

/// The tetrahedra from the first vertex to each triangle of the faces, those that face it counted as negative.
struct SignedParts {
  double sum = 0;   ///< six times the volume
  double size = 0;  ///< the same, all counted as positive
};
SignedParts cut_up(const std::vector<Vec3>& vertices, const std::vector<Loop>& faces) {
  SignedParts parts;
  const Vec3& apex = vertices.front();
  for (const Loop& loop : faces) {
    const Vec3 first = vertices[loop.front().index()] - apex;
    for (std::size_t i = 2; i < loop.size(); ++i) {
      const Vec3 second = vertices[loop[i - 1].index()] - apex;
      const double part = glm::dot(first, glm::cross(second, vertices[loop[i].index()] - apex));
      parts.sum += part;
      parts.size += std::abs(part);
    }
  }
  return parts;
}

}  // namespace

double enclosed_volume(const std::vector<Vec3>& vertices, const std::vector<Loop>& faces) {
  return cut_up(vertices, faces).sum / 6;
}

std::vector<std::string> surface_defects(const std::vector<Vec3>& vertices, const std::vector<Loop>& faces) {
  Sentences found;
  if (faces.size() < 4) {
    found.push_back("a solid needs at least 4 faces, not " + std::to_string(faces.size()));
  }
  for (std::size_t f = 0; f < faces.size(); ++f) {
    check_loop(faces[f], f, vertices.size(), found);
  }
  if (!found.empty()) {
    return found;  // the rest asks for corners that may not be there
  }
  for (std::size_t v = 0; v < vertices.size(); ++v) {
    if (!std::isfinite(vertices[v].x) || !std::isfinite(vertices[v].y) || !std::isfinite(vertices[v].z)) {
      found.push_back("vertex " + std::to_string(v) + " has a coordinate that is no number");
    }
  }
  check_use(faces, vertices.size(), found);
  const SideTable sides = side_table(faces);
  check_sides(sides, found);
  const bool closed = found.empty();
  const double size = bounding_box(vertices).diagonal();
  for (std::size_t f = 0; f < faces.size(); ++f) {
    check_flatness(corners_of(vertices, faces[f]), f, size, found);
  }
  if (!closed) {
    return found;  // pieces and volume mean nothing for an open surface
  }
  const std::size_t pieces = piece_count(faces, sides);
  if (pieces > 1) {
    found.push_back("the surface falls into " + std::to_string(pieces) + " pieces");
  }
  const SignedParts parts = cut_up(vertices, faces);
  if (!(parts.sum > tolerance * parts.size)) {
    found.push_back("the volume is not positive: the faces run clockwise seen from outside, or the solid is flat");
  }
  return found;
}

}  // namespace fw::geometry
