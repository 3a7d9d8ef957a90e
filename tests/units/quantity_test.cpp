#include "units/quantity.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "support/numbers.hpp"
#include "units/write_quantity.hpp"

namespace fw::quantity_test {
namespace {

using namespace fw::units;
using fw::exact::Number;
using fw::test::decimal;

template <class A, class B>
concept Addable = requires(const A& a, const B& b) {
  a + b;
};
template <class A, class B>
concept Subtractable = requires(const A& a, const B& b) {
  a - b;
};
template <class A, class B>
concept Comparable = requires(const A& a, const B& b) {
  a == b;
};

static_assert(Addable<Length, Length> && Addable<Area, Area> && Addable<Volume, Volume>);
static_assert(!Addable<Length, Area> && !Addable<Area, Volume> && !Addable<Length, Volume>);
static_assert(!Subtractable<Area, Length> && !Comparable<Length, Area>);
static_assert(!Addable<Length, Number> && !Addable<Length, int>);
static_assert(std::is_same_v<decltype(std::declval<Length>() * std::declval<Length>()), Area>);
static_assert(std::is_same_v<decltype(std::declval<Length>() * std::declval<Area>()), Volume>);
static_assert(!std::is_default_constructible_v<Length> && std::is_copy_assignable_v<Length>);

Unit unit(const char* text) { return Unit::find(text).value_or(Unit::none()); }

TEST(QuantityArithmetic, KeepsTheFirstUnit) {
  const Length a = Length::of(Number::whole(2), unit("ft"));
  const Length b = Length::of(Number::whole(6), unit("in"));
  EXPECT_EQ(text(a + b, 2), "2.5 ft");
  EXPECT_EQ(text(b + a, 2), "30 in");
  EXPECT_EQ(text(a - b, 2), "1.5 ft");
  EXPECT_EQ(text(a * b, 2), "1 ft²");
  EXPECT_EQ(text(b * a, 2), "144 in²");
  EXPECT_EQ(text(a * a * b, 2), "2 ft³");
  EXPECT_EQ(a + b, b + a);
  EXPECT_FALSE(a == b);
}

TEST(QuantityText, SaysWhatIsRounded) {
  EXPECT_EQ(text(Area::of(decimal("49.5"), unit("cm^2")), 2), "49.5 cm²");
  EXPECT_EQ(text(Area::of(decimal("20.6457"), unit("cm^2")), 2), "≈ 20.65 cm²");
  EXPECT_EQ(text(Volume::of(Number::whole(3), unit("gal")).in(unit("in^3")), 0), "693 in³");
  EXPECT_EQ(text(Length::of(Number::whole(5), Unit::none()), 0), "5 units");
}

RC_GTEST_PROP(QuantityConversion, ThereAndBackIsTheSame, ()) {
  const Unit from = *rc::gen::elementOf(Unit::lengths());
  const Unit to = *rc::gen::elementOf(Unit::lengths());
  const int amount = *rc::gen::inRange(0, 100000);
  const Area area = Area::of(Number::ratio(amount, 7), from.to_the(2));
  RC_ASSERT(area.in(to.to_the(2)).in(from.to_the(2)).amount() == area.amount());
  RC_ASSERT(conversion(from, to) * conversion(to, from) == Number::whole(1));
}

struct Case {
  const char* text;
  const char* amount;
  const char* unit;
  bool has_unit;
};

TEST(ParseQuantity, ReadsNumbersWithUnits) {
  const Case cases[] = {
      {"12", "12", "units", false},
      {"6 cm", "6", "cm", true},
      {"6cm", "6", "cm", true},
      {" 2.5  cm ", "2.5", "cm", true},
      {"7 1/2 ft", "7.5", "ft", true},
      {"7½ ft", "7.5", "ft", true},
      {"5/8 in", "0.625", "in", true},
      {"5/8in.", "0.625", "in", true},
      {"180 ft^3", "180", "ft³", true},
      {"180 ft3", "180", "ft³", true},
      {"180 cubic feet", "180", "ft³", true},
      {"49,5 sq cm", "49.5", "cm²", true},
      {"2,860 square units", "2860", "square units", true},
      {"3 ft 6 in", "3.5", "ft", true},
      {"2 ft 6 1/2 in", "2 13/24", "ft", true},
      {"1ft4in", "1 1/3", "ft", true},
      {"1 ft4in", "1 1/3", "ft", true},
      {"1ft2in", "1 1/6", "ft", true},
      {"5ft3 in", "5.25", "ft", true},
      {"1-1/2 in", "1.5", "in", true},
      {"5. cm", "5", "cm", true},
      {"3' 6\"", "3.5", "ft", true},
      {"3'6\"", "3.5", "ft", true},
      {"1 yd 1 ft 6 in", "1.5", "yd", true},
      {"1 m 5 cm", "1.05", "m", true},
      {"3√2 cm", "3√2", "cm", true},
      {"130π cm^2", "130π", "cm²", true},
      {"130 pi cm2", "130π", "cm²", true},
      {"2 pints", "2", "pt", true},
      {"8 fl oz", "8", "fl oz", true},
      {"sqrt 2 m", "√2", "m", true},
      {"-3 cm", "−3", "cm", true},
  };
  for (const Case& c : cases) {
    const auto read = parse_quantity(c.text);
    ASSERT_TRUE(read.has_value()) << c.text << ": " << read.error().message;
    EXPECT_EQ(exact_text(read->number.value), c.amount) << c.text;
    EXPECT_EQ(read->unit.text(), c.unit) << c.text;
    EXPECT_EQ(read->has_unit, c.has_unit) << c.text;
  }
}

struct Mistake {
  const char* text;
  std::size_t offset;
  const char* message;
};

TEST(ParseQuantity, SaysWhatWasFoundAndWhatWouldBeRight) {
  const Mistake mistakes[] = {
      {"", 0, "There is no number here. Write a number and a unit, such as 7 1/2 ft."},
      {"cm", 0, "There is no number before “cm”. Write a number and a unit, such as 7 1/2 ft."},
      {"?", 0, "Found “?” instead of a number. Write one such as 12, 2.5 or 7 1/2."},
      {"5 cmm", 2, "“cmm” is not a known unit. Did you mean “cm”?"},
      {"5 squar feet", 2, "“squar feet” is not a known unit. Did you mean “square feet”?"},
      {"5 bananas", 2, "“bananas” is not a known unit. Write one such as cm, in, cm^2 or ft^3."},
      {"5/0 cm", 2, "The denominator is 0, and nothing can be divided by 0. Write another denominator."},
      {"3 in 6 ft", 5,
       "There is a second measure here: “6 ft”. Only a length in a smaller unit can follow, as in 3 ft 6 in."},
      {"3 ft 6 ft", 5,
       "There is a second measure here: “6 ft”. Only a length in a smaller unit can follow, as in 3 ft 6 in."},
      {"3 ft 6", 5,
       "There is a second measure here: “6”. Only a length in a smaller unit can follow, as in 3 ft 6 in."},
      {"3 ft^2 6 in^2", 7,
       "There is a second measure here: “6 in^2”. Only a length in a smaller unit can follow, as in 3 ft 6 in."},
      {"1 ft 13 in", 5, "13 in is more than 1 ft. Write 2 ft 1 in."},
      {"2 ft 12 in", 5, "12 in is 1 ft. Write 3 ft."},
      {"1ft14 1/2in", 3, "14 1/2 in is more than 1 ft. Write 2 ft 2.5 in."},
      {"800 in 3", 7, "“in 3” is unclear. Write in^3, or a unit after the 3."},
      {"800 in 2", 7, "“in 2” is unclear. Write in^2, or a unit after the 2."},
      {"5-1/2-1 in", 0, "“5-1/2-1” is a calculation. Write the one number that it comes to."},
  };
  for (const Mistake& m : mistakes) {
    const auto read = parse_quantity(m.text);
    ASSERT_FALSE(read.has_value()) << m.text;
    EXPECT_EQ(read.error().message, m.message) << m.text;
    EXPECT_EQ(read.error().offset, m.offset) << m.text;
  }
}

TEST(ParseQuantity, KeepsTheTextAsItShouldStandOnAFigure) {
  const std::pair<const char*, const char*> texts[] = {{"1ft4in", "1 ft 4 in"}, {"3'6\"", "3' 6\""},
                                                       {"1-1/2in", "1 1/2 in"}, {"5. cm", "5 cm"},
                                                       {" 6cm ", "6cm"},        {"7 1/2 ft", "7 1/2 ft"}};
  for (const auto& [typed, kept] : texts) {
    EXPECT_EQ(parse_quantity(typed)->text, kept) << typed;
  }
}

TEST(IntervalIn, ConvertsWhatTheTextMayStandFor) {
  const Interval wide = interval_in(*parse_quantity("2.6 cm"), unit("mm"));
  EXPECT_EQ(wide.lowest, decimal("25.5"));
  EXPECT_EQ(wide.value, decimal("26"));
  EXPECT_EQ(wide.highest, decimal("26.5"));
  const Interval point = interval_in(*parse_quantity("3 ft 6 in"), unit("in"));
  EXPECT_EQ(point.lowest, Number::whole(42));
  EXPECT_EQ(point.highest, Number::whole(42));
}

RC_GTEST_PROP(ParseQuantity, NeverFailsWithoutSayingWhere, ()) {
  const std::string text =
      *rc::gen::container<std::string>(rc::gen::elementOf(std::string("0123456789 ./,-+√π()^²cmftinsquL'\"x")));
  const auto read = parse_quantity(text);
  if (read) {
    RC_ASSERT(!read->text.empty());
  } else {
    RC_ASSERT(read.error().offset <= text.size());
    RC_ASSERT(!read.error().message.empty());
  }
}

TEST(WrittenQuantity, IsMadeAsItWouldBeRead) {
  const auto is_as_read = [](const WrittenQuantity& made) {
    const auto read = parse_quantity(made.text);
    return read && read->text == made.text && read->unit == made.unit && read->has_unit == made.has_unit &&
           read->number.text == made.number.text && read->number.value == made.number.value &&
           read->number.places == made.number.places && read->number.is_fraction == made.number.is_fraction;
  };
  const Number surd = Number::whole(3) * square_root(Number::whole(2));
  const Number rounded_to_zero = Number::ratio(2060, 100) + Number::pi() / Number::whole(10000);
  for (const char* name : {"cm", "ft^2", "units", "gal"}) {
    for (const Number& number : {Number::whole(12), Number::ratio(5, 2), Number::ratio(16, 3), surd, Number::pi()}) {
      EXPECT_TRUE(is_as_read(written_as_shown(number, unit(name), 2)));
      EXPECT_TRUE(is_as_read(written_exactly(number, unit(name), 2)));
    }
  }
  EXPECT_EQ(written_as_shown(Number::ratio(103, 5), unit("cm"), 2).text, "20.6 cm");
  EXPECT_EQ(written_as_shown(rounded_to_zero, unit("cm"), 2).text, "20.60 cm");
  EXPECT_EQ(written_exactly(Number::ratio(16, 3), unit("ft"), 2).text, "5 1/3 ft");
  EXPECT_EQ(written_exactly(surd, unit("cm"), 2).text, "3√2 cm");
  EXPECT_EQ(written_exactly(cube_root(Number::whole(2)), unit("cm"), 3).text, "1.260 cm");
  EXPECT_EQ(written_in(unit("ft"), *exact::parse_number("7 1/2")).text, "7 1/2 ft");
}

}  // namespace
}  // namespace fw::quantity_test
