#include "tasks/worked_problem.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/board/explained_board.hpp"
#include "reasoning/routes.hpp"
#include "tasks/catalog.hpp"
#include "tasks/look.hpp"
#include "tasks/measure.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::tasks {
namespace {

using geometry::FaceId;
using practice::ExplainedAt;
using practice::stated;
using practice::TaskType;
using reasoning::Askable;
using reasoning::Route;
using reasoning::Step;
using reasoning::WorkPart;

constexpr const char* surface_area = "surface_area";

const Askable* find_askable(const WorkedProblem& worked, const std::string& name) {
  const auto found =
      std::find_if(worked.askable.begin(), worked.askable.end(), [&](const Askable& one) { return one.name == name; });
  return found != worked.askable.end() ? &*found : nullptr;
}

/// Whether it is told by looking at the solid, or by its numbers without one measure that it rests on.
bool is_seen(const TaskType& task) { return task.measure().empty() && !task.find().empty(); }

Askable seen(const std::string& name, const std::string& title) { return {name, title, "", false}; }

std::vector<Askable> asked_by_lesson(const WorkedProblem& worked, const Problem& problem) {
  std::vector<Askable> by_lesson;
  for (const std::string& name : lessons::find_of(problem)) {
    if (const Askable* one = find_askable(worked, name)) {
      by_lesson.push_back(*one);
    }
  }
  // What is told by looking comes last: a class works on the numbers.
  for (const Task& task : problem.tasks) {
    const TaskType& type = stated(task);
    if (is_seen(type)) {
      const auto work = type.work(problem, SolutionOptions{}.line_places());
      by_lesson.push_back(seen(type.find(), work ? said(work->name) : type.find()));
    }
  }
  return by_lesson;
}

/// What comes first of several things that are asked for: a task, a word problem, a measure, what is seen.
int place_of(const TaskType& task, const Problem& problem) {
  if (is_seen(task)) {
    return 3;
  }
  if (task.work(problem, SolutionOptions{}.line_places())) {
    return 0;
  }
  const bool is_of_word_problem = std::any_of(problem.tasks.begin(), problem.tasks.end(), [&](const Task& other) {
    return stated(other).explained_at(problem) != ExplainedAt::ItsPlace && other->find().empty() &&
           stated(other).measure() == task.measure();
  });
  return is_of_word_problem ? 1 : 2;
}

/// What is to be worked out, and the problem that asks for it.
struct Chosen {
  Problem problem;
  Task task;
  [[nodiscard]] const TaskType& type() const { return stated(task); }
};

Chosen chosen(const Problem& problem, const std::string& asked) {
  std::vector<Task> all;
  for (const Task& task : problem.tasks) {
    const bool is_told = stated(task).explained_at(problem) != ExplainedAt::Elsewhere;
    if (is_told && (asked.empty() || task->find() == asked || task->key() == asked)) {
      all.push_back(task);
    }
  }
  if (!all.empty()) {
    return {problem, *std::min_element(all.begin(), all.end(), [&](const Task& a, const Task& b) {
              return place_of(stated(a), problem) < place_of(stated(b), problem);
            })};
  }
  const std::string find = asked.empty() ? surface_area : asked;
  Problem alone{"", "", problem.description, problem.known, problem.solid};
  if (find == surface_area) {
    alone.open = problem.open;
  }
  return {std::move(alone), named(find)};
}

/// The measure that is worked out of others; empty where none is.
std::string measure_behind(const Chosen& chosen) {
  const auto work = chosen.type().work(chosen.problem, SolutionOptions{}.line_places());
  return work ? work->measure : chosen.task.as<Measure>() != nullptr ? chosen.task->find() : "";
}

bool leads_face_by_face(const solids::Solid& solid, const std::string& measure) {
  SolutionOptions options;
  options.route = Route::FaceByFace;
  return !measure.empty() && reasoning::worked_solution(solid, measure, options).has_value();
}

words::Message title_of(const WorkedProblem& worked, const Explanation& explanation) {
  if (worked.task && worked.task->measure.empty()) {
    return worked.task->name;
  }
  const bool is_worked = !explanation.solution.values.empty() || worked.supply;
  return is_worked ? words::Message(explanation.solution.title) : worked.title;
}

void take_over(WorkedProblem& worked, Explanation explanation) {
  worked.supply = std::move(explanation.packs);
  worked.task = std::move(explanation.task);
  worked.title = title_of(worked, explanation);
  worked.notes = std::move(explanation.solution.answer.notes);
}

void work_out(WorkedProblem& worked, const Chosen& chosen, const WorkChoice& choice) {
  const RouteChoice route = choice.route;
  SolutionOptions options;
  options.notation = choice.notation;
  options.route = route == RouteChoice::Faces && worked.has_two_routes ? Route::FaceByFace : Route::Formula;
  auto made = practice::explained_task(chosen.problem, chosen.task, options);
  if (!made) {
    worked.missing = made.error();
    return;
  }
  Explanation explanation = std::move(made).value();
  if (route == RouteChoice::Both && worked.has_two_routes) {
    const auto* of_measure = chosen.task.as<Measure>();
    options.unit = of_measure == nullptr ? std::nullopt : of_measure->unit_asked();
    if (auto both = reasoning::two_routes(*worked.solid, worked.asked, options)) {
      reasoning::Routes routes = std::move(both).value();
      explanation.solution = std::move(routes.by_formula);
      explanation.by_faces = std::move(routes.by_faces);
      worked.comparison = std::move(routes.comparison);
    }
  }
  worked.parts = reasoning::parts_of(explanation);
  worked.count = worked.parts.back().first + worked.parts.back().steps.size();
  worked.board = reasoning::board_of(worked.parts, choice.notation);
  take_over(worked, std::move(explanation));
}

}  // namespace

