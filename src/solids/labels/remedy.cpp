#include <algorithm>
#include <cmath>

#include "solids/labels/plan.hpp"

namespace fw::solids {

/// Areas and volumes before lengths, decimals before whole numbers, heights before edges, and what is written later
/// before what is written first.
std::vector<std::size_t> Consistency::blame_order(std::optional<std::size_t> first) const {
  std::vector<std::size_t> order;
  for (std::size_t i = labels_.size(); i > 0; --i) {
    order.push_back(i - 1);
  }
  const auto rank = [&](std::size_t i) {
    const bool is_height = givens_[i].title.find("height") != std::string::npos;
    return first == i ? 0 : labels_[i].is_known ? 1 : (is_height ? 2 : 3) + (labels_[i].half > 0 ? 0 : 2);
  };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
  return order;
}

bool Consistency::fits_with(std::size_t index, double value, int places) const {
  std::vector<Given> changed = givens_;
  Given& given = changed[index];
  const exact::Number written = rounded(exact::Number::of_double(value * given.to_written.to_double()), places);
  if (written.sign() <= 0) {
    return false;
  }
  given.value = written / given.to_written;
  given.places = places;
  given.is_fraction = false;
  return Consistency(relations_, changed).verdict(Judging::Together).answer != Verdict::Answer::Impossible;
}

/// The value, or one close by, as a label with as few decimals as will do.
std::optional<Consistency::Remedy> Consistency::written(std::size_t index, double value) const {
  const Given& given = givens_[index];
  const int wanted = std::max(given.places, given.is_fraction ? 2 : 1);
  constexpr int farthest = 4;
  for (int places = wanted; places <= wanted + 2; ++places) {
    const double unit = std::pow(10.0, -places) / given.to_written.to_double();
    for (int away = 0; away <= 2 * farthest; ++away) {
      const int steps = away % 2 == 0 ? away / 2 : -(away + 1) / 2;
      const double rounded = (std::round(value / unit) + steps) * unit;
      const bool is_as_it_was = std::abs(rounded - labels_[index].value) < same * rounded;  // 10 as 10.0
      if (!is_as_it_was && fits_with(index, rounded, places)) {
        Remedy remedy;
        remedy.given = index;
        remedy.value = rounded;
        remedy.places = places;
        return remedy;
      }
    }
  }
  return std::nullopt;
}

/// The nearest value that makes the figure possible where the other labels leave the one open.
std::optional<Consistency::Remedy> Consistency::searched(std::size_t index) const {
  const Given& given = givens_[index];
  const int places = given.is_fraction ? 1 : given.places;
  const double unit = std::pow(10.0, -places) / given.to_written.to_double();
  const double value = labels_[index].value;
  std::optional<Remedy> best;
  for (const double direction : {-1.0, 1.0}) {
    // Ever longer strides, then back by halves to the nearest that does.
    double bad = 0;
    double good = 0;
    for (double stride = 1; stride * unit < 20 * value + 20 * unit && good == 0; stride = std::ceil(stride * 1.25)) {
      (fits_with(index, value + direction * stride * unit, places) ? good : bad) = stride;
    }
    while (good - bad > 1.5) {
      const double middle = std::floor((good + bad) / 2);
      (fits_with(index, value + direction * middle * unit, places) ? good : bad) = middle;
    }
    if (good > 0 && (!best || good * unit < std::abs(best->value - value))) {
      best = Remedy{index, value + direction * good * unit, places, false, {}};
    }
  }
  return best;
}

std::optional<Consistency::Remedy> Consistency::remedy(std::optional<std::size_t> first) const {
  std::vector<std::size_t> open;
  for (const std::size_t index : blame_order(first)) {
    std::vector<Given> others = givens_;
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(index));
    Verdict verdict = Consistency(relations_, others).verdict(Judging::Together);
    if (verdict.answer == Verdict::Answer::Impossible) {
      continue;
    }
    const std::size_t slot = labels_[index].slot;
    if (verdict.choice == slot) {
      const double value = labels_[index].value;
      verdict.values[slot] =
          *std::min_element(verdict.choices.begin(), verdict.choices.end(),
                            [value](double a, double b) { return std::abs(a - value) < std::abs(b - value); });
      verdict.choice.reset();
    }
    const double fitting = verdict.values[slot];
    if (std::isnan(fitting)) {
      open.push_back(index);
    } else if (auto remedy = written(index, fitting)) {
      remedy->follows = true;
      remedy->others = verdict;
      for (std::size_t& other : remedy->others.basis) {
        other += other >= index ? 1U : 0U;
      }
      return remedy;
    }
  }
  for (const std::size_t index : open) {
    if (auto remedy = searched(index)) {
      return remedy;
    }
  }
  return std::nullopt;
}

}  // namespace fw::solids
