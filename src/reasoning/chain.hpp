#pragma once

#include <set>
#include <string>
#include <vector>

#include "solids/statement.hpp"

// From what is given to what is asked, over the relations of a solid; private to the room.
namespace fw::reasoning {

/// A formula put in for a letter.
struct Substitution {
  algebra::Symbol symbol;
  algebra::Expression value;
  words::Message reason;
};

/// One formula of a chain, in which all but one letter is known by then.
struct Link {
  algebra::Symbol unknown;
  algebra::Equation relation;                      ///< as the solid states it
  words::Message reason;                           ///< why it holds
  std::vector<Substitution> substitutions;         ///< one for each letter replaced; usually none
  const solids::Derivation* derivation = nullptr;  ///< set: the value comes from the coordinates of the base
};

/// The substitutions one after another; one that is needed again stands again.
[[nodiscard]] std::vector<Substitution> in_turn(const Link& link);
/// The relation with its substitutions made.
[[nodiscard]] algebra::Equation composed(const Link& link);

/// Why it holds, with the numbers of the solid (all `values`) where its coordinates tell them: "Find …", without an end
/// stop.
[[nodiscard]] words::Message reason_on(const Link& link, const algebra::Bindings& values);

/// The formulas to use, in order, for all of `wanted`: the shortest chain, usual ones first. A formula that stands
/// solved for its letter costs less than one that must be solved, a root more, and a letter in several places still
/// more. Empty where nothing leads to one of them. Cost: a few passes over the relations.
[[nodiscard]] std::vector<Link> chain(const solids::SolidStatement& statement, const std::set<std::string>& known,
                                      const std::vector<algebra::Symbol>& wanted);

}  // namespace fw::reasoning
