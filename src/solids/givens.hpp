#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solids/solid.hpp"
#include "solids/statement_parts.hpp"

// What a lesson writes, as numbers in one unit; private to the room.
namespace fw::solids {

/// A measure that is written, in the working unit.
struct Given {
  algebra::Symbol symbol;
  std::string title;    ///< "slant height"
  std::string key;      ///< of its field: "slant_height", "sides"
  std::string field;    ///< "base.sides": of all that are given in one list
  std::string measure;  ///< for a fault: "base.sides.2"
  exact::Number value;
  int places = 0;
  bool is_fraction = false;  ///< not rounded: stands for itself alone
  bool is_rounded = false;   ///< the figure says that its whole numbers are rounded too
  bool may_be_zero = false;
  bool is_known = false;                   ///< a quantity of the whole (S, L, B, V)
  units::Unit unit = units::Unit::none();  ///< as written
  exact::Number to_written;                ///< factor from the working unit to the written one

  /// How far the number that was rounded may lie from `value`, in the working unit: half a unit of the last decimal,
  /// nothing for a fraction, nor for a whole number unless it `is_rounded`.
  [[nodiscard]] exact::Number half_unit() const;
};

/// The unit of the first length that is written, or of the known quantities, or centimeters. Inches in place of feet
/// where a length comes to no short decimal of a foot, such as 2 ft 7 in.
[[nodiscard]] units::Unit working_unit(const Description& description, const Known& known);

/// Faults of the form: an unknown kind, shape or field, a field of another form, a list of another size, a
/// unit that is none of length, units on some lengths only.
[[nodiscard]] std::vector<Fault> form_faults(const Description& description, const Known& known);

/// Every length in `unit`, exactly; the texts stay as written and only the values are for use.
[[nodiscard]] Description with_values_in(const Description& description, const units::Unit& unit);

/// The written measures of the statement and the known quantities, in the order of the measures.
[[nodiscard]] std::vector<Given> givens(const SolidStatement& statement, const Description& description,
                                        const Known& known, const units::Unit& unit);

/// "surface area" for "surface_area"; empty for what cannot be known.
[[nodiscard]] std::string known_title(const std::string& key);

/// "3 cm", "about 10.39 cm": a value of the dimension in the working unit, with at most `places` decimals.
[[nodiscard]] words::Message value_words(const exact::Number& value, int dimension, const units::Unit& unit,
                                         int places);

}  // namespace fw::solids
