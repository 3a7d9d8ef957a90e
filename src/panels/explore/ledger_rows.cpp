#include <algorithm>

#include "figures/face_figure.hpp"
#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "state/lesson_steps.hpp"
#include "ui/layout.hpp"

// The rows of the ledger: a face, its working and its area, and under the face that is lifted out its card.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using reasoning::ColumnNumber;
using reasoning::Ledger;
using reasoning::LedgerRow;

constexpr double widest_pitch = 1.62;  // of the label's size: the chip and a little air
constexpr double least_pitch = 1.3;    // where all rows can be seen at once that way

/// What the class is asked before anything is counted.
std::string opening_question(ClassGoal goal, const solids::Solid& solid) {
  return goal == ClassGoal::Volume ? "How much fits inside? Say the formula first, then show the volume."
                                   : "How many " + solid.part() + "s does it have? Say a number, then count.";
}

std::string chip_text(const LedgerRow& row) {
  return row.faces.size() > 1 ? std::to_string(row.faces.size()) + "×" : figures::face_number(row.faces.front());
}

std::string number_text(const ColumnNumber& number) { return (number.exact ? "" : "≈ ") + number.whole; }

/// A row with all that is written in it.
struct ListedRow {
  const LedgerRow* row;
  const ColumnNumber* number;  ///< none where no areas are added, or nothing is counted yet
  std::string work;
  bool is_stacked = false;  ///< the work over the number, where they have no room beside each other
};

/// Lines and columns that all rows share.
struct Lines {
  double pitch;
  double chip_width;
  double point;      ///< from the right
  TextSize numbers;  ///< small where the longest has no room else
};

std::string work_of(const Shown& shown, const LedgerRow& row) {
  if (row.times_counted == 0) {
    return row.open.size() == row.faces.size() ? "open, so it doesn't count" : "";
  }
  const std::string& shape = shown.desk().solid.faces()[row.faces.front()].shape;
  if (class_goal(shown.state().current()) == ClassGoal::Count) {
    return shape;
  }
  const bool is_number_alone = row.work.find(' ') == std::string::npos;  // the area would stand there twice
  return is_number_alone ? "area of the " + shape : row.work;
}

/// While the class has not said how many faces there are, faces still to come must not give it away.
std::vector<ListedRow> listed_rows(const Shown& shown) {
  const Ledger& ledger = shown.derived.ledger;
  const bool has_areas = class_goal(shown.state().current()) != ClassGoal::Count;
  std::vector<ListedRow> listed;
  for (std::size_t i = 0; i < ledger.rows.size(); ++i) {
    const LedgerRow& row = ledger.rows[i];
    if (shown.desk().total_shown || row.times_counted > 0) {
      const bool has_number = has_areas && row.times_counted > 0;
      listed.push_back({&row, has_number ? &ledger.column.addends[i] : nullptr, work_of(shown, row)});
    }
  }
  return listed;
}

double room_for_work(const Ui& ui, const ListedRow& listed, const Lines& lines, double width) {
  const double used =
      listed.number == nullptr
          ? 0
          : lines.point + ui.text_width(number_text(*listed.number), lines.numbers) + 1.2 * ui.sizes().label;
  return width - lines.chip_width - used;
}

double row_height(const Ui& ui, const ListedRow& listed, const Lines& lines, double width) {
  if (!listed.is_stacked) {
    return lines.pitch;
  }
  const double work = ui.wrapped_height(listed.work, width - lines.chip_width, TextSize::Small);
  return work + (listed.number == nullptr ? 0 : ui.line(TextSize::Label));
}

