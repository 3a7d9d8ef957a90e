#include "solids/propagation.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace fw::solids {

using algebra::Bindings;
using algebra::Equation;
using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;
using exact::Number;

namespace {

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

std::vector<Symbol> unknown_of(const std::vector<Symbol>& symbols, const std::set<std::string>& known) {
  std::vector<Symbol> unknown;
  for (const Symbol& symbol : symbols) {
    if (known.count(symbol.name) == 0) {
      unknown.push_back(symbol);
    }
  }
  return unknown;
}

/// Whether an equation holds for every value of its unknown that makes sense in it, so that nothing follows from
/// it. The other symbols are given values that have nothing to do with each other. In doubles, since exact roots of
/// such values are sums of many terms and cost seconds.
bool is_identity(const Equation& equation, const Symbol& unknown) {
  std::map<std::string, double, std::less<>> values;
  double odd = 37;
  for (const Symbol& symbol : symbols_in(equation)) {
    values.insert_or_assign(symbol.name, odd / 17);
    odd += 12;
  }
  for (const double tried : {1.0, 7.0, 53.0, 419.0, 3001.0}) {
    values.insert_or_assign(unknown.name, tried / 3);
    const double left = algebra::rough_value(equation.left, values);
    const double right = algebra::rough_value(equation.right, values);
    if (std::isfinite(left) && std::isfinite(right) &&
        std::abs(left - right) > 1e-9 * (std::abs(left) + std::abs(right))) {
      return false;
    }
  }
  return true;
}

}  // namespace

Relations::Relations(const SolidStatement& statement) : statement_(&statement) {
  const auto note = [this](const Symbol& symbol) {
    if (std::find(symbols_.begin(), symbols_.end(), symbol) == symbols_.end()) {
      symbols_.push_back(symbol);
    }
  };
  for (const Measure& measure : statement.measures) {
    note(measure.symbol);
  }
  for (std::size_t i = 0; i < statement.relations.size(); ++i) {
    symbols_of_relation_.push_back(symbols_in(statement.relations[i].equation));
    for (const Symbol& symbol : symbols_of_relation_.back()) {
      note(symbol);
    }
    add_definitions(i);
  }
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
  } else if (is_square_of_symbol(equation.left)) {
    define(equation.left.operands()[0].symbol(), root(equation.right));
    if (equation.right.operation() == Operation::Sum && equation.right.operands().size() == 2 &&
        is_square_of_symbol(equation.right.operands()[0])) {
      define(equation.right.operands()[0].operands()[0].symbol(), root(equation.left - equation.right.operands()[1]));
    }
  }
}

/// What must not be put in again: the relation worked on, the symbols on the way, and the unknown itself.
struct Relations::Filling {
  const std::set<std::string>* known;
  std::set<std::size_t> relations;
  std::set<std::string> kept;
};

