#pragma once

#include <limits>
#include <memory>

#include "solids/labels/consistency.hpp"

// What the sources of Consistency share; private to them.
namespace fw::solids {

/// Doubles that differ by less are the same number.
inline constexpr double same = 1e-9;

/// One step of a plan: an equation of the statement, one put together for the purpose, or the coordinates.
struct Consistency::Way {
  std::size_t slot = 0;
  const RoughEquation* equation = nullptr;
  std::shared_ptr<const RoughEquation> own;
  const Derivation* derivation = nullptr;
};

struct Consistency::Plan {
  std::vector<std::size_t> basis, extras;
  std::vector<Way> ways;
  std::vector<SymbolSet> origins;  ///< by slot
  SymbolSet known;                 ///< what the ways lead to, and the basis
  SymbolSet by_coordinates;        ///< what only coordinates would tell, left aside
  bool is_loose = false;           ///< it takes an area or a volume as written before the lengths
};

/// The best reading of the values that the steps leave.
struct Consistency::Outcome {
  std::vector<double> values;
  double penalty = std::numeric_limits<double>::infinity();
  std::optional<std::size_t> stopped_at;
  std::optional<std::size_t> branched_at;
  std::vector<double> fits_at_branch;
  std::vector<std::vector<double>> readings;  ///< beside them: all values
  [[nodiscard]] bool fits() const { return penalty < 1e-5; }
};

/// A plan that did not fit.
struct Consistency::Tried {
  Plan plan;
  Outcome outcome;
  std::vector<std::size_t> broken_basis;  ///< what seemed to fix the figure and does so more than once
};

/// How far the extras go where the basis varies.
struct Consistency::Reached {
  std::vector<double> least, most;  ///< by label
  bool exists = false;              ///< some figure does
  bool stops_short = false;         ///< some do not
  bool branches = false;            ///< corners may lie on different branches
};

}  // namespace fw::solids
