#include <set>

#include "app/state/quiz/quiz_support.hpp"
#include "panels/frame.hpp"
#include "state/session.hpp"
#include "support/random.hpp"
#include "support/sanitized.hpp"
#include "support/ui_driver.hpp"
#include "ui/pace.hpp"

// A user who does anything: clicks, keys, typing, drags, the wheel, other sizes, drawn from a seed, through the
// toolkit's input and the session. Afterwards the program must come to rest: while nothing moves no frame is drawn.
namespace fw::panels::test::monkey_test {
namespace {

using namespace state;
using namespace state::test;
using fw::test::Dice;
using fw::test::UiDriver;
using ui::Key;

class Monkey {
 public:
  explicit Monkey(std::uint64_t seed)
      : dice_(seed),
        session_(files_, lesson(), "", [] { return 20000; }),
        user_(1280, 720, [this](Ui& ui, const Fonts& fonts) { draw(ui, fonts); }) {}

  void act() {
    switch (dice_.below(12)) {
      case 0:
      case 1:
      case 2:
      case 3:
        click_some_widget();
        break;
      case 4:
        user_.click_at(some_place());
        break;
      case 5:
        user_.drag_between(some_place(), some_place());
        break;
      case 6:
      case 7:
        press_some_key();
        break;
      case 8:
      case 9:
        type_something();
        break;
      case 10:
        user_.point_at(some_place());
        ImGui::GetIO().MouseWheel = dice_.below(2) == 0 ? 1.0F : -1.0F;
        user_.frames(2);
        break;
      default:
        resize();
        break;
    }
  }

  /// A sheet has so many widgets that it would hardly find the way out.
  void close_sheets() {
    user_.press(Key::Escape);
    user_.press(Key::Escape);
  }

  /// How many frames are drawn until none is due any more, with the time that passes between them; 0: it never rests.
  std::size_t frames_to_rest() {
    constexpr std::size_t most = 4000;
    for (std::size_t count = 0; count < most; ++count) {
      const double waits =
          pace_.wants_frame(is_moving(session_.model().view)) ? 1.0 / 60 : ui::Pace::wait(3600, user_.ui());
      if (waits >= 3600) {
        return count + 1;
      }
      ImGui::GetIO().DeltaTime = static_cast<float>(waits);
      ticks_ += is_moving(session_.model().view) ? 1 : 0;
      std::ignore = is_moving(session_.model().view) && session_.dispatch({Tick{waits}});
      user_.frames(1);
    }
    return 0;
  }
  [[nodiscard]] const Model& model() const { return session_.model(); }
  [[nodiscard]] std::string last_act() const { return last_; }
  [[nodiscard]] std::size_t modes_seen() const { return modes_.size(); }

 private:
  static lessons::Lesson lesson() {
    auto read = tasks::read_lesson(platform::asset("lantern_fair.json"));
    return std::move(read).value();
  }

  void draw(Ui& ui, const Fonts& fonts) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const double height = theme::reading_height(static_cast<double>(window.x), static_cast<double>(window.y));
    const FrameResult frame = draw_frame(ui, fonts, session_.model(), session_.derived(), height);
    pace_.drawn(session_.dispatch(frame.commands), false, ui);
    modes_.insert(static_cast<int>(session_.model().state.mode));
  }
  figures::Vec2 some_place() {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    return {static_cast<double>(dice_.below(static_cast<std::uint64_t>(window.x))),
            static_cast<double>(dice_.below(static_cast<std::uint64_t>(window.y)))};
  }
  void click_some_widget() {
    std::vector<figures::Rect> places;
    for (const ui::ItemRecord& item : user_.ui().items()) {
      const figures::Rect seen = figures::common_part(item.rect, item.clip);
      const bool is_ground = item.kind == ui::ItemKind::Text || item.kind == ui::ItemKind::Panel;
      if (!is_ground && seen.w > 2 && seen.h > 2) {
        places.push_back(seen);
        last_ = "click " + std::string(item.id.name);
      }
    }
    if (!places.empty()) {
      user_.click_at(places[dice_.below(places.size())].center());
    }
  }
  void press_some_key() {
    constexpr Key keys[] = {Key::PageDown, Key::PageUp, Key::Tab, Key::Enter,  Key::Escape, Key::Space,
                            Key::Left,     Key::Right,  Key::Up,  Key::Down,   Key::Home,   Key::End,
                            Key::F1,       Key::F5,     Key::B,   Key::Period, Key::U,      Key::P,
                            Key::N,        Key::Z,      Key::Y,   Key::G,      Key::A,      Key::Digit2};
    const Key key = keys[dice_.below(std::size(keys))];
    const ui::Modifiers modifiers{dice_.below(4) == 0, dice_.below(5) == 0, false};
    last_ = "key " + std::to_string(static_cast<int>(key));
    user_.press(key, modifiers);
  }
  void type_something() {
    constexpr const char* texts[] = {"1", "36 cm", "4.5 ft", "b", "square pyramid", "0", "7 1/2", "9999999", "-3", "a"};
    last_ = "type";
    user_.strike(texts[dice_.below(std::size(texts))]);
  }
  void resize() {
    constexpr figures::Vec2 sizes[] = {{1280, 720}, {1920, 1080}, {1024, 768}, {640, 480}, {700, 1000}};
    const figures::Vec2 size = sizes[dice_.below(std::size(sizes))];
    last_ = "resize";
    user_.resize(size.x, size.y);
  }

  Dice dice_;
  platform::MemoryFiles files_;
  Session session_;
  ui::Pace pace_;
  std::set<int> modes_;
  std::size_t ticks_ = 0;
  std::string last_;
  UiDriver user_;
};

void run(std::uint64_t seed, int acts) {
  Monkey monkey(seed);
  for (int i = 0; i < acts; ++i) {
    monkey.act();
    if (i % 10 == 9) {
      ASSERT_GT(monkey.frames_to_rest(), 0U)
          << "seed " << seed << ", act " << i << ", " << monkey.last_act() << ": frames are drawn for ever";
      monkey.close_sheets();
    }
  }
  EXPECT_GE(monkey.modes_seen(), 2U) << "seed " << seed;
}

TEST(Monkey, LeavesAProgramThatComesToRest) { run(3, fw::test::cases(250, 60)); }

TEST(Monkey, LeavesAProgramThatComesToRestSlow) {
  for (std::uint64_t seed = 2; seed < 14; ++seed) {
    run(seed, 500);
  }
}

// A field that goes away with its text unsaid was waited for, for ever.
TEST(Monkey, AFieldThatGoesWhileItIsTypedInLeavesNothingToWaitFor) {
  bool there = true;
  constexpr ui::WidgetId field{"field"};
  constexpr ui::WidgetId other{"other"};
  UiDriver user(1280, 720, theme::ThemeName::Paper, [&](Ui& ui) {
    if (there) {
      std::ignore = ui.field(field, "height", "", {100, 100, 400, 60});
    }
    std::ignore = ui.field(other, "width", "", {100, 300, 400, 60});
  });
  user.click(field);
  user.type("12");
  user.click(other);
  user.type("3");
  there = false;
  user.frames(5);
  EXPECT_FALSE(user.ui().wants_frame());
  user.click(other);
  there = true;
  user.frames(2);
  user.click(field);
  user.type("5");
  there = false;
  user.frames(5);
  EXPECT_FALSE(user.ui().wants_frame());
}

}  // namespace
}  // namespace fw::panels::test::monkey_test
