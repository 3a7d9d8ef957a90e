#pragma once

#include "nets/hinge_tree.hpp"
#include "solids/statement_parts.hpp"

// Parts that several kinds of solid share; private to the room.
namespace fw::solids {

using HingePairs = std::vector<std::pair<std::size_t, std::size_t>>;  ///< faces, as BodyStatement numbers them
using StatedSolid = Result<SolidStatement, std::vector<Fault>>;

/// The names of a solid of a family ("prism", "pyramid") that stands on this base.
void name_after_base(SolidStatement& statement, const ShapeStatement& base, const std::string& family,
                     const std::vector<std::string>& special_names);
/// The special name of these measures: "cube". What it was called until now is right as well.
void call_it(SolidStatement& statement, const std::string& name);

/// Between two congruent bases, the lateral faces upright on them.
[[nodiscard]] Traits upright_traits();

/// A box l × w × h round the origin of the plane, its base at z = 0; a cube is a box with one symbol.
/// Faces: bottom, top, front, back, left, right.
struct BoxSymbols {
  algebra::Symbol length, width, height;
  std::string length_title, width_title, height_title;
  bool has_bases = true;
};
[[nodiscard]] BodyStatement box_body(const BoxSymbols& symbols, const algebra::Bindings& bindings);

/// Direction along which a right-angle mark opens at the foot of a height: square to the height, in the
/// plane with the unit normal `normal`, on the side where `toward` lies.
[[nodiscard]] geometry::Vec3 opening(geometry::Vec3 from, geometry::Vec3 foot, geometry::Vec3 normal,
                                     geometry::Vec3 toward);

/// Nothing where the stated faces do not close.
[[nodiscard]] std::optional<geometry::Polyhedron> polyhedron_of(const BodyStatement& body);
/// The net with these hinges, standing on the body's table face; nothing where they are no tree of all faces.
[[nodiscard]] std::optional<nets::HingeTree> net_of(const BodyStatement& body, const geometry::Polyhedron& polyhedron,
                                                    const HingePairs& hinges);
/// Whether the net with these hinges can be cut from card.
[[nodiscard]] bool net_lies_flat(const BodyStatement& body, const HingePairs& hinges);
/// `classic_hinges` where that net does not overlap. Otherwise the first net that does not of these: the lateral faces
/// in a row, cut open anywhere, with all end faces on any one of them or one at each end. `ends` faces come first,
/// then `count` lateral ones in a ring.
void choose_net(BodyStatement& body, std::size_t ends, std::size_t count);

}  // namespace fw::solids
