#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "base/utf8.hpp"
#include "figures/typeset.hpp"
#include "ui/core.hpp"
#include "ui/icons.hpp"

namespace fw::ui {
namespace {

std::size_t before(const std::string& text, std::size_t at) {
  while (at > 0 && !starts_character(text[--at])) {
  }
  return at;
}

std::size_t after(const std::string& text, std::size_t at) {
  if (at < text.size()) ++at;
  while (at < text.size() && !starts_character(text[at])) ++at;
  return at;
}

std::size_t characters(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), starts_character));
}

std::string utf8(unsigned character) {
  const auto byte = [](unsigned value) { return static_cast<char>(static_cast<unsigned char>(value)); };
  if (character < 0x80) return {byte(character)};
  if (character < 0x800) return {byte(0xC0U | (character >> 6U)), byte(0x80U | (character & 0x3FU))};
  return {byte(0xE0U | (character >> 12U)), byte(0x80U | ((character >> 6U) & 0x3FU)),
          byte(0x80U | (character & 0x3FU))};
}

/// An open field's text being changed.
class Editor {
 public:
  Editor(Ui::Core::Open& open, std::size_t longest) : open_(open), longest_(longest) {}

  [[nodiscard]] std::pair<std::size_t, std::size_t> selection() const { return std::minmax(open_.caret, open_.anchor); }
  [[nodiscard]] std::string selected() const {
    const auto [from, to] = selection();
    return open_.text.substr(from, to - from);
  }
  void move_to(std::size_t at, bool selecting) {
    open_.caret = at;
    if (!selecting) open_.anchor = at;
  }
  void select_all() {
    open_.anchor = 0;
    open_.caret = open_.text.size();
  }
  void insert(const std::string& added) {
    const auto [from, to] = selection();
    std::string text = open_.text;
    text.replace(from, to - from, added);
    if (characters(text) > longest_ || !can_show(added)) return;
    set(std::move(text), from + added.size());
  }
  void erase(bool forward) {
    auto [from, to] = selection();
    if (from == to) (forward ? to : from) = forward ? after(open_.text, to) : before(open_.text, from);
    std::string text = open_.text;
    text.erase(from, to - from);
    if (text != open_.text) set(std::move(text), from);
  }
  void set(std::string text, std::size_t caret) {
    open_.text = std::move(text);
    open_.caret = open_.anchor = caret;
    open_.changed = true;
    open_.entered = false;
    touched = true;
  }
  bool touched = false;

 private:
  Ui::Core::Open& open_;
  std::size_t longest_;
};

void move_by_keys(Ui::Core& core, Editor& editor) {
  const Ui::Core::Open& open = core.open;
  const bool selecting = core.modifiers.shift;
  const auto [from, to] = editor.selection();
  const auto taken = [&core](Key key, bool repeats) { return core.take(key, repeats, KeyTaker::Field); };
  if (taken(Key::Left, true)) {
    editor.move_to(from != to && !selecting ? from : before(open.text, open.caret), selecting);
  }
  if (taken(Key::Right, true)) {
    editor.move_to(from != to && !selecting ? to : after(open.text, open.caret), selecting);
  }
  if (taken(Key::Home, false)) editor.move_to(0, selecting);
  if (taken(Key::End, false)) editor.move_to(open.text.size(), selecting);
  if (taken(Key::Backspace, true)) editor.erase(false);
  if (taken(Key::Delete, true)) editor.erase(true);
}

void use_clipboard(Ui::Core& core, Editor& editor) {
  if (!core.modifiers.control || core.modifiers.alt) return;
  const auto held = [&core](Key key) {
    if (core.is_used(key) || !core.pressed(key)) return false;
    core.use(key);
    return true;
  };
  if (held(Key::A)) editor.select_all();
  if (held(Key::C) && !editor.selected().empty()) ImGui::SetClipboardText(editor.selected().c_str());
  if (held(Key::X) && !editor.selected().empty()) {
    ImGui::SetClipboardText(editor.selected().c_str());
    editor.erase(true);
  }
  if (held(Key::V)) {
    if (const char* pasted = ImGui::GetClipboardText()) {
      std::string line = pasted;
      line.erase(std::remove_if(line.begin(), line.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }),
                 line.end());
      editor.insert(line);
    }
  }
  if (held(Key::Z)) editor.set(core.open.given, core.open.given.size());
}

}  // namespace

