#include "app/derived.hpp"

namespace fw::app {

Derived derived_from(const State& state, WorkedMemo& memo) {
  const Desk& desk = state.desk();
  Derived derived;
  derived.open = open_on_desk(state);
  derived.ledger = reasoning::ledger(desk.solid, desk.counted, desk.grouping, derived.open);
  derived.nets = net_choice(desk);
  if (state.mode == Mode::Quiz) {
    derived.question = question(state);
  }
  if (state.mode == Mode::Work) {
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
