// Word problems with the numbers of published books and handbooks.
#include <gtest/gtest.h>

#include <fstream>
#include <regex>

#include "supply_support.hpp"

namespace fw::reasoning::supply_published_test {
namespace {

using exact::Number;

// Every box of the table of published examples (each row names its book), covered or filled by packs of 7: the amount
// is the one printed, and the packs are enough and none too many.
TEST(PublishedCounts, BoxesOfTheTable) {
  std::ifstream table(std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/published/examples.tsv");
  const std::regex row(
      "[^\t]+\t([^\t]+)\trectangular prism \\| length: ([^|\t]+) \\| width: ([^|\t]+) \\| height: "
      "([^|\t]+)\t(volume|surface_area)\t[^\t]+\t([^\t]+)\tok.*");
  std::size_t count = 0;
  std::string line;
  for (std::smatch found; std::getline(table, line);) {
    if (!std::regex_match(line, found, row)) {
      continue;
    }
    ++count;
    const bool fills = found[5] == "volume";
    const std::string width = found[3];
    const std::size_t space = width.find(' ');
    const std::string unit = space == std::string::npos ? "" : width.substr(space) + (fills ? "^3" : "^2");
    const SupplyWork work = worked(
        problem_of(box(found[2], width, found[4]),
                   supply((fills ? R"("fill": "volume", "each": "7)" : R"("cover": "surface_area", "each": "7)") +
                          unit + R"(", "item": "pack")")));
    const Number printed = Number::from_decimal(std::string(found[6])).value_or(Number{});
    const Number seven = Number::whole(7);
    EXPECT_EQ(amount_number(work.amount), printed) << line;
    EXPECT_TRUE(work.answer->count * seven >= printed) << line;
    EXPECT_TRUE((work.answer->count - Number::whole(1)) * seven < printed) << line;
  }
  EXPECT_GE(count, 15U);
}

// L. Marecek, M. Anthony-Smith, A. Honeycutt Mathis, Prealgebra 2e, OpenStax 2020, §9.6, example 9.48: a crate 30 in by
// 25 in by 20 in has a surface area of 3700 in² and a volume of 15 000 in³.
TEST(PublishedCounts, CrateOfPrealgebra) {
  const std::string crate = box("30 in", "25 in", "20 in");
  // 3700 ÷ 800 = 4.625 and 15 000 ÷ 1728 = 8.68…, by hand.
  const SupplyWork cover =
      worked(problem_of(crate, supply(R"("cover": "surface_area", "each": "800 in^2", "item": "sheet")")));
  EXPECT_EQ(amount_number(cover.amount), Number::whole(3700));
  EXPECT_EQ(said(cover.answer->text), "5 sheets");
  const SupplyWork fill =
      worked(problem_of(crate, supply(R"("fill": "volume", "each": "1 ft^3", "item": "bag", "round": "down")")));
  EXPECT_EQ(amount_number(fill.amount), Number::whole(15000));
  EXPECT_EQ(said(fill.answer->text), "8 bags");
}

// The same book, §9.6, exercise 267: a van's space of 16 ft by 8 ft by 8 ft has a volume of 1024 ft³ and a surface area
// of 640 ft².
TEST(PublishedCounts, VanOfPrealgebra) {
  const SupplyWork fill =
      worked(problem_of(box("16 ft", "8 ft", "8 ft"), supply(R"("fill": "volume", "each": "3 yd^3", "item": "load")")));
  EXPECT_EQ(amount_number(fill.amount), Number::whole(1024));
  // 1024 ÷ 27 ÷ 3 = 12.64…, by hand.
  EXPECT_EQ(said(fill.answer->text), "13 loads");
  EXPECT_EQ(fill.answer->quotient, Number::ratio(1024, 81));
}

// G. Strang, E. Herman, Calculus Volume 1, OpenStax 2016, §4.7: of all boxes with a square base, an open top and a
// volume of 216 in³, the least surface is 108∛4 ≈ 171.44 in², with a base edge of 6∛2 ≈ 7.56 in and a height of 3∛2
// ≈ 3.78 in. The decimals of the edges are ours.
TEST(PublishedCounts, OpenBoxOfCalculus) {
  const AmountSum open = faces_that_count(
      problem_of(box("7.559526 in", "7.559526 in", "3.779763 in"), R"("open": ["top"], "find": ["surface_area"])"),
      "surface_area", 2);
  EXPECT_EQ(open.faces.size(), 5U);
  EXPECT_NEAR(open.total.to_double(), 171.4393, 0.0005);
}

// D. Kirk, Contemporary Mathematics, OpenStax 2023, §10.7, example 10.61: 1140.4 cm³ are filled from cans of 502.7 cm³,
// the ratio of exact volumes is 2.26875, and the book gives 2.3 cans. Here a box of the same ratio.
TEST(PublishedCounts, CansOfContemporaryMathematics) {
  const SupplyAnswer cans = answer(
      problem_of(box("5.5 cm", "5.5 cm", "3 cm"), supply(R"("fill": "volume", "each": "40 cm^3", "item": "can")")));
  EXPECT_EQ(cans.quotient, *Number::from_decimal("2.26875"));
  EXPECT_EQ(said(cans.text), "3 cans");
}

// NIST Handbook 44, Appendix C: 1 US gallon is 231 in³.
TEST(PublishedCounts, GallonsOfHandbook44) {
  const SupplyWork work = worked(
      problem_of(box("30 in", "14 in", "12 in"), supply(R"("fill": "volume", "each": "5 gal", "item": "bucket")")));
  EXPECT_EQ(lines(work)[0], "1 gal = 231 in³");
  EXPECT_EQ(work.answer->quotient, Number::ratio(5040, 1155));
  EXPECT_EQ(said(work.answer->text), "5 buckets");
}

}  // namespace
}  // namespace fw::reasoning::supply_published_test
