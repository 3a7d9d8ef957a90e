#include "words/lexicon.hpp"

#include <gtest/gtest.h>

#include <string>

namespace fw::words::lexicon_test {
namespace {

Lexicon lexicon_of(const std::string& text) {
  const auto read = Lexicon::read(text);
  EXPECT_TRUE(read.has_value()) << (read ? "" : said(read.error()));
  return read ? *read : Lexicon::english();
}

Message rolls(int count) {
  return message("{count} {item#count} in {room:a}",
                 {{"count", count}, {"item", Noun{"roll"}}, {"room", Noun{"shed"}}});
}

// Source of the rules: Unicode CLDR 42, plural rules of Polish for whole numbers.
constexpr const char* of_three_forms =
    "plural n = 1\n"
    "plural n % 10 = 2..4 and n % 100 != 12..14\n"
    "noun roll | jen rol | rol | rola | rolo\n"
    "say \"{count} {item#count} in {room:a}\"\n"
    "as \"{room:a}: {count} {item#count} ({count:un|deux|many})\"\n";

TEST(Lexicon, ChoosesAmongThePluralsOfItsLanguage) {
  const Lexicon lexicon = lexicon_of(of_three_forms);
  EXPECT_EQ(lexicon.said(rolls(1)), "a shed: 1 rol (un)");
  EXPECT_EQ(lexicon.said(rolls(3)), "a shed: 3 rola (deux)");
  EXPECT_EQ(lexicon.said(rolls(5)), "a shed: 5 rolo (many)");
  EXPECT_EQ(lexicon.said(rolls(13)), "a shed: 13 rolo (many)");
  EXPECT_EQ(lexicon.said(rolls(23)), "a shed: 23 rola (deux)");
}

TEST(Lexicon, SaysInEnglishWhatItDoesNotKnow) {
  const Lexicon lexicon = lexicon_of(of_three_forms);
  const Message unknown = message("{item:A} or {rolls}", {{"item", Noun{"roll"}}, {"rolls", rolls(2)}});
  EXPECT_EQ(lexicon.said(unknown), "A roll or a shed: 2 rola (deux)");
}

struct Fault {
  const char* text;
  const char* told;
};

TEST(Lexicon, TellsWhatIsWrongAndWhere) {
  for (const Fault& fault : {
           Fault{"# a note\n\nword cube\n", "line 3: a line begins with plural, noun, say or as, not with “word”"},
           Fault{"plural n\n", "line 1: a plural rule is written as in “n % 10 = 2..4 and n % 100 != 12..14”"},
           Fault{"plural n = 1\nnoun cube | il cubo | cubo\n",
                 "line 2: a noun has its article and 2 forms: “cube” has 1"},
           Fault{"say It is a cube.\n", "line 1: a pattern stands in quotes"},
           Fault{"say \"{count faces\"\n", "line 1: a place is not closed"},
           Fault{"say \"{count} faces\"\nas \"faces\"\n", "line 2: both patterns must name the same arguments"},
       }) {
    const auto read = Lexicon::read(fault.text);
    ASSERT_FALSE(read.has_value()) << fault.text;
    EXPECT_EQ(said(read.error()), fault.told);
  }
}

}  // namespace
}  // namespace fw::words::lexicon_test
