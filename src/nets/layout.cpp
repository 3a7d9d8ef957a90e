#include "nets/layout.hpp"

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::nets {
namespace {

using geometry::Polygon;
using geometry::Vec2;

std::size_t side_of(const Polyhedron& polyhedron, FaceId face, EdgeId edge) {
  const std::vector<EdgeId>& sides = polyhedron.edges_of(face);
  return static_cast<std::size_t>(std::find(sides.begin(), sides.end(), edge) - sides.begin());
}

Vec2 turned(Vec2 point, Vec2 by) { return {point.x * by.x - point.y * by.y, point.x * by.y + point.y * by.x}; }

struct FlatBox {
  Vec2 lowest, highest;
};
FlatBox flat_box(const Polygon& polygon) {
  FlatBox box{polygon.front(), polygon.front()};
  for (const Vec2& corner : polygon) {
    box.lowest = {std::min(box.lowest.x, corner.x), std::min(box.lowest.y, corner.y)};
    box.highest = {std::max(box.highest.x, corner.x), std::max(box.highest.y, corner.y)};
  }
  return box;
}

}  // namespace

Polygon laid_on(const Polygon& polygon, std::size_t side, Vec2 from, Vec2 to) {
  const Vec2& start = polygon[side];
  const Vec2 along = polygon[(side + 1) % polygon.size()] - start;
  const Vec2 wanted = to - from;
  const Vec2 turn = glm::normalize(Vec2{glm::dot(along, wanted), along.x * wanted.y - along.y * wanted.x});
  const Vec2 middle = (from + to) * 0.5;
  const Vec2 own_middle = start + along * 0.5;
  Polygon laid;
  laid.reserve(polygon.size());
  for (const Vec2& corner : polygon) {
    laid.push_back(middle + turned(corner - own_middle, turn));
  }
  return laid;
}

Layout unfolded(const Polyhedron& polyhedron, const HingeTree& tree) {
  ensure(tree.order().size() == polyhedron.faces().size(), "a net was laid flat that belongs to another solid");
  Layout layout(polyhedron.faces().size());
  for (const FaceId face : tree.order()) {
    const Polygon polygon = geometry::flat_face(polyhedron, face);
    const std::optional<HingeTree::Link>& link = tree.link(face);
    if (!link) {
      layout[face] = polygon;
      continue;
    }
    const Polygon& parent = layout[link->parent];
    const std::size_t parent_side = side_of(polyhedron, link->parent, link->hinge);
    // The two faces run through their hinge in opposite directions.
    layout[face] = laid_on(polygon, side_of(polyhedron, face, link->hinge), parent[(parent_side + 1) % parent.size()],
                           parent[parent_side]);
  }
  return layout;
}

std::vector<std::pair<std::size_t, std::size_t>> overlapping_pairs(const std::vector<Polygon>& polygons) {
  std::vector<FlatBox> boxes;
  boxes.reserve(polygons.size());
  for (const Polygon& polygon : polygons) {
    boxes.push_back(flat_box(polygon));
  }
  std::vector<std::pair<std::size_t, std::size_t>> pairs;
  for (std::size_t a = 0; a < polygons.size(); ++a) {
    for (std::size_t b = a + 1; b < polygons.size(); ++b) {
      const bool near = boxes[a].lowest.x < boxes[b].highest.x && boxes[b].lowest.x < boxes[a].highest.x &&
                        boxes[a].lowest.y < boxes[b].highest.y && boxes[b].lowest.y < boxes[a].highest.y;
      if (near && geometry::overlap(polygons[a], polygons[b])) {
        pairs.push_back({a, b});
      }
    }
  }
  return pairs;
}

std::vector<std::pair<FaceId, FaceId>> overlapping(const Layout& layout) {
  std::vector<std::pair<FaceId, FaceId>> pairs;
  for (const auto& [a, b] : overlapping_pairs({layout.begin(), layout.end()})) {
    pairs.push_back({FaceId::at(a), FaceId::at(b)});
  }
  return pairs;
}

}  // namespace fw::nets
