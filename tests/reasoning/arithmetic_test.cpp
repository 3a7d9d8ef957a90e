#include "reasoning/arithmetic.hpp"

#include <gtest/gtest.h>

#include "support/numbers.hpp"

namespace fw::reasoning::arithmetic_test {
namespace {

using algebra::Expression;
using algebra::Numerals;
using exact::Number;
using Captions = std::vector<std::string>;

Expression n(const std::string& decimal) { return test::decimal(decimal); }

Captions captions(const Expression& expression) {
  Captions all;
  for (const exact::ColumnWork& aside : asides_of(expression, Numerals{})) {
    all.push_back(aside.caption);
  }
  return all;
}

TEST(Asides, StandWhereTheHeadDoesNotDo) {
  EXPECT_EQ(captions(n("23") * n("17")).size(), 1U);
  EXPECT_EQ(captions(n("2.5") * n("1.2")).size(), 1U);
  EXPECT_EQ(captions(n("348") / n("24")).size(), 1U);
  EXPECT_EQ(captions(n("100") / n("7")).size(), 1U);
  EXPECT_EQ(captions(n("126") + n("348")).size(), 1U);
  EXPECT_EQ(captions(n("492") - n("144")).size(), 1U);
  EXPECT_EQ(captions(algebra::sum_of({n("63"), n("45"), n("35")})).size(), 1U);
}

TEST(Asides, AreLeftOutWhereItDoes) {
  EXPECT_TRUE(captions(n("6") * n("9")).empty());
  EXPECT_TRUE(captions(n("12") * n("4")).empty());
  EXPECT_TRUE(captions(n("200") * n("300")).empty());
  EXPECT_TRUE(captions(n("54") / n("6")).empty());
  EXPECT_TRUE(captions(n("36") + n("48")).empty());
  EXPECT_TRUE(captions(algebra::sum_of({n("3"), n("4"), n("5")})).empty());
  EXPECT_TRUE(captions(root(n("72"))).empty());
}

TEST(Asides, HaveNoRootsOrEndlessDecimalsInColumns) {
  EXPECT_TRUE(captions(Expression(square_root(Number::whole(2))) * n("36")).empty());
  EXPECT_TRUE(captions(Expression(Number::ratio(100, 3)) * n("36")).empty());
}

TEST(Canceled, StrikesACommonFactor) {
  Numerals numerals;
  const auto result = canceled(n("6") * n("9") / n("2"), numerals);
  ASSERT_TRUE(result.has_value());
  EXPECT_EQ(numerals.values().at(result->above.name), Number::whole(6));
  EXPECT_EQ(numerals.values().at(result->below.name), Number::whole(2));
  EXPECT_EQ(numerals.values().at(result->left.name), Number::whole(3));
  EXPECT_FALSE(result->leaves_one);
  EXPECT_EQ(algebra::evaluate(result->before, numerals.values()), Number::whole(27));
  EXPECT_EQ(algebra::evaluate(result->after, numerals.values()), Number::whole(27));
  EXPECT_NE(result->after.operation(), algebra::Operation::Quotient);
}

TEST(Canceled, GoesIntoASum) {
  Numerals numerals;
  const auto result = canceled(n("36") + 4 * n("9") / n("2"), numerals);
  ASSERT_TRUE(result.has_value());
  EXPECT_EQ(algebra::evaluate(result->after, numerals.values()), Number::whole(54));
}

TEST(Canceled, LeavesWhatHasNoCommonFactor) {
  Numerals numerals;
  EXPECT_FALSE(canceled(n("5") * n("9") / n("2"), numerals).has_value());
  EXPECT_FALSE(canceled(n("54") / n("2"), numerals).has_value());  // a plain division
  EXPECT_FALSE(canceled(n("6") * n("9"), numerals).has_value());
}

TEST(ArithmeticWords, SayWhatIsDone) {
  EXPECT_EQ(said(arithmetic_words(n("36") + n("48"), Numerals{})), "Add.");
  EXPECT_EQ(said(arithmetic_words(root(n("25")), Numerals{})), "Take the square root.");
  EXPECT_EQ(said(arithmetic_words(n("6") * n("9") / n("2"), Numerals{})), "Multiply and divide.");
}

}  // namespace
}  // namespace fw::reasoning::arithmetic_test
