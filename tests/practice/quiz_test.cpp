#include "practice/quiz.hpp"

#include <gtest/gtest.h>

#include <set>

#include "geometry/measure.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/catalog.hpp"

namespace fw::practice::quiz_test {
namespace {

std::vector<solids::Solid> shelf_pool() {
  std::vector<solids::Solid> pool;
  for (const solids::Description& description : solids::shelf()) {
    auto solid = solids::Solid::make(description);
    EXPECT_TRUE(solid.has_value());
    if (solid) {
      pool.push_back(std::move(solid).value());
    }
  }
  return pool;
}

// First numbers of the stream seeded with 1234567. Source: the reference values that accompany SplitMix64, from memory.
TEST(Seed, IsTheSameOnEveryMachine) {
  Seed seed{1234567};
  EXPECT_EQ(seed.next(), 6457827717110365317ULL);
  EXPECT_EQ(seed.next(), 3203168211198807973ULL);
}

TEST(Quiz, GivesTheSameQuestionForTheSameSeedAndNumber) {
  const auto pool = shelf_pool();
  const NetQuestion a = net_question(pool, 7, 3);
  const NetQuestion b = net_question(pool, 7, 3);
  EXPECT_EQ(a.solid.name(), b.solid.name());
  EXPECT_EQ(a.net, b.net);
  EXPECT_EQ(a.options, b.options);
}

TEST(Quiz, AsksForEverySolidOfThePoolInTurn) {
  const auto pool = shelf_pool();
  std::multiset<std::string> asked;
  std::multiset<std::string> there;
  for (std::size_t i = 0; i < pool.size(); ++i) {
    asked.insert(net_question(pool, 11, i).solid.name());
    there.insert(pool[i].name());
  }
  EXPECT_EQ(asked, there);
}

TEST(Quiz, ShowsANetThatCanBeCutOut) {
  const auto pool = shelf_pool();
  for (std::size_t i = 0; i < 2 * pool.size(); ++i) {
    const NetQuestion question = net_question(pool, 3, i);
    EXPECT_TRUE(question.body.facets().defects().empty());
    EXPECT_TRUE(nets::overlapping(solids::unfolded(question.body, question.net)).empty());
  }
}

TEST(Quiz, ReachesEveryDistinctNetOfACube) {
  const auto cube = solids::Solid::make(solids::find_kind("cube")->example);
  ASSERT_TRUE(cube.has_value());
  Seed seed{5};
  std::set<std::uint64_t> classes;
  for (int i = 0; i < 400; ++i) {
    const auto net = random_net(cube->body(), geometry::FaceId{0}, seed);
    classes.insert(solids::net_class(cube->body(), net));
  }
  // Source: 11 nets of the cube; D. Hoey, sci.math, 9 September 1994.
  EXPECT_EQ(classes.size(), 11U);
}

TEST(Quiz, OffersOneRightNameAmongNamesOfTheSameFaceCount) {
  const auto pool = shelf_pool();
  for (std::size_t i = 0; i < pool.size(); ++i) {
    const NetQuestion question = net_question(pool, 2, i);
    ASSERT_LT(question.right_option, question.options.size());
    EXPECT_EQ(question.options[question.right_option], question.solid.name());
    const bool is_round = question.solid.traits().has_round_base;
    const auto names =
        is_round ? solids::names_beside(question.solid) : solids::names_with_face_count(question.solid.faces().size());
    EXPECT_EQ(question.options.size(), is_round ? 4U : question.options.size());
    for (std::size_t k = 0; k < question.options.size(); ++k) {
      if (k != question.right_option) {
        EXPECT_NE(std::find(names.begin(), names.end(), question.options[k]), names.end());
        EXPECT_NE(solids::judge_name(question.solid, question.options[k]), solids::NameVerdict::Right)
            << question.options[k] << " is right for " << question.solid.name();
      }
    }
  }
}

// Two kinds stand on a circle; the others are those with the fewest faces.
TEST(Quiz, OffersRoundSolidsTheirLikesAndThoseWithFewFaces) {
  for (const auto& [kind, other] : {std::pair("cylinder", "cone"), std::pair("cone", "cylinder")}) {
    const auto solid = solids::Solid::make(solids::find_kind(kind)->example);
    ASSERT_TRUE(solid.has_value());
    Seed seed{7};
    std::vector<std::string> options = name_options(*solid, seed);
    EXPECT_EQ(options.size(), 4U);
    EXPECT_EQ(std::count(options.begin(), options.end(), kind), 1);
    EXPECT_EQ(std::count(options.begin(), options.end(), other), 1);
    std::sort(options.begin(), options.end());
    EXPECT_EQ(std::unique(options.begin(), options.end()), options.end());
    EXPECT_EQ(said(name_feedback(*solid, other).message),
              "Run your finger around the side. Is it flat or curved? How many circles are there?");
  }
}

TEST(Quiz, AMirrorImageHasTheSameMeasures) {
  for (const solids::Solid& solid : shelf_pool()) {
    const solids::Body image = mirrored(solid.body());
    EXPECT_NEAR(geometry::volume(image.facets()) / geometry::volume(solid.body().facets()), 1.0, 1e-12);
  }
}

TEST(Quiz, SaysOneThingToDoForEachVerdict) {
  const auto pool = shelf_pool();
  const auto pyramid =
      std::find_if(pool.begin(), pool.end(), [](const auto& solid) { return solid.name() == "square pyramid"; });
  ASSERT_NE(pyramid, pool.end());
  EXPECT_EQ(said(name_feedback(*pyramid, "pyramid").message), "A pyramid, yes. Which one? Name the shape of its base.");
  EXPECT_EQ(name_feedback(*pyramid, "square pyramid").verdict, solids::NameVerdict::Right);
  EXPECT_EQ(name_feedback(*pyramid, "triangular prism").verdict, solids::NameVerdict::WrongFamily);
  EXPECT_EQ(name_feedback(*pyramid, "hexagonal pyramid").verdict, solids::NameVerdict::WrongBase);
  EXPECT_EQ(name_feedback(*pyramid, "banana").verdict, solids::NameVerdict::Unknown);
}

}  // namespace
}  // namespace fw::practice::quiz_test
