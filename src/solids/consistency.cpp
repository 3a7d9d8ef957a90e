#include "solids/consistency.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "exact/polynomial.hpp"

namespace fw::solids {
namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
/// Doubles that differ by less are the same number.
constexpr double same = 1e-9;
/// A bound that is met so closely is met.
constexpr double touching = 1e-12;
/// From here on a whole number may be a rounded one: half a unit is 1 % of it or less.
constexpr double least_rounded_whole = 50;

}  // namespace

/// One step of a plan: an equation of the statement, one put together for the purpose, or the coordinates.
struct Consistency::Way {
  std::size_t slot = 0;
  const RoughEquation* equation = nullptr;
  std::shared_ptr<const RoughEquation> own;
  const Derivation* derivation = nullptr;
};

struct Consistency::Plan {
  std::vector<std::size_t> basis, extras;
  std::vector<Way> ways;
  std::vector<SymbolSet> origins;         ///< by slot
  double Label::*allowed = &Label::half;  ///< how far an extra may be off
};

/// The best reading of the values that the steps leave.
struct Consistency::Outcome {
  std::vector<double> values;
  double penalty = std::numeric_limits<double>::infinity();
  std::optional<std::size_t> stopped_at;
  std::optional<std::size_t> branched_at;
  std::vector<double> fits_at_branch;
  std::vector<std::vector<double>> readings;  ///< beside them: all values
  [[nodiscard]] bool fits() const { return penalty < 1e-5; }
};

Consistency::Consistency(const Relations& relations, const std::vector<Given>& givens)
    : relations_(relations), givens_(givens) {
  double spread = 0;
  for (const Given& given : givens) {
    if (given.places > 0 && !given.is_fraction && !given.is_known) {
      spread = std::max(spread, (given.highest.to_double() - given.lowest.to_double()) / 2);
    }
  }
  for (const Given& given : givens) {
    Label label;
    label.slot = relations.slot(given.symbol.name);
    label.value = given.value.to_double();
    label.half = given.is_fraction ? 0 : (given.highest.to_double() - given.lowest.to_double()) / 2;
    label.is_known = given.is_known;
    label.is_rounded = given.places > 0 && !given.is_fraction;
    label.narrow = label.is_rounded || label.is_known || spread == 0 ? label.half : std::min(spread, label.half);
    const bool is_large = label.value * given.to_written.to_double() >= least_rounded_whole;
    label.wide = label.is_rounded || label.is_known || is_large ? label.half : std::min(spread, label.half);
    labels_.push_back(label);
    gives_the_whole_ = gives_the_whole_ || label.is_known;
  }
  const Numbering numbering = relations.numbering();
  for (const Condition& condition : relations.statement().conditions) {
    rules_.push_back({{condition.greater, numbering}, {condition.less, numbering}, &condition});
  }
}

// ---- which labels fix the figure, and how the others follow ----

/// All labels, those of a lower rank first and otherwise as the kind lists them.
std::vector<std::size_t> Consistency::ranked(const std::function<int(std::size_t)>& rank) const {
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < labels_.size(); ++i) {
    order.push_back(i);
  }
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
  return order;
}

/// The orders in which the labels are taken as they are written, after the plain one: whole numbers and fractions
/// first; any one, and any two, of the lengths after the others; any area or volume last of all; any or all of those
/// first of all.
std::vector<Consistency::Order> Consistency::further_orders() const {
  const auto is_known = [this](std::size_t i) { return labels_[i].is_known; };
  std::vector<Order> all{
      {ranked([&](std::size_t i) { return is_known(i)             ? 2
                                          : labels_[i].is_rounded ? 1
                                                                  : 0; }), &Label::half}};
  const auto with_last = [&](std::size_t one, std::size_t other) {
    return ranked([&](std::size_t i) { return is_known(i) ? 2 : i == one || i == other ? 1 : 0; });
  };
  for (std::size_t apart = 0; apart < labels_.size(); ++apart) {
    for (std::size_t one = 0; one + apart < labels_.size(); ++one) {
      if (!is_known(one) && !is_known(one + apart)) {
        all.push_back({with_last(one, one + apart), &Label::narrow});
      }
    }
  }
  if (gives_the_whole_) {
    all.push_back({ranked([&](std::size_t i) { return is_known(i) ? 0 : 1; }), &Label::wide});
  }
  for (std::size_t known = 0; known < labels_.size(); ++known) {
    if (is_known(known)) {
      all.push_back({ranked([&](std::size_t i) { return i == known ? 1 : 0; }), &Label::narrow});
      all.push_back({ranked([&](std::size_t i) { return i == known ? 0 : 1; }), &Label::wide});
    }
  }
  return all;
}

