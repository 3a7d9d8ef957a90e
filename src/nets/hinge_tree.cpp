#include "nets/hinge_tree.hpp"

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::nets {
namespace {

std::string face_name(FaceId face) { return "face " + std::to_string(face.value); }
std::string edge_name(EdgeId edge) { return "edge " + std::to_string(edge.value); }

}  // namespace

Result<HingeTree, std::string> HingeTree::make(const Polyhedron& polyhedron, FaceId root, std::vector<EdgeId> hinges) {
  const std::size_t face_count = polyhedron.faces().size();
  if (root.index() >= face_count) {
    return failure("the net cannot stand on " + face_name(root) + ": there are only " + std::to_string(face_count) +
                   " faces");
  }
  std::sort(hinges.begin(), hinges.end());
  if (!hinges.empty() && hinges.back().index() >= polyhedron.edges().size()) {
    return failure(edge_name(hinges.back()) + " cannot be a hinge: there are only " +
                   std::to_string(polyhedron.edges().size()) + " edges");
  }
  const auto twice = std::adjacent_find(hinges.begin(), hinges.end());
  if (twice != hinges.end()) {
    return failure(edge_name(*twice) + " is named twice among the hinges");
  }
  HingeTree tree(root, std::move(hinges));
  tree.links_ = IdVector<FaceId, std::optional<Link>>(face_count);
  tree.order_.push_back(root);
  for (std::size_t next = 0; next < tree.order_.size(); ++next) {
    const FaceId face = tree.order_[next];
    const std::optional<Link> above = tree.links_[face];
    for (const EdgeId edge : polyhedron.edges_of(face)) {
      if (!tree.is_hinge(edge) || (above && above->hinge == edge)) {
        continue;
      }
      const FaceId neighbor = polyhedron.other_face(edge, face);
      if (neighbor == root || tree.links_[neighbor]) {
        return failure("the hinges join " + face_name(neighbor) + " twice, so the net cannot be laid flat");
      }
      tree.links_[neighbor] = Link{face, edge};
      tree.order_.push_back(neighbor);
    }
  }
  if (tree.order_.size() < face_count) {
    std::size_t loose = 0;
    while (FaceId::at(loose) == root || tree.links_[FaceId::at(loose)]) {
      ++loose;
    }
    return failure("no row of hinges joins " + face_name(FaceId::at(loose)) + " to " + face_name(root));
  }
  return tree;
}

bool HingeTree::is_hinge(EdgeId edge) const { return std::binary_search(hinges_.begin(), hinges_.end(), edge); }

std::vector<FaceId> HingeTree::subtree(FaceId face) const {
  IdVector<FaceId, char> inside(links_.size(), 0);
  std::vector<FaceId> found;
  for (const FaceId next : order_) {
    const std::optional<Link>& above = links_[next];
    if (next == face || (above && inside[above->parent] != 0)) {
      inside[next] = 1;
      found.push_back(next);
    }
  }
  return found;
}

Result<HingeTree, std::string> moved(const Polyhedron& polyhedron, const HingeTree& tree, FaceId face, EdgeId edge) {
  const std::vector<EdgeId>& sides = polyhedron.edges_of(face);
  if (std::find(sides.begin(), sides.end(), edge) == sides.end()) {
    return failure(edge_name(edge) + " is no edge of " + face_name(face));
  }
  const std::optional<HingeTree::Link>& link = tree.link(face);
  if (!link) {
    return failure(face_name(face) + " lies on the table and hangs on no other face");
  }
  if (link->hinge == edge) {
    return failure(face_name(face) + " hangs on " + edge_name(edge) + " already");
  }
  const FaceId neighbor = polyhedron.other_face(edge, face);
  const std::vector<FaceId> moving = tree.subtree(face);
  if (std::find(moving.begin(), moving.end(), neighbor) != moving.end()) {
    return failure(face_name(neighbor) + " hangs on " + face_name(face) + " itself and cannot hold it");
  }
  std::vector<EdgeId> hinges = tree.hinges();
  std::replace(hinges.begin(), hinges.end(), link->hinge, edge);
  return HingeTree::make(polyhedron, tree.root(), std::move(hinges));
}

HingeTree rerooted(const Polyhedron& polyhedron, const HingeTree& tree, FaceId root) {
  Result<HingeTree, std::string> made = HingeTree::make(polyhedron, root, tree.hinges());
  ensure(made.has_value(), "a net was stood on a face that is not its own");
  return std::move(made).value();
}

std::vector<EdgeId> possible_hinges(const Polyhedron& polyhedron, const HingeTree& tree, FaceId face) {
  std::vector<EdgeId> possible;
  const std::optional<HingeTree::Link>& link = tree.link(face);
  if (!link) {
    return possible;
  }
  const std::vector<FaceId> moving = tree.subtree(face);
  for (const EdgeId edge : polyhedron.edges_of(face)) {
    const FaceId neighbor = polyhedron.other_face(edge, face);
    if (edge != link->hinge && std::find(moving.begin(), moving.end(), neighbor) == moving.end()) {
      possible.push_back(edge);
    }
  }
  return possible;
}

}  // namespace fw::nets
