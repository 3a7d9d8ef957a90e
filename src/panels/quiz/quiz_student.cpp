#include <algorithm>

#include "panels/ids.hpp"
#include "panels/quiz/quiz.hpp"
#include "ui/layout.hpp"

// An item before one student: the question, the answer in its form, hints, the reply, the worked solution.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

bool is_name(const Shown& shown) { return practice::is_name(shown.derived.item->form); }
bool is_chosen(const Shown& shown) { return practice::is_chosen(shown.derived.item->form); }

bool chooses(const Shown& shown) { return is_name(shown) && shown.state().quiz.style == AnswerStyle::Options; }

bool shows_steps(const Shown& shown) {
  return item(shown).solution_shown && shown.derived.worked && shown.derived.worked->count > 0;
}

// --- the answer, one function a form ---------------------------------------------------------------------

/// What stands in the field: an answer that lacks a part is kept to be mended, a wrong one makes room for the next.
std::string kept_answer(const ItemWork& work) {
  return work.replies.empty() || work.replies.back().is_try ? "" : work.replies.back().typed;
}

/// A field that is typed into as a student writes.
void typed_answer(Ui& ui, const Shown& shown, const Rect& rect, const std::string& hint, Commands& out) {
  const ItemWork& work = item(shown);
  Row row(rect, ui.sizes().space);
  const Rect enter = row.take_right(ui.button_width("OK"));
  const std::string before = kept_answer(work);
  const FieldEvent typed =
      ui.field(ids::answer_field, hint, before, row.rest(),
               {.bad = !before.empty(), .hint = hint, .answers = true, .of = shown.state().quiz.number});
  const bool pressed = ui.button(ids::answer_enter, "OK", enter, {.look = ButtonLook::Primary});
  if (pressed) {
    ui.take_field(ids::answer_field);
  }
  if (typed.entered || pressed) {
    out.push_back(AnswerTyped{typed.text});
  }
}

void option_answer(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const ItemShown& about = *shown.derived.item;
  const ItemWork& work = item(shown);
  const Sizes& sizes = ui.sizes();
  Column column(rect, sizes.space);
  for (std::size_t i = 0; i < about.names.size(); ++i) {
    const bool tried = std::find(work.tried.begin(), work.tried.end(), i) != work.tried.end();
    const bool right = work.done && i == about.right_name;
    const std::string letter(1, static_cast<char>('A' + i));
    if (ui.button(ids::answer_option.at(i), letter + "  " + about.names[i], column.take(sizes.field),
                  {.icon = right ? Icon::Check : (tried ? Icon::Cross : Icon::None),
                   .enabled = !work.done && !tried,
                   .current = right,
                   .size = TextSize::Small,
                   .h = HAlign::Left,
                   .locked = true})) {
      out.push_back(AnswerOption{i});
    }
  }
}

double options_height(const Ui& ui, const Shown& shown) {
  const double rows = static_cast<double>(shown.derived.item->names.size());
  return rows * (ui.sizes().field + ui.sizes().space) - ui.sizes().space;
}

/// What an empty field asks for.
std::string asks_to_type(const Shown& shown) {
  const practice::TaskType* task = practice::first_task(shown.state().current());
  return task == nullptr ? "name of the solid" : said(task->asks_to_type());
}

void name_answer(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  Column column(rect, ui.sizes().space);
  const std::vector<std::string> styles{"type", "choose"};
  const std::size_t style = chooses(shown) ? 1 : 0;
  if (const auto chosen = ui.tabs(ids::answer_style, styles, style, column.take(ui.sizes().field), HAlign::Left)) {
    out.push_back(SetAnswerStyle{*chosen == 0 ? AnswerStyle::Typed : AnswerStyle::Options});
  }
  if (style == 1 && !shown.screen.side_below) {
    option_answer(ui, shown, column.rest(), out);
  } else if (style == 0) {
    typed_answer(ui, shown, column.rest(), asks_to_type(shown), out);
  }
}

/// Nothing is left to be typed once the answer is out, but the names stand there with their marks.
bool is_over(const Shown& shown) {
  const bool is_typed_too = item(shown).asks_value && !item(shown).done;
  return (is_chosen(shown) && !is_typed_too) || (item(shown).done && !chooses(shown));
}

