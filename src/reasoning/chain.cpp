#include "reasoning/chain.hpp"

#include <algorithm>
#include <map>
#include <optional>

#include "algebra/isolate.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;

// What a formula costs a class; only their order matters (common practice, no source).
namespace cost {
constexpr double direct = 10;        // it stands solved for its letter
constexpr double linear = 14;        // one sum or product to undo
constexpr double root = 18;          // a square or cube to undo
constexpr double collected = 20;     // the letter stands in several terms, as itself or squared
constexpr double no_formula = 90;    // only by trying
constexpr double derivation = 30;    // from coordinates
constexpr double substitution = 12;  // a formula put into another
constexpr double later = 0.01;       // for each relation that stands before
}  // namespace cost

std::vector<Symbol> unknown_in(const Equation& equation, const std::set<std::string>& known) {
  std::vector<Symbol> symbols = algebra::symbols_of(equation);
  symbols.erase(std::remove_if(symbols.begin(), symbols.end(),
                               [&](const Symbol& symbol) { return known.count(symbol.name) != 0; }),
                symbols.end());
  return symbols;
}

bool stands_under_power(const Expression& expression, const Symbol& symbol) {
  if (expression.operation() == Operation::Power || expression.operation() == Operation::Root) {
    return algebra::occurrences(expression, symbol) > 0;
  }
  return std::any_of(expression.operands().begin(), expression.operands().end(),
                     [&](const Expression& operand) { return stands_under_power(operand, symbol); });
}

double cost_of(const Equation& equation, const Symbol& unknown) {
  const bool is_left = equation.left.operation() == Operation::Symbol && equation.left.symbol() == unknown;
  const Expression all = equation.left - equation.right;
  const std::size_t times = algebra::occurrences(all, unknown);
  if (is_left && times == 1) {
    return cost::direct;
  }
  if (times == 1) {
    return stands_under_power(all, unknown) ? cost::root : cost::linear;
  }
  return algebra::stands_under_root(all, unknown) ? cost::no_formula : cost::collected;
}

class Search {
 public:
  Search(const solids::SolidStatement& statement, const std::set<std::string>& known)
      : statement_(&statement), known_(known) {}

  [[nodiscard]] std::vector<Link> to(const std::vector<Symbol>& wanted) {
    while (!has_all(wanted)) {
      std::optional<Candidate> next = cheapest_direct();
      for (const bool solves_for_any : {false, true}) {
        next = next ? next : cheapest_composed(solves_for_any);
      }
      if (!next) {
        return {};
      }
      settle(*next);
    }
    return in_order(wanted);
  }

 private:
  struct Candidate {
    Link link;
    std::set<std::size_t> uses;  // links that it rests on
    double cost = 0;             // of itself and all that it rests on
  };

  [[nodiscard]] bool has_all(const std::vector<Symbol>& wanted) const {
    return std::all_of(wanted.begin(), wanted.end(), [&](const Symbol& s) { return known_.count(s.name) != 0; });
  }

  void weigh(Candidate& candidate, const std::vector<Symbol>& inputs, double own) const {
    candidate.cost = own;
    for (const Symbol& input : inputs) {
      const auto found = settled_by_.find(input.name);
      if (found != settled_by_.end()) {
        const std::set<std::size_t>& below = rests_on_.at(found->second);
        candidate.uses.insert(below.begin(), below.end());
        candidate.uses.insert(found->second);
      }
    }
    for (const std::size_t used : candidate.uses) {
      candidate.cost += own_costs_[used];
    }
  }

  static void keep_cheaper(std::optional<Candidate>& best, Candidate candidate) {
    if (!best || candidate.cost < best->cost) {
      best = std::move(candidate);
    }
  }

