#include <algorithm>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

// Any measure can be made the unknown.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

std::string words_for(const reasoning::Askable& one) {
  return one.title + (one.letter.empty() ? "" : " " + one.letter);
}

double row_height(const Ui& ui) { return ui.sizes().field + ui.sizes().space * 0.5; }

void measure_rows(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const WorkedProblem& worked = shown.worked();
  std::size_t current = 0;
  for (std::size_t i = 0; i < worked.askable.size(); ++i) {
    current = worked.askable[i].name == worked.asked ? i : current;
  }
  const Rect content = ui.begin_scroll(ids::ask_rows, rect, row_height(ui) * static_cast<double>(worked.askable.size()),
                                       Span{row_height(ui) * static_cast<double>(current), row_height(ui)});
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  Column column({content.x, content.y, width, content.h}, sizes.space * 0.5);
  for (std::size_t i = 0; i < worked.askable.size(); ++i) {
    const reasoning::Askable& one = worked.askable[i];
    const bool is_asked = one.name == worked.asked;
    if (ui.button(ids::ask_measure.at(i), words_for(one), column.take(sizes.field),
                  {.look = is_asked ? ButtonLook::Outline : ButtonLook::Plain,
                   .icon = is_asked ? Icon::Check : Icon::None,
                   .current = is_asked,
                   .size = TextSize::Small,
                   .h = HAlign::Left})) {
      out.push_back(AskFor{one.name, std::nullopt});
    }
  }
  ui.end_scroll();
}

std::string missing_text(const WorkedProblem& worked) {
  const std::string text = said(words::message("{why:up}", {{"why", worked.missing}}));
  const bool ends = !text.empty() && (text.back() == '.' || text.back() == '?');
  return ends ? text : text + ".";
}

/// The box leaves room for a bar, and its text for a rim.
double box_width(const Ui& ui, double width) { return width - ui.sizes().scroll_bar - ui.sizes().space; }
double inner(const Ui& ui, double width) { return box_width(ui, width) - 2 * ui.sizes().space; }

/// How the offers share rows; each is a button of its text's width.
std::vector<std::size_t> offers_in_rows(const Ui& ui, const WorkedProblem& worked, double width) {
  std::vector<std::size_t> rows;
  double used = width;
  for (const reasoning::Askable& one : worked.offered) {
    const double need = std::min(width, ui.button_width("give " + words_for(one), {.size = TextSize::Small}));
    if (used + need > width) {
      rows.push_back(0);
      used = 0;
    }
    ++rows.back();
    used += need + ui.sizes().space;
  }
  return rows;
}

}  // namespace

double missing_height(const Ui& ui, const Shown& shown, double width) {
  const WorkedProblem& worked = shown.worked();
  if (worked.missing.empty()) {
    return 0;
  }
  const double rows = static_cast<double>(offers_in_rows(ui, worked, inner(ui, width)).size());
  return ui.wrapped_height(missing_text(worked), inner(ui, width), TextSize::Label) + rows * row_height(ui) +
         3 * ui.sizes().space;
}

void missing(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const WorkedProblem& worked = shown.worked();
  const Rect content = ui.begin_scroll(ids::missing_rows, rect, missing_height(ui, shown, rect.w));
  const Rect box{content.x, content.y, box_width(ui, rect.w), content.h};
  ui.canvas().rounded(box.inset(sizes.edge / 2), sizes.radius, std::nullopt,
                      figures::Stroke{ui.theme().bad, sizes.edge, 0});
  Column column(box.inset(sizes.space, sizes.space), sizes.space * 0.5);
  const std::string text = missing_text(worked);
  ui.text(text, column.take(ui.wrapped_height(text, column.rest().w, TextSize::Label)),
          {.v = figures::VAlign::Top, .wrap = true, .color = ui.theme().bad});
  std::size_t next = 0;
  for (const std::size_t in_row : offers_in_rows(ui, worked, column.rest().w)) {
    Row row(column.take(sizes.field), sizes.space);
    for (std::size_t i = 0; i < in_row; ++i, ++next) {
      const reasoning::Askable& one = worked.offered[next];
      const std::string give = "give " + words_for(one);
      const double width = std::min(row.rest().w, ui.button_width(give, {.size = TextSize::Small}));
      if (ui.button(ids::give_measure.at(next), give, row.take(width), {.size = TextSize::Small})) {
        out.push_back(AskFor{worked.asked, one.name});
      }
    }
  }
  ui.end_scroll();
}

void ask(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const bool low = shown.screen.side_below;
  const auto [left, right] = halves(shown, rect, 0.55, 2 * sizes.space);
  Column about(right, sizes.space);
  if (!low) {
    ui.text("What do you want to find?", about.take(ui.line(TextSize::Label)), {.bold = true, .shrink = true});
  }
  const bool is_changed = !shown.desk().work.asked.empty();
  if (ui.button(ids::ask_lesson, "what the lesson asks", about.take_bottom(sizes.button),
                {.enabled = is_changed, .size = TextSize::Small})) {
    out.push_back(AskFor{"", std::nullopt});
  }
  const double height = missing_height(ui, shown, right.w);
  if (height > 0) {
    const double room = std::min(height, about.rest().h * (low ? 1.0 : 0.6));
    missing(ui, shown, low ? about.take(room) : about.take_bottom(room), out);
  }
  measure_rows(ui, shown, low ? left : about.rest(), out);
}

}  // namespace fw::panels
