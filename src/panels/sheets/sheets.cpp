#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "panels/sheets/key_list.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

}  // namespace

bool sheet_head(Ui& ui, Column& column, WidgetId close, const std::string& title) {
  const Sizes& sizes = ui.sizes();
  Row head(column.take(ui.line(TextSize::Heading)), sizes.space);
  const bool pressed = ui.icon_button(close, Icon::Close, "close", head.take_right(sizes.icon));
  ui.text(title, head.rest(), {.size = TextSize::Heading, .bold = true});
  return pressed;
}

void keys_sheet(Ui& ui, const Shown& shown, Commands& out) {
  if (!shown.view().keys_shown) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Rect window = ui.window();
  const Rect sheet = window.middle(std::min(window.w * 0.92, 32 * sizes.small), window.h * 0.98);
  ui.begin_sheet(ids::keys_sheet, "keys", sheet);
  Column column(sheet.inset(3 * sizes.space, sizes.space), sizes.space);
  if (sheet_head(ui, column, ids::keys_close, "Keys")) {
    out.push_back(ShowKeys{false});
  }
  const std::vector<KeyRow> rows = key_rows(shown.state().mode);
  const double pitch = column.rest().h / (static_cast<double>(rows.size()) + 1.2);
  for (const KeyRow& row : rows) {
    Row parts({column.rest().x, column.rest().y, column.rest().w, pitch}, sizes.space);
    column.skip(pitch);
    ui.text(row.keys, parts.take(sheet.w * 0.34), {.size = TextSize::Small, .bold = true, .shrink = true});
    ui.text(row.what, parts.rest(), {.size = TextSize::Small, .shrink = true});
  }
  ui.text("No names, no accounts, no network.", column.rest(),
          {.size = TextSize::Small, .color = ui.theme().quiet_ink, .shrink = true});
  ui.end_sheet();
}

void blank_sheet(Ui& ui, const Shown& shown, Commands& out) {
  if (!shown.view().blank) {
    return;
  }
  const Rect window = ui.window();
  ui.canvas().polygon({{window.x, window.y},
                       {window.right(), window.y},
                       {window.right(), window.bottom()},
                       {window.x, window.bottom()}},
                      Color::hex(0x000000), std::nullopt);
  if (ui.region(ids::blank_sheet, "blank screen: press any key", window, Ui::RegionFocus::None).clicked) {
    out.push_back(SetBlank{false});
  }
}

}  // namespace fw::panels
