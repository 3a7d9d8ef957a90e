#include <algorithm>

#include "app/panels/ids.hpp"
#include "app/panels/panels.hpp"
#include "app/ui/layout.hpp"

namespace fw::app::panels {
namespace {

using figures::Rect;

void typed_answer(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row row(column.take(sizes.button), sizes.space);
  const Rect enter = row.take_right(ui.button_width("OK"));
  const FieldEvent typed = ui.field(ids::answer_field, "name of the solid", "", row.rest(),
                                    {.enabled = !shown.state().quiz.revealed, .hint = "name of the solid"});
  const bool pressed =
      ui.button(ids::answer_enter, "OK", enter, {.look = ButtonLook::Primary, .enabled = !shown.state().quiz.revealed});
  if (typed.entered || pressed) {
    out.push_back(AnswerTyped{typed.text});
  }
}

void option_answer(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const practice::NetQuestion& question = *shown.derived.question;
  const Quiz& quiz = shown.state().quiz;
  const Sizes& sizes = ui.sizes();
  // Two beside each other where height is short.
  const std::size_t in_row = shown.screen.side_below ? 2 : 1;
  Row row({}, 0);
  for (std::size_t i = 0; i < question.options.size(); ++i) {
    if (i % in_row == 0) {
      row = Row(column.take(sizes.field), sizes.space);
    }
    const bool tried = std::find(quiz.tried_options.begin(), quiz.tried_options.end(), i) != quiz.tried_options.end();
    const bool right = quiz.revealed && i == question.right_option;
    const std::string letter(1, static_cast<char>('A' + i));
    const Rect place = in_row == 1 ? row.rest() : row.take((column.rest().w - sizes.space) / 2);
    if (ui.button(ids::answer_option.at(i), letter + "  " + question.options[i], place,
                  {.icon = right ? Icon::Check : (tried ? Icon::Cross : Icon::None),
                   .enabled = !quiz.revealed && !tried,
                   .current = right,
                   .size = TextSize::Small,
                   .h = HAlign::Left})) {
      out.push_back(AnswerOption{i});
    }
  }
}

void answer_buttons(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Quiz& quiz = shown.state().quiz;
  const double width = column.rest().w;
  Row buttons(column.take_bottom(sizes.button), sizes.space);
  const Rect reveal = buttons.take((width - sizes.space) * 0.5);
  if (ui.button(ids::reveal, "show", reveal, {.enabled = !quiz.revealed})) {
    out.push_back(RevealAnswer{});
  }
  if (ui.button(ids::next_question, "next net", buttons.rest(),
                {.look = quiz.revealed ? ButtonLook::Primary : ButtonLook::Outline})) {
    out.push_back(NextQuestion{});
  }
}

/// What the last answer deserves, and the name once it is out.
void verdict(Ui& ui, const Shown& shown, Column& column) {
  const Quiz& quiz = shown.state().quiz;
  const practice::NetQuestion& question = *shown.derived.question;
  const auto say = [&](const std::string& text, bool bold, const Color& color) {
    const double height = ui.wrapped_height(text, column.rest().w, TextSize::Label, bold);
    ui.text(text, column.take(std::min(height, std::max(0.0, column.rest().h))),
            {.bold = bold, .v = figures::VAlign::Top, .wrap = true, .color = color, .shrink = true});
  };
  const bool right = quiz.feedback && quiz.feedback->verdict == fw::solids::NameVerdict::Right;
  if (quiz.revealed) {
    const std::string faces = std::to_string(question.solid.faces().size()) + " faces";
    say((right ? "Yes: " : "") + question.solid.name() + ", " + faces, true, right ? ui.theme().good : ui.theme().ink);
  } else if (quiz.feedback) {
    say(quiz.feedback->message, false, ui.theme().ink);
  }
}

}  // namespace

void quiz(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Rect left = rect;
  Rect right = rect;
  if (shown.screen.side_below) {
    Row halves(rect, 3 * sizes.space);
    left = halves.take(rect.w * 0.64);
    right = halves.rest();
  }
  Column asked(left, sizes.space);
  const std::vector<std::string> styles{"type", "choose"};
  const std::size_t style = shown.state().quiz.style == AnswerStyle::Typed ? 0 : 1;
  if (const auto chosen = ui.tabs(ids::answer_style, styles, style, asked.take(sizes.field), HAlign::Left)) {
    out.push_back(SetAnswerStyle{*chosen == 0 ? AnswerStyle::Typed : AnswerStyle::Options});
  }
  const std::string ask = "Which solid folds from this net?";
  ui.text(ask, asked.take(ui.wrapped_height(ask, left.w, TextSize::Label, true)), {.bold = true, .wrap = true});
  Column answered(right, sizes.space);
  answer_buttons(ui, shown, answered, out);
  if (style == 0) {
    typed_answer(ui, shown, asked, out);
  } else {
    option_answer(ui, shown, asked, out);
  }
  Column below(shown.screen.side_below
                   ? answered.rest()
                   : Rect{asked.rest().x, asked.rest().y, asked.rest().w, answered.rest().bottom() - asked.rest().y},
               sizes.space);
  verdict(ui, shown, below);
}

}  // namespace fw::app::panels
