#include "words/lexicon.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "support/describe_solid.hpp"

// Faults of solids in a second language, which is a file.
namespace fw::solids::lexicon_test {
namespace {

words::Lexicon backward() {
  std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/words/backward.words");
  std::stringstream text;
  text << file.rdbuf();
  const auto read = words::Lexicon::read(text.str());
  EXPECT_TRUE(read.has_value()) << (read ? "" : said(read.error()));
  return read ? *read : words::Lexicon::english();
}

std::string fault_of(const char* solid) { return backward().said(test::made(solid).error().front().message); }

TEST(SecondLanguage, OrdersTheArgumentsInItsOwnWay) {
  EXPECT_EQ(fault_of("pyramid | height: 4 cm | slant_height: 9 cm | base square | side: 6 cm"),
            "NOT 9 cm: 5 cm IS SLANT HEIGHT WITH 4 cm OF HEIGHT PLUS 6 cm OF BASE EDGE");
}

TEST(SecondLanguage, HasItsOwnPlurals) {
  EXPECT_EQ(fault_of("prism | height: 4 cm | base polygon | vertices: 0 0, 4 0 | unit: cm"),
            "2 CORNERA: FROM 3 TO 40 ARE TAKEN");
  EXPECT_EQ(fault_of("prism | height: 4 cm | base polygon | vertices: 0 0 | unit: cm"),
            "1 CORNER: FROM 3 TO 40 ARE TAKEN");
}

}  // namespace
}  // namespace fw::solids::lexicon_test
