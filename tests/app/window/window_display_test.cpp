#include <unistd.h>

#include <csignal>
#include <cstdlib>

#include "app/state/model_support.hpp"
#include "panels/ids.hpp"
#include "platform/ending.hpp"
#include "window/window.hpp"

// The real window on a display, with input that comes the way a user's does: through the X server, by xdotool.
// These tests need a display (xvfb-run gives one) and carry "Display" in their names.
namespace fw::window::test::window_display_test {

using namespace panels;
using namespace state;
using namespace state::test;
using namespace ui;

namespace {

class WindowDisplay : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_NE(std::getenv("DISPLAY"), nullptr) << "run these tests under xvfb-run";
    requests_.emplace([this] { window_->ask_to_close(); });  // before the driver starts threads of its own
    auto lesson = tasks::read_lesson(platform::asset("lantern_fair.json"));
    session_.emplace(files_, std::move(lesson).value(), "");
    session_->dispatch({OpenProblem{shade_index()}});
    auto window = Window::make(*session_, {1280, 720, false});
    ASSERT_TRUE(window.has_value()) << window.error();
    window_.emplace(std::move(window).value());
    window_->wait(0.4);
    x("search --sync --name '^Foldwright$' windowmove 0 0 windowfocus");
    window_->wait(0.3);
  }

  [[nodiscard]] std::size_t shade_index() const {
    const auto& problems = session_->model().state.lesson->problems;
    for (std::size_t i = 0; i < problems.size(); ++i) {
      if (problems[i].id == "shade") {
        return i;
      }
    }
    return 0;
  }
  void x(const std::string& words) {
    // In the background, since --sync waits for events that this very thread must serve.
    const std::string command = "timeout 20 xdotool " + words;
    ASSERT_EQ(std::system(command.c_str()), 0) << command;
    window_->wait(0.25);
  }
  void click_at(figures::Vec2 place) {
    x("mousemove " + std::to_string(std::lround(place.x)) + " " + std::to_string(std::lround(place.y)));
    x("mousedown 1");
    x("mouseup 1");
  }
  void click(WidgetId id) {
    const ItemRecord* item = window_->ui().item(id);
    ASSERT_NE(item, nullptr) << id.name;
    click_at(item->rect.center());
  }
  [[nodiscard]] const State& state() const { return session_->model().state; }
  [[nodiscard]] std::string so_far() const {
    const Desk& desk = state().desk();
    return units::text(reasoning::ledger(desk.solid, desk.counted, desk.grouping).so_far, 2);
  }

  std::optional<platform::EndRequests> requests_;
  platform::MemoryFiles files_;
  std::optional<Session> session_;
  std::optional<Window> window_;
};

TEST_F(WindowDisplay, CountsToTheSurfaceAreaUnfoldsUndoesAndResizes) {
  click(ids::lesson_on);
  EXPECT_EQ(state().desk().counted.size(), 1U);
  for (int i = 0; i < 4; ++i) {
    x("key Next");
  }
  EXPECT_EQ(so_far(), "360 cm²");
  x("key Escape");
  click(ids::fold_play);
  window_->wait(2.5);
  EXPECT_EQ(session_->model().view.fold, 1.0);
  x("key f");
  x("key f");
  EXPECT_EQ(session_->model().view.fold, 0.5);
  x("key ctrl+z");
  EXPECT_EQ(so_far(), "295 cm²");
  window_->resize(1024, 768);
  window_->wait(0.5);
  EXPECT_EQ(window_->ui().window().w, 1024);
  const render::Picture picture = window_->screenshot();
  EXPECT_EQ(picture.width, 1024);
  EXPECT_EQ(so_far(), "295 cm²");
}

TEST_F(WindowDisplay, AnswersTheQuizFromTheKeyboard) {
  click(ids::modes.at(2));
  ASSERT_EQ(state().mode, Mode::Quiz);
  click(ids::quiz_source.at(1));
  click(ids::quiz_start);
  ASSERT_TRUE(state().in_item());
  x("type --delay 30 '" + question(state()).solid.name() + "'");
  x("key Return");
  EXPECT_TRUE(state().quiz.work().done);
  window_->wait(2.5);
  EXPECT_EQ(session_->model().view.fold, 0.0);
}

// The toolkit ends the program when it is asked to draw into 16 pixels.
TEST_F(WindowDisplay, WaitsUntilItIsLargeEnoughToBeDrawn) {
  for (const auto& [width, height] : {std::pair{16, 16}, {1, 1}, {8, 700}, {900, 12}}) {
    x("search --name '^Foldwright$' windowsize " + std::to_string(width) + " " + std::to_string(height));
    window_->resize(width, height);
    window_->wait(0.3);
  }
  window_->resize(1024, 768);
  window_->wait(0.5);
  EXPECT_EQ(window_->ui().window().w, 1024);
}

TEST_F(WindowDisplay, ClosesWhenTheProgramIsAskedToEnd) {
  ::kill(::getpid(), SIGTERM);
  EXPECT_FALSE(window_->wait(5.0)) << "closed as by its button";
}

TEST_F(WindowDisplay, DrawsNothingWhileNothingChanges) {
  window_->wait(1.0);
  const std::size_t before = window_->frames_drawn();
  window_->wait(5.0);
  EXPECT_EQ(window_->frames_drawn(), before) << "0 frames in 5 s of a still picture";
}

TEST(NoDisplay, IsAClearMessage) {
  const char* display = std::getenv("DISPLAY");
  const std::string kept = display == nullptr ? "" : display;
  unsetenv("DISPLAY");
  platform::MemoryFiles files;
  auto lesson = tasks::read_lesson(platform::asset("lantern_fair.json"));
  Session session(files, std::move(lesson).value(), "");
  const auto window = Window::make(session, {});
  ASSERT_FALSE(window.has_value());
  EXPECT_NE(window.error().find("no display"), std::string::npos) << window.error();
  if (!kept.empty()) {
    setenv("DISPLAY", kept.c_str(), 1);
  }
}

}  // namespace
}  // namespace fw::window::test::window_display_test
