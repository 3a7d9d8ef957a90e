#include "state/lesson_steps.hpp"

#include <algorithm>
#include <vector>

#include "practice/task_type.hpp"

namespace fw::state {
namespace {

bool asks_for_volume(const lessons::Task& task) {
  return practice::stated(task).measure() == solids::symbols::volume().name;
}

/// In the order in which a class goes through them.
std::vector<LessonStep> steps_of(const lessons::Problem& problem) {
  std::vector<LessonStep> steps;
  if (class_goal(problem) != ClassGoal::Volume) {
    steps = {LessonStep::CountFace, LessonStep::ShowTotal};
    if (!shows_net_alone(problem)) {
      steps.push_back(LessonStep::Unfold);
    }
    steps.push_back(LessonStep::FoldUp);
  }
  if (std::any_of(problem.tasks.begin(), problem.tasks.end(), asks_for_volume)) {
    steps.push_back(LessonStep::ShowVolume);
  }
  return steps;
}

bool is_done(LessonStep step, const Model& model) {
  const Desk& desk = model.state.desk();
  switch (step) {
    case LessonStep::CountFace:
      return !next_to_count(model.state).has_value();
    case LessonStep::ShowTotal:
      return desk.total_shown;
    case LessonStep::Unfold:
      return desk.net_seen != NetSeen::No || (model.view.fold == 1 && !shows_cutouts(model.state));
    case LessonStep::FoldUp:
      return desk.net_seen == NetSeen::FoldedUp;
    case LessonStep::ShowVolume:
      return desk.volume_shown;
    case LessonStep::NextProblem:
      return false;
  }
  return false;
}

}  // namespace

ClassGoal class_goal(const lessons::Problem& problem) {
  const std::vector<lessons::Task>& tasks = problem.tasks;
  if (tasks.empty()) {
    return ClassGoal::Areas;
  }
  if (std::all_of(tasks.begin(), tasks.end(), asks_for_volume)) {
    return ClassGoal::Volume;
  }
  const bool counts = std::all_of(tasks.begin(), tasks.end(), [](const lessons::Task& task) {
    const practice::AnswerForm form = practice::stated(task).form();
    return form == practice::AnswerForm::Count || practice::is_name(form) || practice::is_flat(form);
  });
  return counts ? ClassGoal::Count : ClassGoal::Areas;
}

std::optional<LessonStep> next_lesson_step(const Model& model) {
  for (const LessonStep step : steps_of(model.state.current())) {
    if (!is_done(step, model)) {
      return step;
    }
  }
  return model.state.problem + 1 < model.state.desks.size() ? std::optional(LessonStep::NextProblem) : std::nullopt;
}

std::optional<LessonStep> last_lesson_step(const Model& model) {
  std::vector<LessonStep> steps = steps_of(model.state.current());
  std::reverse(steps.begin(), steps.end());
  for (const LessonStep step : steps) {
    const bool is_begun = step == LessonStep::CountFace ? !model.state.desk().counted.empty() : is_done(step, model);
    if (is_begun) {
      return step;
    }
  }
  return model.state.problem > 0 ? std::optional(LessonStep::NextProblem) : std::nullopt;
}

}  // namespace fw::state
