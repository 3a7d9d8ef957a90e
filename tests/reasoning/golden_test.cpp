#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "reasoning/explanation.hpp"
#include "support/describe_solid.hpp"

// One worked solution of each kind, as it stands in tests/reasoning/golden. Read there as a student would before a
// change is taken over: FOLDWRIGHT_WRITE_GOLDEN=1 writes the files anew.
namespace fw::reasoning::golden_test {
namespace {

struct Golden {
  std::string file;
  std::string figure;
  std::string asked;
  Route route = Route::Formula;
};
void PrintTo(const Golden& golden, std::ostream* out) { *out << golden.file; }

class GoldenSolution : public testing::TestWithParam<Golden> {};

std::string text_of(const Golden& golden) {
  SolutionOptions options;
  options.route = golden.route;
  const auto solution = worked_solution(test::solid(golden.figure), golden.asked, options);
  EXPECT_TRUE(solution.has_value()) << said(solution.error());
  return golden.figure + "\nfind " + golden.asked + "\n\n" + steps_text(solution->steps);
}

TEST_P(GoldenSolution, ReadsAsItWasReviewed) {
  const std::string path = std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/reasoning/golden/" + GetParam().file + ".txt";
  const std::string text = text_of(GetParam());
  if (std::getenv("FOLDWRIGHT_WRITE_GOLDEN") != nullptr) {
    std::ofstream(path) << text;
  }
  std::stringstream reviewed;
  reviewed << std::ifstream(path).rdbuf();
  EXPECT_EQ(reviewed.str(), text);
}

INSTANTIATE_TEST_SUITE_P(
    Kinds, GoldenSolution,
    testing::Values(
        Golden{"cube", "cube | edge: ? | known surface_area: 294 cm^2", "volume"},
        Golden{"rectangular_prism",
               "rectangular prism | length: 9 cm | width: 7 cm | height: ? | known surface_area: 286 cm^2", "height"},
        Golden{"prism", "prism | height: 7 cm | base isosceles triangle | base: 10 cm | height: 12 cm", "surface_area"},
        Golden{"prism_by_faces", "prism | height: 7 cm | base isosceles triangle | base: 10 cm | leg: 13 cm",
               "surface_area", Route::FaceByFace},
        Golden{"pyramid", "pyramid | slant_height: ? | base square | side: 12 cm | known surface_area: 492 cm^2",
               "slant_height"},
        Golden{"pyramid_quadratic",
               "pyramid | slant_height: 9 cm | base square | side: ? | known surface_area: 144 cm^2", "base.side"},
        Golden{"regular_polyhedron", "regular polyhedron | faces: 8 | edge: 6 cm", "volume"}),
    [](const testing::TestParamInfo<Golden>& one) { return one.param.file; });

}  // namespace
}  // namespace fw::reasoning::golden_test
