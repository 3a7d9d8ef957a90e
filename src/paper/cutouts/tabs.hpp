#pragma once

#include <optional>
#include <vector>

#include "nets/hinge_tree.hpp"
#include "paper/cutouts/fit.hpp"
#include "solids/body/body.hpp"

namespace fw::paper {

using solids::Body;
using solids::EdgeId;
using solids::FaceId;

/// A side of a face as it lies in a net: from corner `side` to the next one.
struct NetSide {
  FaceId face;
  std::size_t side = 0;
  friend bool operator==(const NetSide&, const NetSide&) = default;
};

/// Two sides of a net that meet when it is folded, and the tab that joins them.
struct GluedPair {
  EdgeId edge;
  NetSide a, b;
  std::optional<NetSide> tab_on;  ///< one of the two; nothing: they are taped
  Polygon tab;                    ///< counterclockwise, outside of the face; its first side is part of the face's
  double depth = 0;
};

/// A net as it lies on paper, in millimeters, y up, seen from outside.
struct FlatNet {
  std::vector<Polygon> faces;    ///< [face][corner]; none for a face that is left out
  std::vector<EdgeId> folds;     ///< hinges between faces that are there
  std::vector<GluedPair> pairs;  ///< cut edges between faces that are there
  [[nodiscard]] std::size_t taped() const;
};

/// The net at this size, without tabs. `open`: faces that are left out, each a leaf of the net.
[[nodiscard]] FlatNet flat_net(const Body& body, const nets::HingeTree& tree, double mm_per_unit,
                               const std::vector<FaceId>& open);

/// Chooses the tabs: as many as can be, each deep enough to be glued, none that runs into a face or another tab, none
/// that would show or stick out when it is glued to its mate. A tab does not take the whole side: at each end it leaves
/// room for the other sides of its mate, and for its neighbor in the plane. Source of the depths and slopes: common
/// practice, no source.
void add_tabs(FlatNet& net, const nets::HingeTree& tree);

}  // namespace fw::paper
