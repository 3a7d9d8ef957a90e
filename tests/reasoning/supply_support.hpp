#pragma once

#include <string>
#include <vector>

#include "reasoning/supply.hpp"
#include "tasks/catalog.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::reasoning {

/// The problem of a lesson with this solid and these further members; both are JSON.
inline lessons::Problem problem_of(const std::string& solid, const std::string& members) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": )" + solid +
                                         ", " + members + "}]}");
  ensure(lesson.has_value(), "a lesson of a test can be read");
  return lesson->problems.front();
}

inline std::string box(const std::string& length, const std::string& width, const std::string& height) {
  return R"({"kind": "rectangular prism", "length": ")" + length + R"(", "width": ")" + width + R"(", "height": ")" +
         height + R"("})";
}

inline std::string supply(const std::string& members) { return "\"supply\": {" + members + "}"; }

inline const lessons::Supply& supply_of(const lessons::Problem& problem) {
  return practice::task_as<tasks::WordProblem>(problem)->supply();
}

inline SupplyWork worked(const lessons::Problem& problem) {
  const auto work = tasks::supply_work(problem);
  ensure(work.has_value(), "a problem of a test has a supply");
  return *work;
}

inline SupplyAnswer answer(const lessons::Problem& problem) {
  const SupplyWork work = worked(problem);
  ensure(work.answer.has_value(), "a supply of a test has an answer");
  return *work.answer;
}

inline std::vector<std::string> lines(const SupplyWork& work) {
  std::vector<std::string> texts;
  for (const Step& step : work.steps) {
    if (step.line) {
      texts.push_back(algebra::plain_text(*step.line));
    }
  }
  return texts;
}

}  // namespace fw::reasoning
