#include "panels/step_card.hpp"

#include <algorithm>

#include "panels/ids.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::FormulaLayout;
using figures::Rect;
using figures::Vec2;

constexpr double most_left = 0.42;          // share of the width that left sides may take and still be lined up
constexpr std::size_t numbers_a_step = 64;  // room for the identities of a line's numbers

double margin(const Ui& ui) { return ui.text_width("00", TextSize::Small) + 3 * ui.sizes().space; }
double gap(const Ui& ui) { return ui.sizes().space; }

/// A step as it is shown, its line set at its full size on one line.
struct WholeStep {
  ShownStep shown;
  std::optional<FormulaLayout> layout;
};

WholeStep whole_step(const Ui& ui, const figures::Canvas& canvas, const Shown& shown, std::size_t step) {
  const Work& work = shown.desk().work;
  WholeStep whole{shown_step(work, shown.worked(), step), std::nullopt};
  if (whole.shown.line) {
    whole.layout.emplace(canvas, *whole.shown.line, ui.em(step == work.present ? TextSize::Label : TextSize::Small));
  }
  return whole;
}

/// Where a line begins, and its layout: large if it can be, its sign under the others if it can be.
struct FittedLine {
  FormulaLayout layout;
  double shift = 0;
};
FittedLine fitted(const figures::Canvas& canvas, const WholeStep& step, double sign, double width,
                  const std::vector<double>& ems) {
  for (const double em : ems) {
    const FormulaLayout whole = em == ems.front() ? *step.layout : FormulaLayout(canvas, *step.shown.line, em);
    const double aligned = std::max(0.0, sign - whole.sign_middle());
    for (const double shift : {aligned, 0.0}) {
      if (whole.size().x + shift <= width) {
        return {whole, shift};
      }
      const FormulaLayout broken(canvas, *step.shown.line, em, width - shift);
      if (broken.size().x + shift <= width) {
        return {broken, shift};
      }
    }
  }
  // A single term wider than the panel: smaller rather than cut off.
  const FormulaLayout broken(canvas, *step.shown.line, ems.back(), width);
  return {FormulaLayout(canvas, *step.shown.line, ems.back() * width / broken.size().x, width), 0};
}

/// The sign that the lines stand under: the farthest to the right that leaves room for right sides.
double common_sign(const std::vector<WholeStep>& steps, double width) {
  double sign = 0;
  for (const WholeStep& step : steps) {
    const double middle = step.layout ? step.layout->sign_middle() : 0;
    sign = middle <= most_left * width ? std::max(sign, middle) : sign;
  }
  return sign;
}

/// Beside the line where there is room, else under it, one after another.
void place_asides(const Ui& ui, const figures::Canvas& canvas, const reasoning::Step& step, double left, double width,
                  StepCard& card) {
  const double space = 2 * ui.sizes().space;
  const double line_right = card.line ? card.line_at.x + card.line->size().x : left;
  double x = line_right + 2 * space;
  double top = card.line ? card.line_at.y : card.height;
  double bottom = card.height;
  for (const exact::ColumnWork& aside : step.asides) {
    figures::ColumnWorkFigure figure(canvas, aside, ui.em(TextSize::Small));
    const Vec2 size = figure.size();
    if (x + size.x > left + width && x > left) {
      x = left + space;
      top = bottom + space;
    }
    card.asides.push_back({std::move(figure), {x, top}});
    x += size.x + 2 * space;
    bottom = std::max(bottom, top + size.y);
  }
  card.height = bottom;
}

StepCard laid_out(const Ui& ui, const figures::Canvas& canvas, const Shown& shown, std::size_t index,
                  const WholeStep& whole, double sign, double width) {
  const WorkedProblem& worked = shown.worked();
  const Work& work = shown.desk().work;
  const reasoning::Step& step = worked.step(index);
  StepCard card;
  card.step = index;
  const bool in_lines = shows_board(shown.model, worked);
  card.is_present = index == work.present && !in_lines;
  card.number = std::to_string(index + 1);
  card.reason = said(whole.shown.reason);
  const double left = margin(ui);
  const double inside = width - left;
  const TextSize size = card.is_present ? TextSize::Label : TextSize::Small;
  card.height = gap(ui);
  const bool is_failing = shown.derived.item && shown.state().quiz.work().failing == index;
  if (is_failing) {
    card.remark = "Compare this step with yours.";
    card.remark_height = ui.wrapped_height(card.remark, inside, TextSize::Small, true);
    card.height += card.remark_height;
  }
  if (!card.reason.empty()) {
    card.reason_height = ui.wrapped_height(card.reason, inside, size);
    card.height += card.reason_height;
  }
  if (whole.layout) {
    card.line_text = algebra::plain_text(*whole.shown.line);
    const std::vector<double> ems = card.is_present
                                        ? std::vector<double>{ui.em(TextSize::Label), ui.em(TextSize::Small)}
                                        : std::vector<double>{ui.em(TextSize::Small)};
    FittedLine made = fitted(canvas, whole, sign, inside, ems);
    card.line_at = {left + made.shift, card.height + gap(ui) * 0.5};
    card.height = card.line_at.y + made.layout.size().y;
    card.line = std::move(made.layout);
  }
  if ((card.is_present || in_lines) && !whole.shown.has_blank) {
    place_asides(ui, canvas, step, left, inside, card);
  }
  card.height += gap(ui);
  return card;
}

