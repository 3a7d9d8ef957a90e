#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "ui/imgui_canvas.hpp"

namespace fw::ui {

/// The constant identity of a widget, which no wording, place or language changes:
/// `inline constexpr WidgetId count_next{"count_next"};`, and of a list's items `ledger_row.at(3)`.
struct WidgetId {
  std::string_view name;  ///< outlives the program: a literal
  std::uint32_t item = 0;
  [[nodiscard]] constexpr WidgetId at(std::size_t index) const { return {name, static_cast<std::uint32_t>(index)}; }
  friend constexpr bool operator==(const WidgetId&, const WidgetId&) = default;
};

enum class ItemKind { Text, Button, Tab, RailItem, Slider, Field, Toggle, Option, Region, Scroll, Sheet, Panel };

/// What was put on the screen in a frame, for tests of layout and for reading out.
struct ItemRecord {
  WidgetId id{};  ///< no name for texts and panels
  ItemKind kind = ItemKind::Text;
  Rect rect{};  ///< the whole widget; of a text, the box round what is drawn
  Rect clip{};  ///< what of the screen it could be drawn in
  std::string text;
  Vec2 text_size{};  ///< as drawn
  Rect text_box{};   ///< where the text may be
  int layer = 0;     ///< 0 the window, 1 a sheet over it
  bool enabled = true;
  bool focused = false;
  bool current = false;  ///< the chosen tab, the checked box
  double share = 0;      ///< of a slider: how far it is, from 0 to 1
  bool scrolls = false;  ///< inside a scroll area
  bool cut = false;      ///< the text did not fit and ends in an ellipsis
};

enum class TextSize { Small, Label, Heading };

struct TextOptions {
  TextSize size = TextSize::Label;
  bool bold = false;
  HAlign h = HAlign::Left;
  VAlign v = VAlign::Middle;  ///< of the whole, when it is wrapped
  bool wrap = false;
  std::optional<Color> color{};  ///< the theme's ink otherwise
  /// Shrinks the text to fit its box, down to the smallest size of the theme; then it is cut off with "…".
  bool shrink = false;
};

/// Own icons, drawn with lines.
enum class Icon {
  None,
  Fold,
  Unfold,
  Play,
  Pause,
  Stop,
  Previous,
  Next,
  TurnLeft,
  TurnRight,
  TurnUp,
  TurnDown,
  ZoomIn,
  ZoomOut,
  Fit,
  Undo,
  Redo,
  Shelf,
  Paper,
  Slate,
  BrightRoom,
  FullScreen,
  Close,
  Eye,
  EyeClosed,
  NumberCircle,
  Letters,
  Grid,
  Plus,
  Minus,
  Check,
  Cross,
  Rail,
  Flip,
  Blank,
  Motion,
  Measures,
  Present,
  Open,
  Save,
  Printer,
  Help,
  OneByOne,
  Together,
  Gap,
  Board,
  Origin
};

enum class ButtonLook {
  Primary,  ///< filled with ink: one on a screen
  Outline,  ///< a rim round it
  Plain     ///< text alone, a fill under the pointer
};
struct ButtonOptions {
  ButtonLook look = ButtonLook::Outline;
  Icon icon = Icon::None;
  bool enabled = true;
  bool current = false;  ///< of a button that stays down: filled
  TextSize size = TextSize::Label;
  HAlign h = HAlign::Center;
  bool wrap = false;    ///< a long text takes several lines, from the left
  bool locked = false;  ///< of one that is not enabled: its text is still to be read, and keeps its contrast
};

/// What the user did to an area: a row of the ledger, a picture on the shelf, the bench.
struct Interaction {
  bool hovered = false;
  bool focused = false;
  bool went_down = false;  ///< the main button was pressed here in this frame
  bool held = false;       ///< and is still down
  bool released = false;   ///< let go in this frame, anywhere
  bool clicked = false;    ///< pressed and let go here without moving, or Enter or Space with the focus
  bool by_key = false;     ///< clicked so by a key
  bool double_clicked = false;
  bool dragging = false;       ///< held and moved farther than a click may
  Vec2 pointer{};              ///< where the pointer is, also outside
  Vec2 press{};                ///< where it was pressed
  Vec2 moved{};                ///< by how much since the last frame, while held
  bool second_button = false;  ///< held with the right or middle button
  double wheel = 0;            ///< notches turned over it, up is positive
};

/// A part of a list's content, from its top.
struct Span {
  double top = 0, height = 0;
  friend bool operator==(const Span&, const Span&) = default;
};

struct SliderRange {
  double low = 0, high = 1;
  double step = 0.05;  ///< of an arrow key; with Shift five of them; Home and End go to the ends
};
struct SliderEvent {
  bool changed = false;
  double value = 0;
  bool began = false;  ///< a drag began in this frame
  bool ended = false;  ///< a drag ended, or a key was pressed
};

struct FieldOptions {
  bool enabled = true;
  bool bad = false;         ///< drawn as at fault; the reason stands beside it as text
  std::string_view hint{};  ///< shown while empty
  TextSize size = TextSize::Label;
  std::size_t longest = 60;  ///< characters
  HAlign h = HAlign::Left;
  bool answers = false;  ///< the screen's answer field: the keyboard is in it unless Tab leads elsewhere
  std::uint64_t of = 0;  ///< what the text belongs to: what was typed for another is dropped
};
struct FieldEvent {
  bool changed = false;   ///< a character came or went
  bool entered = false;   ///< Enter was pressed
  bool left = false;      ///< the focus went away after a change
  bool canceled = false;  ///< Escape: the text is the given one again
  int stepped = 0;        ///< up or down arrow: 1 or -1
  std::string text;       ///< as it stands in the field
};

}  // namespace fw::ui
