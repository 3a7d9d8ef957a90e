#include "solids/completion.hpp"

#include <algorithm>

namespace fw::solids {

using algebra::Bindings;
using exact::Number;

namespace {

/// What one label may stand for when `spread` is half a unit of the last digit of the figure's decimals.
struct Range {
  Number lowest, highest;
};

Range range_of(const Given& given) { return {given.lowest, given.highest}; }

/// As one of the others that a label is checked against: whole numbers count as exact, unless the figure is
/// written in decimals and they may have lost theirs.
Range range_among_decimals(const Given& given, const Number& spread) {
  if (given.is_fraction) {
    return {given.value, given.value};
  }
  if (given.places > 0) {
    return range_of(given);
  }
  return {given.value - spread, given.value + spread};
}

/// Half a unit of the coarsest decimals written; zero in a figure of whole numbers.
Number decimal_spread(const std::vector<Given>& givens) {
  int coarsest = 0;
  const Given* source = nullptr;
  for (const Given& given : givens) {
    if (given.places > 0 && !given.is_fraction && !given.is_known && (coarsest == 0 || given.places < coarsest)) {
      coarsest = given.places;
      source = &given;
    }
  }
  return source == nullptr ? Number() : (source->highest - source->lowest) / Number::whole(2);
}

class Completion {
 public:
  Completion(const SolidStatement& statement, const std::vector<Given>& givens, const units::Unit& unit)
      : statement_(statement), relations_(statement), givens_(givens), unit_(unit) {}

  Result<Completed, std::vector<Fault>> run() {
    for (const Given& given : givens_) {
      if (given.value.sign() < 0 || (given.value.is_zero() && !given.may_be_zero)) {
        faults_.push_back(not_positive(given));
      }
    }
    if (!faults_.empty()) {
      return failure(faults_);
    }
    const bool is_whole = work_through(givens_);
    if (!is_whole) {
      retry_with_whole_numbers_first();
    }
    if (faults_.empty()) {
      check_complete();
    }
    if (!faults_.empty()) {
      return failure(faults_);
    }
    return finished();
  }

 private:
  /// Takes the givens one after another; what the earlier ones fix already is only compared.
  bool work_through(const std::vector<Given>& ordered) {
    worked_ = worked_out(relations_, {});
    remarks_.clear();
    overridden_.clear();
    faults_.clear();
    for (const Given& given : ordered) {
      const auto found = worked_.values.find(given.symbol.name);
      if (found != worked_.values.end()) {
        compare_label(given, found->second);
      } else if (fits_choice(given)) {
        worked_.values.insert_or_assign(given.symbol.name, given.value);
        worked_.origins[given.symbol.name] = {given.symbol.name};
        worked_ = worked_out(relations_, worked_);
      }
      if (!faults_.empty() || !is_sound()) {
        return false;
      }
    }
    return true;
  }

  /// Where the others leave several values for a symbol, a label names one of them, rounded or not.
  bool fits_choice(const Given& given) {
    const auto choices = worked_.choices.find(given.symbol.name);
    if (choices == worked_.choices.end()) {
      return true;
    }
    const Range range = range_of(given);
    for (const Number& choice : choices->second) {
      if (choice >= range.lowest && choice <= range.highest) {
        worked_.values.insert_or_assign(given.symbol.name, choice);
        worked_.choices.erase(given.symbol.name);
        worked_ = worked_out(relations_, worked_);
        compare_label(given, choice);
        return false;
      }
    }
    faults_.push_back(disagreement(given, choices->second.front(), givens_, {}, unit_));
    return false;
  }

  void compare_label(const Given& given, const Number& fitting) {
    if (given.value == fitting) {
      return;
    }
    const std::set<std::string>& among = worked_.origins[given.symbol.name];
    const Range range = range_of(given);
    const bool fits = !given.is_fraction && ((fitting >= range.lowest && fitting <= range.highest) ||
                                             meets_when_all_are_rounded(given, among));
    if (!fits) {
      faults_.push_back(disagreement(given, fitting, givens_, among, unit_));
      return;
    }
    remarks_.push_back(rounding_remark(given, fitting, givens_, among, unit_));
    overridden_.push_back(&given);
  }