/// The numbers of the line that can be asked where they come from.
void draw_numbers(Ui& ui, const Shown& shown, const StepCard& card, Vec2 corner, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const auto numbers = card.line->numbers(corner + card.line_at);
  for (std::size_t i = 0; i < numbers.size() && i < numbers_a_step; ++i) {
    const Rect& drawn = numbers[i].rect;
    const Rect place = drawn.middle(std::max(drawn.w, sizes.target), std::max(drawn.h, sizes.target));
    const NumberPlace here{card.board_line.value_or(card.step), i, card.board_line.has_value()};
    const WidgetId id = here.on_board ? ids::work_line_number : ids::work_number;
    const bool is_pointed = shown.view().pointed == here;
    const Interaction action = ui.region(id.at(here.step * numbers_a_step + i), "where does this number come from?",
                                         place, Ui::RegionFocus::None);
    if (is_pointed || action.hovered) {
      const double width = is_pointed ? sizes.edge : sizes.rim;
      ui.canvas().rounded(drawn.inset(-sizes.space * 0.3, 0), sizes.radius * 0.5, std::nullopt,
                          figures::Stroke{ui.theme().ink, width, 0});
    }
    if (action.clicked) {
      out.push_back(PointNumber{is_pointed ? std::nullopt : std::optional(here)});
    }
  }
}

}  // namespace

std::vector<StepCard> step_cards(const Ui& ui, figures::Canvas& canvas, const Shown& shown, std::size_t from,
                                 std::size_t to, double width) {
  std::vector<StepCard> cards;
  std::vector<WholeStep> steps;
  for (std::size_t step = from; step < to; ++step) {
    steps.push_back(whole_step(ui, canvas, shown, step));
  }
  const double sign = common_sign(steps, width - margin(ui));
  const std::optional<std::size_t> origin = lit(shown.model, shown.worked()).step;
  for (std::size_t step = from; step < to; ++step) {
    cards.push_back(laid_out(ui, canvas, shown, step, steps[step - from], sign, width));
    cards.back().is_origin = origin == step;
  }
  return cards;
}

namespace {

// The equations of a board are large, so that they are read from the back row; the reasons above them are small.
WholeStep whole_line(const Ui& ui, const figures::Canvas& canvas, const reasoning::BoardLine& line) {
  WholeStep whole;
  whole.shown.reason = line.reason;
  if (!line.equations.empty()) {
    whole.shown.line = reasoning::in_one_line(line);
    whole.layout.emplace(canvas, *whole.shown.line, ui.em(TextSize::Label));
  }
  return whole;
}

/// How far the places to click on numbers reach above their line.
double reach_above(const Ui& ui, const FormulaLayout& line) {
  double reach = 0;
  for (const auto& number : line.numbers({0, 0})) {
    const Rect& drawn = number.rect;
    reach = std::max(reach, (std::max(drawn.h, ui.sizes().target) - drawn.h) / 2 - drawn.y);
  }
  return reach;
}

StepCard laid_out_line(const Ui& ui, const figures::Canvas& canvas, const WholeStep& whole, bool is_present,
                       double sign, double width) {
  StepCard card;
  card.is_present = is_present;
  card.reason = said(whole.shown.reason);
  const double left = margin(ui);
  const double inside = width - left;
  card.height = gap(ui);
  if (!card.reason.empty()) {
    card.reason_height = ui.wrapped_height(card.reason, inside, TextSize::Small);
    card.height += card.reason_height;
  }
  if (whole.layout) {
    card.line_text = algebra::plain_text(*whole.shown.line);
    FittedLine made = fitted(canvas, whole, sign, inside, {ui.em(TextSize::Label), ui.em(TextSize::Small)});
    card.line_at = {left + made.shift, card.height + std::max(gap(ui) * 0.5, reach_above(ui, made.layout))};
    card.height = card.line_at.y + made.layout.size().y;
    card.line = std::move(made.layout);
  }
  card.height += gap(ui);
  return card;
}

}  // namespace