  [[nodiscard]] std::optional<Candidate> cheapest_direct() const {
    std::optional<Candidate> best;
    for (std::size_t i = 0; i < statement_->relations.size(); ++i) {
      const solids::Relation& relation = statement_->relations[i];
      const std::vector<Symbol> unknown = unknown_in(relation.equation, known_);
      if (unknown.size() != 1) {
        continue;
      }
      Candidate candidate{{unknown[0], relation.equation, relation.reason, {}, nullptr}, {}, 0};
      weigh(candidate, algebra::symbols_of(relation.equation),
            cost_of(relation.equation, unknown[0]) + cost::later * static_cast<double>(i));
      keep_cheaper(best, candidate);
    }
    for (const solids::Derivation& derivation : statement_->derivations) {
      const bool ready = has_all(derivation.from) && known_.count(derivation.symbol.name) == 0;
      if (ready) {
        Candidate candidate{{derivation.symbol, {derivation.symbol, 0}, derivation.reason, {}, &derivation}, {}, 0};
        weigh(candidate, derivation.from, cost::derivation);
        keep_cheaper(best, candidate);
      }
    }
    return best;
  }

  // Formulas put into one another until a single letter is unknown.
  // `solves_for_any`: formulas may be solved for letters that they do not define, as t = B ÷ s from B = s · t.
  [[nodiscard]] std::optional<Candidate> cheapest_composed(bool solves_for_any) const {
    std::optional<Candidate> best;
    for (std::size_t i = 0; i < statement_->relations.size(); ++i) {
      const solids::Relation& relation = statement_->relations[i];
      const std::vector<Symbol> unknown = unknown_in(relation.equation, known_);
      if (unknown.size() == algebra::symbols_of(relation.equation).size()) {
        continue;  // nothing of it is known: only another formula would come of it
      }
      for (const Symbol& symbol : candidates_for_unknown()) {
        if (known_.count(symbol.name) != 0) {
          continue;
        }
        std::optional<Link> link = substituted(i, symbol, solves_for_any);
        if (!link) {
          continue;
        }
        const Equation equation = composed(*link);
        Candidate candidate{*link, {}, 0};
        weigh(candidate, algebra::symbols_of(equation),
              cost_of(equation, symbol) + cost::substitution * static_cast<double>(link->substitutions.size()));
        keep_cheaper(best, candidate);
      }
    }
    return best;
  }

  [[nodiscard]] std::vector<Symbol> candidates_for_unknown() const {
    std::vector<Symbol> symbols;
    for (const solids::Relation& relation : statement_->relations) {
      for (const Symbol& symbol : algebra::symbols_of(relation.equation)) {
        if (std::find(symbols.begin(), symbols.end(), symbol) == symbols.end()) {
          symbols.push_back(symbol);
        }
      }
    }
    return symbols;
  }

  // Relation `start` with formulas put in for every unknown letter but `unknown`.
  [[nodiscard]] std::optional<Link> substituted(std::size_t start, const Symbol& unknown, bool solves_for_any) const {
    const solids::Relation& relation = statement_->relations[start];
    return completed({unknown, relation.equation, relation.reason, {}, nullptr}, {start}, solves_for_any);
  }

  // `used`: the relations that are in it already. Tries one formula after another for each letter.
  [[nodiscard]] std::optional<Link> completed(const Link& link, const std::set<std::size_t>& used,
                                              bool solves_for_any) const {
    const Equation equation = composed(link);
    const std::vector<Symbol> open = unknown_in(equation, known_);
    const auto next = std::find_if(open.begin(), open.end(), [&](const Symbol& s) { return !(s == link.unknown); });
    if (next == open.end()) {
      const bool fits = open.size() == 1 && !algebra::is_vacuous(equation, link.unknown);
      return fits ? std::optional(link) : std::nullopt;
    }
    for (const Solving solving : {Solving::None, Solving::Roots, Solving::Arithmetic}) {
      if (solving == Solving::Arithmetic && !solves_for_any) {
        continue;
      }
      for (std::size_t i = 0; i < statement_->relations.size(); ++i) {
        const solids::Relation& relation = statement_->relations[i];
        const std::optional<Expression> value =
            used.count(i) != 0 ? std::nullopt : definition(relation.equation, *next, solving);
        if (!value || is_circular(*value, link, *next)) {
          continue;
        }
        Link longer = link;
        longer.substitutions.push_back({*next, *value, relation.reason});
        std::set<std::size_t> with_it = used;
        with_it.insert(i);
        if (std::optional<Link> done = completed(longer, with_it, solves_for_any)) {
          return done;
        }
      }
    }
    return std::nullopt;
  }