double answer_height(const Ui& ui, const Shown& shown) {
  const Sizes& sizes = ui.sizes();
  if (!is_name(shown)) {
    return sizes.button;
  }
  const double options = shown.screen.side_below ? 0 : options_height(ui, shown);
  return sizes.field + sizes.space + (chooses(shown) ? options : sizes.button);
}

void answer(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  switch (shown.derived.item->form) {
    case AnswerForm::NetName:
    case AnswerForm::Name:
    case AnswerForm::CutoutName:
      name_answer(ui, shown, rect, out);
      break;
    case AnswerForm::Count:
    case AnswerForm::Number:
      typed_answer(ui, shown, rect, asks_to_type(shown), out);
      break;
    case AnswerForm::Option:
      typed_answer(ui, shown, rect, asks_to_type(shown), out);  // the right value, once the mistake is found
      break;
    case AnswerForm::Cutout:
      break;  // its options stand on the page
  }
}

// --- what is read ----------------------------------------------------------------------------------------

/// What the last answer deserves, and the answer itself once it is out.
std::vector<PageText> reply_texts(const Ui& ui, const Shown& shown) {
  const ItemWork& work = item(shown);
  const ItemShown& about = *shown.derived.item;
  std::vector<PageText> texts;
  const bool is_right = !work.replies.empty() && work.replies.back().verdict == practice::AnswerVerdict::Right;
  const bool is_told = !work.replies.empty() && work.replies.back().verdict != practice::AnswerVerdict::Unrecognized;
  if (!work.replies.empty() && work.replies.back().is_try && !(work.done && is_told)) {  // it has left the field
    const std::string wrote = "You wrote " + work.replies.back().typed + ".";
    texts.push_back({wrote + (work.done ? "" : " Not yet."), TextSize::Small, false, ui.theme().quiet_ink});
  }
  if (!work.replies.empty() && !(work.done && !is_right && is_name(shown))) {
    texts.push_back(
        {said(work.replies.back().message), TextSize::Label, is_right, is_right ? ui.theme().good : ui.theme().ink});
  }
  const bool is_marked = is_chosen(shown);  // its option has a check mark
  if (work.done && !(is_right && is_name(shown)) && !is_marked) {
    texts.push_back({"Answer: " + about.answer, TextSize::Label, true, ui.theme().ink});
  }
  return texts;
}

/// Hints, and a solution that is told in sentences.
std::vector<PageText> help_texts(Ui& ui, const Shown& shown, double width) {
  const ItemShown& about = *shown.derived.item;
  std::vector<PageText> texts;
  for (const practice::Hint& hint : about.hints) {
    texts.push_back(hint_text(ui, hint, width));
  }
  for (const std::string& sentence : about.solution) {
    texts.push_back({sentence, TextSize::Small, false, ui.theme().ink});
  }
  return texts;
}

/// The question above, help between, and the reply just over the field.
void typed_page(Ui& ui, const Shown& shown, const Rect& rect) {
  const std::size_t number = shown.state().quiz.number;
  const double width = page_width(ui, rect);
  const std::vector<PageText> help = help_texts(ui, shown, width);
  const std::vector<PageText> replies = shown.screen.side_below ? std::vector<PageText>{} : reply_texts(ui, shown);
  const double between = texts_height(ui, help, width);
  const double reply = texts_height(ui, replies, width);
  const bool is_large = texts_height(ui, {question_text(ui, shown, true)}, width) + between + reply <= rect.h;
  const std::vector<PageText> question{question_text(ui, shown, is_large)};
  const PageParts parts = page_parts(rect, texts_height(ui, question, width), between, reply);
  text_page(ui, ids::item_page.at(number), question, parts.question);
  if (!help.empty()) {
    text_page(ui, ids::item_help.at(number), help, parts.between);
  }
  text_page(ui, ids::item_reply.at(number), replies, parts.reply);
}

/// A student who did not find it alone can try the same kind with new numbers.
bool may_retry(const Shown& shown) {
  return item(shown).done && end_of(item(shown)) != ItemEnd::Right && tasks::has_similar(shown.state().quiz.item());
}