void Ui::open_field(WidgetId id, std::string_view value) {
  if (core_->open.id != WidgetId{} && core_->open.id != id) close_field();
  core_->open = {};
  core_->open.id = id;
  core_->open.text = core_->open.given = std::string(value);
  core_->open.caret = value.size();
}

void Ui::take_field(WidgetId id) {
  Core::Open& open = core_->open;
  if (open.id != id) return;
  open.changed = false;
  open.entered = true;
  open.given = open.text;
  open.anchor = 0;  // a second try replaces the first one
  open.caret = open.text.size();
  core_->wants = true;
}

std::string_view Ui::field_text(WidgetId id) const {
  return core_->open.id == id ? std::string_view(core_->open.text) : std::string_view();
}

void Ui::close_field() {
  if (core_->open.changed) core_->closed = core_->open;
  core_->open = {};
}

void Ui::edit_field(const FieldOptions& options, FieldEvent& event) {
  Core& c = *core_;
  Editor editor(c.open, options.longest);
  if (!c.modifiers.control && !c.modifiers.alt) {
    for (const unsigned character : c.typed) {
      if (character >= 0x20 && character != 0x7F && character < 0x10000) editor.insert(utf8(character));
    }
  }
  move_by_keys(c, editor);
  use_clipboard(c, editor);
  event.changed = editor.touched;
  const auto taken = [&c](Key key, bool repeats) { return c.take(key, repeats, KeyTaker::Field); };
  if (taken(Key::Up, true)) event.stepped = 1;
  if (taken(Key::Down, true)) event.stepped = -1;
  if (taken(Key::Enter, false) || taken(Key::PadEnter, false)) {
    event.entered = true;
    take_field(c.open.id);
    if (!options.answers) c.open.anchor = c.open.caret;
  }
  const bool has_more_to_cancel = c.open.changed;  // else Esc closes what is open
  if (has_more_to_cancel && c.modifiers == no_modifiers && !c.is_used(Key::Escape) && c.pressed(Key::Escape)) {
    c.use(Key::Escape);
    event.canceled = true;
    c.open.text = c.open.given;
    c.open.caret = c.open.anchor = c.open.text.size();
    c.open.changed = false;
    if (!options.answers) c.focus.reset();
    c.wants = true;
  }
}

void Ui::point_in_field(const Rect& inside, const TextStyle& style, bool went_down, bool held) {
  Core::Open& open = core_->open;
  if (!went_down && !held) return;
  if (core_->pointer.double_clicked) {
    open.anchor = 0;
    open.caret = open.text.size();
    return;
  }
  if (!went_down && !core_->moved_far) return;
  const double x = core_->pointer.at.x - inside.x + open.shift;
  std::size_t nearest = 0;
  double least = 1e9;
  for (std::size_t at = 0;; at = after(open.text, at)) {
    const double distance = std::abs(canvas_->text_size(std::string_view(open.text).substr(0, at), style).x - x);
    if (distance < least) {
      least = distance;
      nearest = at;
    }
    if (at == open.text.size()) break;
  }
  open.caret = nearest;
  if (went_down) open.anchor = nearest;
}

FieldEvent Ui::field(WidgetId id, std::string_view text, std::string_view value, const Rect& rect,
                     const FieldOptions& options) {
  Core& c = *core_;
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Field;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = rect;
  record.enabled = options.enabled;
  const bool was_open = c.open.id == id;
  const Core::Behavior b = c.behave(std::move(record), Core::Stop::Tab);
  if (options.answers && options.enabled) c.home = Core::Offer{id, options.of};

  FieldEvent event;
  if (c.closed && c.closed->id == id) {
    event.left = true;
    event.text = c.closed->text;
    c.closed.reset();
  }
  if (was_open && c.open.of != options.of) {
    open_field(id, value);
  } else if (b.focused && !was_open) {
    open_field(id, value);
    if (b.ring || !options.answers) c.open.anchor = 0;  // typing replaces it all; a second click puts the caret
  }
  c.open.of = c.open.id == id ? options.of : c.open.of;
  const bool is_open = c.open.id == id && (b.focused || options.answers);
  if (is_open) {
    // The state may have put it in another form, or undone it. What it was just told it shows from the next frame on.
    if (!event.left && !c.open.changed && c.open.given != value) {
      const bool was_entered = c.open.entered;
      open_field(id, value);
      c.open.of = options.of;
      c.open.entered = was_entered;
    }
    const TextStyle drawn = style(options.size);
    if (was_open || options.answers) {
      point_in_field(rect.inset(em(options.size) * 0.35, 0), drawn, b.went_down, b.held);
    }
    if (b.focused) edit_field(options, event);
    if (!event.left) event.text = c.open.text;
  } else if (!event.left) {
    event.text = std::string(value);
  }
  draw_field(rect, value, options, is_open, b.focused && c.focus == id, b.hovered);
  if (event.canceled && !options.answers) c.open = {};
  return event;
}

