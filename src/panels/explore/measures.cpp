#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "exact/written.hpp"
#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

/// The number a step or a slider sets, written with the measure's own decimals.
std::string number_text(const reasoning::EditableMeasure& measure, double value) {
  const double clamped = std::clamp(value, measure.least, measure.most);
  const long long steps = std::llround(clamped / measure.step);
  // Steps are whole numbers or tenths, so that the text is exact.
  const exact::Number number = measure.step < 1 ? exact::Number::ratio(steps, 10) : exact::Number::whole(steps);
  return exact::written(number, measure.step < 1 ? measure.places : 0).text;
}

std::string title_of(const reasoning::EditableMeasure& measure) {
  return measure.letter.empty() ? measure.title : measure.title + "\u00a0" + measure.letter;  // never alone on a line
}

/// The width of the number's field and of the unit behind it.
double number_width(const Ui& ui, const reasoning::EditableMeasure& measure) {
  const double text = ui.text_width(measure.text) + ui.sizes().label;
  return std::clamp(text, 3 * ui.sizes().label, 6 * ui.sizes().label);
}
double unit_width(const Ui& ui, const reasoning::EditableMeasure& measure) {
  return measure.unit.empty() ? 0 : std::max(1.6 * ui.sizes().label, ui.text_width(measure.unit));
}

/// The title with the number beside it; a long title takes several lines.
double head_height(const Ui& ui, const reasoning::EditableMeasure& measure, double width) {
  const double rest = width - number_width(ui, measure) - unit_width(ui, measure) - 2 * ui.sizes().space;
  return std::max(ui.sizes().field, ui.wrapped_height(title_of(measure), rest, TextSize::Small));
}

void measure_row(Ui& ui, const reasoning::EditableMeasure& measure, std::size_t index, const Rect& rect,
                 Commands& out) {
  const Sizes& sizes = ui.sizes();
  Column column(rect, sizes.space * 0.4);
  const auto set = [&](const std::string& text, bool by_slider) {
    out.push_back(SetMeasure{measure.field, text, by_slider});
  };
  Row head(column.take(head_height(ui, measure, rect.w)), sizes.space);
  if (!measure.unit.empty()) {
    ui.text(measure.unit, head.take_right(unit_width(ui, measure)), {});
  }
  const Rect field = head.take_right(number_width(ui, measure)).middle(number_width(ui, measure), sizes.field);
  ui.text(title_of(measure), head.rest(), {.size = TextSize::Small, .wrap = true});
  const FieldEvent typed =
      ui.field(ids::measure_field.at(index), measure.title, measure.text, field, {.h = HAlign::Right});
  if (typed.entered || typed.left) {
    if (typed.text != measure.text) {
      set(typed.text, false);
    }
  }
  Row row(column.take(sizes.icon), sizes.space);
  if (ui.icon_button(ids::measure_less.at(index), Icon::Minus, "less", row.take(sizes.icon))) {
    set(number_text(measure, measure.value - measure.step), false);
  }
  const Rect more = row.take_right(sizes.icon);
  const SliderEvent slid = ui.slider(ids::measure_slider.at(index), measure.title, measure.value,
                                     {measure.least, measure.most, measure.step}, row.rest());
  if (ui.icon_button(ids::measure_more.at(index), Icon::Plus, "more", more)) {
    set(number_text(measure, measure.value + measure.step), false);
  }
  if (slid.changed) {
    const std::string text = number_text(measure, slid.value);
    if (text != measure.text) {
      set(text, true);
    }
  }
}

}  // namespace

double notice_height(const Ui& ui, const Shown& shown, double width) {
  if (!shown.view().notice) {
    return 0;
  }
  const Sizes& sizes = ui.sizes();
  return ui.wrapped_height(shown.view().notice->text, width - 2 * sizes.space, TextSize::Small) + sizes.field +
         3 * sizes.space;
}

