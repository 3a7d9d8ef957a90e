#include "state/history.hpp"

#include "base/ensure.hpp"

namespace fw::state {
namespace {
constexpr std::size_t steps_kept = 500;
}

void History::record(const State& before, std::string text, std::string merge_key) {
  future_.clear();
  const bool merges = !merge_key.empty() && !past_.empty() && past_.back().merge_key == merge_key;
  if (merges) {
    past_.back().text = std::move(text);
    return;
  }
  if (past_.size() == steps_kept) {
    past_.erase(past_.begin());
  }
  past_.push_back({before, std::move(text), std::move(merge_key)});
}

State History::undo(const State& now) {
  ensure(can_undo(), "undo was asked for with nothing to undo");
  Step step = std::move(past_.back());
  past_.pop_back();
  future_.push_back({now, step.text, {}});
  return std::move(step.state);
}

State History::redo(const State& now) {
  ensure(can_redo(), "redo was asked for with nothing to redo");
  Step step = std::move(future_.back());
  future_.pop_back();
  past_.push_back({now, step.text, {}});
  return std::move(step.state);
}

void History::close_step() {
  if (!past_.empty()) {
    past_.back().merge_key.clear();
  }
}

}  // namespace fw::state
