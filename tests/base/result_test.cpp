#include "base/result.hpp"

#include <gtest/gtest.h>

#include <memory>
#include <string>
#include <type_traits>

namespace fw {
namespace fw::result_test {
namespace {

using Parsed = Result<int, std::string>;

static_assert(!std::is_default_constructible_v<Parsed>, "a result is complete or not there");
static_assert(!std::is_convertible_v<Parsed, bool>, "a result is no number");

Parsed halved(int number) {
  if (number % 2 != 0) {
    return failure("odd: " + std::to_string(number));
  }
  return number / 2;
}

TEST(Result, HoldsAValue) {
  const Parsed result = halved(12);
  ASSERT_TRUE(result);
  EXPECT_EQ(*result, 6);
  EXPECT_EQ(result.value(), 6);
  EXPECT_EQ(result.value_or(0), 6);
}

TEST(Result, HoldsAnError) {
  const Parsed result = halved(7);
  ASSERT_FALSE(result.has_value());
  EXPECT_EQ(result.error(), "odd: 7");
  EXPECT_EQ(result.value_or(-1), -1);
}

TEST(Result, TellsValueFromErrorOfTheSameType) {
  const Result<std::string, std::string> good = std::string("net");
  const Result<std::string, std::string> bad = failure(std::string("net"));
  EXPECT_TRUE(good.has_value());
  EXPECT_FALSE(bad.has_value());
}

TEST(Result, GivesUpItsValueByMoving) {
  Result<std::unique_ptr<int>, std::string> result = std::make_unique<int>(5);
  const std::unique_ptr<int> taken = std::move(result).value();
  EXPECT_EQ(*taken, 5);
}

TEST(Result, ReachesMembers) {
  const Result<std::string, int> result = std::string("hinge");
  EXPECT_EQ(result->size(), 5U);
}

TEST(ResultDeathTest, RefusesTheWrongReading) {
  EXPECT_DEATH(static_cast<void>(halved(7).value()), "a result was read that holds an error");
  EXPECT_DEATH(static_cast<void>(halved(8).error()), "an error was read of a result that holds a value");
}

TEST(EnsureDeathTest, SaysTheSentenceAndThePlace) {
  EXPECT_DEATH(ensure(1 > 2, "one exceeds two"), "foldwright: internal error at .*result_test.cpp:[0-9]+: one exceeds");
}

TEST(EnsureDeathTest, SpeaksItsLastWordsOnce) {
  const auto speak = [] {
    std::fputs("saved;", stderr);
    broken_invariant("inner", "hook", 1);  // a hook that fails must not be called again
  };
  EXPECT_DEATH(
      {
        set_last_words(speak);
        ensure(false, "outer");
      },
      "^saved;foldwright: internal error at hook:1: inner");
}

TEST(Ensure, LetsTheTruthPass) {
  int looked = 0;
  ensure(++looked == 1, "looked once");
  EXPECT_EQ(looked, 1);
}

}  // namespace
}  // namespace fw::result_test
}  // namespace fw
