#include "solids/propagation.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "algebra/isolate.hpp"

namespace fw::solids {

using algebra::Bindings;
using algebra::Equation;
using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;
using exact::Number;

namespace {

std::size_t first_of(const SymbolSet& set) {
  std::size_t slot = 0;
  while (!set.test(slot)) {
    ++slot;
  }
  return slot;
}

std::vector<Symbol> symbols_in(const Equation& equation) {
  std::vector<Symbol> all = algebra::symbols_of(equation.left);
  for (const Symbol& symbol : algebra::symbols_of(equation.right)) {
    if (std::find(all.begin(), all.end(), symbol) == all.end()) {
      all.push_back(symbol);
    }
  }
  return all;
}

bool is_square_of_symbol(const Expression& expression) {
  return expression.operation() == Operation::Power && expression.exponent() == 2 &&
         expression.operands()[0].operation() == Operation::Symbol;
}

/// Whether an equation says nothing of its unknown, since its two sides are as far apart whatever that is: it holds for
/// every value, or it only compares what is known. The other symbols are given values that have nothing to do with each
/// other. In doubles, since exact roots of such values are sums of many terms and cost seconds.
bool says_nothing_of(const Symbol& unknown, const Equation& equation) {
  std::map<std::string, double, std::less<>> values;
  double odd = 37;
  for (const Symbol& symbol : symbols_in(equation)) {
    values.insert_or_assign(symbol.name, odd / 17);
    odd += 12;
  }
  std::optional<double> before;
  for (const double tried : {1.0, 7.0, 53.0, 419.0, 3001.0}) {
    values.insert_or_assign(unknown.name, tried / 3);
    const double left = algebra::rough_value(equation.left, values);
    const double right = algebra::rough_value(equation.right, values);
    if (!std::isfinite(left) || !std::isfinite(right)) {
      continue;
    }
    const double apart = left - right;
    if (before && std::abs(apart - *before) > 1e-9 * (std::abs(left) + std::abs(right))) {
      return false;
    }
    before = apart;
  }
  return true;
}

}  // namespace

Relations::Relations(const SolidStatement& statement) : statement_(&statement) {
  const Numbering note = [this](const Symbol& symbol) {
    const auto placed = slots_.try_emplace(symbol.name, symbols_.size());
    if (placed.second) {
      ensure(symbols_.size() < most_symbols, "a kind of solid states more symbols than there is room for");
      symbols_.push_back(symbol);
    }
    return placed.first->second;
  };
  for (const Measure& measure : statement.measures) {
    note(measure.symbol);
  }
  rough_.reserve(statement.relations.size());
  for (const Relation& relation : statement.relations) {
    rough_.emplace_back(relation.equation, note);
  }
  for (std::size_t i = 0; i < symbols_.size(); ++i) {
    all_.set(i);
  }
  for (std::size_t i = 0; i < statement.relations.size(); ++i) {
    add_definitions(i);
  }
}

std::size_t Relations::slot(const std::string& name) const {
  const auto found = slots_.find(name);
  return found == slots_.end() ? most_symbols : found->second;
}

Numbering Relations::numbering() const {
  return [this](const Symbol& symbol) { return slot(symbol.name); };
}

SymbolSet Relations::set_of(const std::vector<Symbol>& symbols) const {
  SymbolSet set;
  for (const Symbol& symbol : symbols) {
    set.set(slot(symbol.name));
  }
  return set;
}

void Relations::add_definitions(std::size_t relation) {
  const Equation& equation = statement_->relations[relation].equation;
  const auto define = [&](const Symbol& symbol, const Expression& value) {
    definitions_[symbol.name].push_back({value, relation});
  };
  if (equation.left.operation() == Operation::Symbol) {
    // A plain definition goes before one with a root.
    auto& all = definitions_[equation.left.symbol().name];
    all.insert(all.begin(), {equation.right, relation});
    add_quotients(equation.right, equation.left, relation);
  } else if (is_square_of_symbol(equation.left)) {
    define(equation.left.operands()[0].symbol(), root(equation.right));
    if (equation.right.operation() == Operation::Sum && equation.right.operands().size() == 2 &&
        is_square_of_symbol(equation.right.operands()[0])) {
      define(equation.right.operands()[0].operands()[0].symbol(), root(equation.left - equation.right.operands()[1]));
    }
  }
}

/// V = l × w × h defines each of l, w and h too: h = V ÷ (l × w).
void Relations::add_quotients(const Expression& expression, const Expression& value, std::size_t relation) {
  const std::vector<Expression>& operands = expression.operands();
  if (expression.operation() == Operation::Symbol && !(expression == value)) {
    definitions_[expression.symbol().name].push_back({value, relation});
  } else if (expression.operation() == Operation::Product) {
    add_quotients(operands[0], value / operands[1], relation);
    add_quotients(operands[1], value / operands[0], relation);
  } else if (expression.operation() == Operation::Quotient) {
    add_quotients(operands[0], value * operands[1], relation);
  }
}

/// What must not be put in again: the relation worked on, the symbols on the way, and the unknown itself.
struct Relations::Filling {
  const SymbolSet* known;
  std::set<std::size_t> relations;
  std::set<std::string> kept;
};

Expression Relations::filled(const Expression& expression, const Filling& filling) const {
  if (expression.operation() == Operation::Symbol) {
    const std::string& name = expression.symbol().name;
    const auto found = definitions_.find(name);
    if (filling.known->test(slot(name)) || filling.kept.count(name) != 0 || found == definitions_.end()) {
      return expression;
    }
    for (const Definition& definition : found->second) {
      if (filling.relations.count(definition.relation) != 0) {
        continue;
      }
      Filling deeper = filling;
      deeper.relations.insert(definition.relation);
      deeper.kept.insert(name);
      const Expression value = filled(definition.value, deeper);
      const std::vector<Symbol> inside = algebra::symbols_of(value);
      const bool goes_round =
          std::any_of(inside.begin(), inside.end(), [&](const Symbol& symbol) { return symbol.name == name; });
      if (!goes_round) {
        return value;
      }
    }
    return expression;
  }
  if (expression.operands().empty()) {
    return expression;
  }
  std::vector<Expression> operands;
  for (const Expression& operand : expression.operands()) {
    operands.push_back(filled(operand, filling));
  }
  return algebra::with_operands(expression, operands);
}

std::optional<Step> Relations::derived_step(const SymbolSet& known, const SymbolSet& passed) const {
  for (const Derivation& derivation : statement_->derivations) {
    const std::size_t unknown = slot(derivation.symbol.name);
    const SymbolSet from = set_of(derivation.from);
    if (!known.test(unknown) && !passed.test(unknown) && (from & ~known).none()) {
      return Step{{derivation.symbol, 0}, derivation.symbol, &derivation, unknown, from, std::nullopt};
    }
  }
  return std::nullopt;
}

std::optional<Relations::DirectStep> Relations::direct(const SymbolSet& known, const SymbolSet& passed) const {
  for (std::size_t i = 0; i < rough_.size(); ++i) {
    const SymbolSet unknown = rough_[i].symbols() & ~known;
    if (unknown.count() == 1 && (unknown & passed).none()) {
      return DirectStep{first_of(unknown), i};
    }
  }
  return std::nullopt;
}

std::optional<Step> Relations::direct_step(const SymbolSet& known, const SymbolSet& passed) const {
  const auto step = direct(known, passed);
  if (!step) {
    return std::nullopt;
  }
  SymbolSet from = rough_[step->relation].symbols();
  from.reset(step->slot);
  return Step{
      statement_->relations[step->relation].equation, symbols_[step->slot], nullptr, step->slot, from, step->relation};
}

std::optional<Step> Relations::composed_step(const SymbolSet& known, const SymbolSet& passed) const {
  for (std::size_t i = 0; i < rough_.size(); ++i) {
    const Equation& equation = statement_->relations[i].equation;
    if ((rough_[i].symbols() & known).none()) {
      continue;  // nothing of it is known: putting definitions in gives only another definition
    }
    for (std::size_t slot = 0; slot < symbols_.size(); ++slot) {
      if (known.test(slot) || passed.test(slot)) {
        continue;
      }
      const Symbol& unknown = symbols_[slot];
      const Filling filling{&known, {i}, {unknown.name}};
      const Equation composed{filled(equation.left, filling), filled(equation.right, filling)};
      const SymbolSet inside = set_of(symbols_in(composed));
      SymbolSet left = inside & ~known;
      if (left.count() == 1 && left.test(slot) && !says_nothing_of(unknown, composed)) {
        return Step{composed, unknown, nullptr, slot, inside & known, std::nullopt};
      }
    }
  }
  return std::nullopt;
}

std::optional<Step> Relations::next_step(const SymbolSet& known, const SymbolSet& passed, Reach reach) const {
  if (auto step = direct_step(known, passed)) {
    return step;
  }
  if (auto step = derived_step(known, passed)) {
    return step;
  }
  if (reach == Reach::Direct || known == all_) {
    return std::nullopt;
  }
  const std::string key = known.to_string() + passed.to_string();
  const auto found = composed_.find(key);
  return found != composed_.end() ? found->second : composed_.emplace(key, composed_step(known, passed)).first->second;
}

SymbolSet Relations::closure(SymbolSet known) const {
  while (const auto step = next_step(known, {}, Reach::Composed)) {
    known.set(step->slot);
  }
  return known;
}

// ---- with values ----

namespace {

/// The value of `inner` where `expression`, in which the unknown stands once and under the operand `inner`, has the
/// value `target`. Nothing where that is not one number.
std::optional<Number> undone(const Expression& expression, std::size_t inner, const Number& target,
                             const Bindings& values) {
  Number rest = target;
  const std::vector<Expression>& operands = expression.operands();
  for (std::size_t i = 0; i < operands.size(); ++i) {
    if (i == inner) {
      continue;
    }
    const auto other = algebra::evaluate(operands[i], values);
    if (!other) {
      return std::nullopt;
    }
    switch (expression.operation()) {
      case Operation::Sum:
        rest = rest - *other;
        break;
      case Operation::Difference:
        rest = inner == 0 ? rest + *other : *other - rest;
        break;
      default: {
        const bool divides_by_other = expression.operation() == Operation::Product;
        if ((divides_by_other ? *other : rest).is_zero()) {
          return std::nullopt;
        }
        rest = divides_by_other ? rest / *other : inner == 0 ? rest * *other : *other / rest;
        break;
      }
    }
  }
  if (expression.operation() == Operation::Power) {
    const bool is_plain = operands[0].operation() == Operation::Symbol && rest.sign() > 0;
    if (!is_plain || expression.exponent() > 3) {
      return std::nullopt;
    }
    return expression.exponent() == 2 ? square_root(rest) : cube_root(rest);
  }
  if (expression.operation() == Operation::Root) {
    return rest.sign() < 0 ? std::nullopt : std::optional(power(rest, expression.exponent()));
  }
  return rest;
}

/// The unknown of an equation in which it stands once, by undoing what is done to it; nothing where that fails.
std::optional<Number> by_undoing(const Equation& equation, const Symbol& unknown, const Bindings& values) {
  const std::size_t on_left = algebra::occurrences(equation.left, unknown);
  if (on_left + algebra::occurrences(equation.right, unknown) != 1) {
    return std::nullopt;
  }
  Expression side = on_left == 1 ? equation.left : equation.right;
  std::optional<Number> target = algebra::evaluate(on_left == 1 ? equation.right : equation.left, values);
  while (target && side.operation() != Operation::Symbol) {
    std::size_t inner = 0;
    while (algebra::occurrences(side.operands()[inner], unknown) == 0) {
      ++inner;
    }
    target = undone(side, inner, *target, values);
    side = side.operands()[inner];
  }
  return target;
}

}  // namespace

std::vector<Number> solutions_of(const Step& step, const Bindings& values) {
  if (step.derivation != nullptr) {
    const auto value = step.derivation->value(values);
    return value ? std::vector<Number>{*value} : std::vector<Number>{};
  }
  const auto value = by_undoing(step.equation, step.unknown, values);
  if (value && value->sign() > 0) {
    return {*value};
  }
  return algebra::positive_solutions(step.equation, step.unknown, values);
}

std::optional<bool> holds(const Condition& condition, const Bindings& values) {
  const auto greater = algebra::evaluate(condition.greater, values);
  const auto less = algebra::evaluate(condition.less, values);
  if (!greater || !less) {
    return std::nullopt;
  }
  return condition.may_be_equal ? *greater >= *less : *greater > *less;
}

}  // namespace fw::solids
