#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "solids/givens.hpp"
#include "solids/propagation.hpp"

// Whether written measures fit together, decided in doubles; private to the room.
namespace fw::solids {

/// What the written measures say together.
struct Verdict {
  enum class Answer {
    Fits,         ///< the basis as it is written, each other label within the rounding of its own last digit
    FitsLoosely,  ///< only when every label that may be a rounded number is taken for one
    Impossible,
  };
  Answer answer = Answer::Fits;
  std::vector<std::size_t> basis;     ///< givens that are taken as they are written
  std::vector<std::size_t> extras;    ///< givens that follow from those
  std::vector<double> values;         ///< by the symbol's slot; NaN where open, or where only coordinates tell
  std::vector<SymbolSet> origins;     ///< by slot: the symbols of the basis that the value rests on
  std::optional<std::size_t> choice;  ///< a slot for which several values fit
  std::vector<double> choices;

  // Of what is impossible.
  const Condition* failed = nullptr;         ///< what must hold and does not
  std::optional<std::size_t> contradiction;  ///< a slot that has no value
  std::optional<std::size_t> misfit;         ///< the first extra that is not what follows from the basis
};

/// Judges the written measures of one figure. Keeps references to both.
///
/// Decimals may be rounded: 2.6 stands for 2.55 to 2.65. Whole numbers and fractions are exact, unless the figure says
/// that its whole numbers are rounded too (7-7-7 with a height of 6).
class Consistency {
 public:
  Consistency(const Relations& relations, const std::vector<Given>& givens);

  /// Whether labels that follow from the others are compared one after another, so that a right figure is never
  /// refused, or must all fit at once in one figure.
  enum class Judging { OneByOne, Together };
  [[nodiscard]] Verdict verdict(Judging judging = Judging::OneByOne) const;

  /// A label whose change alone makes the figure possible, with a value that does.
  struct Remedy {
    std::size_t given = 0;
    double value = 0;      ///< in the working unit, at a precision that can be written
    int places = 0;        ///< of the value in the unit in which the label is written
    bool follows = false;  ///< the other labels fix it
    Verdict others;        ///< of the labels without this one; its extras count without it
  };
  /// Nothing where changing one label is not enough. `first`: the label to try before the others.
  [[nodiscard]] std::optional<Remedy> remedy(std::optional<std::size_t> first) const;

 private:
  struct Label {
    std::size_t slot = 0;
    double value = 0;
    double half = 0;  ///< Given::half_unit()
    bool is_known = false;
  };
  struct Rule {
    RoughExpression greater, less;
    const Condition* condition;
  };
  /// In which order the labels are taken as they are written.
  struct Order {
    std::vector<std::size_t> givens;
    bool is_loose = false;  ///< areas or volumes before lengths
  };
  struct Way;
  struct Plan;
  struct Outcome;
  struct Tried;
  struct Reached;

  [[nodiscard]] std::vector<std::size_t> ranked(const std::function<int(std::size_t)>& rank) const;
  [[nodiscard]] std::vector<Order> further_orders() const;
  [[nodiscard]] Plan planned(const Order& order, Reach reach) const;
  void extend(Plan& plan, Reach reach) const;
  [[nodiscard]] std::optional<Tried> tried_in(const Order& order, const std::vector<Tried>& before) const;
  [[nodiscard]] std::optional<Verdict> fitting_loosely(const std::vector<Tried>& tried, Judging judging) const;
  [[nodiscard]] std::vector<double> values_as_written() const;
  [[nodiscard]] Outcome outcome(const Plan& plan, const std::vector<double>& label_values) const;
  bool all_bound(const std::vector<algebra::Symbol>& symbols, const std::vector<double>& values,
                 algebra::Bindings& bound) const;
  void follow(const Plan& plan, std::size_t step, std::vector<double> values, Outcome& best) const;
  void consider(const Plan& plan, const std::vector<double>& values, std::optional<std::size_t> stopped_at,
                Outcome& best) const;
  [[nodiscard]] const Condition* failed_condition(const std::vector<double>& values) const;
  [[nodiscard]] bool is_broken(const std::vector<double>& values) const;
  /// Possible: some of the corners are no figures, or they lie on different branches of a quadratic, so that they do
  /// not tell how far the values go.
  enum class Meeting { None, Possible, Sure };
  [[nodiscard]] bool is_far_off(const Plan& plan, const std::vector<std::size_t>& varied,
                                const std::vector<double>& middle, const std::vector<double>& at_middle) const;
  void note(const Plan& plan, const std::vector<double>& label_values, Reached& all) const;
  [[nodiscard]] Meeting meets_when_all_are_rounded(const Plan& plan) const;
  [[nodiscard]] std::optional<std::vector<double>> found_within_rounding(const Plan& plan) const;
  [[nodiscard]] Verdict told(const Plan& plan, const Outcome& outcome, Verdict::Answer answer) const;
  [[nodiscard]] std::vector<std::size_t> blame_order(std::optional<std::size_t> first) const;
  [[nodiscard]] bool fits_with(std::size_t index, double value, int places) const;
  [[nodiscard]] std::optional<Remedy> searched(std::size_t index) const;
  [[nodiscard]] std::optional<Remedy> written(std::size_t index, double value) const;

  const Relations& relations_;
  const std::vector<Given>& givens_;
  std::vector<Label> labels_;
  std::vector<Rule> rules_;
  bool gives_the_whole_ = false;  ///< an area or volume is among the labels
};

}  // namespace fw::solids
