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

std::string place_in_lesson(const Shown& shown) {
  return std::to_string(shown.state().problem + 1) + " of " + std::to_string(shown.state().lesson->problems.size());
}

double problem_steps_width(const Ui& ui, const Shown& shown) {
  const Sizes& sizes = ui.sizes();
  return ui.text_width(place_in_lesson(shown), TextSize::Small) + 2 * sizes.icon + 4 * sizes.space;
}

/// Before and next beside the number of the problem. If all three do not fit, the number is left out.
void problem_steps(Ui& ui, const Shown& shown, Row& row, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const std::size_t count = shown.state().lesson->problems.size();
  const std::string number = place_in_lesson(shown);
  const double width = ui.text_width(number, TextSize::Small) + sizes.space;
  const auto icon = [&](WidgetId id, Icon picture, const char* text, bool enabled) {
    return ui.icon_button(id, picture, text, row.take(sizes.icon).middle(sizes.icon, sizes.icon),
                          {.look = ButtonLook::Plain, .enabled = enabled});
  };
  if (icon(ids::problem_before, Icon::Previous, "problem before", shown.state().problem > 0)) {
    out.push_back(StepProblem{-1});
  }
  if (row.rest().w >= width + sizes.icon + sizes.space) {
    ui.text(number, row.take(width), {.size = TextSize::Small, .h = HAlign::Center});
  }
  if (icon(ids::problem_next, Icon::Next, "next problem", shown.state().problem + 1 < count)) {
    out.push_back(StepProblem{1});
  }
}

}  // namespace

void title_bar(Ui& ui, const Shown& shown, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row row(shown.screen.title.inset(2 * sizes.space, sizes.space), sizes.space);
  const auto icon = [&](WidgetId id, Icon picture, const char* text, bool current) {
    const Rect place = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
    return ui.icon_button(id, picture, text, place, {.look = ButtonLook::Plain, .current = current});
  };
  if (icon(ids::show_keys, Icon::Help, "keys and help", shown.view().keys_shown)) {
    out.push_back(ShowKeys{!shown.view().keys_shown});
  }
  if (icon(ids::present, Icon::Present, "present on the full screen", shown.view().presenting)) {
    out.push_back(SetPresenting{!shown.view().presenting});
  }
  const Rect print = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
  if (ui.icon_button(
          ids::show_print, Icon::Printer, "print", print,
          {.look = ButtonLook::Plain, .enabled = !shown.state().in_item(), .current = shown.view().print.shown})) {
    out.push_back(ShowPrint{!shown.view().print.shown});
  }
  if (!shown.view().presenting && !shown.screen.side_below) {
    // Idle where there is no place for it, but still there: the modes beside it must not move away under the pointer.
    const bool has_rail = shown.screen.has_rail;
    const Rect place = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
    if (ui.icon_button(
            ids::rail_toggle, Icon::Rail, "list of problems", place,
            {.look = ButtonLook::Plain, .enabled = has_rail, .current = has_rail && shown.view().rail_open})) {
      out.push_back(SetRail{!shown.view().rail_open});
    }
  }
  const std::vector<std::string> modes{"Explore", "Work it out", "Quiz"};
  const Rect tabs = row.take_right(ui.tabs_width(modes) + sizes.space);
  const auto current = static_cast<std::size_t>(shown.state().mode);
  if (const auto chosen = ui.tabs(ids::modes, modes, current, tabs)) {
    out.push_back(SetMode{static_cast<Mode>(*chosen)});
  }
  const std::string& title = shown.state().lesson->title;
  const bool has_steps = shown.state().mode != Mode::Quiz;
  // The steps from problem to problem come before the title: without the rail they are the only way by mouse.
  const double room = row.rest().w - (has_steps ? problem_steps_width(ui, shown) + sizes.space : 0);
  const double wanted = ui.text_width(title, TextSize::Label, true) + sizes.space;
  const double title_width = std::min(room, wanted);
  const double readable = 12 * sizes.label;  // of a long title that is cut
  if (title_width >= std::min(wanted, readable)) {
    ui.text(title, row.take(title_width), {.bold = true, .shrink = true});
  }
  if (has_steps) {
    problem_steps(ui, shown, row, out);
  }
}

double prompt_height(const Ui& ui, const Model& model, double width) {
  const std::string& text = model.state.current().prompt;
  const bool is_about_it = is_of_problem(model.state.current(), model.state.desk());  // not of one from the shelf
  if (model.state.mode != Mode::Explore || text.empty() || !is_about_it || !model.view.prompt_shown) {
    return 0;
  }
  const Sizes& sizes = ui.sizes();
  // A long prompt takes three lines and no more; the bench must stay large.
  const double height = ui.wrapped_height(text, width - 4 * sizes.space, TextSize::Small);
  return std::min(height, 3.0 * ui.line(TextSize::Small)) + sizes.space;
}

void prompt(Ui& ui, const Shown& shown, Commands&) {
  if (shown.screen.prompt.h > 0) {
    ui.text(shown.state().current().prompt, shown.screen.prompt.inset(2 * ui.sizes().space, 0),
            {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .shrink = true});
  }
}

namespace {

/// "candle-box" as it is said: "candle box".
std::string spoken_title(std::string id) {
  std::replace_if(
      id.begin(), id.end(), [](char c) { return c == '-' || c == '_'; }, ' ');
  return id;
}

}  // namespace

void rail(Ui& ui, const Shown& shown, Commands& out) {
  const Rect& rect = shown.screen.rail;
  if (rect.w <= 0) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const double pitch = sizes.button + 1.4 * sizes.space;
  const auto& problems = shown.state().lesson->problems;
  const Rect inside = rect.inset(sizes.space * 0.5, sizes.space * 0.5);
  const double current = pitch * static_cast<double>(shown.state().problem);
  const Rect content =
      ui.begin_scroll(ids::rail, inside, pitch * static_cast<double>(problems.size()), Span{current, pitch});
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const Rect row{content.x, content.y + pitch * static_cast<double>(i), content.w, pitch};
    const Rect place = row.middle(sizes.button, sizes.button);
    if (ui.rail_item(ids::problem.at(i), std::to_string(i + 1), spoken_title(problems[i].id),
                     i == shown.state().problem, shown.derived.counted[i], place)) {
      out.push_back(OpenProblem{i});
    }
  }
  ui.end_scroll();
}

}  // namespace fw::panels
