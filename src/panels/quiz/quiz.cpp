#include "panels/quiz/quiz.hpp"

#include <algorithm>

#include "panels/ids.hpp"
#include "practice/choices.hpp"
#include "tasks/nets/net_task.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

using figures::Rect;

double page_width(const Ui& ui, const Rect& rect) { return rect.w - ui.sizes().scroll_bar - ui.sizes().space; }

namespace {

double height_of(const Ui& ui, const PageText& one, double width) {
  return ui.wrapped_height(one.text, width, one.size, one.bold) + (one.line ? one.line->size().y : 0);
}

}  // namespace

PageText hint_text(Ui& ui, const practice::Hint& hint, double width) {
  PageText text{said(hint.text), TextSize::Small, false, ui.theme().ink};
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

PageParts page_parts(const Rect& rect, double question, double between, double reply) {
  constexpr double least_between = 0.3;  // shares of the page
  constexpr double most_question = 0.4;
  const double kept = between > 0 ? std::min(between, rect.h * least_between) : 0;
  const double above = std::min(question, std::max(rect.h - kept - reply, rect.h * most_question));
  const double below = std::min(reply, rect.h - kept - above);
  Column column(rect);
  PageParts parts;
  parts.question = column.take(above);
  parts.reply = column.take_bottom(below);
  parts.between = column.rest();
  return parts;
}

PageText question_text(const Ui& ui, const Shown& shown, bool is_large) {
  return {shown.derived.prompt, is_large ? TextSize::Label : TextSize::Small, true, ui.theme().ink};
}

// --- a question with its options -----------------------------------------------------------------------------

namespace {

/// A list of options: those of the question, or the reasons that are asked for after it.
struct OptionList {
  const std::vector<practice::Choice>* choices;
  const std::vector<std::size_t>* chosen;
  bool is_present = true;  ///< a click chooses one of these
};

/// An option with its place, measured before it is drawn.
struct OptionRow {
  std::string text;
  ButtonOptions look;
  double height = 0;
};

bool is_among(const std::vector<std::size_t>& all, std::size_t one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

/// Whether a click on an option does something after the answer: card of each candidate and each place can be folded.
bool can_be_shown(const Shown& shown) {
  const tasks::NetTask* net = tasks::net_asked(shown.state().current());
  return net != nullptr && net->has_letters();
}

std::string option_text(const Shown& shown, const OptionList& list, std::size_t index) {
  const std::string letter = practice::letter(index);
  const std::string text = said((*list.choices)[index].text);
  if (text != letter) {
    return letter + "  " + text;
  }
  // A letter stands on the bench and says enough there; here it says what it is.
  const bool is_place = tasks::net_asked(shown.state().current())->takes_several();
  return letter + (is_place ? "  this edge" : "  this cut-out");
}

OptionRow row_of(const Ui& ui, const Shown& shown, const OptionList& list, std::size_t index, double width) {
  const bool done = item(shown).done;
  const bool chosen = is_among(*list.chosen, index);
  const practice::Choice& choice = (*list.choices)[index];
  // What was chosen shows its mark; the right one only once it is out, or where it was found.
  const bool right = choice.is_right && (done || chosen);
  OptionRow row;
  row.text = option_text(shown, list, index);
  row.look = {.icon = right    ? Icon::Check
                      : chosen ? Icon::Cross
                               : Icon::None,
              .enabled = done ? right || (can_be_shown(shown) && list.is_present) : list.is_present && !chosen,
              .current = right,
              .size = TextSize::Small,
              .h = HAlign::Left,
              .wrap = true,
              .locked = true};
  row.height = ui.button_height(row.text, width, row.look);
  return row;
}

/// Short options stand beside one another.
double row_width(const Ui& ui, const Shown& shown, const OptionList& list, double width) {
  const double half = (width - ui.sizes().space) / 2;
  bool are_short = list.choices->size() % 2 == 0;
  for (std::size_t i = 0; i < list.choices->size(); ++i) {
    ButtonOptions look{.icon = Icon::Check, .size = TextSize::Small};
    are_short = are_short && ui.button_width(option_text(shown, list, i), look) <= half;
  }
  return are_short ? half : width;
}

double list_height(const Ui& ui, const Shown& shown, const OptionList& list, double width) {
  const double each = row_width(ui, shown, list, width);
  const std::size_t columns = each < width ? 2 : 1;
  double height = 0;
  for (std::size_t i = 0; i < list.choices->size(); i += columns) {
    height += row_of(ui, shown, list, i, each).height + ui.sizes().space;
  }
  return height;
}

void draw_list(Ui& ui, const Shown& shown, const OptionList& list, const Rect& rect, Commands& out) {
  const double each = row_width(ui, shown, list, rect.w);
  const std::size_t columns = each < rect.w ? 2 : 1;
  double y = rect.y;
  for (std::size_t i = 0; i < list.choices->size(); ++i) {
    const OptionRow row = row_of(ui, shown, list, i, each);
    const double x = rect.x + static_cast<double>(i % columns) * (each + ui.sizes().space);
    const WidgetId id = (list.is_present ? ids::answer_option : ids::answer_before).at(i);
    if (ui.button(id, row.text, {x, y, each, row.height}, row.look)) {
      out.push_back(AnswerOption{i});
    }
    y += i % columns + 1 == columns ? row.height + ui.sizes().space : 0;
  }
}

std::vector<OptionList> lists_of(const Shown& shown) {
  const ItemShown& about = *shown.derived.item;
  const ItemWork& work = item(shown);
  std::vector<OptionList> lists{{&about.choices, &work.tried, about.reasons.empty() && !work.asks_value}};
  if (!about.reasons.empty()) {
    lists.push_back({&about.reasons, &work.reasons, true});
  }
  return lists;
}

std::vector<PageText> hint_texts(Ui& ui, const Shown& shown, double width) {
  std::vector<PageText> texts;
  for (const practice::Hint& hint : shown.derived.item->hints) {
    texts.push_back(hint_text(ui, hint, width));
  }
  return texts;
}

/// Hints and options, which scroll to a list that is new.
void hints_and_options(Ui& ui, const Shown& shown, const Rect& rect, double height, Commands& out) {
  const double width = page_width(ui, rect);
  const std::vector<PageText> hints = hint_texts(ui, shown, width);
  const std::vector<PageText> why{{"Why not?", TextSize::Label, true, ui.theme().ink}};
  const std::vector<OptionList> lists = lists_of(shown);
  std::optional<Span> last;
  if (lists.size() > 1) {
    const double newest = list_height(ui, shown, lists.back(), width);
    last = Span{height - newest, newest};
  } else if (!hints.empty()) {
    const double newest = texts_height(ui, {hints.back()}, width);
    last = Span{texts_height(ui, hints, width) - newest, newest};
  }
  const Rect content = ui.begin_scroll(ids::item_help.at(shown.state().quiz.number), rect, height, last);
  Column column({content.x, content.y, width, content.h});
  draw_texts(ui, hints, column.take(texts_height(ui, hints, width)));
  for (const OptionList& list : lists) {
    if (&list != &lists.front()) {
      draw_texts(ui, why, column.take(texts_height(ui, why, width)));
    }
    draw_list(ui, shown, list, column.take(list_height(ui, shown, list, width)), out);
  }
  ui.end_scroll();
}

double hints_and_options_height(Ui& ui, const Shown& shown, double width) {
  const std::vector<PageText> why{{"Why not?", TextSize::Label, true, ui.theme().ink}};
  double height = texts_height(ui, hint_texts(ui, shown, width), width);
  for (const OptionList& list : lists_of(shown)) {
    height += list_height(ui, shown, list, width);
  }
  return height + (lists_of(shown).size() > 1 ? texts_height(ui, why, width) : 0);
}

}  // namespace

void choice_page(Ui& ui, const Shown& shown, const std::vector<PageText>& replies, const Rect& rect, Commands& out) {
  const double width = page_width(ui, rect);
  const double options = hints_and_options_height(ui, shown, width);
  const double reply = texts_height(ui, replies, width);
  const bool is_large = texts_height(ui, {question_text(ui, shown, true)}, width) + options + reply <= rect.h;
  const std::vector<PageText> question{question_text(ui, shown, is_large)};
  const PageParts parts = page_parts(rect, texts_height(ui, question, width), options, reply);
  text_page(ui, ids::item_page.at(shown.state().quiz.number), question, parts.question);
  hints_and_options(ui, shown, parts.between, options, out);
  text_page(ui, ids::item_reply.at(shown.state().quiz.number), replies, parts.reply);
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
  if (shown.state().quiz.results) {
    quiz_results(ui, shown, rect, out);
  } else if (!shown.derived.item) {
    quiz_start(ui, shown, rect, out);
  } else if (shown.state().quiz.setup.audience == Audience::Class) {
    quiz_class(ui, shown, rect, out);
  } else {
    quiz_student(ui, shown, rect, out);
  }
}

}  // namespace fw::panels
