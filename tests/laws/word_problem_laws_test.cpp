// The amount of a word problem does not come from nowhere: it is worked out before it is counted with.
#include <gmock/gmock.h>

#include <algorithm>

#include "lessons_at_hand.hpp"
#include "practice/task_type.hpp"
#include "support/pocket_calculator.hpp"
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

algebra::Notation without_units(algebra::Notation notation) {
  using Kind = algebra::Notation::Kind;
  auto& parts = notation.parts;
  parts.erase(std::remove_if(parts.begin(), parts.end(), [](const auto& part) { return part.kind == Kind::Unit; }),
              parts.end());
  std::transform(parts.begin(), parts.end(), parts.begin(), without_units);
  return notation;
}

/// The last part of a line and the one before it, as somebody would type them who has no units on the calculator.
std::string last_two_parts(const algebra::NotationLine& line) {
  const std::string left = algebra::plain_text(without_units(line.left));
  const std::size_t sign = left.rfind(" = ");
  return (sign == std::string::npos ? left : left.substr(sign + 3)) + " " + line.sign + " " +
         algebra::plain_text(without_units(line.right));
}

void expect_lines_that_come_out(std::size_t made_up) {
  std::size_t count = 0;
  for (const lessons::Lesson& lesson : lessons_at_hand(made_up)) {
    for (const lessons::Problem& problem : lesson.problems) {
      const auto all = practice::explained(problem);
      for (const Explanation& one : all ? *all : std::vector<Explanation>{}) {
        for (const reasoning::Step& step : one.packs ? one.packs->steps : std::vector<reasoning::Step>{}) {
          const std::string line = step.line ? last_two_parts(*step.line) : "";
          if (line.rfind("1 = ", 0) != 0) {  // "1 ft = 12 in"
            EXPECT_EQ(test::miscalculated(line, true), "") << problem.id << ' ' << problem.prompt;
            ++count;
          }
        }
      }
    }
  }
  EXPECT_GE(count, made_up);
}

/// What is printed is what a calculator gives for what is printed before it, also where both are rounded.
TEST(WordProblemLaws, LinesComeOutAsTheyArePrinted) { expect_lines_that_come_out(20); }
TEST(WordProblemLaws, ManyLinesComeOutAsTheyArePrintedSlow) { expect_lines_that_come_out(120); }

TEST(WordProblemLaws, AmountsAreWorkedOut) { EXPECT_GE(expect_worked_amounts(20), 15U); }
TEST(WordProblemLaws, ManyAmountsAreWorkedOutSlow) { EXPECT_GE(expect_worked_amounts(120), 50U); }

}  // namespace
}  // namespace fw::laws::word_problem_laws_test
