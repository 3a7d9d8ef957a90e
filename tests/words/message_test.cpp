#include "words/message.hpp"

#include <gtest/gtest.h>

#include <string>
#include <type_traits>
#include <vector>

namespace fw::words::message_test {
namespace {

TEST(Message, PutsItsArgumentsIntoTheirPlaces) {
  const Message step = message("Subtract {amount} from both sides.", {{"amount", Amount{"64", "cm²"}}});
  EXPECT_EQ(said(step), "Subtract 64 cm² from both sides.");
  EXPECT_EQ(said(message("step {step}: {reason:up}", {{"step", 3}, {"reason", step}})),
            "step 3: Subtract 64 cm² from both sides.");
  EXPECT_EQ(said(message("{reason:up}.", {{"reason", message("all faces are equal")}})), "All faces are equal.");
  EXPECT_EQ(said(Message()), "");
}

TEST(Message, KnowsArticles) {
  const auto with_article = [](const char* noun) { return said(message("{noun:a}", {{"noun", Noun{noun}}})); };
  EXPECT_EQ(with_article("octagonal pyramid"), "an octagonal pyramid");
  EXPECT_EQ(with_article("square pyramid"), "a square pyramid");
  EXPECT_EQ(said(message("{noun:A} fits.", {{"noun", Noun{"envelope"}}})), "An envelope fits.");
}

TEST(Message, KnowsPlurals) {
  const auto plural = [](const char* noun) { return said(message("{noun:s}", {{"noun", Noun{noun}}})); };
  EXPECT_EQ(plural("roll"), "rolls");
  EXPECT_EQ(plural("box of candles"), "boxes of candles");
  EXPECT_EQ(plural("paint can"), "paint cans");
  EXPECT_EQ(plural("tray"), "trays");
  EXPECT_EQ(plural("berry"), "berries");
  EXPECT_EQ(plural("batch"), "batches");
  EXPECT_EQ(plural("loaf"), "loaves");
  EXPECT_EQ(plural("square foot"), "square feet");
  EXPECT_EQ(plural("vertex"), "vertices");
}

TEST(Message, AgreesWithACount) {
  const auto counted = [](const Value& count) {
    return said(message("{count} {item#count}", {{"count", count}, {"item", Noun{"foot"}}}));
  };
  EXPECT_EQ(counted(1), "1 foot");
  EXPECT_EQ(counted(4), "4 feet");
  EXPECT_EQ(counted("1"), "1 foot");
  EXPECT_EQ(counted("0.5"), "0.5 feet");
  const auto faces = [](int count) { return said(message("{count} {count:face|faces}", {{"count", count}})); };
  EXPECT_EQ(faces(1), "1 face");
  EXPECT_EQ(faces(0), "0 faces");
}

TEST(Message, JoinsLists) {
  const auto joined = [](const std::vector<std::string>& items) {
    const Message all = message("{items:and}; {items:or}; {items:,}; {items:, or}", {{"items", items}});
    return said(all);
  };
  EXPECT_EQ(joined({}), "; ; ; ");
  EXPECT_EQ(joined({"a"}), "a; a; a; a");
  EXPECT_EQ(joined({"a", "b"}), "a and b; a or b; a, b; a, or b");
  EXPECT_EQ(joined({"a", "b", "c"}), "a, b and c; a, b or c; a, b, c; a, or b, or c");
}

TEST(Message, SetsOptionsApart) {
  EXPECT_EQ(said(message("Choose one: {options:;}.", {{"options", std::vector<std::string>{"1, 2", "3"}}})),
            "Choose one: 1, 2; 3.");
}

TEST(Message, StandsBeforeOthersOrAlone) {
  const Message many = message("{n} would be too many.", {{"n", 12}});
  const Message count = message("Count. Then count again.");
  EXPECT_EQ(said(one_after_another({many, count})), "12 would be too many. Count. Then count again.");
  EXPECT_EQ(first_sentence(one_after_another({many, count})), many);
  EXPECT_EQ(first_sentence(count), count) << "one message, however many sentences it has";
}

TEST(Message, HidesAnArgumentAndNoText) {
  const Message amount = message("≈ {amount}", {{"amount", Amount{"20.65", "cm²"}}});
  const Message all = message("The {n} faces: {amount}, not 12.", {{"n", 12}, {"amount", amount}});
  EXPECT_EQ(said(with_gap(all, "12", "____")), "The ____ faces: ≈ 20.65 cm², not 12.");
  EXPECT_EQ(said(with_gap(all, "20.65 cm²", "____")), "The 12 faces: ≈ ____, not 12.");
  EXPECT_EQ(said(with_gap(all, "20.65", "____")), "The 12 faces: ≈ ____ cm², not 12.");
}

TEST(Message, IsComparedByWhatItSays) {
  const auto of = [](int count) { return message("{count} {count:face|faces}", {{"count", count}}); };
  EXPECT_EQ(of(3), of(3));
  EXPECT_FALSE(of(3) == of(4));
  EXPECT_FALSE(of(3) == message("{count}", {{"count", 3}}));
}

TEST(MessageDeathTest, HasAnArgumentForEachPlace) {
  EXPECT_DEATH(static_cast<void>(message("{solid:a} has no {measure}", {{"solid", Noun{"cube"}}})), "has no argument");
  EXPECT_DEATH(static_cast<void>(message("all faces", {{"count", 4}})), "has no place");
  EXPECT_DEATH(static_cast<void>(said(message("{solid:a}", {{"solid", "cube"}}))), "of no noun");
  EXPECT_DEATH(static_cast<void>(said(message("{faces:and}", {{"faces", "1"}}))), "no list");
}

// A text that is compared with a message, or given for one, is a slip: the compiler tells.
static_assert(!std::is_convertible_v<std::string, Message> && !std::is_convertible_v<const char*, Message>);

// The compiler refuses a pattern that is not well formed; here as it tells.
static_assert(pattern_fault("It has {count} {count:face|faces}.") == nullptr);
static_assert(pattern_fault("{item#count}, {sets:, or}") == nullptr);
static_assert(pattern_fault("It has {count faces.") != nullptr);
static_assert(pattern_fault("It has count} faces.") != nullptr);
static_assert(pattern_fault("{a {b}}") != nullptr);
static_assert(pattern_fault("{}") != nullptr);
static_assert(pattern_fault("{Solid}") != nullptr);
static_assert(pattern_fault("{solid:an}") != nullptr);

}  // namespace
}  // namespace fw::words::message_test
