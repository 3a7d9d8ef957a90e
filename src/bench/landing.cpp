#include "bench/landing.hpp"

#include <algorithm>

#include "solids/body/body_nets.hpp"
#include "solids/body/standing.hpp"

namespace fw::bench {
namespace {

using figures::Vec2;

std::vector<Vec2> outline_seen(const BenchPicture& picture, const std::vector<geometry::Vec3>& corners) {
  std::vector<Vec2> outline;
  outline.reserve(corners.size());
  for (const geometry::Vec3& corner : corners) {
    outline.push_back(picture.camera.project(corner, picture.viewport).pixel + Vec2{picture.rect.x, picture.rect.y});
  }
  return outline;
}

}  // namespace

std::vector<Vec2> outline_of(const BenchPicture& picture, FaceId face) {
  const auto found = std::find(picture.faces.begin(), picture.faces.end(), face);
  if (found == picture.faces.end()) {
    return {};
  }
  return outline_seen(picture, picture.look.faces[static_cast<std::size_t>(found - picture.faces.begin())]);
}

std::vector<Landing> landings(const BenchPicture& picture, const Model& model, FaceId carried) {
  const Desk& desk = model.state.desk();
  const solids::Body& body = desk.solid.body();
  const auto here = desk.net.link(carried);
  std::vector<Landing> all;
  for (const EdgeId edge : solids::possible_hinges(body, desk.net, carried)) {
    const auto net = solids::moved(body, desk.net, carried, edge);
    if (!net || (here && here->hinge == edge)) {
      continue;
    }
    const solids::Standing there = solids::standing(body, net.value(), model.view.fold, model.view.order);
    const auto facet = std::find(there.faces.begin(), there.faces.end(), carried);
    all.push_back({edge, outline_seen(picture, there.corners[static_cast<std::size_t>(facet - there.faces.begin())])});
  }
  return all;
}

const Landing* landing_near(const std::vector<Landing>& all, const BenchPicture& picture, const Desk& desk,
                            FaceId carried, Vec2 pixel) {
  const Landing* nearest = nullptr;
  double nearest_distance = 0;
  for (const Landing& one : all) {
    const figures::Rect box = figures::bounding_rect(one.outline);
    const double distance = glm::length(box.center() - pixel);
    if (distance <= std::max(box.w, box.h) && (nearest == nullptr || distance < nearest_distance)) {
      nearest = &one;
      nearest_distance = distance;
    }
  }
  if (nearest != nullptr) {
    return nearest;
  }
  const std::optional<FaceId> under = face_at(picture, pixel);
  const auto at_face = std::find_if(all.begin(), all.end(), [&](const Landing& one) {
    return under && desk.solid.body().across(one.edge, carried) == *under;
  });
  return at_face == all.end() ? nullptr : &*at_face;
}

}  // namespace fw::bench
