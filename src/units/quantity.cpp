#include "units/quantity.hpp"

#include "base/ensure.hpp"

namespace fw::units {

using exact::Number;

exact::Number conversion(const Unit& from, const Unit& to) {
  ensure(from.converts_to(to), "a quantity was to be converted to a unit of another kind");
  return from == to ? Number::whole(1) : from.factor() / to.factor();
}

template <Dimension D>
Quantity<D> Quantity<D>::of(exact::Number amount, Unit unit) {
  ensure(unit.dimension() == D.length, "a quantity was made with a unit of another dimension");
  return Quantity(std::move(amount), unit);
}

template <Dimension D>
Quantity<D> Quantity<D>::in(Unit unit) const {
  return unit == unit_ ? *this : Quantity(amount_ * conversion(unit_, unit), unit);
}

template <Dimension D>
Quantity<D> operator+(const Quantity<D>& a, const Quantity<D>& b) {
  return Quantity<D>::of(a.amount() + b.in(a.unit()).amount(), a.unit());
}

template <Dimension D>
Quantity<D> operator-(const Quantity<D>& a, const Quantity<D>& b) {
  return Quantity<D>::of(a.amount() - b.in(a.unit()).amount(), a.unit());
}

template <Dimension A, Dimension B>
Quantity<Dimension{A.length + B.length}> operator*(const Quantity<A>& a, const Quantity<B>& b) {
  const std::optional<Unit> unit = a.unit().root();
  const bool lengths = unit.has_value() && b.unit().root().has_value();
  ensure(lengths, "a capacity was multiplied by a length or an area");
  const Quantity<B> other = b.in(unit->to_the(B.length));
  return Quantity<Dimension{A.length + B.length}>::of(a.amount() * other.amount(), unit->to_the(A.length + B.length));
}

template <Dimension D>
bool operator==(const Quantity<D>& a, const Quantity<D>& b) {
  return a.unit().converts_to(b.unit()) && a.amount() == b.in(a.unit()).amount();
}

template <Dimension D>
std::string text(const Quantity<D>& a, int places) {
  const exact::Shown shown = exact::shown(a.amount(), places);
  return (shown.exact ? "" : "≈ ") + shown.text + " " + a.unit().text();
}

template class Quantity<Dimension{1}>;
template class Quantity<Dimension{2}>;
template class Quantity<Dimension{3}>;

template Length operator+(const Length&, const Length&);
template Area operator+(const Area&, const Area&);
template Volume operator+(const Volume&, const Volume&);
template Length operator-(const Length&, const Length&);
template Area operator-(const Area&, const Area&);
template Volume operator-(const Volume&, const Volume&);
template Area operator*(const Length&, const Length&);
template Volume operator*(const Length&, const Area&);
template Volume operator*(const Area&, const Length&);
template bool operator==(const Length&, const Length&);
template bool operator==(const Area&, const Area&);
template bool operator==(const Volume&, const Volume&);
template std::string text(const Length&, int);
template std::string text(const Area&, int);
template std::string text(const Volume&, int);

Interval interval_in(const WrittenQuantity& written, const Unit& unit) {
  const Number factor = written.has_unit ? conversion(written.unit, unit) : Number::whole(1);
  return {written.number.lowest() * factor, written.number.value * factor, written.number.highest() * factor};
}

}  // namespace fw::units
