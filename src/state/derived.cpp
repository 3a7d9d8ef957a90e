#include "state/derived.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "practice/told_prompt.hpp"
#include "tasks/decide/claim.hpp"
#include "tasks/face_lengths.hpp"
#include "units/write_quantity.hpp"

namespace fw::state {
namespace {

/// Among those with hands the first that has the most; none while no hand was raised for a wrong one.
std::optional<std::size_t> most_chosen_wrong(const std::vector<practice::Choice>& choices,
                                             const std::vector<int>& hands) {
  std::optional<std::size_t> most;
  for (std::size_t i = 0; i < std::min(choices.size(), hands.size()); ++i) {
    const bool is_more = !choices[i].is_right && hands[i] > (most ? hands[*most] : 0);
    most = is_more ? std::optional(i) : most;
  }
  return most;
}

void add_class_part(ItemShown& shown, const Quiz& quiz) {
  const ItemWork& work = quiz.work();
  if (work.stage == ClassStage::Question) {
    return;
  }
  shown.choices = choices_for(quiz.item(), quiz.setup.seed, quiz.number);
  if (work.stage != ClassStage::Answer) {
    return;
  }
  shown.take_up = most_chosen_wrong(shown.choices, work.hands);
  const std::optional<std::size_t> about = work.spoken ? work.spoken : shown.take_up;
  if (about) {
    shown.faces = shown.choices[*about].faces;
  }
}

ItemShown item_shown(const State& state) {
  const Quiz& quiz = state.quiz;
  const ItemWork& work = quiz.work();
  ItemShown shown;
  shown.form = answer_form(quiz.item());
  if (const auto* lengths = practice::task_as<tasks::FaceLengths>(quiz.item().problem)) {
    shown.faces = {lengths->face()};
  }
  if (quiz.setup.audience == Audience::Class) {
    add_class_part(shown, quiz);
  } else {
    if (is_chosen(shown.form)) {
      shown.choices = choices_for(quiz.item(), quiz.setup.seed, quiz.number);
    }
    if (work.asks_why) {
      shown.reasons = reasons_for(quiz.item());
    }
    shown.hints = hints_for(quiz.item(), class_notation(state));
    const std::size_t count = std::min(work.hints, shown.hints.size());
    shown.hints_left = shown.hints.size() - count;
    shown.hints.resize(count);
    if (!work.replies.empty() && !work.replies.back().faces.empty()) {
      shown.faces = work.replies.back().faces;
    } else if (!shown.hints.empty() && !work.done) {
      shown.faces = shown.hints.back().faces;
      shown.marks = shown.hints.back().marks;
    }
  }
  if (is_name(shown.form)) {
    tasks::NameChoice names = names_for(quiz.item(), quiz.setup.seed, quiz.number);
    shown.names = std::move(names.names);
    shown.right_name = names.right;
  }
  if (work.done) {
    shown.answer = said(answer_text(quiz.item()));
  }
  if (work.solution_shown && !is_worked(shown.form)) {
    shown.solution = told_solution(quiz.item());
  }
  return shown;
}

/// The solid with the length that somebody claims among its labels, so that it has a place; nothing where the claim is
/// about none of the solid's lengths, or another solid stands there.
std::optional<solids::Solid> with_claimed_label(const State& state) {
  const lessons::Problem& problem = state.current();
  const auto* claim = practice::task_as<tasks::Claim>(problem);
  if (claim == nullptr || !(state.desk().solid == problem.solid)) {
    return std::nullopt;
  }
  constexpr int places = 3;
  const exact::Number fitting = claim->verdict(problem).fitting;
  const auto written = units::written_as_shown(fitting, problem.solid.unit(), places);
  auto made = solids::Solid::make(claim->described_with(problem, written), problem.known);
  return made ? std::optional(std::move(made).value()) : std::nullopt;
}

tasks::CutoutProgress cutout_progress(const State& state) {
  if (!state.in_item()) {
    const Work& work = state.desk().work;
    return {work.reached > 0, work.present, {}, false};
  }
  const ItemWork& work = state.quiz.work();
  return {work.done, work.spoken, work.tried, !work.replies.empty()};
}

bool is_counted(const lessons::Problem& problem, const std::optional<Desk>& desk) {
  return desk &&
         reasoning::ledger(desk->solid, desk->counted, desk->grouping, open_on_desk(problem, *desk)).is_surface_area;
}

/// What the panels of the mode Explore say of the solid.
void add_explored(Derived& derived, const State& state) {
  const Desk& desk = state.desk();
  for (std::size_t i = 0; i < state.desks.size(); ++i) {
    derived.counted.push_back(is_counted(state.lesson->problems[i], state.desks[i]));
  }
  if (desk.picked) {
    derived.picked_work = reasoning::worked_area(desk.solid, *desk.picked, places);
  }
  if (state.mode == Mode::Explore) {
    derived.volume_work = reasoning::worked_volume(desk.solid, places);
  }
}

Derived derived_from(const State& state, WorkedMemo& worked, NetMemo& nets) {
  const Desk& desk = state.desk();
  Derived derived;
  derived.open = open_on_desk(state);
  derived.ledger = reasoning::ledger(desk.solid, desk.counted, desk.grouping, derived.open);
  derived.nets = nets.of(desk);
  if (state.in_item()) {
    derived.item = item_shown(state);
  }
  if (asks_from_net(state)) {
    derived.question = question(state);
  }
  if (shows_cutouts(state)) {
    derived.cutouts = tasks::cutout_bench(state.current(), cutout_progress(state));
  }
  if (state.mode == Mode::Work || (derived.item && is_worked(derived.item->form))) {
    derived.worked = worked.of(state);
  }
  derived.claimed = with_claimed_label(state);
  derived.measures = reasoning::editable_measures(desk.solid, state.current().solid);
  derived.units = reasoning::units_to_choose(desk.solid.description());
  derived.prompt = practice::told_prompt(state.current());
  add_explored(derived, state);
  return derived;
}

}  // namespace

const NetChoice& NetMemo::of(const Desk& desk) {
  if (!key_ || !(key_->first == desk.solid) || !(key_->second == desk.net)) {
    nets_ = net_choice(desk);
    key_ = std::pair(desk.solid, desk.net);
  }
  return nets_;
}

const Derived& DerivedMemo::of(const State& state) {
  if (!state_ || !(*state_ == state)) {
    derived_ = derived_from(state, worked_, nets_);
    state_ = state;
  }
  return derived_;
}

}  // namespace fw::state
