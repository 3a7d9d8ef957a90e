#include "solids/body/body_nets.hpp"

#include "nets/folding.hpp"
#include "nets/spanning_trees.hpp"

namespace fw::solids {

Result<nets::HingeTree, std::string> net_with(const Body& body, FaceId root, std::vector<EdgeId> hinges) {
  return nets::HingeTree::make(body.facets(), root, std::move(hinges));
}

Result<nets::HingeTree, std::string> moved(const Body& body, const nets::HingeTree& net, FaceId face, EdgeId edge) {
  return nets::moved(body.facets(), net, face, edge);
}

std::vector<EdgeId> possible_hinges(const Body& body, const nets::HingeTree& net, FaceId face) {
  return has_other_nets(body) ? nets::possible_hinges(body.facets(), net, face) : std::vector<EdgeId>{};
}

nets::Layout unfolded(const Body& body, const nets::HingeTree& net) { return nets::unfolded(body.facets(), net); }

std::vector<geometry::Polygon> laid_faces(const Body& body, const nets::HingeTree& net) {
  const nets::Layout layout = nets::unfolded(body.facets(), net);
  std::vector<geometry::Polygon> laid;
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    const FaceId face = FaceId::at(i);
    laid.push_back(body.bends(face) ? body.outline_of_strips(face, {layout.begin(), layout.end()}) : layout[face]);
  }
  return laid;
}

static_assert(most_edges_for_nets == nets::most_mask_edges);
double opening_angle_rad(const Body& body, EdgeId edge) { return nets::opening_angle_rad(body.facets(), edge); }

bool has_other_nets(const Body& body) { return body.is_flat_faced(); }
bool can_list_nets(const Body& body) { return has_other_nets(body) && body.edge_count() <= most_edges_for_nets; }

nets::NetList distinct_nets(const Body& body, FaceId root, std::size_t limit) {
  return nets::distinct_nets(body.facets(), root, limit);
}

nets::NetCount count_nets(const Body& body, const nets::NetsSoFar& so_far) {
  return nets::count_nets(body.facets(), so_far);
}
std::uint64_t net_class(const Body& body, const nets::HingeTree& net) { return nets::net_class(body.facets(), net); }
std::string labelled_count(const Body& body) { return nets::labelled_count(body.facets()); }
double labelled_count_estimate(const Body& body) { return nets::labelled_count_estimate(body.facets()); }

nets::Cutout cutout_of(const Body& body, const nets::HingeTree& net) { return nets::cutout_of(body.facets(), net); }
nets::FoldTest fold_test(const Body& body, const nets::Cutout& cutout) {
  return nets::fold_test(body.facets(), cutout);
}

nets::HingeTree tree_of(const Body& body, const nets::Cutout& cutout, const nets::FoldTest& test) {
  return nets::tree_of(body.facets(), cutout, test);
}

nets::Pose pose(const Body& body, const nets::Cutout& cutout, const nets::FoldTest& test, double amount) {
  return nets::pose(body.facets(), cutout, test, amount);
}

}  // namespace fw::solids
