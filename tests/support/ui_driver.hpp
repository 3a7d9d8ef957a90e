#pragma once

#include <imgui.h>

#include <cmath>
#include <functional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "theme/theme.hpp"
#include "ui/fonts.hpp"
#include "ui/ui.hpp"

namespace fw::test {

/// A user at a window that is not there: moves the pointer, types, and lets frames pass. The only place in the tests
/// that knows how this version of the toolkit takes its input.
class UiDriver {
 public:
  /// Draws one frame, ui.begin() and ui.end() included.
  using WholeFrame = std::function<void(ui::Ui&, const ui::Fonts&)>;
  /// Draws the widgets of one frame.
  using Widgets = std::function<void(ui::Ui&)>;

  UiDriver(double width, double height, WholeFrame frame) : frame_(std::move(frame)) { start(width, height); }
  UiDriver(double width, double height, theme::ThemeName theme, Widgets widgets)
      : frame_([this, theme, widgets = std::move(widgets)](ui::Ui& ui, const ui::Fonts& fonts) {
          theme_ = theme::Theme::make(theme, static_cast<double>(ImGui::GetIO().DisplaySize.y));
          ui.begin(theme_, fonts);
          widgets(ui);
          ui.end();
        }) {
    start(width, height);
  }
  ~UiDriver() { ImGui::DestroyContext(context_); }
  UiDriver(const UiDriver&) = delete;
  UiDriver& operator=(const UiDriver&) = delete;

  [[nodiscard]] ui::Ui& ui() { return ui_; }
  [[nodiscard]] const ui::ItemRecord& item(ui::WidgetId id) {
    const ui::ItemRecord* found = ui_.item(id);
    if (found == nullptr) throw std::runtime_error("no widget " + name(id) + " on the screen");
    return *found;
  }
  [[nodiscard]] ui::Rect rect(ui::WidgetId id) { return item(id).rect; }
  [[nodiscard]] bool shows(ui::WidgetId id) { return ui_.item(id) != nullptr; }
  /// Whether some item of the last frame has this text.
  [[nodiscard]] bool shows_text(std::string_view text) const {
    for (const ui::ItemRecord& item : ui_.items()) {
      if (item.text.find(text) != std::string::npos) return true;
    }
    return false;
  }

  void frames(int count = 1) {
    for (int i = 0; i < count; ++i) {
      use();
      fonts_.prepare(*ImGui::GetIO().Fonts, static_cast<double>(ImGui::GetIO().DisplaySize.y));
      ImGui::NewFrame();
      frame_(ui_, fonts_);
      ImGui::Render();
    }
  }
  void resize(double width, double height) {
    use();
    ImGui::GetIO().DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    frames(2);
  }

  // --- pointer ------------------------------------------------------------------------------------------
  void point_at(ui::Vec2 place) {
    use();
    ImGui::GetIO().MousePos = {static_cast<float>(place.x), static_cast<float>(place.y)};
    frames();
  }
  void hover(ui::WidgetId id) { point_at(visible(id).center()); }
  void click_at(ui::Vec2 place) {
    point_at(place);
    button(true);
    button(false);
    frames();
  }
  void click(ui::WidgetId id) { click_at(visible(id).center()); }
  /// From one place of the widget to another, each as shares of its width and height.
  void drag(ui::WidgetId id, ui::Vec2 from, ui::Vec2 to) {
    const ui::Rect box = visible(id);
    const auto place = [&box](ui::Vec2 share) { return ui::Vec2{box.x + share.x * box.w, box.y + share.y * box.h}; };
    drag_between(place(from), place(to));
  }
  void drag_between(ui::Vec2 from, ui::Vec2 to) {
    point_at(from);
    button(true);
    constexpr int steps = 8;
    for (int i = 1; i <= steps; ++i) point_at(from + (to - from) * (static_cast<double>(i) / steps));
    button(false);
    frames();
  }
  void wheel(ui::WidgetId id, double notches) {
    hover(id);
    ImGui::GetIO().MouseWheel = static_cast<float>(notches);
    frames(2);
  }

  // --- keyboard -----------------------------------------------------------------------------------------
  void press(ui::Key key, ui::Modifiers modifiers = ui::no_modifiers) {
    use();
    hold(key, modifiers, true);
    frames();
    hold(key, modifiers, false);
    frames();
  }
  void type(std::string_view text) {
    use();
    ImGui::GetIO().AddInputCharactersUTF8(std::string(text).c_str());
    frames(2);
  }
  /// The same as a keyboard does it: each character comes with the key that it lies on.
  void strike(std::string_view text) {
    for (const char c : text) {
      use();
      const char upper = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
      hold(static_cast<ui::Key>(upper), ui::no_modifiers, true);
      ImGui::GetIO().AddInputCharacter(static_cast<unsigned char>(c));
      frames();
      hold(static_cast<ui::Key>(upper), ui::no_modifiers, false);
      frames();
    }
  }
  /// Clicks into a field and replaces what stands in it.
  void type_into(ui::WidgetId id, std::string_view text) {
    click(id);
    press(ui::Key::A, ui::with_control);
    type(text);
  }

