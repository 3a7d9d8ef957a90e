#pragma once

#include <array>
#include <optional>
#include <vector>

#include "lessons/asked_value.hpp"
#include "units/quantity.hpp"

namespace fw::practice {

/// The edges of an item that is packed, as written.
struct ItemBox {
  units::WrittenQuantity length, width, height;
  friend bool operator==(const ItemBox&, const ItemBox&) = default;
};

/// How many times items fit along the edges of a solid, all the same way round: the best of the six ways.
struct Packing {
  std::array<exact::Number, 3> edges;  ///< of the solid, in its unit
  std::array<exact::Number, 3> item;   ///< of one item, the one along each edge
  std::array<long long, 3> rows{};     ///< how many fit along each edge
  long long count = 0;                 ///< all together
};
/// All ways round, the best first; of equal ones the one nearest to how the box is written. Two ways that turn equal
/// edges into each other are one. Requires: the solid has a length, a width and a height.
[[nodiscard]] std::vector<Packing> packings(const solids::Solid& solid, const ItemBox& box);

[[nodiscard]] long long surface_of(const lessons::WholeBox& box);
/// All boxes with whole edges, each in rising order, the one with the least surface area last. Requires: volume > 0.
[[nodiscard]] std::vector<lessons::WholeBox> boxes_with_volume(long long volume);

}  // namespace fw::practice
