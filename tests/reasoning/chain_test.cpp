#include "reasoning/chain.hpp"

#include <gtest/gtest.h>

#include "solids/catalog.hpp"
#include "support/describe_solid.hpp"

namespace fw::reasoning::chain_test {
namespace {

using Names = std::vector<std::string>;
namespace whole = solids::symbols;

// The letters that the formulas give, in order.
Names chain_of(const std::string& figure, const std::set<std::string>& known, const algebra::Symbol& wanted) {
  const solids::Solid solid = test::solid(figure);
  Names names;
  for (const Link& link : chain(solid.statement(), known, {wanted})) {
    names.push_back(link.unknown.name);
  }
  return names;
}

bool contains(const Names& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

const std::string pyramid = "pyramid | slant_height: 9 cm | base square | side: 6 cm";

TEST(Chain, AVolumeGoesOverTheHeight) {
  const Names names = chain_of(pyramid, {"base.side", "slant_height"}, whole::volume());
  EXPECT_TRUE(contains(names, "height"));
  EXPECT_FALSE(contains(names, "lateral_area"));
  EXPECT_EQ(names.back(), "volume");
}

TEST(Chain, ASurfaceDoesNot) {
  const Names names = chain_of(pyramid, {"base.side", "slant_height"}, whole::surface_area());
  EXPECT_FALSE(contains(names, "height"));
  EXPECT_FALSE(contains(names, "volume"));
  EXPECT_EQ(names.back(), "surface_area");
}

TEST(Chain, OneFormulaIsEnoughForABox) {
  const std::string box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";
  EXPECT_EQ(chain_of(box, {"length", "width", "height"}, whole::surface_area()), Names({"surface_area"}));
  EXPECT_EQ(chain_of(box, {"length", "width", "surface_area"}, {"height", "h", 1}), Names({"height"}));
}

TEST(Chain, IsEmptyWhereNothingFollows) {
  EXPECT_TRUE(chain_of(pyramid, {"base.side"}, whole::volume()).empty());
  EXPECT_TRUE(chain_of(pyramid, {}, whole::surface_area()).empty());
}

// On every figure of the shelf: a formula stands after all that it needs, gives a letter that was not known, and
// nothing is worked out that the answer does not rest on.
TEST(Chain, EachFormulaHasWhatItNeedsAndIsNeeded) {
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    ASSERT_TRUE(solid.has_value());
    std::set<std::string> given;
    for (const solids::Measure& measure : solid->statement().measures) {
      if (solid->is_given(measure.symbol)) {
        given.insert(measure.symbol.name);
      }
    }
    for (const algebra::Symbol& wanted : {whole::surface_area(), whole::volume()}) {
      SCOPED_TRACE(solid->name() + ", " + wanted.name);
      const std::vector<Link> links = chain(solid->statement(), given, {wanted});
      ASSERT_FALSE(links.empty());
      EXPECT_EQ(links.back().unknown, wanted);
      std::set<std::string> known = given;
      std::set<std::string> unused;
      for (const Link& link : links) {
        const algebra::Equation equation = composed(link);
        Names inputs;
        if (link.derivation != nullptr) {
          for (const algebra::Symbol& symbol : link.derivation->from) {
            inputs.push_back(symbol.name);
          }
        } else {
          for (const algebra::Symbol& symbol : algebra::symbols_of(equation.left - equation.right)) {
            inputs.push_back(symbol.name);
          }
        }
        for (const std::string& input : inputs) {
          EXPECT_TRUE(input == link.unknown.name || known.count(input) != 0) << input << " is not known yet";
          unused.erase(input);
        }
        EXPECT_TRUE(known.insert(link.unknown.name).second) << link.unknown.name << " was known";
        unused.insert(link.unknown.name);
        EXPECT_FALSE(link.reason.empty());
      }
      EXPECT_EQ(unused, std::set<std::string>{wanted.name});
    }
  }
}

}  // namespace
}  // namespace fw::reasoning::chain_test
