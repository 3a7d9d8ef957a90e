#include "solids/completion.hpp"

#include <algorithm>
#include <cmath>

#include "exact/polynomial.hpp"
#include "exact/print_number.hpp"

namespace fw::solids {

using algebra::Bindings;
using exact::Number;

namespace {

/// The solutions for which no condition fails; all of them if none is left.
std::vector<Number> fitting(const SolidStatement& statement, const Step& step, const std::vector<Number>& solutions,
                            const Bindings& values) {
  std::vector<Number> fit;
  for (const Number& solution : solutions) {
    Bindings tried = values;
    tried.insert_or_assign(step.unknown.name, solution);
    const bool holds_all =
        std::all_of(statement.conditions.begin(), statement.conditions.end(),
                    [&](const Condition& condition) { return holds(condition, tried).value_or(true); });
    if (holds_all) {
      fit.push_back(solution);
    }
  }
  return fit.empty() ? solutions : fit;
}

const Number& nearest_to(double value, const std::vector<Number>& solutions) {
  return *std::min_element(solutions.begin(), solutions.end(), [value](const Number& a, const Number& b) {
    return std::abs(a.to_double() - value) < std::abs(b.to_double() - value);
  });
}

/// Works out exactly all that follows from `start`. Where an equation has several solutions, the one that the verdict
/// names is taken.
Worked worked_out(const Relations& relations, const Bindings& start, const Verdict& verdict) {
  Worked state;
  state.values = start;
  SymbolSet known;
  SymbolSet passed;
  for (const auto& entry : start) {
    known.set(relations.slot(entry.first));
  }
  if (verdict.choice) {
    passed.set(*verdict.choice);
  }
  while (const auto step = relations.next_step(known, passed, Reach::Composed)) {
    if (step->derivation != nullptr && verdict.answer == Verdict::Answer::Impossible) {
      passed.set(step->slot);  // there are no coordinates
      continue;
    }
    std::vector<Number> solutions = solutions_of(*step, state.values);
    const double named = verdict.values[step->slot];
    if (solutions.empty() && verdict.answer != Verdict::Answer::Impossible && named > 0) {
      // Where labels are rounded, or two solutions lie too close to each other to be told apart.
      solutions.push_back(exact::approximation(Number::of_double(named)));
    }
    if (solutions.empty()) {
      state.contradiction = step->unknown;
      return state;
    }
    if (solutions.size() > 1 && !std::isnan(named)) {
      solutions = {nearest_to(named, solutions)};
    } else if (solutions.size() > 1) {
      solutions = fitting(relations.statement(), *step, solutions, state.values);
    }
    if (solutions.size() > 1) {
      state.choices.insert_or_assign(step->unknown.name, solutions);
      passed.set(step->slot);
      continue;
    }
    state.values.insert_or_assign(step->unknown.name, solutions.front());
    known.set(step->slot);
  }
  return state;
}

class Completion {
 public:
  Completion(const SolidStatement& statement, const std::vector<Given>& givens, const units::Unit& unit)
      : statement_(statement),
        relations_(statement),
        givens_(givens),
        unit_(unit),
        consistency_(relations_, givens_),
        verdict_(consistency_.verdict()) {}

  Result<Completed, std::vector<Fault>> run() {
    worked_ = worked_out(relations_, values_of(verdict_.basis), verdict_);
    if (verdict_.answer == Verdict::Answer::Impossible) {
      return failure(std::vector<Fault>{what_is_wrong()});
    }
    if (worked_.contradiction) {
      return failure(std::vector<Fault>{contradiction(*worked_.contradiction, statement_, givens_, replacement({}))});
    }
    compare_labels();
    add_choices();
    const auto& symbols = relations_.symbols();
    const bool is_complete = std::all_of(symbols.begin(), symbols.end(), [&](const algebra::Symbol& symbol) {
      return worked_.values.count(symbol.name) != 0;
    });
    if (!is_complete) {
      return failure(std::vector<Fault>{missing_measures(relations_, worked_, unit_)});
    }
    return finished();
  }

 private:
  [[nodiscard]] Bindings values_of(const std::vector<std::size_t>& indices) const {
    Bindings values;
    for (const std::size_t i : indices) {
      values.insert_or_assign(givens_[i].symbol.name, givens_[i].value);
    }
    return values;
  }

  /// The symbols of the givens that a value rests on.
  [[nodiscard]] std::set<std::string> among(const Verdict& verdict, const std::string& symbol) const {
    std::set<std::string> names;
    const SymbolSet& origins = verdict.origins[relations_.slot(symbol)];
    for (const Given& given : givens_) {
      if (origins.test(relations_.slot(given.symbol.name))) {
        names.insert(given.symbol.name);
      }
    }
    return names;
  }

  /// A changed label with which the figure could be; the label `first` before the others.
  [[nodiscard]] std::optional<Replacement> replacement(std::optional<std::size_t> first) {
    remedy_ = consistency_.remedy(first);
    if (!remedy_) {
      return std::nullopt;
    }
    const double value = remedy_->value * givens_[remedy_->given].to_written.to_double();
    return Replacement{remedy_->given, rounded(Number::of_double(value), remedy_->places), remedy_->places};
  }

