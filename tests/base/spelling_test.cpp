#include "base/spelling.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

namespace fw {
namespace fw::spelling_test {
namespace {

// Source: "kitten" to "sitting" in three is the standard example of V. Levenshtein's distance (1966).
TEST(SpellingDistance, CountsChanges) {
  EXPECT_EQ(spelling_distance("kitten", "sitting"), 3U);
  EXPECT_EQ(spelling_distance("", "apex"), 4U);
  EXPECT_EQ(spelling_distance("apex", "apex"), 0U);
}

// Source: F. Damerau (1964): two letters swapped are one slip. "ca" to "abc" in three, not two, tells the optimal
// string alignment from the unrestricted distance (from memory).
TEST(SpellingDistance, CountsASwapAsOne) {
  EXPECT_EQ(spelling_distance("heihgt", "height"), 1U);
  EXPECT_EQ(spelling_distance("ca", "abc"), 3U);
}

const std::vector<std::string>& keys() {
  static const std::vector<std::string> words{"base", "height", "slant_height", "lateral_edge"};
  return words;
}

TEST(NearestSpelling, FindsASlip) {
  EXPECT_EQ(nearest_spelling("hieght", keys()), "height");
  EXPECT_EQ(nearest_spelling("slant_hight", keys()), "slant_height");
  EXPECT_EQ(nearest_spelling("basis", keys()), std::nullopt);  // two changes in five letters are too many
  EXPECT_EQ(nearest_spelling("bass", keys()), "base");
}

TEST(NearestSpelling, FindsNothingFarOff) {
  EXPECT_EQ(nearest_spelling("color", keys()), std::nullopt);
  EXPECT_EQ(nearest_spelling("height", {}), std::nullopt);
}

}  // namespace
}  // namespace fw::spelling_test
}  // namespace fw
