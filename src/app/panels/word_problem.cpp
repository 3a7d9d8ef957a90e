#include <algorithm>

#include "app/panels/ids.hpp"
#include "app/panels/panels.hpp"
#include "app/ui/layout.hpp"

namespace fw::app::panels {
namespace {

using figures::Rect;
using reasoning::Purpose;

struct Choice {
  Purpose purpose;
  const char* text;
  const char* reply;  ///< when it is the wrong one
};
constexpr Choice choices[] = {
    {Purpose::Cover, "cover", "Covering is for faces: square units. Read again what the thing does."},
    {Purpose::Fill, "fill", "Filling is for the space inside: cubic units. Read again what the thing does."},
    {Purpose::Edge, "edge", "Edging is for lengths: it runs along edges. Read again what the thing does."},
};

/// What the class's choice deserves.
std::string reply_to(const Shown& shown) {
  const Work& work = shown.desk().work;
  const reasoning::Decision& right = shown.worked().supply->decision;
  if (work.decided) {
    return (work.decision == right.purpose ? "Yes: " : "") + right.word + ". " + right.sentence;
  }
  for (const Choice& choice : choices) {
    if (work.decision == choice.purpose) {
      return choice.reply;
    }
  }
  return {};
}

void decision(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Work& work = shown.desk().work;
  const std::string ask = "What is it for? Say it before any number.";
  ui.text(ask, column.take(ui.wrapped_height(ask, column.rest().w, TextSize::Small)),
          {.size = TextSize::Small, .wrap = true, .color = ui.theme().quiet_ink});
  const double width = (column.rest().w - 2 * sizes.space) / 3;
  Row row(column.take(sizes.button), sizes.space);
  for (std::size_t i = 0; i < std::size(choices); ++i) {
    const bool is_right = work.decided && choices[i].purpose == shown.worked().supply->decision.purpose;
    const bool is_wrong = work.decision == choices[i].purpose && !is_right;
    if (ui.button(ids::decision.at(i), choices[i].text, row.take(width),
                  {.icon = is_right ? Icon::Check : (is_wrong ? Icon::Cross : Icon::None),
                   .enabled = !work.decided,
                   .current = is_right})) {
      out.push_back(Decide{choices[i].purpose});
    }
  }
  const std::string reply = reply_to(shown);
  if (!reply.empty()) {
    const Color color = work.decided ? ui.theme().ink : ui.theme().bad;
    ui.text(reply, column.take(ui.wrapped_height(reply, column.rest().w, TextSize::Label)),
            {.v = figures::VAlign::Top, .wrap = true, .color = color});
  }
}

}  // namespace

void problem_page(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const std::string& prompt = shown.state().current().prompt;
  const bool is_word_problem = shown.worked().supply.has_value();
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  const double prompt_size = prompt.empty() ? 0 : ui.wrapped_height(prompt, width, TextSize::Label, true);
  const std::string hint = "What is asked for? Say it, and how you would begin.";
  const double hint_size = ui.wrapped_height(hint, width, TextSize::Small);
  const std::string reply = is_word_problem ? reply_to(shown) : "";
  const double decision_size =
      !is_word_problem
          ? 0
          : ui.wrapped_height("What is it for? Say it before any number.", width, TextSize::Small) + sizes.button +
                (reply.empty() ? 0 : ui.wrapped_height(reply, width, TextSize::Label)) + 3 * sizes.space;
  const double below = is_word_problem ? decision_size : hint_size;
  const Rect content = ui.begin_scroll(ids::work_list, rect, prompt_size + 2 * sizes.space + below);
  Column column({content.x, content.y, width, content.h}, sizes.space);
  if (!prompt.empty()) {
    ui.text(prompt, column.take(prompt_size), {.bold = true, .v = figures::VAlign::Top, .wrap = true});
    column.skip(sizes.space);
  }
  if (is_word_problem) {
    decision(ui, shown, column, out);
  } else {
    ui.text(hint, column.take(hint_size), {.size = TextSize::Small, .wrap = true, .color = ui.theme().quiet_ink});
  }
  ui.end_scroll();
}

}  // namespace fw::app::panels
