#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "algebra/isolate.hpp"
#include "algebra/print.hpp"
#include "algebra/rough.hpp"
#include "support/numbers.hpp"

namespace fw::solve_test {
namespace {

using namespace fw::algebra;
using fw::exact::Number;

const Symbol x{"x", "x", 1};
const Symbol a{"a", "a", 1};
const Symbol b{"b", "b", 1};
const Symbol total{"total", "S", 2};

Expression e(const Symbol& symbol) { return symbol; }
Number whole(long long n) { return Number::whole(n); }

std::vector<std::string> solved(const Equation& equation, const Bindings& bindings = {}) {
  std::vector<std::string> texts;
  for (const Number& n : positive_solutions(equation, x, bindings)) {
    texts.push_back(n.is_exact() ? exact_text(n) : "about " + fixed_text(n, 12));
  }
  return texts;
}

using Texts = std::vector<std::string>;

TEST(PositiveSolutions, UndoVolumesAndAreas) {
  // V = l w h
  EXPECT_EQ(solved({total, e(a) * b * x}, {{"total", whole(180)}, {"a", whole(12)}, {"b", whole(5)}}), Texts({"3"}));
  // S = 2lw + 2lh + 2wh
  EXPECT_EQ(solved({total, 2 * e(a) * b + 2 * e(a) * x + 2 * e(b) * x},
                   {{"total", whole(286)}, {"a", whole(9)}, {"b", whole(7)}}),
            Texts({"5"}));
  // S = s² + 2 s l
  EXPECT_EQ(solved({total, power(x, 2) + 2 * e(x) * a}, {{"total", whole(144)}, {"a", whole(9)}}), Texts({"6"}));
  EXPECT_EQ(solved({total, power(x, 3)}, {{"total", whole(343)}}), Texts({"7"}));
  EXPECT_EQ(solved({total, power(x, 4)}, {{"total", whole(4)}}), Texts({"√2"}));
  EXPECT_EQ(solved({total, 6 * power(x, 2)}, {{"total", whole(60)}}), Texts({"√10"}));
}

TEST(PositiveSolutions, UndoPythagoras) {
  const Bindings sides = {{"a", whole(13)}, {"b", whole(5)}};
  EXPECT_EQ(solved({power(a, 2), power(b, 2) + power(x, 2)}, sides), Texts({"12"}));
  EXPECT_EQ(solved({a, root(power(b, 2) + power(x, 2))}, sides), Texts({"12"}));
  EXPECT_EQ(solved({x, root(power(a, 2) + power(b, 2))}, sides), Texts({"√194"}));
  EXPECT_EQ(solved({a, root(power(x, 2) + power(e(x) + 7, 2))}, sides), Texts({"5"}));
  // No such triangle.
  EXPECT_EQ(solved({b, root(power(a, 2) + power(x, 2))}, sides), Texts({}));
  // S = b x + x √(x² + 4): the unknown in and before the root.
  EXPECT_EQ(solved({a, e(x) * root(power(x, 2) + 16)}, {{"a", whole(15)}}), Texts({"3"}));
}

TEST(PositiveSolutions, ClearDenominators) {
  EXPECT_EQ(solved({Expression(whole(6)) / x, 2}), Texts({"3"}));
  EXPECT_EQ(solved({(e(x) + 3) / (e(x) - 1), 3}), Texts({"3"}));
  // x = 1 would make both sides meaningless.
  EXPECT_EQ(solved({(power(x, 2) - 1) / (e(x) - 1), 2}), Texts({}));
}

TEST(PositiveSolutions, KeepTheExactWhereTheyCan) {
  EXPECT_EQ(solved({power(x, 2), e(x) + 1}), Texts({"(1 + √5)/2"}));
  EXPECT_EQ(solved({power(x, 2) + 6, 5 * e(x)}), Texts({"2", "3"}));
  EXPECT_EQ(solved({2 * power(x, 3) + 3 * power(x, 2), Expression(whole(325))}), Texts({"5"}));
}

TEST(PositiveSolutions, AreNumericOtherwise) {
  // J. Wallis' example of Newton's method: OEIS A007493.
  EXPECT_EQ(solved({power(x, 3) - 2 * e(x), 5}), Texts({"about 2.094551481542"}));
  // Two different roots: √x + √(x + 5) = 5 at x = 4.
  EXPECT_EQ(solved({root(x) + root(e(x) + 5), 5}), Texts({"about 4.000000000000"}));
  EXPECT_EQ(solved({root(x, 3) + x, 10}), Texts({"about 8.000000000000"}));
}

TEST(PositiveSolutions, AreEmptyWithoutAnEquationInTheUnknown) {
  EXPECT_EQ(solved({e(x) + a, 5}), Texts({}));
  EXPECT_EQ(solved({e(x), e(x)}), Texts({}));
  EXPECT_EQ(solved({e(x) + 1, e(x)}), Texts({}));
  EXPECT_EQ(solved({e(x) + 7, 3}), Texts({}));
}

RC_GTEST_PROP(PositiveSolutions, FindTheNumberThatWasPutIn, ()) {
  const Number chosen = Number::ratio(*rc::gen::inRange(1, 200), *rc::gen::element(1, 2, 4, 5, 10));
  const Number first = Number::ratio(*rc::gen::inRange(1, 100), 4);
  const Expression k = *rc::gen::inRange(1, 9);
  const std::vector<Expression> shapes = {k * e(x) * a,
                                          power(x, 2) + k * e(x) * a,
                                          power(e(x) + a, 2) / 2,
                                          root(power(x, 2) + power(a, 2)),
                                          e(a) / x + k,
                                          power(x, 3) * k,
                                          power(x, 3) + power(x, 2) * a,
                                          e(x) * root(power(x, 2) + power(a, 2)) + power(x, 2)};
  const Expression left = *rc::gen::elementOf(shapes);
  const Bindings known = {{"a", first}, {"x", chosen}};
  const std::optional<Number> value = evaluate(left, known);
  RC_ASSERT(value.has_value());
  const std::vector<Number> found = positive_solutions({left, *value}, x, {{"a", first}});
  RC_ASSERT(found.size() == 1U);
  RC_ASSERT(found[0] == chosen);
}

// Both solvers stand on the same steps: exact numbers and doubles must give the same roots.
TEST(RoughEquation, FindsWhatTheExactSolverFinds) {
  const Bindings bound = {{"a", whole(13)}, {"b", whole(5)}, {"total", whole(144)}};
  const std::vector<Equation> equations = {
      {total, e(a) * b * x},
      {total, power(x, 2) + 2 * e(x) * a},
      {total, power(x, 3)},
      {a, root(power(b, 2) + power(x, 2))},
      {power(a, 2), power(b, 2) + power(e(x) - 4, 2)},
      {(e(x) + 3) / (e(x) - 1), 3},
      {a, e(x) * root(power(x, 2) + 16)},
      {total, power(x, 2) + e(x) * root(power(x, 2) + power(b, 2)) + e(b) * root(e(x) + a)},
      {b, root(power(a, 2) + power(x, 2))},
  };
  for (const Equation& equation : equations) {
    std::vector<double> values;
    const RoughEquation rough(equation, [&](const Symbol& symbol) {
      values.push_back(symbol == x ? 0 : bound.at(symbol.name).to_double());
      return symbol == x ? std::size_t{10} : values.size() - 1;
    });
    values.resize(11);
    const std::vector<Number> exact = positive_solutions(equation, x, bound);
    const std::vector<double> found = rough.positive_solutions(10, values);
    ASSERT_EQ(found.size(), exact.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
      EXPECT_NEAR(found[i], exact[i].to_double(), 1e-9);
    }
  }
}

TEST(SolvedFor, TurnsAnEquationRound) {
  const auto text = [](const Equation& equation) {
    const auto value = solved_for(equation, x);
    return value ? formula_text(*value) : "none";
  };
  EXPECT_EQ(text({total, e(a) * x / 2}), "S · 2 ÷ a");
  EXPECT_EQ(text({a + e(b), sum_of({a, x, b})}), "a + b − (a + b)");
  EXPECT_EQ(text({power(a, 2), power(x, 2) + power(b, 2)}), "√(a² − b²)");
  EXPECT_EQ(text({a - e(x), b}), "a − b");
  EXPECT_EQ(text({b, a / e(x)}), "a ÷ b");
  EXPECT_EQ(text({a, root(x)}), "none");
  EXPECT_EQ(text({e(x) * x, a}), "none");
  EXPECT_EQ(text({a, b}), "none");
}

TEST(IsVacuous, WhatSaysNothingOfTheUnknown) {
  EXPECT_TRUE(is_vacuous({2 * e(x), e(x) + x}, x));
  EXPECT_TRUE(is_vacuous({e(x) + a, e(x) + b}, x));  // only compares what is known
  EXPECT_FALSE(is_vacuous({e(x) + a, b}, x));
  EXPECT_FALSE(is_vacuous({power(x, 2), e(x) * a}, x));
}

}  // namespace
}  // namespace fw::solve_test
