#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "geometry/measure.hpp"
#include "sound_solid.hpp"
#include "support/describe_solid.hpp"
#include "support/random.hpp"

// Areas and volumes against qhull's convex hulls. Source: C. B. Barber and others, The Quickhull Algorithm for Convex
// Hulls, ACM Transactions on Mathematical Software 22 (1996).
namespace fw::solids::oracle_test {
namespace {

struct HullMeasures {
  double area = 0;
  double volume = 0;
};

std::optional<HullMeasures> hull_measures(const Solid& solid) {
  const auto folder = std::filesystem::temp_directory_path();
  const std::string points = (folder / ("foldwright_hull_" + std::to_string(std::rand()) + ".txt")).string();
  {
    std::ofstream file(points);
    file.precision(17);
    file << "3\n" << solid.body().facets().vertices().size() << "\n";
    for (const auto& corner : solid.body().facets().vertices()) {
      file << corner.x << " " << corner.y << " " << corner.z << "\n";
    }
  }
  // FS prints the area and the volume with all their digits.
  FILE* pipe = popen(("qconvex FS < " + points + " 2>/dev/null").c_str(), "r");
  std::string output;
  char buffer[256];
  while (pipe != nullptr && std::fgets(buffer, sizeof buffer, pipe) != nullptr) {
    output += buffer;
  }
  const int status = pipe == nullptr ? -1 : pclose(pipe);
  std::filesystem::remove(points);
  std::istringstream numbers(output);
  int none = 0;
  int count = 0;
  HullMeasures measures;
  if (status != 0 || !(numbers >> none >> count >> measures.area >> measures.volume)) {
    return std::nullopt;
  }
  return measures;
}

std::string length(test::Dice& dice) {
  return std::to_string(static_cast<int>(dice.between(10, 200))) + "." +
         std::to_string(static_cast<int>(dice.below(10))) + " cm";
}

/// A solid of any kind with random measures, in the notation of the tests; it need not exist.
std::string random_convex_solid(test::Dice& dice) {
  const std::vector<std::string> bases{
      "square | side: " + length(dice),
      "rectangle | length: " + length(dice) + " | width: " + length(dice),
      "triangle | sides: " + length(dice) + ", " + length(dice) + ", " + length(dice),
      "right triangle | legs: " + length(dice) + ", " + length(dice),
      "equilateral triangle | side: " + length(dice),
      "isosceles triangle | base: " + length(dice) + " | height: " + length(dice),
      "parallelogram | base: " + length(dice) + " | side: " + length(dice) + " | height: " + length(dice),
      "rhombus | diagonals: " + length(dice) + ", " + length(dice),
      "trapezoid | bases: " + length(dice) + ", " + length(dice) + " | height: " + length(dice) + " | legs: ?",
      "regular polygon | count: " + std::to_string(3 + dice.below(38)) + " | side: " + length(dice)};
  const std::string base = " | base " + bases[dice.below(bases.size())];
  switch (dice.below(4)) {
    case 0:
      return "prism | height: " + length(dice) + base;
    case 1:
      return "prism | height: " + length(dice) + " | lies: side" + base;
    case 2:
      return "pyramid | height: " + length(dice) + base;
    default:
      return "pyramid | height: " + length(dice) + " | apex_over: " + length(dice) + ", " + length(dice) + base;
  }
}

TEST(QhullOracle, AgreesOnAreaAndVolumeOfRandomSolids) {
  if (std::system("command -v qconvex > /dev/null 2>&1") != 0) {
    GTEST_SKIP() << "qconvex (Debian package qhull-bin) is not installed";
  }
  test::Dice dice(20240601);
  int compared = 0;
  for (int attempt = 0; attempt < 150; ++attempt) {
    const std::string text = random_convex_solid(dice);
    SCOPED_TRACE(text);
    const auto solid = test::made(text);
    if (!solid) {
      continue;  // three random sides need not make a triangle
    }
    const auto hull = hull_measures(*solid);
    ASSERT_TRUE(hull.has_value());
    EXPECT_LT(test::relative_difference(hull->area, solid->surface_area().amount().to_double()), 1e-9);
    EXPECT_LT(test::relative_difference(hull->volume, solid->volume().amount().to_double()), 1e-9);
    ++compared;
  }
  EXPECT_GT(compared, 100);
}

}  // namespace
}  // namespace fw::solids::oracle_test
