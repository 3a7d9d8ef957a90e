#include <algorithm>

#include "state/apply/handlers.hpp"

namespace fw::state::handlers {

Desk& desk(Model& model) {
  State& state = model.state;
  return state.in_item() ? *state.quiz.items[state.quiz.number].desk : *state.desks[state.problem];
}

void come_to_problem(Model& model) {
  std::optional<Desk>& place = model.state.desks[model.state.problem];
  if (!place) {
    place = fresh_desk(model.state.lesson->problems[model.state.problem]);
  }
  model.view.notice.reset();
  model.view.turn = 0;
  model.view.tilt = 0;
  model.view.nearness = 1;
}

std::string on(Model& model, const OpenProblem& command) {
  if (command.index >= model.state.lesson->problems.size() || command.index == model.state.problem) {
    return {};
  }
  model.state.problem = command.index;
  come_to_problem(model);
  return "go to problem " + std::to_string(command.index + 1);
}

std::string on(Model& model, const StepProblem& command) {
  const auto count = static_cast<std::ptrdiff_t>(model.state.lesson->problems.size());
  const auto now = static_cast<std::ptrdiff_t>(model.state.problem);
  const std::ptrdiff_t next = std::clamp<std::ptrdiff_t>(now + command.by, 0, count - 1);
  return on(model, OpenProblem{static_cast<std::size_t>(next)});
}

std::string on(Model& model, const SetMode& command) {
  if (model.state.mode == command.mode) {
    return {};
  }
  const bool in_quiz = model.state.mode == Mode::Quiz || command.mode == Mode::Quiz;
  model.state.mode = command.mode;
  model.view.notice.reset();
  if (in_quiz) {  // another thing stands on the bench
    model.view.turn = 0;
    model.view.tilt = 0;
    model.view.nearness = 1;
  }
  if (command.mode == Mode::Work) {
    desk(model).picked.reset();  // the steps say what stands out
  }
  switch (command.mode) {
    case Mode::Explore:
      return "go to explore";
    case Mode::Work:
      return "work it out";
    case Mode::Quiz:
      return "go to the quiz";
  }
  return {};
}

}  // namespace fw::state::handlers
