#pragma once

#include <fstream>
#include <string>

#include "app/state/quiz/quiz_support.hpp"

namespace fw::state::test {

/// A demo lesson from its file.
inline Model lesson_model(const std::string& name) {
  std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/demo_scenes/" + name);
  const std::string text((std::istreambuf_iterator<char>(file)), {});
  auto lesson = tasks::read_lesson(text);
  EXPECT_TRUE(lesson.has_value()) << name;
  Model model;
  model.state = opened(std::move(lesson).value(), "");
  return model;
}

/// The quiz over a lesson, at the item of this problem.
inline Model at(const std::string& lesson, const std::string& id, const QuizSetup& setup = {}) {
  Model model = lesson_model(lesson);
  model.state.quiz.setup = setup;
  model = after(std::move(model), {SetMode{Mode::Quiz}, StartQuiz{}});
  while (model.state.in_item() && model.state.current().id != id) {
    model = after(std::move(model), {StepItem{1}});
  }
  EXPECT_TRUE(model.state.in_item()) << "no item " << id;
  return model;
}
inline Model at_net(const std::string& id, const QuizSetup& setup = {}) { return at("lantern_nets.json", id, setup); }
inline Model at_market(const std::string& id, const QuizSetup& setup = {}) {
  return at("lantern_market.json", id, setup);
}

}  // namespace fw::state::test
