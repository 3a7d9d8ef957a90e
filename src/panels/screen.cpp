#include "panels/screen.hpp"

#include <algorithm>

#include "ui/layout.hpp"

namespace fw::panels {

using namespace state;
using namespace ui;

using figures::Rect;

double tool_size(const Sizes& sizes) { return std::max(sizes.target, sizes.icon * 0.8); }

double tools_width(const Sizes& sizes) {
  constexpr int count = 7;
  return count * (tool_size(sizes) + sizes.space * 0.5) + sizes.space;
}

namespace {

/// The panel beside the bench or below it; returns what is left.
Rect place_side(Screen& screen, const Rect& window, const Rect& rest, const Model& model, const Sizes& sizes,
                bool two_ways) {
  const bool has_work = model.state.mode != Mode::Explore;
  if (screen.side_below) {
    Column column(rest);
    screen.side = column.take_bottom(window.h * (has_work ? 0.48 : 0.42));
    return column.rest();
  }
  // About a third of the width, and never narrower than its text needs.
  double width = std::min(std::max(window.w / 3.0, 13.2 * sizes.label), window.w * 0.475);
  if (has_work) {  // lines of work are longer than a ledger is wide
    width = window.w * (screen.tight ? 0.53 : two_ways ? 0.6 : 0.48);
  }
  Row row(rest);
  screen.side = row.take_right(width);
  return row.rest();
}

/// What of the bar folding takes: six buttons, and a slider that a finger can set.
constexpr double least_fold_icons = 12;

/// The buttons under the bench.
void place_tools(Screen& screen, const Model& model, const Sizes& sizes) {
  const bool has_room = screen.bar.w - tools_width(sizes) > least_fold_icons * sizes.icon;
  if (!model.view.presenting && screen.side_below && has_room) {  // height is short there, so the buttons share the bar
    Row row(screen.bar);
    screen.tools = row.take_right(tools_width(sizes));
    screen.bar = row.rest();
  } else if (!model.view.presenting) {
    Column column(screen.bench);
    screen.tools = column.take_bottom(tool_size(sizes) + sizes.space);
    screen.bench = column.rest();
  }
}

}  // namespace

Screen screen_for(const Rect& window, const Model& model, const Sizes& sizes, const TextHeights& heights) {
  Screen screen;
  screen.side_below = window.w < upright_shape * window.h;
  screen.tight = !screen.side_below && window.w < tight_shape * window.h;
  const Mode mode = model.state.mode;
  const bool two_ways = mode == Mode::Work && model.state.desk().work.route == RouteChoice::Both;
  Column whole(window);
  screen.title = whole.take(sizes.button + 2 * sizes.space);
  screen.news = whole.take(heights.news);
  const auto take_prompt = [&screen, &heights](Column& column) {
    screen.prompt = column.rest();
    screen.prompt.h = heights.prompt;
    column.skip(heights.prompt);
  };
  if (screen.tight) {  // in few lines across the window, since the bench is narrow
    take_prompt(whole);
  }
  Row left(place_side(screen, window, whole.rest(), model, sizes, two_ways));
  screen.has_rail = !model.view.presenting && mode != Mode::Quiz && !two_ways && !screen.side_below &&
                    !(mode == Mode::Work && screen.tight);
  if (screen.has_rail && model.view.rail_open) {
    screen.rail = left.take(sizes.button + sizes.scroll_bar + 3 * sizes.space);
  }
  Column middle(left.rest());
  screen.bar = middle.take_bottom(sizes.button + 2 * sizes.space);
  if (!screen.tight) {
    take_prompt(middle);
  }
  screen.bench = middle.rest();
  place_tools(screen, model, sizes);
  return screen;
}

}  // namespace fw::panels
