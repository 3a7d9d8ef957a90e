#pragma once

#include "reasoning/board/board_page.hpp"
#include "reasoning/chain.hpp"

// A solution by formula as on the board; private to the room.
namespace fw::reasoning {

/// A formula of a chain, and the steps that it took.
struct WrittenLink {
  const Link* link = nullptr;
  std::size_t first = 0;
  std::size_t end = 0;  ///< one past the last
};

/// What is asked and given: "Find the slant height, ℓ, of a square pyramid with s = 8 cm and S = 224 cm²." Covers the
/// steps of words alone among those before `end`, and has a line for those that convert.
void write_board_head(BoardPage& page, const algebra::Symbol& asked, const std::vector<algebra::Symbol>& used,
                      std::size_t end);
/// A formula of its own, worked out on one line: "B = ½ · 8 · 3 = 12". Covers its steps.
void write_board_part(BoardPage& page, const WrittenLink& part);
/// From the value to the sentence that answers. Covers the steps from `begin` on.
void write_board_end(BoardPage& page, std::size_t begin);

/// The lines of a chain. Its last link leads to `asked`.
void write_board_formula(BoardPage& page, const std::vector<WrittenLink>& links, const algebra::Symbol& asked);

}  // namespace fw::reasoning
