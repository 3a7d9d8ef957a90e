#include <memory>

#include "paper/sheets/problem_figure.hpp"
#include "paper/sheets/worked_lines.hpp"

namespace fw::paper {
namespace {

void add_figure(Packet& packet, const lessons::Problem& problem, const PageStyle& style) {
  const Vec2 size = figure_size(problem, style);
  packet.add(
      {{size.y, true, false},
       [&problem, style, size](PageCanvas& canvas, const Rect& rect) {
         draw_problem_figure(canvas, problem, {rect.x + 10, rect.y, std::min(size.x, rect.w - 10), rect.h}, style);
       },
       problem.id});
}

/// A problem with the lines of its solution.
void add_noted(Packet& packet, const lessons::Lesson& lesson, std::size_t number, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const lessons::Problem& problem = lesson.problems[number];
  if (style.is_large && number > 0) {
    packet.begin_page();
  }
  packet.add_text(std::to_string(number + 1) + ".  " + prompt_text(problem), style.em(), false, true);
  add_figure(packet, problem, style);
  const std::vector<AskedItem> items = asked_items(problem);
  const std::vector<std::string> questions = question_lines(problem);
  for (std::size_t k = 0; k < items.size(); ++k) {
    if (k < questions.size()) {
      packet.add_text((items.size() > 1 ? part_letter(k) + " " : "") + questions[k], style.em(), true, true);
    }
    add_worked(packet, lesson, problem, items[k], options, false);
  }
  packet.add_space(4);
}

}  // namespace

void notes(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  constexpr double notes_gap = 2;
  const auto packet = std::make_shared<Packet>(
      fonts, options.style, Furniture{lesson.title, options.version, lesson_code(lesson), options.has_name_line},
      notes_gap);
  add_packet(work, packet, lesson.problems.size(),
             [=, &lesson](Packet& pages, std::size_t i) { add_noted(pages, lesson, i, options); });
}

}  // namespace fw::paper
