#include "units/unit.hpp"

#include <gtest/gtest.h>

#include "support/numbers.hpp"
#include "units/quantity.hpp"

namespace fw::unit_test {
namespace {

using fw::exact::Number;
using fw::test::decimal;
using fw::units::conversion;
using fw::units::Unit;

Number factor(const char* from, const char* to) {
  const std::optional<Unit> a = Unit::find(from);
  const std::optional<Unit> b = Unit::find(to);
  EXPECT_TRUE(a.has_value()) << from;
  EXPECT_TRUE(b.has_value()) << to;
  return a && b ? conversion(*a, *b) : Number();
}

// Sources: NIST Special Publication 811 (2008), Appendix B.8; GNU units 2.22, its table of definitions.
TEST(UnitFactors, OfLengthsAreThePublishedOnes) {
  EXPECT_EQ(factor("in", "cm"), decimal("2.54"));
  EXPECT_EQ(factor("ft", "m"), decimal("0.3048"));
  EXPECT_EQ(factor("yd", "m"), decimal("0.9144"));
  EXPECT_EQ(factor("mi", "m"), decimal("1609.344"));
  EXPECT_EQ(factor("mi", "ft"), Number::whole(5280));
  EXPECT_EQ(factor("ft", "in"), Number::whole(12));
  EXPECT_EQ(factor("yd", "ft"), Number::whole(3));
  EXPECT_EQ(factor("km", "mm"), Number::whole(1000000));
  EXPECT_EQ(factor("dm", "cm"), Number::whole(10));
}

// Source: squares and cubes of the exact lengths, worked out; to six decimals also in NIST SP 811, B.8.
TEST(UnitFactors, OfAreasAndVolumesAreThePublishedOnes) {
  EXPECT_EQ(factor("in^2", "cm^2"), decimal("6.4516"));
  EXPECT_EQ(factor("in^3", "cm^3"), decimal("16.387064"));
  EXPECT_EQ(factor("ft^2", "m^2"), decimal("0.09290304"));
  EXPECT_EQ(factor("ft^3", "L"), decimal("28.316846592"));
  EXPECT_EQ(factor("yd^3", "m^3"), decimal("0.764554857984"));
  EXPECT_EQ(factor("m^3", "L"), Number::whole(1000));
  EXPECT_EQ(factor("cm^3", "mL"), Number::whole(1));
}

// Sources: NIST Handbook 44, Appendix C; GNU units 2.22.
TEST(UnitFactors, OfCapacitiesAreThePublishedOnes) {
  EXPECT_EQ(factor("gal", "in^3"), Number::whole(231));
  EXPECT_EQ(factor("gal", "L"), decimal("3.785411784"));
  EXPECT_EQ(factor("gal", "qt"), Number::whole(4));
  EXPECT_EQ(factor("gal", "pt"), Number::whole(8));
  EXPECT_EQ(factor("gal", "cups"), Number::whole(16));
  EXPECT_EQ(factor("gal", "fl oz"), Number::whole(128));
  EXPECT_EQ(factor("fl oz", "mL"), decimal("29.5735295625"));
  EXPECT_EQ(fixed_text(factor("ft^3", "gal"), 9), "7.480519481");
}

TEST(FindUnit, ReadsTheUsualSpellings) {
  const std::pair<const char*, const char*> spellings[] = {{"cm", "cm"},
                                                           {" cm ", "cm"},
                                                           {"CM", "cm"},
                                                           {"centimeters", "cm"},
                                                           {"centimetre", "cm"},
                                                           {"inches", "in"},
                                                           {"in.", "in"},
                                                           {"feet", "ft"},
                                                           {"foot", "ft"},
                                                           {"miles", "mi"},
                                                           {"units", "units"},
                                                           {"unit", "units"},
                                                           {"cm2", "cm²"},
                                                           {"cm^2", "cm²"},
                                                           {"cm²", "cm²"},
                                                           {"sq cm", "cm²"},
                                                           {"sq. cm", "cm²"},
                                                           {"square centimeters", "cm²"},
                                                           {"square feet", "ft²"},
                                                           {"sq ft", "ft²"},
                                                           {"square units", "square units"},
                                                           {"cm³", "cm³"},
                                                           {"cm3", "cm³"},
                                                           {"cu ft", "ft³"},
                                                           {"cu. cm", "cm³"},
                                                           {"cubic feet", "ft³"},
                                                           {"Cubic Inches", "in³"},
                                                           {"cm squared", "cm²"},
                                                           {"feet cubed", "ft³"},
                                                           {"L", "L"},
                                                           {"l", "L"},
                                                           {"liters", "L"},
                                                           {"litre", "L"},
                                                           {"ml", "mL"},
                                                           {"milliliters", "mL"},
                                                           {"gallons", "gal"},
                                                           {"quart", "qt"},
                                                           {"pints", "pt"},
                                                           {"cups", "cup"},
                                                           {"fluid ounces", "fl oz"},
                                                           {"fl. oz.", "fl oz"},
                                                           {"cubic units", "cubic units"},
                                                           {"square inch", "in²"},
                                                           {"m", "m"},
                                                           {"mm^3", "mm³"}};
  for (const auto& [text, unit] : spellings) {
    const std::optional<Unit> found = Unit::find(text);
    ASSERT_TRUE(found.has_value()) << text;
    EXPECT_EQ(found->text(), unit) << text;
  }
}

TEST(FindUnit, RefusesWhatIsNoUnit) {
  for (const char* text : {"", " ", "c m", "cmm", "cm^4", "square", "sq", "cubic", "square cm^2", "sq cm3",
                           "cubic liters", "L^2", "liter squared", "2", "^2", "degree", "kg"}) {
    EXPECT_FALSE(Unit::find(text).has_value()) << text;
  }
}

TEST(UnitTable, EveryTextNameAndAsciiFormIsFoundAgain) {
  std::vector<Unit> all = {Unit::none(), Unit::none().to_the(2), Unit::none().to_the(3)};
  for (const Unit& length : Unit::lengths()) {
    for (int dimension = 1; dimension <= 3; ++dimension) {
      all.push_back(length.to_the(dimension));
      EXPECT_EQ(all.back().dimension(), dimension);
      EXPECT_EQ(all.back().root(), std::optional<Unit>(length));
      EXPECT_EQ(all.back().factor(), power(length.factor(), dimension));
    }
  }
  EXPECT_EQ(Unit::lengths().size(), 9U);
  for (const Unit& unit : all) {
    EXPECT_EQ(Unit::find(unit.text()), std::optional<Unit>(unit)) << unit.text();
    EXPECT_EQ(Unit::find(unit.ascii()), std::optional<Unit>(unit)) << unit.ascii();
    EXPECT_EQ(Unit::find(unit.name()), std::optional<Unit>(unit)) << unit.name();
  }
}

TEST(Units, KnowWhatTheyConvertTo) {
  EXPECT_TRUE(Unit::find("gal")->converts_to(*Unit::find("cm^3")));
  EXPECT_FALSE(Unit::find("cm")->converts_to(*Unit::find("cm^2")));
  EXPECT_FALSE(Unit::find("cm")->converts_to(Unit::none()));
  EXPECT_TRUE(Unit::none().converts_to(Unit::none()));
  EXPECT_FALSE(Unit::find("L")->root().has_value());
  EXPECT_TRUE(Unit::find("L")->is_capacity());
  EXPECT_EQ(Unit::centimeter().text(), "cm");
  EXPECT_EQ(Unit::find("square feet")->name(), "square foot");
}

}  // namespace
}  // namespace fw::unit_test