Expression Relations::filled(const Expression& expression, const Filling& filling) const {
  if (expression.operation() == Operation::Symbol) {
    const std::string& name = expression.symbol().name;
    const auto found = definitions_.find(name);
    if (filling.known->count(name) != 0 || filling.kept.count(name) != 0 || found == definitions_.end()) {
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
  switch (expression.operation()) {
    case Operation::Sum:
      return algebra::sum_of(operands);
    case Operation::Difference:
      return operands[0] - operands[1];
    case Operation::Product:
      return operands[0] * operands[1];
    case Operation::Quotient:
      return operands[0] / operands[1];
    case Operation::Power:
      return power(operands[0], expression.exponent());
    case Operation::Root:
      return root(operands[0], expression.exponent());
    case Operation::Number:
    case Operation::Symbol:
      break;
  }
  return expression;
}

std::optional<Step> Relations::derived_step(const std::set<std::string>& known,
                                            const std::set<std::string>& passed) const {
  for (const Derivation& derivation : statement_->derivations) {
    if (known.count(derivation.symbol.name) == 0 && passed.count(derivation.symbol.name) == 0 &&
        unknown_of(derivation.from, known).empty()) {
      return Step{{derivation.symbol, 0}, derivation.symbol, &derivation};
    }
  }
  return std::nullopt;
}

std::optional<Step> Relations::direct_step(const std::set<std::string>& known,
                                           const std::set<std::string>& passed) const {
  for (std::size_t i = 0; i < symbols_of_relation_.size(); ++i) {
    const std::vector<Symbol> unknown = unknown_of(symbols_of_relation_[i], known);
    if (unknown.size() == 1 && passed.count(unknown[0].name) == 0) {
      return Step{statement_->relations[i].equation, unknown[0], nullptr};
    }
  }
  return std::nullopt;
}

std::optional<Step> Relations::composed_step(const std::set<std::string>& known,
                                             const std::set<std::string>& passed) const {
  for (std::size_t i = 0; i < symbols_of_relation_.size(); ++i) {
    const Equation& equation = statement_->relations[i].equation;
    const std::vector<Symbol> given_in = symbols_of_relation_[i];
    if (unknown_of(given_in, known).size() == given_in.size()) {
      continue;  // nothing of it is known: putting definitions in gives only another definition
    }
    for (const Symbol& unknown : symbols_) {
      if (known.count(unknown.name) != 0 || passed.count(unknown.name) != 0) {
        continue;
      }
      const Filling filling{&known, {i}, {unknown.name}};
      const Equation composed{filled(equation.left, filling), filled(equation.right, filling)};
      const std::vector<Symbol> left = unknown_of(symbols_in(composed), known);
      if (left.size() == 1 && left[0] == unknown && !is_identity(composed, unknown)) {
        return Step{composed, unknown, nullptr};
      }
    }
  }
  return std::nullopt;
}

std::optional<Step> Relations::next_step(const std::set<std::string>& known,
                                         const std::set<std::string>& passed) const {
  if (auto step = derived_step(known, passed)) {
    return step;
  }
  if (auto step = direct_step(known, passed)) {
    return step;
  }
  return composed_step(known, passed);
}

std::set<std::string> Relations::closure(std::set<std::string> known) const {
  while (const auto step = next_step(known, {})) {
    known.insert(step->unknown.name);
  }
  return known;
}

// ---- with values ----

std::optional<bool> holds(const Condition& condition, const Bindings& values) {
  const auto greater = algebra::evaluate(condition.greater, values);
  const auto less = algebra::evaluate(condition.less, values);
  if (!greater || !less) {
    return std::nullopt;
  }
  return condition.may_be_equal ? *greater >= *less : *greater > *less;
}

const Condition* failed_condition(const SolidStatement& statement, const Bindings& values,
                                  const std::set<std::string>& subjects) {
  const Condition* other = nullptr;
  for (const Condition& condition : statement.conditions) {
    if (holds(condition, values).value_or(true)) {
      continue;
    }
    if (subjects.count(condition.subject) != 0) {
      return &condition;
    }
    other = other == nullptr ? &condition : other;
  }
  return other;
}

const Relation* broken_relation(const SolidStatement& statement, const Bindings& values) {
  for (const Relation& relation : statement.relations) {
    const auto left = algebra::evaluate(relation.equation.left, values);
    const auto right = algebra::evaluate(relation.equation.right, values);
    if (!left || !right) {
      continue;
    }
    const Number difference = *left - *right;
    if (std::abs(difference.to_double()) > 1e-12 * (std::abs(left->to_double()) + std::abs(right->to_double()))) {
      return &relation;
    }
  }
  return nullptr;
}

namespace {

/// The values of the step's unknown for which no condition fails.
std::vector<Number> fitting(const SolidStatement& statement, const Step& step, const Bindings& values) {
  if (step.derivation != nullptr) {
    const auto value = step.derivation->value(values);
    return value ? std::vector<Number>{*value} : std::vector<Number>{};
  }
  const std::vector<Number> solutions = algebra::positive_solutions(step.equation, step.unknown, values);
  if (solutions.size() < 2) {
    return solutions;
  }
  std::vector<Number> fit;
  for (const Number& solution : solutions) {
    Bindings tried = values;
    tried.insert_or_assign(step.unknown.name, solution);
    if (failed_condition(statement, tried, {}) == nullptr) {
      fit.push_back(solution);
    }
  }
  return fit.empty() ? solutions : fit;
}

std::set<std::string> names_of(const Bindings& values) {
  std::set<std::string> names;
  for (const auto& entry : values) {
    names.insert(entry.first);
  }
  return names;
}

}  // namespace

Worked worked_out(const Relations& relations, Worked state) {
  std::set<std::string> known = names_of(state.values);
  std::set<std::string> passed;
  while (const auto step = relations.next_step(known, passed)) {
    const std::string& name = step->unknown.name;
    const std::vector<Number> values = fitting(relations.statement(), *step, state.values);
    if (values.empty()) {
      state.contradiction = step->unknown;
      return state;
    }
    if (values.size() > 1) {
      state.choices.insert_or_assign(name, values);
      passed.insert(name);
      continue;
    }
    state.values.insert_or_assign(name, values.front());
    known.insert(name);
    const std::vector<Symbol> from = step->derivation != nullptr ? step->derivation->from : symbols_in(step->equation);
    for (const Symbol& symbol : from) {
      if (symbol == step->unknown) {
        continue;
      }
      const auto& origins = state.origins[symbol.name];
      state.origins[name].insert(origins.begin(), origins.end());
    }
  }
  return state;
}

}  // namespace fw::solids
