#include <algorithm>

#include "figures/typeset.hpp"
#include "ui/core.hpp"
#include "ui/icons.hpp"

namespace fw::ui {
namespace {

/// The fill under a plain widget that the pointer is over; a rim where the theme has no fill for it.
void draw_hover(figures::Canvas& canvas, const Theme& theme, const Rect& rect) {
  const bool fill_shows = contrast(theme.hover, theme.panel) > 1.05;
  canvas.rounded(rect, theme.sizes.radius, fill_shows ? std::optional(theme.hover) : std::nullopt,
                 fill_shows ? std::nullopt : std::optional(Stroke{theme.ink, theme.sizes.rule}));
}

/// The style, smaller where the text needs that to fit `width`, but never under `least`.
TextStyle fitting(const figures::Canvas& canvas, TextStyle style, std::string_view text, double width, double least) {
  const double wide = figures::typeset_size(canvas, text, style).x;
  if (wide > width) style.size = std::max(least, style.size * width / wide);
  return style;
}

ItemRecord recorded(WidgetId id, ItemKind kind, const Rect& rect, std::string_view text, const Rect& text_box,
                    Vec2 text_size) {
  ItemRecord record;
  record.id = id;
  record.kind = kind;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = text_box;
  record.text_size = text_size;
  return record;
}

}  // namespace

double Ui::tabs_width(const std::vector<std::string>& titles) const {
  double width = 0;
  for (const std::string& title : titles) width += text_width(title, TextSize::Label, true);
  return width + 4 * sizes().space * static_cast<double>(titles.size());
}

std::optional<std::size_t> Ui::tabs(WidgetId id, const std::vector<std::string>& titles, std::size_t current,
                                    const Rect& rect, HAlign h) {
  TextStyle drawn = style(TextSize::Label);
  const double count = static_cast<double>(titles.size());
  const double words = tabs_width(titles) - 4 * sizes().space * count;
  // Where there is little room the words move together first, and then become smaller.
  const double pad = std::clamp((rect.w - words * sizes().small / sizes().label) / (2 * count), sizes().space * 0.5,
                                2 * sizes().space);
  drawn.size = std::clamp(drawn.size * (rect.w - 2 * pad * count) / words, sizes().small, sizes().label);
  std::vector<double> widths;
  double whole = 0;
  for (const std::string& title : titles) {
    TextStyle bold = drawn;
    bold.bold = true;
    widths.push_back(figures::typeset_size(*canvas_, title, bold).x + 2 * pad);
    whole += widths.back();
  }
  double x = h == HAlign::Left ? rect.x : h == HAlign::Right ? rect.right() - whole : rect.center().x - whole / 2;
  std::optional<std::size_t> chosen;
  for (std::size_t i = 0; i < titles.size(); ++i) {
    const Rect tab{x, rect.y, widths[i], rect.h};
    x += widths[i];
    ItemRecord record = recorded(id.at(i), ItemKind::Tab, tab, titles[i], tab,
                                 {widths[i] - 2 * pad, drawn.size * figures::line_height});
    record.current = i == current;
    const Core::Behavior b = core_->behave(std::move(record), i == current ? Core::Stop::Tab : Core::Stop::Skip);
    core_->step_focus(id.at(i), Key::Left, Key::Right);
    if (b.hovered && i != current) draw_hover(*canvas_, *theme_, tab);
    drawn.bold = i == current;
    draw_text_line(titles[i], tab, drawn, HAlign::Center, VAlign::Middle);
    if (i == current) {
      const double y = tab.center().y + drawn.size * 0.72;
      canvas_->line({tab.x + pad, y}, {tab.right() - pad, y}, {theme_->ink, sizes().edge * 1.5});
    }
    if (b.ring) ring(tab.inset(sizes().focus_ring + sizes().focus_gap), sizes().radius);
    if (b.clicked) chosen = i;
  }
  return chosen;
}

bool Ui::rail_item(WidgetId id, std::string_view number, std::string_view title, bool current, bool done,
                   const Rect& rect) {
  const double radius = std::min(rect.w, rect.h) / 2 - sizes().rim / 2;
  const TextStyle drawn{std::min(sizes().label, radius * (number.size() > 1 ? 1.05 : 1.25)),
                        current ? theme_->on_primary : theme_->ink};
  ItemRecord record =
      recorded(id, ItemKind::RailItem, rect, number, rect, figures::typeset_size(*canvas_, number, drawn));
  record.current = current;
  const Core::Behavior b = core_->behave(std::move(record), current ? Core::Stop::Tab : Core::Stop::Skip);
  core_->step_focus(id, Key::Up, Key::Down);
  const Vec2 middle = rect.center();
  const std::optional<Color> hover =
      b.hovered && contrast(theme_->hover, theme_->ground) > 1.05 ? std::optional(theme_->hover) : std::nullopt;
  canvas_->circle(middle, radius, current ? std::optional(theme_->primary) : hover,
                  Stroke{theme_->ink, sizes().rim * (b.hovered ? 1.6 : 1.0)});
  canvas_->text(middle, HAlign::Center, VAlign::Middle, number, drawn);
  if (done) {
    const double side = radius * 0.6;
    const Vec2 at = middle + Vec2{radius * 0.8, radius * 0.8};
    canvas_->circle(at, side * 0.72, theme_->ground, Stroke{theme_->ink, sizes().rule});
    draw_icon(*canvas_, Icon::Check, {at.x - side / 2, at.y - side / 2, side, side}, theme_->ink, theme_->ground,
              sizes().rim);
  }
  if (b.ring) {
    canvas_->circle(middle, radius + sizes().focus_gap + sizes().focus_ring / 2, std::nullopt,
                    Stroke{theme_->focus, sizes().focus_ring});
  }
  if ((b.hovered || b.ring) && !title.empty()) core_->tip = {std::string(title), rect};
  return b.clicked && !current;
}

bool Ui::checkbox(WidgetId id, std::string_view text, bool on, const Rect& rect, bool enabled) {
  const double side = em(TextSize::Label) * 0.8;
  const double gap = side * 0.6;
  const Rect box{rect.x + sizes().space / 2, rect.center().y - side / 2, side, side};
  const Rect text_box{box.right() + gap, rect.y, rect.right() - box.right() - gap, rect.h};
  TextStyle drawn = fitting(*canvas_, style(TextSize::Label), text, text_box.w, sizes().small);
  ItemRecord record =
      recorded(id, ItemKind::Toggle, rect, text, text_box, figures::typeset_size(*canvas_, text, drawn));
  record.enabled = enabled;
  record.current = on;
  const Core::Behavior b = core_->behave(std::move(record), Core::Stop::Tab);
  if (b.hovered) draw_hover(*canvas_, *theme_, rect);
  drawn.color = enabled ? theme_->ink : theme_->ink.with_opacity(theme::disabled_opacity);
  canvas_->rounded(box, sizes().radius * 0.5, on ? std::optional(drawn.color) : std::nullopt,
                   Stroke{drawn.color, sizes().rim});
  if (on) draw_icon(*canvas_, Icon::Check, box.inset(side * 0.12), theme_->on_primary, drawn.color, sizes().edge);
  draw_text_line(text, text_box, drawn, HAlign::Left, VAlign::Middle);
  if (b.ring) ring(rect.inset(sizes().focus_ring), sizes().radius);
  return b.clicked;
}

bool Ui::toggle(WidgetId id, std::string_view text, bool on, const Rect& rect, bool enabled) {
  const double height = em(TextSize::Label) * 0.9;
  const double width = height * 1.8;
  const Rect pill{rect.right() - width - sizes().space / 2, rect.center().y - height / 2, width, height};
  const Rect text_box{rect.x + sizes().space / 2, rect.y, pill.x - rect.x - 2 * sizes().space, rect.h};
  TextStyle drawn = fitting(*canvas_, style(TextSize::Label), text, text_box.w, sizes().small);
  ItemRecord record =
      recorded(id, ItemKind::Toggle, rect, text, text_box, figures::typeset_size(*canvas_, text, drawn));
  record.enabled = enabled;
  record.current = on;
  const Core::Behavior b = core_->behave(std::move(record), Core::Stop::Tab);
  if (b.hovered) draw_hover(*canvas_, *theme_, rect);
  drawn.color = enabled ? theme_->ink : theme_->ink.with_opacity(theme::disabled_opacity);
  draw_text_line(text, text_box, drawn, HAlign::Left, VAlign::Middle);
  canvas_->rounded(pill, height / 2, on ? std::optional(drawn.color) : std::nullopt, Stroke{drawn.color, sizes().rim});
  const Vec2 knob{on ? pill.right() - height / 2 : pill.x + height / 2, pill.center().y};
  canvas_->circle(knob, height * 0.31, on ? theme_->on_primary : drawn.color, std::nullopt);
  if (b.ring) ring(rect.inset(sizes().focus_ring), sizes().radius);
  return b.clicked;
}

std::optional<std::size_t> Ui::options(WidgetId id, const std::vector<std::string>& titles,
                                       std::optional<std::size_t> current, const Rect& rect) {
  const double gap = sizes().space;
  const double height = (rect.h + gap) / static_cast<double>(std::max<std::size_t>(1, titles.size())) - gap;
  std::optional<std::size_t> chosen;
  for (std::size_t i = 0; i < titles.size(); ++i) {
    const Rect row{rect.x, rect.y + static_cast<double>(i) * (height + gap), rect.w, height};
    const double side = em(TextSize::Label) * 0.8;
    const Vec2 dot{row.x + sizes().space * 1.5 + side / 2, row.center().y};
    const Rect text_box{dot.x + side, row.y, row.right() - dot.x - side - sizes().space, row.h};
    TextStyle drawn = fitting(*canvas_, style(TextSize::Label), titles[i], text_box.w, sizes().small);
    ItemRecord record = recorded(id.at(i), ItemKind::Option, row, titles[i], text_box,
                                 figures::typeset_size(*canvas_, titles[i], drawn));
    record.current = current == i;
    const bool stop = current ? current == i : i == 0;
    const Core::Behavior b = core_->behave(std::move(record), stop ? Core::Stop::Tab : Core::Stop::Skip);
    core_->step_focus(id.at(i), Key::Up, Key::Down);
    if (b.hovered) draw_hover(*canvas_, *theme_, row);
    canvas_->rounded(row.inset(sizes().rim / 2), sizes().radius, std::nullopt,
                     Stroke{theme_->ink, current == i ? sizes().edge * 1.3 : sizes().rule});
    canvas_->circle(dot, side / 2, std::nullopt, Stroke{theme_->ink, sizes().rim});
    if (current == i) canvas_->circle(dot, side * 0.28, theme_->ink, std::nullopt);
    draw_text_line(titles[i], text_box, drawn, HAlign::Left, VAlign::Middle);
    if (b.ring) ring(row.inset(sizes().focus_ring), sizes().radius);
    if (b.clicked) chosen = i;
  }
  return chosen;
}

}  // namespace fw::ui
