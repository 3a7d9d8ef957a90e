// The written methods of school (common practice, no source), and that their rows give the right digits.
#include "exact/column_work.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "number_generators.hpp"

namespace fw::exact::column_work_test {
namespace {

Number decimal(const char* text) { return *Number::from_decimal(text); }

// The digits of a row, signs and blanks left out; nothing for a row without digits.
Number value_of(const std::vector<std::string>& row, std::size_t from = 0) {
  std::string text;
  for (std::size_t i = from; i < row.size(); ++i) {
    if (row[i].find_first_not_of("0123456789.") == std::string::npos) text += row[i];
  }
  return *Number::from_decimal(text);
}

rc::Gen<Number> any_decimal() {
  return rc::gen::apply([](int digits, int scale) { return Number::ratio(digits, scale); }, rc::gen::inRange(0, 99999),
                        rc::gen::element(1, 1, 10, 100, 1000));
}

bool has_carries(const ColumnWork& work) {
  const auto& row = work.rows.front();
  return std::all_of(row.begin(), row.end(),
                     [](const std::string& cell) { return cell.find_first_of("0123456789") == std::string::npos; });
}

TEST(ColumnWork, AdditionLinesUpThePoint) {
  const ColumnWork work = column_addition({decimal("36"), decimal("27.25"), decimal("7.5")});
  EXPECT_EQ(work.caption, "36 + 27.25 + 7.5");
  EXPECT_EQ(plain_text(work),
            "  ²\n"
            "  36.00\n"
            "  27.25\n"
            "+  7.50\n"
            "-------\n"
            "  70.75\n");
}

TEST(ColumnWork, SubtractionFillsThePlaces) {
  EXPECT_EQ(plain_text(column_subtraction(decimal("144"), decimal("36.75"))),
            "  144.00\n"
            "−  36.75\n"
            "--------\n"
            "  107.25\n");
}

TEST(ColumnWork, MultiplicationShiftsItsPartialProducts) {
  EXPECT_EQ(plain_text(long_multiplication(decimal("48"), decimal("27"))),
            "    48\n"
            "×   27\n"
            "------\n"
            "   336\n"
            "+  960\n"
            "------\n"
            "  1296\n");
  EXPECT_EQ(plain_text(long_multiplication(decimal("23.5"), decimal("7"))),
            "   23.5\n"
            "×     7\n"
            "-------\n"
            "  164.5\n");
}

TEST(ColumnWork, DivisionWritesEveryRemainder) {
  EXPECT_EQ(plain_text(long_division(decimal("348"), decimal("24"), 2)),
            "     14.5\n"
            "    -----\n"
            "24) 348.0\n"
            "   −24\n"
            "    --\n"
            "    108\n"
            "   − 96\n"
            "    ---\n"
            "     12 0\n"
            "    −12 0\n"
            "     ----\n"
            "        0\n");
  EXPECT_EQ(plain_text(long_division(decimal("612"), decimal("6"), 2)),
            "   102\n"
            "   ---\n"
            "6) 612\n"
            "  −6\n"
            "   -\n"
            "    12\n"
            "   −12\n"
            "    --\n"
            "     0\n");
}

TEST(ColumnWork, ADecimalDivisorIsMadeWhole) {
  const ColumnWork work = long_division(decimal("84.6"), decimal("1.2"), 2);
  EXPECT_EQ(work.caption, "84.6 ÷ 1.2 = 846 ÷ 12");
  EXPECT_EQ(value_of(work.rows[0]), decimal("70.5"));
}

RC_GTEST_PROP(ColumnWorkLaws, AdditionRowsSumToTheLast, ()) {
  const auto addends = *rc::gen::suchThat(rc::gen::container<std::vector<Number>>(any_decimal()),
                                          [](const auto& list) { return !list.empty() && list.size() < 15; });
  const ColumnWork work = column_addition(addends);
  Number sum;
  std::size_t first = has_carries(work) ? 1 : 0;
  RC_ASSERT(work.rows.size() == addends.size() + 1 + first);
  for (std::size_t i = 0; i < addends.size(); ++i) {
    RC_ASSERT(value_of(work.rows[first + i]) == addends[i]);
    sum = sum + addends[i];
  }
  RC_ASSERT(value_of(work.rows.back()) == sum);
  // Points stand in one column.
  for (std::size_t c = 0; c < work.columns; ++c) {
    const bool point = work.rows.back()[c] == ".";
    for (std::size_t r = first; r < work.rows.size(); ++r) RC_ASSERT((work.rows[r][c] == ".") == point);
  }
}

RC_GTEST_PROP(ColumnWorkLaws, SubtractionRowsGiveTheDifference, ()) {
  Number a = *any_decimal();
  Number b = *any_decimal();
  if (a < b) std::swap(a, b);
  const ColumnWork work = column_subtraction(a, b);
  RC_ASSERT(value_of(work.rows[0]) - value_of(work.rows[1]) == value_of(work.rows[2]));
  RC_ASSERT(value_of(work.rows[2]) == a - b);
}

RC_GTEST_PROP(ColumnWorkLaws, PartialProductsSumToTheDigitsOfTheResult, ()) {
  const Number a = *any_decimal();
  const Number b = *any_decimal();
  const ColumnWork work = long_multiplication(a, b);
  RC_ASSERT(value_of(work.rows[0]) == a);
  RC_ASSERT(value_of(work.rows[1]) == b);
  RC_ASSERT(value_of(work.rows.back()) == a * b);
  if (work.rows.size() > 3) {
    Number sum;
    for (std::size_t r = 2; r + 1 < work.rows.size(); ++r) sum = sum + value_of(work.rows[r]);
    const int places = *decimals_needed(a, 6) + *decimals_needed(b, 6);
    RC_ASSERT(sum == a * b * power(Number::whole(10), places));
  }
}

// Quotient × divisor + remainder is the dividend, the remainder smaller than the divisor; each product is taken off
// from the number above it, and what is left stands below.
RC_GTEST_PROP(ColumnWorkLaws, DivisionRowsFollowFromEachOther, ()) {
  const Number a = *any_decimal();
  const Number b = *rc::gen::suchThat(any_decimal(), [](const Number& n) { return n.sign() > 0; });
  const int places = *rc::gen::inRange(0, 4);
  const ColumnWork work = long_division(a, b, places);
  const Number scale = power(Number::whole(10), places);
  const Number quotient = value_of(work.rows[0]);
  RC_ASSERT(quotient == floor(a / b * scale) / scale);
  const auto& second = work.rows[1];
  const auto bracket = static_cast<std::size_t>(std::find(second.begin(), second.end(), ")") - second.begin());
  RC_ASSERT(value_of(second, bracket + 1) / value_of({second.begin(), second.begin() + static_cast<long>(bracket)}) ==
            a / b);
  RC_ASSERT((work.rows.size() == 2) == quotient.is_zero());
  const auto digits = [&](std::size_t row, std::size_t to) {
    std::string text = "0";
    for (std::size_t c = bracket + 1; c < to; ++c) {
      if (work.rows[row][c].find_first_of("0123456789") == 0) text += work.rows[row][c];
    }
    return *Number::from_decimal(text);
  };
  for (std::size_t r = 2; r + 1 < work.rows.size(); r += 2) {
    const auto rule = std::find_if(work.rules.begin(), work.rules.end(), [&](const auto& one) { return one.row == r; });
    RC_ASSERT(rule != work.rules.end());
    const Number left = digits(r - 1, rule->to) - digits(r, rule->to);
    RC_ASSERT(left == digits(r + 1, rule->to));
    RC_ASSERT(left.sign() >= 0);
  }
}

RC_GTEST_PROP(ColumnWorkLaws, EveryRowHasEveryColumn, ()) {
  const Number a = *any_decimal();
  const Number b = *rc::gen::suchThat(any_decimal(), [](const Number& n) { return n.sign() > 0; });
  for (const ColumnWork& work : {long_multiplication(a, b), long_division(a, b, 3), column_addition({a, b})}) {
    for (const auto& row : work.rows) RC_ASSERT(row.size() == work.columns);
    for (const auto& rule : work.rules) {
      RC_ASSERT(rule.row < work.rows.size());
      RC_ASSERT(rule.from < rule.to && rule.to <= work.columns);
    }
  }
}

}  // namespace
}  // namespace fw::exact::column_work_test
