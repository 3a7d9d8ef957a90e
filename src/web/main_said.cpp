#include <cstdio>
#include <string>

#include "algebra/notation.hpp"
#include "lessons/write_lesson.hpp"
#include "platform/assets.hpp"
#include "reasoning/board/explained_board.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"

// All that the rooms say of the demo lessons and of new problems, on standard output: the desktop's build and the
// page's have to say the same bytes. Built on both sides; tests/cli/page/ compares.
namespace fw::web {
namespace {

void say(const std::string& text) { std::fwrite(text.data(), 1, text.size(), stdout); }

void say_solution(const lessons::Problem& problem, reasoning::Route route, const algebra::ClassNotation& notation) {
  reasoning::SolutionOptions options;
  options.route = route;
  const auto all = practice::explained(problem, options);
  if (!all) {
    say(said(all.error()) + "\n");
    return;
  }
  for (const reasoning::Explanation& one : *all) {
    const std::vector<reasoning::Step> steps = reasoning::all_steps(one);
    say(reasoning::steps_text(steps));
    for (const reasoning::Step& step : steps) {
      say(step.line ? algebra::mathml(*step.line) + "\n" : "");
    }
    say(reasoning::board_text(reasoning::board_of(reasoning::parts_of(one), notation).lines));
    say("Answer: " + said(one.answer) + "\n");
  }
}

void say_problem(const lessons::Problem& problem, const algebra::ClassNotation& notation) {
  say("\n" + problem.id + ": " + problem.solid.name() + "\n");
  if (tasks::net_asked(problem) != nullptr) {
    say(reasoning::steps_text(tasks::net_steps(problem)) + said(tasks::net_answer(problem)) + "\n");
    return;
  }
  say_solution(problem, reasoning::Route::Formula, notation);
  say_solution(problem, reasoning::Route::FaceByFace, notation);
}

void say_lesson(const lessons::Lesson& lesson) {
  say(lessons::write_lesson(lesson));
  for (const lessons::Problem& problem : lesson.problems) {
    say_problem(problem, lesson.notation);
  }
}

void say_all() {
  for (const std::string_view name : platform::asset_names()) {
    const bool is_lesson = name.size() > 5 && name.substr(name.size() - 5) == ".json";
    if (!is_lesson || name.find("schema") != std::string_view::npos) {
      continue;
    }
    const lessons::Reading reading = tasks::reading_of(std::string(platform::asset(name)));
    for (const lessons::Finding& finding : reading.findings) {
      say(lessons::text(finding, std::string(name)) + "\n");
    }
    if (reading.lesson) {
      say_lesson(*reading.lesson);
    }
  }
  for (int level = 1; level <= 3; ++level) {
    tasks::PracticeRequest request;
    request.level = level;
    request.count = 40;
    const auto made = tasks::generated(request);
    for (const lessons::Lesson& lesson : made.value()) {
      say_lesson(lesson);
    }
  }
}

}  // namespace
}  // namespace fw::web

int main() {
  fw::web::say_all();
  return 0;
}
