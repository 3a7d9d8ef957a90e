// The amount of a word problem does not come from nowhere: it is worked out before it is counted with.
#include <gmock/gmock.h>

#include <algorithm>

#include "lessons_at_hand.hpp"
#include "practice/task_type.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::laws::word_problem_laws_test {
namespace {

using exact::Number;
using reasoning::Explanation;

/// Lengths of edges that neither a label gives nor a solution finds, though a formula leads to them.
std::string unworked_edges(const solids::Solid& solid, const Explanation& one) {
  std::string wrong;
  for (const solids::Face& face : solid.faces()) {
    for (const solids::FaceLength& length : face.lengths) {
      const bool is_worked = std::any_of(one.edges.begin(), one.edges.end(), [&](const reasoning::Solution& edge) {
        return edge.answer.amount == length.value && edge.steps.size() > 2;
      });
      const bool is_there = length.is_height || solid.is_given(length.symbol) || is_worked ||
                            !reasoning::worked_solution(solid, length.symbol.name);
      wrong += is_there ? "" : "the " + length.title + " comes from nowhere. ";
    }
  }
  return wrong;
}

std::string unworked_amount(const lessons::Problem& problem, const Explanation& one) {
  if (one.packs->amount_step && one.solution.values.empty()) {
    return problem.open.empty() ? unworked_edges(problem.solid, one) : "the faces that count are not worked out";
  }
  const Number amount = reasoning::amount_number(one.packs->amount);
  const bool is_worked = one.solution.answer.amount == amount && one.solution.steps.size() > 2;
  const bool is_given = !reasoning::worked_solution(problem.solid, one.find);
  return is_worked || is_given ? "" : "the " + one.packs->title + " comes from nowhere";
}

std::size_t expect_worked_amounts(std::size_t made_up) {
  std::size_t count = 0;
  for (const lessons::Lesson& lesson : lessons_at_hand(made_up)) {
    for (const lessons::Problem& problem : lesson.problems) {
      if (practice::task_as<tasks::WordProblem>(problem) == nullptr) {
        continue;
      }
      const auto all = practice::explained(problem);
      EXPECT_TRUE(all.has_value()) << problem.id;
      for (const Explanation& one : *all) {
        if (one.packs && one.packs->answer) {
          EXPECT_EQ(unworked_amount(problem, one), "") << problem.id << ' ' << problem.prompt;
          ++count;
        }
      }
    }
  }
  return count;
}

TEST(WordProblemLaws, AmountsAreWorkedOut) { EXPECT_GE(expect_worked_amounts(20), 15U); }
TEST(WordProblemLaws, ManyAmountsAreWorkedOutSlow) { EXPECT_GE(expect_worked_amounts(120), 50U); }

}  // namespace
}  // namespace fw::laws::word_problem_laws_test
