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

/// A small tab at a rim, folded in and glued under the disk.
struct Tooth {
  std::vector<Vec2> foot;   ///< along the rim, as it runs
  Polygon shape;            ///< counterclockwise, outside of the face; its last two corners are the top
  double from = 0, to = 0;  ///< along the rim
};

/// Where a face that bends and a flat one meet all round. The two lines are equally long, piece by piece.
struct Rim {
  FaceId side, disk;
  std::vector<Vec2> on_side;            ///< counterclockwise round the face that bends; none: it is left out
  std::vector<Vec2> on_disk;            ///< where those points come to lie; the first is the last; none: it is left out
  std::optional<std::size_t> from, to;  ///< the points between which the two stay joined
  std::vector<Tooth> teeth;
  [[nodiscard]] bool is_glued() const { return !on_side.empty() && !on_disk.empty(); }
};

/// A net as it lies on paper, in millimeters, y up, seen from outside.
struct FlatNet {
  /// A side that isn't part of a rim, and its edge.
  struct Straight {
    NetSide at;
    EdgeId edge;
  };
  std::vector<Polygon> faces;       ///< [face][corner]; none for a face that is left out
  std::vector<Straight> straights;  ///< of all faces that are there
  std::vector<EdgeId> folds;        ///< hinges between flat faces that are there
  std::vector<GluedPair> pairs;     ///< cut edges between faces that are there; the seam of one that bends
  std::vector<Rim> rims;
  std::vector<std::size_t> from_root;  ///< of each face: over how many hinges it hangs
  FaceId lid{};                        ///< the face that closes last
  [[nodiscard]] std::size_t taped() const;
};

/// The net at this size, without tabs and teeth. `open`: faces that are left out, each a leaf of the net.
[[nodiscard]] FlatNet flat_net(const Body& body, const nets::HingeTree& tree, double mm_per_unit,
                               const std::vector<FaceId>& open);

/// Whether nothing else hangs on the face, so that it can be left out.
[[nodiscard]] bool is_leaf(const Body& body, const nets::HingeTree& tree, FaceId face);

/// The side of a face of the net along which two points of flat(face) lie: the ends of a length.
[[nodiscard]] std::optional<std::size_t> side_along(const Body& body, FaceId face, geometry::Vec3 from,
                                                    geometry::Vec3 to);

/// The turn, or half a turn more, so that the upper end of a face that bends is not below.
[[nodiscard]] double upright(const FlatNet& net, double angle_rad);

/// All corners of faces, tabs and teeth.
[[nodiscard]] std::vector<Vec2> corners_of(const FlatNet& net);
/// Turned, and moved so that its lower left corner is the origin.
[[nodiscard]] FlatNet placed(FlatNet net, double angle_rad);

}  // namespace fw::paper
