#pragma once

#include "lessons/lesson.hpp"
#include "paper/packet.hpp"

namespace fw::paper {

/// How wide and high the figure of a problem would like to be: a solid, or cut-outs beside each other.
[[nodiscard]] Vec2 figure_size(const lessons::Problem& problem, const PageStyle& style);

/// The figure of a problem for a student: the solid with the lengths that the lesson gives and the letter of what is
/// asked, or the cut-outs that a question about nets shows. No length that has to be found is on it.
void draw_problem_figure(PageCanvas& canvas, const lessons::Problem& problem, const Rect& rect, const PageStyle& style);

/// The labels of a solid's lengths for a student, one a mark.
[[nodiscard]] std::vector<std::optional<std::string>> student_labels(const lessons::Problem& problem);

}  // namespace fw::paper
