#include <algorithm>

#include "base/utf8.hpp"
#include "figures/face_marks.hpp"
#include "figures/typeset.hpp"
#include "ui/core.hpp"

namespace fw::ui {
namespace {

/// The longest beginning of a text that fits, with an ellipsis.
std::string cut_off(const figures::Canvas& canvas, std::string_view text, const TextStyle& style, double width) {
  while (!text.empty()) {
    std::size_t end = text.size() - 1;
    while (end > 0 && !starts_character(text[end])) --end;
    text = text.substr(0, end);
    std::string shorter = std::string(text) + "…";
    if (figures::typeset_size(canvas, shorter, style).x <= width) return shorter;
  }
  return "…";
}

double left_of(const Rect& box, HAlign h) {
  return h == HAlign::Left ? box.x : h == HAlign::Center ? box.center().x : box.right();
}

}  // namespace

double Ui::em(TextSize size) const {
  switch (size) {
    case TextSize::Small:
      return sizes().small;
    case TextSize::Label:
      return sizes().label;
    case TextSize::Heading:
      return sizes().heading;
  }
  return sizes().label;
}

double Ui::line(TextSize size) const { return em(size) * figures::line_height; }
TextStyle Ui::style(TextSize size, bool bold) const {
  return {em(size), theme_->ink, bold || size == TextSize::Heading};
}

double Ui::text_width(std::string_view text, TextSize size, bool bold) const {
  return figures::typeset_size(*canvas_, text, style(size, bold)).x;
}

double Ui::wrapped_height(std::string_view text, double width, TextSize size, bool bold) const {
  return static_cast<double>(figures::wrapped(*canvas_, text, style(size, bold), width).size()) * line(size);
}

void Ui::draw_text_line(std::string_view text, const Rect& box, const TextStyle& style, HAlign h, VAlign v) {
  const double y = v == VAlign::Top ? box.y : v == VAlign::Middle ? box.center().y : box.bottom();
  figures::typeset(*canvas_, {left_of(box, h), y}, h, v == VAlign::Baseline ? VAlign::Bottom : v, text, style);
}

void Ui::text(std::string_view text, const Rect& rect, const TextOptions& options) {
  TextStyle drawn = style(options.size, options.bold);
  if (options.color) drawn.color = *options.color;
  std::vector<std::string> lines;
  ItemRecord record;
  if (options.wrap) {
    lines = figures::wrapped(*canvas_, text, drawn, rect.w);
  } else {
    lines.emplace_back(text);
    double width = figures::typeset_size(*canvas_, text, drawn).x;
    if (options.shrink && width > rect.w) {
      drawn.size = std::max(std::min(sizes().small, drawn.size), drawn.size * rect.w / width);
      width = figures::typeset_size(*canvas_, text, drawn).x;
      record.cut = width > rect.w + 0.5;
      if (record.cut) lines.front() = cut_off(*canvas_, text, drawn, rect.w);
    }
  }
  const double step = drawn.size * figures::line_height;
  const double height = step * static_cast<double>(lines.size());
  double y = options.v == VAlign::Top      ? rect.y
             : options.v == VAlign::Middle ? rect.center().y - height / 2
                                           : rect.bottom() - height;
  record.text = std::string(text);
  record.text_box = rect;
  record.text_size = {0, height};
  const double top = y;
  for (const std::string& line : lines) {
    record.text_size.x = std::max(record.text_size.x, figures::typeset_size(*canvas_, line, drawn).x);
    draw_text_line(line, {rect.x, y, rect.w, step}, drawn, options.h, VAlign::Top);
    y += step;
  }
  const double width = record.text_size.x;
  record.rect = {left_of(rect, options.h) - (options.h == HAlign::Left     ? 0
                                             : options.h == HAlign::Center ? width / 2
                                                                           : width),
                 top, width, height};
  core_->record(std::move(record));
}

void Ui::number_at_point(std::string_view whole, std::string_view fraction, double point_x, const Rect& rect,
                         const TextOptions& options) {
  TextStyle drawn = style(options.size, options.bold);
  if (options.color) drawn.color = *options.color;
  const double y = rect.center().y;
  const double before = figures::typeset_size(*canvas_, whole, drawn).x;
  const double after = figures::typeset_size(*canvas_, fraction, drawn).x;
  figures::typeset(*canvas_, {point_x, y}, HAlign::Right, VAlign::Middle, whole, drawn);
  figures::typeset(*canvas_, {point_x, y}, HAlign::Left, VAlign::Middle, fraction, drawn);
  ItemRecord record;
  const double height = drawn.size * figures::line_height;
  record.rect = {point_x - before, y - height / 2, before + after, height};
  record.text = std::string(whole) + std::string(fraction);
  record.text_box = rect;
  record.text_size = {before + after, drawn.size * figures::line_height};
  core_->record(std::move(record));
}

void Ui::panel(const Rect& rect, std::optional<Color> fill) {
  canvas_->rounded(rect, 0, fill.value_or(theme_->panel), std::nullopt);
  ItemRecord record;
  record.kind = ItemKind::Panel;
  record.rect = rect;
  core_->record(std::move(record));
}

void Ui::rule_across(double x, double y, double width, bool heavy) {
  canvas_->line({x, y}, {x + width, y}, {theme_->ink, heavy ? sizes().edge : sizes().rule});
}

void Ui::rule_down(double x, double y, double height) {
  canvas_->line({x, y}, {x, y + height}, {theme_->ink, sizes().rule});
}

void Ui::dotted_line(double x, double y, double width) {
  canvas_->line({x, y}, {x + width, y}, {theme_->ink, sizes().rule, sizes().rule * 2});
}

void Ui::dashed_box(const Rect& rect, std::string_view text) {
  canvas_->rounded(rect, 0, std::nullopt, Stroke{theme_->ink, sizes().rim, sizes().rim * 2.5});
  const TextStyle drawn{std::min(rect.h * 0.62, sizes().label), theme_->ink};
  if (text.empty()) return;
  figures::typeset(*canvas_, rect.center(), HAlign::Center, VAlign::Middle, text, drawn);
}

void Ui::face_chip(const figures::FaceStyle& style, std::string_view number, const Rect& rect) {
  figures::draw_face_chip(*canvas_, rect, style, std::string(number), theme_->panel_palette());
}

}  // namespace fw::ui
