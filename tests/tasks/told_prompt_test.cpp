#include "practice/told_prompt.hpp"

#include <gtest/gtest.h>

#include "tasks/catalog.hpp"

namespace fw::tasks::told_prompt_test {
namespace {

using namespace practice;

std::string told(const std::string& prompt, const std::string& members) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "prompt": ")" +
                                         prompt + R"(", "solid": {"kind": "rectangular prism", "length": "20 in",
      "width": "14 in", "height": "9 in"}, )" +
                                         members + "}]}");
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : text(lesson.error().front(), "lesson"));
  return told_prompt(lesson->problems.front());
}

TEST(ToldPrompt, SaysWhatTheTextLeavesOut) {
  EXPECT_EQ(told("How many rolls?", R"("supply": {"cover": "surface_area", "each": "45 ft^2", "item": "roll",
      "price": "$24"})"),
            "How many rolls? One roll covers 45 ft². One roll costs $24.");
  EXPECT_EQ(told("How many cups?", R"("supply": {"fill": "volume", "each": "150 mL", "item": "cup"})"),
            "How many cups? One cup holds 150 mL.");
  EXPECT_EQ(told("How many fit?", R"("supply": {"pack": "volume", "item": "box of candles",
      "box": {"length": "6 in", "width": "4 in", "height": "4 in"}})"),
            "How many fit? One box of candles is 6 in long, 4 in wide and 4 in high.");
  EXPECT_EQ(told("How much?", R"("find": ["volume"], "scale": "2.5")"),
            "How much? The edges of the scaled copy are 2.5 times as long.");
  EXPECT_EQ(told("Which mistake?", R"("find": ["volume"], "wrong": {"answer": "1172 in^3"})"),
            "Which mistake? A student got 1172 in³.");
  EXPECT_EQ(told("", R"("find": ["height"], "known": {"volume": "2520 in^3"})"), "The volume is 2520 in³.");
}

TEST(ToldPrompt, SaysWhatToRoundToWhereAnAnswerDoesNotEnd) {
  EXPECT_EQ(told("How long?", R"("find": ["height"], "known": {"volume": "2520 in^3"})"),
            "How long? The volume is 2520 in³.");
  const std::string asks = R"("find": ["volume"], "unit": "L")";
  EXPECT_EQ(told("How much?", asks), "How much? Round to the nearest hundredth.");
  EXPECT_EQ(told("How much?", asks + R"(, "round_to": "tenth")"), "How much? Round to the nearest tenth.");
  const std::string prompt = "How much? Round to the nearest tenth.";
  EXPECT_EQ(told(prompt, asks + R"(, "round_to": "tenth")"), prompt);
  EXPECT_EQ(told("How much?", R"("find": ["volume"], "round_to": "whole")"), "How much?") << "2520 is whole already";
}

TEST(ToldPrompt, DoesNotSayItTwice) {
  const std::string label = "The label says 2,520 cubic inches.";
  EXPECT_EQ(told(label, R"("find": ["height"], "known": {"volume": "2520 in^3"})"), label);
  EXPECT_EQ(told("See number 12,520.", R"("find": ["height"], "known": {"volume": "2520 in^3"})"),
            "See number 12,520. The volume is 2520 in³.");
  const std::string rolls = "Rolls of 45 square feet cost $24 each. How many?";
  EXPECT_EQ(told(rolls, R"("supply": {"cover": "surface_area", "each": "45 ft^2", "item": "roll", "price": "$24"})"),
            rolls);
  EXPECT_EQ(told("It is 145 ft off.", R"("supply": {"cover": "surface_area", "each": "45 ft^2", "item": "roll"})"),
            "It is 145 ft off. One roll covers 45 ft².")
      << "45 is a part of 145 and not said by it";
}

}  // namespace
}  // namespace fw::tasks::told_prompt_test