void draw_row(Ui& ui, const ListedRow& listed, const Lines& lines, bool has_plus, const Rect& rect) {
  const Sizes& sizes = ui.sizes();
  const LedgerRow& row = *listed.row;
  const double side = std::min(lines.pitch * 0.88, 1.4 * sizes.label);
  const Rect chip = Rect{rect.x, rect.y, side * 1.1, lines.pitch}.middle(side * 1.1, side);
  Rect text{rect.x + lines.chip_width, rect.y, rect.w - lines.chip_width, rect.h};
  if (row.times_counted == 0) {
    ui.dashed_box(chip, chip_text(row));
    if (listed.work.empty()) {
      ui.dotted_line(text.x, rect.center().y + sizes.label * 0.4, text.w);
    } else {
      ui.text(listed.work, text, {.color = ui.theme().quiet_ink, .shrink = true});
    }
    return;
  }
  ui.face_chip(figures::face_style(row.group, ui.theme().panel_palette()), chip_text(row), chip);
  const bool twice = row.times_counted > row.faces.size();
  const Color ink = twice ? ui.theme().bad : ui.theme().ink;
  double work_right = text.x + ui.text_width(listed.work, TextSize::Label, twice);
  if (listed.is_stacked) {
    Column column(text);
    const double height = ui.wrapped_height(listed.work, text.w, TextSize::Small);
    ui.text(listed.work, column.take(height), {.size = TextSize::Small, .wrap = true, .color = ink});
    text = column.rest();
    work_right = text.x;
  } else {
    const Rect room{text.x, text.y, room_for_work(ui, listed, lines, rect.w), text.h};
    ui.text(listed.work, room, {.bold = twice, .color = ink, .shrink = true});
  }
  if (listed.number == nullptr) {
    return;
  }
  const double point_x = rect.right() - lines.point;
  ui.number_at_point(number_text(*listed.number), listed.number->fraction, point_x, text, {.size = lines.numbers});
  const double plus = point_x - ui.text_width("≈ " + listed.number->whole, lines.numbers) - 0.9 * sizes.label;
  if (has_plus && work_right < plus) {
    ui.text("+", {plus, text.y, sizes.label * 0.7, text.h}, {});
  }
}

bool holds(const LedgerRow& row, FaceId face) {
  return std::find(row.faces.begin(), row.faces.end(), face) != row.faces.end();
}

/// How rounded areas add up, in one line; empty where nothing is rounded.
std::string about_rounding(const Ledger& ledger) {
  if (!ledger.column.is_rounded) {
    return {};
  }
  return ledger.column.extra_digits > 0
             ? "Each area keeps extra digits. Only the sum is rounded to the nearest hundredth."
             : "“≈” means rounded to the nearest hundredth.";
}

/// Where everything in the list goes, from its top.
struct List {
  std::vector<ListedRow> rows;
  Lines lines{};
  std::vector<double> tops;
  std::optional<std::size_t> open;  ///< the row whose face is lifted out; none: it has no row yet
  double card = 0;                  ///< height of the card, under its row or at the end
  double card_top = 0;
  std::string note;
  double note_top = 0;
  double whole = 0;
  Span newest{0, 0};  ///< to be seen
};

/// How wide and how high the parts of a row are; long numbers are written smaller.
Lines lines_of(const Ui& ui, const List& list, double width, double height) {
  const Sizes& sizes = ui.sizes();
  const double chip_width = 1.54 * sizes.label + 1.5 * sizes.space;
  const auto widest = [&](TextSize size) {
    std::pair<double, double> both{0, 0};  // of the whole part and of the fraction
    for (const ListedRow& row : list.rows) {
      if (row.number != nullptr) {
        both.first = std::max(both.first, ui.text_width(number_text(*row.number), size));
        both.second = std::max(both.second, ui.text_width(row.number->fraction, size));
      }
    }
    return both;
  };
  const auto [whole, part] = widest(TextSize::Label);
  const bool is_large = whole + part + 0.5 * sizes.space <= width - chip_width;
  const double fraction = is_large ? part : widest(TextSize::Small).second;
  const auto count = static_cast<double>(std::max<std::size_t>(list.rows.size(), 1));
  const double pitch = std::clamp(height / count, least_pitch * sizes.label, widest_pitch * sizes.label);
  return {pitch, chip_width, fraction + 0.5 * sizes.space, is_large ? TextSize::Label : TextSize::Small};
}

