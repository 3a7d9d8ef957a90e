// Numbers at both limits: whatever lengths a solid has, it is told whole, or refused with the reason.
#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "fuzz/tell_lesson.hpp"
#include "geometry/measure.hpp"
#include "made_up.hpp"

namespace fw::laws::extreme_numbers_test {
namespace {

using exact::Number;
using Json = nlohmann::json;

Number ten_to_the(int exponent) { return exact::power(Number::whole(10), exponent); }

/// A row of the shelf whose lengths are made longer and shorter by powers of ten, one apart from the other by up to
/// 10^18.
Description stretched(const Description& row, test::Dice& dice) {
  const Change each = [&dice](const Number& length) {
    return length * ten_to_the(static_cast<int>(dice.below(19)) - 9);
  };
  const Number corners = ten_to_the(static_cast<int>(dice.below(19)) - 9);
  return changed(row, each, corners, "m");
}

void expect_told_whole(const Description& description) {
  const auto solid = Solid::make(description);
  if (!solid) {
    ASSERT_FALSE(solid.error().empty());
    EXPECT_FALSE(words::said(solid.error().front().message).empty());
    return;
  }
  lessons::Problem problem{"stretched", "", description, {}, *solid, {}, {}};
  EXPECT_FALSE(test::told(problem).empty());
  if (!solid->remarks().empty()) {
    return;  // labels that fit only as rounded numbers
  }
  // Coordinates say what exact numbers say, and faces of one group are of one size.
  const geometry::Polyhedron& facets = solid->body().facets();
  const double slack = solid->body().is_flat_faced() ? 1e-6 : 1e-3;  // a disk has 73 corners
  EXPECT_NEAR(geometry::surface_area(facets) / solid->surface_area().amount().to_double(), 1, slack) << solid->name();
  EXPECT_NEAR(geometry::volume(facets) / solid->volume().amount().to_double(), 1, 1e-3) << solid->name();
  for (const solids::Face& face : solid->faces()) {
    for (const solids::Face& other : solid->faces()) {
      if (face.group == other.group) {
        EXPECT_NEAR(face.area.amount().to_double() / other.area.amount().to_double(), 1, 1e-6) << solid->name();
      }
    }
  }
}

TEST(ExtremeNumbers, EachLengthOfAShelfRowByAPowerOfTen) {
  test::Dice dice(4242);
  const auto shelf = solids::shelf();
  for (const Description& row : shelf) {
    for (int turn = 0; turn < 6; ++turn) {
      expect_told_whole(stretched(row, dice));
    }
  }
}

Description box_of(const std::string& length, const std::string& width, const std::string& height) {
  Description box;
  box.kind = "rectangular prism";
  box.fields = {{"length", solids::LengthEntry{*units::parse_quantity(length)}},
                {"width", solids::LengthEntry{*units::parse_quantity(width)}},
                {"height", solids::LengthEntry{*units::parse_quantity(height)}}};
  return box;
}

/// No millimeter is lost on a thousand kilometers.
TEST(ExtremeNumbers, ABoxKeepsItsThreeLengths) {
  const auto usual = Solid::make(box_of("5 m", "4 m", "3 m"));
  ASSERT_TRUE(usual.has_value());
  const auto nets = solids::count_nets(usual->body()).distinct;
  const std::vector<Description> boxes{box_of("1000 km", "1 km", "1 mm"), box_of("1000 km", "1 mm", "2 mm"),
                                       box_of("1000 km", "999 km", "0.001 mm"), box_of("0.001 mm", "3 m", "1000 km")};
  for (const Description& box : boxes) {
    const auto solid = Solid::make(box);
    ASSERT_TRUE(solid.has_value()) << words::said(solid.error().front().message);
    EXPECT_EQ(solid->group_count(), 3U);
    EXPECT_EQ(solids::count_nets(solid->body()).distinct, nets);
    EXPECT_EQ(solids::count_nets(solid->body()).overlapping, 0U);
    expect_told_whole(box);
  }
}

TEST(ExtremeNumbers, WhatIsTooThinIsRefusedByName) {
  const auto solid = Solid::make(box_of("1000000000000 km", "1 km", "0.001 mm"));
  ASSERT_FALSE(solid.has_value());
  EXPECT_EQ(
      words::said(solid.error().front().message),
      "this solid is too thin to build: the length is 1,000,000,000,000 km, but the height is only 0.000000001 km. "
      "Choose lengths that are closer together");
}

std::string file_text(const std::string& name) {
  std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/demo_scenes/" + name);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// Some of the numbers of a solid, of what is known of it and of what it is filled with become others.
void damage(Json& node, test::Dice& dice) {
  static const std::vector<std::string> numbers{"0.001", "0.000001", "1000000", "999999.5", "1000000000000",
                                                "1/3",   "√2",       "10.01",   "6",        "0.1"};
  if (node.is_structured()) {
    for (Json& item : node) {
      damage(item, dice);
    }
    return;
  }
  const std::string text = node.is_string() ? node.get<std::string>() : "";
  const std::size_t unit = text.find(' ');
  const bool is_measure = !text.empty() && text.find_first_of("0123456789") == 0 && unit != std::string::npos;
  if (is_measure && dice.below(3) == 0) {
    node = numbers[dice.below(numbers.size())] + text.substr(unit);
  }
}

TEST(ExtremeNumbers, DamagedDemoProblemsAreToldOrRefused) {
  test::Dice dice(77);
  std::size_t told = 0;
  for (const char* name : {"lantern_fair.json", "candle_boxes.json", "lantern_market.json"}) {
    const Json lesson = Json::parse(file_text(name));
    for (const Json& problem : lesson.at("problems")) {
      for (int turn = 0; turn < 2; ++turn) {
        Json damaged = problem;
        for (const char* key : {"solid", "known", "supply", "claim", "copy", "between"}) {
          if (damaged.contains(key)) {
            damage(damaged.at(key), dice);
          }
        }
        const Json whole{{"lesson", 1}, {"title", "Damaged"}, {"problems", Json::array({damaged})}};
        told += test::tell_lesson(whole.dump()) ? 1U : 0U;
      }
    }
  }
  EXPECT_GT(told, 30U);
}

// A rest that is smaller than the last digit that is printed of what it is the rest of.
TEST(ExtremeNumbers, SuppliesOfEverySizeAreTold) {
  Json lesson = Json::parse(R"({"lesson": 1, "title": "Sizes", "problems": [{"id": "p", "prompt": "How much card?",
    "solid": {"kind": "rectangular prism", "width": "12345 m"}, "find": ["surface_area"],
    "supply": {"cover": "surface_area", "item": "sheet", "price": "$24"}}]})");
  Json& problem = lesson.at("problems").at(0);
  std::size_t told = 0;
  for (const char* length : {"1/3 km", "0.001 mm", "5 m", "7 1/2 ft"}) {
    for (const char* height : {"0.001 mm", "2/3 in", "41 cm", "1000 km"}) {
      for (const char* each : {"0.000001 mm^2", "1/3 in^2", "2 m^2", "999999 km^2"}) {
        problem["solid"]["length"] = length;
        problem["solid"]["height"] = height;
        problem["supply"]["each"] = each;
        told += test::tell_lesson(lesson.dump()) ? 1U : 0U;
      }
    }
  }
  EXPECT_GT(told, 30U);
}

}  // namespace
}  // namespace fw::laws::extreme_numbers_test
