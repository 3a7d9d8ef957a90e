#pragma once

#include <string>
#include <vector>

#include "state/state.hpp"

namespace fw::state {

/// Whole states, one a step, so that no field can be forgotten.
class History {
 public:
  /// Keeps `before` as a step to come back to. A step with the same non-empty merge key as the last one is
  /// part of it, so that a drag is one step.
  void record(const State& before, std::string text, std::string merge_key);
  [[nodiscard]] bool can_undo() const { return !past_.empty(); }
  [[nodiscard]] bool can_redo() const { return !future_.empty(); }
  /// What undo would take back: "set the height to 9 cm"; empty if nothing.
  [[nodiscard]] std::string undo_text() const { return past_.empty() ? std::string() : past_.back().text; }
  [[nodiscard]] std::string redo_text() const { return future_.empty() ? std::string() : future_.back().text; }
  /// Requires: can_undo() / can_redo().
  [[nodiscard]] State undo(const State& now);
  [[nodiscard]] State redo(const State& now);
  /// The next step stands for itself whatever its merge key.
  void close_step();
  friend bool operator==(const History&, const History&) = default;

 private:
  struct Step {
    State state;
    std::string text;
    std::string merge_key;
    friend bool operator==(const Step&, const Step&) = default;
  };
  std::vector<Step> past_;
  std::vector<Step> future_;
};

}  // namespace fw::state
