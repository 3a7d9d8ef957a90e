#include "app/panels/screen.hpp"

#include <algorithm>

#include "app/ui/layout.hpp"

namespace fw::app {

using figures::Rect;

double tool_size(const Sizes& sizes) { return std::max(sizes.target, sizes.icon * 0.8); }

Screen screen_for(const Rect& window, const Model& model, const Sizes& sizes, double prompt_height) {
  Screen screen;
  screen.side_below = window.w < upright_shape * window.h;
  screen.tight = !screen.side_below && window.w < tight_shape * window.h;
  const bool is_quiz = model.state.mode == Mode::Quiz;
  const bool has_work = model.state.mode != Mode::Explore;
  const bool two_ways = model.state.mode == Mode::Work && model.state.desk().work.route == RouteChoice::Both;
  Column whole(window);
  screen.title = whole.take(sizes.button + 2 * sizes.space);
  const auto take_prompt = [&screen, prompt_height](Column& column) {
    screen.prompt = column.rest();
    screen.prompt.h = prompt_height;
    column.skip(prompt_height);
  };
  if (screen.tight) {  // in few lines across the window, since the bench is narrow
    take_prompt(whole);
  }
  Rect rest = whole.rest();
  if (!screen.side_below) {
    // About a third of the width, and never narrower than its text needs.
    double side_width = std::min(std::max(window.w / 3.0, 13.2 * sizes.label), window.w * 0.475);
    if (has_work) {  // lines of work are longer than a ledger is wide
      side_width = window.w * (screen.tight ? 0.53 : two_ways ? 0.6 : 0.48);
    }
    Row row(rest);
    screen.side = row.take_right(side_width);
    rest = row.rest();
  } else {
    Column column(rest);
    screen.side = column.take_bottom(window.h * (has_work ? 0.48 : 0.42));
    rest = column.rest();
  }
  screen.has_rail =
      !model.view.presenting && !is_quiz && !two_ways && !screen.side_below && !(has_work && screen.tight);
  if (screen.has_rail && model.view.rail_open) {
    Row row(rest);
    screen.rail = row.take(sizes.button + sizes.scroll_bar + 3 * sizes.space);
    rest = row.rest();
  }
  Column middle(rest);
  screen.bar = middle.take_bottom(sizes.button + 2 * sizes.space);
  if (!screen.tight) {
    take_prompt(middle);
  }
  screen.bench = middle.rest();
  if (!model.view.presenting && screen.side_below) {  // height is short there, so the buttons share the bar
    Row row(screen.bar);
    screen.tools = row.take_right(tool_count * (tool_size(sizes) + sizes.space * 0.5) + sizes.space);
    screen.bar = row.rest();
  } else if (!model.view.presenting) {
    Column column(screen.bench);
    screen.tools = column.take_bottom(tool_size(sizes) + sizes.space);
    screen.bench = column.rest();
  }
  const bool has_card = model.state.mode == Mode::Explore && model.state.desk().picked;
  if (has_card && screen.tight) {
    Column column(screen.bench);
    screen.card = column.take_bottom(screen.bench.h * 0.46);
    screen.bench = column.rest();
  } else if (has_card) {
    Row row(screen.bench);
    screen.card = row.take_right(screen.bench.w * (screen.side_below ? 0.5 : 0.42));
    screen.bench = row.rest();
  }
  return screen;
}

}  // namespace fw::app
