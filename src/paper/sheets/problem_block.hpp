#pragma once

#include "paper/sheets/sheets.hpp"

namespace fw::paper {

/// Adds a problem with its number, figure, work space and answer lines, as one block of at least `height`. One that is
/// taller than a page begins a page of its own and goes on over the next ones.
void add_problem(Packet& packet, const lessons::Problem& problem, std::size_t number, double height,
                 const SheetOptions& options);

/// Space to write on.
void draw_work_space(PageCanvas& canvas, const Rect& rect, WorkSpace work, const PageStyle& style);

}  // namespace fw::paper
