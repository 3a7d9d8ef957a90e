#include "state/worked.hpp"

#include <algorithm>

#include "reasoning/blank.hpp"
#include "tasks/catalog.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::state {
namespace {

using reasoning::Step;

/// The problem with the solid that stands on the desk now; with another kind of solid nothing is asked by the lesson.
lessons::Problem problem_on_desk(const State& state) {
  const lessons::Problem& prepared = state.current();
  const solids::Solid& solid = state.desk().solid;
  if (solid.description().kind != prepared.description.kind) {
    return {"", "", solid.description(), {}, solid};
  }
  lessons::Problem problem = prepared;
  problem.solid = solid;
  problem.description = solid.description();
  problem.tasks.erase(std::remove_if(problem.tasks.begin(), problem.tasks.end(),
                                     [&](const lessons::Task& task) { return !tasks::goes_with(task, solid); }),
                      problem.tasks.end());
  if (open_on_desk(state).empty()) {
    problem.open.clear();
  }
  return problem;
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

template <class Id>
void push_new(std::vector<Id>& all, const std::vector<Id>& more) {
  for (const Id id : more) {
    if (std::find(all.begin(), all.end(), id) == all.end()) {
      all.push_back(id);
    }
  }
}

}  // namespace

algebra::ClassNotation class_notation(const State& state) { return state.notation.value_or(state.lesson->notation); }

WorkedProblem worked_for(const State& state) {
  if (shows_cutouts(state)) {
    return tasks::worked_net(state.current());
  }
  const lessons::Problem problem = problem_on_desk(state);
  const Work& work = state.desk().work;
  return tasks::worked_problem(problem, {work.asked, work.instead, work.route, class_notation(state)});
}

const WorkedProblem& WorkedMemo::of(const State& state) {
  const Work& work = state.desk().work;
  const bool in_item = state.in_item();
  Key key{state.lesson,
          state.problem,
          in_item ? state.quiz.set : nullptr,
          in_item ? state.quiz.number : 0,
          state.desk().solid,
          work.asked,
          work.instead,
          work.route,
          class_notation(state)};
  if (!key_ || !(*key_ == key)) {
    worked_ = worked_for(state);
    key_ = std::move(key);
  }
  return worked_;
}

bool wants_board(const Model& model) {
  const bool is_class = model.state.in_item() && model.state.quiz.setup.audience == Audience::Class;
  const bool compares = model.state.in_item() && model.state.quiz.work().failing;  // a step with a student's own
  const Detail usual = (model.view.presenting || is_class) && !compares ? Detail::Board : Detail::EveryStep;
  return model.state.desk().work.fade == Fade::None && model.view.detail.value_or(usual) == Detail::Board;
}

bool shows_board(const Model& model, const WorkedProblem& worked) {
  return !worked.board.lines.empty() && wants_board(model);
}

std::size_t lines_shown(const Work& work, const WorkedProblem& worked) {
  const std::vector<reasoning::BoardLine>& lines = worked.board.lines;
  if (work.reached >= worked.count) {
    return lines.size();
  }
  if (work.reached == work.lines_at) {
    return std::min(work.lines, lines.size());
  }
  const auto hidden = std::find_if(lines.begin(), lines.end(), [&](const reasoning::BoardLine& line) {
    return line.steps.empty() || line.steps.front() >= work.reached;
  });
  return static_cast<std::size_t>(hidden - lines.begin());
}

Progressed progressed(const Model& model, const WorkedProblem& worked) {
  const Work& work = model.state.desk().work;
  if (!shows_board(model, worked)) {
    return {work.reached, worked.count, work.present};
  }
  const std::size_t shown = lines_shown(work, worked);
  return {shown, worked.board.lines.size(), shown == 0 ? 0 : std::min(work.line, shown - 1)};
}

const FilledBlank* filled(const Work& work, std::size_t step) {
  const auto found = std::find_if(work.blanks.begin(), work.blanks.end(),
                                  [&](const FilledBlank& blank) { return blank.step == step; });
  return found == work.blanks.end() ? nullptr : &*found;
}

bool is_blank(const Work& work, const WorkedProblem& worked, std::size_t step) {
  const bool fades = work.fade == Fade::All || (work.fade == Fade::ThisStep && work.faded == step);
  const FilledBlank* blank = filled(work, step);
  return fades && step < worked.count && (blank == nullptr || !blank->is_open);
}

ShownStep shown_step(const Work& work, const WorkedProblem& worked, std::size_t step) {
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
    shown.reason = reasoning::without(shown.reason, number);
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

std::size_t numbers_of_present(const Model& model, const WorkedProblem& worked) {
  const Progressed at = progressed(model, worked);
  if (at.present >= std::min(at.shown, at.count)) {
    return 0;
  }
  if (shows_board(model, worked)) {
    const reasoning::BoardLine& line = worked.board.lines[at.present];
    return line.equations.empty() ? 0 : sources_in(reasoning::in_one_line(line)).size();
  }
  const std::optional<algebra::NotationLine> line = shown_step(model.state.desk().work, worked, at.present).line;
  return line ? sources_in(*line).size() : 0;
}

const reasoning::Source* pointed_source(const Model& model, const WorkedProblem& worked) {
  const std::optional<NumberPlace>& place = model.view.pointed;
  const Work& work = model.state.desk().work;
  if (place && place->on_board) {
    const bool is_there = shows_board(model, worked) && place->step < lines_shown(work, worked) &&
                          !worked.board.lines[place->step].equations.empty();
    const std::vector<std::size_t> rows =
        is_there ? sources_in(reasoning::in_one_line(worked.board.lines[place->step])) : std::vector<std::size_t>{};
    return place->number < rows.size() ? &worked.board.sources[rows[place->number]] : nullptr;
  }
  if (!place || place->step >= std::min(worked.count, work.reached) || !worked.step(place->step).line) {
    return nullptr;
  }
  const std::vector<std::size_t> sources = sources_in(*shown_step(work, worked, place->step).line);
  const std::vector<reasoning::Source>& table = worked.part_of(place->step).sources;
  const bool there = place->number < sources.size() && sources[place->number] < table.size();
  return there ? &table[sources[place->number]] : nullptr;
}

Lit lit(const Model& model, const WorkedProblem& worked) {
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
    if (source->step && model.view.pointed->on_board) {
      lit.line = source->step;
    } else if (source->step) {
      lit.step = worked.part_of(model.view.pointed->step).first + *source->step;
    }
    return lit;
  }
  if (shows_board(model, worked)) {
    const Progressed at = progressed(model, worked);
    for (const std::size_t index : worked.board.lines[at.present].steps) {
      const Step& step = worked.step(index);
      push_new(lit.faces, step.faces);
      push_new(lit.marks, step.marks);
    }
    return lit;
  }
  const Step& step = worked.step(std::min(work.present, worked.count - 1));
  lit.faces = step.faces;
  lit.marks = step.marks;
  return lit;
}

bool is_worked_to_the_end(const Model& model, const WorkedProblem& worked) {
  const Work& work = model.state.desk().work;
  const bool is_undecided = worked.supply && !work.decided;
  const bool has_blank = work.reached > 0 && is_blank(work, worked, work.present);
  const Progressed at = progressed(model, worked);
  return !is_undecided && !has_blank && at.shown == at.count && at.present + 1 >= at.shown;
}

std::optional<NextWork> next_work(const State& state, const WorkedProblem& worked, int by) {
  if (state.mode != Mode::Work) {
    return std::nullopt;
  }
  const auto step = static_cast<std::ptrdiff_t>(by);
  const std::vector<reasoning::Askable>& questions = worked.by_lesson;
  const auto asked = std::find_if(questions.begin(), questions.end(),
                                  [&](const reasoning::Askable& one) { return one.name == worked.asked; });
  const std::ptrdiff_t question = asked - questions.begin() + step;
  if (asked != questions.end() && question >= 0 && question < std::distance(questions.begin(), questions.end())) {
    return NextWork{state.problem, questions[static_cast<std::size_t>(question)].name};
  }
  const auto problem = static_cast<std::ptrdiff_t>(state.problem) + step;
  if (problem < 0 || problem >= static_cast<std::ptrdiff_t>(state.lesson->problems.size())) {
    return std::nullopt;
  }
  return NextWork{static_cast<std::size_t>(problem), ""};
}

}  // namespace fw::state
