#pragma once

#include <string>

#include "app/state/model_support.hpp"
#include "tasks/quiz/quiz_help.hpp"

namespace fw::state::test {

/// The quiz over the demo lesson, at its start page.
inline Model at_start(const QuizSetup& setup = {}) {
  Model model = after(demo_model("shade"), {SetMode{Mode::Quiz}});
  model.state.quiz.setup = setup;
  return model;
}

inline QuizSetup made_up(std::uint64_t seed, Audience audience = Audience::Student, int level = 1) {
  return {audience, QuizSource::MadeUp, {}, level, seed};
}

/// The set that the setup makes, at the item of the lesson's problem with this id.
inline Model at_item(const std::string& id, const QuizSetup& setup = {}) {
  Model model = after(at_start(setup), {StartQuiz{}});
  while (model.state.in_item() && model.state.current().id != id) {
    model = after(std::move(model), {StepItem{1}});
  }
  model.history = {};
  EXPECT_TRUE(model.state.in_item()) << "no item " << id;
  return model;
}

inline const ItemWork& item(const Model& model) { return model.state.quiz.work(); }

/// The options of the item in view that are right.
inline std::vector<std::size_t> right_options(const State& state) {
  const Quiz& quiz = state.quiz;
  std::vector<std::size_t> right;
  const std::vector<practice::Choice> choices = choices_for(quiz.item(), quiz.setup.seed, quiz.number);
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (choices[i].is_right) {
      right.push_back(i);
    }
  }
  return right;
}

/// The right answer as a student types it: the number of the worked solution and its unit, or an option.
inline std::string right_answer(const State& state) {
  const Quiz& quiz = state.quiz;
  if (answer_form(quiz.item()) == AnswerForm::Option) {
    return said(choices_for(quiz.item(), quiz.setup.seed, quiz.number)[right_options(state).front()].text);
  }
  std::string text = said(answer_text(state.quiz.item()));
  const std::string about = "≈ ";
  return text.rfind(about, 0) == 0 ? text.substr(about.size()) : text;
}

}  // namespace fw::state::test
