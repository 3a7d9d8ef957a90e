#include "web/screen_text.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace fw::web {
namespace {

const char* kind_word(ui::ItemKind kind) {
  switch (kind) {
    case ui::ItemKind::Text:
      return "text";
    case ui::ItemKind::Button:
      return "button";
    case ui::ItemKind::Tab:
      return "tab";
    case ui::ItemKind::RailItem:
      return "rail";
    case ui::ItemKind::Slider:
      return "slider";
    case ui::ItemKind::Field:
      return "field";
    case ui::ItemKind::Toggle:
      return "toggle";
    case ui::ItemKind::Option:
      return "option";
    case ui::ItemKind::Region:
      return "region";
    case ui::ItemKind::Scroll:
      return "scroll";
    case ui::ItemKind::Sheet:
    case ui::ItemKind::Panel:
      return "panel";
  }
  return "text";
}

}  // namespace

std::string screen_text(const ui::Ui& ui) {
  const auto& items = ui.items();
  const int top = std::any_of(items.begin(), items.end(), [](const auto& item) { return item.layer == 1; }) ? 1 : 0;
  nlohmann::json all = nlohmann::json::array();
  for (std::size_t i = 0; i < items.size(); ++i) {
    const ui::ItemRecord& item = items[i];
    if (item.layer != top) {
      continue;
    }
    const figures::Vec2 middle = item.rect.center();
    all.push_back({{"at", i},
                   {"id", std::string(item.id.name)},
                   {"item", item.id.item},
                   {"kind", kind_word(item.kind)},
                   {"text", item.text},
                   {"x", item.rect.x},
                   {"y", item.rect.y},
                   {"w", item.rect.w},
                   {"h", item.rect.h},
                   {"seen", item.clip.contains(middle)},
                   {"share", item.share},
                   {"on", item.enabled},
                   {"focused", item.focused},
                   {"current", item.current}});
  }
  return all.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

}  // namespace fw::web
