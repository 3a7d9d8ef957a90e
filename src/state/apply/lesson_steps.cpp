#include "state/lesson_steps.hpp"

#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {

/// Plays the net to its end; with reduced motion it goes there in steps.
std::string move_net(Model& model, Motion motion, NetSeen seen_at_end) {
  desk(model).picked.reset();
  std::string undo = on(model, PlayFold{motion});
  const double end = motion == Motion::Opening ? 1 : 0;
  if (model.view.motion != Motion::Still || model.view.fold == end) {
    desk(model).net_seen = seen_at_end;
  }
  return undo;
}

std::string forward(Model& model) {
  const std::optional<LessonStep> step = next_lesson_step(model);
  if (!step) {
    return {};
  }
  switch (*step) {
    case LessonStep::CountFace:
      return on(model, CountNext{});
    case LessonStep::ShowTotal:
      return on(model, ShowTotal{true});
    case LessonStep::Unfold:
      return move_net(model, Motion::Opening, NetSeen::Flat);
    case LessonStep::FoldUp:
      desk(model).net_seen = NetSeen::Flat;
      return move_net(model, Motion::Closing, NetSeen::FoldedUp);
    case LessonStep::ShowVolume:
      return on(model, ShowVolume{true});
    case LessonStep::NextProblem:
      return on(model, StepProblem{1});
  }
  return {};
}

std::string back(Model& model) {
  const std::optional<LessonStep> step = last_lesson_step(model);
  if (!step) {
    return {};
  }
  switch (*step) {
    case LessonStep::CountFace:
      return on(model, UncountLast{});
    case LessonStep::ShowTotal:
      return on(model, ShowTotal{false});
    case LessonStep::Unfold:
      desk(model).net_seen = NetSeen::No;
      return on(model, SetFold{0});
    case LessonStep::FoldUp:
      desk(model).net_seen = shows_net_alone(model.state.current()) ? NetSeen::No : NetSeen::Flat;
      return on(model, SetFold{1});
    case LessonStep::ShowVolume:
      return on(model, ShowVolume{false});
    case LessonStep::NextProblem:
      return on(model, StepProblem{-1});
  }
  return {};
}

}  // namespace

std::string on(Model& model, const StepLesson& command) {
  if (model.state.mode != Mode::Explore || command.by == 0) {
    return {};
  }
  if (model.view.motion != Motion::Still) {  // whoever presses again does not want to wait
    return on(model, SetFold{model.view.motion == Motion::Opening ? 1.0 : 0.0});
  }
  return command.by > 0 ? forward(model) : back(model);
}

}  // namespace fw::state::handlers
