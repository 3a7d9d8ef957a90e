#include <algorithm>

#include "panels/ids.hpp"
#include "panels/quiz/quiz.hpp"
#include "tasks/generate/generate.hpp"
#include "ui/layout.hpp"

// Where a quiz begins: who is asked, from what, and how hard.
namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

/// A row of the list: a heading, or a type with its place in the table.
struct TypeRow {
  std::string heading;
  std::size_t type = 0;
};
std::vector<TypeRow> type_rows() {
  const std::vector<practice::TypeName>& types = tasks::type_names();
  std::vector<TypeRow> rows;
  for (std::size_t h = 0; h < practice::headings; ++h) {
    const auto heading = static_cast<practice::Heading>(h);
    rows.push_back({practice::text(heading), 0});
    for (std::size_t i = 0; i < types.size(); ++i) {
      if (types[i].heading == heading) {
        rows.push_back({"", i});
      }
    }
  }
  return rows;
}

void type_list(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const QuizSetup& setup = shown.state().quiz.setup;
  const std::vector<TypeRow> rows = type_rows();
  const double pitch = sizes.field + sizes.space * 0.5;
  const Rect content = ui.begin_scroll(ids::quiz_types, rect, pitch * static_cast<double>(rows.size() + 1));
  Column column({content.x, content.y, rect.w - sizes.scroll_bar - sizes.space, content.h}, sizes.space * 0.5);
  if (ui.checkbox(ids::quiz_mixed, "every type, mixed", setup.types.empty(), column.take(sizes.field))) {
    out.push_back(ToggleQuizType{""});
  }
  for (const TypeRow& row : rows) {
    const Rect place = column.take(sizes.field);
    if (!row.heading.empty()) {
      ui.text(row.heading, place, {.size = TextSize::Small, .bold = true, .v = figures::VAlign::Bottom});
      continue;
    }
    const practice::TypeName& type = tasks::type_names()[row.type];
    const bool is_on = std::find(setup.types.begin(), setup.types.end(), type.key) != setup.types.end();
    if (ui.checkbox(ids::quiz_type.at(row.type), type.title, is_on, place, type.level <= setup.level)) {
      out.push_back(ToggleQuizType{type.key});
    }
  }
  ui.end_scroll();
}

double caption_width(const Ui& ui) { return ui.text_width("Level", TextSize::Small) + ui.sizes().space; }

/// A row of words to choose from, with what it is about before them.
std::optional<std::size_t> choice(Ui& ui, WidgetId id, const std::string& about, const std::vector<std::string>& words,
                                  std::size_t current, const Rect& rect, bool low) {
  if (low) {  // no room for it: the words say enough
    return ui.tabs(id, words, current, rect, HAlign::Left);
  }
  Row row(rect, ui.sizes().space);
  ui.text(about, row.take(caption_width(ui)), {.size = TextSize::Small, .color = ui.theme().quiet_ink});
  return ui.tabs(id, words, current, row.rest(), HAlign::Left);
}

