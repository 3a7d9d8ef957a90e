#include <algorithm>
#include <array>

#include "panels/ids.hpp"
#include "panels/quiz/quiz.hpp"
#include "tasks/generate/generate.hpp"
#include "ui/layout.hpp"

// The end of a set for one student: what went well, by kind of problem, and what to do next.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

/// How often each end came; in the order of ItemEnd.
using Ends = std::array<std::size_t, 4>;

struct KindOfProblem {
  std::string title;
  Ends ends{};
};

std::string title_of_skill(const std::string& skill) {
  for (const practice::TypeName& type : tasks::type_names()) {
    if (type.key == skill) {
      return type.title;
    }
  }
  return "other problems";
}

/// In the order in which they were met.
std::vector<KindOfProblem> kinds_in(const FinishedSet& finished) {
  std::vector<KindOfProblem> kinds;
  for (std::size_t i = 0; i < finished.ends.size(); ++i) {
    const std::string title = title_of_skill((*finished.set)[i].skill);
    auto kind = std::find_if(kinds.begin(), kinds.end(), [&](const KindOfProblem& one) { return one.title == title; });
    if (kind == kinds.end()) {
      kind = kinds.insert(kinds.end(), {title, {}});
    }
    ++kind->ends[static_cast<std::size_t>(finished.ends[i])];
  }
  return kinds;
}

std::size_t count_of(const Ends& ends, ItemEnd end) { return ends[static_cast<std::size_t>(end)]; }

/// "6 right, 2 right with help, 1 not yet, 1 skipped"; what did not come is left out.
std::string told(const Ends& ends) {
  constexpr std::array<const char*, 4> words{"right", "right with help", "not yet", "skipped"};
  std::string text;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (ends[i] > 0) {
      text += (text.empty() ? "" : ", ") + std::to_string(ends[i]) + " " + words[i];
    }
  }
  return text;
}

std::string problems(std::size_t count) { return std::to_string(count) + (count == 1 ? " problem" : " problems"); }

}  // namespace

void quiz_results(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const FinishedSet& finished = *shown.state().quiz.results;
  Ends all{};
  std::vector<PageText> texts;
  for (const KindOfProblem& kind : kinds_in(finished)) {
    texts.push_back({kind.title, TextSize::Small, true, ui.theme().ink});
    texts.push_back({told(kind.ends), TextSize::Small, false, ui.theme().ink});
    for (std::size_t i = 0; i < all.size(); ++i) {
      all[i] += kind.ends[i];
    }
  }
  const std::size_t missed = count_of(all, ItemEnd::Missed);
  Column column(rect, sizes.space);
  Row row(column.take_bottom(sizes.button), sizes.space);
  const std::string again = missed == 1 ? "the missed one again" : "the missed ones again";
  if (missed > 0 && ui.button(ids::missed_again, again, row.take(row.rest().w * 0.62), {.look = ButtonLook::Primary})) {
    out.push_back(AskMissedAgain{});
    ui.clear_focus();
  }
  if (ui.button(ids::results_close, "done", row.rest(),
                {.look = missed > 0 ? ButtonLook::Outline : ButtonLook::Primary})) {
    out.push_back(CloseResults{});
  }
  ui.offer_focus(missed > 0 ? ids::missed_again : ids::results_close, shown.state().quiz.setup.seed);
  const std::string title = problems(finished.ends.size());
  ui.text(title, column.take(ui.line(TextSize::Heading)), {.size = TextSize::Heading, .bold = true, .shrink = true});
  const std::string sum = told(all) + ".";
  ui.text(sum, column.take(ui.wrapped_height(sum, rect.w, TextSize::Label)), {.v = figures::VAlign::Top, .wrap = true});
  const Rect page = column.rest();
  ui.rule_across(page.x, page.y, page.w);
  const double width = page_width(ui, page);
  const Rect content = ui.begin_scroll(ids::results, {page.x, page.y + sizes.space, page.w, page.h - sizes.space},
                                       texts_height(ui, texts, width));
  draw_texts(ui, texts, {content.x, content.y, width, content.h});
  ui.end_scroll();
}

}  // namespace fw::panels
