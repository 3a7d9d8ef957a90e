#include <algorithm>
#include <functional>

#include "exact/print_number.hpp"
#include "solids/completion.hpp"

namespace fw::solids {

using algebra::Bindings;
using algebra::Symbol;
using exact::Number;
using units::Unit;

namespace {

constexpr int places_of_values = 2;

const Given* given_with(const std::vector<Given>& givens, const std::string& symbol) {
  const auto found =
      std::find_if(givens.begin(), givens.end(), [&](const Given& given) { return given.symbol.name == symbol; });
  return found == givens.end() ? nullptr : &*found;
}

std::string with_spaces(std::string key) {
  std::replace(key.begin(), key.end(), '_', ' ');
  return key;
}

Number power_of_ten(int places) {
  Number result = Number::whole(1);
  for (int i = 0; i < places; ++i) {
    result = result * Number::whole(10);
  }
  return result;
}

/// A value in the unit in which the given was written.
std::string as_written(const Given& given, const Number& value, int places) {
  return value_text(value * given.to_written, given.symbol.dimension, given.unit, places);
}

/// "sides 5 cm, 5 cm and 8 cm and height 9 cm": the givens with these symbols, lists taken together.
std::string listed(const std::vector<Given>& givens, const std::set<std::string>& among) {
  std::vector<std::string> groups;
  std::set<std::string> named;
  std::set<std::string> done;
  for (const Given& given : givens) {
    const bool is_listed = done.count(given.measure) != 0 || named.count(given.symbol.name) != 0;
    if (among.count(given.symbol.name) == 0 || is_listed) {
      continue;
    }
    done.insert(given.measure);
    std::vector<std::string> values;
    for (const Given& other : givens) {
      if (other.measure == given.measure && among.count(other.symbol.name) != 0) {
        values.push_back(as_written(other, other.value, std::max(other.places, places_of_values)));
        named.insert(other.symbol.name);
      }
    }
    groups.push_back((values.size() > 1 ? with_spaces(given.key) : given.title) + " " + joined_with_and(values));
  }
  return joined_with_and(groups);
}

/// Decimals for a value that is to replace a label: enough to tell it from a whole number.
int places_for(const Given& given) { return std::max(given.places, given.is_fraction ? 2 : 1); }

std::string opening_words(const std::vector<Given>& givens, const std::set<std::string>& among) {
  const std::string list = listed(givens, among);
  return list.empty() ? "" : "with " + list + " ";
}

}  // namespace

Fault disagreement(const Given& given, const Number& fitting, const std::vector<Given>& givens,
                   const std::set<std::string>& among, const Unit&) {
  const std::string right = as_written(given, fitting, places_for(given));
  Fault fault = impossible(given.measure, opening_words(givens, among) + "the " + given.title + " is " + right +
                                              ", not " + as_written(given, given.value, std::max(given.places, 2)));
  const Number nearest = rounded(fitting * given.to_written, places_for(given));
  fault.nearest = value_text(nearest, given.symbol.dimension, given.unit, places_for(given));
  return fault;
}

Fault rounding_remark(const Given& given, const Number& fitting, const std::vector<Given>& givens,
                      const std::set<std::string>& among, const Unit&) {
  const int places = std::max(given.places + 2, places_of_values);
  Fault fault{Severity::Rounding, given.measure,
              "the " + given.title + " " + as_written(given, given.value, places) + " fits only as a rounded number: " +
                  opening_words(givens, among) + "it is " + as_written(given, fitting, places),
              ""};
  fault.nearest = value_text(rounded(fitting * given.to_written, places), given.symbol.dimension, given.unit, places);
  return fault;
}

namespace {

/// The value of the subject nearest to the present one, at the precision written, for which the condition holds.
std::optional<Number> nearest_fitting(const Condition& condition, const Given& subject, const Bindings& values) {
  Bindings others = values;
  others.erase(subject.symbol.name);
  const Number scale = power_of_ten(subject.is_fraction ? 1 : subject.places);
  std::optional<Number> best;
  for (const Number& bound : algebra::positive_solutions({condition.greater, condition.less}, subject.symbol, others)) {
    const Number below = floor(bound * subject.to_written * scale);
    for (const long long step : {-1LL, 0LL, 1LL}) {
      const Number candidate = (below + Number::whole(step)) / scale / subject.to_written;
      Bindings tried = others;
      tried.insert_or_assign(subject.symbol.name, candidate);
      if (candidate.sign() <= 0 || !holds(condition, tried).value_or(false)) {
        continue;
      }
      const auto off = [&](const Number& value) {
        const Number difference = value - subject.value;
        return difference.sign() < 0 ? -difference : difference;
      };
      if (!best || off(candidate) < off(*best)) {
        best = candidate;
      }
    }
  }
  return best;
}

bool speaks_of(const algebra::Expression& expression, const std::string& name) {
  const std::vector<Symbol> symbols = algebra::symbols_of(expression);
  return std::any_of(symbols.begin(), symbols.end(), [&](const Symbol& symbol) { return symbol.name == name; });
}

int dimension_of(const algebra::Expression& side, const Condition& condition) {
  std::vector<Symbol> symbols = algebra::symbols_of(side);
  if (symbols.empty()) {
    symbols = algebra::symbols_of(condition.greater);
  }
  // Conditions compare lengths with lengths and areas with areas; 2·l·w is recognized by the other side.
  const std::vector<Symbol> other = algebra::symbols_of(condition.greater);
  return other.size() == 1 ? other[0].dimension : symbols.front().dimension;
}

}  // namespace

Fault broken_condition(const Condition& condition, const Bindings& values, const std::vector<Given>& givens,
                       const Unit& unit) {
  const Given* subject = given_with(givens, condition.subject);
  const bool subject_is_less = speaks_of(condition.less, condition.subject);
  const algebra::Expression& other = subject_is_less ? condition.greater : condition.less;
  const auto bound = algebra::evaluate(other, values);
  std::string message = condition.sentence;
  const int places = subject == nullptr ? places_of_values : std::max(places_of_values, subject->places);
  if (bound && subject != nullptr) {
    message += ", " + as_written(*subject, *bound, places);
  } else if (bound) {
    message += ", " + value_text(*bound, dimension_of(other, condition), unit, places);
  }
  Fault fault = impossible(subject == nullptr ? condition.subject : subject->measure, message);
  if (subject != nullptr) {
    if (const auto nearest = nearest_fitting(condition, *subject, values)) {
      fault.nearest = as_written(*subject, *nearest, std::max(subject->places, 1));
      fault.message += "; " + fault.nearest + " would do";
    }
  }
  return fault;
}

Fault contradiction(const Symbol& unknown, const SolidStatement& statement, const std::vector<Given>& givens) {
  const auto measure = std::find_if(statement.measures.begin(), statement.measures.end(),
                                    [&](const Measure& m) { return m.symbol == unknown; });
  const std::string title = measure != statement.measures.end() ? measure->title
                            : known_title(unknown.name).empty() ? with_spaces(unknown.name)
                                                                : known_title(unknown.name);
  std::set<std::string> all;
  for (const Given& given : givens) {
    all.insert(given.symbol.name);
  }
  return impossible(givens.empty() ? "" : givens.back().measure,
                    opening_words(givens, all) + "there is no " + title + " that fits");
}

Fault not_positive(const Given& given) {
  Fault fault = impossible(given.measure, "the " + given.title + " must be more than 0");
  fault.nearest = value_text(Number::whole(1) / power_of_ten(given.places), given.symbol.dimension, given.unit,
                             std::max(given.places, 1));
  return fault;
}

namespace {

/// Measures that a lesson could still give, each symbol once.
std::vector<Measure> open_measures(const Relations& relations, const Worked& worked) {
  std::vector<Measure> open;
  for (const Measure& measure : relations.statement().measures) {
    const bool is_listed =
        std::any_of(open.begin(), open.end(), [&](const Measure& m) { return m.symbol == measure.symbol; });
    if (!measure.key.empty() && worked.values.count(measure.symbol.name) == 0 && !is_listed) {
      open.push_back(measure);
    }
  }
  return open;
}

bool completes(const Relations& relations, const Worked& worked, const std::vector<const Measure*>& added) {
  std::set<std::string> known;
  for (const auto& entry : worked.values) {
    known.insert(entry.first);
  }
  for (const Measure* measure : added) {
    known.insert(measure->symbol.name);
  }
  known = relations.closure(known);
  const auto& symbols = relations.symbols();
  return std::all_of(symbols.begin(), symbols.end(),
                     [&](const Symbol& symbol) { return known.count(symbol.name) != 0; });
}

/// All sets of `size` open measures that would complete the figure.
std::vector<std::vector<const Measure*>> completing_sets(const Relations& relations, const Worked& worked,
                                                         const std::vector<Measure>& open, std::size_t size) {
  std::vector<std::vector<const Measure*>> sets;
  std::vector<const Measure*> chosen;
  const std::function<void(std::size_t)> choose = [&](std::size_t first) {
    if (chosen.size() == size) {
      if (completes(relations, worked, chosen)) {
        sets.push_back(chosen);
      }
      return;
    }
    for (std::size_t i = first; i < open.size(); ++i) {
      chosen.push_back(&open[i]);
      choose(i + 1);
      chosen.pop_back();
    }
  };
  choose(0);
  return sets;
}

std::string titles_of(const std::vector<const Measure*>& set) {
  std::vector<std::string> titles;
  for (const Measure* measure : set) {
    titles.push_back("the " + measure->title);
  }
  return joined_with_and(titles);
}

}  // namespace

Fault missing_measures(const Relations& relations, const Worked& worked, const Unit& unit) {
  if (!worked.choices.empty()) {
    const auto& choice = *worked.choices.begin();
    const auto& all = relations.statement().measures;
    const auto measure =
        std::find_if(all.begin(), all.end(), [&](const Measure& m) { return m.symbol.name == choice.first; });
    std::vector<std::string> values;
    for (const Number& value : choice.second) {
      values.push_back(value_text(value, 1, unit, places_of_values));
    }
    const std::string title = measure == all.end() ? with_spaces(choice.first) : measure->title;
    return missing(measure == all.end() ? "" : (measure->in_base ? "base." : "") + measure->key,
                   "the " + title + " can be " + joined_with_and(values) + ": one more measure is needed");
  }
  const std::vector<Measure> open = open_measures(relations, worked);
  for (std::size_t size = 1; size <= std::min<std::size_t>(open.size(), 3); ++size) {
    const auto sets = completing_sets(relations, worked, open, size);
    if (sets.empty()) {
      continue;
    }
    std::vector<std::string> words;
    for (const auto& set : sets) {
      words.push_back(titles_of(set));
    }
    constexpr std::size_t most_listed = 4;
    words.resize(std::min(words.size(), most_listed));
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
      const std::string comma = size == 1 ? ", " : ", or ";
      text += i == 0 ? "" : i + 1 == words.size() ? (size == 1 ? " or " : ", or ") : comma;
      text += words[i];
    }
    const Measure& first = *sets.front().front();
    return missing((first.in_base ? "base." : "") + first.key, text + (size == 1 ? " is needed" : " are needed"));
  }
  return missing("", "more measures are needed");
}

}  // namespace fw::solids
