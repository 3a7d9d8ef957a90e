#pragma once

#include "paper/cutouts/flat_net.hpp"

namespace fw::paper {

/// Teeth along every rim, from the seam to where the disk hangs: few enough to be cut by hand, and so many that they
/// bend round. None lies on a face, a tab or another tooth, so the tabs come first. Source of their sizes: common
/// practice, no source.
void add_teeth(FlatNet& net);

/// A smaller circle has no room for teeth, nor for fingers; millimeters across.
inline constexpr double least_across = 16;
inline constexpr std::size_t most_teeth = 28;  ///< of a rim

/// Where the disk hangs: the fold between it and the face that bends. Nothing where it does not hang.
[[nodiscard]] std::vector<Vec2> bridge_of(const Rim& rim);
/// What is cut at a rim, stroke by stroke: along the teeth, round the disk, and along the other teeth.
[[nodiscard]] std::vector<std::vector<Vec2>> cut_lines(const Rim& rim);

}  // namespace fw::paper
