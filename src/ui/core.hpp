#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "ui/key_owner.hpp"
#include "ui/ui.hpp"

namespace fw::ui {

/// What passes between the frames of a Ui: input, focus, the open field, scroll positions, records.
/// Only the ui_*.cpp files see it.
struct Ui::Core {
  /// The pointer and the wheel in this frame.
  struct Pointer {
    Vec2 at{}, before{};
    bool down = false, went_down = false, released = false, double_clicked = false;
    bool went_down_again = false;  ///< the second or a later click of a row of quick ones at one place
    bool second_down = false, second_went_down = false;
    double wheel = 0;
  };
  /// A text field that is being typed in.
  struct Open {
    WidgetId id{};
    std::string text;                   ///< as it is being typed
    std::string given;                  ///< by the state
    std::size_t caret = 0, anchor = 0;  ///< bytes
    double shift = 0;                   ///< pixels that the text is moved to the left
    bool changed = false;
    bool entered = false;  ///< by Enter, and nothing was typed since
    std::uint64_t of = 0;  ///< what the text belongs to
  };
  struct Scroll {
    double offset = 0;
    std::optional<Span> shown;  ///< what it was last scrolled to
  };
  struct ScrollArea {
    WidgetId id{};
    Rect rect{};
    double content_height = 0;
  };
  struct Tip {
    std::string text;
    Rect beside{};
  };
  struct Behavior {
    bool hovered = false, focused = false, ring = false, held = false, went_down = false, released = false;
    bool clicked = false, by_key = false;
  };
  enum class Stop { Tab, Skip, None };  ///< reached by Tab; by a click or arrows only; never

  /// A widget that takes the focus when it appears, and the item it appeared for.
  struct Offer {
    WidgetId id{};
    std::uint64_t of = 0;
    friend bool operator==(const Offer&, const Offer&) = default;
  };

  void read_input();
  void move_focus();
  void follow_typing();
  void finish_focus();
  void follow_offers();
  /// What the screen does with keys, as of now.
  [[nodiscard]] KeyScene scene() const;
  [[nodiscard]] bool is_field(const std::optional<WidgetId>& id) const;
  /// A click leaves the keyboard where it is: on the answer field, or on a field whose text was not entered.
  [[nodiscard]] bool keeps_keyboard() const;
  /// The focus goes to what was pressed, unless a field keeps the keyboard.
  void press_on(std::optional<WidgetId> id, bool is_text);
  /// Records a widget and says what is done to it. `stop` tells whether Tab halts at it.
  Behavior behave(ItemRecord item, Stop stop);
  void record(ItemRecord item);
  [[nodiscard]] const ItemRecord* last(WidgetId id) const;  ///< of the last frame
  [[nodiscard]] bool is_drawn(WidgetId id) const;           ///< so far in this one
  [[nodiscard]] bool pressed(Key key, bool repeats = false) const;
  /// Pressed without Ctrl and Alt, not used yet, and this taker's; from then on it is used.
  bool take(Key key, bool repeats = false, KeyTaker taker = KeyTaker::Focused);
  void use(Key key) { used.push_back(key); }
  [[nodiscard]] bool is_used(Key key) const;
  void focus_on(WidgetId id, bool by_keyboard);
  void step_focus(WidgetId id, Key back, Key forward);  ///< arrows within a row or list of widgets
  [[nodiscard]] Rect clip() const { return clips.empty() ? window : clips.back(); }
  void keep_in_view(const Rect& rect);

  Rect window{};
  Pointer pointer;
  Modifiers modifiers;
  std::vector<unsigned> typed;  ///< characters of this frame
  std::vector<Key> used;
  std::optional<WidgetId> hot;            ///< the topmost widget under the pointer, by the last frame
  std::optional<WidgetId> active;         ///< holds the main button
  std::optional<WidgetId> active_second;  ///< holds another button
  std::optional<WidgetId> clicked_first;  ///< what the first of a row of quick clicks went to
  Vec2 press{};
  bool moved_far = false;
  std::optional<WidgetId> focus, next_focus, focus_below;  ///< below: of the window while a sheet is open
  bool focus_by_keyboard = false, focus_moved = false;
  std::array<std::vector<WidgetId>, 2> stops;  ///< what Tab walks, in order, of the window and of the sheet
  std::vector<WidgetId> stops_before;
  Open open;                                     ///< the text field that has the focus
  std::optional<Open> closed;                    ///< the one that lost it with a change, until it has said so
  std::optional<Offer> home, home_before;        ///< the answer field of this frame and of the last
  std::optional<Offer> offered, offered_before;  ///< the same for what else takes the focus when it comes
  KeyScene told = KeyScene::Program;             ///< by the panels
  std::map<std::pair<std::string_view, std::uint32_t>, Scroll> scrolls;
  std::optional<ScrollArea> scrolling;
  int layer = 0;  ///< being drawn
  bool sheet = false, sheet_before = false;
  std::vector<Rect> clips;
  std::vector<ItemRecord> items, items_before;
  std::optional<Tip> tip;
  Rect tip_before{};       ///< where it stood in the last frame; no size: there was none
  double tip_seconds = 0;  ///< how long it has been there
  double seconds = 0;      ///< since the last frame
  bool wants = false;
  std::optional<ImguiCanvas> below, above;  ///< the window's and the sheet's
};

[[nodiscard]] constexpr bool is_widget(ItemKind kind) {
  return kind != ItemKind::Text && kind != ItemKind::Sheet && kind != ItemKind::Panel && kind != ItemKind::Scroll;
}

/// Whether Enter and Space are text rather than a click.
[[nodiscard]] constexpr bool is_typing_kind(ItemKind kind) { return kind == ItemKind::Field; }

/// How far the pointer may stray in a click, in pixels.
inline constexpr double click_slack = 5;

/// Draws the ring round the widget that has the focus.
void draw_focus_ring(figures::Canvas& canvas, const Theme& theme, const Rect& rect, double radius);

}  // namespace fw::ui
