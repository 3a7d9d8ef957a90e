#include <algorithm>

#include "base/ensure.hpp"
#include "ui/core.hpp"

namespace fw::ui {
namespace {

constexpr std::size_t bar_item = 1U << 20U;  // the bar's place among a list's ids, beyond any item
constexpr double wheel_step = 2.5;           // lines of text a notch

}  // namespace

Rect Ui::begin_scroll(WidgetId id, const Rect& rect, double content_height, std::optional<Span> shown) {
  Core& c = *core_;
  ensure(!c.scrolling, "a list was opened within a list");
  Core::Scroll& scroll = c.scrolls[{id.name, id.item}];
  const double longest = std::max(0.0, content_height - rect.h);
  if (shown && shown != scroll.shown) {
    scroll.offset = std::min(std::max(scroll.offset, shown->top + shown->height - rect.h), shown->top);
  }
  scroll.shown = shown;
  const bool reachable = c.layer == (c.sheet_before ? 1 : 0);
  if (longest > 0 && reachable && rect.contains(c.pointer.at)) {
    scroll.offset -= c.pointer.wheel * wheel_step * line(TextSize::Label);
  }
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Scroll;
  record.rect = rect;
  c.record(std::move(record));
  double width = rect.w;
  if (longest > 0) {
    const Rect track{rect.right() - sizes().scroll_bar, rect.y, sizes().scroll_bar, rect.h};
    width -= sizes().scroll_bar + sizes().space;
    scroll_bar(id, track, content_height, scroll.offset);
  }
  scroll.offset = std::clamp(scroll.offset, 0.0, longest);
  c.scrolling = Core::ScrollArea{id, rect, content_height};
  c.clips.push_back(figures::common_part(c.clip(), rect));
  canvas_->push_clip(rect);
  return {rect.x, rect.y - scroll.offset, width, content_height};
}

void Ui::scroll_bar(WidgetId id, const Rect& track, double content_height, double& offset) {
  Core& c = *core_;
  ItemRecord record;
  record.id = id.at(bar_item);
  record.kind = ItemKind::Slider;
  record.rect = track;
  record.text = "scroll";
  record.text_box = track;
  const Core::Behavior b = c.behave(std::move(record), Core::Stop::Tab);
  const double share = track.h / content_height;
  const double length = std::max(sizes().target, track.h * share);
  const double longest = content_height - track.h;
  if (b.held) {
    const double way = std::max(1.0, track.h - length);
    offset = std::clamp((c.pointer.at.y - track.y - length / 2) / way, 0.0, 1.0) * longest;
  }
  if (b.focused) {
    if (c.take(Key::Up, true)) offset -= line(TextSize::Label);
    if (c.take(Key::Down, true)) offset += line(TextSize::Label);
    if (c.take(Key::Home)) offset = 0;
    if (c.take(Key::End)) offset = longest;
  }
  offset = std::clamp(offset, 0.0, longest);
  const double thickness = sizes().edge * (b.hovered || b.held ? 2.4 : 1.6);
  const double top = track.y + (track.h - length) * (offset / longest);
  canvas_->rounded({track.center().x - thickness / 2, top, thickness, length}, thickness / 2, theme_->ink,
                   std::nullopt);
  if (b.ring) ring(track.inset(sizes().focus_ring), sizes().radius);
}

void Ui::end_scroll() {
  Core& c = *core_;
  ensure(c.scrolling.has_value(), "a list was closed that was not open");
  canvas_->pop_clip();
  c.clips.pop_back();
  c.scrolling.reset();
}

void Ui::begin_sheet(WidgetId id, std::string_view text, const Rect& rect) {
  Core& c = *core_;
  ensure(c.layer == 0 && !c.scrolling, "a sheet was opened within a sheet or a list");
  c.layer = 1;
  c.sheet = true;
  canvas_ = &*c.above;
  canvas_->rounded(window_, 0, theme_->scrim, std::nullopt);
  canvas_->rounded(rect, sizes().radius * 1.5, theme_->panel, Stroke{theme_->ink, sizes().rim});
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Sheet;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = rect;
  c.record(std::move(record));
}

void Ui::end_sheet() {
  Core& c = *core_;
  ensure(c.layer == 1 && !c.scrolling, "a sheet was closed that was not open");
  c.layer = 0;
  canvas_ = &*c.below;
}

}  // namespace fw::ui
