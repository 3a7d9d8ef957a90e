#include <algorithm>

#include "exact/print_number.hpp"
#include "figures/face_figure.hpp"
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
using reasoning::LedgerRow;

constexpr double row_pitch = 1.62;  // of the label's size: the chip and a little air

/// What the class is asked before anything is counted.
const char* opening_question(ClassGoal goal) {
  return goal == ClassGoal::Volume ? "How much fits inside? Say the formula first, then show the volume."
                                   : "How many faces does it have? Say a number, then count.";
}

std::string headline(const Ledger& ledger, bool total_shown) {
  const std::string counted = std::to_string(ledger.faces_counted);
  const std::string total = total_shown ? std::to_string(ledger.faces_total) : "?";
  return counted + " of " + total + " faces";
}

std::string chip_text(const LedgerRow& row) {
  return row.faces.size() > 1 ? std::to_string(row.faces.size()) + "×" : figures::face_number(row.faces.front());
}

std::string amount_text(const exact::Number& amount, const units::Unit& unit) {
  const exact::Shown shown = exact::shown(amount, places);
  return (shown.exact ? "" : "≈ ") + shown.text + " " + unit.text();
}

/// What the sum is called: the surface area once every face is in it once (of an open solid the area A of those that
/// count), and a face that is in it too often.
std::string sum_title(const Ledger& ledger, bool is_open) {
  if (!ledger.counted_twice.empty()) {
    return "face " + figures::face_number(ledger.counted_twice.front()) + " twice";
  }
  if (!ledger.counted_open.empty()) {
    return "face " + figures::face_number(ledger.counted_open.front()) + " is open";
  }
  if (!ledger.is_surface_area) {
    return "so far";
  }
  return is_open ? "A =" : "S =";
}

/// `work`: what is written beside the chip.
void draw_row(Ui& ui, const LedgerRow& row, const std::string& work, const reasoning::ColumnNumber* number,
              double point_x, bool is_last, const Rect& rect) {
  const Sizes& sizes = ui.sizes();
  const double side = std::min(rect.h * 0.88, 1.4 * sizes.label);
  Row parts(rect, 1.5 * sizes.space);
  const Rect chip = parts.take(side * 1.1).middle(side * 1.1, side);
  if (row.times_counted == 0) {
    ui.dashed_box(chip, chip_text(row));
    if (row.open.size() == row.faces.size()) {
      ui.text("open, so it doesn't count", parts.rest(), {.color = ui.theme().quiet_ink, .shrink = true});
    } else {
      ui.dotted_line(parts.rest().x, rect.center().y + sizes.label * 0.4, parts.rest().w);
    }
    return;
  }
  ui.face_chip(figures::face_style(row.group, ui.theme().panel_palette()), chip_text(row), chip);
  const bool twice = row.times_counted > row.faces.size();
  const Rect text = parts.rest();
  const double work_width = point_x - text.x - 2.2 * sizes.label;
  ui.text(work, {text.x, text.y, work_width, text.h},
          {.bold = twice, .color = twice ? ui.theme().bad : ui.theme().ink, .shrink = true});
  if (number == nullptr) {
    return;
  }
  ui.number_at_point((number->exact ? "" : "≈ ") + number->whole, number->fraction, point_x, text);
  const double plus = point_x - ui.text_width("≈ " + number->whole) - 0.7 * sizes.label;
  if (is_last && text.x + ui.text_width(work) < plus) {
    ui.text("+", {plus, text.y, sizes.label * 0.7, text.h}, {});
  }
}

std::string shape_of(const Desk& desk, const LedgerRow& row) { return desk.solid.faces()[row.faces.front()].shape; }

/// The row of the face that was counted last.
std::size_t newest_row(const Desk& desk, const std::vector<LedgerRow>& rows) {
  for (std::size_t i = 0; i < rows.size() && !desk.counted.empty(); ++i) {
    if (std::find(rows[i].faces.begin(), rows[i].faces.end(), desk.counted.back()) != rows[i].faces.end()) {
      return i;
    }
  }
  return 0;
}

