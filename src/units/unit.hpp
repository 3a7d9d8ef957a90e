#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "exact/number.hpp"

namespace fw::units {

/// A unit of length, area, volume or capacity: a row of the one table. Compared by identity.
/// `none` (shown as "units", "square units", "cubic units") serves figures without a unit.
class Unit {
 public:
  [[nodiscard]] const std::string& text() const;   ///< "cm", "cm²", "gal"
  [[nodiscard]] const std::string& ascii() const;  ///< "cm", "cm^2", "gal"
  [[nodiscard]] const std::string& name() const;   ///< "centimeter", "square centimeter", "gallon"
  [[nodiscard]] int dimension() const;             ///< 1 length, 2 area, 3 volume and capacity
  [[nodiscard]] bool is_capacity() const;          ///< liters, gallons: volume by another name
  /// Exact size in meters, square meters or cubic meters (1 for units without a name).
  [[nodiscard]] const exact::Number& factor() const;
  /// The area or volume unit built on this length unit, or the length unit itself.
  /// Requires: this is a length unit; 1 <= dimension <= 3.
  [[nodiscard]] Unit to_the(int dimension) const;
  /// The length unit that an area or volume unit is built on; nothing for capacities.
  [[nodiscard]] std::optional<Unit> root() const;
  /// Whether a quantity in this unit can be converted to the other one.
  [[nodiscard]] bool converts_to(const Unit& other) const;
  friend bool operator==(const Unit&, const Unit&) = default;

  /// Reads "cm", "cm2", "cm^2", "cm²", "sq cm", "square centimeters", "cubic ft", "cu. cm", "L", "liters", ...
  [[nodiscard]] static std::optional<Unit> find(std::string_view text);
  [[nodiscard]] static Unit none();  ///< length without a unit
  [[nodiscard]] static Unit centimeter();
  [[nodiscard]] static const std::vector<Unit>& lengths();  ///< mm cm dm m km in ft yd mi, in this order

 private:
  explicit Unit(std::size_t row) : row_(row) {}
  std::size_t row_;
};

}  // namespace fw::units
