#include "reasoning/worked_problem.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/routes.hpp"

namespace fw::reasoning {
namespace {

constexpr const char* surface_area = "surface_area";

const Askable* find_askable(const WorkedProblem& worked, const std::string& name) {
  const auto found =
      std::find_if(worked.askable.begin(), worked.askable.end(), [&](const Askable& one) { return one.name == name; });
  return found != worked.askable.end() ? &*found : nullptr;
}

Askable seen(const std::string& name) { return {name, name, "", false}; }

std::vector<Askable> asked_by_lesson(const WorkedProblem& worked, const lessons::Problem& problem) {
  std::vector<Askable> by_lesson;
  for (const std::string& name : problem.find) {
    if (const Askable* one = find_askable(worked, name)) {
      by_lesson.push_back(*one);
    }
  }
  // What is told by looking comes last: a class works on the numbers.
  for (const std::string& name : problem.find) {
    if (is_looked_at(name)) {
      by_lesson.push_back(seen(name));
    }
  }
  return by_lesson;
}

/// What comes first of several things that are asked for: a task, a word problem, a measure, what is seen.
int place_of(const Ask& ask, const lessons::Problem& problem) {
  switch (ask.kind) {
    case Ask::Kind::Task:
      return 0;
    case Ask::Kind::Amount:
      return 1;
    case Ask::Kind::Measure:
      return problem.supply && problem.supply->measure == ask.find ? 1 : 2;
    case Ask::Kind::Look:
      break;
  }
  return 3;
}

/// What is to be worked out, and the problem that asks for it.
struct Chosen {
  Ask ask;
  lessons::Problem problem;
};

Chosen chosen(const lessons::Problem& problem, const std::string& asked) {
  const std::vector<Ask> asks = asks_of(problem);
  const auto found =
      asked.empty()
          ? std::min_element(asks.begin(), asks.end(),
                             [&](const Ask& a, const Ask& b) { return place_of(a, problem) < place_of(b, problem); })
          : std::find_if(asks.begin(), asks.end(),
                         [&](const Ask& ask) { return ask.kind != Ask::Kind::Amount && ask.find == asked; });
  if (found != asks.end()) {
    return {*found, problem};
  }
  const std::string find = asked.empty() ? surface_area : asked;
  lessons::Problem alone{"", "", problem.description, problem.known, {find}, {}, problem.solid};
  if (find == surface_area) {
    alone.open = problem.open;
  }
  return {{is_looked_at(find) ? Ask::Kind::Look : Ask::Kind::Measure, find}, std::move(alone)};
}

/// The measure that is worked out of others; empty where none is.
std::string measure_behind(const Chosen& chosen) {
  switch (chosen.ask.kind) {
    case Ask::Kind::Task:
      return task_work(chosen.problem, SolutionOptions{}.places, chosen.ask.find)->measure;
    case Ask::Kind::Measure:
      return chosen.ask.find;
    case Ask::Kind::Look:
    case Ask::Kind::Amount:
      break;
  }
  return {};
}

bool leads_face_by_face(const solids::Solid& solid, const std::string& measure) {
  SolutionOptions options;
  options.route = Route::FaceByFace;
  return !measure.empty() && worked_solution(solid, measure, options).has_value();
}

std::string title_of(const WorkedProblem& worked, const Explanation& explanation) {
  if (worked.task && worked.task->measure.empty()) {
    return worked.task->name;
  }
  const bool is_worked = !explanation.solution.values.empty() || worked.supply;
  return is_worked ? explanation.solution.title : worked.title;
}

void take_over(WorkedProblem& worked, Explanation explanation) {
  worked.supply = std::move(explanation.packs);
  worked.task = std::move(explanation.task);
  worked.title = title_of(worked, explanation);
  worked.notes = std::move(explanation.solution.answer.notes);
}

void work_out(WorkedProblem& worked, const Chosen& chosen, RouteChoice route) {
  SolutionOptions options;
  options.route = route == RouteChoice::Faces && worked.has_two_routes ? Route::FaceByFace : Route::Formula;
  auto made = explained_ask(chosen.problem, chosen.ask, options);
  if (!made) {
    worked.missing = made.error();
    return;
  }
  Explanation explanation = std::move(made).value();
  if (route == RouteChoice::Both && worked.has_two_routes) {
    options.unit = chosen.ask.kind == Ask::Kind::Measure ? chosen.problem.unit : std::nullopt;
    if (auto both = two_routes(*worked.solid, worked.asked, options)) {
      Routes routes = std::move(both).value();
      explanation.solution = std::move(routes.by_formula);
      explanation.by_faces = std::move(routes.by_faces);
      worked.comparison = std::move(routes.comparison);
    }
  }
  worked.parts = parts_of(explanation);
  worked.count = worked.parts.back().first + worked.parts.back().steps.size();
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

WorkedProblem worked_problem(const lessons::Problem& problem, const WorkChoice& choice) {
  Chosen asked = chosen(problem, choice.asked);
  const std::string measure = measure_behind(asked);
  WorkedProblem worked;
  worked.askable = askable_measures(problem.solid);
  worked.by_lesson = asked_by_lesson(worked, problem);
  worked.asked = asked.ask.kind == Ask::Kind::Look ? asked.ask.find : measure;
  const Askable* named = find_askable(worked, worked.asked);
  const Askable about = named != nullptr ? *named : seen(worked.asked);
  worked.title = about.title;
  worked.open = measure == surface_area ? lessons::open_faces(problem) : std::vector<FaceId>{};
  worked.letter = worked.open.empty() ? about.letter : "";
  if (!measure.empty()) {
    if (auto solid = asked_for(problem.solid, measure, choice.instead)) {
      asked.problem.solid = std::move(solid).value();
      asked.problem.description = asked.problem.solid.description();
    } else if (asked.ask.kind != Ask::Kind::Task) {  // a task tells the value of its measure itself
      worked.missing = solid.error();
      worked.offered = could_be_given(problem.solid, measure);
    }
  }
  worked.solid = asked.problem.solid;
  if (worked.missing.empty()) {
    worked.has_two_routes = worked.open.empty() && leads_face_by_face(*worked.solid, measure);
    work_out(worked, asked, choice.route);
  }
  return worked;
}

}  // namespace fw::reasoning
