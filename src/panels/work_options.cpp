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

/// How the lines on the board are written.
void notation(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  using algebra::ClassNotation;
  const Sizes& sizes = ui.sizes();
  ui.text("On the board", column.take(ui.line(TextSize::Label)), {.bold = true, .shrink = true});
  const ClassNotation now = class_notation(shown.state());
  const auto toggled = [&](std::size_t row, const char* text, bool is_on, auto change) {
    if (ui.toggle(ids::work_notation.at(row), text, is_on, column.take(sizes.field))) {
      ClassNotation next = now;
      change(next);
      out.push_back(SetNotation{next});
    }
  };
  const bool divides = now.parts == ClassNotation::Parts::Division;
  toggled(0, "P · ℓ ÷ 2 for ½Pℓ", divides, [&](ClassNotation& next) {
    next.parts = divides ? ClassNotation::Parts::Fraction : ClassNotation::Parts::Division;
  });
  const bool crosses = now.times == ClassNotation::Times::Cross;
  toggled(1, "× for times", crosses,
          [&](ClassNotation& next) { next.times = crosses ? ClassNotation::Times::Dot : ClassNotation::Times::Cross; });
  const bool has_units = now.units == ClassNotation::Units::OnEveryLine;
  toggled(2, "units on every line", has_units, [&](ClassNotation& next) {
    next.units = has_units ? ClassNotation::Units::InAnswer : ClassNotation::Units::OnEveryLine;
  });
  const bool has_base = now.box_volume == ClassNotation::BoxVolume::BaseTimesHeight;
  toggled(3, "V = Bh for a box", has_base, [&](ClassNotation& next) {
    next.box_volume = has_base ? ClassNotation::BoxVolume::Edges : ClassNotation::BoxVolume::BaseTimesHeight;
  });
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
    notation(ui, shown, right, out);
    return;
  }
  const double whole = 13 * (sizes.field + sizes.space) + 3 * ui.line(TextSize::Label);
  const Rect content = ui.begin_scroll(ids::work_option_rows, rect, whole);
  Column column(content, sizes.space * 0.5);
  way(ui, shown, column, out);
  column.skip(2 * sizes.space);
  gaps(ui, shown, column, out);
  column.skip(2 * sizes.space);
  notation(ui, shown, column, out);
  ui.end_scroll();
}

}  // namespace fw::panels
