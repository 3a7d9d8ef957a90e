#include "app/worked.hpp"

#include <algorithm>

#include "app/cutouts.hpp"
#include "base/ensure.hpp"
#include "lessons/open_faces.hpp"
#include "practice/net_tasks.hpp"
#include "reasoning/blank.hpp"
#include "reasoning/routes.hpp"

namespace fw::app {
namespace {

using reasoning::Purpose;
using reasoning::Route;
using reasoning::Solution;
using reasoning::Step;

constexpr const char* surface_area = "surface_area";

/// The problem with the solid that stands on the desk now.
lessons::Problem problem_on_desk(const State& state) {
  lessons::Problem problem = state.current();
  problem.solid = state.desk().solid;
  problem.description = problem.solid.description();
  if (open_on_desk(state).empty()) {
    problem.open.clear();
  }
  return problem;
}

bool is_lesson_kind(const State& state) {
  return state.desk().solid.description().kind == state.current().description.kind;
}

/// The measure that a word problem needs; empty for the length of all edges, whose sum is a step of its own.
std::string measure_of_supply(const lessons::Supply& supply, const reasoning::SupplyWork& work) {
  switch (work.decision.purpose) {
    case Purpose::Cover:
      return supply.measure;
    case Purpose::Fill:
      return "volume";
    case Purpose::Edge:
      return work.amount_step ? "" : supply.measure;
  }
  return {};
}

reasoning::Askable named(const Worked& worked, const std::string& name) {
  for (const reasoning::Askable& one : worked.askable) {
    if (one.name == name) {
      return one;
    }
  }
  return {name, name, "", false};
}

void add_part(Worked& worked, std::string title, std::vector<Step> steps, std::vector<reasoning::Source> sources,
              algebra::Bindings values = {}) {
  if (steps.empty()) {
    return;
  }
  const std::size_t first = worked.count;
  worked.count += steps.size();
  worked.parts.push_back({std::move(title), std::move(steps), std::move(sources), std::move(values), first});
}

void add_solution(Worked& worked, Solution solution, std::string title) {
  worked.title = solution.title;
  worked.letter = worked.open.empty() ? worked.letter : std::string();
  worked.notes = solution.answer.notes;
  add_part(worked, std::move(title), std::move(solution.steps), std::move(solution.sources),
           std::move(solution.values));
}

/// The length of all edges.
void add_amount(Worked& worked, const reasoning::SupplyWork& work) {
  worked.title = work.title;
  add_part(worked, {}, {*work.amount_step}, work.sources);
}

void work_out(Worked& worked, const lessons::Problem& problem, const Work& work) {
  const solids::Solid& solid = *worked.solid;
  reasoning::SolutionOptions options;
  options.open = worked.open;
  const bool is_by_lesson = std::find(problem.find.begin(), problem.find.end(), worked.asked) != problem.find.end();
  options.unit = is_by_lesson ? problem.unit : std::nullopt;
  if (work.route == RouteChoice::Both && worked.has_two_routes) {
    auto routes = reasoning::two_routes(solid, worked.asked, options);
    if (routes) {
      add_solution(worked, std::move(routes->by_formula), "by formula");
      add_solution(worked, std::move(routes->by_faces), "face by face");
      worked.comparison = routes->comparison;
      return;
    }
  }
  if (work.route == RouteChoice::Faces && worked.has_two_routes) {
    options.route = Route::FaceByFace;
  }
  auto solution = reasoning::worked_solution(solid, worked.asked, options);
  if (solution) {
    add_solution(worked, std::move(solution).value(), {});
  } else {
    worked.missing = solution.error();
  }
}

bool has_two_routes(const solids::Solid& solid, const std::string& asked) {
  reasoning::SolutionOptions options;
  options.route = Route::FaceByFace;
  return reasoning::worked_solution(solid, asked, options).has_value();
}

/// What is asked first: by the word problem, by the lesson, or else the surface area.
std::string first_asked(const lessons::Problem& problem, const Worked& worked, bool is_lesson) {
  if (worked.task) {
    return worked.task->measure;
  }
  if (worked.supply) {
    return measure_of_supply(*problem.supply, *worked.supply);
  }
  if (is_lesson && !worked.by_lesson.empty()) {
    return worked.by_lesson.front().name;
  }
  return surface_area;
}

void ask_by_lesson(Worked& worked, const lessons::Problem& problem) {
  for (const std::string& name : problem.find) {
    const bool known = std::any_of(worked.askable.begin(), worked.askable.end(),
                                   [&](const reasoning::Askable& one) { return one.name == name; });
    if (known) {
      worked.by_lesson.push_back(named(worked, name));
    }
  }
  // What is told by looking comes last: a class works on the numbers.
  for (const std::string& name : problem.find) {
    if (reasoning::is_looked_at(name)) {
      worked.by_lesson.push_back({name, name, "", false});
    }
  }
}

void find_parts(Worked& worked, const lessons::Problem& problem, const Work& work) {
  if (worked.asked.empty() || reasoning::is_looked_at(worked.asked)) {
    if (worked.supply) {
      add_amount(worked, *worked.supply);
    }
    return;
  }
  if (worked.asked == surface_area) {
    worked.open = lessons::open_faces(problem);
  }
  auto asked = reasoning::asked_for(problem.solid, worked.asked, work.instead);
  if (!asked) {
    worked.missing = asked.error();
    worked.offered = reasoning::could_be_given(problem.solid, worked.asked);
    return;
  }
  worked.solid = std::move(asked).value();
  worked.has_two_routes = worked.open.empty() && has_two_routes(*worked.solid, worked.asked);
  work_out(worked, problem, work);
}

/// How many steps of a task come before the measure that it rests on.
std::size_t lead_of(const reasoning::TaskWork& task) { return task.measure.empty() ? 0 : task.lead; }

void add_lead(Worked& worked) {
  if (worked.task) {
    const std::size_t lead = lead_of(*worked.task);
    const std::vector<Step>& steps = worked.task->steps;
    std::vector<reasoning::Source> sources = worked.task->sources;
    for (reasoning::Source& source : sources) {
      source.step = source.step && *source.step < lead ? source.step : std::nullopt;
    }
    add_part(worked, {}, {steps.begin(), steps.begin() + static_cast<std::ptrdiff_t>(lead)}, std::move(sources));
  }
}

/// The others; numbers that come from a step are counted from the first of these.
void add_rest(Worked& worked) {
  const std::size_t lead = lead_of(*worked.task);
  std::vector<Step> steps(worked.task->steps.begin() + static_cast<std::ptrdiff_t>(lead), worked.task->steps.end());
  std::vector<reasoning::Source> sources = worked.task->sources;
  for (reasoning::Source& source : sources) {
    source.step = source.step && *source.step >= lead ? std::optional(*source.step - lead) : std::nullopt;
  }
  add_part(worked, worked.asked.empty() ? "" : worked.task->title, std::move(steps), std::move(sources));
}

/// Puts blanks in the place of the numbers that come from hidden steps. `closed`: their texts are added.
void close_numbers(algebra::Notation& notation, const std::vector<bool>& hidden, std::vector<std::string>& closed) {
  if (notation.source && *notation.source < hidden.size() && hidden[*notation.source]) {
    closed.push_back(algebra::plain_text(notation));
    notation = algebra::leaf(algebra::Notation::Kind::Blank, closed.back());
    return;
  }
  for (algebra::Notation& part : notation.parts) {
    close_numbers(part, hidden, closed);
  }
}

void collect_sources(const algebra::Notation& notation, std::vector<std::size_t>& sources) {
  if (notation.source) {
    sources.push_back(*notation.source);
  }
  for (const algebra::Notation& part : notation.parts) {
    collect_sources(part, sources);
  }
}

}  // namespace

const WorkPart& Worked::part_of(std::size_t step) const {
  ensure(step < count, "a step was asked for that the solution does not have");
  const auto after = std::find_if(parts.begin(), parts.end(), [&](const WorkPart& part) { return part.first > step; });
  return *std::prev(after);
}

const Step& Worked::step(std::size_t index) const {
  const WorkPart& part = part_of(index);
  return part.steps[index - part.first];
}

/// A question about nets has sentences in the place of work.
Worked worked_net(const lessons::Problem& problem) {
  Worked worked;
  worked.askable = reasoning::askable_measures(problem.solid);
  worked.title = "net";
  worked.solid = problem.solid;
  add_part(worked, {}, practice::net_steps(problem), {});
  return worked;
}

Worked worked_for(const State& state) {
  const Work& work = state.desk().work;
  const lessons::Problem problem = problem_on_desk(state);
  const bool is_lesson = is_lesson_kind(state);
  if (shows_cutouts(state)) {
    return worked_net(problem);
  }
  Worked worked;
  worked.askable = reasoning::askable_measures(problem.solid);
  if (is_lesson) {
    ask_by_lesson(worked, problem);
    worked.task = work.asked.empty() ? reasoning::task_work(problem) : std::nullopt;
    worked.supply = work.asked.empty() && !worked.task ? reasoning::supply_work(problem) : std::nullopt;
  }
  worked.asked = work.asked.empty() ? first_asked(problem, worked, is_lesson) : work.asked;
  if (reasoning::is_looked_at(worked.asked)) {
    worked.task = reasoning::looking_work(problem.solid, worked.asked);
  }
  const reasoning::Askable about = named(worked, worked.asked);
  worked.title = about.title;
  worked.letter = about.letter;
  worked.solid = problem.solid;
  add_lead(worked);
  find_parts(worked, problem, work);
  if (worked.task) {
    // Where no formula leads to the measure that the task rests on, the task tells its value.
    worked.missing.clear();
    worked.title = worked.task->measure.empty() ? worked.task->name : worked.title;
    add_rest(worked);
  }
  if (worked.supply && worked.missing.empty()) {
    add_part(worked, worked.parts.empty() ? "" : "then the count", worked.supply->steps, worked.supply->sources);
  }
  return worked;
}

const Worked& WorkedMemo::of(const State& state) {
  const Work& work = state.desk().work;
  const bool in_item = state.in_item();
  Key key{state.lesson,
          state.problem,
          in_item ? state.quiz.set : nullptr,
          in_item ? state.quiz.number : 0,
          state.desk().solid,
          work.asked,
          work.instead,
          work.route};
  if (!key_ || !(*key_ == key)) {
    worked_ = worked_for(state);
    key_ = std::move(key);
  }
  return worked_;
}

const FilledBlank* filled(const Work& work, std::size_t step) {
  const auto found = std::find_if(work.blanks.begin(), work.blanks.end(),
                                  [&](const FilledBlank& blank) { return blank.step == step; });
  return found == work.blanks.end() ? nullptr : &*found;
}

bool is_blank(const Work& work, const Worked& worked, std::size_t step) {
  const bool fades = work.fade == Fade::All || (work.fade == Fade::ThisStep && work.faded == step);
  const FilledBlank* blank = filled(work, step);
  return fades && step < worked.count && (blank == nullptr || !blank->is_open);
}

ShownStep shown_step(const Work& work, const Worked& worked, std::size_t step) {
  const WorkPart& part = worked.part_of(step);
  const Step& about = worked.step(step);
  ShownStep shown{about.line, about.reason, is_blank(work, worked, step)};
  if (shown.has_blank) {
    reasoning::StepText text = reasoning::with_blank(about);
    shown.line = std::move(text.line);
    shown.reason = std::move(text.reason);
  }
  if (!shown.line || work.fade == Fade::None) {
    return shown;
  }
  std::vector<bool> hidden;
  for (const reasoning::Source& source : part.sources) {
    hidden.push_back(source.step && is_blank(work, worked, part.first + *source.step));
  }
  std::vector<std::string> closed;
  close_numbers(shown.line->left, hidden, closed);
  close_numbers(shown.line->right, hidden, closed);
  for (const std::string& number : closed) {
    shown.reason = reasoning::without(std::move(shown.reason), number);
  }
  shown.has_blank = shown.has_blank || !closed.empty();
  return shown;
}

std::vector<std::size_t> sources_in(const algebra::NotationLine& line) {
  std::vector<std::size_t> sources;
  collect_sources(line.left, sources);
  collect_sources(line.right, sources);
  return sources;
}

const reasoning::Source* pointed_source(const Model& model, const Worked& worked) {
  const std::optional<NumberPlace>& place = model.view.pointed;
  const Work& work = model.state.desk().work;
  if (!place || place->step >= std::min(worked.count, work.reached) || !worked.step(place->step).line) {
    return nullptr;
  }
  const std::vector<std::size_t> sources = sources_in(*shown_step(work, worked, place->step).line);
  const std::vector<reasoning::Source>& table = worked.part_of(place->step).sources;
  const bool there = place->number < sources.size() && sources[place->number] < table.size();
  return there ? &table[sources[place->number]] : nullptr;
}

Lit lit(const Model& model, const Worked& worked) {
  const Work& work = model.state.desk().work;
  Lit lit;
  if (work.reached == 0 || worked.count == 0) {
    return lit;
  }
  lit.open = worked.open;
  if (const reasoning::Source* source = pointed_source(model, worked)) {
    lit.faces = source->faces;
    if (source->mark) {
      lit.marks = {*source->mark};
    }
    if (source->step) {
      lit.step = worked.part_of(model.view.pointed->step).first + *source->step;
    }
    return lit;
  }
  const Step& step = worked.step(std::min(work.present, worked.count - 1));
  lit.faces = step.faces;
  lit.marks = step.marks;
  return lit;
}

}  // namespace fw::app
