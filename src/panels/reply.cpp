#include <algorithm>

#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "reasoning/blank.hpp"
#include "ui/layout.hpp"

// Under the steps: where a number comes from, or what belongs into a gap.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

/// The step whose gap can be filled by typing: the present one.
std::optional<std::size_t> open_gap(const Shown& shown) {
  const Work& work = shown.desk().work;
  if (work.reached == 0 || work.present >= shown.worked().count || !is_blank(work, shown.worked(), work.present)) {
    return std::nullopt;
  }
  const bool is_typed = reasoning::blank_kind(shown.worked().step(work.present)) != reasoning::BlankKind::Words;
  return is_typed ? std::optional(work.present) : std::nullopt;
}

const FilledBlank* reply_to_gap(const Shown& shown) {
  const Work& work = shown.desk().work;
  const FilledBlank* blank = work.reached == 0 ? nullptr : filled(work, work.present);
  return blank == nullptr || blank->message.empty() ? nullptr : blank;
}

std::string origin_sentence(const Shown& shown) {
  const reasoning::Source* source = pointed_source(shown.model, shown.worked());
  return source == nullptr ? std::string()
                           : said(words::message("This number: {source}.", {{"source", source->sentence}}));
}

double padded(const Ui& ui, double height) { return height + 2 * ui.sizes().space; }

double inner_width(const Ui& ui, double width) { return width - 3 * ui.sizes().space; }

double message_height(const Ui& ui, const FilledBlank* blank, double width) {
  return blank == nullptr ? 0
                          : ui.wrapped_height(said(blank->message), width, TextSize::Small) + ui.sizes().space * 0.5;
}

const char* gap_hint(const reasoning::Step& step) {
  switch (reasoning::blank_kind(step)) {
    case reasoning::BlankKind::Number:
      return step.outcome->unit ? "number and unit" : "number";
    case reasoning::BlankKind::Side:
      return "the right side";
    case reasoning::BlankKind::Unit:
      return "unit";
    case reasoning::BlankKind::Words:
      break;
  }
  return "";
}

/// Tells the gaps of all problems apart.
std::uint64_t gap_key(const Shown& shown, std::size_t step) {
  constexpr std::uint64_t most_steps = 1U << 20U;
  return shown.state().problem * most_steps + step;
}

void gap_field(Ui& ui, const Shown& shown, std::size_t step, const Rect& rect, Commands& out) {
  Row row(rect, ui.sizes().space);
  const Rect enter = row.take_right(ui.button_width("OK"));
  const FilledBlank* before = filled(shown.desk().work, step);
  const bool bad = before != nullptr && !before->is_right;
  const char* hint = gap_hint(shown.worked().step(step));
  const FieldEvent typed =
      ui.field(ids::work_field, "what goes in the blank", before == nullptr ? "" : before->typed, row.rest(),
               {.bad = bad, .hint = hint, .answers = true, .of = gap_key(shown, step)});
  const bool pressed = ui.button(ids::work_enter, "OK", enter);
  if (pressed) {
    ui.take_field(ids::work_field);
  }
  if (typed.entered || pressed) {
    out.push_back(FillBlank{step, typed.text});
  }
}

}  // namespace

double reply_height(const Ui& ui, const Shown& shown, double width) {
  const double inside = inner_width(ui, width);
  const std::string origin = origin_sentence(shown);
  if (!origin.empty()) {
    return padded(ui, ui.wrapped_height(origin, inside, TextSize::Label));
  }
  const FilledBlank* blank = reply_to_gap(shown);
  const double message = message_height(ui, blank, inside);
  if (open_gap(shown)) {
    return padded(ui, ui.sizes().field + message);
  }
  return blank != nullptr ? padded(ui, message) : 0;
}

void reply(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  ui.rule_across(rect.x, rect.y, rect.w);
  const Rect inside{rect.x, rect.y + sizes.space, inner_width(ui, rect.w), rect.h - sizes.space};
  const std::string origin = origin_sentence(shown);
  if (!origin.empty()) {
    ui.text(origin, inside, {.v = figures::VAlign::Top, .wrap = true});
    return;
  }
  Column column(inside, sizes.space * 0.5);
  if (const auto step = open_gap(shown)) {
    gap_field(ui, shown, *step, column.take(sizes.field), out);
  }
  if (const FilledBlank* blank = reply_to_gap(shown)) {
    const Color color = blank->is_right ? ui.theme().good : ui.theme().bad;
    ui.text(said(blank->message), column.rest(),
            {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true, .color = color});
  }
}

}  // namespace fw::panels
