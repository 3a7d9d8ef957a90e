#include "app/derived.hpp"

#include <algorithm>

namespace fw::app {
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
  if (quiz.setup.audience == Audience::Class) {
    add_class_part(shown, quiz);
  } else {
    shown.hints = hints_for(quiz.item());
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
  if (shown.form == AnswerForm::NetName || shown.form == AnswerForm::Name) {
    const practice::NetQuestion names = question(state);
    shown.names = names.options;
    shown.right_name = names.right_option;
  }
  if (work.done) {
    shown.answer = answer_text(quiz.item());
  }
  if (work.solution_shown && shown.form != AnswerForm::Number) {
    shown.solution = told_solution(quiz.item());
  }
  return shown;
}

}  // namespace

Derived derived_from(const State& state, WorkedMemo& memo) {
  const Desk& desk = state.desk();
  Derived derived;
  derived.open = open_on_desk(state);
  derived.ledger = reasoning::ledger(desk.solid, desk.counted, desk.grouping, derived.open);
  derived.nets = net_choice(desk);
  if (state.in_item()) {
    derived.item = item_shown(state);
  }
  if (asks_from_net(state)) {
    derived.question = question(state);
  }
  if (state.mode == Mode::Work || (derived.item && derived.item->form == AnswerForm::Number)) {
    derived.worked = memo.of(state);
  }
  derived.measures = editable_measures(desk.solid, state.current().solid);
  derived.units = units_to_choose(desk.solid.description());
  return derived;
}

const Derived& DerivedMemo::of(const State& state) {
  if (!state_ || !(*state_ == state)) {
    derived_ = derived_from(state, worked_);
    state_ = state;
  }
  return derived_;
}

}  // namespace fw::app
