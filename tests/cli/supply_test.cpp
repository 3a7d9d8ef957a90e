// What measure says of word problems.
#include <gmock/gmock.h>

#include <nlohmann/json.hpp>

#include "program.hpp"

namespace fw::cli::supply_test {
namespace {

using nlohmann::json;
using testing::HasSubstr;

// Without its lid the box has 63 + 2 × 45 + 2 × 35 = 223 cm²; 2 × 223 = 446; 446 ÷ 50 = 8.92; 9 × 50 − 446 = 4; by
// hand.
const std::string box = R"({"lesson": 1, "title": "Winter fair", "problems": [{"id": "box", "solid": {
  "kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"}, "open": ["top"],
  "find": ["surface_area"], "supply": {"cover": "surface_area", "each": "50 cm^2", "item": "sheet", "price": "$0.30",
  "coats": 2}}]})";

Outcome measured(const std::string& options) {
  const Folder folder;
  return run_program("measure '" + folder.file("fair.json", box) + "' " + options);
}

TEST(MeasureSupply, IsToldAfterTheTotals) {
  const Outcome told = measured("");
  EXPECT_EQ(told.status, 0) << told.error;
  EXPECT_THAT(told.out, HasSubstr("  surface area  S = 286 cm²\n"));
  EXPECT_THAT(told.out,
              HasSubstr("  open          5 of 6 faces count: area = 63 cm² + 2 × 45 cm² + 2 × 35 cm² = 223 cm²\n"
                        "  cover         area of the faces that count = 223 cm²\n"
                        "  answer        9 sheets are needed. Left over: 4 cm², 0.08 of a sheet. Cost: $2.70.\n"));
}

TEST(MeasureSupply, IsInTheJson) {
  const Outcome told = measured("--json");
  EXPECT_EQ(told.status, 0) << told.error;
  const json problem = json::parse(told.out)["problems"][0];
  EXPECT_EQ(problem["surface_area"]["exact"], "286");
  ASSERT_EQ(problem["open"].size(), 1U);
  EXPECT_EQ(problem["open_surface_area"], json::parse(R"({"exact": "223", "value": 223.0, "unit": "cm^2"})"));
  const json& supply = problem["supply"];
  EXPECT_EQ(supply["decision"], "cover");
  EXPECT_EQ(supply["faces"].size(), 5U);
  EXPECT_EQ(supply["amount"]["exact"], "223");
  EXPECT_EQ(supply["count"], json::parse(R"({"exact": "9", "value": 9.0})"));
  EXPECT_EQ(supply["text"], "9 sheets");
  EXPECT_EQ(supply["leftover"], json::parse(R"({"exact": "4", "value": 4.0, "unit": "cm^2"})"));
  EXPECT_EQ(supply["cost"], "$2.70");
}

}  // namespace
}  // namespace fw::cli::supply_test
