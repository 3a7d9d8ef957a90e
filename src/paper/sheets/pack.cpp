#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"
#include "practice/hints.hpp"
#include "practice/task_type.hpp"
#include "reasoning/board/explained_board.hpp"

namespace fw::paper {
namespace {

using words::message;

/// Minutes for a problem: two to read it and draw, one a line of work. Common practice, no source.
std::size_t minutes_for(const lessons::Problem& problem) {
  reasoning::SolutionOptions wanted;
  wanted.notation = algebra::ClassNotation{};
  const auto all = practice::explained(problem, wanted);
  std::size_t minutes = 2;
  for (std::size_t i = 0; all && i < all->size(); ++i) {
    minutes += reasoning::board_of(reasoning::parts_of((*all)[i])).lines.size();
  }
  return minutes;
}

Printed script(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const std::string title = said(message("For the substitute teacher: {title}", {{"title", lesson.title}}));
  Packet packet(fonts, style, {title, options.version, lesson_code(lesson), false}, 2);
  for (const words::Message& line :
       {message(
            "Thank you for covering this class. You don't need to know the math: the key behind the student pages has "
            "every line."),
        message("Hand out the student pages. Let everyone read the first problem and look at the figure for a minute. "
                "Then ask "
                "the question below, and wait. When most have an answer, write the lines from the key on the board, "
                "one at a time."),
        message("If a student has another number, look for it in the key under \"Wrong numbers.\" Ask, don't tell."),
        message("It is fine not to finish. Collect the pages at the end.")}) {
    packet.add_text(said(line), style.em());
  }
  packet.add_space(2);
  std::size_t clock = 0;
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    const lessons::Problem& problem = lesson.problems[i];
    const std::size_t minutes = minutes_for(problem);
    packet.add_text(
        said(message("{number}. {solid}: minutes {from} to {to}",
                     {{"number", i + 1}, {"solid", problem.solid.name()}, {"from", clock}, {"to", clock + minutes}})),
        style.em(), true, true);
    clock += minutes;
    const auto hints = practice::hints_of(problem, "", lesson.notation);
    const std::string ask = hints && !hints->empty() ? said(hints->front().text) : said(message("What do you see?"));
    packet.add_text(said(message("Say: {hint}", {{"hint", ask}})), style.em(), false, false, 8);
  }
  return packet.printed();
}

}  // namespace

void pack(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(script(fonts, lesson, options)); });
  handout(work, fonts, lesson, options);
  key(work, fonts, lesson, options);
}

}  // namespace fw::paper
