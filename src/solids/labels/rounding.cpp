#include <algorithm>
#include <cmath>

#include "solids/labels/plan.hpp"

namespace fw::solids {

/// Whether an extra is farther off than three times what one label after the other could move it: spares the corners.
bool Consistency::is_far_off(const Plan& plan, const std::vector<std::size_t>& varied,
                             const std::vector<double>& middle, const std::vector<double>& at_middle) const {
  std::vector<double> reach(labels_.size(), 0);
  for (const std::size_t k : varied) {
    std::vector<double> tried = middle;
    tried[k] += labels_[k].half;
    const Outcome reached = outcome(plan, tried);
    if (reached.stopped_at) {
      return false;
    }
    for (const std::size_t i : plan.extras) {
      reach[i] += std::abs(reached.values[labels_[i].slot] - at_middle[i]);
    }
  }
  return std::any_of(plan.extras.begin(), plan.extras.end(), [&](std::size_t i) {
    return std::abs(at_middle[i] - labels_[i].value) > 3 * (labels_[i].half + reach[i]);
  });
}

/// Takes one more figure into account.
void Consistency::note(const Plan& plan, const std::vector<double>& label_values, Reached& all) const {
  const Outcome reached = outcome(plan, label_values);
  all.branches = all.branches || reached.branched_at.has_value();
  if (reached.stopped_at || failed_condition(reached.values) != nullptr || is_broken(reached.values)) {
    all.stops_short = true;
    return;
  }
  all.exists = true;
  for (const std::size_t i : plan.extras) {
    const double value = reached.values[labels_[i].slot];
    if (!std::isnan(value)) {
      all.least[i] = std::min(all.least[i], value);
      all.most[i] = std::max(all.most[i], value);
    }
  }
}

/// Lets every label that the others rest on vary within its rounding; each of the others must then come within its own.
Consistency::Meeting Consistency::meets_when_all_are_rounded(const Plan& plan) const {
  constexpr std::size_t most_varied = 7;
  const std::vector<double> middle = values_as_written();
  std::vector<std::size_t> varied;
  std::copy_if(plan.basis.begin(), plan.basis.end(), std::back_inserter(varied),
               [this](std::size_t i) { return labels_[i].half > 0; });
  if (varied.size() > most_varied) {
    return Meeting::None;
  }
  constexpr double infinite = std::numeric_limits<double>::infinity();
  Reached all{std::vector<double>(labels_.size(), infinite), std::vector<double>(labels_.size(), -infinite)};
  note(plan, middle, all);
  if (all.exists && !all.branches && is_far_off(plan, varied, middle, all.most)) {
    return Meeting::None;
  }
  for (std::size_t corner = 0; corner < (std::size_t{1} << varied.size()); ++corner) {
    std::vector<double> tried = middle;
    for (std::size_t k = 0; k < varied.size(); ++k) {
      tried[varied[k]] += (corner >> k & 1U) != 0 ? labels_[varied[k]].half : -labels_[varied[k]].half;
    }
    note(plan, tried, all);
  }
  const bool all_meet =
      all.exists && std::all_of(plan.extras.begin(), plan.extras.end(), [&](std::size_t i) {
        const Label& label = labels_[i];
        // Between the corners a value may go a little beyond theirs; and on toward where there is no figure any more.
        const double beyond = (all.stops_short ? 1 : 0.05) * (all.most[i] - all.least[i]) + same * label.value;
        return label.value - label.half <= all.most[i] + beyond && label.value + label.half >= all.least[i] - beyond;
      });
  return !all_meet ? Meeting::None : all.stops_short || all.branches ? Meeting::Possible : Meeting::Sure;
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
  std::vector<double> best = values_as_written();
  double least = std::numeric_limits<double>::infinity();
  double stride = 1;
  for (int attempt = 0; attempt < tries; ++attempt) {
    std::vector<double> tried = best;
    for (const std::size_t i : plan.basis) {
      const Label& label = labels_[i];
      const double moved = best[i] + (attempt == 0 ? 0 : stride * chance() * label.half);
      tried[i] = std::min(std::max(moved, label.value - label.half), label.value + label.half);
    }
    const Outcome reached = outcome(plan, tried);
    double excess = std::numeric_limits<double>::infinity();
    if (!reached.stopped_at && failed_condition(reached.values) == nullptr && !is_broken(reached.values)) {
      excess = 0;
      for (const std::size_t i : plan.extras) {
        const double off = std::abs(reached.values[labels_[i].slot] - labels_[i].value) - same * labels_[i].value;
        const double beyond = off / std::max(labels_[i].half, same * labels_[i].value) - 1;
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
