#include <algorithm>
#include <cmath>

#include "ui/core.hpp"

namespace fw::ui {
SliderEvent Ui::slider(WidgetId id, std::string_view text, double value, const SliderRange& range, const Rect& rect,
                       bool enabled) {
  ItemRecord record;
  record.id = id;
  record.kind = ItemKind::Slider;
  record.rect = rect;
  record.text = std::string(text);
  record.text_box = rect;
  record.enabled = enabled;
  record.share = range.high > range.low ? std::clamp((value - range.low) / (range.high - range.low), 0.0, 1.0) : 0;
  const Core::Behavior b = core_->behave(std::move(record), Core::Stop::Tab);
  const double radius = std::min(rect.h * 0.4, 0.022 * sizes().window_height);
  const double left = rect.x + radius;
  const double length = std::max(1.0, rect.w - 2 * radius);

  SliderEvent event;
  event.value = std::clamp(value, range.low, range.high);
  if (b.went_down || b.held || b.released) {
    const double share = std::clamp((core_->pointer.at.x - left) / length, 0.0, 1.0);
    event.value = range.low + share * (range.high - range.low);
    event.began = b.went_down;
    event.ended = b.released;
  } else if (b.focused) {
    if (const auto by_key = slider_key(event.value, range)) {
      event.value = *by_key;
      event.ended = true;
    }
  }
  event.changed = event.value != value;

  const double share = range.high > range.low ? (event.value - range.low) / (range.high - range.low) : 0;
  const double y = rect.center().y;
  const Color ink = enabled ? theme_->ink : theme_->ink.with_opacity(0.4F);
  canvas_->rounded({rect.x, y - sizes().edge * 0.8, rect.w, sizes().edge * 1.6}, sizes().edge * 0.8, ink, std::nullopt);
  const Vec2 knob{left + share * length, y};
  const double size = b.hovered || b.held ? radius * 1.1 : radius;
  canvas_->circle(knob, size + sizes().rim, theme_->ground, std::nullopt);
  canvas_->circle(knob, size, ink, std::nullopt);
  if (b.ring) {
    canvas_->circle(knob, radius + sizes().focus_gap + sizes().focus_ring, std::nullopt,
                    Stroke{theme_->focus, sizes().focus_ring});
  }
  return event;
}

std::optional<double> Ui::slider_key(double value, const SliderRange& range) {
  const double step = range.step * (core_->modifiers.shift ? 5 : 1);
  const auto to = [&range](double wished) { return std::clamp(wished, range.low, range.high); };
  // Onto the grid of steps, so that the same keys always lead to the same values.
  const auto snapped = [&](double wished) {
    return to(range.low + std::round((wished - range.low) / range.step) * range.step);
  };
  if (core_->take(Key::Left, true) || core_->take(Key::Down, true)) return snapped(value - step);
  if (core_->take(Key::Right, true) || core_->take(Key::Up, true)) return snapped(value + step);
  if (core_->take(Key::Home)) return range.low;
  if (core_->take(Key::End)) return range.high;
  return std::nullopt;
}

}  // namespace fw::ui
