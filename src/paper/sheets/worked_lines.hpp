#pragma once

#include <vector>

#include "algebra/class_notation.hpp"
#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"

namespace fw::paper {

/// Adds a worked solution of one question, a line of work and its reason beside it a block.
/// `points`: each line says what it is worth. With gaps, what a line comes to is left out.
void add_worked(Packet& packet, const lessons::Lesson& lesson, const lessons::Problem& problem, const AskedItem& item,
                const SheetOptions& options, bool points);

}  // namespace fw::paper
