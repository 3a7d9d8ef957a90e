// The type of printed pages: glyphs, widths, and the part of a font that a file holds.
#include <gtest/gtest.h>

#include "printing.hpp"

namespace fw::paper::font_test {
namespace {

TEST(Font, KnowsTheSignsOfTheTrade) {
  for (const char32_t sign : std::u32string(U"AZaz09½⅓²³√π≈·×÷−ℓ°")) {
    EXPECT_TRUE(test_fonts().regular.glyph(sign)) << utf8(sign);
    EXPECT_TRUE(test_fonts().bold.glyph(sign)) << utf8(sign);
  }
}

TEST(Font, SaysWhichCharactersItLacks) {
  EXPECT_FALSE(test_fonts().regular.glyph(U'\U0001F3EE'));  // a lantern as an emoji
  EXPECT_FALSE(test_fonts().regular.glyph(U'\u05D0'));      // Hebrew
}

// Widths from the table hmtx, read by another program: 2048 units an em.
TEST(Font, HasTheWidthsOfItsTable) {
  const Font& font = test_fonts().regular;
  const PrintedFile file(std::string(platform::asset("Andika-Regular.ttf")), ".ttf");
  const Ran told = ran(
      "python3 -c \"import struct; d=open('" + file.path() +
      "','rb').read();"
      "t={d[12+16*i:16+16*i]:struct.unpack('>II',d[20+16*i:28+16*i]) for i in range(struct.unpack('>H',d[4:6])[0])};"
      "print(*[struct.unpack('>H',d[t[b'hmtx'][0]+4*g:t[b'hmtx'][0]+4*g+2])[0] for g in (1,3,40,200)])\"");
  ASSERT_EQ(told.status, 0) << told.out;
  std::istringstream numbers(told.out);
  for (const Glyph glyph : {Glyph{1}, Glyph{3}, Glyph{40}, Glyph{200}}) {
    double units = 0;
    numbers >> units;
    EXPECT_DOUBLE_EQ(font.advance(glyph), units / 2048) << glyph;
  }
}

TEST(Font, CutsItselfDownToWhatIsUsed) {
  const Font& font = test_fonts().regular;
  const Glyph plain = *font.glyph(U'A');
  const Glyph composite = *font.glyph(U'é');
  const std::string bytes = font.subset({plain, composite});
  EXPECT_LT(bytes.size(), 60'000U);
  const auto again = Font::read(bytes);
  EXPECT_FALSE(again.has_value()) << "it holds no table of characters";
  EXPECT_EQ(bytes.substr(0, 4), std::string("\0\1\0\0", 4));
  // The sum of all words is the number that the specification gives.
  std::uint32_t sum = 0;
  for (std::size_t i = 0; i < bytes.size(); i += 4) {
    for (std::size_t k = 0; k < 4; ++k) {
      sum += static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[i + k])) << (8 * (3 - k));
    }
  }
  EXPECT_EQ(sum, 0xB1B0AFBAU);
}

TEST(Font, RefusesWhatIsNoFont) {
  for (const std::string& bytes : {std::string(), std::string("%PDF-1.7"), std::string(4000, '\xFF')}) {
    EXPECT_FALSE(Font::read(bytes).has_value());
  }
  const std::string whole(platform::asset("Andika-Bold.ttf"));
  for (std::size_t size = 0; size < whole.size(); size += 9'973) {
    const std::string part = whole.substr(0, size);
    const auto font = Font::read(part);  // no more than that it does not break
    if (font) {
      EXPECT_GE(font->advance(5), 0);
    }
  }
}

TEST(Utf8, GoesThereAndBack) {
  const std::string text = "aé½ℓ🏮";
  std::string again;
  for (const char32_t character : characters(text)) {
    again += utf8(character);
  }
  EXPECT_EQ(again, text);
  EXPECT_EQ(characters("a\xFF"
                       "b"),
            U"a\uFFFDb");
  EXPECT_EQ(characters("\xE2\x82"), U"\uFFFD\uFFFD");
}

}  // namespace
}  // namespace fw::paper::font_test
