#include <algorithm>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using practice::SkillSummary;

std::string when(int days) {
  if (days == 0) {
    return "today";
  }
  return days == 1 ? "tomorrow" : "in " + std::to_string(days) + " days";
}

/// "2 times: The number would be ... Once with a hint."
std::string said_of(const SkillSummary& row) {
  std::string text;
  if (!row.cause.empty()) {
    text = std::to_string(row.times) + (row.times == 1 ? " time: " : " times: ") + said(row.message);
  }
  if (row.helped > 0) {
    text += (text.empty() ? "" : " ") + std::to_string(row.helped) + " right with a hint.";
  }
  return text;
}

struct Columns {
  double right = 0, back = 0;  ///< widths, from the right
};

Columns columns_of(const Ui& ui) {
  const double back =
      std::max(ui.text_width("in 21 days", TextSize::Small), ui.text_width("tomorrow", TextSize::Small));
  return {std::max(ui.text_width("9999 of 9999", TextSize::Small), ui.text_width("right at first", TextSize::Small)),
          back + 2 * ui.sizes().space};
}

double title_width(const Ui& ui, double width) {
  const Columns columns = columns_of(ui);
  return width - columns.right - columns.back - 2 * ui.sizes().space;
}

double row_height(const Ui& ui, const SkillSummary& row, double width) {
  const double title = ui.wrapped_height(row.title, title_width(ui, width), TextSize::Small, true);
  const std::string said = said_of(row);
  const double cause = said.empty() ? 0 : ui.wrapped_height(said, width, TextSize::Small);
  return title + cause + 2 * ui.sizes().space;
}

/// Cuts `title` from a line in three columns.
void cells(Ui& ui, const Rect& rect, const std::string& title, const std::string& right, const std::string& back,
           bool bold) {
  const Columns columns = columns_of(ui);
  Row cut(rect, ui.sizes().space);
  const TextOptions number{.size = TextSize::Small, .h = HAlign::Right, .v = figures::VAlign::Top, .shrink = true};
  ui.text(back, cut.take_right(columns.back), number);
  ui.text(right, cut.take_right(columns.right), number);
  ui.text(title, cut.rest(), {.size = TextSize::Small, .bold = bold, .v = figures::VAlign::Top, .wrap = true});
}

void table(Ui& ui, const std::vector<SkillSummary>& rows, const Rect& rect) {
  const Sizes& sizes = ui.sizes();
  // Room for the bar is left always, so that the heads stand over their columns.
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  Column whole(rect, sizes.space);
  const Rect head = whole.take(ui.line(TextSize::Small));
  cells(ui, {head.x, head.y, width, head.h}, "kind of problem", "right at first", "again", false);
  ui.rule_across(head.x, head.bottom(), width, true);
  double height = 0;
  for (const SkillSummary& row : rows) {
    height += row_height(ui, row, width);
  }
  const Rect content = ui.begin_scroll(ids::progress_rows, whole.rest(), height);
  Column column({content.x, content.y, width, content.h});
  for (const SkillSummary& row : rows) {
    Column lines(column.take(row_height(ui, row, width)));
    const double title = ui.wrapped_height(row.title, title_width(ui, width), TextSize::Small, true);
    cells(ui, lines.take(title), row.title, std::to_string(row.right) + " of " + std::to_string(row.seen),
          when(row.days), true);
    if (const std::string said = said_of(row); !said.empty()) {
      ui.text(said, lines.take(ui.wrapped_height(said, width, TextSize::Small)),
              {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = ui.theme().quiet_ink});
    }
    ui.rule_across(column.rest().x, column.rest().y - sizes.space, width);
  }
  ui.end_scroll();
}

/// A path has no blanks to be wrapped at: it is broken after a slash.
std::string with_breaks(const Ui& ui, const std::string& text, double width) {
  std::string broken;
  std::string line;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find_first_of("/ ", at), text.size() - 1) + 1;
    const std::string piece = text.substr(at, end - at);
    if (!line.empty() && ui.text_width(line + piece, TextSize::Small) > width) {
      broken += line + "\n";
      line.clear();
    }
    line += piece;
    at = end;
  }
  return broken + line;
}

std::string message_of(const Ui& ui, const ProgressPage& page, double width) {
  return with_breaks(ui, page.asks ? "Erase everything, even the saved table?" : page.message, width);
}

/// When it asks, "yes" stands elsewhere than the button that asked, so that a second click is meant.
void buttons(Ui& ui, const ProgressPage& page, bool is_empty, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row row(rect, sizes.space);
  const Rect left = row.take((rect.w - sizes.space) / 2);
  const ButtonOptions small{.size = TextSize::Small};
  if (page.asks) {
    if (ui.button(ids::progress_sure, "yes, erase all", left, small)) {
      out.push_back(EraseProgress{true});
    }
    if (ui.button(ids::progress_keep, "keep it", row.rest(), small)) {
      out.push_back(ShowProgress{true});
    }
    return;
  }
  if (ui.button(ids::progress_export, "save as a table (CSV)", left, {.enabled = !is_empty, .size = TextSize::Small})) {
    out.push_back(ExportProgress{});
  }
  if (ui.button(ids::progress_erase, "erase all", row.rest(), small)) {
    out.push_back(EraseProgress{false});
  }
}

}  // namespace

void progress_sheet(Ui& ui, const Shown& shown, Commands& out) {
  const ProgressPage& page = shown.view().progress;
  if (!page.shown) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Rect window = ui.window();
  const Rect sheet = window.middle(std::min(window.w * 0.92, 36 * sizes.small), window.h * 0.92);
  ui.begin_sheet(ids::progress_sheet, "practice so far", sheet);
  Column column(sheet.inset(3 * sizes.space, 2 * sizes.space), sizes.space);
  if (sheet_head(ui, column, ids::progress_close, "Practice so far")) {
    out.push_back(ShowProgress{false});
  }
  const auto say = [&](const std::string& text, const Rect& rect, const Color& color) {
    ui.text(text, rect, {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = color});
  };
  const FileNews& news = shown.view().file_news;
  const bool has_news = !news.unsaved.empty() || !news.note.empty();
  const double width = column.rest().w;
  if (has_news) {
    const std::string text = news.unsaved + (news.unsaved.empty() || news.note.empty() ? "" : " ") + news.note;
    say(text, column.take(ui.wrapped_height(text, width, TextSize::Small)), ui.theme().bad);
  }
  if (!news.loses_answers) {
    const std::string where =
        "Kept on this machine only, without a name. Each problem counts once, by your first answer.";
    say(where, column.take(ui.wrapped_height(where, width, TextSize::Small)), ui.theme().quiet_ink);
  }
  const std::vector<SkillSummary>& rows = page.rows;
  buttons(ui, page, rows.empty(), column.take_bottom(sizes.button), out);
  const std::string message = message_of(ui, page, width);
  if (!message.empty()) {
    say(message, column.take_bottom(ui.wrapped_height(message, width, TextSize::Small)), ui.theme().ink);
  }
  if (rows.empty()) {
    say("Nothing is kept yet.", column.take(ui.line(TextSize::Small)), ui.theme().ink);
  } else {
    table(ui, rows, column.rest());
  }
  ui.end_sheet();
}

}  // namespace fw::panels