void choices(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const QuizSetup& setup = shown.state().quiz.setup;
  const bool low = shown.screen.side_below || shown.screen.tight;
  if (const auto who = choice(ui, ids::quiz_who, "Who", {"one student", "the class"},
                              static_cast<std::size_t>(setup.audience), column.take(sizes.field), low)) {
    out.push_back(SetAudience{static_cast<Audience>(*who)});
  }
  if (const auto from = choice(ui, ids::quiz_source, "From",
                               low ? std::vector<std::string>{"lesson", "nets", "new ones", "due"}
                                   : std::vector<std::string>{"this lesson", "its nets", "new ones", "due today"},
                               static_cast<std::size_t>(setup.source), column.take(sizes.field), low)) {
    out.push_back(SetQuizSource{static_cast<QuizSource>(*from)});
  }
  if (setup.source == QuizSource::Lesson) {
    return;
  }
  if (setup.source != QuizSource::Nets) {
    if (const auto level =
            choice(ui, ids::quiz_level, "Level",
                   low ? std::vector<std::string>{"level 1", "2", "3"} : std::vector<std::string>{"1", "2", "3"},
                   static_cast<std::size_t>(setup.level - 1), column.take(sizes.field), low)) {
      out.push_back(SetQuizLevel{static_cast<int>(*level) + 1});
    }
  }
  Row row(column.take(sizes.field), sizes.space);
  const ButtonOptions small{.size = TextSize::Small};
  ui.text("Set", row.take(caption_width(ui)), {.size = TextSize::Small, .color = ui.theme().quiet_ink});
  const std::string version = std::to_string(setup.seed);
  ui.text(version, row.take(ui.text_width(version) + 2 * sizes.space), {.bold = true});
  const std::string fresh = "new numbers";
  if (ui.button(ids::quiz_numbers, fresh, row.take(ui.button_width(fresh, small)), small)) {
    out.push_back(NewNumbers{});
  }
  const std::string so_far = "so far";
  if (setup.source == QuizSource::Due &&
      ui.button(ids::quiz_progress, so_far, row.take(ui.button_width(so_far, small)), small)) {
    out.push_back(ShowProgress{true});
  }
}

/// What is to be known before the start: why there is no set, that one is done, or what will come.
std::string about_set(const Quiz& quiz) {
  if (!quiz.refusal.empty()) {
    return said(quiz.refusal);
  }
  if (quiz.finished > 0) {
    const std::string next = quiz.setup.source == QuizSource::Lesson ? "Go on with its nets, or with new problems."
                                                                     : "Start again with new numbers.";
    return "All " + std::to_string(quiz.finished) + " are done. " + next;
  }
  switch (quiz.setup.source) {
    case QuizSource::Lesson:
      return "The problems of this lesson, in its order.";
    case QuizSource::Nets:
      return "Ten nets of the lesson's solids, turned and flipped. Which solid folds from each?";
    case QuizSource::Due:
      return "Ten problems: first what comes back today, then what has not been asked yet. A wrong answer comes back "
             "the same day, a right one after 1, 3, 7 and 21 days.";
    case QuizSource::MadeUp:
      break;
  }
  return "";
}

void about(Ui& ui, const Shown& shown, const Rect& rect) {
  const Quiz& quiz = shown.state().quiz;
  const bool refused = !quiz.refusal.empty();
  const TextSize size = refused || quiz.finished > 0 ? TextSize::Label : TextSize::Small;
  if (about_set(quiz).empty()) {
    return;
  }
  text_page(ui, ids::quiz_about, {{about_set(quiz), size, false, refused ? ui.theme().bad : ui.theme().ink}}, rect);
}

double about_height(const Ui& ui, const Shown& shown, const Rect& rect) {
  const Quiz& quiz = shown.state().quiz;
  if (about_set(quiz).empty()) {
    return 0;
  }
  const bool is_large = !quiz.refusal.empty() || quiz.finished > 0;
  return texts_height(ui, {{about_set(quiz), is_large ? TextSize::Label : TextSize::Small}}, page_width(ui, rect));
}

}  // namespace

void quiz_start(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  Rect left = rect;
  Rect right = rect;
  const bool low = shown.screen.side_below;
  const bool has_types = shown.state().quiz.setup.source == QuizSource::MadeUp;
  if (low) {
    Row halves(rect, 2 * sizes.space);
    left = halves.take(rect.w * (has_types ? 0.43 : 0.5));
    right = halves.rest();
  }
  Column chosen(left, sizes.space);
  if (ui.button(ids::quiz_start, "Start", chosen.take_bottom(sizes.button), {.look = ButtonLook::Primary})) {
    out.push_back(StartQuiz{});
  }
  choices(ui, shown, chosen, out);
  if (!low) {
    chosen.skip(sizes.space);
    about(ui, shown, has_types ? chosen.take(about_height(ui, shown, chosen.rest())) : chosen.rest());
  } else {
    about(ui, shown, has_types ? chosen.rest() : right);
  }
  if (has_types) {
    type_list(ui, shown, low ? right : chosen.rest(), out);
  }
}

}  // namespace fw::panels
