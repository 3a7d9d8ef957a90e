#pragma once

namespace fw::ui {

/// The keys that the program listens to. The values are the codes that the window's backend reports.
enum class Key {
  Space = 32,
  Comma = 44,
  Minus = 45,
  Period = 46,
  Slash = 47,
  Digit0 = 48,
  Digit1,
  Digit2,
  Digit3,
  Digit4,
  Digit5,
  Digit6,
  Digit7,
  Digit8,
  Digit9,
  Equal = 61,
  A = 65,
  B,
  C,
  D,
  E,
  F,
  G,
  H,
  I,
  J,
  K,
  L,
  M,
  N,
  O,
  P,
  Q,
  R,
  S,
  T,
  U,
  V,
  W,
  X,
  Y,
  Z,
  BracketLeft = 91,
  BracketRight = 93,
  Escape = 256,
  Enter,
  Tab,
  Backspace,
  Insert,
  Delete,
  Right,
  Left,
  Down,
  Up,
  PageUp,
  PageDown,
  Home,
  End,
  F1 = 290,
  F2,
  F3,
  F4,
  F5,
  F6,
  F7,
  F8,
  F9,
  F10,
  F11,
  F12,
  PadEnter = 335,
  PadAdd = 334,
  PadSubtract = 333
};

struct Modifiers {
  bool control = false, shift = false, alt = false;
  friend bool operator==(const Modifiers&, const Modifiers&) = default;
};
inline constexpr Modifiers no_modifiers{};
inline constexpr Modifiers with_control{true, false, false};
inline constexpr Modifiers with_shift{false, true, false};
inline constexpr Modifiers with_control_shift{true, true, false};

}  // namespace fw::ui
