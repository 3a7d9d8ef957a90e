#include "exact/print_number.hpp"

#include <gtest/gtest.h>

#include "exact/written.hpp"
#include "support/numbers.hpp"

namespace fw::print_test {
namespace {

using namespace fw::exact;
using fw::test::decimal;

Number root(long long n) { return square_root(Number::whole(n)); }
Number whole(long long n) { return Number::whole(n); }

TEST(ExactText, WritesRationalsAsAClassDoes) {
  EXPECT_EQ(exact_text(whole(36)), "36");
  EXPECT_EQ(exact_text(whole(0)), "0");
  EXPECT_EQ(exact_text(decimal("49.5")), "49.5");
  EXPECT_EQ(exact_text(whole(-4)), "−4");
  EXPECT_EQ(exact_text(Number::ratio(16, 3)), "5 1/3");
  EXPECT_EQ(exact_text(Number::ratio(-16, 3)), "−5 1/3");
  EXPECT_EQ(exact_text(Number::ratio(2, 3)), "2/3");
  EXPECT_EQ(exact_text(decimal("0.000001")), "0.000001");
  EXPECT_EQ(exact_text(decimal("0.0000001")), "1/10000000");
}

TEST(ExactText, WritesRootsAndPi) {
  EXPECT_EQ(exact_text(whole(3) * root(2)), "3√2");
  EXPECT_EQ(exact_text(whole(12) + whole(3) * root(5)), "12 + 3√5");
  EXPECT_EQ(exact_text(whole(2) * root(3) - whole(1)), "2√3 − 1");
  EXPECT_EQ(exact_text(-root(3)), "−√3");
  EXPECT_EQ(exact_text(-root(3) - whole(1)), "−1 − √3");
  EXPECT_EQ(exact_text(whole(3) * square_root(whole(25) + whole(10) * root(5))), "3√(25 + 10√5)");
  EXPECT_EQ(exact_text(whole(130) * Number::pi()), "130π");
  EXPECT_EQ(exact_text(decimal("49.5") * Number::pi()), "49.5π");
  EXPECT_EQ(exact_text(Number::ratio(4, 3) * Number::pi()), "4π/3");
  EXPECT_EQ(exact_text(power(Number::pi(), 12)), "π¹²");
  EXPECT_EQ(exact_text(whole(1) / Number::pi()), "1/π");
  EXPECT_EQ(exact_text((whole(15) + whole(7) * root(5)) / whole(4)), "(15 + 7√5)/4");
  EXPECT_EQ(exact_text(decimal("5.5225") * root(3) / whole(4)), "1.380625√3");
}

TEST(FixedText, WritesEveryPlace) {
  EXPECT_EQ(fixed_text(decimal("49.5"), 2), "49.50");
  EXPECT_EQ(fixed_text(decimal("-0.004"), 2), "0.00");
  EXPECT_EQ(fixed_text(decimal("-0.006"), 2), "−0.01");
  EXPECT_EQ(fixed_text(decimal("0.05"), 1), "0.1");
  EXPECT_EQ(fixed_text(whole(2860), 0), "2860");
  // π to 50 decimals: OEIS A000796.
  EXPECT_EQ(fixed_text(Number::pi(), 50), "3.14159265358979323846264338327950288419716939937511");
}

TEST(ShownNumber, SaysWhetherItIsExact) {
  EXPECT_EQ(shown(decimal("49.5"), 2).text, "49.5");
  EXPECT_TRUE(shown(decimal("49.5"), 2).exact);
  EXPECT_EQ(shown(Number::ratio(1, 3), 2).text, "0.33");
  EXPECT_FALSE(shown(Number::ratio(1, 3), 2).exact);
  EXPECT_EQ(shown(whole(12) * square_root(whole(3)), 2).text, "20.78");
  EXPECT_EQ(shown(decimal("2.999"), 2).text, "3.00");
  EXPECT_FALSE(shown(decimal("2.999"), 2).exact);
  EXPECT_FALSE(shown(Number::polygon_cotangent(7), 2).exact);
}

// However small a number is, two of its digits are shown, or all where it ends soon.
TEST(Print, ASmallNumberKeepsItsDigits) {
  EXPECT_EQ(shown(decimal("0.0062"), 2).text, "0.0062");
  EXPECT_TRUE(shown(decimal("0.0062"), 2).exact);
  EXPECT_EQ(shown(decimal("0.03"), 2).text, "0.03");
  EXPECT_EQ(shown(Number::ratio(1, 30), 2).text, "0.033");
  EXPECT_EQ(shown(Number::ratio(1, 7000), 2).text, "0.00014");
  EXPECT_EQ(shown(-Number::ratio(1, 300), 2).text, "\u22120.0033");
  EXPECT_EQ(shown(Number::ratio(996, 10001), 2).text, "0.10");
  EXPECT_EQ(shown(Number(), 2).text, "0");
  EXPECT_EQ(rounded_to(decimal("0.0062"), 2).text, "0.01") << "whoever was told where to round";
  Number small = Number::ratio(1, 3);
  for (int i = 0; i < 30; ++i) {
    small = small / whole(7);
    const std::string text = shown(small, 2).text;
    const std::size_t first = text.find_first_not_of("0.,");
    ASSERT_NE(first, std::string::npos) << text;
    EXPECT_EQ(text.size() - first, 2U) << text;
  }
}

TEST(DecimalsNeeded, CountsThem) {
  EXPECT_EQ(decimals_needed(whole(7), 6), std::optional<int>(0));
  EXPECT_EQ(decimals_needed(Number::ratio(5, 8), 6), std::optional<int>(3));
  EXPECT_EQ(decimals_needed(Number::ratio(5, 8), 2), std::nullopt);
  EXPECT_EQ(decimals_needed(Number::ratio(1, 3), 100), std::nullopt);
  EXPECT_EQ(decimals_needed(square_root(whole(2)), 100), std::nullopt);
}

TEST(FixedText, SetsOffThousandsFromFiveDigitsOn) {
  EXPECT_EQ(fixed_text(whole(1512), 0), "1512");
  EXPECT_EQ(fixed_text(whole(24000000), 0), "24,000,000");
  EXPECT_EQ(fixed_text(Number::ratio(1234567, 100), 2), "12,345.67");
  EXPECT_EQ(fixed_text(whole(-345678), 1), "−345,678.0");
  EXPECT_EQ(shown(whole(100000), 2).text, "100,000");
  EXPECT_EQ(class_text(whole(100000)), "100,000");
  EXPECT_EQ(digits_text(whole(100000), 2), "100000");
  EXPECT_EQ(parse_number(fixed_text(Number::ratio(1234567, 100), 2))->value, Number::ratio(1234567, 100));
}

// What a class would write down and what it would rather have in decimals: common practice, no source.
TEST(ClassText, IsExactWhereAClassWouldWriteItSo) {
  EXPECT_EQ(class_text(Number::ratio(99, 2)), "49.5");
  EXPECT_EQ(class_text(Number::ratio(16, 3)), "5 1/3");
  EXPECT_EQ(class_text(whole(3) * root(2)), "3√2");
  EXPECT_EQ(class_text(whole(12) + whole(3) * root(5)), "12 + 3√5");
  EXPECT_EQ(class_text(Number::ratio(3, 2000000)), "0.0000015");
  EXPECT_EQ(class_text(whole(-3) * root(2)), "−3√2");
}

TEST(FractionText, WritesDecimalsAsMixedNumbers) {
  EXPECT_EQ(fraction_text(Number::ratio(25, 2)), "12 1/2");
  EXPECT_EQ(fraction_text(Number::ratio(-50, 3)), "−16 2/3");
  EXPECT_EQ(fraction_text(whole(7)), "7");
  EXPECT_EQ(fraction_text(Number::ratio(1, 100)), "0.01");
  EXPECT_EQ(fraction_text(whole(3) * root(2)), "3√2");
}

TEST(ClassText, ElseGoesOnInDecimals) {
  EXPECT_EQ(class_text(Number::ratio(1800, 231)), "7.7922…");
  EXPECT_EQ(class_text(Number::ratio(1, 1024) / whole(3)), "0.00032552…");
  EXPECT_EQ(class_text(Number::polygon_cotangent(5) / whole(2)), "0.68819…");
  EXPECT_EQ(class_text(Number::ratio(-1800, 231)), "−7.7922…");
  EXPECT_FALSE(has_class_form(Number::polygon_cotangent(5)));
  EXPECT_FALSE(has_class_form(whole(4) * root(818) / whole(23)));
}

}  // namespace
}  // namespace fw::print_test