void rows(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Ledger& ledger = shown.derived.ledger;
  const Sizes& sizes = ui.sizes();
  const ClassGoal goal = class_goal(shown.state().current());
  if (shown.desk().counted.empty() && !shown.desk().total_shown) {
    ui.text(opening_question(goal), rect,
            {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = ui.theme().quiet_ink});
    return;
  }
  // While the class has not said how many faces there are, faces still to come must not give it away.
  std::vector<LedgerRow> listed;
  std::vector<exact::Number> amounts;
  for (const LedgerRow& row : ledger.rows) {
    if (shown.desk().total_shown || row.times_counted > 0) {
      listed.push_back(row);
      amounts.push_back(row.addend);
    }
  }
  amounts.push_back(ledger.so_far.amount());
  const std::vector<reasoning::ColumnNumber> column = reasoning::aligned(amounts, places);
  double fraction_width = 0;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    if (listed[i].times_counted > 0) {
      fraction_width = std::max(fraction_width, ui.text_width(column[i].fraction));
    }
  }
  std::size_t last = 0;  // the last addend, which a plus sign stands before
  for (std::size_t i = 0; i < listed.size(); ++i) {
    last = listed[i].times_counted > 0 ? i : last;
  }
  const double pitch = row_pitch * sizes.label;
  const double newest = pitch * static_cast<double>(newest_row(shown.desk(), listed));
  const Rect content =
      ui.begin_scroll(ids::ledger_rows, rect, pitch * static_cast<double>(listed.size()), Span{newest, pitch});
  const double point_x = content.right() - fraction_width - 0.5 * sizes.space;
  for (std::size_t i = 0; i < listed.size(); ++i) {
    const LedgerRow& row = listed[i];
    const Rect place{content.x, content.y + pitch * static_cast<double>(i), content.w, pitch};
    const std::string about = "face " + figures::face_number(row.faces.front()) +
                              (row.times_counted > 0 ? ", " + row.work : std::string(", not counted yet"));
    const Interaction action = ui.region(ids::ledger_row.at(row.faces.front().index()), about, place);
    if (action.clicked) {
      choose_face(shown.desk(), row.faces.front(), out);
    }
    const bool has_number = row.times_counted > 0 && goal != ClassGoal::Count;
    draw_row(ui, row, goal == ClassGoal::Count ? shape_of(shown.desk(), row) : row.work,
             has_number ? &column[i] : nullptr, point_x, i == last && last > 0, place);
  }
  ui.end_scroll();
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
  const std::string amount = adds ? amount_text(ledger.so_far.amount(), ledger.so_far.unit()) : "";
  const std::string left = sum_title(ledger, !shown.derived.open.empty());
  const Rect inside{rect.x, rect.y + ui.sizes().space * 0.5, rect.w, rect.h - ui.sizes().space * 0.5};
  ui.text(left, inside, {.bold = true, .color = wrong ? ui.theme().bad : ui.theme().ink});
  const double used = ui.text_width(left, TextSize::Label, true) + ui.sizes().space;
  const Rect right{inside.x + used, inside.y, inside.w - used, inside.h};
  ui.text(amount, right, {.size = TextSize::Heading, .bold = true, .h = HAlign::Right, .shrink = true});
}

/// The volume has its own formula and its own unit, and is never added to the areas.
void volume(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Desk& desk = shown.desk();
  const std::vector<std::string>& lines = shown.derived.volume_work;
  const double line = ui.line(TextSize::Label);
  // Where there is little height the result matters most, then the formula.
  const auto fitting = static_cast<std::size_t>(std::max(0.0, (column.rest().h - ui.sizes().field) / line));
  const std::size_t shown_lines = desk.volume_shown ? std::min(lines.size(), std::max<std::size_t>(fitting, 1)) : 0;
  const Rect block = column.take_bottom(ui.sizes().field + line * static_cast<double>(shown_lines));
  ui.rule_across(block.x, block.y, block.w);
  Column parts({block.x, block.y + ui.sizes().space * 0.3, block.w, block.h});
  Row head(parts.take(ui.sizes().field), ui.sizes().space);
  const Rect button = head.take_right(ui.sizes().icon).middle(ui.sizes().icon, ui.sizes().icon);
  if (ui.icon_button(ids::show_volume, desk.volume_shown ? Icon::EyeClosed : Icon::Eye,
                     desk.volume_shown ? "hide the volume" : "show the volume", button)) {
    out.push_back(ShowVolume{!desk.volume_shown});
  }
  ui.text("inside: volume", head.rest(), {.shrink = true});
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
  ui.text(is_about_volume ? "Volume" : headline(shown.derived.ledger, desk.total_shown), row.rest(),
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
  volume(ui, shown, column, out);
  Column count(wide ? left : column.rest(), sizes.space * 0.5);
  sum_line(ui, shown, count.take_bottom(1.1 * ui.line(TextSize::Heading)));
  rows(ui, shown, count.rest(), out);
}

}  // namespace fw::panels
