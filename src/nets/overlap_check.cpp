#include "nets/overlap_check.hpp"

#include <algorithm>
#include <limits>

#include "geometry/tolerance.hpp"

namespace fw::nets {
namespace {

using geometry::Polygon;
using geometry::Vec2;

Polygon centered(Polygon polygon) {
  Vec2 middle{0, 0};
  for (const Vec2& corner : polygon) {
    middle += corner / static_cast<double>(polygon.size());
  }
  for (Vec2& corner : polygon) {
    corner -= middle;
  }
  return polygon;
}

}  // namespace

OverlapCheck::OverlapCheck(const Polyhedron& polyhedron)
    : placings_(polyhedron.faces().size()), parent_(polyhedron.faces().size()) {
  double total = 0;
  double thinnest = std::numeric_limits<double>::infinity();
  for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
    Face face;
    face.polygon = centered(geometry::flat_face(polyhedron, FaceId::at(f)));
    all_convex_ = all_convex_ && geometry::is_convex(face.polygon);
    for (std::size_t i = 0; i < face.polygon.size(); ++i) {
      const Vec2 along = glm::normalize(face.polygon[(i + 1) % face.polygon.size()] - face.polygon[i]);
      face.outward.push_back({along.y, -along.x});
      face.radius = std::max(face.radius, glm::length(face.polygon[i]));
    }
    total = std::max(total, face.radius);
    thinnest = std::min(thinnest, geometry::signed_area(face.polygon) / (2 * face.radius));
    faces_.push_back(std::move(face));
  }
  reach_ = std::max(geometry::tolerance * thinnest, geometry::rounding_when_laid * total);
  for (std::size_t f = 0; f < faces_.size(); ++f) {
    const std::vector<EdgeId>& edges = polyhedron.edges_of(FaceId::at(f));
    for (std::size_t i = 0; i < edges.size(); ++i) {
      const std::size_t neighbor = polyhedron.other_face(edges[i], FaceId::at(f)).index();
      const std::vector<EdgeId>& theirs = polyhedron.edges_of(FaceId::at(neighbor));
      const auto side = static_cast<std::size_t>(std::find(theirs.begin(), theirs.end(), edges[i]) - theirs.begin());
      const Vec2 out = faces_[f].outward[i];
      const Vec2 in = -faces_[neighbor].outward[side];
      // The neighbor is turned so that its side faces against this one, and shifted onto it.
      Placing placing{{glm::dot(in, out), in.x * out.y - in.y * out.x}, {0, 0}};
      const auto middle = [](const Polygon& polygon, std::size_t at) {
        return (polygon[at] + polygon[(at + 1) % polygon.size()]) * 0.5;
      };
      placing.shift = middle(faces_[f].polygon, i) - placing.turned(middle(faces_[neighbor].polygon, side));
      faces_[f].sides.push_back({neighbor, EdgeMask{1} << edges[i].index(), placing});
    }
  }
}

bool OverlapCheck::overlaps(EdgeMask hinges) {
  lay(hinges);
  for (std::size_t a = 0; a < faces_.size(); ++a) {
    for (std::size_t b = a + 1; b < faces_.size(); ++b) {
      if (pair_overlaps(a, b)) {
        return true;
      }
    }
  }
  return false;
}

void OverlapCheck::lay(EdgeMask hinges) {
  order_.assign(1, 0);
  placings_[0] = {};
  parent_[0] = 0;
  for (std::size_t next = 0; next < order_.size(); ++next) {
    const std::size_t face = order_[next];
    for (const Side& side : faces_[face].sides) {
      if ((side.edge & hinges) != 0 && (face == 0 || side.neighbor != parent_[face])) {
        placings_[side.neighbor] = side.placing.then_in(placings_[face]);
        parent_[side.neighbor] = face;
        order_.push_back(side.neighbor);
      }
    }
  }
}

bool OverlapCheck::pair_overlaps(std::size_t a, std::size_t b) const {
  const Vec2 apart = placings_[b].shift - placings_[a].shift;
  const double touching = faces_[a].radius + faces_[b].radius;
  if (glm::dot(apart, apart) >= touching * touching) {
    return false;
  }
  if (all_convex_) {
    return parent_[a] != b && parent_[b] != a && !side_separates(a, b) && !side_separates(b, a);
  }
  const auto placed = [this](std::size_t face) {
    Polygon polygon;
    for (const Vec2& corner : faces_[face].polygon) {
      polygon.push_back(placings_[face].turned(corner) + placings_[face].shift);
    }
    return polygon;
  };
  return geometry::overlap(placed(a), placed(b));
}

bool OverlapCheck::side_separates(std::size_t a, std::size_t b) const {
  // All in the frame of `a`.
  const Placing& home = placings_[a];
  const auto back = [&home](Vec2 p) {
    return Vec2{p.x * home.turn.x + p.y * home.turn.y, p.y * home.turn.x - p.x * home.turn.y};
  };
  const Placing other{back(placings_[b].turn), back(placings_[b].shift - home.shift)};
  for (std::size_t i = 0; i < faces_[a].polygon.size(); ++i) {
    const Vec2 outward = faces_[a].outward[i];
    const double line = glm::dot(faces_[a].polygon[i], outward) - reach_;
    const double center = glm::dot(other.shift, outward);
    const Vec2 seen = {glm::dot(outward, other.turn), outward.y * other.turn.x - outward.x * other.turn.y};
    bool outside = center > line;
    for (std::size_t k = 0; k < faces_[b].polygon.size() && outside; ++k) {
      outside = center + glm::dot(faces_[b].polygon[k], seen) >= line;
    }
    if (outside) {
      return true;
    }
  }
  return false;
}

}  // namespace fw::nets
