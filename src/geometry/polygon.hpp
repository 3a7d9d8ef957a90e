#pragma once

#include <array>
#include <vector>

#include "geometry/vectors.hpp"

namespace fw::geometry {

/// A simple polygon of the plane, counterclockwise, without the first point repeated.
using Polygon = std::vector<Vec2>;

/// Positive for a counterclockwise polygon. Source: the shoelace formula.
[[nodiscard]] double signed_area(const Polygon& polygon);
[[nodiscard]] double perimeter(const Polygon& polygon);
[[nodiscard]] Vec2 centroid(const Polygon& polygon);
[[nodiscard]] bool is_convex(const Polygon& polygon);
/// No two sides meet except neighbors at their common corner.
[[nodiscard]] bool is_simple(const Polygon& polygon);
[[nodiscard]] bool contains(const Polygon& polygon, Vec2 point);
/// Triangles that fill the polygon, by corner index. Shape: size - 2 triples, counterclockwise. Source: ear clipping.
[[nodiscard]] std::vector<std::array<std::size_t, 3>> triangulated(const Polygon& polygon);
/// A point well inside, to hang a number on: the pole of inaccessibility, to 2 % of the size.
[[nodiscard]] Vec2 label_point(const Polygon& polygon);
/// Whether the interiors meet; touching along sides or at corners is not overlapping. Any simple polygons.
[[nodiscard]] bool overlap(const Polygon& a, const Polygon& b);

}  // namespace fw::geometry
