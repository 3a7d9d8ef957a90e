#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "figures/face_style.hpp"
#include "theme/theme.hpp"
#include "ui/fonts.hpp"
#include "ui/imgui_canvas.hpp"
#include "ui/items.hpp"
#include "ui/key_owner.hpp"
#include "ui/keys.hpp"

namespace fw::ui {

using theme::Sizes;
using theme::Theme;

/// How long a button's name stays beside it with no input.
inline constexpr double tip_shown_seconds = 3;

/// The color of a button's text, on the panel or on the button's own fill.
[[nodiscard]] Color button_ink(const Theme& theme, const ButtonOptions& options);

/// The widgets: the only place that asks the toolkit for input and draws what can be clicked.
///
/// A frame is: NewFrame of the toolkit; ui.begin(theme, fonts); widgets in reading order; ui.end(); Render.
/// Every widget is told its rectangle (see layout.hpp for columns and rows) and, when it can be used, a constant id.
/// It holds no state of the program, only what passes: focus, the open text field, how far a list is scrolled.
///
/// Keyboard: Tab and Shift+Tab walk the enabled widgets in the order of the calls; Enter and Space use the
/// focused one; arrows move within tabs, rail items, options and sliders. What a widget has used is not a shortcut.
class Ui {
 public:
  struct Core;  ///< input, focus and records, for the files of app/ui: core.hpp
  Ui();
  ~Ui();
  Ui(const Ui&) = delete;
  Ui& operator=(const Ui&) = delete;

  /// Requires: an open frame of the toolkit, fonts prepared; both live until end().
  void begin(const Theme& theme, const Fonts& fonts);
  void end();

  [[nodiscard]] const Theme& theme() const { return *theme_; }
  [[nodiscard]] const Sizes& sizes() const { return theme_->sizes; }
  [[nodiscard]] Rect window() const { return window_; }
  /// Where panels draw figures; the right one of the window or of the open sheet.
  [[nodiscard]] figures::Canvas& canvas() { return *canvas_; }

  // --- text ---------------------------------------------------------------------------------------------
  void text(std::string_view text, const Rect& rect, const TextOptions& options = {});
  [[nodiscard]] TextStyle style(TextSize size, bool bold = false) const;
  [[nodiscard]] double em(TextSize size) const;
  [[nodiscard]] double line(TextSize size) const;  ///< height of a line of text
  [[nodiscard]] double text_width(std::string_view text, TextSize size = TextSize::Label, bool bold = false) const;
  [[nodiscard]] double wrapped_height(std::string_view text, double width, TextSize size = TextSize::Label,
                                      bool bold = false) const;
  /// A number whose decimal point stands at `point_x`: "49" ends there, ".5" begins there.
  void number_at_point(std::string_view whole, std::string_view fraction, double point_x, const Rect& rect,
                       const TextOptions& options = {});

  // --- shapes -------------------------------------------------------------------------------------------
  void panel(const Rect& rect, std::optional<Color> fill = {});            ///< a sheet's ground
  void rule_across(double x, double y, double width, bool heavy = false);  ///< a horizontal line
  void rule_down(double x, double y, double height);                       ///< a vertical line
  void dotted_line(double x, double y, double width);
  void dashed_box(const Rect& rect, std::string_view text = {});  ///< a face still to come

  // --- widgets ------------------------------------------------------------------------------------------
  [[nodiscard]] bool button(WidgetId id, std::string_view text, const Rect& rect, const ButtonOptions& options = {});
  /// `text` is its name, shown in a small sheet beside it under the pointer and with the focus.
  [[nodiscard]] bool icon_button(WidgetId id, Icon icon, std::string_view text, const Rect& rect,
                                 const ButtonOptions& options = {.look = ButtonLook::Plain});
  /// Width that a button needs for its text and icon.
  [[nodiscard]] double button_width(std::string_view text, const ButtonOptions& options = {}) const;
  /// Height that a button of this width needs for a text of several lines.
  [[nodiscard]] double button_height(std::string_view text, double width, const ButtonOptions& options) const;