void student_buttons(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const ItemWork& work = item(shown);
  const bool retries = may_retry(shown);
  const bool is_last = shown.state().quiz.number + 1 == shown.state().quiz.set->size();
  const std::string help = retries ? "try new numbers" : "hint";
  const std::string on = is_last ? "end" : "next";
  // Each as wide as its text needs; what is left over is shared.
  const double spare =
      (rect.w - 2 * sizes.space - ui.button_width(help) - ui.button_width("solution") - ui.button_width(on)) / 3;
  Row row(rect, sizes.space);
  const auto width = [&](const std::string& text) { return ui.button_width(text) + std::min(spare, rect.w / 4); };
  const bool has_hint = !work.done && shown.derived.item->hints_left > 0;
  if (retries && ui.button(ids::try_again, help, row.take(width(help)))) {
    out.push_back(TryNewNumbers{});
    ui.clear_focus();
  }
  if (!retries && ui.button(ids::hint, help, row.take(width(help)), {.enabled = has_hint})) {
    out.push_back(ShowHint{});
  }
  if (ui.button(ids::reveal, "solution", row.take(width("solution")), {.enabled = !work.solution_shown})) {
    out.push_back(RevealAnswer{});
  }
  if (ui.button(ids::go_on, on, row.rest(), {.look = work.done ? ButtonLook::Primary : ButtonLook::Outline})) {
    out.push_back(StepItem{1});
    ui.clear_focus();
  }
}

/// Under the steps: where the pointed number comes from, or what was said to the last answer.
void under_steps(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const double most = column.rest().h * (shown.screen.side_below ? 1.0 : 0.4);
  const double origin = reply_height(ui, shown, column.rest().w);
  if (origin > 0) {
    const double height = std::min(origin, most);
    reply(ui, shown, shown.screen.side_below ? column.take(height) : column.take_bottom(height), out);
    return;
  }
  std::vector<PageText> texts = reply_texts(ui, shown);
  for (PageText& text : texts) {
    text.size = TextSize::Small;
  }
  const double height = std::min(most, texts_height(ui, texts, page_width(ui, column.rest())));
  const Rect place = shown.screen.side_below ? column.take(height) : column.take_bottom(height);
  text_page(ui, ids::item_reply.at(shown.state().quiz.number), texts, place);
}

}  // namespace

void quiz_student(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const bool low = shown.screen.side_below;
  const auto [left, right] = halves(shown, rect, 0.56, 2 * sizes.space);
  Column does(right, sizes.space);
  item_head(ui, shown, does.take(sizes.field), out);
  student_buttons(ui, shown, does.take_bottom(sizes.button), out);
  if (!is_over(shown)) {
    const double height = answer_height(ui, shown);
    answer(ui, shown, low ? does.take(height) : does.take_bottom(height), out);
  }
  if (item(shown).done) {  // from here Enter goes on
    ui.offer_focus(ids::go_on, shown.state().quiz.number);
  }
  if (!shows_steps(shown) && is_chosen(shown)) {
    std::vector<PageText> texts = reply_texts(ui, shown);
    for (const std::string& sentence : shown.derived.item->solution) {
      texts.push_back({sentence, TextSize::Small, false, ui.theme().ink});
    }
    choice_page(ui, shown, low ? std::vector<PageText>{} : texts, low ? left : does.rest(), out);
    if (low) {
      text_page(ui, ids::item_reply.at(shown.state().quiz.number), texts, does.rest());
    }
    return;
  }
  if (!shows_steps(shown)) {
    Column reads(low ? left : does.rest(), sizes.space);
    if (low && chooses(shown)) {  // names need a whole column's width
      option_answer(ui, shown, reads.take_bottom(options_height(ui, shown)), out);
    }
    typed_page(ui, shown, reads.rest());
    if (low) {
      text_page(ui, ids::item_reply.at(shown.state().quiz.number), reply_texts(ui, shown), does.rest());
    }
    return;
  }
  under_steps(ui, shown, does, out);
  Column reads(low ? left : does.rest(), sizes.space);
  constexpr double most_question = 0.3;
  const std::vector<PageText> question{question_text(ui, shown, false)};
  const double height = texts_height(ui, question, page_width(ui, reads.rest()));
  text_page(ui, ids::item_page.at(shown.state().quiz.number), question,
            reads.take(std::min(height, reads.rest().h * most_question)));
  step_list(ui, shown, reads.rest(), out);
}

}  // namespace fw::panels
