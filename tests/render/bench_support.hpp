#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

#include "base/ensure.hpp"
#include "geometry/polygon.hpp"
#include "geometry/ray.hpp"
#include "nets/folding.hpp"
#include "nets/layout.hpp"
#include "render/bench_scene.hpp"

// Benches to draw, and what must be seen there according to rays alone.
namespace fw::test {

/// The net that grows from the first face outward, face by face.
inline nets::HingeTree broad_net(const geometry::Polyhedron& solid) {
  std::vector<char> reached(solid.faces().size(), 0);
  std::vector<geometry::FaceId> queue{geometry::FaceId::at(0)};
  std::vector<geometry::EdgeId> hinges;
  reached[0] = 1;
  for (std::size_t i = 0; i < queue.size(); ++i) {
    for (const geometry::EdgeId edge : solid.edges_of(queue[i])) {
      const geometry::FaceId next = solid.other_face(edge, queue[i]);
      if (reached[next.index()] != 0) continue;
      reached[next.index()] = 1;
      hinges.push_back(edge);
      queue.push_back(next);
    }
  }
  auto tree = nets::HingeTree::make(solid, geometry::FaceId::at(0), hinges);
  ensure(tree.has_value(), "a spanning tree of the faces is a net");
  return std::move(tree).value();
}

/// Whether faces of that net lie on each other.
inline bool overlaps_itself(const geometry::Polyhedron& solid) {
  return !nets::overlapping(nets::unfolded(solid, broad_net(solid))).empty();
}

inline nets::Pose opened(const geometry::Polyhedron& solid, double amount) {
  return nets::pose(solid, broad_net(solid), amount, nets::FoldOrder::Together);
}

inline std::vector<geometry::Vec3> all_corners(const nets::Pose& pose) {
  std::vector<geometry::Vec3> corners;
  for (const auto& face : pose) corners.insert(corners.end(), face.begin(), face.end());
  return corners;
}

/// A look in which every face has a color of its own; no lines.
inline render::BenchLook plain_look(nets::Pose pose, float opacity) {
  render::BenchLook look;
  for (std::size_t face = 0; face < pose.size(); ++face) {
    const auto level = [face](std::size_t step) { return static_cast<float>(face * step % 7 + 1) / 8.0F; };
    render::FaceLook added;
    added.fill = {level(2), level(3), level(5), opacity};
    look.looks.push_back(added);
  }
  look.faces = std::move(pose);
  look.edge.width_px = 0;
  return look;
}

/// How many pixels a pixel is from the nearest side of any face, as the camera sees it.
inline double pixels_to_a_side(const nets::Pose& pose, const render::Camera& camera, const render::Viewport& viewport,
                               geometry::Vec2 pixel) {
  double nearest = 1e9;
  for (const auto& face : pose) {
    for (std::size_t i = 0; i < face.size(); ++i) {
      const geometry::Vec2 from = camera.project(face[i], viewport).pixel;
      const geometry::Vec2 along = camera.project(face[(i + 1) % face.size()], viewport).pixel - from;
      const double share =
          std::clamp(glm::dot(pixel - from, along) / std::max(glm::dot(along, along), 1e-12), 0.0, 1.0);
      nearest = std::min(nearest, glm::length(pixel - from - along * share));
    }
  }
  return nearest;
}

struct Met {
  std::size_t face = 0;
  double distance = 0;
};
/// Every face that a ray meets, the farthest first.
inline std::vector<Met> faces_met(const nets::Pose& pose, const geometry::Ray& ray) {
  std::vector<Met> met;
  for (std::size_t face = 0; face < pose.size(); ++face) {
    if (const auto hit = geometry::nearest_hit({pose[face]}, ray)) met.push_back({face, hit->distance});
  }
  std::sort(met.begin(), met.end(), [](const Met& a, const Met& b) { return a.distance > b.distance; });
  return met;
}

}  // namespace fw::test
