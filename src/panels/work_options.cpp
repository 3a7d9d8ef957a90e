#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

void way(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  ui.text("Which way", column.take(ui.line(TextSize::Label)), {.bold = true, .shrink = true});
  if (!shown.worked().has_two_routes) {
    const std::string only = "There is only one way here. Areas of closed solids can also be added face by face.";
    ui.text(only, column.take(ui.wrapped_height(only, column.rest().w, TextSize::Small)),
            {.size = TextSize::Small, .wrap = true, .color = ui.theme().quiet_ink});
    return;
  }
  const auto current = static_cast<std::size_t>(shown.desk().work.route);
  if (const auto chosen = ui.options(ids::work_route, {"by formula", "face by face", "both, side by side"}, current,
                                     column.take(3 * sizes.field))) {
    out.push_back(SetRoute{static_cast<RouteChoice>(*chosen)});
  }
}

void gaps(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  ui.text("Blanks to fill in", column.take(ui.line(TextSize::Label)), {.bold = true, .shrink = true});
  const auto current = static_cast<std::size_t>(shown.desk().work.fade);
  if (const auto chosen =
          ui.options(ids::work_fade, {"none", "in this step", "in all steps"}, current, column.take(3 * sizes.field))) {
    out.push_back(SetFade{static_cast<Fade>(*chosen)});
  }
}

}  // namespace

void work_options(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  if (shown.screen.side_below) {
    Row halves(rect, 3 * sizes.space);
    Column left(halves.take((rect.w - 3 * sizes.space) / 2), sizes.space * 0.5);
    Column right(halves.rest(), sizes.space * 0.5);
    way(ui, shown, left, out);
    gaps(ui, shown, right, out);
    return;
  }
  Column column(rect, sizes.space * 0.5);
  way(ui, shown, column, out);
  column.skip(2 * sizes.space);
  gaps(ui, shown, column, out);
}

}  // namespace fw::panels
