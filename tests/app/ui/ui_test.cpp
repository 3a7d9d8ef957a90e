#include "ui/ui.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/ui_driver.hpp"
#include "ui/layout.hpp"

namespace fw::ui::ui_test {
namespace {

using fw::test::UiDriver;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr WidgetId first{"first"};
constexpr WidgetId second{"second"};
constexpr WidgetId third{"third"};
constexpr WidgetId list{"list"};
constexpr WidgetId sheet{"sheet"};
constexpr theme::ThemeName paper = theme::ThemeName::Paper;

TEST(Button, IsUsedByAClickAndByEnterAndSpaceWithTheFocus) {
  int used = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.button(first, "count the next face", {100, 100, 500, 60}, {.look = ButtonLook::Primary})) ++used;
  });
  driver.click(first);
  EXPECT_EQ(used, 1);
  driver.press(Key::Enter);
  driver.press(Key::Space);
  EXPECT_EQ(used, 3);
  EXPECT_TRUE(driver.item(first).focused);
}

TEST(Button, IsNotUsedWhenThePointerLeavesItBeforeLettingGo) {
  int used = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.button(first, "fold", {100, 100, 200, 60})) ++used;
  });
  driver.drag_between({150, 130}, {600, 500});
  EXPECT_EQ(used, 0);
}

TEST(Button, CannotBeUsedOrReachedWhileDisabled) {
  int used = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.button(first, "undo", {100, 100, 200, 60}, {.enabled = false})) ++used;
    if (ui.button(second, "redo", {100, 200, 200, 60})) used += 10;
  });
  driver.click(first);
  EXPECT_EQ(used, 0);
  driver.press(Key::Tab);
  EXPECT_EQ(driver.ui().focus(), second);
  driver.press(Key::Enter);
  EXPECT_EQ(used, 10);
}

TEST(Focus, WalksRoundTheWidgetsInReadingOrder) {
  UiDriver driver(1280, 720, paper, [](Ui& ui) {
    std::ignore = ui.button(first, "a", {100, 100, 200, 60});
    std::ignore = ui.button(second, "b", {100, 200, 200, 60});
    std::ignore = ui.button(third, "c", {100, 300, 200, 60});
  });
  EXPECT_EQ(driver.ui().focus(), std::nullopt);
  for (const WidgetId id : {first, second, third, first}) {
    driver.press(Key::Tab);
    EXPECT_EQ(driver.ui().focus(), id);
  }
  driver.press(Key::Tab, with_shift);
  EXPECT_EQ(driver.ui().focus(), third);
}

TEST(Focus, IsGivenUpWhenItsWidgetGoesOrAnEmptyPlaceIsClicked) {
  bool there = true;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (there) std::ignore = ui.button(first, "a", {100, 100, 200, 60});
  });
  driver.click(first);
  driver.click_at({700, 600});
  EXPECT_EQ(driver.ui().focus(), std::nullopt);
  driver.click(first);
  there = false;
  driver.frames(2);
  EXPECT_EQ(driver.ui().focus(), std::nullopt);
}

TEST(Tabs, AreChosenByClickAndByArrowsAndEnter) {
  std::size_t current = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    current = ui.tabs(list, {"Explore", "Work it out", "Quiz"}, current, {400, 10, 860, 60}).value_or(current);
  });
  driver.click(list.at(2));
  EXPECT_EQ(current, 2U);
  driver.press(Key::Left);
  EXPECT_EQ(current, 2U) << "an arrow only moves the focus";
  driver.press(Key::Enter);
  EXPECT_EQ(current, 1U);
  EXPECT_TRUE(driver.item(list.at(1)).current);
  EXPECT_THAT(driver.layout_faults(), IsEmpty());
}

// The second click of a double click goes to what the first one pressed, never to what took its place.
TEST(Button, ThatComesUpUnderADoubleClickIsNotPressed) {
  int begun = 0;
  int told = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (begun == 0) {
      begun += ui.button(first, "Start", {100, 600, 400, 60}, {}) ? 1 : 0;
    } else {
      told += ui.button(second, "solution", {200, 600, 200, 60}, {}) ? 1 : 0;
    }
  });
  driver.click_at({300, 630});
  driver.click_at({300, 630});
  driver.click_at({300, 630});
  EXPECT_EQ(begun, 1);
  EXPECT_EQ(told, 0);
  driver.frames(60);
  driver.click_at({300, 630});
  EXPECT_EQ(told, 1) << "later it is pressed";
  driver.click_at({300, 630});
  EXPECT_EQ(told, 2) << "and twice in a row";
}

