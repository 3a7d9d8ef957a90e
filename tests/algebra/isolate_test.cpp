#include "algebra/isolate.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "algebra/print.hpp"
#include "support/numbers.hpp"

namespace fw::algebra::isolate_test {
namespace {

using exact::Number;
using Kind = IsolationStep::Kind;

const Symbol x{"x", "x", 1};

Expression e(const Symbol& symbol) { return symbol; }
Number whole(long long n) { return Number::whole(n); }

// Numbers of an equation, each a numeral of its dimension.
class Paper {
 public:
  Expression length(const Number& n) { return numerals_.add(n, 1); }
  Expression length(long long n) { return length(whole(n)); }
  Expression area(const Number& n) { return numerals_.add(n, 2); }
  Expression area(long long n) { return area(whole(n)); }
  Expression volume(const Number& n) { return numerals_.add(n, 3); }
  Numerals& numerals() { return numerals_; }

  [[nodiscard]] std::string written(const Expression& expression) const {
    return work_text(expression, [&](const Symbol& symbol) {
      return numerals_.holds(symbol) ? exact_text(numerals_.values().at(symbol.name)) : symbol.letter;
    });
  }
  [[nodiscard]] std::string written(const Equation& equation) const {
    return written(equation.left) + " = " + written(equation.right);
  }
  std::optional<std::vector<IsolationStep>> steps(const Equation& equation, const Number& value) {
    return isolated(equation, x, value, numerals_);
  }
  /// The lines below the equation; none where there is no way.
  std::vector<std::string> lines(const Equation& equation, const Number& value) {
    std::vector<std::string> texts;
    const auto all = steps(equation, value);
    for (const IsolationStep& step : all ? *all : std::vector<IsolationStep>{}) {
      texts.push_back(written(step.equation));
    }
    return texts;
  }