  // Whether a formula, with all that is put in, would speak of the letter that it stands for.
  [[nodiscard]] static bool is_circular(const Expression& value, const Link& link, const Symbol& replaced) {
    Link trial = link;
    trial.relation = {value, value};
    return algebra::occurrences(composed(trial).left, replaced) > 0;
  }

  // How a formula comes to stand solved for a letter: as it is, by a root, or without one.
  enum class Solving { None, Roots, Arithmetic };

  // y = ... of a formula in which y stands once; nothing where it comes about in another way.
  [[nodiscard]] static std::optional<Expression> definition(const Equation& equation, const Symbol& symbol,
                                                            Solving solving) {
    const Solving needed = equation.left == Expression(symbol)                          ? Solving::None
                           : stands_under_power(equation.left - equation.right, symbol) ? Solving::Roots
                                                                                        : Solving::Arithmetic;
    return needed == solving ? algebra::solved_for(equation, symbol) : std::nullopt;
  }

  void settle(const Candidate& candidate) {
    const std::size_t index = links_.size();
    double below = 0;
    for (const std::size_t used : candidate.uses) {
      below += own_costs_[used];
    }
    known_.insert(candidate.link.unknown.name);
    settled_by_[candidate.link.unknown.name] = index;
    links_.push_back(candidate.link);
    rests_on_[index] = candidate.uses;
    own_costs_.push_back(candidate.cost - below);
  }

  // What a formula needs stands right before it.
  void place(const Symbol& symbol, std::set<std::size_t>& placed, std::vector<Link>& ordered) const {
    const auto found = settled_by_.find(symbol.name);
    if (found == settled_by_.end() || !placed.insert(found->second).second) {
      return;
    }
    const Link& link = links_[found->second];
    const std::vector<Symbol> inputs =
        link.derivation != nullptr ? link.derivation->from : algebra::symbols_of(composed(link));
    for (const Symbol& input : inputs) {
      if (!(input == symbol)) {
        place(input, placed, ordered);
      }
    }
    ordered.push_back(link);
  }

  [[nodiscard]] std::vector<Link> in_order(const std::vector<Symbol>& wanted) const {
    std::set<std::size_t> placed;
    std::vector<Link> ordered;
    for (const Symbol& symbol : wanted) {
      place(symbol, placed, ordered);
    }
    return ordered;
  }

  const solids::SolidStatement* statement_;
  std::set<std::string> known_;
  std::vector<Link> links_;
  std::vector<double> own_costs_;
  std::map<std::string, std::size_t> settled_by_;
  std::map<std::size_t, std::set<std::size_t>> rests_on_;
};

}  // namespace

std::vector<Substitution> in_turn(const Link& link) {
  std::vector<Substitution> turns;
  Expression all = link.relation.left - link.relation.right;
  for (std::size_t i = 0; i < link.substitutions.size();) {
    const Substitution& one = link.substitutions[i];
    if (algebra::occurrences(all, one.symbol) == 0) {
      ++i;
      continue;
    }
    all = algebra::replaced(all, one.symbol, one.value);
    turns.push_back(one);
    i = 0;  // the formula may speak of a letter that was replaced before
  }
  return turns;
}

Equation composed(const Link& link) {
  Equation equation = link.relation;
  for (const Substitution& one : in_turn(link)) {
    equation = algebra::replaced(equation, one.symbol, one.value);
  }
  return equation;
}

std::vector<Link> chain(const solids::SolidStatement& statement, const std::set<std::string>& known,
                        const std::vector<Symbol>& wanted) {
  return Search(statement, known).to(wanted);
}

words::Message reason_on(const Link& link, const algebra::Bindings& values) {
  return link.derivation != nullptr && link.derivation->working ? link.derivation->working(values) : link.reason;
}

}  // namespace fw::reasoning