void Ui::draw_field(const Rect& rect, std::string_view value, const FieldOptions& options, bool is_open, bool focused,
                    bool hovered) {
  const Color ink = options.enabled ? theme_->ink : theme_->ink.with_opacity(0.4F);
  const Color rim = options.bad ? theme_->bad : ink;
  const double width = sizes().rim * (options.bad || hovered || focused ? 1.6 : 1.0);
  canvas_->rounded(rect, sizes().radius * 0.6, theme_->panel, std::nullopt);
  canvas_->rounded(rect.inset(width / 2), sizes().radius * 0.6, std::nullopt,
                   Stroke{rim, width, options.bad ? width * 2.5 : 0});
  TextStyle drawn = style(options.size);
  drawn.color = ink;
  const Rect inside = rect.inset(em(options.size) * 0.35, 0);
  canvas_->push_clip(inside.inset(-2, 0));
  const std::string_view stands = is_open ? std::string_view(core_->open.text) : value;
  if (stands.empty()) {
    TextStyle quiet = drawn;
    quiet.color = theme_->quiet_ink;
    draw_text_line(options.hint, inside, quiet, options.h, VAlign::Middle);
  } else if (!focused) {
    // All of a number is shown, however long: one that is cut off reads as another.
    const double width = figures::typeset_size(*canvas_, stands, drawn).x;
    drawn.size *= width > inside.w ? inside.w / width : 1;
    draw_text_line(stands, inside, drawn, options.h, VAlign::Middle);
  }
  if (focused) {
    Core::Open& open = core_->open;
    const auto x_of = [&](std::size_t at) {
      return canvas_->text_size(std::string_view(open.text).substr(0, at), drawn).x;
    };
    // The caret stays in sight of a text that is longer than its field.
    open.shift = std::clamp(open.shift, std::max(0.0, x_of(open.caret) - inside.w),
                            std::max(0.0, std::min(x_of(open.caret), x_of(open.text.size()) - inside.w)));
    const double left = inside.x - open.shift;
    const auto [from, to] = std::minmax(open.caret, open.anchor);
    const double top = rect.center().y - drawn.size * 0.62;
    const double height = drawn.size * 1.24;
    canvas_->text({left, rect.center().y}, HAlign::Left, VAlign::Middle, open.text, drawn);
    if (from != to) {
      const Rect mark{left + x_of(from), top, x_of(to) - x_of(from), height};
      canvas_->rounded(mark, 0, theme_->selection, std::nullopt);
      TextStyle selected = drawn;
      selected.color = theme_->on_selection;
      canvas_->text({mark.x, rect.center().y}, HAlign::Left, VAlign::Middle, open.text.substr(from, to - from),
                    selected);
    }
    const double caret = left + x_of(open.caret);
    canvas_->line({caret, top}, {caret, top + height}, {theme_->ink, sizes().rim});
  }
  canvas_->pop_clip();
  if (focused) ring(rect, sizes().radius * 0.6);
}

FieldEvent Ui::stepper(WidgetId id, std::string_view text, std::string_view value, const Rect& rect,
                       const FieldOptions& options) {
  const double side = std::max(sizes().target, std::min(rect.h, rect.w * 0.25));
  const double gap = sizes().space * 0.6;
  const auto side_options = ButtonOptions{.look = ButtonLook::Outline, .enabled = options.enabled};
  const bool less = icon_button(id.at(1), Icon::Minus, "less", {rect.x, rect.y, side, rect.h}, side_options);
  FieldEvent event = field(id, text, value, {rect.x + side + gap, rect.y, rect.w - 2 * (side + gap), rect.h}, options);
  const bool more =
      icon_button(id.at(2), Icon::Plus, "more", {rect.right() - side, rect.y, side, rect.h}, side_options);
  if (less) event.stepped = -1;
  if (more) event.stepped = 1;
  return event;
}

}  // namespace fw::ui
