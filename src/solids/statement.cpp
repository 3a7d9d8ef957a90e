#include "solids/statement.hpp"

namespace fw::solids::symbols {

const algebra::Symbol& surface_area() {
  static const algebra::Symbol symbol{"surface_area", "S", 2};
  return symbol;
}
const algebra::Symbol& lateral_area() {
  static const algebra::Symbol symbol{"lateral_area", "L", 2};
  return symbol;
}
const algebra::Symbol& base_area() {
  static const algebra::Symbol symbol{"base_area", "B", 2};
  return symbol;
}
const algebra::Symbol& volume() {
  static const algebra::Symbol symbol{"volume", "V", 3};
  return symbol;
}
const algebra::Symbol& perimeter() {
  static const algebra::Symbol symbol{"perimeter", "P", 1};
  return symbol;
}

}  // namespace fw::solids::symbols