TEST(Slider, FollowsThePointerAndTellsWhenADragBeginsAndEnds) {
  double value = 0;
  std::vector<std::string> story;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    const SliderEvent e = ui.slider(first, "fold", value, {0, 1, 0.1}, {100, 600, 800, 60});
    if (e.began) story.emplace_back("began");
    if (e.ended) story.emplace_back("ended");
    value = e.value;
  });
  driver.drag(first, {0.5, 0.5}, {1.0, 0.5});
  EXPECT_DOUBLE_EQ(value, 1);
  EXPECT_THAT(story, ElementsAre("began", "ended"));
  driver.drag(first, {0.98, 0.5}, {0.5, 0.5});
  EXPECT_NEAR(value, 0.5, 0.01);
  EXPECT_NEAR(driver.item(first).share, 0.5, 0.01);
}

TEST(Slider, StepsByArrowsAndJumpsByHomeAndEnd) {
  double value = 0.43;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    value = ui.slider(first, "fold", value, {0, 1, 0.1}, {100, 600, 800, 60}).value;
  });
  driver.press(Key::Tab);
  driver.press(Key::Right);
  EXPECT_NEAR(value, 0.5, 1e-12);
  driver.press(Key::Left, with_shift);
  EXPECT_NEAR(value, 0.0, 1e-12);
  driver.press(Key::End);
  EXPECT_EQ(value, 1);
  driver.press(Key::Right);
  EXPECT_EQ(value, 1);
}

TEST(Field, TakesWhatIsTypedAndGivesItWhenItIsEnteredOrLeft) {
  std::string value = "9 cm";
  std::vector<std::string> story;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    const FieldEvent e = ui.field(first, "slant height", value, {100, 100, 400, 60});
    if (e.entered) {
      story.push_back("entered " + e.text);
      value = e.text;
    }
    if (e.left) story.push_back("left " + e.text);
    std::ignore = ui.button(second, "b", {100, 200, 200, 60});
  });
  driver.type_into(first, "7½ ft");
  EXPECT_TRUE(driver.ui().is_typing());
  EXPECT_THAT(story, IsEmpty());
  driver.press(Key::Enter);
  EXPECT_EQ(value, "7½ ft");
  driver.type("2");
  driver.press(Key::Tab);
  EXPECT_FALSE(driver.ui().is_typing());
  EXPECT_THAT(story, ElementsAre("entered 7½ ft", "left 7½ ft2"));
}

TEST(Field, IsEditedByKeys) {
  std::string shown;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    shown = ui.field(first, "height", "12 π cm", {100, 100, 400, 60}).text;
  });
  driver.press(Key::Tab);  // all is selected
  driver.press(Key::Right);
  driver.press(Key::Left);
  driver.press(Key::Left);
  driver.press(Key::Left);
  driver.press(Key::Backspace);
  EXPECT_EQ(shown, "12  cm") << "one character, though it has two bytes";
  driver.press(Key::Delete);
  EXPECT_EQ(shown, "12 cm");
  driver.press(Key::Home, with_shift);
  driver.press(Key::X, with_control);
  EXPECT_EQ(shown, "cm");
  driver.press(Key::V, with_control);
  driver.press(Key::V, with_control);
  EXPECT_EQ(shown, "12 12 cm");
  driver.press(Key::Z, with_control);
  EXPECT_EQ(shown, "12 π cm");
}

TEST(Field, EscapeGivesBackWhatStoodThere) {
  std::string value = "9";
  bool left = false;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    const FieldEvent e = ui.field(first, "height", value, {100, 100, 400, 60});
    left = left || e.left;
    if (e.changed) value = e.text;
    if (e.canceled) value = e.text;
  });
  driver.type_into(first, "400");
  EXPECT_EQ(value, "400");
  driver.press(Key::Escape);
  EXPECT_EQ(value, "9");
  EXPECT_FALSE(driver.ui().is_typing());
  EXPECT_FALSE(left);
}

TEST(Field, TakesNothingThatItCannotShowNorMoreThanItMay) {
  std::string shown;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    shown = ui.field(first, "name", "", {100, 100, 400, 60}, {.longest = 5}).text;
  });
  driver.click(first);
  driver.type("ab漢c");
  EXPECT_EQ(shown, "abc");
  driver.type("defgh");
  EXPECT_EQ(shown, "abcde");
}

// A name that stays lies over what it names.
TEST(IconButton, ItsNameGoesAwayAfterAWhileWithoutAFrameBetween) {
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    std::ignore = ui.icon_button(first, Icon::Fit, "fit to the bench", {100, 100, 60, 60});
  });
  EXPECT_FALSE(driver.ui().wakes_in().has_value());
  driver.hover(first);
  driver.frames(3);
  ASSERT_TRUE(driver.ui().wakes_in().has_value());
  EXPECT_GT(*driver.ui().wakes_in(), 2.5);
  EXPECT_FALSE(driver.ui().wants_frame());
  ImGui::GetIO().DeltaTime = static_cast<float>(*driver.ui().wakes_in());
  driver.frames(1);
  ImGui::GetIO().DeltaTime = 1.0F / 60;
  EXPECT_FALSE(driver.ui().wakes_in().has_value());
  driver.frames(3);
  EXPECT_FALSE(driver.ui().wakes_in().has_value()) << "it does not come again while the pointer stays";
  driver.point_at({600, 600});
  driver.hover(first);
  EXPECT_TRUE(driver.ui().wakes_in().has_value());
}

