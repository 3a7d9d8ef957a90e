#include <algorithm>
#include <cmath>

#include "solids/labels/parts.hpp"

namespace fw::solids {

/// Whether an extra is farther off than three times what one label after the other could move it: spares the corners.
bool Consistency::is_far_off(const Plan& plan, const std::vector<std::size_t>& varied,
                             const std::vector<double>& middle, const std::vector<double>& at_middle) const {
  std::vector<double> reach(labels_.size(), 0);
  for (const std::size_t k : varied) {
    std::vector<double> tried = middle;
    tried[k] += labels_[k].wide;
    const Outcome reached = outcome(plan, tried);
    if (reached.stopped_at) {
      return false;
    }
    for (const std::size_t i : plan.extras) {
      reach[i] += std::abs(reached.values[labels_[i].slot] - at_middle[i]);
    }
  }
  return std::any_of(plan.extras.begin(), plan.extras.end(), [&](std::size_t i) {
    return std::abs(at_middle[i] - labels_[i].value) > 3 * (labels_[i].wide + reach[i]);
  });
}

/// Lets every label that the others rest on vary within its rounding; each of the others must then come within its own.
Consistency::Meeting Consistency::meets_when_all_are_rounded(const Plan& plan) const {
  constexpr std::size_t most_varied = 7;
  std::vector<std::size_t> varied;
  std::vector<double> middle(labels_.size());
  for (std::size_t i = 0; i < labels_.size(); ++i) {
    middle[i] = labels_[i].value;
  }
  for (const std::size_t i : plan.basis) {
    if (labels_[i].wide > 0) {
      varied.push_back(i);
    }
  }
  if (varied.size() > most_varied) {
    return Meeting::None;
  }
  constexpr double infinite = std::numeric_limits<double>::infinity();
  std::vector<double> least(labels_.size(), infinite);
  std::vector<double> most(labels_.size(), -infinite);
  bool stops_short = false;
  bool exists = false;
  bool branches = false;  // corners may lie on different ones
  const auto note = [&](const std::vector<double>& tried) {
    const Outcome reached = outcome(plan, tried);
    branches = branches || reached.branched_at.has_value();
    if (reached.stopped_at || failed_condition(reached.values) != nullptr || is_broken(reached.values)) {
      stops_short = true;
      return;
    }
    exists = true;
    for (const std::size_t i : plan.extras) {
      const double value = reached.values[labels_[i].slot];
      if (!std::isnan(value)) {
        least[i] = std::min(least[i], value);
        most[i] = std::max(most[i], value);
      }
    }
  };
  note(middle);
  if (exists && !branches && is_far_off(plan, varied, middle, most)) {
    return Meeting::None;
  }
  for (std::size_t corner = 0; corner < (std::size_t{1} << varied.size()); ++corner) {
    std::vector<double> tried = middle;
    for (std::size_t k = 0; k < varied.size(); ++k) {
      tried[varied[k]] += (corner >> k & 1U) != 0 ? labels_[varied[k]].wide : -labels_[varied[k]].wide;
    }
    note(tried);
  }
  const bool all_meet =
      exists && std::all_of(plan.extras.begin(), plan.extras.end(), [&](std::size_t i) {
        const Label& label = labels_[i];
        // Between the corners a value may go a little beyond theirs; and on toward where there is no figure any
        // more.
        const double beyond = (stops_short ? 1 : 0.05) * (most[i] - least[i]) + same * label.value;
        return label.value - label.wide <= most[i] + beyond && label.value + label.wide >= least[i] - beyond;
      });
  return !all_meet ? Meeting::None : stops_short || branches ? Meeting::Possible : Meeting::Sure;
}

/// Looks for a figure with every label within its rounding, where the corners need not tell: areas and volumes that
/// stand for lengths make the others jump. Chance is made by a fixed rule, so that an answer never changes.
std::optional<std::vector<double>> Consistency::found_within_rounding(const Plan& plan) const {
  constexpr int tries = 500;
  constexpr int far_ones = 150;
  unsigned state = 12345;
  const auto chance = [&state] {  // from -1 to 1
    state = state * 1664525U + 1013904223U;
    return static_cast<double>(state >> 8U) / static_cast<double>(1U << 23U) - 1;
  };
  std::vector<double> best(labels_.size());
  for (std::size_t i = 0; i < labels_.size(); ++i) {
    best[i] = labels_[i].value;
  }
  double least = std::numeric_limits<double>::infinity();
  double stride = 1;
  for (int attempt = 0; attempt < tries; ++attempt) {
    std::vector<double> tried = best;
    for (const std::size_t i : plan.basis) {
      const Label& label = labels_[i];
      const double moved = best[i] + (attempt == 0 ? 0 : stride * chance() * label.wide);
      tried[i] = std::min(std::max(moved, label.value - label.wide), label.value + label.wide);
    }
    const Outcome reached = outcome(plan, tried);
    double excess = std::numeric_limits<double>::infinity();
    if (!reached.stopped_at && failed_condition(reached.values) == nullptr && !is_broken(reached.values)) {
      excess = 0;
      for (const std::size_t i : plan.extras) {
        const double off = std::abs(reached.values[labels_[i].slot] - labels_[i].value) - same * labels_[i].value;
        const double beyond = off / std::max(labels_[i].wide, same * labels_[i].value) - 1;
        excess += beyond <= 0 ? 0 : std::isnan(beyond) ? std::numeric_limits<double>::infinity() : beyond * beyond;
      }
    }
    if (excess <= 0) {
      return reached.values;
    }
    if (excess < least) {
      least = excess;
      best = tried;
      stride = std::min(stride * 2, 1.0);
    } else if (attempt > far_ones) {
      if (std::isinf(least)) {
        return std::nullopt;
      }
      stride = std::max(stride * 0.9, 1e-6);
    }
  }
  return std::nullopt;
}

}  // namespace fw::solids
