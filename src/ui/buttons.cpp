#include <algorithm>

#include "figures/typeset.hpp"
#include "ui/core.hpp"
#include "ui/icons.hpp"

namespace fw::ui {
namespace {

struct Colors {
  std::optional<Color> fill;
  Color front{};
  Color back{};
  std::optional<Stroke> rim;
};

Colors colors_of(const Theme& theme, const ButtonOptions& options, bool hovered) {
  const bool filled = options.look == ButtonLook::Primary || options.current;
  Colors c{std::nullopt, theme.ink, theme.ground, std::nullopt};
  const Stroke rim{theme.ink, theme.sizes.rim};
  if (!options.enabled) {
    c.front = options.locked ? theme.quiet_ink : theme.ink.with_opacity(theme::disabled_opacity);
    if (options.look != ButtonLook::Plain) c.rim = Stroke{c.front, theme.sizes.rim, theme.sizes.rim * 2.5};
    return c;
  }
  if (filled) {
    c.fill = theme.primary;
    c.front = theme.on_primary;
    c.back = theme.primary;
    // Under the pointer the main button shows a rim inside; its text keeps its contrast.
    if (hovered) c.rim = Stroke{theme.on_primary, theme.sizes.rim};
    return c;
  }
  if (hovered) {
    c.fill = theme.hover;
    c.back = theme.hover;
  }
  if (options.look == ButtonLook::Outline) c.rim = rim;
  // A theme of two colors alone cannot show the pointer by a fill.
  const bool fill_shows = contrast(theme.hover, theme.panel) > 1.05;
  if (hovered && !fill_shows) c.rim = Stroke{theme.ink, theme.sizes.rim * (c.rim ? 2 : 1)};
  return c;
}

/// Where the text of a button may stand.
Rect text_room(const Rect& rect, double em, bool has_icon) {
  const Rect inside = rect.inset(std::min(em * 0.5, rect.w * 0.1), 0);
  const double icon_room = has_icon ? em * 1.45 : 0;
  return {inside.x + icon_room, inside.y, inside.w - icon_room, inside.h};
}

}  // namespace

Color button_ink(const Theme& theme, const ButtonOptions& options) { return colors_of(theme, options, false).front; }

void draw_focus_ring(figures::Canvas& canvas, const Theme& theme, const Rect& rect, double radius) {
  const double out = theme.sizes.focus_gap + theme.sizes.focus_ring / 2;
  canvas.rounded(rect.inset(-out), radius + out, std::nullopt, Stroke{theme.focus, theme.sizes.focus_ring});
}

void Ui::ring(const Rect& rect, double radius) { draw_focus_ring(*canvas_, *theme_, rect, radius); }

double Ui::button_width(std::string_view text, const ButtonOptions& options) const {
  const double pad = em(options.size) * 0.7;
  double width = 2 * pad;
  if (!text.empty()) width += text_width(text, options.size, false);
  if (options.icon != Icon::None) width += em(options.size) * (text.empty() ? 1.0 : 1.45);
  return width;
}

double Ui::button_height(std::string_view text, double width, const ButtonOptions& options) const {
  const Rect room = text_room({0, 0, width, 0}, em(options.size), options.icon != Icon::None);
  const std::vector<std::string> lines = figures::wrapped(*canvas_, text, style(options.size), room.w);
  return std::max(sizes().field, static_cast<double>(lines.size()) * line(options.size) + sizes().space);
}

bool Ui::button(WidgetId id, std::string_view text, const Rect& rect, const ButtonOptions& options) {
  const Rect text_box = text_room(rect, em(options.size), options.icon != Icon::None);
  const double icon_room = options.icon == Icon::None ? 0 : em(options.size) * 1.45;
  const Rect inside{text_box.x - icon_room, text_box.y, text_box.w + icon_room, text_box.h};
  TextStyle drawn = style(options.size);
  std::vector<std::string> lines{std::string(text)};
  if (options.wrap) lines = figures::wrapped(*canvas_, text, drawn, text_box.w);
  double widest = 0;
  for (const std::string& one : lines) widest = std::max(widest, figures::typeset_size(*canvas_, one, drawn).x);
  if (widest > text_box.w) {
    drawn.size = std::max(sizes().small, drawn.size * text_box.w / widest);
    widest = 0;
    for (const std::string& one : lines) widest = std::max(widest, figures::typeset_size(*canvas_, one, drawn).x);
  }
  const double step = drawn.size * figures::line_height;

  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Button;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = text_box;
  record.text_size = {widest, step * static_cast<double>(lines.size())};
  record.enabled = options.enabled;
  record.current = options.current;
  const double text_width = widest;
  const Core::Behavior b = core_->behave(std::move(record), Core::Stop::Tab);

  const Colors colors = colors_of(*theme_, options, b.hovered);
  const double radius = sizes().radius;
  canvas_->rounded(rect, radius, colors.fill, std::nullopt);
  if (colors.rim) canvas_->rounded(rect.inset(colors.rim->width / 2), radius, std::nullopt, colors.rim);
  drawn.color = colors.front;
  const double whole = text_width + icon_room;
  const double x = options.h == HAlign::Left     ? inside.x
                   : options.h == HAlign::Center ? inside.center().x - whole / 2
                                                 : inside.right() - whole;
  if (options.icon != Icon::None) {
    const double side = em(options.size);
    draw_icon(*canvas_, options.icon, {x, rect.center().y - side / 2, side, side}, colors.front, colors.back,
              sizes().rim);
  }
  double y = rect.center().y - step * static_cast<double>(lines.size()) / 2;
  for (const std::string& one : lines) {
    draw_text_line(one, {x + icon_room, y, text_width, step}, drawn, HAlign::Left, VAlign::Middle);
    y += step;
  }
  if (b.ring) ring(rect, radius);
  return b.clicked;
}

bool Ui::icon_button(WidgetId id, Icon icon, std::string_view text, const Rect& rect, const ButtonOptions& options) {
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Button;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = rect;  // the name is not written on it
  record.enabled = options.enabled;
  record.current = options.current;
  const Core::Behavior b = core_->behave(std::move(record), Core::Stop::Tab);

  const Colors colors = colors_of(*theme_, options, b.hovered);
  const double radius = sizes().radius;
  if (colors.fill) canvas_->rounded(rect, radius, colors.fill, std::nullopt);
  if (colors.rim) canvas_->rounded(rect.inset(colors.rim->width / 2), radius, std::nullopt, colors.rim);
  const double side = std::min(rect.w, rect.h) * 0.68;
  draw_icon(*canvas_, icon, rect.middle(side, side), colors.front, colors.back, sizes().edge * 0.85);
  if (b.ring) ring(rect, radius);
  if ((b.hovered || b.ring) && !b.held) core_->tip = {std::string(text), rect};
  return b.clicked;
}

void Ui::draw_tip() {
  const Core::Tip& tip = *core_->tip;
  const bool is_new = !(core_->tip_before == tip.beside);
  core_->tip_before = tip.beside;
  core_->tip_seconds = is_new ? 0 : core_->tip_seconds + core_->seconds;
  if (core_->tip_seconds >= tip_shown_seconds) return;
  figures::Canvas& canvas = *core_->above;
  const TextStyle drawn{sizes().small, theme_->on_primary};
  const Vec2 size = figures::typeset_size(canvas, tip.text, drawn);
  const double pad = sizes().space;
  Rect box{tip.beside.center().x - size.x / 2 - pad, tip.beside.y - size.y - 2.5 * pad, size.x + 2 * pad, size.y + pad};
  if (box.y < 0) box.y = tip.beside.bottom() + 1.5 * pad;
  box.x = std::clamp(box.x, pad, std::max(pad, window_.right() - pad - box.w));
  canvas.rounded(box, sizes().radius, theme_->primary, Stroke{theme_->on_primary, sizes().rule});
  figures::typeset(canvas, box.center(), HAlign::Center, VAlign::Middle, tip.text, drawn);
}

Interaction Ui::region(WidgetId id, std::string_view text, const Rect& rect, RegionFocus focus, bool enabled) {
  Core& c = *core_;
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Region;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = rect;
  record.enabled = enabled;
  const Core::Behavior b = c.behave(std::move(record), focus == RegionFocus::None ? Core::Stop::None : Core::Stop::Tab);
  Interaction i;
  i.hovered = b.hovered;
  i.focused = b.focused;
  i.went_down = b.went_down;
  i.held = b.held;
  i.released = b.released;
  i.clicked = b.clicked && (b.by_key || !c.moved_far);
  i.by_key = b.by_key;
  i.double_clicked = b.hovered && c.pointer.double_clicked;
  i.dragging = b.held && c.moved_far;
  i.pointer = c.pointer.at;
  i.press = c.press;
  i.moved = c.pointer.at - c.pointer.before;
  if (b.hovered && c.pointer.second_went_down) c.active_second = id;
  if (!c.pointer.second_down) c.active_second.reset();
  i.second_button = c.active_second == id;
  i.wheel = b.hovered ? c.pointer.wheel : 0;
  if (b.ring) ring(rect.inset(sizes().focus_ring + sizes().focus_gap), 0);
  return i;
}

}  // namespace fw::ui
