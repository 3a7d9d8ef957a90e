#include <algorithm>

#include "panels/ids.hpp"
#include "panels/quiz/quiz.hpp"
#include "ui/layout.hpp"

// An item before a class: the question alone, then options that are each one mistake, then what each of them shows.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

bool is_out(const Shown& shown) { return item(shown).stage == ClassStage::Answer; }

/// Type of the options, and of what is told of the one that the class talks about.
struct PageType {
  TextSize option, told;
  bool tells_all = true;  ///< of every mistake, while the class talks about none
};
/// From the back of the room the largest that fits is read. No option is scrolled away for the sake of a reason.
constexpr PageType page_types[] = {
    {TextSize::Heading, TextSize::Label},      {TextSize::Label, TextSize::Label},
    {TextSize::Label, TextSize::Small},        {TextSize::Small, TextSize::Small},
    {TextSize::Label, TextSize::Small, false}, {TextSize::Small, TextSize::Small, false}};

/// An option with its count of hands, measured before it is drawn.
struct OptionBlock {
  std::size_t index = 0;
  std::string text;
  TextSize size = TextSize::Small;
  bool hands_below = false;  ///< the text needs the whole width
  double text_height = 0;
  std::vector<PageText> said;
  double height = 0;
};

constexpr double field_width = 2.4;  // of a count of hands, in label sizes

double hands_width(const Ui& ui) {
  const Sizes& sizes = ui.sizes();
  return 2 * sizes.icon + field_width * sizes.label + sizes.space;
}

std::size_t first_mistake(const std::vector<practice::Choice>& choices) {
  const auto found = std::find_if(choices.begin(), choices.end(), [](const auto& one) { return !one.is_right; });
  return static_cast<std::size_t>(found - choices.begin());
}

std::vector<PageText> said_of(const Ui& ui, const Shown& shown, std::size_t index, const PageType& type) {
  const ItemShown& about = *shown.derived.item;
  if (!is_out(shown)) {
    return {};
  }
  const practice::Choice& choice = about.choices[index];
  const std::optional<std::size_t> spoken = item(shown).spoken ? item(shown).spoken : about.take_up;
  const bool is_spoken = spoken == index;
  std::vector<PageText> said;
  if (about.take_up == index) {
    said.push_back({"Go over this idea again:", TextSize::Small, true, ui.theme().bad});
  }
  // Of one mistake at a time, so that it is read from the back; a click on another option tells of that one.
  const bool is_in_turn = type.tells_all || index == first_mistake(about.choices);
  const bool tells = (!choice.is_right || about.form == AnswerForm::Cutout) && (spoken ? is_spoken : is_in_turn);
  if (tells) {
    said.push_back({words::said(choice.message), is_spoken ? type.told : TextSize::Small, is_spoken, ui.theme().ink});
  }
  return said;
}

ButtonOptions option_look(const Shown& shown, std::size_t index, TextSize size) {
  const practice::Choice& choice = shown.derived.item->choices[index];
  const bool out = is_out(shown);
  return {.icon = !out              ? Icon::None
                  : choice.is_right ? Icon::Check
                                    : Icon::Cross,
          .current = out && choice.is_right,
          .size = size,
          .h = HAlign::Left,
          .wrap = true};
}

OptionBlock block_of(const Ui& ui, const Shown& shown, std::size_t index, double width, const PageType& type) {
  const Sizes& sizes = ui.sizes();
  OptionBlock block;
  block.index = index;
  block.text = practice::letter(index);
  const std::string text = said(shown.derived.item->choices[index].text);
  if (text != block.text) {  // a letter stands on the bench
    block.text += "  " + text;
  }
  const double beside = width - hands_width(ui) - sizes.space;
  const auto needs = [&](TextSize size) { return ui.button_width(block.text, option_look(shown, index, size)); };
  block.size = type.option;
  block.hands_below = needs(block.size) > beside;
  block.said = said_of(ui, shown, index, type);
  const double text_width = block.hands_below ? width : beside;
  block.text_height = ui.button_height(block.text, text_width, option_look(shown, index, block.size));
  block.height = block.text_height + sizes.space + texts_height(ui, block.said, width);
  block.height += block.hands_below ? sizes.field + sizes.space : 0;
  return block;
}

void hands(Ui& ui, const Shown& shown, std::size_t index, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const int count = item(shown).hands[index];
  Row row(rect, sizes.space * 0.5);
  const std::string letter = practice::letter(index);
  const Rect less = row.take(sizes.icon).middle(sizes.icon, sizes.icon);
  if (ui.icon_button(ids::hands_less.at(index), Icon::Minus, "one hand less for " + letter, less,
                     {.look = ButtonLook::Outline, .enabled = count > 0})) {
    out.push_back(StepHands{index, -1});
  }
  const Rect more = row.take_right(sizes.icon).middle(sizes.icon, sizes.icon);
  const FieldEvent typed = ui.field(ids::hands.at(index), "hands for " + letter, std::to_string(count), row.rest(),
                                    {.size = TextSize::Small, .longest = 3, .h = HAlign::Center});
  if (typed.entered || typed.left) {
    out.push_back(SetHands{index, typed.text});
  } else if (typed.stepped != 0) {
    out.push_back(StepHands{index, typed.stepped});
  }
  if (ui.icon_button(ids::hands_more.at(index), Icon::Plus, "one hand more for " + letter, more,
                     {.look = ButtonLook::Outline})) {
    out.push_back(StepHands{index, 1});
  }
}

