#include "window/input.hpp"

#include <imgui.h>

#include <cfloat>
#include <cstddef>

namespace fw::window {
namespace {

bool is_modifier(int key) {
  return key >= static_cast<int>(ModifierKey::LeftShift) && key <= static_cast<int>(ModifierKey::RightSuper);
}

/// Keys without a character, Enter and Backspace among them.
bool is_named(int key) { return key >= static_cast<int>(ui::Key::Escape) && !is_modifier(key); }

void update_modifiers(ImGuiIO& io) {
  const auto held = [&io](ModifierKey left, ModifierKey right) {
    return io.KeysDown[static_cast<int>(left)] || io.KeysDown[static_cast<int>(right)];
  };
  io.KeyShift = held(ModifierKey::LeftShift, ModifierKey::RightShift);
  io.KeyCtrl = held(ModifierKey::LeftControl, ModifierKey::RightControl);
  io.KeyAlt = held(ModifierKey::LeftAlt, ModifierKey::RightAlt);
  io.KeySuper = held(ModifierKey::LeftSuper, ModifierKey::RightSuper);
}

}  // namespace

void Input::pointer_at(double x, double y) {
  if (!events_.empty() && events_.back().kind == Kind::Point) events_.pop_back();  // only where it is now matters
  events_.push_back({Kind::Point, 0, false, x, y});
}
void Input::pointer_left() { events_.push_back({Kind::Leave}); }
void Input::button(PointerButton button, bool down) {
  events_.push_back({Kind::Button, static_cast<int>(button), down});
}
void Input::wheel(double notches) { events_.push_back({Kind::Wheel, 0, false, 0, notches}); }
void Input::key(int key, bool down) {
  if (key > 0 && key < key_limit) events_.push_back({Kind::Key, key, down});
}
void Input::text(unsigned character) { events_.push_back({Kind::Text, static_cast<int>(character)}); }
void Input::let_go() { events_.push_back({Kind::LetGo}); }

bool Input::must_wait(const Event& event, const Taken& taken) {
  switch (event.kind) {
    case Kind::Point:
    case Kind::Leave:
      return taken.any_button || taken.wheel;  // a click belongs to the place where it was made
    case Kind::Button:
      return taken.buttons.at(static_cast<std::size_t>(event.code)) || taken.any_key;
    case Kind::Wheel:
      return taken.any_button;
    case Kind::Key:
      if (taken.keys.at(static_cast<std::size_t>(event.code)) || taken.any_button) return true;
      // Ctrl belongs to the keys that come after it, and Enter to the text before it.
      return (is_modifier(event.code) && taken.any_plain_key) || (is_named(event.code) && taken.text);
    case Kind::Text:
      return taken.named_key || taken.any_button;
    case Kind::LetGo:
      return taken.any_button || taken.any_key || taken.text;
  }
  return false;
}

void Input::take(const Event& event, Taken& taken) {
  ImGuiIO& io = ImGui::GetIO();
  switch (event.kind) {
    case Kind::Point:
      io.MousePos = {static_cast<float>(event.x), static_cast<float>(event.y)};
      break;
    case Kind::Leave:
      io.MousePos = {-FLT_MAX, -FLT_MAX};
      break;
    case Kind::Button:
      io.MouseDown[event.code] = event.down;
      taken.buttons.at(static_cast<std::size_t>(event.code)) = true;
      taken.any_button = true;
      break;
    case Kind::Wheel:
      io.MouseWheel += static_cast<float>(event.y);
      taken.wheel = true;
      break;
    case Kind::Key:
      io.KeysDown[event.code] = event.down;
      update_modifiers(io);
      taken.keys.at(static_cast<std::size_t>(event.code)) = true;
      taken.any_key = true;
      taken.any_plain_key = taken.any_plain_key || !is_modifier(event.code);
      taken.named_key = taken.named_key || (is_named(event.code) && event.down);
      break;
    case Kind::Text:
      io.AddInputCharacter(static_cast<unsigned>(event.code));
      taken.text = true;
      break;
    case Kind::LetGo:
      for (bool& key : io.KeysDown) key = false;
      for (bool& button : io.MouseDown) button = false;
      update_modifiers(io);
      taken.any_key = taken.any_plain_key = taken.any_button = true;
      break;
  }
}

void Input::hand_over() {
  Taken taken;
  while (!events_.empty() && !must_wait(events_.front(), taken)) {
    take(events_.front(), taken);
    events_.pop_front();
  }
}

}  // namespace fw::window
