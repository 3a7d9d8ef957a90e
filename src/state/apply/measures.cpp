#include <algorithm>

#include "reasoning/measures.hpp"
#include "reasoning/unknown.hpp"
#include "solids/body/body_nets.hpp"
#include "state/apply/handlers.hpp"

namespace fw::state::handlers {
namespace {

/// The first fault of the solid that was asked for as a notice, with the value that could be taken instead.
Notice notice_of(const std::vector<solids::Fault>& faults, const solids::Description& asked_for) {
  if (faults.empty()) {
    return {"This solid is impossible."};
  }
  const solids::Fault& fault = faults.front();
  if (fault.nearest.empty()) {
    return {said(fault.message)};
  }
  return {said(fault.message), fault.nearest, fault.measure, asked_for};
}

/// The same hinges on the new solid where it has the same faces and edges, and its usual net otherwise.
nets::HingeTree kept_net(const Desk& before, const solids::Solid& after) {
  if (before.solid.body().is_joined_like(after.body())) {
    auto tree = solids::net_with(after.body(), after.classic_net().root(), before.net.hinges());
    if (tree) {
      return std::move(tree).value();
    }
  }
  return after.classic_net();
}

/// Puts the described solid in the place of the one on the desk, or says why it cannot be.
bool change_solid(Model& model, const solids::Description& description, const solids::Known& known) {
  auto made = solids::Solid::make(description, known);
  if (!made) {
    model.view.notice = notice_of(made.error(), description);
    return false;
  }
  model.view.notice.reset();
  Desk& place = desk(model);
  nets::HingeTree net = kept_net(place, made.value());
  const bool same_faces = place.solid.faces().size() == made->faces().size();
  place.solid = std::move(made).value();
  place.net = std::move(net);
  if (!same_faces) {
    place.counted.clear();
    place.picked.reset();
    place.total_shown = false;
    place.grouping = usual_grouping(place.solid);
  }
  return true;
}

/// What is known of the whole of the figure on the desk goes with it as long as it is of the same kind.
solids::Known known_for(const Model& model, const solids::Description& description) {
  const solids::Solid& here = model.state.desk().solid;
  return description.kind == here.description().kind ? reasoning::known_of(here) : solids::Known{};
}

/// A label that since this change fits only as a rounded number: said without refusing it.
void remark_on_rounding(Model& model, const std::vector<solids::Fault>& before) {
  for (const solids::Fault& remark : model.state.desk().solid.remarks()) {
    const bool is_new = std::find(before.begin(), before.end(), remark) == before.end();
    if (remark.severity == solids::Severity::Rounding && is_new) {
      model.view.notice = notice_of({remark}, model.state.desk().solid.description());
      return;
    }
  }
}

std::string title_of(const Model& model, const std::string& field) {
  for (const reasoning::EditableMeasure& measure :
       reasoning::editable_measures(model.state.desk().solid, model.state.current().solid)) {
    if (measure.field == field) {
      return measure.title;
    }
  }
  return field;
}

std::string set_measure(Model& model, const solids::Description& on, const std::string& field,
                        const std::string& text) {
  auto described = reasoning::with_measure(on, field, text);
  if (!described) {
    model.view.notice = Notice{words::said(described.error())};
    return {};
  }
  const std::string title = title_of(model, field);
  const std::vector<solids::Fault> remarks = model.state.desk().solid.remarks();
  if (!change_solid(model, described.value(), known_for(model, described.value()))) {
    return {};
  }
  remark_on_rounding(model, remarks);
  return "set the " + title + " to " + text;
}

}  // namespace

std::string on(Model& model, const SetMeasure& command) {
  return set_measure(model, model.state.desk().solid.description(), command.field, command.text);
}

std::string on(Model& model, const SetUnit& command) {
  const solids::Description described = solids::in_unit(model.state.desk().solid.description(), command.unit);
  if (!change_solid(model, described, known_for(model, described))) {
    return {};
  }
  return "measure in " + command.unit.text();
}

std::string on(Model& model, const PutOnBench& command) {
  if (!change_solid(model, command.description, {})) {
    return {};
  }
  Desk& place = desk(model);
  place.counted.clear();
  place.picked.reset();
  place.total_shown = false;
  place.grouping = usual_grouping(place.solid);
  place.net = place.solid.classic_net();
  return "put a " + place.solid.name() + " on the bench";
}

std::string on(Model& model, const ResetProblem&) {
  model.view.notice.reset();
  desk(model) = fresh_desk(model.state.current());
  return "go back to the lesson's numbers";
}

std::string on(Model& model, const TakeRemedy&) {
  if (!model.view.notice || model.view.notice->remedy_field.empty()) {
    return {};
  }
  const Notice notice = *model.view.notice;
  model.view.notice.reset();
  return set_measure(model, *notice.asked_for, notice.remedy_field, notice.remedy_text);
}

std::string on(Model& model, const DismissNotice&) {
  model.view.notice.reset();
  return {};
}

}  // namespace fw::state::handlers
