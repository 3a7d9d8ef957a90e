#include <algorithm>
#include <tuple>

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

}  // namespace

std::string on(Model& model, const StepWork& command) {
  if (command.by < 0) {
    return step_back(work(model));
  }
  const WorkedProblem worked = worked_for(model.state);
  if (worked.supply && !work(model).decided) {
    return on(model, ShowDecision{});
  }
  return step_forward(work(model), worked);
}

std::string on(Model& model, const SelectStep& command) {
  Work& place = work(model);
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
  return "show all steps";
}

std::string on(Model& model, const LastStep&) {
  std::ignore = on(model, ShowSteps{true});
  Work& place = work(model);
  place.present = place.reached == 0 ? 0 : place.reached - 1;
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
  const reasoning::BlankCheck check =
      reasoning::check_blank(step, *worked.solid, worked.part_of(command.step).values, command.text);
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
  const Work& place = work(model);
  const WorkedProblem worked = worked_for(model.state);
  std::optional<NumberPlace>& pointed = model.view.pointed;
  const bool has_line = place.present < std::min(place.reached, worked.count) && worked.step(place.present).line;
  const std::size_t count = has_line ? sources_in(*shown_step(place, worked, place.present).line).size() : 0;
  if (count == 0) {
    pointed.reset();
    return {};
  }
  if (!pointed || pointed->step != place.present) {
    pointed = NumberPlace{place.present, command.by > 0 ? 0 : count - 1};
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
