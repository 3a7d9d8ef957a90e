#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/ui/looks.hpp"

// Where words and the caret stand, asked of the pixels.
namespace fw::ui::text_looks_test {

using namespace looks;

namespace {

// Words are read from the left, from the right or from the middle of their place.
TEST(Texts, StandWhereTheyAreTold) {
  struct Told {
    HAlign h;
    VAlign v;
  };
  const Rect box{100, 100, 300, 120};
  for (const Told told :
       {Told{HAlign::Left, VAlign::Top}, Told{HAlign::Center, VAlign::Middle}, Told{HAlign::Right, VAlign::Bottom}}) {
    for (const bool wrap : {false, true}) {
      const Widgets widgets = [&](Ui& ui) { ui.text("HHH", box, {.h = told.h, .v = told.v, .wrap = wrap}); };
      const Rect ink = drawn(widgets);
      UiDriver driver(wide, high, paper, widgets);
      EXPECT_TRUE(driver.ui().items().front().rect.inset(-1).contains(ink)) << "it is recorded where it is drawn";
      EXPECT_TRUE(box.contains(driver.ui().items().front().rect, 0.5));
      const double at_x = told.h == HAlign::Left    ? ink.x - box.x
                          : told.h == HAlign::Right ? box.right() - ink.right()
                                                    : std::abs(ink.center().x - box.center().x);
      const double line = 1.3 * paper_theme.sizes.label;
      const double at_y = told.v == VAlign::Top      ? ink.y - box.y
                          : told.v == VAlign::Bottom ? box.bottom() - ink.bottom()
                                                     : std::abs(ink.center().y - box.center().y);
      EXPECT_LE(at_x, 3);
      EXPECT_LE(at_y, 0.4 * line);
    }
  }
}

TEST(Texts, OfButtonsStandAtTheSideThatTheyAreTold) {
  for (const HAlign h : {HAlign::Left, HAlign::Center, HAlign::Right}) {
    const Rect ink =
        drawn([&](Ui& ui) { std::ignore = ui.button(first, "fold", place, {.look = ButtonLook::Plain, .h = h}); });
    const double left = ink.x - place.x;
    const double right = place.right() - ink.right();
    if (h == HAlign::Center) {
      EXPECT_NEAR(left, right, 3);
    } else {
      EXPECT_LE(h == HAlign::Left ? left : right, 0.6 * paper_theme.sizes.label);
      EXPECT_GT(h == HAlign::Left ? right : left, 100);
    }
  }
}

TEST(Texts, AreNotLaidOverTheIconOfTheirButton) {
  const auto ink = [](std::string_view text, Icon icon) {
    return drawn([&](Ui& ui) {
      std::ignore = ui.button(first, text, place, {.look = ButtonLook::Plain, .icon = icon, .h = HAlign::Left});
    });
  };
  const Rect icon = ink("", Icon::Stop);
  const Rect both = ink("fold", Icon::Stop);
  const Rect word = ink("fold", Icon::None);
  EXPECT_NEAR(icon.x, both.x, 1);
  EXPECT_GE(both.right() - word.w, icon.right() + 2);
  EXPECT_LE(both.right() - word.w, icon.right() + paper_theme.sizes.label);
}

TEST(Fields, HaveTheirCaretWhereTheNextCharacterGoes) {
  std::string value = "HHHH";
  UiDriver driver(wide, high, paper, [&](Ui& ui) { std::ignore = ui.field(first, "h", value, place); });
  const Rect inside = place.inset(6);
  driver.press(Key::Tab);
  driver.frames(2);
  const Rect selected = picture().box_of(paper_theme.selection, inside);
  ASSERT_GT(selected.w, 20) << "all of it is selected, so that typing replaces it";
  driver.press(Key::End);
  driver.frames(2);
  const DrawnPicture at_end = picture();
  EXPECT_TRUE(is_nothing(at_end.box_of(paper_theme.selection, inside)));
  driver.press(Key::Home);
  driver.frames(2);
  const DrawnPicture at_begin = picture();
  driver.press(Key::Right);
  driver.frames(2);
  const DrawnPicture after_one = picture();
  // A caret is higher than a letter: below the letters it has the ink alone.
  const Rect below{inside.x, selected.bottom() - 2, inside.w, 1};
  const double end = at_end.box_of(paper_theme.ink, below).center().x;
  const double begin = at_begin.box_of(paper_theme.ink, below).center().x;
  const double one = after_one.box_of(paper_theme.ink, below).center().x;
  EXPECT_NEAR(begin, selected.x, 2);
  EXPECT_NEAR(end, selected.right(), 2);
  EXPECT_NEAR(one - begin, (end - begin) / 4, 1.5);
}

TEST(Fields, ShowWhereOneTypesInATextThatIsLongerThanTheyAre) {
  std::string shown;
  UiDriver driver(wide, high, paper, [&](Ui& ui) { shown = ui.field(first, "h", "", place, {.longest = 60}).text; });
  driver.click(first);
  driver.type("0123456789012345678901234567890123456789");
  driver.frames(2);
  const Rect text_part = place.inset(4, 10);
  const auto caret_in_sight = [&] {
    const Rect below{text_part.x, place.center().y + 0.5 * paper_theme.sizes.label, text_part.w, 1};
    return !is_nothing(picture().box_of(paper_theme.ink, below));
  };
  EXPECT_TRUE(caret_in_sight());
  driver.press(Key::Home);
  driver.frames(2);
  EXPECT_TRUE(caret_in_sight());
  driver.type("x");
  EXPECT_EQ(shown.front(), 'x');
  const DrawnPicture all = picture();
  EXPECT_TRUE(is_nothing(all.box_beside(paper_theme.ground, {0, 0, place.x - 4, high}))) << "nothing runs out of it";
  EXPECT_TRUE(is_nothing(all.box_beside(paper_theme.ground, {place.right() + 4, 0, 100, high})));
}

TEST(Fields, PutTheCaretWhereTheyAreClickedAndSelectWhatIsDraggedOver) {
  std::string shown;
  UiDriver driver(wide, high, paper, [&](Ui& ui) { shown = ui.field(first, "h", "HHHHHHHH", place).text; });
  driver.press(Key::Tab);
  driver.frames(2);
  const Rect text = picture().box_of(paper_theme.selection, place.inset(6));
  const auto at = [&](double characters) { return Vec2{text.x + characters * text.w / 8, place.center().y}; };
  driver.frames(40);
  driver.click_at(at(3.2));
  driver.type("a");
  EXPECT_EQ(shown, "HHHaHHHHH");
  driver.press(Key::Backspace);
  driver.frames(40);
  driver.drag_between(at(1.9), at(6.1));
  driver.type("b");
  EXPECT_EQ(shown, "HHbHH");
}

TEST(Fields, KeepTheirOwnTextBesideAnAnswerField) {
  std::string answer;
  std::string other;
  UiDriver driver(wide, high, paper, [&](Ui& ui) {
    answer = ui.field(first, "answer", "", place, {.answers = true}).text;
    other = ui.field(second, "name", "7", place.moved(0, 80)).text;
  });
  driver.type("12");
  EXPECT_EQ(answer, "12");
  EXPECT_EQ(other, "7");
  driver.press(Key::Tab);
  driver.type("34");
  driver.frames(2);
  EXPECT_EQ(other, "34");
  EXPECT_NE(answer, "34");
}

TEST(Fields, ShowAHintWhileTheyAreEmptyAndARimOfItsOwnWhenAtFault) {
  const auto field = [](std::string_view value, bool bad) {
    return picture_of([=](Ui& ui) { std::ignore = ui.field(first, "h", value, place, {.bad = bad, .hint = "HHH"}); });
  };
  const Rect inside = place.inset(4);
  EXPECT_FALSE(is_nothing(field("", false).box_of(paper_theme.quiet_ink, inside)));
  EXPECT_TRUE(is_nothing(field("HHH", false).box_of(paper_theme.quiet_ink, inside)));
  EXPECT_FALSE(is_nothing(field("HHH", false).box_of(paper_theme.ink, inside)));
  EXPECT_TRUE(is_nothing(field("7", false).box_of(paper_theme.bad, place)));
  const Rect rim = field("7", true).box_of(paper_theme.bad, place);
  EXPECT_TRUE(rim.inset(-2).contains(place)) << "all round it";
}

}  // namespace
}  // namespace fw::ui::text_looks_test
