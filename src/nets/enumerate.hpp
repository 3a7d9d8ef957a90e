#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <vector>

#include "nets/hinge_tree.hpp"

namespace fw::nets {

/// The number of hinge trees, each face and edge being told apart, as a decimal number of any length.
/// Source: Kirchhoff's matrix tree theorem, in exact whole numbers.
[[nodiscard]] std::string labelled_count(const Polyhedron& polyhedron);
/// The same as a double, for comparing with a limit.
[[nodiscard]] double labelled_count_estimate(const Polyhedron& polyhedron);

/// Calls `found` once for each distinct net, turns and flips of the solid counting as one, until it returns
/// false. The net given stands for its class (the one with the least set of hinges). The hinge sets are edge
/// masks: bit i is EdgeId i. Requires: at most 64 edges.
/// Cost: one step a labelled tree.
void for_each_distinct_net(const Polyhedron& polyhedron, const std::function<bool(std::uint64_t hinges)>& found);

/// As above as trees standing on `root`, at most `limit` of them.
struct NetList {
  std::vector<HingeTree> nets;
  bool complete = true;  ///< false: there are more than the limit
};
[[nodiscard]] NetList distinct_nets(const Polyhedron& polyhedron, FaceId root, std::size_t limit);

struct NetCount {
  std::string labelled;
  std::uint64_t distinct = 0;
  std::uint64_t overlapping = 0;  ///< distinct nets whose layout overlaps itself
};
/// Counts all distinct nets and tests each for overlap. Requires: at most 64 edges. `so_far`, if any, is told the
/// distinct nets from time to time, since the count may take a minute.
using NetsSoFar = std::function<void(std::uint64_t distinct)>;
[[nodiscard]] NetCount count_nets(const Polyhedron& polyhedron, const NetsSoFar& so_far = {});

/// The mask of the class that a tree belongs to: equal for two trees exactly when a symmetry carries one to
/// the other. Requires: at most 64 edges.
[[nodiscard]] std::uint64_t net_class(const Polyhedron& polyhedron, const HingeTree& tree);

}  // namespace fw::nets