void notice(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Notice& refused = *shown.view().notice;
  const Sizes& sizes = ui.sizes();
  ui.canvas().rounded(rect, sizes.radius, std::nullopt, figures::Stroke{ui.theme().bad, sizes.edge, 0});
  Column column(rect.inset(sizes.space, sizes.space), sizes.space);
  Row buttons(column.take_bottom(sizes.field), sizes.space);
  ui.text(refused.text, column.rest(),
          {.size = TextSize::Small, .wrap = true, .color = ui.theme().bad, .shrink = true});
  if (!refused.remedy_field.empty()) {
    const std::string take = "take " + refused.remedy_text;
    const Rect place = buttons.take(std::min(buttons.rest().w * 0.6, ui.button_width(take, {.size = TextSize::Small})));
    if (ui.button(ids::take_remedy, take, place, {.look = ButtonLook::Primary, .size = TextSize::Small})) {
      out.push_back(TakeRemedy{});
    }
  }
  const char* close = refused.remedy_field.empty() ? "close" : "leave it";
  const Rect place = buttons.take(std::min(buttons.rest().w, ui.button_width(close, {.size = TextSize::Small})));
  if (ui.button(ids::dismiss_notice, close, place, {.size = TextSize::Small})) {
    out.push_back(DismissNotice{});
  }
}

namespace {

void footer(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row row(column.take_bottom(sizes.button), sizes.space);
  const auto icon = [&](WidgetId id, Icon picture, const std::string& text, bool enabled) {
    return ui.icon_button(id, picture, text, row.take(sizes.icon).middle(sizes.icon, sizes.icon),
                          {.look = ButtonLook::Plain, .enabled = enabled});
  };
  const History& history = shown.model.history;
  if (icon(ids::undo, Icon::Undo, "undo: " + history.undo_text(), history.can_undo())) {
    out.push_back(Undo{});
  }
  if (icon(ids::redo, Icon::Redo, "redo: " + history.redo_text(), history.can_redo())) {
    out.push_back(Redo{});
  }
  const bool changed = !(shown.desk().solid == shown.state().current().solid);
  const Rect place =
      row.take_right(std::min(row.rest().w, ui.button_width("lesson's numbers", {.size = TextSize::Small})));
  if (ui.button(ids::reset, "lesson's numbers", place, {.enabled = changed, .size = TextSize::Small})) {
    out.push_back(ResetProblem{});
  }
}

void unit_choice(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const std::vector<units::Unit>& choice = shown.derived.units;
  if (choice.size() < 2) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  std::vector<std::string> titles;
  std::size_t current = 0;
  for (std::size_t i = 0; i < choice.size(); ++i) {
    titles.push_back(choice[i].text());
    if (choice[i] == shown.desk().solid.unit()) {
      current = i;
    }
  }
  Row row(column.take_bottom(sizes.field), sizes.space);
  ui.text("unit", row.take(ui.text_width("unit", TextSize::Small) + sizes.space), {.size = TextSize::Small});
  if (const auto chosen = ui.tabs(ids::unit, titles, current, row.rest(), HAlign::Left)) {
    out.push_back(SetUnit{choice[*chosen]});
  }
}

}  // namespace

void measures(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Rect left = rect;
  Rect right = rect;
  if (shown.screen.side_below) {
    Row halves(rect, 3 * sizes.space);
    left = halves.take(rect.w * 0.5);
    right = halves.rest();
  }
  Column about(right, sizes.space);
  const bool short_of_room = shown.view().notice && shown.screen.side_below;  // the notice takes it all
  if (!short_of_room) {
    ui.text(shown.desk().solid.name(), about.take(ui.line(TextSize::Label)), {.bold = true, .shrink = true});
    footer(ui, shown, about, out);
    unit_choice(ui, shown, about, out);
  }
  if (shown.view().notice) {
    notice(ui, shown, about.take_bottom(std::min(notice_height(ui, shown, right.w), about.rest().h)), out);
  }
  Column column(shown.screen.side_below ? left : about.rest(), sizes.space);
  const std::vector<reasoning::EditableMeasure>& list = shown.derived.measures;
  const double width = column.rest().w - ui.sizes().scroll_bar - sizes.space;
  std::vector<double> heights;
  double whole = 0;
  for (const reasoning::EditableMeasure& measure : list) {
    heights.push_back(head_height(ui, measure, width) + sizes.icon + 2.4 * sizes.space);
    whole += heights.back();
  }
  const Rect content = ui.begin_scroll(ids::measure_rows, column.rest(), whole);
  Column rows({content.x, content.y, std::min(content.w, width), content.h});
  for (std::size_t i = 0; i < list.size(); ++i) {
    measure_row(ui, list[i], i, rows.take(heights[i]), out);
  }
  ui.end_scroll();
}

}  // namespace fw::panels