List laid_out(const Ui& ui, const Shown& shown, const Rect& rect) {
  const Ledger& ledger = shown.derived.ledger;
  const Sizes& sizes = ui.sizes();
  List list;
  list.rows = listed_rows(shown);
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  list.lines = lines_of(ui, list, width, rect.h);
  const std::optional<FaceId> picked = shown.desk().picked;
  list.card = picked ? face_card_height(ui) : 0;
  double y = 0;
  for (std::size_t i = 0; i < list.rows.size(); ++i) {
    ListedRow& row = list.rows[i];
    row.is_stacked = ui.text_width(row.work, TextSize::Small) > room_for_work(ui, row, list.lines, width);
    list.tops.push_back(y);
    const double top = y;
    y += row_height(ui, row, list.lines, width);
    const bool is_newest = !shown.desk().counted.empty() && holds(*row.row, shown.desk().counted.back());
    if (picked && holds(*row.row, *picked)) {
      list.open = i;
      list.card_top = y;
      y += list.card;
    }
    if (list.open == i || (is_newest && !list.open)) {
      list.newest = {top, y - top};
    }
  }
  if (picked && !list.open) {
    list.card_top = y;
    list.newest = {y, list.card};
    y += list.card;
  }
  list.note = about_rounding(ledger);
  list.note_top = y;
  list.whole = y + (list.note.empty() ? 0 : ui.wrapped_height(list.note, width, TextSize::Small) + sizes.space);
  return list;
}

}  // namespace

double ledger_rows_height(const Ui& ui, const Shown& shown) {
  return least_pitch * ui.sizes().label * static_cast<double>(listed_rows(shown).size());
}

void ledger_rows(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  Rect place = rect;
  if (shown.desk().counted.empty() && !shown.desk().total_shown) {
    const std::string question = opening_question(class_goal(shown.state().current()), shown.desk().solid);
    const double height = ui.wrapped_height(question, rect.w, TextSize::Small);
    Column column(rect);
    ui.text(question, column.take(std::min(height, rect.h)),
            {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = ui.theme().quiet_ink});
    place = column.rest();
  }
  const List list = laid_out(ui, shown, place);
  std::size_t last = 0;  // the last addend, which a plus sign stands before
  for (std::size_t i = 0; i < list.rows.size(); ++i) {
    last = list.rows[i].number != nullptr ? i : last;
  }
  const Rect content = ui.begin_scroll(ids::ledger_rows, place, list.whole, list.newest);
  const double width = std::min(content.w, place.w - ui.sizes().scroll_bar - ui.sizes().space);
  for (std::size_t i = 0; i < list.rows.size(); ++i) {
    const LedgerRow& row = *list.rows[i].row;
    const double height = row_height(ui, list.rows[i], list.lines, width);
    const Rect line{content.x, content.y + list.tops[i], list.rows[i].is_stacked ? width : content.w, height};
    const std::string about = shown.desk().solid.part() + " " + figures::face_number(row.faces.front()) +
                              (row.times_counted > 0 ? ", " + row.work : std::string(", not counted yet"));
    const Interaction action = ui.region(ids::ledger_row.at(row.faces.front().index()), about, line);
    if (action.clicked) {
      choose_face(shown.desk(), row.faces.front(), out);
    }
    draw_row(ui, list.rows[i], list.lines, i == last && last > 0, line);
  }
  if (list.card > 0) {
    face_card(ui, shown, {content.x, content.y + list.card_top, content.w, list.card}, out);
  }
  if (!list.note.empty()) {
    ui.text(list.note, {content.x, content.y + list.note_top, width, list.whole - list.note_top},
            {.size = TextSize::Small, .wrap = true, .color = ui.theme().quiet_ink});
  }
  ui.end_scroll();
}

}  // namespace fw::panels
