#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

using figures::Rect;

void side(Ui& ui, const Shown& shown, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Rect& rect = shown.screen.side;
  ui.panel(rect);
  if (shown.screen.side_below) {
    ui.rule_across(rect.x, rect.y, rect.w);
  } else {
    ui.rule_down(rect.x, rect.y, rect.h);
  }
  Column column(rect.inset(2.4 * sizes.space, sizes.space), sizes.space);
  if (shown.state().mode == Mode::Quiz) {
    quiz(ui, shown, column.rest(), out);
    return;
  }
  if (shown.state().mode == Mode::Work) {
    work(ui, shown, column.rest(), out);
    return;
  }
  SidePanel panel = shown.view().panel;
  if (shown.view().presenting) {
    panel = SidePanel::Faces;
  } else {
    const std::vector<std::string> titles{"Faces", "Measures", "Solids", "Display"};
    const auto current = static_cast<std::size_t>(panel);
    if (const auto chosen = ui.tabs(ids::side_tabs, titles, current, column.take(sizes.field), HAlign::Left)) {
      out.push_back(ShowPanel{static_cast<SidePanel>(*chosen)});
    }
  }
  switch (panel) {
    case SidePanel::Faces:
      ledger(ui, shown, column.rest(), out);
      break;
    case SidePanel::Measures:
      measures(ui, shown, column.rest(), out);
      break;
    case SidePanel::Solids:
      solids(ui, shown, column.rest(), out);
      break;
    case SidePanel::Display:
      display(ui, shown, column.rest(), out);
      break;
  }
}

}  // namespace fw::panels