TEST(Shortcut, IsLeftToTheFieldThatIsTypedIn) {
  int blanked = 0;
  int undone = 0;
  int stepped = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    std::ignore = ui.field(first, "name", "", {100, 100, 400, 60});
    if (ui.shortcut(Key::B)) ++blanked;
    if (ui.shortcut(Key::Z, with_control)) ++undone;
    if (ui.shortcut(Key::PageDown)) ++stepped;
  });
  driver.press(Key::B);
  driver.press(Key::Z, with_control);
  EXPECT_EQ(blanked, 1);
  EXPECT_EQ(undone, 1);
  driver.click(first);
  driver.press(Key::B);
  driver.press(Key::Z, with_control);
  driver.press(Key::PageDown);
  EXPECT_EQ(blanked, 1);
  EXPECT_EQ(undone, 1);
  EXPECT_EQ(stepped, 1) << "a remote's key means nothing to a field";
}

TEST(Shortcut, DoesNotFireForAKeyThatAWidgetUsed) {
  int used = 0;
  int fired = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.button(first, "a", {100, 100, 200, 60})) ++used;
    if (ui.shortcut(Key::Space)) ++fired;
  });
  driver.press(Key::Space);
  EXPECT_EQ(fired, 1);
  driver.press(Key::Tab);
  driver.press(Key::Space);
  EXPECT_EQ(fired, 1);
  EXPECT_EQ(used, 1);
}

TEST(Region, TellsAClickFromADrag) {
  int clicks = 0;
  Vec2 dragged{};
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    const Interaction i = ui.region(first, "bench", {0, 0, 900, 700});
    if (i.clicked) ++clicks;
    if (i.dragging) dragged += i.moved;
  });
  driver.click_at({300, 300});
  EXPECT_EQ(clicks, 1);
  driver.drag_between({300, 300}, {500, 200});
  EXPECT_EQ(clicks, 1);
  EXPECT_NEAR(dragged.x, 200, 30);
  EXPECT_NEAR(dragged.y, -100, 20);
}

TEST(Region, LeavesThePointerToAWidgetThatLiesOnIt) {
  int clicks = 0;
  int buttons = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.region(first, "bench", {0, 0, 900, 700}).clicked) ++clicks;
    if (ui.button(second, "fit", {10, 10, 100, 60})) ++buttons;
  });
  driver.click(second);
  EXPECT_EQ(buttons, 1);
  EXPECT_EQ(clicks, 0);
  EXPECT_THAT(driver.layout_faults(), IsEmpty());
}

TEST(Scroll, BringsWhatIsClickedOrFocusedIntoView) {
  std::optional<std::size_t> chosen;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    const Rect content = ui.begin_scroll(list, {100, 100, 400, 300}, 20 * 80);
    Column rows(content, 20);
    for (std::size_t i = 0; i < 20; ++i) {
      if (ui.button(first.at(i), std::to_string(i), rows.take(60))) chosen = i;
    }
    ui.end_scroll();
  });
  EXPECT_THAT(driver.layout_faults(), IsEmpty());
  driver.click(first.at(12));
  EXPECT_EQ(chosen, 12U);
  for (int i = 0; i < 5; ++i) driver.press(Key::Tab);
  driver.frames(2);
  ASSERT_EQ(driver.ui().focus(), first.at(17));
  EXPECT_TRUE(driver.item(first.at(17)).clip.contains(driver.rect(first.at(17)), 1));
}

TEST(Sheet, HidesTheWindowFromPointerAndKeyboardAndGivesTheFocusBack) {
  bool open = false;
  int below = 0;
  int inside = 0;
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    if (ui.button(first, "open", {100, 100, 300, 60})) open = true;
    if (ui.button(second, "below", {100, 500, 300, 60})) ++below;
    if (!open) return;
    ui.begin_sheet(sheet, "keys", {300, 200, 600, 400});
    if (ui.button(third, "close", {350, 250, 300, 60})) {
      ++inside;
      open = false;
    }
    ui.end_sheet();
  });
  driver.click(first);
  driver.frames(2);
  driver.click(second);
  EXPECT_EQ(below, 0);
  driver.press(Key::Tab);
  EXPECT_EQ(driver.ui().focus(), third);
  driver.press(Key::Enter);
  driver.frames(2);
  EXPECT_EQ(inside, 1);
  EXPECT_EQ(driver.ui().focus(), first);
  driver.frames(30);  // no double click
  driver.click(second);
  EXPECT_EQ(below, 1);
}

