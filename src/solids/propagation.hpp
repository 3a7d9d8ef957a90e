#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "algebra/rough.hpp"
#include "solids/statement.hpp"

// From known measures to all of them, over a statement's relations; private to the room.
namespace fw::solids {

using algebra::Numbering;
using algebra::RoughEquation;
using algebra::RoughExpression;
using algebra::SymbolSet;

/// A way to work one symbol out: an equation in which it is the only unknown.
struct Step {
  algebra::Equation equation;
  algebra::Symbol unknown;
  const Derivation* derivation = nullptr;  ///< set: the value comes from the coordinates, not from the equation
  std::size_t slot = 0;                    ///< of the unknown
  SymbolSet from;                          ///< the symbols that it is worked out from
  std::optional<std::size_t> relation;     ///< which relation the equation is; none where definitions were put in
};

/// How far the search for a next step goes.
enum class Reach {
  Direct,    ///< relations as they stand, and derivations
  Composed,  ///< then relations with definitions put in for what is unknown: slow
};

/// A set of relations, with the definitions that can be put into one another.
class Relations {
 public:
  explicit Relations(const SolidStatement& statement);

  /// The next symbol that can be worked out when the `known` ones are known and the `passed` ones are left aside.
  [[nodiscard]] std::optional<Step> next_step(const SymbolSet& known, const SymbolSet& passed, Reach reach) const;
  /// The same as far as relations as they stand lead, without the words of a step.
  struct DirectStep {
    std::size_t slot, relation;
  };
  [[nodiscard]] std::optional<DirectStep> direct(const SymbolSet& known, const SymbolSet& passed) const;
  /// All symbols that become known from `known`, whatever the values are.
  [[nodiscard]] SymbolSet closure(SymbolSet known) const;
  [[nodiscard]] const std::vector<algebra::Symbol>& symbols() const { return symbols_; }
  /// Of all symbols.
  [[nodiscard]] const SymbolSet& all() const { return all_; }
  [[nodiscard]] std::size_t slot(const std::string& name) const;
  [[nodiscard]] const SolidStatement& statement() const { return *statement_; }

  /// The relations in doubles, one beside each.
  [[nodiscard]] const std::vector<RoughEquation>& rough() const { return rough_; }
  [[nodiscard]] Numbering numbering() const;

 private:
  struct Definition {
    algebra::Expression value;
    std::size_t relation;
  };
  void add_definitions(std::size_t relation);
  void add_definition(const algebra::Symbol& symbol, std::size_t relation);
  void add_factors(const algebra::Expression& expression, std::size_t relation);
  [[nodiscard]] std::optional<Step> derived_step(const SymbolSet& known, const SymbolSet& passed) const;
  [[nodiscard]] std::optional<Step> direct_step(const SymbolSet& known, const SymbolSet& passed) const;
  [[nodiscard]] std::optional<Step> composed_step(const SymbolSet& known, const SymbolSet& passed) const;
  [[nodiscard]] SymbolSet set_of(const std::vector<algebra::Symbol>& symbols) const;
  struct Filling;
  [[nodiscard]] algebra::Expression filled(const algebra::Expression& expression, const Filling& filling) const;

  const SolidStatement* statement_;
  std::vector<algebra::Symbol> symbols_;
  std::map<std::string, std::size_t> slots_;
  SymbolSet all_;
  std::vector<RoughEquation> rough_;
  std::map<std::string, std::vector<Definition>> definitions_;
  /// Composed steps found so far, by what was known and passed: the search is slow, and asks for the same many times.
  mutable std::map<std::string, std::optional<Step>> composed_;
};

/// The positive values of the step's unknown, exact where algebra::positive_solutions() is.
[[nodiscard]] std::vector<exact::Number> solutions_of(const Step& step, const algebra::Bindings& values);

/// Whether a condition holds; nothing while a symbol of it is unknown.
[[nodiscard]] std::optional<bool> holds(const Condition& condition, const algebra::Bindings& values);

}  // namespace fw::solids
