#pragma once

#include <array>
#include <deque>

#include "ui/keys.hpp"

namespace fw::window {

enum class PointerButton { Main, Second, Middle };

/// The keys that only go with others; their values continue those of ui::Key.
enum class ModifierKey {
  LeftShift = 340,
  LeftControl,
  LeftAlt,
  LeftSuper,
  RightShift,
  RightControl,
  RightAlt,
  RightSuper
};

/// What the user does, in the order in which it happened, on its way into the toolkit. The toolkit sees only what is so
/// when a frame begins; a remote presses and lets go between two frames. So what would hide something that happened in
/// the same frame waits for the next one, and all that came after it waits too.
class Input {
 public:
  /// Units of the window, from its upper left corner.
  void pointer_at(double x, double y);
  void pointer_left();
  void button(PointerButton button, bool down);
  /// Notches, up is positive.
  void wheel(double notches);
  /// `key`: a value of ui::Key or ModifierKey; others are passed over. Repeats are the toolkit's business.
  void key(int key, bool down);
  void text(unsigned character);
  /// The window lost the keyboard: whatever is held is let go.
  void let_go();

  /// Hands over what a frame can take in. Requires: a context of the toolkit, and no open frame.
  void hand_over();
  /// Whether something waits for the next frame.
  [[nodiscard]] bool waits() const { return !events_.empty(); }

 private:
  static constexpr int key_limit = 512;
  enum class Kind { Point, Leave, Button, Wheel, Key, Text, LetGo };
  struct Event {
    Kind kind = Kind::LetGo;
    int code = 0;  ///< the button, the key or the character
    bool down = false;
    double x = 0, y = 0;  ///< y of a wheel: its notches
  };
  /// What was handed over for this frame.
  struct Taken {
    std::array<bool, 3> buttons{};
    std::array<bool, key_limit> keys{};
    bool any_button = false, any_key = false, any_plain_key = false, named_key = false, text = false, wheel = false;
  };
  [[nodiscard]] static bool must_wait(const Event& event, const Taken& taken);
  static void take(const Event& event, Taken& taken);

  std::deque<Event> events_;
};

}  // namespace fw::window
