#pragma once

#include <optional>
#include <vector>

#include "app/apply.hpp"
#include "app/measures.hpp"
#include "app/worked.hpp"

namespace fw::app {

/// What follows from a state and is shown in several places: worked out once a change, not once a frame.
struct Derived {
  reasoning::Ledger ledger;
  NetChoice nets;
  std::optional<practice::NetQuestion> question;  ///< in the quiz
  std::optional<Worked> worked;                   ///< while it is worked out
  std::vector<EditableMeasure> measures;
  std::vector<units::Unit> units;
  std::vector<FaceId> open;  ///< faces that do not count
};
[[nodiscard]] Derived derived_from(const State& state, WorkedMemo& memo);

/// Keeps the last Derived until the state is another one.
class DerivedMemo {
 public:
  [[nodiscard]] const Derived& of(const State& state);

 private:
  WorkedMemo worked_;
  std::optional<State> state_;
  Derived derived_;
};

}  // namespace fw::app
