#include "ui/core.hpp"

#include <imgui.h>

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::ui {

void Ui::Core::read_input() {
  const ImGuiIO& io = ImGui::GetIO();
  window = {0, 0, static_cast<double>(io.DisplaySize.x), static_cast<double>(io.DisplaySize.y)};
  pointer.before = pointer.at;
  pointer.at = {static_cast<double>(io.MousePos.x), static_cast<double>(io.MousePos.y)};
  pointer.down = io.MouseDown[0];
  pointer.went_down = ImGui::IsMouseClicked(0);
  pointer.released = ImGui::IsMouseReleased(0);
  pointer.double_clicked = ImGui::IsMouseDoubleClicked(0);
  pointer.went_down_again = pointer.went_down && ImGui::GetMouseClickedCount(0) > 1;
  pointer.second_down = io.MouseDown[1] || io.MouseDown[2];
  pointer.second_went_down = ImGui::IsMouseClicked(1) || ImGui::IsMouseClicked(2);
  pointer.wheel = static_cast<double>(io.MouseWheel);
  seconds = static_cast<double>(io.DeltaTime);
  modifiers = {io.KeyCtrl, io.KeyShift, io.KeyAlt};
  typed.assign(io.InputQueueCharacters.begin(), io.InputQueueCharacters.end());
  used.clear();
  hot.reset();
  for (auto item = items_before.rbegin(); item != items_before.rend() && !hot; ++item) {
    const bool reachable = is_widget(item->kind) && item->layer == (sheet_before ? 1 : 0);
    if (reachable && figures::common_part(item->rect, item->clip).contains(pointer.at)) hot = item->id;
  }
  if (pointer.went_down || pointer.second_went_down) {
    press = pointer.at;
    moved_far = false;
  }
  if (glm::distance(press, pointer.at) > click_slack) moved_far = true;
  if (pointer.went_down && !pointer.went_down_again) clicked_first = hot;
  if (pointer.went_down && !hot) press_on(std::nullopt, false);
  // The widget that held the button may be gone.
  if (!pointer.down && !pointer.released) active.reset();
}

bool Ui::Core::pressed(Key key, bool repeats) const { return ImGui::IsKeyPressed(static_cast<int>(key), repeats); }

bool Ui::Core::is_used(Key key) const { return std::find(used.begin(), used.end(), key) != used.end(); }

bool Ui::Core::take(Key key, bool repeats, KeyTaker taker) {
  if (is_used(key) || modifiers.control || modifiers.alt || !pressed(key, repeats)) return false;
  if (!may_take(taker, scene(), key, modifiers)) return false;
  use(key);
  return true;
}

bool Ui::Core::is_field(const std::optional<WidgetId>& id) const {
  const ItemRecord* item = id ? last(*id) : nullptr;
  return id && (id == open.id || (item != nullptr && is_typing_kind(item->kind)));
}

KeyScene Ui::Core::scene() const {
  if (told == KeyScene::Blank) return KeyScene::Blank;
  if (is_field(focus)) return sheet_before ? KeyScene::SheetField : KeyScene::Field;
  if (sheet_before) return KeyScene::Sheet;
  return home_before ? KeyScene::BesideField : told;
}

bool Ui::Core::keeps_keyboard() const {
  return home_before.has_value() || (open.id != WidgetId{} && focus == open.id && !open.entered);
}

void Ui::Core::press_on(std::optional<WidgetId> id, bool is_text) {
  if (sheet_before || is_text || !keeps_keyboard()) {
    if (id) {
      focus_on(*id, false);
    } else {
      focus.reset();
    }
    return;
  }
  if (home_before) {
    focus_on(home_before->id, false);
  } else if (open.changed) {  // it is said as if it had been left, and can be typed on
    closed = open;
    open.given = open.text;
    open.changed = false;
  }
}

const ItemRecord* Ui::Core::last(WidgetId id) const {
  const auto found = std::find_if(items_before.begin(), items_before.end(),
                                  [id](const ItemRecord& item) { return is_widget(item.kind) && item.id == id; });
  return found == items_before.end() ? nullptr : &*found;
}

bool Ui::Core::is_drawn(WidgetId id) const {
  return std::any_of(items.begin(), items.end(),
                     [id](const ItemRecord& item) { return is_widget(item.kind) && item.id == id; });
}

void Ui::Core::focus_on(WidgetId id, bool by_keyboard) {
  if (focus != id) focus_moved = true;
  focus = id;
  focus_by_keyboard = by_keyboard;
}

void Ui::Core::move_focus() {
  focus_moved = false;
  if (next_focus) {
    focus_on(*next_focus, true);
    next_focus.reset();
  }
  if (!pressed(Key::Tab, true) || modifiers.control || modifiers.alt) return;
  use(Key::Tab);
  if (stops_before.empty()) return;
  const auto here = focus ? std::find(stops_before.begin(), stops_before.end(), *focus) : stops_before.end();
  const auto count = static_cast<std::ptrdiff_t>(stops_before.size());
  std::ptrdiff_t index = here - stops_before.begin();
  if (modifiers.shift) {
    index = (index + count - 1) % (here == stops_before.end() ? count + 1 : count);
    index = std::min(index, count - 1);
  } else {
    index = here == stops_before.end() ? 0 : (index + 1) % count;
  }
  focus_on(stops_before[static_cast<std::size_t>(index)], true);
}

void Ui::Core::follow_typing() {
  const auto has_character = [this](unsigned least) {
    return std::any_of(typed.begin(), typed.end(), [least](unsigned one) { return one >= least && one != 0x7F; });
  };
  const bool is_chord = modifiers.control || modifiers.alt;
  const bool erases = pressed(Key::Backspace) || pressed(Key::Delete);
  if (is_chord || sheet_before || is_field(focus)) return;
  if (home_before && (erases || has_character(' '))) {
    focus_on(home_before->id, false);
  } else if (told == KeyScene::Answered && (erases || has_character(' ' + 1))) {
    focus.reset();  // what is typed too late must not press a button at its end
  }
}

void Ui::Core::follow_offers() {
  if (sheet) return;
  const std::optional<Offer>& comes = home ? home : offered;
  if (comes && comes != (home ? home_before : offered_before)) {
    focus_on(comes->id, !home);
    wants = true;
  } else if (home && !focus) {
    focus_on(home->id, false);
    wants = true;
  }
}

void Ui::Core::finish_focus() {
  if (sheet != sheet_before) {
    if (sheet) {
      focus_below = focus;
      focus = stops[1].empty() ? std::nullopt : std::optional(stops[1].front());
    } else {
      focus = focus_below;
    }
    active.reset();
    wants = true;
  } else if (focus && !next_focus) {
    const bool there = std::any_of(items.begin(), items.end(), [this](const ItemRecord& item) {
      return is_widget(item.kind) && item.id == *focus && item.enabled;
    });
    if (!there) focus.reset();
  }
  follow_offers();
  stops_before = stops[sheet ? 1 : 0];
  sheet_before = sheet;
}

void Ui::Core::record(ItemRecord item) {
  item.layer = layer;
  item.clip = clip();
  item.scrolls = scrolling.has_value();
  items.push_back(std::move(item));
}

Ui::Core::Behavior Ui::Core::behave(ItemRecord item, Stop stop) {
  const WidgetId id = item.id;
  const bool reachable = item.enabled && layer == (sheet_before ? 1 : 0);
  Behavior b;
  b.hovered = reachable && hot == id && (!active || active == id);
  // The second click of a double click never presses what came up under the pointer.
  if (b.hovered && pointer.went_down && (!pointer.went_down_again || clicked_first == id)) {
    active = id;
    b.went_down = true;
    if (stop != Stop::None) press_on(id, is_typing_kind(item.kind));
  }
  b.held = active == id && pointer.down;
  b.released = active == id && pointer.released;
  b.clicked = b.released && b.hovered;
  if (b.released) active.reset();
  b.focused = reachable && focus == id;
  b.ring = b.focused && focus_by_keyboard;
  if (b.focused && !is_typing_kind(item.kind)) {
    const bool by_key = take(Key::Enter) || take(Key::PadEnter) || take(Key::Space);
    b.by_key = by_key;
    b.clicked = b.clicked || by_key;
  }
  if (b.focused && focus_moved) keep_in_view(item.rect);
  const bool stands = stop == Stop::Tab || (stop == Stop::Skip && b.focused);
  if (item.enabled && stands) stops[layer == 0 ? 0 : 1].push_back(id);
  item.focused = b.focused;
  record(std::move(item));
  return b;
}

void Ui::Core::step_focus(WidgetId id, Key back, Key forward) {
  if (focus != id || modifiers.shift) return;
  if (id.item > 0 && last(id.at(id.item - 1)) != nullptr && take(back, true)) {
    next_focus = id.at(id.item - 1);
  } else if (last(id.at(id.item + 1)) != nullptr && take(forward, true)) {
    next_focus = id.at(id.item + 1);
  }
  wants = wants || next_focus.has_value();
}

void Ui::Core::keep_in_view(const Rect& rect) {
  if (!scrolling) return;
  Scroll& scroll = scrolls[{scrolling->id.name, scrolling->id.item}];
  const double over_top = scrolling->rect.y - rect.y;
  const double under_end = rect.bottom() - scrolling->rect.bottom();
  if (over_top > 0) {
    scroll.offset -= over_top;
  } else if (under_end > 0) {
    scroll.offset += under_end;
  }
  wants = wants || over_top > 0 || under_end > 0;
}

// --- the frame ------------------------------------------------------------------------------------------

Ui::Ui() : core_(std::make_unique<Core>()) {}
Ui::~Ui() = default;

void Ui::begin(const Theme& theme, const Fonts& fonts) {
  theme_ = &theme;
  fonts_ = &fonts;
  Core& c = *core_;
  c.wants = false;
  c.sheet = false;
  c.layer = 0;
  c.tip.reset();
  c.items.clear();
  c.home_before = std::exchange(c.home, std::nullopt);
  c.offered_before = std::exchange(c.offered, std::nullopt);
  for (auto& stops : c.stops) stops.clear();
  c.read_input();
  c.move_focus();
  c.follow_typing();
  window_ = c.window;
  c.below.emplace(*ImGui::GetBackgroundDrawList(), fonts);
  c.above.emplace(*ImGui::GetForegroundDrawList(), fonts);
  canvas_ = &*c.below;
}

void Ui::end() {
  Core& c = *core_;
  ensure(c.layer == 0 && !c.scrolling && c.clips.empty(), "a sheet or a list was opened and not closed");
  // A field that is gone can't be told what it said.
  if (c.closed && !c.is_drawn(c.closed->id)) c.closed.reset();
  const bool is_kept = c.home && c.home->id == c.open.id;
  if (c.open.id != WidgetId{} && c.focus != c.open.id && !is_kept) close_field();
  c.finish_focus();
  if (c.tip) draw_tip();
  if (!c.tip) c.tip_before = {};
  c.items_before = std::exchange(c.items, {});
}

bool Ui::is_typing() const { return core_->open.id != WidgetId{} && core_->focus == core_->open.id; }
std::optional<WidgetId> Ui::focus() const { return core_->focus; }

void Ui::set_focus(WidgetId id) {
  core_->next_focus = id;
  core_->wants = true;
}

void Ui::clear_focus() {
  core_->focus.reset();
  core_->next_focus.reset();
  core_->wants = true;
}

std::optional<double> Ui::wakes_in() const {
  const double left = tip_shown_seconds - core_->tip_seconds;
  return core_->tip_before.w > 0 && left > 0 ? std::optional(left) : std::nullopt;
}

bool Ui::wants_frame() const { return core_->wants || core_->closed.has_value(); }
bool Ui::pointer_taken() const { return core_->hot.has_value() || core_->active.has_value() || core_->sheet_before; }
const std::vector<ItemRecord>& Ui::items() const { return core_->items_before; }
const ItemRecord* Ui::item(WidgetId id) const { return core_->last(id); }

void Ui::keys_are(KeyScene scene) { core_->told = scene; }

void Ui::offer_focus(WidgetId id, std::uint64_t of) { core_->offered = Core::Offer{id, of}; }

bool Ui::shortcut(Key key, Modifiers modifiers, KeyTaker taker) {
  Core& c = *core_;
  const auto one_of = [key](std::initializer_list<Key> keys) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
  };
  const bool repeats =
      one_of({Key::Left, Key::Right, Key::Up, Key::Down, Key::Equal, Key::Minus, Key::PadAdd, Key::PadSubtract});
  if (c.modifiers != modifiers || c.is_used(key) || !c.pressed(key, repeats)) return false;
  if (!may_take(taker, c.scene(), key, modifiers)) return false;
  c.use(key);
  return true;
}

}  // namespace fw::ui
