#include <algorithm>

#include "app/apply/parts.hpp"

namespace fw::app::parts {
namespace {

/// The name is out: the net folds up, at once where motion is reduced.
void reveal(Model& model) {
  model.state.quiz.revealed = true;
  if (model.view.settings.reduced_motion) {
    model.view.fold = 0;
  } else {
    model.view.motion = Motion::Closing;
  }
}

void clear_answers(Quiz& quiz) {
  quiz.feedback.reset();
  quiz.tried_options.clear();
  quiz.revealed = false;
}

}  // namespace

std::string on(Model& model, const SetAnswerStyle& command) {
  model.state.quiz.style = command.style;
  return command.style == AnswerStyle::Typed ? "answer by typing" : "answer by choosing";
}

std::string on(Model& model, const AnswerTyped& command) {
  Quiz& quiz = model.state.quiz;
  if (quiz.revealed || command.text.find_first_not_of(' ') == std::string::npos) {
    return {};
  }
  quiz.feedback = practice::name_feedback(question(model.state).solid, command.text);
  if (quiz.feedback->verdict == solids::NameVerdict::Right) {
    reveal(model);
  }
  return "answer";
}

std::string on(Model& model, const AnswerOption& command) {
  Quiz& quiz = model.state.quiz;
  const practice::NetQuestion asked = question(model.state);
  if (quiz.revealed || command.index >= asked.options.size()) {
    return {};
  }
  quiz.tried_options.push_back(command.index);
  quiz.feedback = practice::name_feedback(asked.solid, asked.options[command.index]);
  if (command.index == asked.right_option) {
    reveal(model);
  }
  return "answer";
}

std::string on(Model& model, const RevealAnswer&) {
  if (model.state.quiz.revealed) {
    return {};
  }
  reveal(model);
  return "show the answer";
}

std::string on(Model& model, const NextQuestion&) {
  ++model.state.quiz.number;
  clear_answers(model.state.quiz);
  model.view.turn = 0;
  model.view.tilt = 0;
  model.view.nearness = 1;
  return "next question";
}

std::string on(Model& model, const ReseedQuiz& command) {
  model.state.quiz.seed = command.seed;
  model.state.quiz.number = 0;
  clear_answers(model.state.quiz);
  return {};
}

}  // namespace fw::app::parts
