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
  for (std::size_t i = 0; i < question.options.size(); ++i) {
    const bool tried = std::find(quiz.tried_options.begin(), quiz.tried_options.end(), i) != quiz.tried_options.end();
    const bool right = quiz.revealed && i == question.right_option;
    const std::string letter(1, static_cast<char>('A' + i));
    if (ui.button(ids::answer_option.at(i), letter + "  " + question.options[i], column.take(sizes.button),
                  {.icon = right ? Icon::Check : (tried ? Icon::Cross : Icon::None),
                   .enabled = !quiz.revealed && !tried,
                   .current = right,
                   .h = HAlign::Left})) {
      out.push_back(AnswerOption{i});
    }
  }
}

}  // namespace

void quiz(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Quiz& quiz = shown.state().quiz;
  const practice::NetQuestion& question = *shown.derived.question;
  Column column(rect, sizes.space);
  const std::vector<std::string> styles{"type", "choose"};
  const std::size_t style = quiz.style == AnswerStyle::Typed ? 0 : 1;
  if (const auto chosen = ui.tabs(ids::answer_style, styles, style, column.take(sizes.field), HAlign::Left)) {
    out.push_back(SetAnswerStyle{*chosen == 0 ? AnswerStyle::Typed : AnswerStyle::Options});
  }
  const std::string ask = "Which solid folds from this net?";
  ui.text(ask, column.take(ui.wrapped_height(ask, rect.w, TextSize::Label, true)), {.bold = true, .wrap = true});
  Row buttons(column.take_bottom(sizes.button), sizes.space);
  const Rect reveal = buttons.take((rect.w - sizes.space) * 0.5);
  if (ui.button(ids::reveal, "show", reveal, {.enabled = !quiz.revealed})) {
    out.push_back(RevealAnswer{});
  }
  if (ui.button(ids::next_question, "next net", buttons.rest(),
                {.look = quiz.revealed ? ButtonLook::Primary : ButtonLook::Outline})) {
    out.push_back(NextQuestion{});
  }
  if (quiz.style == AnswerStyle::Typed) {
    typed_answer(ui, shown, column, out);
  } else {
    option_answer(ui, shown, column, out);
  }
  if (quiz.feedback) {
    const bool right = quiz.feedback->verdict == fw::solids::NameVerdict::Right;
    const double height = ui.wrapped_height(quiz.feedback->message, rect.w, TextSize::Label, right);
    ui.text(quiz.feedback->message, column.take(std::min(height, column.rest().h)),
            {.bold = right,
             .v = figures::VAlign::Top,
             .wrap = true,
             .color = right ? ui.theme().good : ui.theme().ink,
             .shrink = true});
  }
  if (quiz.revealed) {
    const std::string name = question.solid.name() + ": " + std::to_string(question.solid.faces().size()) + " faces";
    const double height = ui.wrapped_height(name, rect.w, TextSize::Label, true);
    ui.text(name, column.take(height), {.bold = true, .v = figures::VAlign::Top, .wrap = true});
  }
}

}  // namespace fw::app::panels
