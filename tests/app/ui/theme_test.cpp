#include "theme/theme.hpp"

#include <gtest/gtest.h>
#include <imgui.h>

#include "figures/face_style.hpp"
#include "platform/assets.hpp"
#include "ui/fonts.hpp"
#include "ui/ui.hpp"

namespace fw::ui::theme_test {

using namespace theme;

namespace {

class EveryTheme : public testing::TestWithParam<ThemeName> {};

// 7:1 is the enhanced contrast of WCAG 2.2, success criterion 1.4.6.
TEST_P(EveryTheme, HasSevenToOneBetweenAllThatIsReadAndWhatItStandsOn) {
  const auto pairs = reading_pairs(Theme::make(GetParam(), 1080));
  ASSERT_GE(pairs.size(), 10U);
  for (const ThemePair& pair : pairs) EXPECT_GE(contrast(pair.front, pair.back), 7.0) << pair.what;
}

TEST_P(EveryTheme, KeepsTheLetterOfAGroupReadableOnItsColor) {
  // 4.5:1 is the enhanced contrast for large text in the same criterion.
  const figures::Palette palette = Theme::make(GetParam(), 1080).palette();
  for (std::size_t i = 0; i < 12; ++i) {
    const figures::FaceStyle style = figures::face_style(solids::GroupId::at(i), palette);
    EXPECT_GE(contrast(style.on_fill, style.fill), 4.5) << style.letter;
    EXPECT_GE(contrast(palette.ink, palette.ground), 7.0);
  }
}

INSTANTIATE_TEST_SUITE_P(Themes, EveryTheme, testing::ValuesIn(theme_names()));

TEST(BrightRoom, KnowsBlackAndWhiteAlone) {
  const Theme theme = Theme::make(ThemeName::BrightRoom, 1080);
  constexpr Color white = Color::hex(0xFFFFFF);
  constexpr Color black = Color::hex(0x000000);
  for (const ThemePair& pair : reading_pairs(theme)) {
    EXPECT_TRUE(pair.front == white || pair.front == black) << pair.what;
    EXPECT_TRUE(pair.back == white || pair.back == black) << pair.what;
  }
  for (std::size_t i = 0; i < 6; ++i) {
    EXPECT_EQ(figures::face_style(solids::GroupId::at(i), theme.palette()).fill, white);
  }
}

TEST(Sizes, FollowTheWindowsHeight) {
  const Sizes s = Sizes::for_height(1000);
  EXPECT_DOUBLE_EQ(s.label, 45);
  EXPECT_DOUBLE_EQ(s.heading, 60);
  EXPECT_DOUBLE_EQ(s.small, 35);
  EXPECT_DOUBLE_EQ(s.edge, 4);
  for (const double height : {300.0, 768.0, 1080.0, 2160.0}) {
    const Sizes any = Sizes::for_height(height);
    // 24 px is the least target of WCAG 2.2, success criterion 2.5.8.
    for (const double target : {any.target, any.button, any.field, any.icon, any.scroll_bar}) EXPECT_GE(target, 24);
  }
}

// The characters that the program promises to show, looked up in the type's own table of characters.
TEST(Type, HasEveryCharacterThatIsShown) {
  for (const std::string_view name : {"Andika-Regular.ttf", "Andika-Bold.ttf"}) {
    const std::string_view type = platform::asset(name);
    const auto word = [type](std::size_t at) {
      return static_cast<std::size_t>((static_cast<unsigned char>(type[at]) << 8U) |
                                      static_cast<unsigned char>(type[at + 1]));
    };
    std::size_t cmap = 0;
    for (std::size_t i = 0; i < word(4); ++i) {
      const std::size_t entry = 12 + 16 * i;
      if (type.substr(entry, 4) == "cmap") cmap = (word(entry + 8) << 16U) | word(entry + 10);
    }
    ASSERT_NE(cmap, 0U);
    std::size_t table = 0;  // format 4: segments of the first 65,536 characters (OpenType specification, cmap)
    for (std::size_t i = 0; i < word(cmap + 2); ++i) {
      const std::size_t at = cmap + ((word(cmap + 4 + 8 * i + 4) << 16U) | word(cmap + 4 + 8 * i + 6));
      if (word(at) == 4) table = at;
    }
    ASSERT_NE(table, 0U);
    const std::size_t segments = word(table + 6) / 2;
    const auto has = [&](std::size_t character) {
      for (std::size_t i = 0; i < segments; ++i) {
        if (character > word(table + 14 + 2 * i)) continue;
        const std::size_t start_at = table + 16 + 2 * segments + 2 * i;
        if (character < word(start_at)) return false;
        const std::size_t delta = word(start_at + 2 * segments);
        const std::size_t offset = word(start_at + 4 * segments);
        if (offset == 0) return ((character + delta) & 0xFFFFU) != 0;
        return word(start_at + 4 * segments + offset + 2 * (character - word(start_at))) != 0;
      }
      return false;
    };
    for (const auto& [low, high] : shown_characters()) {
      for (std::size_t c = low; c <= high; ++c) EXPECT_TRUE(has(c)) << name << " lacks U+" << std::hex << c;
    }
  }
}

// Type that is built in another size comes out soft, or as wide as that size makes it.
TEST(Type, IsBuiltInEverySizeThatTextsHave) {
  for (const double height : {360.0, 720.0}) {
    ImFontAtlas atlas;
    Fonts fonts;
    ASSERT_TRUE(fonts.prepare(atlas, height));
    EXPECT_FALSE(fonts.prepare(atlas, height * 1.01)) << "it is kept where the window hardly changes";
    EXPECT_TRUE(fonts.prepare(atlas, height * 1.05));
    EXPECT_TRUE(fonts.prepare(atlas, height));
    EXPECT_TRUE(fonts.prepare(atlas, height, 2)) << "and built anew for other pixels";
    const Sizes sizes = Sizes::for_height(height);
    EXPECT_NEAR(fonts.nearest(sizes.small, false).em, sizes.small, 0.5);
    EXPECT_NEAR(fonts.nearest(sizes.label, false).em, sizes.label, 0.5);
    EXPECT_NEAR(fonts.nearest(sizes.label, true).em, sizes.label, 0.5);
    EXPECT_NEAR(fonts.nearest(sizes.heading, true).em, sizes.heading, 0.5);
    EXPECT_TRUE(fonts.nearest(sizes.heading, true).bold);
    EXPECT_FALSE(fonts.nearest(sizes.heading, false).bold);
  }
}

TEST(Type, ShowsWhatLessonsWriteAndNothingElse) {
  EXPECT_TRUE(can_show("S = 4 · (6 × 9 ÷ 2) + 6² ≈ 144 cm³, ℓ ≥ √2, 7½ ft, 3π − 1, “so far …”"));
  EXPECT_FALSE(can_show("漢"));
  EXPECT_FALSE(can_show("\xE2\x82"));
}

// Contrast by WCAG 2.1, 1.4.6: 7 : 1 for text.
TEST(Theme, TheTextOfALockedOptionCanStillBeRead) {
  for (const theme::ThemeName name : theme::theme_names()) {
    const Theme theme = Theme::make(name, 720);
    for (const ButtonLook look : {ButtonLook::Outline, ButtonLook::Plain}) {
      const auto ink = button_ink(theme, {.look = look, .enabled = false, .locked = true});
      EXPECT_GE(contrast(ink, theme.panel), 7);
      EXPECT_EQ(ink.a, 1);
    }
  }
}

}  // namespace
}  // namespace fw::ui::theme_test
