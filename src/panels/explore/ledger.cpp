#include <algorithm>

#include "exact/print_number.hpp"
#include "figures/face_marks.hpp"
#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "state/lesson_steps.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using reasoning::Ledger;

std::string headline(const solids::Solid& solid, const Ledger& ledger, bool total_shown) {
  const std::string counted = std::to_string(ledger.faces_counted);
  const std::string total = total_shown ? std::to_string(ledger.faces_total) : "?";
  return counted + " of " + total + " " + solid.part() + "s";
}

std::string amount_text(const exact::Number& amount, const units::Unit& unit, int decimals) {
  const exact::Shown shown = exact::shown(amount, decimals);
  return (shown.exact ? "" : "≈ ") + shown.text + " " + unit.text();
}

/// What the sum is called: the surface area once every face is in it once (of an open solid the area A of those that
/// count), and a face that is in it too often.
std::string sum_title(const solids::Solid& solid, const Ledger& ledger, bool is_open) {
  if (!ledger.counted_twice.empty()) {
    return solid.part() + " " + figures::face_number(ledger.counted_twice.front()) + " twice";
  }
  if (!ledger.counted_open.empty()) {
    return solid.part() + " " + figures::face_number(ledger.counted_open.front()) + " is open";
  }
  if (!ledger.is_surface_area) {
    return "so far";
  }
  return is_open ? "A =" : "S =";
}

void sum_line(Ui& ui, const Shown& shown, const Rect& rect) {
  const Ledger& ledger = shown.derived.ledger;
  const bool wrong = !ledger.counted_twice.empty() || !ledger.counted_open.empty();
  const ClassGoal goal = class_goal(shown.state().current());
  const bool adds = goal == ClassGoal::Areas || (goal == ClassGoal::Volume && !shown.desk().counted.empty());
  if (!adds && !wrong) {
    return;
  }
  ui.rule_across(rect.x, rect.y, rect.w, true);
  const std::string left = sum_title(shown.desk().solid, ledger, !shown.derived.open.empty());
  const Rect inside{rect.x, rect.y + ui.sizes().space * 0.5, rect.w, rect.h - ui.sizes().space * 0.5};
  ui.text(left, inside, {.bold = true, .color = wrong ? ui.theme().bad : ui.theme().ink});
  const double used = ui.text_width(left, TextSize::Label, true) + ui.sizes().space;
  const Rect right{inside.x + used, inside.y, inside.w - used, inside.h};
  if (adds) {
    const auto text = [&](int decimals) { return amount_text(ledger.so_far.amount(), ledger.so_far.unit(), decimals); };
    // A number of many digits does without decimals where it has no room for them.
    const bool has_room = ui.text_width(text(places), TextSize::Small, true) <= right.w;
    ui.text(text(has_room ? places : 0), right,
            {.size = TextSize::Heading, .bold = true, .h = HAlign::Right, .shrink = true});
  }
}

double sum_height(const Ui& ui) { return 1.1 * ui.line(TextSize::Heading); }

/// The volume has its own formula and its own unit, and is never added to the areas. `beside_rows`: it shares its
/// column with them.
void volume(Ui& ui, const Shown& shown, Column& column, bool beside_rows, Commands& out) {
  const Desk& desk = shown.desk();
  const std::vector<std::string>& lines = shown.derived.volume_work;  // the formula, the numbers, the result
  const double line = ui.line(TextSize::Label);
  // Where there is little height the result matters most; the rows of the areas stay in sight beside it.
  const double rows = beside_rows ? ledger_rows_height(ui, shown) + sum_height(ui) : 0;
  const auto fitting = static_cast<std::size_t>(std::max(0.0, (column.rest().h - rows - ui.sizes().field) / line));
  const bool has_formula = lines.size() > 1;  // some solids have a number alone
  const std::size_t below = has_formula ? lines.size() - 1 : lines.size();
  const std::size_t shown_lines = desk.volume_shown ? std::min(std::max<std::size_t>(fitting, 1), below) : 0;
  const Rect block = column.take_bottom(ui.sizes().field + line * static_cast<double>(shown_lines));
  ui.rule_across(block.x, block.y, block.w);
  Column parts({block.x, block.y + ui.sizes().space * 0.3, block.w, block.h});
  Row head(parts.take(ui.sizes().field), ui.sizes().space);
  const Rect button = head.take_right(ui.sizes().icon).middle(ui.sizes().icon, ui.sizes().icon);
  if (ui.icon_button(ids::show_volume, desk.volume_shown ? Icon::EyeClosed : Icon::Eye,
                     desk.volume_shown ? "hide the volume" : "show the volume", button)) {
    out.push_back(ShowVolume{!desk.volume_shown});
  }
  ui.text(desk.volume_shown && has_formula ? lines.front() : "inside: volume", head.rest(), {.shrink = true});
  for (std::size_t i = lines.size() - shown_lines; i < lines.size(); ++i) {
    ui.text(lines[i], parts.take(line), {.bold = i + 1 == lines.size(), .shrink = true});
  }
}

bool small_icon(Ui& ui, Row& row, WidgetId id, Icon picture, const char* text, bool enabled, bool current) {
  const double size = ui.sizes().icon;
  return ui.icon_button(id, picture, text, row.take_right(size).middle(size, size),
                        {.look = ButtonLook::Plain, .enabled = enabled, .current = current});
}

void head(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Desk& desk = shown.desk();
  Row row(column.take(ui.line(TextSize::Heading)), ui.sizes().space * 0.5);
  if (small_icon(ui, row, ids::clear_count, Icon::Cross, "start the count over", !desk.counted.empty(), false)) {
    out.push_back(ClearCount{});
  }
  const bool together = desk.grouping == reasoning::Grouping::AlikeTogether;
  if (small_icon(ui, row, ids::grouping, Icon::Grid,
                 together ? "count each face by itself" : "count congruent faces together", true, together)) {
    out.push_back(SetGrouping{together ? reasoning::Grouping::EachFace : reasoning::Grouping::AlikeTogether});
  }
  if (small_icon(ui, row, ids::show_total, desk.total_shown ? Icon::EyeClosed : Icon::Eye,
                 desk.total_shown ? "hide how many faces there are" : "show how many faces there are", true, false)) {
    out.push_back(ShowTotal{!desk.total_shown});
  }
  const bool is_about_volume = class_goal(shown.state().current()) == ClassGoal::Volume && desk.counted.empty();
  ui.text(is_about_volume ? "Volume" : headline(desk.solid, shown.derived.ledger, desk.total_shown), row.rest(),
          {.size = TextSize::Heading, .bold = true, .shrink = true});
}

}  // namespace

void ledger(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Rect left = rect;
  Rect right = rect;
  const bool wide = shown.screen.side_below;
  if (wide) {  // rows on the left, sums and buttons on the right
    Row halves(rect, 3 * sizes.space);
    left = halves.take(rect.w * 0.55);
    right = halves.rest();
  }
  Column column(right, sizes.space * 0.5);
  head(ui, shown, column, out);
  lesson_buttons(ui, shown, column, out);
  if (const double height = notice_height(ui, shown, right.w); height > 0) {
    notice(ui, shown, column.take_bottom(std::min(height, column.rest().h)), out);
  }
  volume(ui, shown, column, !wide, out);
  Column count(wide ? left : column.rest(), sizes.space * 0.5);
  sum_line(ui, shown, count.take_bottom(sum_height(ui)));
  ledger_rows(ui, shown, count.rest(), out);
}

}  // namespace fw::panels
