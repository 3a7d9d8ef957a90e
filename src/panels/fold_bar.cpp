#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

std::string net_text(const NetChoice& choice) {
  if (!choice.current) {
    return "own net";
  }
  const std::string number = "net " + std::to_string(*choice.current + 1);
  return choice.complete ? number + " of " + std::to_string(choice.nets->size()) : number;
}

/// `size`: of a button; `spare`: width that the text must leave free.
void net_buttons(Ui& ui, const Shown& shown, Row& row, double size, double spare, Commands& out) {
  const auto icon = [&](WidgetId id, Icon picture, const char* text) {
    return ui.icon_button(id, picture, text, row.take_right(size).middle(size, size));
  };
  if (icon(ids::net_next, Icon::Next, "next net")) {
    out.push_back(StepNet{1});
  }
  if (icon(ids::net_before, Icon::Previous, "net before")) {
    out.push_back(StepNet{-1});
  }
  const std::string text = net_text(shown.derived.nets);
  const double width = ui.text_width(text, TextSize::Small);
  if (row.rest().w > width + spare) {
    ui.text(text, row.take_right(width), {.size = TextSize::Small});
  }
}

}  // namespace

void fold_bar(Ui& ui, const Shown& shown, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Rect& bar = shown.screen.bar;
  ui.rule_across(bar.x + sizes.space, bar.y, bar.w - 2 * sizes.space);
  Row row(bar.inset(2 * sizes.space, sizes.space), sizes.space);
  const bool waits = shown.state().is_asking();
  const auto icon = [&](WidgetId id, Icon picture, const char* text, bool current) {
    return ui.icon_button(id, picture, text, row.take(sizes.icon).middle(sizes.icon, sizes.icon),
                          {.look = ButtonLook::Plain, .enabled = !waits, .current = current});
  };
  const View& view = shown.view();
  const bool one_by_one = view.order == nets::FoldOrder::OneByOne;
  if (icon(ids::fold_order, one_by_one ? Icon::OneByOne : Icon::Together,
           one_by_one ? "one hinge after another" : "all hinges at once", one_by_one)) {
    out.push_back(SetFoldOrder{one_by_one ? nets::FoldOrder::Together : nets::FoldOrder::OneByOne});
  }
  const bool moving = view.motion != Motion::Still;
  if (icon(ids::fold_play, moving ? Icon::Pause : Icon::Play,
           moving ? "stop here" : (view.fold < 0.5 ? "unfold" : "fold up"), false)) {
    const Motion start = view.fold < 0.5 ? Motion::Opening : Motion::Closing;
    out.push_back(PlayFold{moving ? Motion::Still : start});
  }
  if (icon(ids::fold_close, Icon::Fold, "fold a step", false)) {
    out.push_back(StepFold{-1});
  }
  if (shown.state().mode != Mode::Quiz && !shown.derived.cutouts) {
    Row tools(shown.screen.tools, sizes.space);
    (void)tools.take_right(tools_width(sizes));
    if (shown.screen.tight && tools.rest().w > 2 * tool_size(sizes) + sizes.space) {  // the slider needs the bar
      net_buttons(ui, shown, tools, tool_size(sizes), 0, out);
    } else {
      net_buttons(ui, shown, row, sizes.icon, 6 * sizes.icon, out);
    }
  }
  const Rect open = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
  const Rect track = row.rest().middle(row.rest().w, sizes.icon);
  const SliderEvent slid =
      ui.slider(ids::fold_slider, "how far the net is open", view.fold, {0, 1, 0.05}, track, !waits);
  if (slid.changed) {
    out.push_back(SetFold{slid.value});
  }
  if (ui.icon_button(ids::fold_open, Icon::Unfold, "unfold a step", open,
                     {.look = ButtonLook::Plain, .enabled = !waits})) {
    out.push_back(StepFold{1});
  }
}

}  // namespace fw::panels
