#include "app/derived.hpp"

namespace fw::app {

Derived derived_from(const State& state) {
  const Desk& desk = state.desk();
  Derived derived;
  derived.ledger = reasoning::ledger(desk.solid, desk.counted, desk.grouping);
  derived.nets = net_choice(desk);
  if (state.mode == Mode::Quiz) {
    derived.question = question(state);
  }
  derived.measures = editable_measures(desk.solid, state.current().solid);
  derived.units = units_to_choose(desk.solid.description());
  return derived;
}

const Derived& DerivedMemo::of(const State& state) {
  if (!state_ || !(*state_ == state)) {
    derived_ = derived_from(state);
    state_ = state;
  }
  return derived_;
}

}  // namespace fw::app
