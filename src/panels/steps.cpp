#include <algorithm>
#include <array>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

bool decides(const Shown& shown) { return shown.worked().supply && !shown.desk().work.decided; }

/// What going on does, in words and where there is no room in one.
std::array<const char*, 2> forward_texts(const Shown& shown) {
  const WorkedProblem& worked = shown.worked();
  const Work& work = shown.desk().work;
  if (decides(shown)) {
    return {"show what it is", "show"};
  }
  const Progressed at = progressed(shown.model, worked);
  const bool in_lines = shows_board(shown.model, worked);
  if (at.shown == 0 && at.count > 0) {
    return {in_lines ? "first line" : "first step", "begin"};
  }
  if (is_blank(work, worked, work.present)) {
    return {"show what goes here", "show"};
  }
  const bool goes_on = at.present + 1 < at.shown || at.shown < at.count;
  if (const auto after = goes_on ? std::nullopt : next_work(shown.state(), worked, 1)) {
    return after->measure.empty() ? std::array<const char*, 2>{"next problem", "next"}
                                  : std::array<const char*, 2>{"next question", "next"};
  }
  if (in_lines) {
    return goes_on ? std::array<const char*, 2>{"next line", "next"}
                   : std::array<const char*, 2>{"all lines shown", "end"};
  }
  return goes_on ? std::array<const char*, 2>{"next step", "next"}
                 : std::array<const char*, 2>{"all steps shown", "end"};
}

bool can_go_on(const Shown& shown) {
  return !is_worked_to_the_end(shown.model, shown.worked()) || next_work(shown.state(), shown.worked(), 1);
}

bool tool(Ui& ui, Row& row, WidgetId id, Icon picture, const char* text, bool enabled, bool current = false) {
  const double size = ui.sizes().icon;
  return ui.icon_button(id, picture, text, row.take_right(size).middle(size, size),
                        {.look = ButtonLook::Plain, .enabled = enabled, .current = current});
}

bool has_numbers(const Shown& shown) { return numbers_of_present(shown.model, shown.worked()) > 0; }

void buttons(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Work& work = shown.desk().work;
  const Progressed at = progressed(shown.model, shown.worked());
  const bool in_lines = shows_board(shown.model, shown.worked());
  const bool begun = at.shown > 0;
  Row row(rect, sizes.space * 0.5);
  const Rect back = row.take(sizes.icon).middle(sizes.icon, sizes.icon);
  const bool at_first = at.present == 0 && at.shown > 1;
  const bool goes_back = next_work(shown.state(), shown.worked(), -1).has_value();
  if (ui.icon_button(ids::work_back, Icon::Previous,
                     !begun     ? "problem before"
                     : in_lines ? "line before"
                                : "step before",
                     back, {.look = ButtonLook::Plain, .enabled = begun ? !at_first : goes_back})) {
    out.push_back(StepWork{-1});
  }
  const bool all = begun && at.shown == at.count;
  if (tool(ui, row, ids::work_all, all ? Icon::EyeClosed : Icon::Eye, all ? "hide all steps" : "show all steps",
           shown.worked().count > 0)) {
    out.push_back(ShowSteps{!all});
  }
  // Blanks are in steps, and their button needs the room.
  if (work.fade == Fade::None &&
      tool(ui, row, ids::work_detail, Icon::Board, in_lines ? "every step" : "as on the board",
           !shown.worked().board.lines.empty(), in_lines)) {
    out.push_back(SetDetail{in_lines ? Detail::EveryStep : Detail::Board});
  }
  const bool gap_here = work.fade == Fade::ThisStep && work.faded == work.present;
  if (tool(ui, row, ids::work_gap, Icon::Gap, gap_here ? "no blank in this step" : "a blank in this step",
           gap_here || begun, gap_here)) {
    out.push_back(SetFade{gap_here ? Fade::None : Fade::ThisStep});
  }
  if (tool(ui, row, ids::work_origin, Icon::Origin, "where does this number come from?", has_numbers(shown),
           shown.view().pointed.has_value())) {
    out.push_back(StepNumber{1});
  }
  row.skip(sizes.space * 0.5);
  const Rect forward{row.rest().x, row.rest().y, row.rest().w - sizes.space * 0.5, row.rest().h};
  const std::array<const char*, 2> texts = forward_texts(shown);
  const char* text = ui.button_width(texts[0]) <= forward.w ? texts[0] : texts[1];
  if (ui.button(ids::work_forward, text, forward, {.look = ButtonLook::Primary, .enabled = can_go_on(shown)})) {
    out.push_back(StepWork{1});
  }
}

