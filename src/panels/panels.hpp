#pragma once

#include <utility>
#include <vector>

#include "bench/bench_picture.hpp"
#include "panels/screen.hpp"
#include "state/command.hpp"
#include "state/derived.hpp"
#include "ui/layout.hpp"
#include "ui/ui.hpp"

namespace fw::panels {

using bench::BenchPicture;
using geometry::FaceId;
using state::Commands;
using state::Derived;
using state::Desk;
using state::State;
using state::View;
using state::WorkedProblem;
using ui::Column;
using ui::Fonts;
using ui::TextSize;
using ui::Ui;
using ui::WidgetId;

/// What a panel reads. Panels hold nothing and change nothing: they draw, and say what the user wants.
struct Shown {
  const Model& model;
  const Derived& derived;
  const Screen& screen;
  [[nodiscard]] const State& state() const { return model.state; }
  [[nodiscard]] const View& view() const { return model.view; }
  [[nodiscard]] const Desk& desk() const { return model.state.desk(); }
  /// Requires: the mode is Work.
  [[nodiscard]] const WorkedProblem& worked() const { return *derived.worked; }
};

void title_bar(Ui& ui, const Shown& shown, Commands& out);
/// Height that what has to be known of files takes under the title; 0 when there is nothing.
[[nodiscard]] double file_news_height(const Ui& ui, const Model& model);
void file_news(Ui& ui, const Shown& shown, Commands& out);
/// Height that the prompt of the problem in view takes under the title; 0 when there is none to show.
[[nodiscard]] double prompt_height(const Ui& ui, const Model& model, double width);
void prompt(Ui& ui, const Shown& shown, Commands& out);
void rail(Ui& ui, const Shown& shown, Commands& out);
void bench(Ui& ui, const Shown& shown, const BenchPicture& picture, Commands& out);
void fold_bar(Ui& ui, const Shown& shown, Commands& out);
/// The panel at the side: its tabs and the one that is open.
void side(Ui& ui, const Shown& shown, Commands& out);
void ledger(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// The count, row by row, and the card of the face that is lifted out under its row.
void ledger_rows(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
[[nodiscard]] double ledger_rows_height(const Ui& ui, const Shown& shown);  ///< as low as they can be, without a card
/// The face that is lifted out: how it lies, its working, and what can be done with it.
void face_card(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
[[nodiscard]] double face_card_height(const Ui& ui);
/// What comes next in the lesson, and the way back, at the bottom of a column.
void lesson_buttons(Ui& ui, const Shown& shown, Column& column, Commands& out);
/// Why a change was refused, and what could be taken instead; 0 high when there is nothing to tell.
[[nodiscard]] double notice_height(const Ui& ui, const Shown& shown, double width);
void notice(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void measures(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void solids(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void display(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// The quiz: its start page, or the item in view for whom it is asked.
void quiz(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void quiz_start(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void quiz_student(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void quiz_class(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// The mode "Work it out": its tabs and the one that is open.
void work(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void steps(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void step_list(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// What stands where a problem begins: its text, and of a word problem the choice of cover, fill and edge.
void problem_page(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// The choice alone, where it stands beside the problem.
void decision_page(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// The answer to "where does this number come from?", or the field for a gap; 0 high when there is neither.
[[nodiscard]] double reply_height(const Ui& ui, const Shown& shown, double width);
void reply(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void ask(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
/// Why a measure cannot be asked for, and what could be given instead.
[[nodiscard]] double missing_height(const Ui& ui, const Shown& shown, double width);
void missing(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void work_options(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);
void keys_sheet(Ui& ui, const Shown& shown, Commands& out);
/// What is printed of the lesson, with the pages as they will be.
void print_sheet(Ui& ui, const Shown& shown, Commands& out);
void progress_sheet(Ui& ui, const Shown& shown, Commands& out);
void blank_sheet(Ui& ui, const Shown& shown, Commands& out);

/// What is read and what is done: the same place, or beside each other where the panel is low. `share`: of the width
/// that the first one has then.
[[nodiscard]] inline std::pair<figures::Rect, figures::Rect> halves(const Shown& shown, const figures::Rect& rect,
                                                                    double share, double gap) {
  if (!shown.screen.side_below) {
    return {rect, rect};
  }
  figures::Rect left = rect;
  left.w = rect.w * share;
  figures::Rect right = rect;
  right.x = left.right() + gap;
  right.w = rect.right() - right.x;
  return {left, right};
}
/// The heading of a sheet with its button to close it. Returns whether that was pressed.
[[nodiscard]] bool sheet_head(Ui& ui, Column& column, WidgetId close, const std::string& title);

/// A click on a face: counts it the first time, lays it back when it is lifted out, else lifts it out.
void choose_face(const Desk& desk, FaceId face, Commands& out);
/// A click on a face while it is worked out: it stands out, or no more; nothing is counted.
void point_face(const Desk& desk, FaceId face, Commands& out);

}  // namespace fw::panels
