#pragma once

namespace fw::geometry {

/// The one tolerance of the house, relative to the lengths that are compared themselves: a millimeter is not lost on a
/// box a thousand kilometers long.
inline constexpr double tolerance = 1e-9;

/// The share of the size of a figure by which rounding may move its points. Less cannot be told from nothing, so that
/// the longest length of a solid is at most some 10^14 times the shortest.
inline constexpr double rounding = 4e-15;

/// The same where faces are laid one on the other, each by the one before.
inline constexpr double rounding_when_laid = 1e-12;

}  // namespace fw::geometry
