#pragma once

namespace fw::geometry {

/// The one tolerance of the house, relative to the size of what is compared: two lengths are equal, two
/// points touch, a polygon is flat when they differ by less than this share of the bounding box's diagonal.
inline constexpr double tolerance = 1e-9;

}  // namespace fw::geometry
