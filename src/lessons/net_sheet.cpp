#include "lessons/net_sheet.hpp"

namespace fw::lessons {

geometry::Polygon shape_of(const PieceEntry& piece, const solids::Solid& solid) {
  if (piece.face) {
    return solid.body().flat(*piece.face).outline;
  }
  const auto unit = units::Unit::find(piece.unit);
  const double factor = unit ? units::conversion(*unit, solid.unit()).to_double() : 1;
  geometry::Polygon shape;
  for (const solids::PointEntry& corner : piece.corners) {
    shape.emplace_back(corner.x.value.to_double() * factor, corner.y.value.to_double() * factor);
  }
  return shape;
}

}  // namespace fw::lessons
