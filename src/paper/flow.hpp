#pragma once

#include <cstddef>
#include <vector>

namespace fw::paper {

/// A block that is laid onto a page whole.
struct BlockSize {
  double height = 0;
  bool keeps_with_next = false;  ///< as a heading does
  bool begins_page = false;
};

/// Where a block lies: y from the top of its column.
struct PlacedBlock {
  std::size_t page = 0, column = 0;
  double y = 0;
  bool sticks_out = false;  ///< it is taller than a page, and stands alone on one
};

/// How blocks flow down the columns of pages. Requires: rooms[0] is the height of the first page, the last one that of
/// all others; columns > 0.
///
/// Guarantees:
///   (1) blocks keep their order, down a column, then in the next one, then on the next page;
///   (2) no block reaches beyond the room of its page but one that is taller than a page, which has a column alone;
///   (3) a block that keeps with the next one stands in its column, where both have room in one;
///   (4) a block moves on only where it has no room.
/// Shape: one place a block.
[[nodiscard]] std::vector<PlacedBlock> flowed(const std::vector<BlockSize>& blocks, const std::vector<double>& rooms,
                                              double gap, std::size_t columns = 1);

}  // namespace fw::paper