  /// A row of words, the current one underlined; item i has the id `id.at(i)`. Returns the one that was chosen.
  [[nodiscard]] std::optional<std::size_t> tabs(WidgetId id, const std::vector<std::string>& titles,
                                                std::size_t current, const Rect& rect, HAlign h = HAlign::Right);
  [[nodiscard]] double tabs_width(const std::vector<std::string>& titles) const;
  /// A round item of the rail; `done` adds a small check mark.
  [[nodiscard]] bool rail_item(WidgetId id, std::string_view number, std::string_view title, bool current, bool done,
                               const Rect& rect);
  [[nodiscard]] SliderEvent slider(WidgetId id, std::string_view text, double value, const SliderRange& range,
                                   const Rect& rect, bool enabled = true);
  /// `value` is what the state holds; while the field has the focus it shows what is being typed.
  [[nodiscard]] FieldEvent field(WidgetId id, std::string_view text, std::string_view value, const Rect& rect,
                                 const FieldOptions& options = {});
  /// A field between a minus and a plus button (`id.at(1)`, `id.at(2)`; the field is `id`).
  [[nodiscard]] FieldEvent stepper(WidgetId id, std::string_view text, std::string_view value, const Rect& rect,
                                   const FieldOptions& options = {});
  /// A box with a check mark and its text. Returns whether it was switched.
  [[nodiscard]] bool checkbox(WidgetId id, std::string_view text, bool on, const Rect& rect, bool enabled = true);
  /// A switch with its text to the left of it. Returns whether it was switched.
  [[nodiscard]] bool toggle(WidgetId id, std::string_view text, bool on, const Rect& rect, bool enabled = true);
  /// A list of which one can be chosen, item i is `id.at(i)`; rows share the height. Returns the one that was chosen.
  [[nodiscard]] std::optional<std::size_t> options(WidgetId id, const std::vector<std::string>& titles,
                                                   std::optional<std::size_t> current, const Rect& rect);
  /// An area that is drawn by the caller and can be clicked, dragged and, when `focusable`, reached by Tab.
  enum class RegionFocus { None, Ring };
  [[nodiscard]] Interaction region(WidgetId id, std::string_view text, const Rect& rect,
                                   RegionFocus focus = RegionFocus::Ring, bool enabled = true);
  /// The square of a face in the ledger; not a widget.
  void face_chip(const figures::FaceStyle& style, std::string_view number, const Rect& rect);

  // --- areas --------------------------------------------------------------------------------------------
  /// A list that may be longer than its rectangle. Returns where its content goes: shifted by how far it is scrolled,
  /// narrower by the bar when one is needed. Close with end_scroll(). Not nested.
  /// `shown`: a part of the content that is scrolled to whenever it is another one, so that what is new can be seen.
  [[nodiscard]] Rect begin_scroll(WidgetId id, const Rect& rect, double content_height, std::optional<Span> shown = {});
  void end_scroll();
  /// A sheet over everything else, which nothing below can be used through. Close with end_sheet(). Not nested.
  void begin_sheet(WidgetId id, std::string_view text, const Rect& rect);
  void end_sheet();

  // --- keyboard and focus -------------------------------------------------------------------------------
  /// What the panels of this frame do with keys, told before the widgets; see key_owner.hpp.
  void keys_are(KeyScene scene);
  /// Whether this key was pressed with just these modifiers, no widget has used it, and it is this taker's. Call it
  /// after the widgets. Arrows, plus and minus repeat while they are held, other keys do not.
  [[nodiscard]] bool shortcut(Key key, Modifiers modifiers = no_modifiers, KeyTaker taker = KeyTaker::Command);
  [[nodiscard]] bool is_typing() const;  ///< a text field has the focus
  [[nodiscard]] std::optional<WidgetId> focus() const;
  void set_focus(WidgetId id);  ///< from the next frame on
  /// Told in each frame in which it holds: when it begins to, the widget takes the focus. `of`: for what it stands
  /// there.
  void offer_focus(WidgetId id, std::uint64_t of);
  /// What stands in the field was taken otherwise than by Enter.
  void take_field(WidgetId id);
  void clear_focus();
  /// Whether something changed in this frame that shows only in the next one.
  [[nodiscard]] bool wants_frame() const;
  /// After how many seconds something will change though nothing is done: the name of a button goes away again.
  [[nodiscard]] std::optional<double> wakes_in() const;
  /// Whether the pointer is over something that this frame's widgets use (so that the bench leaves it alone).
  [[nodiscard]] bool pointer_taken() const;

  // --- for tests and for reading out --------------------------------------------------------------------
  /// Everything of the last finished frame, in the order drawn.
  [[nodiscard]] const std::vector<ItemRecord>& items() const;
  [[nodiscard]] const ItemRecord* item(WidgetId id) const;
  /// The text being typed into the field; empty if the field is not open.
  [[nodiscard]] std::string_view field_text(WidgetId id) const;

 private:
  void close_field();
  void open_field(WidgetId id, std::string_view value);
  void edit_field(const FieldOptions& options, FieldEvent& event);
  void point_in_field(const Rect& inside, const TextStyle& style, bool went_down, bool held);
  void draw_field(const Rect& rect, std::string_view value, const FieldOptions& options, bool is_open, bool focused,
                  bool hovered);
  [[nodiscard]] std::optional<double> slider_key(double value, const SliderRange& range);
  void draw_tip();
  void scroll_bar(WidgetId id, const Rect& track, double content_height, double& offset);
  void draw_text_line(std::string_view text, const Rect& box, const TextStyle& style, HAlign h, VAlign v);
  void ring(const Rect& rect, double radius);

  std::unique_ptr<Core> core_;
  const Theme* theme_ = nullptr;
  const Fonts* fonts_ = nullptr;
  figures::Canvas* canvas_ = nullptr;
  Rect window_{};
};

}  // namespace fw::ui
