#include <algorithm>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using reasoning::Purpose;

struct Choice {
  Purpose purpose;
  const char* text;
  const char* reply;  ///< when it is the wrong one
};
constexpr Choice choices[] = {
    {Purpose::Cover, "cover", "Covering is about faces, in square units. Read again what it does."},
    {Purpose::Fill, "fill", "Filling is about the space inside, in cubic units. Read again what it does."},
    {Purpose::Edge, "edge", "Edging is about lengths along the edges. Read again what it does."},
};

/// What the class's choice deserves.
std::string reply_to(const Shown& shown) {
  const Work& work = shown.desk().work;
  const reasoning::Decision& right = shown.worked().supply->decision;
  if (work.decided) {
    return std::string(work.decision == right.purpose ? "Yes: " : "") + lessons::word_of(right.purpose) + ". " +
           said(right.sentence);
  }
  for (const Choice& choice : choices) {
    if (work.decision == choice.purpose) {
      return choice.reply;
    }
  }
  return {};
}

constexpr const char* question = "What is it for? Say so before you use any numbers.";

double reply_height_in(const Ui& ui, const Shown& shown, double width, TextSize size) {
  const std::string reply = reply_to(shown);
  return reply.empty() ? 0 : ui.wrapped_height(reply, width, size);
}

void choice_buttons(Ui& ui, const Shown& shown, Column& column, TextSize size, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Work& work = shown.desk().work;
  const double width = (column.rest().w - 2 * sizes.space) / 3;
  Row row(column.take(sizes.button), sizes.space);
  for (std::size_t i = 0; i < std::size(choices); ++i) {
    const bool is_right = work.decided && choices[i].purpose == shown.worked().supply->decision.purpose;
    const bool is_wrong = work.decision == choices[i].purpose && !is_right;
    const Icon icon = is_right ? Icon::Check : (is_wrong ? Icon::Cross : Icon::None);
    const bool has_room = size == TextSize::Label;  // small buttons hold their word alone; the reply says the rest
    if (ui.button(ids::decision.at(i), choices[i].text, row.take(width),
                  {.icon = has_room ? icon : Icon::None,
                   .enabled = !work.decided || is_right,
                   .current = is_right,
                   .size = size})) {
      out.push_back(Decide{choices[i].purpose});
    }
  }
  const std::string reply = reply_to(shown);
  if (!reply.empty()) {
    const Color color = work.decided ? ui.theme().ink : ui.theme().bad;
    ui.text(reply, column.take(ui.wrapped_height(reply, column.rest().w, size)),
            {.size = size, .v = figures::VAlign::Top, .wrap = true, .color = color});
  }
}

}  // namespace

void decision_page(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  const double height = sizes.button + sizes.space + reply_height_in(ui, shown, width, TextSize::Small);
  const Rect content = ui.begin_scroll(ids::decision_rows, rect, height);
  Column column({content.x, content.y, width, content.h}, sizes.space);
  choice_buttons(ui, shown, column, TextSize::Small, out);
  ui.end_scroll();
}

void problem_page(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const std::string& prompt = shown.derived.prompt;
  const bool is_word_problem = shown.worked().supply.has_value();
  const bool has_buttons = is_word_problem && !shown.screen.side_below;
  const double width = rect.w - sizes.scroll_bar - sizes.space;
  const double prompt_size = prompt.empty() ? 0 : ui.wrapped_height(prompt, width, TextSize::Label, true);
  const std::string hint =
      is_word_problem ? question : "What do you need to find? Say it, and say how you would start.";
  const double hint_size = ui.wrapped_height(hint, width, TextSize::Small);
  const double choice_size =
      has_buttons ? sizes.button + reply_height_in(ui, shown, width, TextSize::Label) + 2 * sizes.space : 0;
  const Rect content = ui.begin_scroll(ids::work_list, rect, prompt_size + 2 * sizes.space + hint_size + choice_size);
  Column column({content.x, content.y, width, content.h}, sizes.space);
  if (!prompt.empty()) {
    ui.text(prompt, column.take(prompt_size), {.bold = true, .v = figures::VAlign::Top, .wrap = true});
    column.skip(sizes.space);
  }
  ui.text(hint, column.take(hint_size), {.size = TextSize::Small, .wrap = true, .color = ui.theme().quiet_ink});
  if (has_buttons) {
    choice_buttons(ui, shown, column, TextSize::Label, out);
  }
  ui.end_scroll();
}

}  // namespace fw::panels
