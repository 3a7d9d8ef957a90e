#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/ui/looks.hpp"

// What the widgets look like, asked of the pixels: at rest, under the pointer, with the focus, switched off.
namespace fw::ui::looks_test {

using namespace looks;

namespace {

struct Kind {
  std::string_view name;
  std::function<void(Ui&, bool enabled)> draw;
  bool can_be_disabled = true;
  WidgetId id = first;
};

std::vector<Kind> kinds() {
  const auto button = [](ButtonLook look) {
    return [look](Ui& ui, bool enabled) {
      std::ignore = ui.button(first, "fold", place, {.look = look, .enabled = enabled});
    };
  };
  return {
      {"main button", button(ButtonLook::Primary)},
      {"button with a rim", button(ButtonLook::Outline)},
      {"plain button", button(ButtonLook::Plain)},
      {"button with an icon",
       [](Ui& ui, bool enabled) {
         std::ignore = ui.button(first, "fold", place, {.icon = Icon::Fold, .enabled = enabled, .h = HAlign::Left});
       }},
      {"icon button",
       [](Ui& ui, bool enabled) {
         std::ignore = ui.icon_button(first, Icon::Fit, "fit", {100, 120, 48, 48}, {.enabled = enabled});
       }},
      {"check box", [](Ui& ui, bool enabled) { std::ignore = ui.checkbox(first, "total", true, place, enabled); }},
      {"switch", [](Ui& ui, bool enabled) { std::ignore = ui.toggle(first, "motion", false, place, enabled); }},
      {"slider", [](Ui& ui, bool enabled) { std::ignore = ui.slider(first, "fold", 0.5, {}, place, enabled); }},
      {"field", [](Ui& ui, bool enabled) { std::ignore = ui.field(first, "h", "12 cm", place, {.enabled = enabled}); }},
      {"rail item",
       [](Ui& ui, bool) {
         std::ignore = ui.rail_item(first, "7", "lantern", true, false, {100, 120, 48, 48});
       },
       false},
      {"options",
       [](Ui& ui, bool) {
         std::ignore = ui.options(first, {"cube", "prism"}, 0, {100, 120, 240, 90});
       },
       false},
      {"tabs",
       [](Ui& ui, bool) {
         std::ignore = ui.tabs(first, {"Explore", "Quiz"}, 1, place, HAlign::Left);
       },
       false},
  };
}

/// From the first to the last of a widget's items.
Rect whole_of(UiDriver& driver) {
  Rect whole = driver.rect(first);
  for (const ItemRecord& item : driver.ui().items()) {
    const Vec2 low = glm::min(Vec2{whole.x, whole.y}, Vec2{item.rect.x, item.rect.y});
    const Vec2 end = glm::max(Vec2{whole.right(), whole.bottom()}, Vec2{item.rect.right(), item.rect.bottom()});
    whole = {low.x, low.y, end.x - low.x, end.y - low.y};
  }
  return whole;
}

class LookInTheme : public testing::TestWithParam<theme::ThemeName> {};

TEST_P(LookInTheme, StaysInItsPlaceAndAnswersThePointerAndTheKeyboard) {
  const theme::ThemeName name = GetParam();
  const Theme theme = Theme::make(name, high);
  const Rect window{0, 0, wide, high};
  for (const Kind& kind : kinds()) {
    UiDriver driver(wide, high, name, [&](Ui& ui) { kind.draw(ui, true); });
    const Rect whole = whole_of(driver);
    const DrawnPicture rest = picture(name);
    const Rect ink = rest.box_beside(theme.ground, window);
    ASSERT_FALSE(is_nothing(ink)) << kind.name;
    EXPECT_TRUE(whole.inset(-1.5).contains(ink)) << kind.name << " is drawn out of its place";

    driver.hover(first);
    driver.frames(2);
    const Rect under_pointer = picture(name).changed(rest, whole.inset(-1.5));
    EXPECT_FALSE(is_nothing(under_pointer)) << kind.name << " does not show the pointer";
    driver.click(first);
    driver.point_at({10, 350});
    driver.frames(2);
    const bool types = driver.item(first).kind == ItemKind::Field;
    if (name == paper) {
      EXPECT_EQ(is_nothing(picture(name).box_of(theme.focus, window)), !types)
          << kind.name << ": a ring is for the keyboard";
    }
    driver.click_at({10, 350});
    driver.press(Key::Tab);
    driver.frames(2);
    const double out = theme.sizes.focus_gap + theme.sizes.focus_ring + 1;
    const Rect ring = picture(name).changed(rest, window);
    EXPECT_FALSE(is_nothing(ring)) << kind.name << " does not show the focus";
    if (name == paper) {
      const Rect focus = picture(name).box_of(theme.focus, window);
      EXPECT_TRUE(whole.inset(-out).contains(focus)) << kind.name;
      EXPECT_GE(focus.h, 0.3 * driver.item(first).rect.h) << kind.name;
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Themes, LookInTheme, testing::ValuesIn(theme::theme_names()));

TEST(EveryLook, IsPalerWhileItCannotBeUsedAndThenIgnoresThePointer) {
  for (const Kind& kind : kinds()) {
    if (!kind.can_be_disabled) continue;
    UiDriver driver(wide, high, paper, [&](Ui& ui) { kind.draw(ui, false); });
    const DrawnPicture rest = picture();
    EXPECT_FALSE(is_nothing(rest.box_beside(paper_theme.ground, place))) << kind.name << " is still shown";
    EXPECT_TRUE(is_nothing(rest.box_of(paper_theme.ink, place))) << kind.name << " looks as if it could be used";
    driver.hover(first);
    driver.frames(2);
    EXPECT_TRUE(is_nothing(picture().changed(rest, {0, 0, wide, high}))) << kind.name;
  }
}

TEST(EveryLook, OfAWidgetStandsInTheMiddleOfItsHeight) {
  for (const Kind& kind : kinds()) {
    if (kind.name == "tabs") continue;  // a line under the one that is shown
    const Rect ink = drawn([&](Ui& ui) { kind.draw(ui, true); });
    UiDriver driver(wide, high, paper, [&](Ui& ui) { kind.draw(ui, true); });
    EXPECT_NEAR(ink.center().y, whole_of(driver).center().y, 3.5) << kind.name;
  }
}

TEST(Switches, ShowOnAndOffByMoreThanTheirColor) {
  const auto toggle = [](bool on) {
    return picture_of([on](Ui& ui) { std::ignore = ui.toggle(first, "motion", on, place); });
  };
  const DrawnPicture off = toggle(false);
  const DrawnPicture on = toggle(true);
  const Rect pill = on.changed(off, place);
  EXPECT_GT(pill.x, place.center().x) << "the words stay as they are";
  EXPECT_NEAR(pill.center().y, place.center().y, 1.5);
  EXPECT_GT(pill.w, 1.4 * pill.h);
  const Vec2 left{pill.x + pill.h / 2, pill.center().y};
  const Vec2 right{pill.right() - pill.h / 2, pill.center().y};
  EXPECT_TRUE(DrawnPicture::is_close(off.at(left), paper_theme.ink)) << "the knob of what is off is on the left";
  EXPECT_FALSE(DrawnPicture::is_close(off.at(right), paper_theme.ink));
  EXPECT_TRUE(DrawnPicture::is_close(on.at(right), paper_theme.on_primary)) << "and of what is on, on the right";
  EXPECT_TRUE(DrawnPicture::is_close(on.at(left), paper_theme.ink));
}

TEST(Switches, HaveACheckMarkInTheirBoxWhileTheyAreOn) {
  const auto box = [](bool on) {
    return picture_of([on](Ui& ui) { std::ignore = ui.checkbox(first, "total", on, place); });
  };
  const DrawnPicture off = box(false);
  const DrawnPicture on = box(true);
  const Rect change = on.changed(off, place);
  EXPECT_LT(change.right(), place.x + place.h);
  EXPECT_NEAR(change.w, change.h, 3);
  EXPECT_NEAR(change.center().y, place.center().y, 1.5);
  const Rect mark = on.box_of(paper_theme.on_primary, change.inset(2));
  EXPECT_GT(mark.w, 0.4 * change.w);
  EXPECT_LE(glm::distance(mark.center(), change.center()), 2.5);
}

TEST(Options, AreReachedByTabAtTheChosenOneOrAtTheFirst) {
  std::optional<std::size_t> current;
  UiDriver driver(wide, high, paper, [&](Ui& ui) {
    std::ignore = ui.options(first, {"cube", "prism", "pyramid"}, current, {100, 100, 240, 150});
    std::ignore = ui.button(second, "check", {100, 280, 240, 48});
  });
  driver.press(Key::Tab);
  EXPECT_EQ(driver.ui().focus(), first.at(0));
  driver.press(Key::Tab);
  EXPECT_EQ(driver.ui().focus(), second) << "the others are reached by arrows";
  driver.press(Key::Tab);
  driver.press(Key::Down);
  driver.frames(2);
  EXPECT_EQ(driver.ui().focus(), first.at(1));
  current = 2;
  driver.click_at({10, 350});
  driver.press(Key::Tab);
  EXPECT_EQ(driver.ui().focus(), first.at(2));
}

TEST(Options, ShowTheChosenOneByADotInItsRing) {
  const auto list = [](std::optional<std::size_t> current) {
    return picture_of([current](Ui& ui) {
      std::ignore = ui.options(first, {"cube", "prism", "pyramid"}, current, {100, 100, 240, 150});
    });
  };
  const DrawnPicture none = list({});
  for (std::size_t i = 0; i < 3; ++i) {
    const DrawnPicture one = list(i);
    const double top = 100 + 50 * static_cast<double>(i);
    const Rect changed = one.changed(none, {90, 90, 260, 170});
    EXPECT_TRUE((Rect{98, top - 2, 244, 54}).contains(changed)) << "only the chosen row looks different";
    const Rect in_ring = one.changed(none, {104, top + 8, 24, 34});
    EXPECT_NEAR(in_ring.w, in_ring.h, 1);
    EXPECT_TRUE(DrawnPicture::is_close(one.at(in_ring.center()), paper_theme.ink));
  }
}

TEST(Tabs, UnderlineTheShownOneAloneAsWideAsItsWord) {
  const std::vector<std::string> titles{"Explore", "Work it out", "Quiz"};
  for (std::size_t current = 0; current < 3; ++current) {
    for (const HAlign h : {HAlign::Left, HAlign::Center, HAlign::Right}) {
      const Rect row{20, 100, 440, 48};
      UiDriver driver(wide, high, paper, [&](Ui& ui) { std::ignore = ui.tabs(first, titles, current, row, h); });
      const DrawnPicture shown = picture();
      const double from = driver.rect(first.at(0)).x;
      const double to = driver.rect(first.at(2)).right();
      const double place_of_row = h == HAlign::Left    ? from - row.x
                                  : h == HAlign::Right ? row.right() - to
                                                       : (from + to) / 2 - row.center().x;
      EXPECT_NEAR(place_of_row, 0, 0.5);
      for (std::size_t i = 0; i < 3; ++i) {
        const Rect tab = driver.rect(first.at(i));
        const double text = driver.item(first.at(i)).text_size.x;
        const Rect below{tab.x, tab.center().y + 0.66 * paper_theme.sizes.label, tab.w, 4};
        const Rect line = shown.box_of(paper_theme.ink, below);
        if (i != current) {
          EXPECT_LT(line.w, 0.3 * text);
          continue;
        }
        EXPECT_NEAR(line.w, text, 2);
        EXPECT_NEAR(line.center().x, tab.center().x, 1.5);
      }
    }
  }
}

TEST(Tabs, WriteTheShownOneBold) {
  const auto row = [](std::size_t current) {
    return picture_of([=](Ui& ui) { std::ignore = ui.tabs(first, {"HH", "HH"}, current, {20, 100, 300, 48}); });
  };
  const DrawnPicture one = row(0);
  const DrawnPicture other = row(1);
  const Rect words{20, 100, 300, 26};  // without the line under them
  const Rect changed = one.changed(other, words);
  EXPECT_GT(changed.w, 40) << "both words look different";
}

TEST(Tabs, MoveTogetherBeforeTheirWordsBecomeSmaller) {
  const std::vector<std::string> titles{"Explore", "Work it out", "Quiz"};
  double needed = 0;
  std::vector<double> heights;
  std::vector<double> gaps;
  for (const double share : {1.3, 1.0, 0.9, 0.72}) {
    UiDriver driver(wide, high, paper, [&](Ui& ui) {
      needed = ui.tabs_width(titles);
      std::ignore = ui.tabs(first, titles, 0, {10, 100, share * needed, 48}, HAlign::Left);
    });
    double whole = 0;
    double text = 0;
    for (std::size_t i = 0; i < 3; ++i) {
      whole += driver.rect(first.at(i)).w;
      text += driver.item(first.at(i)).text_size.x;
    }
    EXPECT_LE(whole, std::min(share, 1.0) * needed + 1) << "they fit " << share;
    if (share >= 1) {
      EXPECT_NEAR(whole, needed, 1) << "with as much room as they ask for";
    }
    heights.push_back(driver.item(first).text_size.y);
    gaps.push_back(whole - text);
  }
  for (std::size_t i = 1; i < heights.size(); ++i) {
    EXPECT_LE(heights[i], heights[i - 1] + 1e-9);
    EXPECT_LE(gaps[i], gaps[i - 1] + 0.5);
  }
  EXPECT_LT(gaps.back(), gaps.front());
}

TEST(RailItems, ThatAreDoneHaveASmallCheckMarkAtTheirRim) {
  const auto item = [](bool current, bool done) {
    return picture_of([=](Ui& ui) { std::ignore = ui.rail_item(first, "7", "", current, done, {100, 100, 60, 60}); });
  };
  const Rect around{80, 80, 120, 120};
  for (const bool current : {false, true}) {
    const Rect mark = item(current, true).changed(item(current, false), around);
    EXPECT_GT(mark.x, 130);
    EXPECT_GT(mark.y, 130) << "below on the right, so that the number can be read";
    EXPECT_NEAR(mark.w, mark.h, 3);
    EXPECT_LT(mark.w, 30);
    const DrawnPicture shown = item(current, true);
    const Rect check = shown.box_of(paper_theme.ink, mark.inset(0.24 * mark.w));
    EXPECT_GE(check.w, 4);
    EXPECT_LE(glm::distance(check.center(), mark.center()), 2.5) << "the check mark stands in its circle";
  }
  EXPECT_TRUE(DrawnPicture::is_close(item(true, false).at(112, 130), paper_theme.primary));
  EXPECT_FALSE(DrawnPicture::is_close(item(false, false).at(112, 130), paper_theme.primary));
}

TEST(Sliders, HaveTheirKnobWhereTheirValueIs) {
  for (const SliderRange range : {SliderRange{0, 1, 0.1}, SliderRange{20, 60, 5}, SliderRange{-3, -1, 0.5}}) {
    double before = -1;
    for (const double share : {0.0, 0.25, 0.5, 1.0}) {
      const double value = range.low + share * (range.high - range.low);
      const Widgets widgets = [&](Ui& ui) { std::ignore = ui.slider(first, "fold", value, range, place); };
      UiDriver driver(wide, high, paper, widgets);
      const DrawnPicture shown = picture();
      // Above the line only the knob has ink.
      const Rect knob = shown.box_of(paper_theme.ink, {place.x, place.y, place.w, place.h / 2 - 3});
      ASSERT_FALSE(is_nothing(knob));
      EXPECT_NEAR((knob.center().x - place.x - 8) / (place.w - 16), share, 0.02);
      EXPECT_GT(knob.center().x, before);
      before = knob.center().x;
      EXPECT_NEAR(driver.item(first).share, share, 1e-9);
    }
  }
}

TEST(Sliders, TellAValueOfTheirRangeAndOnlyWhenItIsAnother) {
  for (const SliderRange range : {SliderRange{0, 1, 0.1}, SliderRange{20, 60, 5}, SliderRange{-3, -1, 0.5}}) {
    double value = range.low;
    int changes = 0;
    UiDriver driver(wide, high, paper, [&](Ui& ui) {
      const SliderEvent event = ui.slider(first, "fold", value, range, place);
      EXPECT_EQ(event.changed, event.value != value);
      changes += event.changed ? 1 : 0;
      value = event.value;
    });
    EXPECT_EQ(changes, 0);
    driver.click_at(place.center());
    EXPECT_NEAR(value, (range.low + range.high) / 2, 0.02 * (range.high - range.low));
    EXPECT_EQ(changes, 1);
    driver.frames(3);
    EXPECT_EQ(changes, 1);
    driver.press(Key::Home);
    EXPECT_DOUBLE_EQ(value, range.low);
    driver.press(Key::Down);
    driver.press(Key::Left);
    EXPECT_DOUBLE_EQ(value, range.low);
    driver.press(Key::Up);
    EXPECT_NEAR(value, range.low + range.step, 1e-12);
    driver.press(Key::Right, with_shift);
    EXPECT_NEAR(value, std::min(range.high, range.low + 6 * range.step), 1e-12);
  }
}

TEST(Lists, HaveABarThatIsAsFarDownAsTheyAre) {
  const Rect rect{50, 50, 300, 200};
  double content = 800;
  const Widgets widgets = [&](Ui& ui) {
    std::ignore = ui.begin_scroll(first, rect, content);
    ui.end_scroll();
  };
  UiDriver driver(wide, high, paper, widgets);
  const Rect track{rect.right() - paper_theme.sizes.scroll_bar, 0, paper_theme.sizes.scroll_bar, high};
  const auto thumb = [&] { return picture().box_of(paper_theme.ink, track); };
  EXPECT_NEAR(thumb().y, rect.y, 3);
  EXPECT_NEAR(thumb().h, rect.h / 4, 4) << "a quarter can be seen";
  EXPECT_NEAR(thumb().center().x, track.center().x, 1.5);
  driver.point_at(rect.center());
  for (int i = 0; i < 40; ++i) {
    ImGui::GetIO().MouseWheel = -1;
    driver.frames(1);
  }
  driver.frames(2);
  EXPECT_NEAR(thumb().bottom(), rect.bottom(), 3);
  // Dragged to the middle it shows the middle.
  driver.drag_between({track.center().x, rect.bottom() - 20}, {track.center().x, rect.center().y});
  driver.frames(2);
  EXPECT_NEAR(thumb().center().y, rect.center().y, 3);
  content = 150;
  driver.frames(3);
  EXPECT_TRUE(is_nothing(thumb())) << "none where all can be seen";
}

TEST(Tips, StandBesideTheirButtonWithinTheWindow) {
  for (const Vec2& corner : {Vec2{0, 0}, Vec2{440, 0}, Vec2{0, 320}, Vec2{440, 320}, Vec2{200, 150}}) {
    const Rect rect{corner.x, corner.y, 40, 40};
    UiDriver driver(wide, high, paper,
                    [&](Ui& ui) { std::ignore = ui.icon_button(first, Icon::Fit, "fit to the bench", rect); });
    const DrawnPicture rest = picture();
    driver.hover(first);
    driver.frames(3);
    const DrawnPicture shown = picture();
    const Rect beside = shown.box_of(paper_theme.primary, {0, 0, wide, rect.y > 60 ? rect.y : high});
    const double below = rect.y > 60 ? 0 : rect.bottom();
    const Rect tip = shown.changed(rest, {0, below, wide, rect.y > 60 ? rect.y : high - below});
    ASSERT_FALSE(is_nothing(beside));
    EXPECT_GT(tip.w, 60);
    EXPECT_GT(tip.h, paper_theme.sizes.small);
    EXPECT_GE(tip.x, 1);
    EXPECT_LE(tip.right(), wide - 1);
    EXPECT_LE(rect.y > 60 ? rect.y - tip.bottom() : tip.y - rect.bottom(), 2.5 * paper_theme.sizes.space);
    const double wished = std::clamp(rect.center().x, tip.w / 2, wide - tip.w / 2);
    EXPECT_NEAR(tip.center().x, wished, paper_theme.sizes.space + 2);
    EXPECT_FALSE(is_nothing(shown.box_of(paper_theme.on_primary, tip.inset(3)))) << "with its words";
  }
}

TEST(Sheets, DimTheWindowAndLieOverIt) {
  const Rect sheet{120, 80, 240, 200};
  const auto look = [&](bool open) {
    return picture_of([&, open](Ui& ui) {
      ui.panel({0, 0, wide, high}, paper_theme.ink);
      if (!open) return;
      ui.begin_sheet(second, "keys", sheet);
      ui.end_sheet();
    });
  };
  const DrawnPicture open = look(true);
  EXPECT_TRUE(DrawnPicture::is_close(open.at(sheet.center()), paper_theme.panel));
  const Rect panel = open.box_of(paper_theme.panel, {0, 0, wide, high});
  EXPECT_TRUE(sheet.contains(panel, 1) && panel.contains(sheet, 5));
  EXPECT_TRUE(DrawnPicture::is_close(look(false).at(20, 20), paper_theme.ink));
}

}  // namespace
}  // namespace fw::ui::looks_test
