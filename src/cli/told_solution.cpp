#include "cli/told_solution.hpp"

#include <CLI/CLI.hpp>

#include "practice/told_prompt.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::cli {

std::string told_heading(const lessons::Problem& problem) {
  return problem.id + ": " + (problem.prompt.empty() ? problem.solid.name() : practice::told_prompt(problem));
}

algebra::ClassNotation SolutionStyle::notation(const lessons::Lesson& lesson) const {
  algebra::ClassNotation notation = lesson.notation;
  for (const std::string& word : words) {
    notation = algebra::with_word(notation, word).value_or(notation);
  }
  return notation;
}

void add_style_options(CLI::App& verb, SolutionStyle& style) {
  verb.add_option("--detail", style.detail, "Every step, or the few lines that a class writes on the board")
      ->check(CLI::IsMember({"board", "every"}))
      ->capture_default_str();
  verb.add_option("--notation", style.words, "How to write the lines on the board; otherwise the lesson decides")
      ->check(CLI::IsMember(algebra::notation_words()))
      ->delimiter(',');
}

reasoning::Board board_of(const reasoning::Explanation& explanation, const algebra::ClassNotation& notation) {
  return reasoning::board_of(reasoning::parts_of(explanation), notation);
}

std::string told_solution(const reasoning::Explanation& explanation, bool is_board,
                          const algebra::ClassNotation& notation) {
  const std::string lines = is_board ? reasoning::board_text(board_of(explanation, notation).lines)
                                     : reasoning::steps_text(reasoning::all_steps(explanation));
  const std::string& exact = explanation.solution.answer.exact_text;
  const bool tells_exactly = !explanation.task && !exact.empty();
  return lines + "  Answer: " + said(explanation.answer) + (tells_exactly ? "  (exactly " + exact + ")" : "") + '\n';
}

std::string told_net(const lessons::Problem& problem) {
  return reasoning::steps_text(tasks::net_steps(problem)) + "  Answer: " + said(tasks::net_answer(problem)) + '\n';
}

}  // namespace fw::cli
