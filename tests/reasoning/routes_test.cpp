#include "reasoning/routes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "reasoning/unknown.hpp"
#include "solids/catalog.hpp"
#include "support/describe_solid.hpp"
#include "support/numbers.hpp"

namespace fw::reasoning::routes_test {
namespace {

using exact::Number;
using testing::HasSubstr;

const std::string box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";
const std::string shade = "pyramid | slant_height: 9 cm | base square | side: 6 cm";

TEST(Routes, BothWaysEndInTheSameNumberAndSoSay) {
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    ASSERT_TRUE(solid.has_value());
    SCOPED_TRACE(solid->name());
    const auto routes = two_routes(*solid, "surface_area");
    ASSERT_TRUE(routes.has_value()) << said(routes.error());
    EXPECT_NEAR(routes->by_formula.answer.amount.to_double(), routes->by_faces.answer.amount.to_double(), 1e-9);
    EXPECT_GT(routes->formula_lines, 0U);
    EXPECT_GT(routes->face_lines, 0U);
    EXPECT_THAT(said(routes->comparison), HasSubstr("Both give " + routes->by_formula.answer.text + "."));
    const std::string shorter = routes->formula_lines < routes->face_lines   ? "The formula is shorter here"
                                : routes->face_lines < routes->formula_lines ? "Face by face is shorter here"
                                                                             : "Both ways take";
    EXPECT_THAT(said(routes->comparison), testing::StartsWith(shorter));
  }
}

TEST(Routes, AVolumeHasOneWayOnly) { EXPECT_FALSE(two_routes(test::solid(box), "volume").has_value()); }

TEST(AskedFor, TakesTheMeasureAwayAndGivesAnotherInItsPlace) {
  const solids::Solid solid = test::solid(box);
  const auto figure = asked_for(solid, "height", "surface_area");
  ASSERT_TRUE(figure.has_value()) << said(figure.error());
  const auto solution = worked_solution(*figure, "height");
  ASSERT_TRUE(solution.has_value()) << said(solution.error());
  EXPECT_EQ(solution->answer.text, "5 cm");
  EXPECT_EQ(figure->values().at("surface_area"), Number::whole(286));
  EXPECT_FALSE(figure->is_given(algebra::Symbol{"height", "h", 1}));
}

TEST(AskedFor, LeavesAFigureThatAsksForItAlready) {
  const solids::Solid solid = test::solid(shade);
  EXPECT_TRUE(asked_for(solid, "surface_area").value() == solid);
}

TEST(AskedFor, SaysWhatIsMissing) {
  const auto missing = asked_for(test::solid(shade), "slant_height");
  ASSERT_FALSE(missing.has_value());
  EXPECT_THAT(said(missing.error()),
              testing::StartsWith("without the slant height, something is missing: give the surface area"));
  EXPECT_THAT(said(missing.error()), testing::EndsWith(" or the lateral edge"));
  EXPECT_EQ(said(asked_for(test::solid("cube | edge: 8 cm"), "edge").error()),
            "without the edge, something is missing: give the surface area or the volume");
  EXPECT_EQ(said(asked_for(test::solid("cube | edge: 8 cm"), "slant_height").error()),
            "a cube has no measure \"slant_height\"");
}

TEST(CouldBeGiven, NamesTheUsualMeasuresFirst) {
  std::vector<std::string> names;
  for (const Askable& one : could_be_given(test::solid(shade), "slant_height")) {
    names.push_back(one.name);
  }
  EXPECT_THAT(names, testing::ElementsAre("surface_area", "volume", "lateral_area", "height", "lateral_edge"));
  EXPECT_TRUE(could_be_given(test::solid(shade), "volume").empty());
}

TEST(AskableMeasures, NameEachOnce) {
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    std::set<std::string> names;
    for (const Askable& one : askable_measures(*solid)) {
      EXPECT_TRUE(names.insert(one.name).second) << solid->name() << ": " << one.name;
      EXPECT_FALSE(one.title.empty());
      EXPECT_FALSE(one.letter.empty());
    }
  }
}

}  // namespace
}  // namespace fw::reasoning::routes_test
