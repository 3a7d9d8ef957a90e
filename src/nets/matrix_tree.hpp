#pragma once

#include <cstdint>
#include <vector>

#include "geometry/polyhedron.hpp"

namespace fw::nets {

/// A whole number, not negative, in digits to the base 1,000,000,000, the lowest first.
using BigDigits = std::vector<std::uint32_t>;

/// The number of spanning trees of the faces, joined along edges: any cofactor of the Laplacian matrix, found
/// modulo as many primes as its size needs and put together again.
/// Source: Kirchhoff's matrix tree theorem; the Chinese remainder theorem in Garner's form.
[[nodiscard]] BigDigits spanning_tree_count(const geometry::Polyhedron& polyhedron);

}  // namespace fw::nets
