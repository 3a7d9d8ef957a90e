#pragma once

#include "solids/parts.hpp"

// Parts that several kinds of solid share; private to the room.
namespace fw::solids {

using StatedSolid = Result<SolidStatement, std::vector<Fault>>;

/// The names of a solid of a family ("prism", "pyramid") that stands on this base.
void name_after_base(SolidStatement& statement, const ShapeStatement& base, const std::string& family,
                     const std::vector<std::string>& special_names);

/// Between two congruent bases, the lateral faces upright on them.
[[nodiscard]] Traits upright_traits();

/// A box l × w × h round the origin of the plane, its base at z = 0; a cube is a box with one symbol.
/// Faces: bottom, top, front, back, left, right.
struct BoxSymbols {
  algebra::Symbol length, width, height;
  std::string length_title, width_title, height_title;
  bool has_bases = true;
};
[[nodiscard]] SolidBody box_body(const BoxSymbols& symbols, const algebra::Bindings& bindings);

/// Direction along which a right-angle mark opens at the foot of a height: square to the height, in the
/// plane with the unit normal `normal`, on the side where `toward` lies.
[[nodiscard]] geometry::Vec3 opening(geometry::Vec3 from, geometry::Vec3 foot, geometry::Vec3 normal,
                                     geometry::Vec3 toward);

/// Whether the net with these hinges can be cut from card.
[[nodiscard]] bool net_lies_flat(const SolidBody& body, const std::vector<std::pair<std::size_t, std::size_t>>& hinges);
/// `classic_hinges` where that net does not overlap. Otherwise the first net that does not of these: the lateral faces
/// in a row, cut open anywhere, with all end faces on any one of them or one at each end. `ends` faces come first,
/// then `count` lateral ones in a ring.
void choose_net(SolidBody& body, std::size_t ends, std::size_t count);

}  // namespace fw::solids