  [[nodiscard]] Fault what_is_wrong() {
    if (verdict_.failed != nullptr) {
      const auto subject = std::find_if(givens_.begin(), givens_.end(), [&](const Given& given) {
        return given.symbol.name == verdict_.failed->subject;
      });
      const bool is_given = subject != givens_.end();
      const auto instead =
          replacement(is_given ? std::optional(static_cast<std::size_t>(subject - givens_.begin())) : std::nullopt);
      return broken_condition(*verdict_.failed, worked_.values, givens_, unit_, instead);
    }
    const auto instead = replacement({});
    if (remedy_ && remedy_->follows) {
      const Given& given = givens_[remedy_->given];
      const Worked others = worked_out(relations_, values_of(remedy_->others.basis), remedy_->others);
      const auto fitting_value = others.values.find(given.symbol.name);
      if (fitting_value != others.values.end()) {
        return disagreement(given, fitting_value->second, givens_, among(remedy_->others, given.symbol.name), instead);
      }
    }
    if (verdict_.misfit) {
      const Given& given = givens_[*verdict_.misfit];
      const auto fitting_value = worked_.values.find(given.symbol.name);
      if (fitting_value != worked_.values.end()) {
        return disagreement(given, fitting_value->second, givens_, among(verdict_, given.symbol.name), instead);
      }
    }
    const algebra::Symbol& unknown = verdict_.contradiction  ? relations_.symbols()[*verdict_.contradiction]
                                     : worked_.contradiction ? *worked_.contradiction
                                                             : givens_.back().symbol;
    return contradiction(unknown, statement_, givens_, instead);
  }

  void compare_labels() {
    for (const std::size_t i : verdict_.extras) {
      const Given& given = givens_[i];
      const Number& fitting_value = worked_.values.at(given.symbol.name);
      if (given.value == fitting_value) {
        continue;
      }
      overridden_.insert(i);
      if (verdict_.extras.size() == 1 && blames_another(i, fitting_value)) {
        continue;
      }
      const bool in_its_own_rounding =
          given.value - given.half_unit() <= fitting_value && fitting_value <= given.value + given.half_unit();
      remarks_.push_back(
          rounding_remark(given, fitting_value, givens_, among(verdict_, given.symbol.name), !in_its_own_rounding));
    }
  }

  /// Where a label follows from the others as a number that does not end, and one of those follows from it and the rest
  /// as one that does, that one is off: of 16.01, 6 and 10 the first, which should be 16.
  bool blames_another(std::size_t extra, const Number& fitting_value) {
    const Given& given = givens_[extra];
    const auto ends = [](const Given& label, const Number& value) {
      return exact::decimals_needed(value * label.to_written, label.places).has_value();
    };
    if (given.is_fraction || ends(given, fitting_value)) {
      return false;
    }
    const std::set<std::string> others = among(verdict_, given.symbol.name);
    for (const std::size_t other : verdict_.basis) {
      const Given& blamed = givens_[other];
      if (others.count(blamed.symbol.name) == 0 || blamed.is_fraction || blamed.places == 0) {
        continue;
      }
      Bindings rest = values_of(verdict_.basis);
      rest.erase(blamed.symbol.name);
      rest.insert_or_assign(given.symbol.name, given.value);
      const Worked without = worked_out(relations_, rest, verdict_);
      const auto found = without.values.find(blamed.symbol.name);
      if (!without.contradiction && found != without.values.end() && ends(blamed, found->second)) {
        std::set<std::string> those = others;
        those.erase(blamed.symbol.name);
        those.insert(given.symbol.name);
        remarks_.push_back(rounding_remark(blamed, found->second, givens_, those, true));
        return true;
      }
    }
    return false;
  }

  void add_choices() {
    if (!verdict_.choice || !worked_.choices.empty()) {
      return;
    }
    const std::string& name = relations_.symbols()[*verdict_.choice].name;
    for (const double value : verdict_.choices) {
      worked_.choices[name].push_back(Number::whole(std::llround(value * 1e6)) / Number::whole(1000000));
    }
  }

  Completed finished() {
    Completed result;
    result.exact = worked_.values;
    result.remarks = remarks_;
    result.used = worked_.values;
    const bool overrides =
        std::any_of(overridden_.begin(), overridden_.end(), [this](std::size_t i) { return !givens_[i].is_known; });
    if (overrides) {
      std::vector<std::size_t> as_written;
      for (std::size_t i = 0; i < givens_.size(); ++i) {
        if (!givens_[i].is_known || overridden_.count(i) == 0) {
          as_written.push_back(i);
        }
      }
      Worked used = worked_out(relations_, values_of(as_written), verdict_);
      // Where the labels alone do not lead on, the exact values stand in.
      for (const auto& entry : worked_.values) {
        used.values.insert(entry);
      }
      result.used = used.values;
    }
    return result;
  }

  const SolidStatement& statement_;
  Relations relations_;
  std::vector<Given> givens_;
  units::Unit unit_;
  Consistency consistency_;
  Verdict verdict_;
  Worked worked_;
  std::optional<Consistency::Remedy> remedy_;
  std::set<std::size_t> overridden_;
  std::vector<Fault> remarks_;
};

}  // namespace

Result<Completed, std::vector<Fault>> completed(const SolidStatement& statement, const std::vector<Given>& givens,
                                                const units::Unit& unit) {
  std::vector<Fault> faults;
  for (const Given& given : givens) {
    if (given.value.sign() < 0 || (given.value.is_zero() && !given.may_be_zero)) {
      faults.push_back(not_positive(given));
    }
  }
  if (!faults.empty()) {
    return failure(faults);
  }
  return Completion(statement, givens, unit).run();
}

}  // namespace fw::solids
