#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

using figures::Rect;

void display(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Settings& settings = shown.view().settings;
  const double rows = static_cast<double>(theme::theme_names().size()) + 8;
  const double whole = 2 * (ui.line(TextSize::Small) + sizes.space) + rows * (sizes.field + sizes.space);
  const Rect content = ui.begin_scroll(ids::display_rows, rect, whole);
  Column column(content, sizes.space);
  ui.text("Colors", column.take(ui.line(TextSize::Small)), {.size = TextSize::Small, .bold = true});
  std::vector<std::string> titles;
  std::size_t current = 0;
  for (std::size_t i = 0; i < theme::theme_names().size(); ++i) {
    titles.emplace_back(title(theme::theme_names()[i]));
    if (theme::theme_names()[i] == settings.theme) {
      current = i;
    }
  }
  const Rect themes = column.take(sizes.field * static_cast<double>(titles.size()));
  if (const auto chosen = ui.options(ids::theme, titles, current, themes)) {
    out.push_back(SetTheme{theme::theme_names()[*chosen]});
  }
  if (ui.toggle(ids::reduced_motion, "steps, no motion", settings.reduced_motion, column.take(sizes.field))) {
    out.push_back(SetReducedMotion{!settings.reduced_motion});
  }
  ui.text("How fast a net unfolds", column.take(ui.line(TextSize::Small)), {.size = TextSize::Small, .bold = true});
  const auto speed = static_cast<std::size_t>(settings.speed);
  if (const auto chosen =
          ui.tabs(ids::play_speed, {"slow", "usual", "fast"}, speed, column.take(sizes.field), HAlign::Left)) {
    out.push_back(SetPlaySpeed{static_cast<PlaySpeed>(*chosen)});
  }
  if (ui.toggle(ids::letter_keys, "letter keys", settings.letter_keys, column.take(sizes.field))) {
    out.push_back(SetLetterKeys{!settings.letter_keys});
  }
  if (ui.toggle(ids::prompt_toggle, "problem's text", shown.view().prompt_shown, column.take(sizes.field))) {
    out.push_back(ShowPrompt{!shown.view().prompt_shown});
  }
  if (ui.toggle(ids::hidden_numbers, "numbers of hidden faces", shown.view().hidden_numbers,
                column.take(sizes.field))) {
    out.push_back(ShowHiddenNumbers{!shown.view().hidden_numbers});
  }
  if (ui.toggle(ids::full_screen, "full screen", settings.full_screen, column.take(sizes.field))) {
    out.push_back(SetFullScreen{!settings.full_screen});
  }
  if (ui.button(ids::blank, "blank the screen", column.take(sizes.field),
                {.icon = Icon::Blank, .size = TextSize::Small})) {
    out.push_back(SetBlank{true});
  }
  if (ui.button(ids::show_progress, "practice so far", column.take(sizes.field), {.size = TextSize::Small})) {
    out.push_back(ShowProgress{true});
  }
  ui.end_scroll();
}

}  // namespace fw::panels
