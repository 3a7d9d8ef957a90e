#include "nets/enumerate.hpp"

#include "base/ensure.hpp"
#include "geometry/symmetry.hpp"
#include "nets/matrix_tree.hpp"
#include "nets/overlap_check.hpp"
#include "nets/spanning_trees.hpp"

namespace fw::nets {

std::string labelled_count(const Polyhedron& polyhedron) {
  const BigDigits count = spanning_tree_count(polyhedron);
  std::string text;
  for (std::size_t i = count.size(); i-- > 0;) {
    const std::string digits = std::to_string(count[i]);
    text += text.empty() ? digits : std::string(9 - digits.size(), '0') + digits;
  }
  return text.empty() ? "0" : text;
}

double labelled_count_estimate(const Polyhedron& polyhedron) {
  const BigDigits count = spanning_tree_count(polyhedron);
  double estimate = 0;
  for (std::size_t i = count.size(); i-- > 0;) {
    estimate = estimate * 1e9 + count[i];
  }
  return estimate;
}

void for_each_distinct_net(const Polyhedron& polyhedron, const std::function<bool(std::uint64_t hinges)>& found) {
  TreeWalk(polyhedron, found).run();
}

NetList distinct_nets(const Polyhedron& polyhedron, FaceId root, std::size_t limit) {
  NetList list;
  for_each_distinct_net(polyhedron, [&](EdgeMask hinges) {
    if (list.nets.size() == limit) {
      list.complete = false;
      return false;
    }
    Result<HingeTree, std::string> tree = HingeTree::make(polyhedron, root, edges_of_mask(hinges));
    ensure(tree.has_value(), "a spanning tree was listed that is none");
    list.nets.push_back(std::move(tree).value());
    return true;
  });
  return list;
}

NetCount count_nets(const Polyhedron& polyhedron, const NetsSoFar& so_far) {
  constexpr std::uint64_t told_every = 1024;
  NetCount count;
  count.labelled = labelled_count(polyhedron);
  OverlapCheck check(polyhedron);
  for_each_distinct_net(polyhedron, [&](EdgeMask hinges) {
    ++count.distinct;
    count.overlapping += check.overlaps(hinges) ? 1U : 0U;
    if (so_far && count.distinct % told_every == 0) {
      so_far(count.distinct);
    }
    return true;
  });
  return count;
}

std::uint64_t net_class(const Polyhedron& polyhedron, const HingeTree& tree) {
  ensure(polyhedron.edges().size() <= most_mask_edges, "nets are classed only for solids of at most 64 edges");
  EdgeMask least = mask_of(tree);
  for (const geometry::Symmetry& symmetry : geometry::symmetries(polyhedron)) {
    EdgeMask image = 0;
    for (const EdgeId hinge : tree.hinges()) {
      image |= EdgeMask{1} << symmetry.edge[hinge].index();
    }
    least = image < least ? image : least;
  }
  return least;
}

}  // namespace fw::nets
