// The short way and every step are one solution: over the shelf, made-up solids, lessons and made-up problems.
#include <algorithm>
#include <map>

#include "lessons_at_hand.hpp"
#include "made_up.hpp"
#include "practice/task_type.hpp"
#include "reasoning/board/explained_board.hpp"
#include "reasoning/routes.hpp"
#include "reasoning/unknown.hpp"
#include "support/pocket_calculator.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::laws {
namespace {

using algebra::ClassNotation;
using reasoning::Board;
using reasoning::BoardLine;
using reasoning::Solution;

std::vector<ClassNotation> all_notations() {
  using N = ClassNotation;
  return {{},
          {N::Parts::Division, N::Times::Cross, N::Units::InAnswer, N::BoxVolume::Edges},
          {N::Parts::Fraction, N::Times::Cross, N::Units::OnEveryLine, N::BoxVolume::BaseTimesHeight},
          {N::Parts::Division, N::Times::Dot, N::Units::OnEveryLine, N::BoxVolume::BaseTimesHeight}};
}

/// Each step belongs to one line, each number has its source, and who types a line gets what is printed.
std::string board_faults(const Board& board, std::size_t steps, bool has_units) {
  std::string wrong;
  std::vector<int> lines_of(steps, 0);
  for (const BoardLine& line : board.lines) {
    wrong += line.steps.empty() ? "the line " + equation_text(line) + " opens into nothing. " : "";
    wrong += line.equations.empty() && line.reason.empty() ? "a line says nothing. " : "";
    wrong += std::is_sorted(line.steps.begin(), line.steps.end()) ? "" : "steps of a line are out of order. ";
    for (const std::size_t step : line.steps) {
      ++lines_of.at(step);
    }
    for (const algebra::NotationLine& equation : line.equations) {
      const std::string text = plain_text(equation);
      const std::string miscounted = has_units || line.kind == BoardLine::Kind::Count ? "" : test::miscalculated(text);
      wrong += miscounted.empty() ? "" : miscounted + ". ";
    }
  }
  for (const int count : lines_of) {
    wrong += count == 1 ? "" : "a step belongs to " + std::to_string(count) + " lines. ";
  }
  return wrong;
}

std::string unsourced(const algebra::Notation& notation, const Board& board) {
  std::string wrong;
  if (notation.source) {
    const bool has_sentence = *notation.source < board.sources.size() &&
                              !said(board.sources[*notation.source].sentence).empty() &&
                              board.sources[*notation.source].step.value_or(0) < board.lines.size();
    wrong += has_sentence ? "" : notation.text + " has no source. ";
  }
  for (const algebra::Notation& part : notation.parts) {
    wrong += unsourced(part, board);
  }
  return wrong;
}

/// What stands on a line is equal with the numbers of the steps, and the lines end in the answer.
std::string value_faults(const Solid& solid, const Solution& solution) {
  std::string wrong;
  algebra::Bindings values = solution.values;
  for (const auto& [name, value] : solid.values()) {
    values.insert_or_assign(name, value);
  }
  for (const solids::Face& face : solid.faces()) {
    values.insert_or_assign("face_area." + std::to_string(face.id.index() + 1), face.area.amount());
  }
  std::optional<exact::Number> last;
  for (const BoardLine& line : solution.board.lines) {
    for (const algebra::NotationLine& equation : line.equations) {
      wrong += unsourced(equation.left, solution.board) + unsourced(equation.right, solution.board);
    }
    for (const std::vector<algebra::Expression>& equal : line.equal) {
      std::optional<exact::Number> first;
      for (const algebra::Expression& part : equal) {
        const auto value = algebra::evaluate(part, values);
        if (value && first) {
          wrong += same(*first, *value) ? "" : "not equal: " + equation_text(line) + ". ";
        }
        first = value ? value : first;
      }
      last = first;
    }
  }
  const auto own = solid.values().find(solution.asked);
  if (own != solid.values().end()) {
    wrong += last && same(*last, own->second) ? "" : "the lines do not end in the " + solution.title + ". ";
  }
  return wrong;
}

std::string solution_faults(const Solid& solid, const Solution& solution, bool has_units) {
  std::string wrong = board_faults(solution.board, solution.steps.size(), has_units) + value_faults(solid, solution);
  return wrong.empty() ? "" : solution.title + ":\n" + board_text(solution.board.lines) + wrong + "\n";
}

/// Every measure as the unknown, in the notations of all classes.
std::string boards_agree_with_the_steps(const Solid& solid, test::Dice& dice) {
  std::string wrong;
  const std::vector<ClassNotation> notations = all_notations();
  reasoning::SolutionOptions options;
  options.notation = notations[dice.below(notations.size())];
  const bool has_units = options.notation->units == ClassNotation::Units::OnEveryLine;
  for (const reasoning::Askable& one : reasoning::askable_measures(solid)) {
    const auto asked = reasoning::asked_for(solid, one.name);
    const Solid& figure = asked ? *asked : solid;
    for (const reasoning::Route route : {reasoning::Route::Formula, reasoning::Route::FaceByFace}) {
      options.route = route;
      if (const auto solution = reasoning::worked_solution(figure, one.name, options)) {
        wrong += solution_faults(figure, *solution, has_units);
      }
    }
  }
  return wrong;
}

TEST(BoardLaws, BoardsAgreeWithTheSteps) { expect_law("boards agree with the steps", boards_agree_with_the_steps); }

/// The lines of each problem, by how many they are; a problem that is about nets has none.
std::map<std::size_t, std::size_t> counted_lines(const std::vector<lessons::Lesson>& all) {
  std::map<std::size_t, std::size_t> counts;
  reasoning::SolutionOptions options;
  options.notation.emplace();
  for (const lessons::Lesson& lesson : all) {
    for (const lessons::Problem& problem : lesson.problems) {
      if (tasks::net_asked(problem) != nullptr) {
        continue;
      }
      const auto explained = practice::explained(problem, options);
      EXPECT_TRUE(explained.has_value()) << problem.id;
      for (const reasoning::Explanation& one : *explained) {
        const auto parts = reasoning::parts_of(one);
        const Board board = reasoning::board_of(parts);
        EXPECT_EQ(board_faults(board, reasoning::all_steps(one).size(), false), "") << problem.id << '\n'
                                                                                    << board_text(board.lines);
        ++counts[board.lines.size()];
      }
    }
  }
  return counts;
}

void expect_few_lines(std::size_t made_up) {
  std::size_t few = 0;
  std::size_t all = 0;
  for (const auto& [lines, count] : counted_lines(lessons_at_hand(made_up))) {
    few += lines <= 8 ? count : 0;
    all += count;
  }
  EXPECT_GE(static_cast<double>(few), 0.9 * static_cast<double>(all)) << few << " of " << all;
}

TEST(BoardLaws, LessonsHaveAtMostEightLinesForTheUsualTasks) { expect_few_lines(20); }
TEST(BoardLaws, ManyMadeUpProblemsHaveAtMostEightLinesSlow) { expect_few_lines(120); }

}  // namespace
}  // namespace fw::laws