void draw_option(Ui& ui, const Shown& shown, const OptionBlock& block, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Column column(rect, sizes.space);
  Row row(column.take(block.text_height), sizes.space);
  const double width = hands_width(ui);
  Rect count = block.hands_below ? Rect{} : row.take_right(width);
  if (block.hands_below) {
    Row below(column.take(sizes.field));
    count = below.take_right(width);
  }
  if (ui.button(ids::class_option.at(block.index), block.text, row.rest(),
                option_look(shown, block.index, block.size))) {
    out.push_back(AnswerOption{block.index});
  }
  hands(ui, shown, block.index, count, out);
  draw_texts(ui, block.said, column.rest());
}

std::vector<PageText> question_texts(const Ui& ui, const Shown& shown) {
  const ItemShown& about = *shown.derived.item;
  const TextSize size = is_out(shown) ? TextSize::Small : TextSize::Label;
  std::vector<PageText> texts{{shown.derived.prompt, size, true, ui.theme().ink}};
  for (const std::string& sentence : about.solution) {
    texts.push_back({sentence, TextSize::Small, false, ui.theme().ink});
  }
  return texts;
}

std::vector<OptionBlock> option_blocks(const Ui& ui, const Shown& shown, double width, double height) {
  const ItemShown& about = *shown.derived.item;
  const std::size_t count = about.choices.size() < 2 ? 0 : about.choices.size();
  std::vector<OptionBlock> blocks;
  for (const PageType& type : page_types) {
    blocks.clear();
    double needed = 0;
    for (std::size_t i = 0; i < count; ++i) {
      blocks.push_back(block_of(ui, shown, i, width, type));
      needed += blocks.back().height;
    }
    if (needed <= height) {
      break;
    }
  }
  return blocks;
}

void options_page(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const double width = page_width(ui, rect);
  const std::vector<PageText> texts = question_texts(ui, shown);
  double height = texts_height(ui, texts, width);
  const std::vector<OptionBlock> blocks = option_blocks(ui, shown, width, rect.h - height);
  const ItemShown& about = *shown.derived.item;
  std::optional<Span> in_view;  // the option that is talked about; else the right one; before that, the last
  for (const OptionBlock& block : blocks) {
    const std::optional<std::size_t> spoken = item(shown).spoken ? item(shown).spoken : about.take_up;
    if (spoken ? spoken == block.index : !is_out(shown) || about.choices[block.index].is_right) {
      in_view = Span{height, block.height};
    }
    height += block.height;
  }
  const Rect content = ui.begin_scroll(ids::item_page.at(shown.state().quiz.number), rect, height, in_view);
  Rect place{content.x, content.y, width, texts_height(ui, texts, width)};
  draw_texts(ui, texts, place);
  double top = place.bottom();
  for (const OptionBlock& block : blocks) {
    draw_option(ui, shown, block, {content.x, top, width, block.height}, out);
    top += block.height;
  }
  ui.end_scroll();
}

/// "Right: C  286 cm²", once the answer is out.
std::string right_text(const Shown& shown) {
  const ItemShown& about = *shown.derived.item;
  for (std::size_t i = 0; is_out(shown) && i < about.choices.size(); ++i) {
    if (about.choices[i].is_right) {
      const std::string letter = practice::letter(i);
      const std::string text = said(about.choices[i].text);  // of a piece or a place it is the letter itself
      return text == letter ? "Right: " + letter : "Right: " + letter + "  " + text;
    }
  }
  return is_out(shown) ? "Answer: " + about.answer : "";
}

/// What going on does, in words and where there is no room in one.
std::pair<const char*, const char*> forward_texts(const Shown& shown) {
  const bool is_last = shown.state().quiz.number + 1 == shown.state().quiz.set->size();
  switch (item(shown).stage) {
    case ClassStage::Question:
      return {"show the options", "options"};
    case ClassStage::Options:
      return {"show the answer", "answer"};
    case ClassStage::Answer:
      break;
  }
  return is_last ? std::pair{"end the quiz", "end"} : std::pair{"next problem", "next"};
}

void class_buttons(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Row row(rect, sizes.space);
  const bool can_go_back = item(shown).stage != ClassStage::Question || shown.state().quiz.number > 0;
  const Rect back = row.take(sizes.icon).middle(sizes.icon, sizes.icon);
  if (ui.icon_button(ids::class_back, Icon::Previous, "one stage back", back,
                     {.look = ButtonLook::Plain, .enabled = can_go_back})) {
    out.push_back(StepQuiz{-1});
  }
  const bool has_solution = is_out(shown) && !item(shown).solution_shown;
  if (ui.button(ids::reveal, "solution", row.take(ui.button_width("solution")), {.enabled = has_solution})) {
    out.push_back(RevealAnswer{});
  }
  const auto texts = forward_texts(shown);
  const char* text = ui.button_width(texts.first) <= row.rest().w ? texts.first : texts.second;
  if (ui.button(ids::go_on, text, row.rest(), {.look = ButtonLook::Primary})) {
    out.push_back(StepQuiz{1});
  }
}

}  // namespace

void quiz_class(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const bool low = shown.screen.side_below;
  const auto [left, right] = halves(shown, rect, 0.56, 2 * sizes.space);
  Column does(right, sizes.space);
  item_head(ui, shown, does.take(sizes.field), out);
  class_buttons(ui, shown, does.take_bottom(sizes.button), out);
  const std::string answer = right_text(shown);
  if (!answer.empty()) {  // seen wherever the options are scrolled to
    const double height = ui.wrapped_height(answer, does.rest().w, TextSize::Label, true);
    ui.text(answer, low ? does.take(height) : does.take_bottom(height),
            {.bold = true, .wrap = true, .color = ui.theme().good});
  }
  const bool shows_steps = item(shown).solution_shown && shown.derived.worked && shown.derived.worked->count > 0;
  const Rect page = low ? left : does.rest();
  if (shows_steps) {
    step_list(ui, shown, page, out);
  } else {
    options_page(ui, shown, page, out);
  }
}

}  // namespace fw::panels