std::vector<StepCard> board_cards(const Ui& ui, figures::Canvas& canvas, const Shown& shown, double width) {
  const WorkedProblem& worked = shown.worked();
  const std::vector<std::size_t>& opened = shown.desk().work.opened;
  const Progressed at = progressed(shown.model, worked);
  const Lit told = lit(shown.model, worked);
  std::vector<WholeStep> lines;
  for (std::size_t i = 0; i < at.shown; ++i) {
    lines.push_back(whole_line(ui, canvas, worked.board.lines[i]));
  }
  const double sign = common_sign(lines, width - margin(ui));
  std::vector<StepCard> cards;
  for (std::size_t i = 0; i < at.shown; ++i) {
    const bool is_open = std::find(opened.begin(), opened.end(), i) != opened.end();
    cards.push_back(laid_out_line(ui, canvas, lines[i], i == at.present, sign, width));
    cards.back().board_line = i;
    cards.back().number = is_open ? "−" : "+";
    cards.back().is_origin = told.line == i;
    if (!is_open) {
      continue;
    }
    const double indent = margin(ui);
    for (const std::size_t step : worked.board.lines[i].steps) {
      for (StepCard& card : step_cards(ui, canvas, shown, step, step + 1, width - indent)) {
        card.indent = indent;
        cards.push_back(std::move(card));
      }
    }
  }
  return cards;
}

void draw_card(Ui& ui, const Shown& shown, const StepCard& card, const Rect& whole, Commands& out) {
  const Rect rect{whole.x + card.indent, whole.y, whole.w - card.indent, whole.h};
  const Sizes& sizes = ui.sizes();
  const std::string about = card.line_text.empty() ? card.reason : card.line_text;
  const WidgetId id = card.board_line ? ids::work_line.at(*card.board_line) : ids::work_step.at(card.step);
  const Interaction action = ui.region(id, about, rect, Ui::RegionFocus::None);
  if (action.clicked) {
    out.push_back(card.board_line ? Command(OpenLine{*card.board_line}) : Command(SelectStep{card.step}));
  }
  const double bar = card.is_present ? sizes.edge * 1.5 : sizes.rule;
  if (card.is_present || action.hovered) {  // a stroke at the margin, as one marks a line in a book
    ui.canvas().line({rect.x + bar / 2, rect.y + gap(ui) * 0.5}, {rect.x + bar / 2, rect.bottom() - gap(ui) * 0.5},
                     {ui.theme().ink, bar, 0});
  }
  if (card.is_origin) {
    ui.canvas().rounded(rect.inset(sizes.rim), sizes.radius, std::nullopt,
                        figures::Stroke{ui.theme().ink, sizes.edge, 0});
  }
  const double left = margin(ui);
  const TextSize size = card.is_present && !card.board_line ? TextSize::Label : TextSize::Small;
  const double top = rect.y + gap(ui) + card.remark_height;
  if (card.remark_height > 0) {
    ui.text(card.remark, {rect.x + left, rect.y + gap(ui), rect.w - left, card.remark_height},
            {.size = TextSize::Small, .bold = true, .v = figures::VAlign::Top, .wrap = true, .color = ui.theme().bad});
  }
  ui.text(card.number, {rect.x + sizes.space, top, left - 2.6 * sizes.space, ui.line(size)},
          {.size = TextSize::Small, .h = HAlign::Right, .color = ui.theme().quiet_ink});
  if (card.reason_height > 0) {
    ui.text(card.reason, {rect.x + left, top, rect.w - left, card.reason_height},
            {.size = size,
             .v = figures::VAlign::Top,
             .wrap = true,
             .color = card.is_present ? ui.theme().ink : ui.theme().quiet_ink});
  }
  const Vec2 corner{rect.x, rect.y};
  if (card.line) {
    card.line->draw(ui.canvas(), corner + card.line_at, ui.theme().panel_palette());
    draw_numbers(ui, shown, card, corner, out);
  }
  for (const StepCard::Aside& aside : card.asides) {
    aside.figure.draw(ui.canvas(), corner + aside.at, ui.theme().panel_palette());
  }
}

}  // namespace fw::panels
