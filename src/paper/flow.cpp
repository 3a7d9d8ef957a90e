#include "paper/flow.hpp"

#include <algorithm>

namespace fw::paper {
namespace {

constexpr double slack = 1e-6;

// The height of a block with all that it keeps with.
double kept_height(const std::vector<BlockSize>& blocks, std::size_t first, double gap) {
  double height = blocks[first].height;
  for (std::size_t i = first; i + 1 < blocks.size() && blocks[i].keeps_with_next; ++i) {
    height += gap + blocks[i + 1].height;
  }
  return height;
}

}  // namespace

std::vector<PlacedBlock> flowed(const std::vector<BlockSize>& blocks, const std::vector<double>& rooms, double gap,
                                std::size_t columns) {
  std::vector<PlacedBlock> placed;
  std::size_t page = 0;
  std::size_t column = 0;
  double y = 0;
  bool is_empty = true;
  const auto room = [&] { return rooms[std::min(page, rooms.size() - 1)]; };
  const auto go_on = [&](bool to_page) {
    column = to_page ? columns : column + 1;
    if (column >= columns) {
      column = 0;
      ++page;
    }
    y = 0;
    is_empty = true;
  };
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    const double height = blocks[i].height;
    if (blocks[i].begins_page && (!is_empty || column > 0)) {
      go_on(true);
    }
    const double kept = kept_height(blocks, i, gap);
    const bool can_be_kept = kept <= rooms.back() + slack;
    const bool is_kept_here = i > 0 && blocks[i - 1].keeps_with_next;
    const double wanted = can_be_kept && !is_kept_here ? kept : height;
    if (!is_empty && y + wanted > room() + slack) {
      go_on(false);
    }
    if (is_empty && height > room() + slack && height <= rooms.back() + slack) {
      go_on(true);  // the first page has a heading, and less room
    }
    const bool sticks_out = height > room() + slack;
    placed.push_back({page, column, y, sticks_out});
    if (height > 0) {  // the mark of a new page takes no room
      y += height + gap;
      is_empty = false;
    }
  }
  return placed;
}

}  // namespace fw::paper
