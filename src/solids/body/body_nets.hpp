#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "nets/enumerate.hpp"
#include "nets/fold_test.hpp"
#include "nets/layout.hpp"
#include "solids/body/body.hpp"

// What a body is asked about its nets: the questions of the room nets, which says more about each.
namespace fw::solids {

/// The net in which these edges stay joined. Errors: as nets::HingeTree::make().
[[nodiscard]] Result<nets::HingeTree, std::string> net_with(const Body& body, FaceId root, std::vector<EdgeId> hinges);
/// Errors: as nets::moved().
[[nodiscard]] Result<nets::HingeTree, std::string> moved(const Body& body, const nets::HingeTree& net, FaceId face,
                                                         EdgeId edge);
/// None where the body has_other_nets() not.
[[nodiscard]] std::vector<EdgeId> possible_hinges(const Body& body, const nets::HingeTree& net, FaceId face);
/// One polygon a facet.
[[nodiscard]] nets::Layout unfolded(const Body& body, const nets::HingeTree& net);
/// One polygon a face, one that bends in one piece.
[[nodiscard]] std::vector<geometry::Polygon> laid_faces(const Body& body, const nets::HingeTree& net);

/// How far the two faces at an edge turn to lie flat, in radians; negative where the solid is dented there, so that
/// paper folds the other way.
[[nodiscard]] double opening_angle_rad(const Body& body, EdgeId edge);

/// Whether its faces can be joined in other ways than in the usual net. Where a face bends they stay as they are.
[[nodiscard]] bool has_other_nets(const Body& body);
inline constexpr std::size_t most_edges_for_nets = 64;
/// Whether its nets can be listed, counted and told apart: it has other nets than the usual one, and few enough edges.
[[nodiscard]] bool can_list_nets(const Body& body);
/// Requires: can_list_nets(), as the next two.
[[nodiscard]] nets::NetList distinct_nets(const Body& body, FaceId root, std::size_t limit);
[[nodiscard]] nets::NetCount count_nets(const Body& body, const nets::NetsSoFar& so_far = {});
[[nodiscard]] std::uint64_t net_class(const Body& body, const nets::HingeTree& net);
[[nodiscard]] std::string labelled_count(const Body& body);
[[nodiscard]] double labelled_count_estimate(const Body& body);

[[nodiscard]] nets::Cutout cutout_of(const Body& body, const nets::HingeTree& net);
[[nodiscard]] nets::FoldTest fold_test(const Body& body, const nets::Cutout& cutout);
/// Requires: test.is_net().
[[nodiscard]] nets::HingeTree tree_of(const Body& body, const nets::Cutout& cutout, const nets::FoldTest& test);
/// The cut-out in space, opened by `amount`.
[[nodiscard]] nets::Pose pose(const Body& body, const nets::Cutout& cutout, const nets::FoldTest& test, double amount);

}  // namespace fw::solids
