#pragma once

#include <gtest/gtest.h>

#include <string>

#include "platform/assets.hpp"
#include "state/apply.hpp"
#include "state/state.hpp"
#include "tasks/catalog.hpp"

namespace fw::state::test {

/// The demo lesson, opened at a problem.
inline Model demo_model(const std::string& problem = "shade") {
  auto lesson = tasks::read_lesson(platform::asset("lantern_fair.json"));
  Model model;
  model.state = opened(std::move(lesson).value(), "");
  for (std::size_t i = 0; i < model.state.lesson->problems.size(); ++i) {
    if (model.state.lesson->problems[i].id == problem) {
      model = apply(std::move(model), OpenProblem{i}).model;
    }
  }
  EXPECT_EQ(model.state.current().id, problem);
  model.history = {};
  return model;
}

inline Model after(Model model, const std::vector<Command>& commands) {
  for (const Command& command : commands) {
    model = apply(std::move(model), command).model;
  }
  return model;
}

}  // namespace fw::state::test
