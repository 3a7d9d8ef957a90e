#include "solids/propagation.hpp"

#include <algorithm>
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

bool is_square_of_symbol(const Expression& expression) {
  return expression.operation() == Operation::Power && expression.exponent() == 2 &&
         expression.operands()[0].operation() == Operation::Symbol;
}

}  // namespace

Relations::Relations(const SolidStatement& statement) : statement_(&statement) {
  const Numbering note = [this](const Symbol& symbol) {
    const auto placed = slots_.try_emplace(symbol.name, symbols_.size());
    if (placed.second) {
      ensure(symbols_.size() < algebra::most_symbols, "a kind of solid states more symbols than there is room for");
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
  return found == slots_.end() ? algebra::most_symbols : found->second;
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

void Relations::add_definition(const Symbol& symbol, std::size_t relation) {
  if (const auto value = algebra::solved_for(statement_->relations[relation].equation, symbol)) {
    definitions_[symbol.name].push_back({*value, relation});
  }
}

void Relations::add_definitions(std::size_t relation) {
  const auto& [left, right] = statement_->relations[relation].equation;
  if (left.operation() == Operation::Symbol) {
    // A plain definition goes before one with a root.
    auto& all = definitions_[left.symbol().name];
    all.insert(all.begin(), {right, relation});
    add_factors(right, relation);
  } else if (is_square_of_symbol(left)) {
    add_definition(left.operands()[0].symbol(), relation);
    if (right.operation() == Operation::Sum && right.operands().size() == 2 &&
        is_square_of_symbol(right.operands()[0])) {
      add_definition(right.operands()[0].operands()[0].symbol(), relation);
    }
  }
}

/// V = l × w × h defines each of l, w and h too: h = V ÷ (l × w).
void Relations::add_factors(const Expression& expression, std::size_t relation) {
  const std::vector<Expression>& operands = expression.operands();
  if (expression.operation() == Operation::Symbol) {
    add_definition(expression.symbol(), relation);
  } else if (expression.operation() == Operation::Product) {
    add_factors(operands[0], relation);
    add_factors(operands[1], relation);
  } else if (expression.operation() == Operation::Quotient) {
    add_factors(operands[0], relation);
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
      Expression value = filled(definition.value, deeper);
      const bool is_circular = algebra::occurrences(value, expression.symbol()) > 0;
      if (!is_circular) {
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
      const SymbolSet inside = set_of(algebra::symbols_of(composed));
      SymbolSet left = inside & ~known;
      if (left.count() == 1 && left.test(slot) && !algebra::is_vacuous(composed, unknown)) {
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

std::vector<Number> solutions_of(const Step& step, const Bindings& values) {
  if (step.derivation != nullptr) {
    const auto value = step.derivation->value(values);
    return value ? std::vector<Number>{*value} : std::vector<Number>{};
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
