#include "reasoning/measures.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "support/describe_solid.hpp"

namespace fw::reasoning::measures_test {
namespace {

const solids::Solid& shade() {
  static const solids::Solid solid = test::solid("pyramid | slant_height: 13 cm | base square | side: 10 cm");
  return solid;
}

TEST(EditableMeasures, AreListedWithTheirNumbers) {
  const std::vector<EditableMeasure> list = editable_measures(shade(), shade());
  ASSERT_EQ(list.size(), 2U);
  EXPECT_EQ(list[0].field, "base.side");
  EXPECT_EQ(list[0].text, "10");
  EXPECT_EQ(list[0].unit, "cm");
  EXPECT_EQ(list[1].field, "slant_height");
  EXPECT_EQ(list[1].text, "13");
}

TEST(EditableMeasures, KeepTheirUnitWhereNoneIsWritten) {
  const auto changed = with_measure(shade().description(), "slant_height", "14");
  ASSERT_TRUE(changed.has_value());
  const auto& entry = std::get<solids::LengthEntry>(changed->fields.at("slant_height"));
  EXPECT_EQ(units::text(units::Length::of(entry.written->number.value, entry.written->unit), 2), "14 cm");
  EXPECT_EQ(said(with_measure(shade().description(), "width", "3").error()), "This solid has no measure \"width\".");
}

TEST(EditableMeasures, AreWrittenInUnitsThatHoldThemExactly) {
  const std::vector<units::Unit> choice = units_to_choose(shade().description());
  EXPECT_NE(std::find(choice.begin(), choice.end(), *units::Unit::find("mm")), choice.end());
}

}  // namespace
}  // namespace fw::reasoning::measures_test
