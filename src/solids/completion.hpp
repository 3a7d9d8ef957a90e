#pragma once

#include <vector>

#include "solids/givens.hpp"
#include "solids/labels/consistency.hpp"
#include "solids/propagation.hpp"

// All measures of a solid from the written ones; private to the room.
namespace fw::solids {

struct Completed {
  algebra::Bindings exact;     ///< as they fit together: for coordinates
  algebra::Bindings used;      ///< each label as it is written: for areas and volumes
  std::vector<Fault> remarks;  ///< labels that fit only by rounding
};

/// Errors: measures that are no lengths, that contradict each other, or are too few.
[[nodiscard]] Result<Completed, std::vector<Fault>> completed(const SolidStatement& statement,
                                                              const std::vector<Given>& givens,
                                                              const units::Unit& unit);

/// How working things out ended.
struct Worked {
  algebra::Bindings values;
  std::optional<algebra::Symbol> contradiction;               ///< no positive value of this symbol fits
  std::map<std::string, std::vector<exact::Number>> choices;  ///< symbols with several values that fit
};

// Sentences about what cannot be (fault_sentences.cpp).

/// A value that a label could have instead.
struct Replacement {
  std::size_t given = 0;
  exact::Number value;  ///< in the unit in which the label is written
  int places = 0;
};

/// "with sides 5 cm, 5 cm and 8 cm the height is 3 cm, not 4 cm". `among`: the givens that the value rests on.
[[nodiscard]] Fault disagreement(const Given& given, const exact::Number& fitting, const std::vector<Given>& givens,
                                 const std::set<std::string>& among, const std::optional<Replacement>& replacement);
/// The same as a remark: the label fits only as a rounded number. `loosely`: only if the others are rounded too.
[[nodiscard]] Fault rounding_remark(const Given& given, const exact::Number& fitting, const std::vector<Given>& givens,
                                    const std::set<std::string>& among, bool loosely);
/// The condition's sentence with its bound and what would do.
[[nodiscard]] Fault broken_condition(const Condition& condition, const algebra::Bindings& values,
                                     const std::vector<Given>& givens, const units::Unit& unit,
                                     const std::optional<Replacement>& replacement);
/// "the height or the slant height is needed".
[[nodiscard]] Fault missing_measures(const Relations& relations, const Worked& worked, const units::Unit& unit);
/// Measures that leave no value for `unknown`.
[[nodiscard]] Fault contradiction(const algebra::Symbol& unknown, const SolidStatement& statement,
                                  const std::vector<Given>& givens, const std::optional<Replacement>& replacement);
/// A length that is not more than 0.
[[nodiscard]] Fault not_positive(const Given& given);

}  // namespace fw::solids