TEST(LayoutFaults, FindOverlapsCutTextsAndSmallTargets) {
  UiDriver driver(1280, 720, paper, [](Ui& ui) {
    std::ignore = ui.button(first, "one", {100, 100, 200, 60});
    std::ignore = ui.button(second, "two", {250, 120, 200, 20});
    ui.text("a sentence far too long for so small a box", {700, 100, 80, 40});
    ui.text("another one that is far too long", {700, 300, 120, 60}, {.shrink = true});
    std::ignore = ui.button(third, "outside", {1200, 400, 200, 60});
  });
  const auto faults = driver.layout_faults();
  EXPECT_THAT(faults, testing::Contains(AllOf(HasSubstr("first"), HasSubstr("overlaps"), HasSubstr("second"))));
  EXPECT_THAT(faults, testing::Contains(AllOf(HasSubstr("second"), HasSubstr("too small"))));
  EXPECT_THAT(faults, testing::Contains(AllOf(HasSubstr("a sentence"), HasSubstr("has a text of"))));
  EXPECT_THAT(faults, testing::Contains(AllOf(HasSubstr("another one"), HasSubstr("is cut off"))));
  EXPECT_THAT(faults, testing::Contains(AllOf(HasSubstr("third"), HasSubstr("sticks out"))));
}

TEST(Text, IsWrappedWithinItsWidthAndMeasuredAsItIsDrawn) {
  constexpr std::string_view prompt = "Each lantern shade has a square base and four alike triangles, glued at 36 cm².";
  UiDriver driver(1280, 720, paper, [&](Ui& ui) {
    ui.text(prompt, {50, 50, 500, ui.wrapped_height(prompt, 500)}, {.wrap = true});
  });
  EXPECT_THAT(driver.layout_faults(), IsEmpty());
  EXPECT_GT(driver.ui().items().front().text_size.y, 3 * 720 * 0.045);
}

TEST(Text, NumbersOfAColumnStandPointUnderPoint) {
  UiDriver driver(1280, 720, paper, [](Ui& ui) {
    ui.number_at_point("49", ".5", 600, {400, 100, 400, 60});
    ui.number_at_point("7", ".25", 600, {400, 160, 400, 60});
    ui.number_at_point("108", "", 600, {400, 220, 400, 60});
  });
  const auto& items = driver.ui().items();
  ASSERT_EQ(items.size(), 3U);
  const double digit = (items[2].rect.right() - items[2].rect.x) / 3;
  EXPECT_NEAR(items[2].rect.right(), 600, 0.5);
  EXPECT_NEAR(items[0].rect.x, 600 - 2 * digit, 1);
  EXPECT_NEAR(items[1].rect.x, 600 - digit, 1);
}

class EveryWidget : public testing::TestWithParam<std::tuple<theme::ThemeName, Vec2>> {};

TEST_P(EveryWidget, StandsCleanlyAtEverySizeInEveryTheme) {
  const auto& [theme, size] = GetParam();
  UiDriver driver(size.x, size.y, theme, [](Ui& ui) {
    const Sizes& s = ui.sizes();
    Column column(ui.window().inset(3 * s.space), 2 * s.space);
    std::ignore = ui.tabs(list, {"Explore", "Work it out", "Quiz"}, 0, column.take(s.field));
    Row row(column.take(s.icon), s.space);
    for (std::size_t i = 1; i <= 10; ++i) {
      std::ignore = ui.icon_button(first.at(i), static_cast<Icon>(i), "icon", row.take(s.icon));
    }
    std::ignore = ui.slider(second, "fold", 0.4, {}, column.take(s.field));
    Row half(column.take(s.field), 2 * s.space);
    std::ignore = ui.checkbox(second.at(1), "show the total", true, half.take(0.45 * ui.window().w));
    std::ignore = ui.toggle(second.at(2), "less motion", false, half.rest());
    std::ignore = ui.stepper(third, "height", "7 1/2 ft", column.take(s.field));
    std::ignore = ui.options(sheet, {"square pyramid", "triangular prism", "cube"}, 1, column.take(3.4 * s.field));
    std::ignore = ui.button(first, "count the next face", column.take(s.button), {.look = ButtonLook::Primary});
  });
  EXPECT_THAT(driver.layout_faults(), IsEmpty());
  for (const ItemRecord& item : driver.ui().items()) EXPECT_TRUE(can_show(item.text)) << item.text;
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryWidget,
                         testing::Combine(testing::ValuesIn(theme::theme_names()),
                                          testing::Values(Vec2{1024, 768}, Vec2{1280, 720}, Vec2{1920, 1080},
                                                          Vec2{3840, 2160})));

}  // namespace
}  // namespace fw::ui::ui_test