const WorkPart& WorkedProblem::part_of(std::size_t step) const {
  ensure(step < count, "a step was asked for that the solution does not have");
  const auto after = std::find_if(parts.begin(), parts.end(), [&](const WorkPart& part) { return part.first > step; });
  return *std::prev(after);
}

const Step& WorkedProblem::step(std::size_t index) const {
  const WorkPart& part = part_of(index);
  return part.steps[index - part.first];
}

WorkedProblem worked_problem(const Problem& problem, const WorkChoice& choice) {
  Chosen asked = chosen(problem, choice.asked);
  const std::string measure = measure_behind(asked);
  WorkedProblem worked;
  worked.askable = reasoning::askable_measures(problem.solid);
  worked.by_lesson = asked_by_lesson(worked, problem);
  worked.asked = is_seen(asked.type()) ? asked.task->find() : measure;
  const Askable* named = find_askable(worked, worked.asked);
  const Askable about = named != nullptr ? *named : seen(worked.asked, worked.asked);
  worked.title = words::Message(about.title);
  worked.open = measure == surface_area ? lessons::open_faces(problem) : std::vector<FaceId>{};
  worked.letter = worked.open.empty() ? about.letter : "";
  if (!measure.empty()) {
    if (auto solid = reasoning::asked_for(problem.solid, measure, choice.instead)) {
      asked.problem.solid = std::move(solid).value();
      asked.problem.description = asked.problem.solid.description();
    } else if (!asked.type().work(asked.problem,
                                  SolutionOptions{}.line_places())) {  // a task tells the value of its measure itself
      worked.missing = solid.error();
      worked.offered = reasoning::could_be_given(problem.solid, measure);
    }
  }
  worked.solid = asked.problem.solid;
  if (worked.missing.empty()) {
    worked.has_two_routes = worked.open.empty() && leads_face_by_face(*worked.solid, measure);
    work_out(worked, asked, choice);
  }
  return worked;
}

WorkedProblem worked_net(const Problem& problem) {
  WorkedProblem worked;
  worked.askable = reasoning::askable_measures(problem.solid);
  worked.title = words::message("net");
  worked.solid = problem.solid;
  worked.parts = {{{}, net_steps(problem), {}, {}, {}, 0, false}};
  worked.count = worked.parts.front().steps.size();
  return worked;
}

}  // namespace fw::tasks
