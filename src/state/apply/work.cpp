#include <algorithm>
#include <tuple>

#include "practice/diagnosis.hpp"
#include "reasoning/blank.hpp"
#include "state/apply/handlers.hpp"
#include "state/worked.hpp"

namespace fw::state::handlers {
namespace {

Work& work(Model& model) { return desk(model).work; }

FilledBlank& blank_at(Work& place, std::size_t step) {
  const auto found = std::find_if(place.blanks.begin(), place.blanks.end(),
                                  [&](const FilledBlank& blank) { return blank.step == step; });
  if (found != place.blanks.end()) {
    return *found;
  }
  FilledBlank fresh;
  fresh.step = step;
  place.blanks.push_back(std::move(fresh));
  return place.blanks.back();
}

void show_blank(Work& place, std::size_t step) {
  FilledBlank& blank = blank_at(place, step);
  blank.is_open = true;
  blank.message = {};
}

/// Another thing is asked or another way is gone: its steps begin anew, the teacher's fade stays.
void begin_again(Work& place) {
  place.reached = 0;
  place.present = 0;
  place.opened.clear();
  place.blanks.clear();
  if (place.fade == Fade::ThisStep) {
    place.fade = Fade::None;
  }
}

std::string step_forward(Work& place, const WorkedProblem& worked) {
  if (place.reached > 0 && is_blank(place, worked, place.present)) {
    show_blank(place, place.present);
    return "show the number";
  }
  if (place.present + 1 < place.reached) {
    ++place.present;
    return "go to step " + std::to_string(place.present + 1);
  }
  if (place.reached >= worked.count) {
    return {};
  }
  place.present = place.reached;
  ++place.reached;
  return "show step " + std::to_string(place.reached);
}

std::string step_back(Work& place) {
  if (place.reached == 0) {
    return {};
  }
  const bool at_last = place.present + 1 >= place.reached;
  if (!at_last && place.present > 0) {
    --place.present;
    return "go to step " + std::to_string(place.present + 1);
  }
  if (!at_last) {
    return {};
  }
  --place.reached;
  place.present = place.reached == 0 ? 0 : place.reached - 1;
  // A step that comes back is a gap again.
  const std::size_t hidden = place.reached;
  place.blanks.erase(std::remove_if(place.blanks.begin(), place.blanks.end(),
                                    [hidden](const FilledBlank& blank) { return blank.step >= hidden; }),
                     place.blanks.end());
  return "hide step " + std::to_string(hidden + 1);
}

/// As many lines of the board as this, and the steps up to those that they stand for.
void show_lines(Work& place, const WorkedProblem& worked, std::size_t count) {
  const std::vector<reasoning::BoardLine>& lines = worked.board.lines;
  std::size_t reached = 0;
  for (std::size_t i = 0; i < count; ++i) {
    reached = std::max(reached, lines[i].steps.back() + 1);
  }
  place.reached = count == lines.size() ? worked.count : std::min(reached, worked.count - 1);
  place.present = place.reached == 0 ? 0 : place.reached - 1;
  place.lines = count;
  place.lines_at = place.reached;
  place.opened.erase(
      std::remove_if(place.opened.begin(), place.opened.end(), [count](std::size_t line) { return line >= count; }),
      place.opened.end());
}

std::string step_lines(Work& place, const WorkedProblem& worked, const Progressed& at, int by) {
  const std::size_t last = at.shown == 0 ? 0 : at.shown - 1;
  if (at.shown > 0 && at.present < last && (by > 0 || at.present > 0)) {
    place.line = by > 0 ? at.present + 1 : at.present - 1;
    return "go to line " + std::to_string(place.line + 1);
  }
  if (by > 0 ? at.shown == at.count : at.shown == 0 || at.present < last) {
    return {};
  }
  show_lines(place, worked, by > 0 ? at.shown + 1 : at.shown - 1);
  place.line = by > 0 ? at.shown : std::max<std::size_t>(at.shown, 2) - 2;
  return by > 0 ? "show line " + std::to_string(at.shown + 1) : "hide line " + std::to_string(at.shown);
}

std::string go_to(Model& model, const NextWork& next, int by) {
  if (next.measure.empty()) {
    return on(model, OpenProblem{next.problem});
  }
  std::string step = on(model, AskFor{next.measure, std::nullopt});
  if (by < 0) {  // it was worked out before
    std::ignore = on(model, LastStep{});
  }
  return step;
}

// What a wrong answer to the lesson's own question shows, as the quiz tells it.
std::optional<words::Message> mistake_in(const State& state, const WorkedProblem& worked, const std::string& typed) {
  const auto is_asked = [&](const reasoning::Askable& one) { return one.name == worked.asked; };
  const bool is_own = state.desk().solid == state.current().solid && !worked.supply && !worked.task &&
                      std::any_of(worked.by_lesson.begin(), worked.by_lesson.end(), is_asked);
  if (!is_own) {
    return std::nullopt;
  }
  const auto diagnosis = practice::diagnosed(state.current(), typed, worked.asked);
  return diagnosis && diagnosis->verdict == practice::AnswerVerdict::Recognized ? std::optional(diagnosis->message)
                                                                                : std::nullopt;
}

}  // namespace

std::string on(Model& model, const StepWork& command) {
  const WorkedProblem worked = worked_for(model.state);
  const bool is_at_end = command.by > 0 ? is_worked_to_the_end(model, worked) : progressed(model, worked).shown == 0;
  if (const auto next = is_at_end ? next_work(model.state, worked, command.by) : std::nullopt) {
    return go_to(model, *next, command.by);
  }
  const bool in_lines = shows_board(model, worked);
  if (command.by < 0) {
    return in_lines ? step_lines(work(model), worked, progressed(model, worked), -1) : step_back(work(model));
  }
  if (worked.supply && !work(model).decided) {
    return on(model, ShowDecision{});
  }
  return in_lines ? step_lines(work(model), worked, progressed(model, worked), 1) : step_forward(work(model), worked);
}

std::string on(Model& model, const SelectStep& command) {
  Work& place = work(model);
  if (wants_board(model)) {  // the least work first: nothing is solved for a step that is on the screen
    if (const WorkedProblem worked = worked_for(model.state); shows_board(model, worked)) {
      const Progressed at = progressed(model, worked);
      if (command.step != 0 || at.present == 0) {
        return {};
      }
      place.line = 0;
      return "go to line 1";
    }
  }
  if (command.step >= place.reached || command.step == place.present) {
    return {};
  }
  place.present = command.step;
  return "go to step " + std::to_string(command.step + 1);
}

std::string on(Model& model, const ShowSteps& command) {
  Work& place = work(model);
  if (!command.all) {
    begin_again(place);
    place.decision.reset();
    place.decided = false;
    return "hide all steps";
  }
  const WorkedProblem worked = worked_for(model.state);
  if (worked.supply) {
    place.decided = true;
  }
  place.reached = worked.count;
  place.present = std::min(place.present, worked.count == 0 ? 0 : worked.count - 1);  // another solid may have fewer
  return "show all steps";
}

std::string on(Model& model, const LastStep&) {
  std::ignore = on(model, ShowSteps{true});
  Work& place = work(model);
  place.present = place.reached == 0 ? 0 : place.reached - 1;
  const std::size_t lines = worked_for(model.state).board.lines.size();
  place.line = lines == 0 ? 0 : lines - 1;
  return "go to the last step";
}

std::string on(Model& model, const SetFade& command) {
  Work& place = work(model);
  if (command.fade == Fade::ThisStep && place.reached == 0) {
    return {};
  }
  place.fade = command.fade;
  place.faded = place.present;
  place.blanks.clear();
  switch (command.fade) {
    case Fade::None:
      return "no blanks";
    case Fade::ThisStep:
      return "a blank in this step";
    case Fade::All:
      return "blanks in all steps";
  }
  return {};
}

std::string on(Model& model, const FillBlank& command) {
  Work& place = work(model);
  const WorkedProblem worked = worked_for(model.state);
  const bool is_empty = command.text.find_first_not_of(' ') == std::string::npos;
  if (is_empty || command.step >= place.reached || !is_blank(place, worked, command.step)) {
    return {};
  }
  const reasoning::Step& step = worked.step(command.step);
  if (reasoning::blank_kind(step) == reasoning::BlankKind::Words) {
    return {};
  }
  reasoning::BlankCheck check =
      reasoning::check_blank(step, *worked.solid, worked.part_of(command.step).values, command.text);
  if (check.verdict == reasoning::BlankVerdict::Wrong && step.kind == reasoning::StepKind::Answer) {
    check.message = mistake_in(model.state, worked, command.text).value_or(check.message);
  }
  FilledBlank& blank = blank_at(place, command.step);
  blank.typed = command.text;
  blank.message = check.message;
  blank.is_right = check.verdict == reasoning::BlankVerdict::Right;
  blank.is_open = blank.is_right;
  return "fill the gap";
}

std::string on(Model& model, const ShowBlank& command) {
  Work& place = work(model);
  if (command.step >= place.reached || !is_blank(place, worked_for(model.state), command.step)) {
    return {};
  }
  show_blank(place, command.step);
  return "show the number";
}

std::string on(Model& model, const SetRoute& command) {
  Work& place = work(model);
  if (place.route == command.route) {
    return {};
  }
  place.route = command.route;
  begin_again(place);
  switch (command.route) {
    case RouteChoice::Formula:
      return "work by formula";
    case RouteChoice::Faces:
      return "work face by face";
    case RouteChoice::Both:
      return "work both ways";
  }
  return {};
}

std::string on(Model& model, const SetDetail& command) {
  model.view.detail = command.detail;
  model.view.pointed.reset();
  return {};
}

std::string on(Model& model, const SetNotation& command) {
  if (class_notation(model.state) == command.notation) {
    return {};
  }
  model.state.notation = command.notation;
  model.view.settings.notation = command.notation;
  return "write as the class writes";
}

std::string on(Model& model, const OpenLine& command) {
  Work& place = work(model);
  const WorkedProblem worked = worked_for(model.state);
  if (!shows_board(model, worked) || command.line >= lines_shown(place, worked)) {
    return {};
  }
  place.line = command.line;
  const auto open = std::find(place.opened.begin(), place.opened.end(), command.line);
  if (open != place.opened.end()) {
    place.opened.erase(open);
    return "close the line";
  }
  place.opened.push_back(command.line);
  return "open the line";
}

std::string on(Model& model, const AskFor& command) {
  Work& place = work(model);
  if (place.asked == command.measure && place.instead == command.instead) {
    return {};
  }
  place.asked = command.measure;
  place.instead = command.instead;
  begin_again(place);
  const WorkedProblem worked = worked_for(model.state);
  if (worked.missing.empty()) {
    model.view.work_panel = WorkPanel::Steps;
  }
  return worked.title.empty() ? "ask what the lesson asks" : "ask for the " + said(worked.title);
}

std::string on(Model& model, const Decide& command) {
  Work& place = work(model);
  const WorkedProblem worked = worked_for(model.state);
  if (!worked.supply || place.decided) {
    return {};
  }
  place.decision = command.purpose;
  place.decided = command.purpose == worked.supply->decision.purpose;
  return "decide";
}

std::string on(Model& model, const ShowDecision&) {
  Work& place = work(model);
  if (place.decided) {
    return {};
  }
  place.decided = true;
  return "show what the thing does";
}

std::string on(Model& model, const PointNumber& command) {
  model.view.pointed = command.place;
  return {};
}

std::string on(Model& model, const StepNumber& command) {
  const WorkedProblem worked = worked_for(model.state);
  std::optional<NumberPlace>& pointed = model.view.pointed;
  const std::size_t count = numbers_of_present(model, worked);
  const std::size_t present = progressed(model, worked).present;
  const bool on_board = shows_board(model, worked);
  if (count == 0) {
    pointed.reset();
    return {};
  }
  if (!pointed || pointed->step != present || pointed->on_board != on_board) {
    pointed = NumberPlace{present, command.by > 0 ? 0 : count - 1, on_board};
    return {};
  }
  const bool is_past = command.by > 0 ? pointed->number + 1 >= count : pointed->number == 0;
  if (is_past) {
    pointed.reset();
  } else {
    pointed->number = command.by > 0 ? pointed->number + 1 : pointed->number - 1;
  }
  return {};
}

std::string on(Model& model, const ShowWorkPanel& command) {
  model.view.work_panel = command.panel;
  return {};
}

}  // namespace fw::state::handlers
