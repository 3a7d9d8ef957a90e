#include "exact/written.hpp"

#include <gtest/gtest.h>

#include "exact/number_tree.hpp"
#include "exact/print_number.hpp"
#include "exact/signs.hpp"
#include "support/numbers.hpp"

namespace fw::written_test {
namespace {

using namespace fw::exact;
using fw::test::decimal;

struct Case {
  const char* text;
  const char* value;  // as exact_text writes it
  int places;
  bool is_fraction;
};

TEST(ParseNumber, ReadsWhatClassesWrite) {
  const Case cases[] = {
      {"12", "12", 0, false},
      {" 12 ", "12", 0, false},
      {"2.5", "2.5", 1, false},
      {".5", "0.5", 1, false},
      {"2.50", "2.5", 2, false},
      {"2,860", "2860", 0, false},
      {"1,234,567.8", "1234567.8", 1, false},
      {"408,4", "408.4", 1, false},
      {"1,5", "1.5", 1, false},
      {"0,125", "0.125", 3, false},
      {"1234,567", "1234.567", 3, false},
      {"2 513,28", "2513.28", 2, false},
      {"2\u00A0513", "2513", 0, false},
      {"7 1/2", "7.5", 0, true},
      {"7½", "7.5", 0, true},
      {"7-1/2", "7.5", 0, true},
      {"5.", "5", 0, false},
      {"√2+1-1/2", "(1 + 2√2)/2", 0, true},
      {"7 ½", "7.5", 0, true},
      {"½", "0.5", 0, true},
      {"5/8", "0.625", 0, true},
      {"5⁄8", "0.625", 0, true},
      {"7 125/1000", "7.125", 0, true},
      {"-7 1/2", "−7.5", 0, true},
      {"−3", "−3", 0, false},
      {"+3", "3", 0, false},
      {"3√2", "3√2", 0, true},
      {"3 √ 2", "3√2", 0, true},
      {"√(2)", "√2", 0, true},
      {"sqrt(12)", "2√3", 0, true},
      {"√12", "2√3", 0, true},
      {"√3/2", "√3/2", 0, true},
      {"12π", "12π", 0, true},
      {"12·π", "12π", 0, true},
      {"130 pi", "130π", 0, true},
      {"4π/3", "4π/3", 0, true},
      {"π²", "π²", 0, true},
      {"12 + 3√5", "12 + 3√5", 0, true},
      {"(15 + 7√5)/4", "(15 + 7√5)/4", 0, true},
      {"3√(25 + 10√5)", "3√(25 + 10√5)", 0, true},
  };
  for (const Case& c : cases) {
    const auto read = parse_number(c.text);
    ASSERT_TRUE(read.has_value()) << c.text << ": " << read.error().message;
    EXPECT_EQ(exact_text(read->value), c.value) << c.text;
    EXPECT_EQ(read->places, c.places) << c.text;
    EXPECT_EQ(read->is_fraction, c.is_fraction) << c.text;
  }
}

struct Mistake {
  const char* text;
  std::size_t offset;
  const char* message;
};

TEST(ParseNumber, SaysWhatWasFoundAndWhatWouldBeRight) {
  const Mistake mistakes[] = {
      {"", 0, "There is no number here. Write one such as 12, 2.5 or 7 1/2."},
      {"  ", 2, "There is no number here. Write one such as 12, 2.5 or 7 1/2."},
      {"abc", 0, "Found “a” instead of a number. Write one such as 12, 2.5 or 7 1/2."},
      {"12x", 2, "“12” is followed by “x”, which is not part of a number. Write one number such as 12, 2.5 or 7 1/2."},
      {"5/0", 2, "The denominator is 0, and nothing can be divided by 0. Write another denominator."},
      {"7 1/0", 4, "The denominator is 0, and nothing can be divided by 0. Write another denominator."},
      {"7 1/", 4, "A whole number belongs after the fraction bar; found the end."},
      {".", 1, "A digit belongs after the decimal point; found the end."},
      {"5.x", 2, "A digit belongs after the decimal point; found “x”."},
      {"2+1-1/2", 0, "“2+1-1/2” is a calculation. Write the one number that it comes to."},
      {"1.2.3", 3,
       "The second “.” in “1.2.3” is unclear. Write 2,860 or 2 860 for thousands and 2.5 or 2,5 for decimals."},
      {"1,234,56", 5,
       "The second “,” in “1,234,56” is unclear. Write 2,860 or 2 860 for thousands and 2.5 or 2,5 for decimals."},
      {"1234567890123456789012345678901", 31, "This number has more than 30 digits. Write at most 30."},
      {"12 + 3", 0, "“12 + 3” is a calculation. Write the one number that it comes to."},
      {"√(1-√2)", 3, "The number under the root is negative, and no number has such a square."},
      {"5/8π", 3, "It is not clear whether “π” belongs to the denominator. Write (5/8)π or 5/(8π), with parentheses."},
      {"3·4", 3,
       "A root or π belongs after the multiplication sign; found “4”. Write a product of numbers as the one number it "
       "comes to."},
      {"3√(2", 6, "A parenthesis is not closed; found the end where “)” belongs."},
  };
  for (const Mistake& m : mistakes) {
    const auto read = parse_number(m.text);
    ASSERT_FALSE(read.has_value()) << m.text;
    EXPECT_EQ(read.error().message, m.message) << m.text;
    EXPECT_EQ(read.error().offset, m.offset) << m.text;
  }
}

TEST(ParseNumber, GivesUpOnEndlessNesting) {
  std::string deep(90, '(');
  deep.push_back('1');
  deep.append(90, ')');
  const auto read = parse_number(deep);
  ASSERT_FALSE(read.has_value());
  EXPECT_EQ(read.error().message, "There are too many parentheses inside one another.");
  EXPECT_FALSE(parse_number(std::string(500, '1')).has_value());
  std::string many = "1";
  for (int i = 0; i < 20; ++i) {
    many += "(1+√" + std::to_string(i + 2) + ")";
  }
  EXPECT_EQ(parse_number(many).error().message, "There are too many roots in this number. Write at most 12.");
}

TEST(WrittenNumber, StandsForHalfAUnitOfItsLastDigit) {
  const auto read = parse_number("2.6");
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(read->lowest(), decimal("2.55"));
  EXPECT_EQ(read->highest(), decimal("2.65"));
  EXPECT_EQ(parse_number("7 1/2")->lowest(), decimal("7.5"));
  EXPECT_EQ(parse_number("12")->highest(), decimal("12.5"));
}

TEST(WrittenNumber, IsMadeTheUsualWay) {
  EXPECT_EQ(written(decimal("9.5"), 2).text, "9.5");
  EXPECT_EQ(written(decimal("9.5"), 2).places, 1);
  EXPECT_EQ(written(square_root(Number::whole(2)), 2).text, "1.41");
  EXPECT_EQ(written(square_root(Number::whole(2)), 2).value, decimal("1.41"));
  EXPECT_EQ(written(Number::whole(30), 1).text, "30");
}

TEST(Written, KeepsItsTextWithoutTheSpacesAround) {
  for (const char* text : {"9", " 9", "9 ", "  9   "}) {
    const auto read = parse_number(text);
    ASSERT_TRUE(read.has_value()) << text;
    EXPECT_EQ(read->text, "9");
  }
}

TEST(NumberTree, OpensWhateverIsPrinted) {
  Number sum = Number::whole(1);
  for (const long long prime : {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47}) {
    sum = sum + square_root(Number::whole(prime));
  }
  const Number large = square_root(power(Number::whole(10), 41) + Number::whole(7));
  const Number long_ratio = Number::ratio(1, 3) + power(Number::whole(10), 45);
  for (const Number& number : {sum, large, long_ratio, sum / Number::whole(7), sum * Number::pi()}) {
    EXPECT_TRUE(number_tree(exact_text(number)).has_value()) << exact_text(number);
  }
}

TEST(LeadingNumber, EndsWhereTheNumberEnds) {
  struct Lead {
    const char* text;
    Stroke stroke;
    Number value;
    std::size_t length;
  };
  const Lead leads[] = {
      {"12 cm", Stroke::Inside, decimal("12"), 2},  {"2,860.5x", Stroke::Inside, decimal("2860.5"), 7},
      {"1/2 b", Stroke::Inside, decimal("0.5"), 3}, {"1/2 b", Stroke::Outside, decimal("1"), 1},
      {"5 1/2", Stroke::Outside, decimal("5"), 1},  {"7 1/2ft", Stroke::Inside, decimal("7.5"), 5},
      {"½bt", Stroke::Inside, decimal("0.5"), 2},   {"6(4 + 2)", Stroke::Inside, decimal("6"), 1},
      {"1/2.5", Stroke::Inside, decimal("1"), 1},   {"194.0623…", Stroke::Inside, decimal("194.0623"), 8},
  };
  for (const Lead& lead : leads) {
    const auto read = leading_number(lead.text, lead.stroke);
    ASSERT_TRUE(read.has_value()) << lead.text;
    EXPECT_EQ(read->value, lead.value) << lead.text;
    EXPECT_EQ(read->length, lead.length) << lead.text;
    EXPECT_TRUE(begins_number(lead.text));
  }
  EXPECT_FALSE(begins_number("b"));
  EXPECT_EQ(leading_number("1/0", Stroke::Inside).error().offset, 2U);
  EXPECT_FALSE(leading_number("b", Stroke::Inside).has_value());
}

TEST(Signs, OfFractionsAreReadAsTheirValues) {
  for (const FractionSign& fraction : fraction_signs) {
    const auto read = parse_number(fraction.sign);
    ASSERT_TRUE(read.has_value()) << fraction.sign;
    EXPECT_EQ(read->value, Number::ratio(fraction.above, fraction.below)) << fraction.sign;
  }
}

TEST(Signs, OfPowersStandForEachDigit) {
  EXPECT_EQ(raised(2), "²");
  EXPECT_EQ(raised(1024), "¹⁰²⁴");
}

}  // namespace
}  // namespace fw::written_test