  /// Lets every label that the value rests on vary within its rounding.
  bool meets_when_all_are_rounded(const Given& given, const std::set<std::string>& among) const {
    constexpr std::size_t most_varied = 6;
    const Number spread = decimal_spread(givens_);
    if (spread.is_zero() || given.places == 0) {
      return false;
    }
    std::vector<std::pair<std::string, Range>> varied;
    for (const Given& other : givens_) {
      if (among.count(other.symbol.name) != 0) {
        varied.emplace_back(other.symbol.name, range_among_decimals(other, spread));
      }
    }
    if (varied.size() > most_varied) {
      return false;
    }
    std::optional<Range> reached;
    bool stops_short = false;
    for (std::size_t corner = 0; corner < (std::size_t{1} << varied.size()); ++corner) {
      Worked start;
      for (std::size_t i = 0; i < varied.size(); ++i) {
        const bool high = (corner >> i & 1U) != 0;
        start.values.insert_or_assign(varied[i].first, high ? varied[i].second.highest : varied[i].second.lowest);
      }
      const Worked tried = worked_out(relations_, start);
      const auto value = tried.values.find(given.symbol.name);
      if (value == tried.values.end()) {
        stops_short = true;
        continue;
      }
      if (!reached) {
        reached = Range{value->second, value->second};
      }
      reached->lowest = value->second < reached->lowest ? value->second : reached->lowest;
      reached->highest = value->second > reached->highest ? value->second : reached->highest;
    }
    if (!reached) {
      return false;
    }
    return given.lowest <= reached->highest && (stops_short || given.highest >= reached->lowest);
  }

  /// Nothing contradicts anything so far; else says what does.
  bool is_sound() {
    std::set<std::string> subjects;
    for (const Given& given : givens_) {
      subjects.insert(given.symbol.name);
    }
    if (const Condition* failed = failed_condition(statement_, worked_.values, subjects)) {
      faults_.push_back(broken_condition(*failed, worked_.values, givens_, unit_));
      return false;
    }
    if (worked_.contradiction) {
      faults_.push_back(contradiction(*worked_.contradiction, statement_, givens_));
      return false;
    }
    return true;
  }

  /// A figure may be right though its rounded labels, taken as exact, miss a whole one: 2.5 and 2 where 2.3 is meant.
  void retry_with_whole_numbers_first() {
    std::vector<Given> ordered = givens_;
    std::stable_sort(ordered.begin(), ordered.end(), [](const Given& a, const Given& b) {
      return !a.is_known && !b.is_known && (a.places == 0 || a.is_fraction) && b.places > 0 && !b.is_fraction;
    });
    const std::vector<Fault> first = faults_;
    const std::vector<Given> original = givens_;
    givens_ = ordered;
    const bool is_whole = work_through(givens_);
    if (!is_whole) {
      givens_ = original;
      faults_ = first;
    }
  }

  void check_complete() {
    for (const algebra::Symbol& symbol : relations_.symbols()) {
      if (worked_.values.count(symbol.name) == 0) {
        faults_.push_back(missing_measures(relations_, worked_, unit_));
        return;
      }
    }
    if (const Relation* broken = broken_relation(statement_, worked_.values)) {
      faults_.push_back(impossible("", "these measures do not fit together: " + broken->reason));
    }
  }

  Completed finished() {
    Completed result;
    result.exact = worked_.values;
    result.remarks = remarks_;
    result.used = worked_.values;
    const bool overrides =
        std::any_of(overridden_.begin(), overridden_.end(), [](const Given* given) { return !given->is_known; });
    if (overrides) {
      Worked start;
      for (const Given& given : givens_) {
        const bool is_checked =
            given.is_known && std::find(overridden_.begin(), overridden_.end(), &given) != overridden_.end();
        if (!is_checked) {
          start.values.insert_or_assign(given.symbol.name, given.value);
        }
      }
      Worked as_written = worked_out(relations_, start);
      // Where the labels alone do not lead on, the exact values stand in.
      for (const auto& entry : worked_.values) {
        as_written.values.insert(entry);
      }
      result.used = as_written.values;
    }
    return result;
  }

  const SolidStatement& statement_;
  Relations relations_;
  std::vector<Given> givens_;
  units::Unit unit_;
  Worked worked_;
  std::vector<const Given*> overridden_;
  std::vector<Fault> remarks_;
  std::vector<Fault> faults_;
};

}  // namespace

Result<Completed, std::vector<Fault>> completed(const SolidStatement& statement, const std::vector<Given>& givens,
                                                const units::Unit& unit) {
  return Completion(statement, givens, unit).run();
}

}  // namespace fw::solids
