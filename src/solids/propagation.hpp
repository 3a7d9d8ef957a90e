#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "solids/statement.hpp"

// From known measures to all of them, over a statement's relations; private to the room.
namespace fw::solids {

/// A way to work one symbol out: an equation in which it is the only unknown.
struct Step {
  algebra::Equation equation;
  algebra::Symbol unknown;
  const Derivation* derivation = nullptr;  ///< set: the value comes from the coordinates, not from the equation
};

/// A set of relations, with the definitions that can be put into one another.
class Relations {
 public:
  explicit Relations(const SolidStatement& statement);

  /// The next symbol that can be worked out when the `known` ones are known and the steps with a name in
  /// `passed` are left aside; relations as they stand first, then with definitions put in for what is unknown.
  [[nodiscard]] std::optional<Step> next_step(const std::set<std::string>& known,
                                              const std::set<std::string>& passed) const;
  /// All symbols that become known from `known`, whatever the values are.
  [[nodiscard]] std::set<std::string> closure(std::set<std::string> known) const;
  [[nodiscard]] const std::vector<algebra::Symbol>& symbols() const { return symbols_; }
  [[nodiscard]] const SolidStatement& statement() const { return *statement_; }

 private:
  struct Definition {
    algebra::Expression value;
    std::size_t relation;
  };
  void add_definitions(std::size_t relation);
  [[nodiscard]] std::optional<Step> derived_step(const std::set<std::string>& known,
                                                 const std::set<std::string>& passed) const;
  [[nodiscard]] std::optional<Step> direct_step(const std::set<std::string>& known,
                                                const std::set<std::string>& passed) const;
  [[nodiscard]] std::optional<Step> composed_step(const std::set<std::string>& known,
                                                  const std::set<std::string>& passed) const;
  struct Filling;
  [[nodiscard]] algebra::Expression filled(const algebra::Expression& expression, const Filling& filling) const;

  const SolidStatement* statement_;
  std::vector<std::vector<algebra::Symbol>> symbols_of_relation_;
  std::vector<algebra::Symbol> symbols_;
  std::map<std::string, std::vector<Definition>> definitions_;
};

/// How working things out ended.
struct Worked {
  algebra::Bindings values;
  std::map<std::string, std::set<std::string>> origins;       ///< of each value: the given symbols that it rests on
  std::optional<algebra::Symbol> contradiction;               ///< no positive value of this symbol fits
  std::map<std::string, std::vector<exact::Number>> choices;  ///< symbols with several values that fit
};
/// Works out all that follows from `start`. Conditions choose among several values where they can.
[[nodiscard]] Worked worked_out(const Relations& relations, Worked start);

/// Whether a condition holds; nothing while a symbol of it is unknown.
[[nodiscard]] std::optional<bool> holds(const Condition& condition, const algebra::Bindings& values);
/// The first condition that fails, those with a subject in `subjects` first; null if none.
[[nodiscard]] const Condition* failed_condition(const SolidStatement& statement, const algebra::Bindings& values,
                                                const std::set<std::string>& subjects);
/// The first relation with every symbol known whose two sides differ; null if none.
[[nodiscard]] const Relation* broken_relation(const SolidStatement& statement, const algebra::Bindings& values);

}  // namespace fw::solids
