#pragma once

#include <optional>
#include <vector>

#include "app/apply.hpp"
#include "app/measures.hpp"

namespace fw::app {

/// What follows from a state and is shown in several places: worked out once a change, not once a frame.
struct Derived {
  reasoning::Ledger ledger;
  NetChoice nets;
  std::optional<practice::NetQuestion> question;  ///< in the quiz
  std::vector<EditableMeasure> measures;
  std::vector<units::Unit> units;
};
[[nodiscard]] Derived derived_from(const State& state);

/// Keeps the last Derived until the state is another one.
class DerivedMemo {
 public:
  [[nodiscard]] const Derived& of(const State& state);

 private:
  std::optional<State> state_;
  Derived derived_;
};

}  // namespace fw::app
