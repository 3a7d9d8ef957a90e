#include "base/place.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <string>

namespace fw {
namespace fw::place_test {
namespace {

TEST(Place, BeginsAtLineOneColumnOne) {
  EXPECT_EQ(place_of("", 0), (Place{1, 1}));
  EXPECT_EQ(place_of("net", 0), (Place{1, 1}));
}

TEST(Place, CountsLinesAndColumns) {
  EXPECT_EQ(place_of("ab\ncd", 1), (Place{1, 2}));
  EXPECT_EQ(place_of("ab\ncd", 2), (Place{1, 3}));  // the line end itself
  EXPECT_EQ(place_of("ab\ncd", 3), (Place{2, 1}));
  EXPECT_EQ(place_of("ab\n\ncd", 5), (Place{3, 2}));
}

TEST(Place, CountsCharactersNotBytes) {
  const std::string text = "5 cm\xC2\xB2 x";  // the superscript two has two bytes
  EXPECT_EQ(place_of(text, text.size() - 1), (Place{1, 7}));
  EXPECT_EQ(place_of("\xE2\x84\x93=", 3), (Place{1, 2}));  // the script l has three
}

TEST(Place, StopsAtTheEnd) { EXPECT_EQ(place_of("ab\nc", 100), (Place{2, 2})); }

RC_GTEST_PROP(Place, LineIsOneMoreThanTheLineEndsBefore, (const std::string& text)) {
  const std::size_t offset = *rc::gen::inRange<std::size_t>(0, text.size() + 1);
  const auto ends = std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(offset), '\n');
  RC_ASSERT(place_of(text, offset).line == static_cast<std::size_t>(ends) + 1);
}

}  // namespace
}  // namespace fw::place_test
}  // namespace fw