 private:
  Numerals numerals_;
};

using Lines = std::vector<std::string>;

TEST(Isolated, Linear) {
  Paper paper;
  // 492 = 144 + 24x
  EXPECT_EQ(paper.lines({paper.area(492), paper.area(144) + paper.length(24) * x}, Number::ratio(29, 2)),
            Lines({"144 + 24 × x = 492", "24 × x = 492 − 144", "24 × x = 348", "x = 348 ÷ 24", "x = 14.5"}));
}

TEST(Isolated, TermsOfTheSameKindAreCollected) {
  Paper paper;
  const auto steps =
      paper.steps({paper.length(12) * x + paper.length(20) * x + paper.area(126), paper.area(286)}, whole(5));
  ASSERT_TRUE(steps);
  EXPECT_TRUE(std::any_of(steps->begin(), steps->end(), [](const auto& s) { return s.kind == Kind::Collect; }));
  EXPECT_EQ(paper.written(steps->back().equation), "x = 5");
}

TEST(Isolated, APurePowerIsRooted) {
  Paper paper;
  EXPECT_EQ(paper.lines({6 * power(x, 2), paper.area(150)}, whole(5)),
            Lines({"x² = 150 ÷ 6", "x² = 25", "x = √(25)", "x = 5"}));
  EXPECT_EQ(paper.lines({power(x, 3), paper.volume(whole(343))}, whole(7)).back(), "x = 7");
  EXPECT_EQ(paper.lines({power(x, 3), paper.volume(whole(2))}, cube_root(whole(2))).size(), 2U);
}

TEST(Isolated, TheSquareIsCompletedWithEitherSign) {
  Paper paper;
  // Both come to (x ± 9)² = 225 or 9 with x = 6.
  const Lines plus = paper.lines({power(x, 2) + paper.length(18) * x, paper.area(144)}, whole(6));
  EXPECT_NE(std::find(plus.begin(), plus.end(), "(x + 9)² = 225"), plus.end()) << testing::PrintToString(plus);
  EXPECT_EQ(plus.back(), "x = 6");
  const Equation minus{power(x, 2) - paper.length(18) * x, paper.area(-72)};
  const auto smaller = paper.steps(minus, whole(6));
  ASSERT_TRUE(smaller);
  EXPECT_TRUE(
      std::any_of(smaller->begin(), smaller->end(), [](const auto& s) { return s.kind == Kind::TakeMinusRoot; }));
  EXPECT_EQ(paper.written(smaller->back().equation), "x = 6");
  const auto greater = paper.steps(minus, whole(12));
  ASSERT_TRUE(greater);
  EXPECT_TRUE(
      std::none_of(greater->begin(), greater->end(), [](const auto& s) { return s.kind == Kind::TakeMinusRoot; }));
  EXPECT_EQ(paper.written(greater->back().equation), "x = 12");
}

TEST(Isolated, ARootIsSquared) {
  Paper paper;
  EXPECT_EQ(paper.lines({root(power(x, 2) + paper.area(9)), paper.length(5)}, whole(4)).back(), "x = 4");
}

TEST(Isolated, FromBelowAFractionsLine) {
  Paper paper;
  const Lines lines = paper.lines({paper.volume(whole(120)) / x, paper.area(24)}, whole(5));
  ASSERT_FALSE(lines.empty());
  EXPECT_EQ(lines.back(), "x = 5");
}

TEST(Isolated, FromBothSides) {
  Paper paper;
  EXPECT_EQ(paper.lines({7 * e(x), 3 * e(x) + paper.length(20)}, whole(5)).back(), "x = 5");
}

// The base edge of a square pyramid with its height and surface area: s² + s√(s² + 576) = 360.
TEST(Isolated, FromBesideARootAndUnderIt) {
  Paper paper;
  const Lines lines = paper.lines({power(x, 2) + x * root(power(x, 2) + paper.area(576)), paper.area(360)}, whole(10));
  ASSERT_FALSE(lines.empty());
  EXPECT_EQ(lines.back(), "x = 10");
  EXPECT_NE(std::find(lines.begin(), lines.end(), "x² = 100"), lines.end()) << testing::PrintToString(lines);
  EXPECT_TRUE(paper.steps({paper.area(360), power(x, 2) + 4 * x * root(power(x, 2) + paper.area(576)) / 4}, whole(10)));
}

TEST(Isolated, HasNoWayWhereSchoolHasNone) {
  Paper paper;
  // Under two roots; a third power with a first one.
  EXPECT_FALSE(paper.steps(
      {x * root(power(x, 2) + paper.area(576)) + x * root(power(x, 2) + paper.area(7469)), paper.area(1130)},
      whole(10)));
  EXPECT_FALSE(paper.steps({power(x, 3) + paper.area(2) * x, paper.volume(whole(33))}, whole(3)));
}

// ---- random equations of these forms ----

Number positive() {
  const int above = *rc::gen::inRange(1, 400);
  return Number::ratio(above, *rc::gen::element(1, 2, 4, 5, 10));
}

void expect_found(Paper& paper, const Equation& equation, const Number& value) {
  const auto steps = paper.steps(equation, value);
  RC_ASSERT(steps.has_value());
  RC_ASSERT(!steps->empty());
  const Equation& last = steps->back().equation;
  RC_ASSERT(last.left == e(x));
  RC_ASSERT(evaluate(last.right, paper.numerals().values()) == value);
  // The value fits every line on the way.
  Bindings bindings = paper.numerals().values();
  bindings.insert_or_assign(x.name, value);
  for (const IsolationStep& step : *steps) {
    RC_ASSERT(evaluate(step.equation.left, bindings) == evaluate(step.equation.right, bindings));
  }
}

RC_GTEST_PROP(Isolated, FindsTheSolutionOfALinearEquation, ()) {
  Paper paper;
  const Number value = positive(), a = positive(), b = positive(), c = positive();
  const Number right = a * value + b * value + c;
  expect_found(paper, {paper.length(a) * x + paper.length(b) * x + paper.area(c), paper.area(right)}, value);
  expect_found(paper, {paper.area(right), paper.area(c) + paper.length(a + b) * x}, value);
}

RC_GTEST_PROP(Isolated, FindsTheSolutionWithTheUnknownOnBothSides, ()) {
  Paper paper;
  const Number value = positive(), a = positive(), b = positive();
  expect_found(paper, {paper.length(a + b) * x, paper.length(a) * x + paper.area(b * value)}, value);
}

RC_GTEST_PROP(Isolated, FindsTheSolutionOfAPurePower, ()) {
  Paper paper;
  const Number value = positive(), a = positive(), c = positive();
  expect_found(paper, {a * power(x, 2) + paper.area(c), paper.area(a * value * value + c)}, value);
  expect_found(paper, {a * power(x, 3), paper.volume(a * value * value * value)}, value);
}

RC_GTEST_PROP(Isolated, FindsEitherSolutionOfAQuadratic, ()) {
  Paper paper;
  const Number value = positive(), other = positive(), a = positive();
  RC_PRE(!(value == other));
  const Number product = a * value * other;
  const Number sum = a * (value + other);
  const Equation two_roots{a * power(x, 2) - paper.length(sum) * x, paper.area(-product)};
  expect_found(paper, two_roots, value);
  expect_found(paper, two_roots, other);
  const Number gap = a * (other - value);  // the other solution is −other
  if (gap.sign() > 0) {
    expect_found(paper, {paper.length(gap) * x + a * power(x, 2), paper.area(product)}, value);
  }
}

RC_GTEST_PROP(Isolated, FindsTheSolutionUnderARootAndBelowALine, ()) {
  Paper paper;
  const Number value = positive(), a = positive();
  expect_found(paper, {root(power(x, 2) + paper.area(a)), paper.length(square_root(value * value + a))}, value);
  expect_found(paper, {paper.volume(a * value) / x, paper.area(a)}, value);
}

// ---- arithmetic, one round after another ----

std::vector<std::string> rounds(Paper& paper, Expression expression) {
  std::vector<std::string> texts;
  while (true) {
    const Expression worked = worked_once(expression, paper.numerals());
    if (worked == expression) {
      return texts;
    }
    texts.push_back(paper.written(worked));
    expression = worked;
  }
}

TEST(WorkedOnce, ProductsComeBeforeSums) {
  Paper paper;
  EXPECT_EQ(rounds(paper, power(paper.length(6), 2) + 4 * (paper.length(6) * paper.length(9) / 2)),
            Lines({"36 + 108", "144"}));
}

TEST(WorkedOnce, InnerBracketsComeFirst) {
  Paper paper;
  EXPECT_EQ(rounds(paper, (paper.length(16) + paper.length(10)) * paper.length(4) / 2), Lines({"26 × 4 ÷ 2", "52"}));
  EXPECT_EQ(rounds(paper, root(power(paper.length(3), 2) + power(paper.length(4), 2))),
            Lines({"√(9 + 16)", "√(25)", "5"}));
}

TEST(WorkedOnce, TheUnknownIsLeftAlone) {
  Paper paper;
  EXPECT_EQ(rounds(paper, paper.length(6) * paper.length(6) + 4 * (paper.length(6) * x / 2)), Lines({"36 + 12 × x"}));
}

// However it is built, all rounds together come to what evaluate() finds.
RC_GTEST_PROP(WorkedOnce, KeepsTheValue, ()) {
  Paper paper;
  const Expression a = paper.length(positive()), b = paper.length(positive()), c = paper.length(positive());
  const Expression expression = *rc::gen::element(a * b + b * c / 2, (a + b) * c, root(power(a, 2) + power(b, 2)) * c,
                                                  power(a + b, 2) - a * a, 3 * (a * (b + c)) / 4);
  const auto before = evaluate(expression, paper.numerals().values());
  Expression now = expression;
  for (int i = 0; i < 10; ++i) {
    now = worked_once(now, paper.numerals());
    RC_ASSERT(evaluate(now, paper.numerals().values()) == before);
  }
  RC_ASSERT(now.operands().empty());
  RC_ASSERT(dimension_of(now) == dimension_of(expression));
}

}  // namespace
}  // namespace fw::algebra::isolate_test