Consistency::Plan Consistency::planned(const std::vector<std::size_t>& order, Reach reach) const {
  Plan plan;
  plan.origins.resize(relations_.symbols().size());
  SymbolSet known;
  SymbolSet by_coordinates;
  const auto take = [&](Way way, const SymbolSet& from) {
    for (std::size_t slot = 0; slot < plan.origins.size(); ++slot) {
      if (from.test(slot)) {
        plan.origins[way.slot] |= plan.origins[slot];
      }
    }
    known.set(way.slot);
    plan.ways.push_back(std::move(way));
  };
  const auto go_on = [&](Reach how_far) {
    while (true) {
      if (const auto direct = relations_.direct(known, by_coordinates)) {
        const RoughEquation& equation = relations_.rough()[direct->relation];
        SymbolSet from = equation.symbols();
        from.reset(direct->slot);
        take({direct->slot, &equation, nullptr, nullptr}, from);
        continue;
      }
      const auto step = relations_.next_step(known, by_coordinates, how_far);
      if (!step) {
        return;
      }
      // Coordinates are slow, and only what is written needs to be known here.
      const bool leads_to_a_label =
          std::any_of(labels_.begin(), labels_.end(), [&](const Label& label) { return !known.test(label.slot); });
      if (step->derivation != nullptr && !leads_to_a_label) {
        by_coordinates.set(step->slot);
        continue;
      }
      Way way{step->slot, nullptr, nullptr, step->derivation};
      if (step->derivation == nullptr) {
        way.own = std::make_shared<const RoughEquation>(step->equation, relations_.numbering());
        way.equation = way.own.get();
      }
      take(std::move(way), step->from);
    }
  };
  go_on(reach);
  for (const std::size_t i : order) {
    const std::size_t slot = labels_[i].slot;
    if (known.test(slot)) {
      plan.extras.push_back(i);
      continue;
    }
    plan.basis.push_back(i);
    plan.origins[slot].set(slot);
    known.set(slot);
    go_on(reach);
  }
  if (gives_the_whole_ && known != relations_.all() && by_coordinates.none()) {
    go_on(Reach::Composed);
  }
  return plan;
}

// ---- values ----

void Consistency::follow(const Plan& plan, std::size_t step, std::vector<double> values, Outcome& best) const {
  for (std::size_t i = step; i < plan.ways.size(); ++i) {
    const Way& way = plan.ways[i];
    if (way.derivation != nullptr) {
      if (failed_condition(values) != nullptr) {
        break;  // there are no coordinates
      }
      algebra::Bindings bound;
      for (const algebra::Symbol& symbol : way.derivation->from) {
        const double value = values[relations_.slot(symbol.name)];
        bound.insert_or_assign(symbol.name,
                               exact::approximation(exact::Number::ratio(std::llround(value * 1e9), 1000000000)));
      }
      const auto value = way.derivation->value(bound);
      values[way.slot] = value ? value->to_double() : none;
      continue;
    }
    const std::vector<double> solutions = way.equation->positive_solutions(way.slot, values);
    if (solutions.empty()) {
      consider(plan, values, way.slot, best);
      return;
    }
    if (solutions.size() == 1) {
      values[way.slot] = solutions.front();
      continue;
    }
    for (const double solution : solutions) {
      Outcome branch;
      values[way.slot] = solution;
      follow(plan, i + 1, values, branch);
      if (branch.fits()) {
        best.fits_at_branch.push_back(solution);
        best.readings.push_back(branch.values);
      }
      if (branch.penalty < best.penalty) {
        best.penalty = branch.penalty;
        best.values = branch.values;
        best.stopped_at = branch.stopped_at;
      }
    }
    best.branched_at = way.slot;
    return;
  }
  consider(plan, values, std::nullopt, best);
}

const Condition* Consistency::failed_condition(const std::vector<double>& values) const {
  const Condition* other = nullptr;
  for (const Rule& rule : rules_) {
    const double greater = rule.greater.value(values);
    const double less = rule.less.value(values);
    const double slack = touching * (std::abs(greater) + std::abs(less));
    const bool fails = rule.condition->may_be_equal ? greater < less - slack : greater <= less + slack;
    if (!fails) {
      continue;
    }
    const bool is_labelled = std::any_of(givens_.begin(), givens_.end(), [&](const Given& given) {
      return given.symbol.name == rule.condition->subject;
    });
    if (is_labelled) {
      return rule.condition;
    }
    other = other == nullptr ? rule.condition : other;
  }
  return other;
}

