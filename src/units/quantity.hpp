#pragma once

#include <string>

#include "exact/number.hpp"
#include "exact/print_number.hpp"
#include "exact/written.hpp"
#include "units/unit.hpp"

namespace fw::units {

struct Dimension {
  int length = 0;
  friend constexpr bool operator==(const Dimension&, const Dimension&) = default;
};

/// An exact amount of a unit whose dimension is in the type: a length cannot be added to an area.
template <Dimension D>
class Quantity {
 public:
  /// Requires: unit.dimension() == D.length.
  [[nodiscard]] static Quantity of(exact::Number amount, Unit unit);
  [[nodiscard]] const exact::Number& amount() const { return amount_; }
  [[nodiscard]] const Unit& unit() const { return unit_; }
  /// The same quantity in another unit. Requires: unit().converts_to(unit).
  [[nodiscard]] Quantity in(Unit unit) const;

 private:
  Quantity(exact::Number amount, Unit unit) : amount_(std::move(amount)), unit_(unit) {}
  exact::Number amount_;
  Unit unit_;
};

using Length = Quantity<Dimension{1}>;
using Area = Quantity<Dimension{2}>;
using Volume = Quantity<Dimension{3}>;

/// Requires: b's unit converts to a's; the result is in a's unit.
template <Dimension D>
[[nodiscard]] Quantity<D> operator+(const Quantity<D>& a, const Quantity<D>& b);
template <Dimension D>
[[nodiscard]] Quantity<D> operator-(const Quantity<D>& a, const Quantity<D>& b);
/// Requires: neither unit is a capacity; the result is in the unit built on a's length unit.
template <Dimension A, Dimension B>
[[nodiscard]] Quantity<Dimension{A.length + B.length}> operator*(const Quantity<A>& a, const Quantity<B>& b);
template <Dimension D>
[[nodiscard]] bool operator==(const Quantity<D>& a, const Quantity<D>& b);

/// "49.5 cm²", or "≈ 20.65 cm²" when the amount does not end within `places` decimals.
template <Dimension D>
[[nodiscard]] std::string text(const Quantity<D>& a, int places);

/// The factor from one unit to another of the same dimension: amount_to = amount_from * factor.
[[nodiscard]] exact::Number conversion(const Unit& from, const Unit& to);

/// A quantity as written, of any dimension: "7 1/2 ft", "180 ft^3", "3 ft 6 in" (lengths), "12".
struct WrittenQuantity {
  exact::Written number;
  Unit unit = Unit::none();
  bool has_unit = false;
  std::string text;  ///< the whole text as written
  friend bool operator==(const WrittenQuantity& a, const WrittenQuantity& b) { return a.text == b.text; }
};

/// Errors: no number, an unknown unit (with the nearest known one), a second quantity that is not a
/// smaller length unit.
[[nodiscard]] Result<WrittenQuantity, exact::NumberError> parse_quantity(std::string_view text);

/// The lengths that a written length may stand for in `unit`, as (lowest, value, highest).
struct Interval {
  exact::Number lowest;
  exact::Number value;
  exact::Number highest;
};
/// Requires: written.unit converts to unit.
[[nodiscard]] Interval interval_in(const WrittenQuantity& written, const Unit& unit);

}  // namespace fw::units
