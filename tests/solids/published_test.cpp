#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <map>

#include "geometry/measure.hpp"
#include "support/describe_solid.hpp"

namespace fw::solids::published_test {
namespace {

std::vector<std::vector<std::string>> rows_of(const std::string& file) {
  std::ifstream stream(std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/published/" + file);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  while (std::getline(stream, line)) {
    if (!line.empty() && line[0] != '#') {
      rows.push_back(test::parts_of(line, "\t"));
    }
  }
  return rows;
}

/// Half a unit of the last decimal that is printed.
double half_unit(const std::string& printed) {
  const std::size_t point = printed.find('.');
  const std::size_t places = point == std::string::npos ? 0 : printed.size() - point - 1;
  return 0.5 * std::pow(10.0, -static_cast<double>(places));
}

double measured(const std::string& text, const std::string& asked) {
  const auto parts = test::parts_of(text, " + ");
  const Solid first = test::solid(parts[0]);
  if (asked != "surface_area" && asked != "volume") {
    return first.values().at(asked).to_double();
  }
  const auto amount = [&](const Solid& solid) {
    return (asked == "volume" ? solid.volume().amount() : solid.surface_area().amount()).to_double();
  };
  if (parts.size() == 1) {
    return amount(first);
  }
  // Two solids joined at the whole base of the second one: both faces there are hidden.
  const Solid second = test::solid(parts[1]);
  const double hidden = asked == "volume" ? 0 : 2 * second.base_area()->amount().to_double();
  return amount(first) + amount(second) - hidden;
}

TEST(PublishedExamples, ComeOutAsPrintedUnlessThePrintIsWrong) {
  const auto rows = rows_of("examples.tsv");
  ASSERT_EQ(rows.size(), 75U);
  int wrong = 0;
  for (const auto& row : rows) {
    ASSERT_EQ(row.size(), 7U) << row[0];
    SCOPED_TRACE(row[0] + ": " + row[1]);
    const double value = measured(row[2], row[3]);
    const double printed = std::stod(row[4]);
    const double again = std::stod(row[5]);
    EXPECT_NEAR(value, again, 2e-5 * again);
    if (row[6] == "WRONG") {
      ++wrong;
      EXPECT_GT(std::abs(value - printed), half_unit(row[4]));
    } else {
      EXPECT_NEAR(value, printed, half_unit(row[4]) * 1.0001);
    }
  }
  EXPECT_EQ(wrong, 8);
}

TEST(PublishedRoundSolids, ComeOutAsPrintedWithTheBooksPi) {
  const auto rows = rows_of("round.tsv");
  ASSERT_EQ(rows.size(), 63U);
  constexpr double pi = 3.14159265358979323846;
  const std::map<std::string, double> book{
      {"pi", pi}, {"3.14", 3.14}, {"3.15", 3.15}, {"22/7", 22.0 / 7}, {"256/81", 256.0 / 81}};
  for (const auto& row : rows) {
    ASSERT_EQ(row.size(), 8U) << row[0];
    SCOPED_TRACE(row[0] + ": " + row[1]);
    const double value = measured(row[2], row[3]) * std::pow(book.at(row[5]) / pi, std::stod(row[6]));
    const double printed = std::stod(row[4]);
    if (row[7] == "WRONG") {
      EXPECT_GT(std::abs(value - printed), half_unit(row[4]));
    } else {
      EXPECT_NEAR(value, printed, row[7] == "ok~" ? 2e-5 * printed : half_unit(row[4]) * 1.0001);
    }
  }
}

TEST(PublishedSolids, RegularPolyhedraHaveTheValuesOfTheHandbook) {
  const auto rows = rows_of("solids.tsv");
  ASSERT_EQ(rows.size(), 5U);
  for (const auto& row : rows) {
    SCOPED_TRACE(row[1]);
    const Solid solid = test::solid("regular polyhedron | faces: " + row[0] + " | edge: 1");
    const auto& polyhedron = solid.body().facets();
    EXPECT_EQ(polyhedron.faces().size(), std::stoul(row[0]));
    EXPECT_EQ(polyhedron.vertices().size(), std::stoul(row[2]));
    EXPECT_EQ(polyhedron.edges().size(), std::stoul(row[3]));
    EXPECT_NEAR(solid.surface_area().amount().to_double(), std::stod(row[4]), 1e-11);
    EXPECT_NEAR(solid.volume().amount().to_double(), std::stod(row[5]), 1e-11);
    EXPECT_TRUE(solid.surface_area().amount().is_exact());
    EXPECT_TRUE(solid.volume().amount().is_exact());
    constexpr double degree = 3.14159265358979323846 / 180;
    for (std::size_t i = 0; i < polyhedron.edges().size(); ++i) {
      EXPECT_NEAR(geometry::dihedral_angle_rad(polyhedron, geometry::EdgeId::at(i)) / degree, std::stod(row[6]), 1e-8);
    }
  }
}

/// Source: H. S. M. Coxeter, Regular Polytopes, Table I (from memory).
TEST(PublishedSolids, RegularPolyhedraAreWrittenAsTheHandbookWritesThem) {
  const auto surface = [](const std::string& faces) {
    return exact::exact_text(
        test::solid("regular polyhedron | faces: " + faces + " | edge: 1").surface_area().amount());
  };
  EXPECT_EQ(surface("4"), "√3");
  EXPECT_EQ(surface("8"), "2√3");
  EXPECT_EQ(surface("12"), "3√(25 + 10√5)");
  EXPECT_EQ(surface("20"), "5√3");
}

/// Source: T. L. Heath's Heron, Metrica I.8: the triangle 13, 14, 15 has the area 84 (from memory).
TEST(PublishedSolids, HeronsTriangleHasItsArea) {
  const Solid solid = test::solid("prism | height: 1 cm | base triangle | sides: 14 cm, 13 cm, 15 cm");
  EXPECT_EQ(exact::exact_text(solid.base_area()->amount()), "84");
  EXPECT_EQ(exact::exact_text(solid.values().at("base.height")), "12");
}

/// Source: E. M. Bruins's Heron, Metrica I.8: 7, 8, 9 gives √720 (from memory).
TEST(PublishedSolids, HeronsTriangleWithARootStaysExact) {
  const Solid solid = test::solid("prism | height: 1 cm | base triangle | sides: 7 cm, 8 cm, 9 cm");
  EXPECT_EQ(exact::exact_text(solid.base_area()->amount()), "12√5");
}

/// Areas of regular polygons with side 1, n / (4 tan(180° / n)), for n = 3 to 12. Source: from memory.
TEST(PublishedSolids, RegularPolygonsHaveTheirAreas) {
  const std::vector<double> areas{0.433012702, 1,           1.720477401, 2.598076211, 3.633912444,
                                  4.828427125, 6.181824194, 7.694208843, 9.365639907, 11.196152423};
  for (std::size_t i = 0; i < areas.size(); ++i) {
    const Solid solid =
        test::solid("prism | height: 1 | base regular polygon | count: " + std::to_string(i + 3) + " | side: 1");
    EXPECT_NEAR(solid.base_area()->amount().to_double(), areas[i], 1e-9);
  }
}

}  // namespace
}  // namespace fw::solids::published_test
