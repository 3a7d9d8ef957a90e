#include "app/panels/quiz.hpp"

#include <algorithm>

#include "app/panels/ids.hpp"
#include "app/ui/layout.hpp"

namespace fw::app::panels {

using figures::Rect;

double page_width(const Ui& ui, const Rect& rect) { return rect.w - ui.sizes().scroll_bar - ui.sizes().space; }

namespace {

double height_of(const Ui& ui, const PageText& one, double width) {
  return ui.wrapped_height(one.text, width, one.size, one.bold) + (one.line ? one.line->size().y : 0);
}

}  // namespace

PageText hint_text(Ui& ui, const practice::Hint& hint, double width) {
  PageText text{hint.text, TextSize::Small, false, ui.theme().ink};
  if (hint.line) {
    const double em = ui.em(TextSize::Small);
    text.line = figures::FormulaLayout(ui.canvas(), *hint.line, em, width);
    if (text.line->size().x > width) {  // a single term wider than the page: smaller rather than cut off
      text.line = figures::FormulaLayout(ui.canvas(), *hint.line, em * width / text.line->size().x, width);
    }
  }
  return text;
}

double texts_height(const Ui& ui, const std::vector<PageText>& texts, double width) {
  double height = 0;
  for (const PageText& one : texts) {
    height += height_of(ui, one, width) + ui.sizes().space;
  }
  return height;
}

void draw_texts(Ui& ui, const std::vector<PageText>& texts, const Rect& rect) {
  Column column(rect, ui.sizes().space);
  for (const PageText& one : texts) {
    const Rect place = column.take(height_of(ui, one, rect.w));
    const double height = ui.wrapped_height(one.text, rect.w, one.size, one.bold);
    if (one.line) {
      one.line->draw(ui.canvas(), {place.x, place.y + height}, ui.theme().panel_palette());
    }
    ui.text(one.text, {place.x, place.y, place.w, height},
            {.size = one.size, .bold = one.bold, .v = figures::VAlign::Top, .wrap = true, .color = one.color});
  }
}

void text_page(Ui& ui, WidgetId id, const std::vector<PageText>& texts, const Rect& rect) {
  const double width = page_width(ui, rect);
  const double height = texts_height(ui, texts, width);
  std::optional<Span> last;
  if (!texts.empty()) {
    const double newest = texts_height(ui, {texts.back()}, width);
    last = Span{height - newest, newest};
  }
  const Rect content = ui.begin_scroll(id, rect, height, last);
  draw_texts(ui, texts, {content.x, content.y, width, content.h});
  ui.end_scroll();
}

void item_head(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Quiz& quiz = shown.state().quiz;
  Row row(rect, sizes.space * 0.5);
  const auto icon = [&](WidgetId id, Icon picture, const char* text, bool right, bool enabled) {
    const Rect place = right ? row.take_right(sizes.icon) : row.take(sizes.icon);
    return ui.icon_button(id, picture, text, place.middle(sizes.icon, sizes.icon),
                          {.look = ButtonLook::Plain, .enabled = enabled});
  };
  if (icon(ids::quiz_end, Icon::Close, "end the quiz", true, true)) {
    out.push_back(EndQuiz{});
  }
  if (!shown.view().presenting) {
    const History& history = shown.model.history;
    if (icon(ids::item_redo, Icon::Redo, "redo", true, history.can_redo())) {
      out.push_back(Redo{});
    }
    if (icon(ids::item_undo, Icon::Undo, "undo", true, history.can_undo())) {
      out.push_back(Undo{});
    }
  }
  if (icon(ids::item_before, Icon::Previous, "item before", false, quiz.number > 0)) {
    out.push_back(StepItem{-1});
  }
  const std::string place = std::to_string(quiz.number + 1) + " of " + std::to_string(quiz.set->size());
  ui.text(place, row.take(ui.text_width(place, TextSize::Label, true) + sizes.space),
          {.bold = true, .h = HAlign::Center});
  if (icon(ids::item_next, Icon::Next, "next item", false, quiz.number + 1 < quiz.set->size())) {
    out.push_back(StepItem{1});
  }
}

void quiz(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  if (!shown.derived.item) {
    quiz_start(ui, shown, rect, out);
  } else if (shown.state().quiz.setup.audience == Audience::Class) {
    quiz_class(ui, shown, rect, out);
  } else {
    quiz_student(ui, shown, rect, out);
  }
}

}  // namespace fw::app::panels