bool Consistency::is_broken(const std::vector<double>& values) const {
  const auto& rough = relations_.rough();
  return std::any_of(rough.begin(), rough.end(),
                     [&](const RoughEquation& equation) { return equation.difference(values) > same; });
}

/// Takes the reading that is least at odds with the labels.
void Consistency::consider(const Plan& plan, const std::vector<double>& values, std::optional<std::size_t> stopped_at,
                           Outcome& best) const {
  double penalty = stopped_at ? 1e6 : 0;
  penalty += failed_condition(values) != nullptr ? 1e5 : 0;
  penalty += !stopped_at && is_broken(values) ? 1e4 : 0;
  for (const std::size_t i : plan.extras) {
    const Label& label = labels_[i];
    const double off = std::abs(values[label.slot] - label.value);
    if (std::isnan(off)) {
      penalty += 1e6;
      continue;
    }
    const double half = label.*plan.allowed;
    const double unit = std::max(half, 1e-3 * label.value);
    const double excess = off - half - same * label.value;
    // Among readings that fit, the nearer one.
    penalty += std::max(excess, 0.0) / unit + 1e-9 * off / unit;
  }
  if (penalty < best.penalty) {
    best.penalty = penalty;
    best.values = values;
    best.stopped_at = stopped_at;
  }
}

Consistency::Outcome Consistency::outcome(const Plan& plan, const std::vector<double>& label_values) const {
  std::vector<double> values(relations_.symbols().size(), none);
  for (const std::size_t i : plan.basis) {
    values[labels_[i].slot] = label_values[i];
  }
  Outcome best;
  follow(plan, 0, std::move(values), best);
  return best;
}

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

namespace {

/// Whether the readings give the same numbers to other measures, as when a box's width and height change places. The
/// symbols of the measures come first.
bool same_numbers(std::vector<std::vector<double>> readings, std::size_t measures) {
  for (std::vector<double>& values : readings) {
    values.resize(std::min(values.size(), measures));
    std::replace_if(
        values.begin(), values.end(), [](double value) { return std::isnan(value); }, 0.0);
    std::sort(values.begin(), values.end());
  }
  return std::all_of(readings.begin() + 1, readings.end(), [&](const std::vector<double>& values) {
    return std::equal(values.begin(), values.end(), readings.front().begin(), readings.front().end(),
                      [](double a, double b) { return std::abs(a - b) <= same * b; });
  });
}

}  // namespace

Verdict Consistency::told(const Plan& plan, const Outcome& outcome, Verdict::Answer answer) const {
  Verdict verdict;
  verdict.answer = answer;
  verdict.basis = plan.basis;
  verdict.extras = plan.extras;
  verdict.values = outcome.values;
  verdict.origins = plan.origins;
  if (answer == Verdict::Answer::Fits && outcome.branched_at && outcome.fits_at_branch.size() > 1) {
    if (same_numbers(outcome.readings, relations_.statement().measures.size())) {
      verdict.values = outcome.readings.back();
      return verdict;
    }
    const bool is_labelled = std::any_of(labels_.begin(), labels_.end(),
                                         [&](const Label& label) { return label.slot == *outcome.branched_at; });
    if (!is_labelled) {
      verdict.choice = outcome.branched_at;
      verdict.choices = outcome.fits_at_branch;
    }
  }
  if (answer != Verdict::Answer::Impossible) {
    return verdict;
  }
  verdict.failed = failed_condition(outcome.values);
  verdict.contradiction = outcome.stopped_at;
  for (const std::size_t i : plan.extras) {
    const Label& label = labels_[i];
    const double off = std::abs(outcome.values[label.slot] - label.value);
    if (!verdict.misfit && off > label.half + same * label.value) {
      verdict.misfit = i;
    }
  }
  return verdict;
}

