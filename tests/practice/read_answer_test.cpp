#include "practice/read_answer.hpp"

#include <gtest/gtest.h>

#include "exact/print_number.hpp"

namespace fw::practice::read_answer_test {
namespace {

struct Case {
  const char* typed;
  const char* number;
  const char* unit;
  bool is_money;
};

TEST(ReadAnswer, TakesWhatStudentsType) {
  const char* prompt = "The class puts 2 stickers and some BEADS on each lantern. How many rods does it take?";
  const Case cases[] = {
      {"286 cm²", "286", "cm²", false},  {"S = 286 cm^2", "286", "cm²", false},
      {"about 20.8", "20.8", "", false}, {"$96", "96", "", true},
      {"45 dollars", "45", "", true},    {"45 Bucks", "45", "", true},
      {"6 stickers", "6", "", false},    {"12 rods", "12", "", false},
      {"1 rod", "1", "", false},         {"8 beads", "8", "", false},
      {"8 Bead", "8", "", false},        {"five", "5", "", false},
      {"Twelve rods.", "12", "", false}, {"twenty", "20", "", false},
      {"zero", "0", "", false},          {"five inches", "5", "in", false},
      {"4 rolls", "4", "", false},       {"6 faces", "6", "", false},
      {"1ft4in", "1 1/3", "ft", false},  {"7. cm", "7", "cm", false},
      {"1-1/2 in", "1.5", "in", false},
  };
  for (const Case& c : cases) {
    const auto read = read_answer(c.typed, "roll", prompt);
    ASSERT_TRUE(read.has_value()) << c.typed << ": " << said(read.error());
    EXPECT_EQ(exact::exact_text(read->number.value), c.number) << c.typed;
    EXPECT_EQ(read->unit ? read->unit->text() : "", c.unit) << c.typed;
    EXPECT_EQ(read->is_money, c.is_money) << c.typed;
  }
}

TEST(ReadAnswer, RefusesWordsThatNobodyAskedFor) {
  for (const char* typed : {"6 bananas", "hello", "six seven", "", "fiver", "5 it", "800 in 3", "1 ft 13 in"}) {
    EXPECT_FALSE(read_answer(typed, "roll", "How many rods does it take?").has_value()) << typed;
  }
  EXPECT_EQ(said(read_answer("800 in 3").error()), "“in 3” is unclear. Write in^3, or a unit after the 3.");
}

}  // namespace
}  // namespace fw::practice::read_answer_test
