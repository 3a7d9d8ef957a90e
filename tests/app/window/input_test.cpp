#include "window/input.hpp"

#include <gtest/gtest.h>
#include <imgui.h>
#include <rapidcheck/gtest.h>

#include <string>
#include <vector>

namespace fw::window::input_test {
namespace {

constexpr int enter = static_cast<int>(ui::Key::Enter);
constexpr int control = static_cast<int>(ModifierKey::LeftControl);

/// A toolkit that sees what is handed over, frame by frame.
class Toolkit {
 public:
  Toolkit() : context_(ImGui::CreateContext()) {
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = {800, 600};
    io.DeltaTime = 1.0F / 60.0F;
    unsigned char* pixels = nullptr;
    int width = 0, height = 0;
    io.Fonts->GetTexDataAsAlpha8(&pixels, &width, &height);
  }
  Toolkit(const Toolkit&) = delete;
  Toolkit& operator=(const Toolkit&) = delete;
  ~Toolkit() { ImGui::DestroyContext(context_); }

  /// Draws frames until nothing waits, and writes down what each of them saw.
  std::vector<std::string> frames(Input& input) {
    std::vector<std::string> all;
    do {
      input.hand_over();
      ImGui::NewFrame();
      all.push_back(seen());
      ImGui::Render();
    } while (input.waits());
    return all;
  }

 private:
  static std::string seen() {
    const ImGuiIO& io = ImGui::GetIO();
    std::string text;
    for (const unsigned character : io.InputQueueCharacters) text += static_cast<char>(character);
    for (int key = 1; key < static_cast<int>(ModifierKey::LeftShift); ++key) {
      if (ImGui::IsKeyPressed(key, false)) text += (io.KeyCtrl ? " ctrl+" : " key ") + std::to_string(key);
    }
    for (int button = 0; button < 3; ++button) {
      const std::string at =
          ImGui::IsMousePosValid() ? " at " + std::to_string(static_cast<int>(io.MousePos.x)) : " nowhere";
      if (ImGui::IsMouseClicked(button)) text += " press" + std::to_string(button) + at;
      if (ImGui::IsMouseReleased(button)) text += " release" + std::to_string(button) + at;
    }
    if (io.MouseWheel != 0) text += " wheel " + std::to_string(static_cast<int>(io.MouseWheel));
    return text;
  }
  ImGuiContext* context_;
};

using Frames = std::vector<std::string>;

TEST(Input, PressAndReleaseBetweenTwoFramesAreBothSeen) {
  Toolkit toolkit;
  Input input;
  input.pointer_at(10, 5);
  input.button(PointerButton::Main, true);
  input.button(PointerButton::Main, false);
  EXPECT_EQ(toolkit.frames(input), (Frames{" press0 at 10", " release0 at 10"}));
  input.key(70, true);
  input.key(70, false);
  input.key(70, true);
  EXPECT_EQ(toolkit.frames(input), (Frames{" key 70", "", " key 70"}));
}

TEST(Input, ClickStaysWhereItWasMade) {
  Toolkit toolkit;
  Input input;
  input.pointer_at(10, 5);
  input.pointer_at(20, 5);
  input.button(PointerButton::Main, true);
  input.pointer_at(30, 5);
  input.pointer_at(90, 5);
  input.button(PointerButton::Main, false);
  EXPECT_EQ(toolkit.frames(input), (Frames{" press0 at 20", " release0 at 90"}));
}

TEST(Input, ControlBelongsToTheKeysThatComeAfterIt) {
  Toolkit toolkit;
  Input input;
  input.key(90, true);
  input.key(control, true);
  input.key(89, true);
  input.key(control, false);
  input.key(88, true);
  EXPECT_EQ(toolkit.frames(input), (Frames{" key 90", " ctrl+89", " key 88"}));
}

TEST(Input, EnterComesAfterTheTextBeforeItAndBeforeTheTextAfterIt) {
  Toolkit toolkit;
  Input input;
  input.text('1');
  input.text('2');
  input.key(enter, true);
  input.key(enter, false);
  input.text('3');
  EXPECT_EQ(toolkit.frames(input), (Frames{"12", " key 257", "3"}));
}

TEST(Input, WheelTurnsWhereThePointerWas) {
  Toolkit toolkit;
  Input input;
  input.pointer_at(10, 5);
  input.wheel(1);
  input.wheel(2);
  input.pointer_at(70, 5);
  input.button(PointerButton::Second, true);
  EXPECT_EQ(toolkit.frames(input), (Frames{" wheel 3", " press1 at 70"}));
}

TEST(Input, LettingGoReleasesEverything) {
  Toolkit toolkit;
  Input input;
  input.key(control, true);
  input.key(70, true);
  input.button(PointerButton::Main, true);
  input.let_go();
  toolkit.frames(input);
  EXPECT_FALSE(ImGui::GetIO().KeyCtrl);
  EXPECT_FALSE(ImGui::GetIO().KeysDown[70]);
  EXPECT_FALSE(ImGui::GetIO().MouseDown[0]);
}

TEST(Input, KeysBeyondTheToolkitsAreNotHandedOver) {
  Toolkit toolkit;
  Input input;
  for (const int key : {-1, 0, 512, 100000}) input.key(key, true);
  EXPECT_FALSE(input.waits());
}

/// Whatever comes, in whatever order: each press is seen once, and all text in its order.
RC_GTEST_PROP(Input, NothingIsLost, ()) {
  Toolkit toolkit;
  Input input;
  std::vector<bool> key_down(4), button_down(3);
  std::size_t presses = 0;
  std::string typed;
  for (const int step : *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 11))) {
    if (step < 4) {
      const auto key = static_cast<std::size_t>(step);
      key_down[key] = !key_down[key];
      presses += key_down[key] ? 1 : 0;
      input.key(65 + step, key_down[key]);
    } else if (step < 7) {
      const auto button = static_cast<std::size_t>(step - 4);
      button_down[button] = !button_down[button];
      presses += button_down[button] ? 1 : 0;
      input.button(static_cast<PointerButton>(button), button_down[button]);
    } else if (step < 9) {
      typed += static_cast<char>('0' + step);
      input.text(static_cast<unsigned char>('0' + step));
    } else {
      input.pointer_at(step * 10, 10);
    }
  }
  std::size_t seen_presses = 0;
  std::string seen_text;
  for (const std::string& frame : toolkit.frames(input)) {
    for (const char c : frame.substr(0, frame.find(' '))) seen_text += c;
    for (const char* mark : {" key ", " press"}) {
      for (std::size_t at = frame.find(mark); at != std::string::npos; at = frame.find(mark, at + 1)) ++seen_presses;
    }
  }
  RC_ASSERT(seen_text == typed);
  RC_ASSERT(seen_presses == presses);
}

}  // namespace
}  // namespace fw::window::input_test
