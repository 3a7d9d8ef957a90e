#include "base/utf8.hpp"

#include <gtest/gtest.h>

namespace fw::utf8_test {
namespace {

TEST(Utf8, CountsCharactersAndNotBytes) {
  EXPECT_EQ(character_count(""), 0U);
  EXPECT_EQ(character_count("cm²"), 3U);
  EXPECT_EQ(character_count("ℓ ≈ 5"), 5U);
  EXPECT_FALSE(starts_character("²"[1]));
}

}  // namespace
}  // namespace fw::utf8_test