  // --- what is wrong with the screen --------------------------------------------------------------------
  /// A sentence for each fault of the last frame: a widget or text that sticks out of where it may be drawn, a text
  /// wider than its box or cut off, two widgets or texts that overlap, a target under `least_target` pixels.
  [[nodiscard]] std::vector<std::string> layout_faults(double least_target = 24) const {
    std::vector<std::string> faults;
    const auto& items = ui_.items();
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (is_ground(items[i].kind)) continue;
      add_own_faults(items[i], least_target, faults);
      for (std::size_t k = i + 1; k < items.size(); ++k) {
        if (!is_ground(items[k].kind) && collide(items[i], items[k])) {
          faults.push_back(describe(items[i]) + " overlaps " + describe(items[k]));
        }
      }
    }
    return faults;
  }

 private:
  void start(double width, double height) {
    context_ = ImGui::CreateContext();
    use();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
    io.DeltaTime = 1.0F / 60.0F;
    io.MousePos = {-100, -100};
    frames(2);
  }
  void use() { ImGui::SetCurrentContext(context_); }
  void button(bool down) {
    ImGui::GetIO().MouseDown[0] = down;
    frames();
  }
  void hold(ui::Key key, ui::Modifiers modifiers, bool down) {
    ImGuiIO& io = ImGui::GetIO();
    io.KeysDown[static_cast<int>(key)] = down;
    io.KeyCtrl = down && modifiers.control;
    io.KeyShift = down && modifiers.shift;
    io.KeyAlt = down && modifiers.alt;
  }

  /// What of a widget can be seen; scrolls its list as a user would until the middle can.
  [[nodiscard]] ui::Rect visible(ui::WidgetId id) {
    for (int i = 0; i < 200; ++i) {
      const ui::ItemRecord it = item(id);  // a copy: frames make the records anew
      const ui::Vec2 middle = it.rect.center();
      if (it.clip.contains(middle) || !it.scrolls) break;
      point_at(it.clip.center());
      ImGui::GetIO().MouseWheel = middle.y < it.clip.y ? 1.0F : -1.0F;
      frames(2);
    }
    const ui::Rect seen = figures::common_part(item(id).rect, item(id).clip);
    if (seen.w <= 0 || seen.h <= 0) throw std::runtime_error(name(id) + " cannot be seen");
    return seen;
  }

  [[nodiscard]] static std::string name(ui::WidgetId id) {
    return std::string(id.name) + (id.item > 0 ? "[" + std::to_string(id.item) + "]" : "");
  }
  [[nodiscard]] static std::string describe(const ui::ItemRecord& item) {
    const auto number = [](double v) { return std::to_string(std::lround(v)); };
    return name(item.id) + " “" + item.text + "” at " + number(item.rect.x) + "," + number(item.rect.y) + " " +
           number(item.rect.w) + "×" + number(item.rect.h);
  }
  [[nodiscard]] static bool is_ground(ui::ItemKind kind) {
    return kind == ui::ItemKind::Panel || kind == ui::ItemKind::Sheet || kind == ui::ItemKind::Scroll;
  }
  [[nodiscard]] static bool collide(const ui::ItemRecord& a, const ui::ItemRecord& b) {
    if (a.layer != b.layer) return false;
    const ui::Rect seen_a = figures::common_part(a.rect, a.clip);
    const ui::Rect seen_b = figures::common_part(b.rect, b.clip);
    if (!seen_a.overlaps(seen_b, 1)) return false;
    // What lies wholly on an area that the panel draws itself belongs to it.
    const bool on_a = a.kind == ui::ItemKind::Region && seen_a.contains(seen_b, 1);
    const bool on_b = b.kind == ui::ItemKind::Region && seen_b.contains(seen_a, 1);
    return !on_a && !on_b;
  }
  static void add_own_faults(const ui::ItemRecord& item, double least_target, std::vector<std::string>& faults) {
    const ui::Rect& r = item.rect;
    const bool fits_across = r.x >= item.clip.x - 1 && r.right() <= item.clip.right() + 1;
    const bool fits_down = item.scrolls || (r.y >= item.clip.y - 1 && r.bottom() <= item.clip.bottom() + 1);
    if (!fits_across || !fits_down) faults.push_back(describe(item) + " sticks out of its area");
    if (item.text_size.x > item.text_box.w + 1 || item.text_size.y > item.text_box.h + 1) {
      faults.push_back(describe(item) + " has a text of " + std::to_string(std::lround(item.text_size.x)) + "×" +
                       std::to_string(std::lround(item.text_size.y)) + " in a box of " +
                       std::to_string(std::lround(item.text_box.w)) + "×" +
                       std::to_string(std::lround(item.text_box.h)));
    }
    if (item.cut) faults.push_back(describe(item) + " is cut off");
    if (item.kind != ui::ItemKind::Text && (r.w < least_target || r.h < least_target)) {
      faults.push_back(describe(item) + " is too small to be hit");
    }
  }

  WholeFrame frame_;
  ImGuiContext* context_ = nullptr;
  ui::Fonts fonts_;
  theme::Theme theme_;
  ui::Ui ui_;
};

}  // namespace fw::test