Verdict Consistency::verdict(Judging judging) const {
  std::vector<double> values;
  for (const Label& label : labels_) {
    values.push_back(label.value);
  }
  struct Tried {
    Plan plan;
    Outcome outcome;
    std::vector<std::size_t> broken_basis;  ///< what seemed to fix the figure and does so more than once
  };
  std::vector<Tried> tried;
  std::vector<Order> all_orders{{ranked([](std::size_t) { return 0; }), &Label::half}};
  for (std::size_t number = 0; number < all_orders.size(); ++number) {
    const Order order = all_orders[number];
    const auto has_been_tried = [&](const std::vector<std::size_t>& basis, bool was_broken) {
      return std::any_of(tried.begin(), tried.end(), [&](const Tried& before) {
        const std::vector<std::size_t>& other = was_broken ? before.broken_basis : before.plan.basis;
        return other.size() == basis.size() && std::is_permutation(other.begin(), other.end(), basis.begin());
      });
    };
    Tried now{planned(order.givens, Reach::Direct), {}, {}};
    now.plan.allowed = order.allowed;
    if (has_been_tried(now.plan.basis, false)) {
      continue;
    }
    bool does_not_do = has_been_tried(now.plan.basis, true);
    if (!does_not_do) {
      now.outcome = outcome(now.plan, values);
      does_not_do = now.outcome.stopped_at ? gives_the_whole_ : is_broken(now.outcome.values);
    }
    if (does_not_do) {
      // Some of the basis follows from the rest of it in a way that is only found by putting formulas together.
      now.broken_basis = now.plan.basis;
      now.plan = planned(order.givens, Reach::Composed);
      now.plan.allowed = order.allowed;
      if (has_been_tried(now.plan.basis, false)) {
        continue;
      }
      now.outcome = outcome(now.plan, values);
    }
    if (now.outcome.fits()) {
      const bool fits_as_written = order.allowed != &Label::wide;
      return told(now.plan, now.outcome, fits_as_written ? Verdict::Answer::Fits : Verdict::Answer::FitsLoosely);
    }
    tried.push_back(std::move(now));
    if (tried.front().plan.extras.empty()) {
      break;
    }
    if (number == 0) {
      const std::vector<Order> others = further_orders();
      all_orders.insert(all_orders.end(), others.begin(), others.end());
    }
  }
  for (const Tried& one : tried) {
    const Meeting meeting = one.plan.extras.empty() ? Meeting::None : meets_when_all_are_rounded(one.plan);
    if (meeting == Meeting::None) {
      continue;
    }
    if (judging == Judging::OneByOne && meeting == Meeting::Sure && one.plan.extras.size() == 1) {
      return told(one.plan, one.outcome, Verdict::Answer::FitsLoosely);
    }
    if (const auto found = found_within_rounding(one.plan)) {
      Verdict verdict = told(one.plan, one.outcome, Verdict::Answer::FitsLoosely);
      verdict.values = *found;
      return verdict;
    }
  }
  const auto of_the_whole =
      std::count_if(labels_.begin(), labels_.end(), [](const Label& label) { return label.is_known; });
  constexpr std::size_t most_searched = 2;
  for (std::size_t i = 0; judging == Judging::OneByOne && i < std::min(tried.size(), most_searched); ++i) {
    const Outcome& outcome = tried[i].outcome;
    const Condition* failed = failed_condition(outcome.values);
    // A bound that must not be reached is a bound for labels too, when nothing else speaks for the figure.
    const bool is_out = tried[i].plan.extras.empty() && failed != nullptr && !failed->may_be_equal;
    const bool has_none_as_written = !is_out && (outcome.stopped_at || failed != nullptr);
    const bool may_hide_one = of_the_whole > 0 && has_none_as_written;
    const auto found = may_hide_one ? found_within_rounding(tried[i].plan) : std::nullopt;
    if (found) {
      Verdict verdict = told(tried[i].plan, tried[i].outcome, Verdict::Answer::FitsLoosely);
      verdict.values = *found;
      return verdict;
    }
  }
  return told(tried.front().plan, tried.front().outcome, Verdict::Answer::Impossible);
}

// ---- which label to change ----

/// Areas and volumes before lengths, heights before edges, and what is written later before what is written first.
std::vector<std::size_t> Consistency::blame_order(std::optional<std::size_t> first) const {
  std::vector<std::size_t> order;
  for (std::size_t i = labels_.size(); i > 0; --i) {
    order.push_back(i - 1);
  }
  const auto rank = [&](std::size_t i) {
    const bool is_height = givens_[i].title.find("height") != std::string::npos;
    return first == i ? 0 : labels_[i].is_known ? 1 : is_height ? 2 : 3;
  };
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
  return order;
}

bool Consistency::fits_with(std::size_t index, double value, int places) const {
  std::vector<Given> changed = givens_;
  Given& given = changed[index];
  const double unit = std::pow(10.0, -places);
  const long long written = std::llround(value * given.to_written.to_double() / unit);
  if (written <= 0) {
    return false;
  }
  const exact::Number scale = exact::power(exact::Number::whole(10), places) * given.to_written;
  given.value = exact::Number::whole(written) / scale;
  given.lowest = exact::Number::ratio(2 * written - 1, 2) / scale;
  given.highest = exact::Number::ratio(2 * written + 1, 2) / scale;
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
      if (fits_with(index, rounded, places)) {
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
    if (const auto remedy = searched(index)) {
      return remedy;
    }
  }
  return std::nullopt;
}

}  // namespace fw::solids
