#include "nets/spanning_trees.hpp"

#include <bit>

#include "base/ensure.hpp"

namespace fw::nets {
namespace {

EdgeMask bit(std::size_t edge) { return EdgeMask{1} << edge; }

std::size_t lowest(EdgeMask mask) { return static_cast<std::size_t>(std::countr_zero(mask)); }

/// The bits from `first` up to, not including, `end`.
EdgeMask bits_between(std::size_t first, std::size_t end) {
  const EdgeMask below_end = end >= most_mask_edges ? ~EdgeMask{0} : bit(end) - 1;
  return first >= most_mask_edges ? 0 : below_end & ~(bit(first) - 1);
}

}  // namespace

EdgeMask mask_of(const HingeTree& tree) {
  EdgeMask mask = 0;
  for (const EdgeId hinge : tree.hinges()) {
    mask |= bit(hinge.index());
  }
  return mask;
}

std::vector<EdgeId> edges_of_mask(EdgeMask mask) {
  std::vector<EdgeId> edges;
  for (; mask != 0; mask &= mask - 1) {
    edges.push_back(EdgeId::at(lowest(mask)));
  }
  return edges;
}

EdgeAction::EdgeAction(const geometry::Symmetry& symmetry)
    : table_((symmetry.edge.size() + 7) / 8), byte_count_(table_.size()) {
  for (std::size_t byte = 0; byte < byte_count_; ++byte) {
    table_[byte][0] = 0;
    for (std::size_t set = 1; set < 256; ++set) {
      const std::size_t edge = 8 * byte + lowest(set);
      const EdgeMask image = edge < symmetry.edge.size() ? bit(symmetry.edge[EdgeId::at(edge)].index()) : 0;
      table_[byte][set] = table_[byte][set & (set - 1)] | image;
    }
  }
}

TreeWalk::TreeWalk(const Polyhedron& polyhedron, const Found& found)
    : found_(found),
      edge_count_(polyhedron.edges().size()),
      face_count_(polyhedron.faces().size()),
      around_(face_count_, 0) {
  ensure(edge_count_ <= most_mask_edges, "nets are listed only for solids of at most 64 edges");
  for (std::size_t e = 0; e < edge_count_; ++e) {
    const geometry::Edge& edge = polyhedron.edges()[EdgeId::at(e)];
    ends_.push_back({edge.left.index(), edge.right.index()});
    around_[edge.left.index()] |= bit(e);
    around_[edge.right.index()] |= bit(e);
  }
  for (const geometry::Symmetry& symmetry : geometry::symmetries(polyhedron)) {
    actions_.emplace_back(symmetry);
  }
  for (std::size_t left = 0; left <= edge_count_; ++left) {
    std::vector<EdgeMask> row;
    for (const EdgeAction& action : actions_) {
      const EdgeMask image = action(bits_between(left, edge_count_));
      std::size_t lowest_known = edge_count_;
      while (lowest_known > left && (image & bit(lowest_known - 1)) != 0) {
        --lowest_known;
      }
      row.push_back(bits_between(lowest_known, edge_count_));
    }
    known_.push_back(std::move(row));
  }
}

void TreeWalk::run() {
  stopped_ = false;
  Rivals rivals;
  for (std::size_t i = 1; i < actions_.size(); ++i) {  // the identity is no rival
    rivals.push_back(static_cast<std::uint32_t>(i));
  }
  decide(edge_count_, 0, 0, rivals);
}

void TreeWalk::decide(std::size_t edges_left, EdgeMask taken, std::size_t taken_count, const Rivals& rivals) {
  Rivals open;
  if (taken_count + 1 == face_count_) {
    if (compare(0, taken, rivals, open) == Verdict::Go) {
      stopped_ = !found_(taken);
    }
    return;
  }
  if (compare(edges_left, taken, rivals, open) == Verdict::Prune) {
    return;
  }
  const std::size_t edge = edges_left - 1;
  const auto& [left, right] = ends_[edge];
  if (connected(left, right, taken | bits_between(0, edge))) {
    decide(edge, taken, taken_count, open);
  }
  if (!stopped_ && !connected(left, right, taken)) {
    decide(edge, taken | bit(edge), taken_count + 1, open);
  }
}

TreeWalk::Verdict TreeWalk::compare(std::size_t edges_left, EdgeMask taken, const Rivals& before, Rivals& after) const {
  after.reserve(before.size());
  for (const std::uint32_t rival : before) {
    const EdgeMask known = known_[edges_left][rival];
    const EdgeMask image = actions_[rival](taken) & known;
    const EdgeMask own = taken & known;
    if (image < own) {
      return Verdict::Prune;
    }
    if (image == own) {
      after.push_back(rival);
    }
  }
  return Verdict::Go;
}

bool TreeWalk::connected(std::size_t from, std::size_t to, EdgeMask usable) const {
  std::uint64_t reached = bit(from);
  std::uint64_t open = reached;
  while (open != 0) {
    const std::size_t face = lowest(open);
    open &= open - 1;
    for (EdgeMask edges = around_[face] & usable; edges != 0; edges &= edges - 1) {
      const auto& ends = ends_[lowest(edges)];
      const std::uint64_t fresh = bit(ends[0] == face ? ends[1] : ends[0]) & ~reached;
      reached |= fresh;
      open |= fresh;
    }
    if ((reached & bit(to)) != 0) {
      return true;
    }
  }
  return false;
}

}  // namespace fw::nets
