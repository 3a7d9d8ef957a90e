#include "solids/labels/consistency.hpp"

#include <algorithm>
#include <cmath>

#include "exact/polynomial.hpp"
#include "solids/labels/plan.hpp"

namespace fw::solids {
namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
/// A solution that counts twice comes out as two that differ by the square root of what rounding does.
constexpr double same_solution = 1e-6;
/// A bound that is met so closely is met.
constexpr double touching = 1e-12;

}  // namespace

Consistency::Consistency(const Relations& relations, const std::vector<Given>& givens)
    : relations_(relations), givens_(givens) {
  for (const Given& given : givens) {
    Label label;
    label.slot = relations.slot(given.symbol.name);
    label.value = given.value.to_double();
    label.half = given.half_unit().to_double();
    label.is_known = given.is_known;
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
  const auto exact_first = [this](std::size_t i) { return labels_[i].half > 0 ? 2 : 1; };
  std::vector<Order> all{{ranked([&](std::size_t i) { return is_known(i) ? 2 : labels_[i].half > 0 ? 1 : 0; })}};
  const auto with_last = [&](std::size_t one, std::size_t other) {
    return ranked([&](std::size_t i) { return is_known(i) ? 2 : i == one || i == other ? 1 : 0; });
  };
  for (std::size_t apart = 0; apart < labels_.size(); ++apart) {
    for (std::size_t one = 0; one + apart < labels_.size(); ++one) {
      if (!is_known(one) && !is_known(one + apart)) {
        all.push_back({with_last(one, one + apart)});
      }
    }
  }
  if (gives_the_whole_) {
    all.push_back({ranked([&](std::size_t i) { return is_known(i) ? 0 : exact_first(i); }), true});
  }
  for (std::size_t known = 0; known < labels_.size(); ++known) {
    if (is_known(known)) {
      all.push_back({ranked([&](std::size_t i) { return i == known ? 1 : 0; })});
      all.push_back({ranked([&](std::size_t i) { return i == known ? 0 : exact_first(i); }), true});
    }
  }
  return all;
}

/// Follows the relations from what is known as far as they lead.
void Consistency::extend(Plan& plan, Reach reach) const {
  const auto take = [&plan](Way way, const SymbolSet& from) {
    for (std::size_t slot = 0; slot < plan.origins.size(); ++slot) {
      if (from.test(slot)) {
        plan.origins[way.slot] |= plan.origins[slot];
      }
    }
    plan.known.set(way.slot);
    plan.ways.push_back(std::move(way));
  };
  while (true) {
    if (const auto direct = relations_.direct(plan.known, plan.by_coordinates)) {
      const RoughEquation& equation = relations_.rough()[direct->relation];
      SymbolSet from = equation.symbols();
      from.reset(direct->slot);
      take({direct->slot, &equation, nullptr, nullptr}, from);
      continue;
    }
    const auto step = relations_.next_step(plan.known, plan.by_coordinates, reach);
    if (!step) {
      return;
    }
    // Coordinates are slow, and only what is written needs to be known here.
    const bool leads_to_a_label =
        std::any_of(labels_.begin(), labels_.end(), [&](const Label& label) { return !plan.known.test(label.slot); });
    if (step->derivation != nullptr && !leads_to_a_label) {
      plan.by_coordinates.set(step->slot);
      continue;
    }
    Way way{step->slot, nullptr, nullptr, step->derivation};
    if (step->derivation == nullptr) {
      way.own = std::make_shared<const RoughEquation>(step->equation, relations_.numbering());
      way.equation = way.own.get();
    }
    take(std::move(way), step->from);
  }
}

Consistency::Plan Consistency::planned(const Order& order, Reach reach) const {
  Plan plan;
  plan.is_loose = order.is_loose;
  plan.origins.resize(relations_.symbols().size());
  extend(plan, reach);
  for (const std::size_t i : order.givens) {
    const std::size_t slot = labels_[i].slot;
    if (plan.known.test(slot)) {
      plan.extras.push_back(i);
      continue;
    }
    plan.basis.push_back(i);
    plan.origins[slot].set(slot);
    plan.known.set(slot);
    extend(plan, reach);
  }
  if (gives_the_whole_ && plan.known != relations_.all() && plan.by_coordinates.none()) {
    extend(plan, Reach::Composed);
  }
  return plan;
}

// ---- values ----

/// Binds the symbols that are not bound yet, for a derivation; false where one has no value.
bool Consistency::all_bound(const std::vector<algebra::Symbol>& symbols, const std::vector<double>& values,
                            algebra::Bindings& bound) const {
  return std::all_of(symbols.begin(), symbols.end(), [&](const algebra::Symbol& symbol) {
    const double value = values[relations_.slot(symbol.name)];
    if (std::isfinite(value) && bound.count(symbol.name) == 0) {
      bound.emplace(symbol.name, exact::approximation(exact::Number::of_double(value)));
    }
    return std::isfinite(value);
  });
}

void Consistency::follow(const Plan& plan, std::size_t step, std::vector<double> values, Outcome& best) const {
  algebra::Bindings bound;
  for (std::size_t i = step; i < plan.ways.size(); ++i) {
    const Way& way = plan.ways[i];
    if (way.derivation != nullptr) {
      if (failed_condition(values) != nullptr || !all_bound(way.derivation->from, values, bound)) {
        break;  // there are no coordinates
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
    const bool is_labelled = std::any_of(givens_.begin(), givens_.end(), [&](const Given& given) {
      return given.symbol.name == rule.condition->subject;
    });
    // What follows from a height is longer, however flat the pyramid: doubles only do not show it.
    const bool may_touch = rule.condition->may_be_equal || !is_labelled;
    const bool fails = may_touch ? greater < less - slack : greater <= less + slack;
    if (!fails) {
      continue;
    }
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
    const double unit = std::max(label.half, 1e-3 * label.value);
    const double excess = off - label.half - same * label.value;
    // Among readings that fit, the nearer one.
    penalty += std::max(excess, 0.0) / unit + 1e-9 * off / unit;
  }
  if (penalty < best.penalty) {
    best.penalty = penalty;
    best.values = values;
    best.stopped_at = stopped_at;
  }
}

std::vector<double> Consistency::values_as_written() const {
  std::vector<double> values;
  for (const Label& label : labels_) {
    values.push_back(label.value);
  }
  return values;
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
                      [](double a, double b) { return std::abs(a - b) <= same_solution * b; });
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

/// The figure when the labels are taken in this order; nothing where that leads to a basis that has been tried.
std::optional<Consistency::Tried> Consistency::tried_in(const Order& order, const std::vector<Tried>& before) const {
  const auto has_been = [&](const std::vector<std::size_t>& basis, const auto& basis_of) {
    return std::any_of(before.begin(), before.end(), [&](const Tried& other) {
      const std::vector<std::size_t>& its = basis_of(other);
      return its.size() == basis.size() && std::is_permutation(its.begin(), its.end(), basis.begin());
    });
  };
  const auto plan_basis = [](const Tried& other) -> const auto& { return other.plan.basis; };
  const auto broken_basis = [](const Tried& other) -> const auto& { return other.broken_basis; };
  Tried now{planned(order, Reach::Direct), {}, {}};
  if (has_been(now.plan.basis, plan_basis)) {
    return std::nullopt;
  }
  bool is_broken_basis = has_been(now.plan.basis, broken_basis);
  if (!is_broken_basis) {
    now.outcome = outcome(now.plan, values_as_written());
    is_broken_basis = now.outcome.stopped_at ? gives_the_whole_ : is_broken(now.outcome.values);
  }
  if (is_broken_basis) {
    // Some of the basis follows from the rest of it in a way that is only found by putting formulas together.
    now.broken_basis = now.plan.basis;
    now.plan = planned(order, Reach::Composed);
    if (has_been(now.plan.basis, plan_basis)) {
      return std::nullopt;
    }
    now.outcome = outcome(now.plan, values_as_written());
  }
  return now;
}

/// The first of the plans that fits where every label may be a rounded one.
std::optional<Verdict> Consistency::fitting_loosely(const std::vector<Tried>& tried, Judging judging) const {
  const auto searched = [&](const Tried& one) -> std::optional<Verdict> {
    const auto found = found_within_rounding(one.plan);
    if (!found) {
      return std::nullopt;
    }
    Verdict verdict = told(one.plan, one.outcome, Verdict::Answer::FitsLoosely);
    verdict.values = *found;
    return verdict;
  };
  for (const Tried& one : tried) {
    const Meeting meeting = one.plan.extras.empty() ? Meeting::None : meets_when_all_are_rounded(one.plan);
    if (meeting == Meeting::None) {
      continue;
    }
    if (judging == Judging::OneByOne && meeting == Meeting::Sure && one.plan.extras.size() == 1) {
      return told(one.plan, one.outcome, Verdict::Answer::FitsLoosely);
    }
    if (auto verdict = searched(one)) {
      return verdict;
    }
  }
  constexpr std::size_t most_searched = 2;
  for (std::size_t i = 0; judging == Judging::OneByOne && i < std::min(tried.size(), most_searched); ++i) {
    const Outcome& outcome = tried[i].outcome;
    const Condition* failed = failed_condition(outcome.values);
    // A bound that must not be reached is a bound for labels too, when nothing else speaks for the figure.
    const bool is_out = tried[i].plan.extras.empty() && failed != nullptr && !failed->may_be_equal;
    const bool has_none_as_written = !is_out && (outcome.stopped_at || failed != nullptr);
    if (gives_the_whole_ && has_none_as_written) {
      if (auto verdict = searched(tried[i])) {
        return verdict;
      }
    }
  }
  return std::nullopt;
}

Verdict Consistency::verdict(Judging judging) const {
  std::vector<Tried> tried;
  std::vector<Order> orders{{ranked([](std::size_t) { return 0; })}};
  for (std::size_t number = 0; number < orders.size(); ++number) {
    std::optional<Tried> now = tried_in(orders[number], tried);
    if (!now) {
      continue;
    }
    if (now->outcome.fits()) {
      return told(now->plan, now->outcome, now->plan.is_loose ? Verdict::Answer::FitsLoosely : Verdict::Answer::Fits);
    }
    tried.push_back(std::move(*now));
    if (tried.front().plan.extras.empty()) {
      break;
    }
    if (number == 0) {
      const std::vector<Order> others = further_orders();
      orders.insert(orders.end(), others.begin(), others.end());
    }
  }
  const auto loose = fitting_loosely(tried, judging);
  return loose ? *loose : told(tried.front().plan, tried.front().outcome, Verdict::Answer::Impossible);
}

}  // namespace fw::solids