/// What is asked; while the class has still to say it, the problem.
std::string heading(const Shown& shown) {
  const WorkedProblem& worked = shown.worked();
  const Work& work = shown.desk().work;
  if (progressed(shown.model, worked).shown == 0 && work.asked.empty() && worked.by_lesson.size() < 2) {
    return "The problem";
  }
  if (worked.supply && worked.supply->answer && work.asked.empty()) {  // the area is a step on the way
    return worked.supply->answer->cost ? "What it costs" : "How many it takes";
  }
  return said(worked.title) + (worked.letter.empty() ? "" : " " + worked.letter);
}

/// What is asked, and how far it is worked out. A lesson that asks for several has a switch between them.
void head(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const WorkedProblem& worked = shown.worked();
  Row row(rect, sizes.space);
  if (worked.count > 0) {
    const Progressed at = progressed(shown.model, worked);
    const std::string count = std::to_string(at.shown) + " of " + std::to_string(at.count);
    ui.text(count, row.take_right(ui.text_width(count, TextSize::Small) + sizes.space),
            {.size = TextSize::Small, .h = HAlign::Right, .color = ui.theme().quiet_ink});
  }
  if (worked.by_lesson.size() > 1) {
    std::vector<std::string> letters;
    std::size_t current = worked.by_lesson.size();
    for (std::size_t i = 0; i < worked.by_lesson.size(); ++i) {
      const reasoning::Askable& one = worked.by_lesson[i];
      letters.push_back(one.letter.empty() ? one.title : one.letter);
      current = one.name == worked.asked ? i : current;
    }
    const Rect place = row.take_right(std::min(row.rest().w * 0.4, ui.tabs_width(letters) + sizes.space));
    if (const auto chosen = ui.tabs(ids::work_asked, letters, current, place)) {
      out.push_back(AskFor{worked.by_lesson[*chosen].name, std::nullopt});
    }
  }
  const std::string title = heading(shown);
  const bool is_long = ui.text_width(title, TextSize::Small, true) > row.rest().w;
  ui.text(title, row.rest(),
          {.size = is_long ? TextSize::Small : TextSize::Heading, .bold = true, .wrap = is_long, .shrink = !is_long});
}

void page(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  if (!shown.worked().missing.empty()) {
    missing(ui, shown, {rect.x, rect.y, rect.w, std::min(rect.h, missing_height(ui, shown, rect.w))}, out);
  } else if (progressed(shown.model, shown.worked()).shown == 0) {
    problem_page(ui, shown, rect, out);
  } else {
    step_list(ui, shown, rect, out);
  }
}

}  // namespace

void steps(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Rect left = rect;
  Rect right = rect;
  const bool low = shown.screen.side_below;
  if (low) {  // steps on the left; what is asked, the reply and the buttons on the right
    Row halves(rect, 2 * sizes.space);
    left = halves.take(rect.w * 0.6);
    right = halves.rest();
  }
  Column about(right, sizes.space);
  const bool chooses = low && shown.worked().supply && shown.worked().missing.empty() &&
                       progressed(shown.model, shown.worked()).shown == 0;
  if (!chooses) {
    head(ui, shown, about.take(std::max(ui.line(TextSize::Heading), 2 * ui.line(TextSize::Small))), out);
  }
  buttons(ui, shown, about.take_bottom(sizes.button), out);
  if (chooses) {
    decision_page(ui, shown, about.rest(), out);
  }
  const double height = reply_height(ui, shown, right.w);
  if (height > 0) {
    const double room = std::min(height, about.rest().h);
    reply(ui, shown, low ? about.take(room) : about.take_bottom(room), out);
  }
  page(ui, shown, low ? left : about.rest(), out);
}

void work(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Column column(rect, sizes.space);
  WorkPanel panel = shown.view().work_panel;
  if (shown.view().presenting) {
    panel = WorkPanel::Steps;
  } else {
    Row row(column.take(sizes.field), sizes.space);
    const History& history = shown.model.history;
    if (tool(ui, row, ids::work_redo, Icon::Redo, "redo", history.can_redo())) {
      out.push_back(Redo{});
    }
    if (tool(ui, row, ids::work_undo, Icon::Undo, "undo", history.can_undo())) {
      out.push_back(Undo{});
    }
    const std::vector<std::string> titles{"Steps", "Ask for", "Ways, blanks"};
    if (const auto chosen =
            ui.tabs(ids::work_tabs, titles, static_cast<std::size_t>(panel), row.rest(), HAlign::Left)) {
      out.push_back(ShowWorkPanel{static_cast<WorkPanel>(*chosen)});
    }
  }
  switch (panel) {
    case WorkPanel::Steps:
      steps(ui, shown, column.rest(), out);
      break;
    case WorkPanel::Ask:
      ask(ui, shown, column.rest(), out);
      break;
    case WorkPanel::Options:
      work_options(ui, shown, column.rest(), out);
      break;
  }
}

}  // namespace fw::panels
