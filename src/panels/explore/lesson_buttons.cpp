#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "state/lesson_steps.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace state;
using namespace ui;

namespace {

std::string count_text(const Desk& desk) {
  if (desk.grouping == reasoning::Grouping::AlikeTogether) {
    return desk.counted.empty() ? "count congruent " + desk.solid.part() + "s" : "count the next ones";
  }
  return (desk.counted.empty() ? "count the first " : "count the next ") + desk.solid.part();
}

/// What the big button does.
std::string step_text(const Model& model) {
  if (model.view.motion != Motion::Still) {
    return "skip to the end";
  }
  const std::optional<LessonStep> step = next_lesson_step(model);
  if (!step) {
    return "that was the last problem";
  }
  switch (*step) {
    case LessonStep::CountFace:
      return count_text(model.state.desk());
    case LessonStep::ShowTotal:
      return "show how many there are";
    case LessonStep::Unfold:
      return "unfold it";
    case LessonStep::FoldUp:
      return "fold it up";
    case LessonStep::ShowVolume:
      return "show the volume";
    case LessonStep::NextProblem:
      return "next problem";
  }
  return "";
}

std::string step_back_text(const Model& model) {
  const std::optional<LessonStep> step = last_lesson_step(model);
  if (!step) {
    return "nothing to take back";
  }
  switch (*step) {
    case LessonStep::CountFace:
      return "take back the last " + model.state.desk().solid.part();
    case LessonStep::ShowTotal:
      return "hide how many there are";
    case LessonStep::Unfold:
      return "fold it up again";
    case LessonStep::FoldUp:
      return "lay it flat again";
    case LessonStep::ShowVolume:
      return "hide the volume";
    case LessonStep::NextProblem:
      return "problem before";
  }
  return "";
}

}  // namespace

void lesson_buttons(Ui& ui, const Shown& shown, Column& column, Commands& out) {
  Row row(column.take_bottom(ui.sizes().button), ui.sizes().space);
  const double size = ui.sizes().icon;
  const bool can_go_back = last_lesson_step(shown.model).has_value();
  if (ui.icon_button(ids::lesson_back, Icon::Undo, step_back_text(shown.model), row.take_right(size).middle(size, size),
                     {.look = ButtonLook::Plain, .enabled = can_go_back})) {
    out.push_back(StepLesson{-1});
  }
  if (ui.button(ids::lesson_on, step_text(shown.model), row.rest(),
                {.look = ButtonLook::Primary, .enabled = next_lesson_step(shown.model).has_value()})) {
    out.push_back(StepLesson{1});
  }
}

}  // namespace fw::panels
