#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "algebra/expression.hpp"
#include "geometry/polyhedron.hpp"
#include "solids/description.hpp"
#include "words/message.hpp"

namespace fw::solids {

/// A length, area or volume that a kind speaks of.
struct Measure {
  algebra::Symbol symbol;
  std::string title;         ///< "slant height"
  std::string key;           ///< the lesson field that gives it, "slant_height"; empty when only worked out
  std::size_t item = 0;      ///< which item of a Lengths field
  bool in_base = false;      ///< a field of the base shape
  bool may_be_zero = false;  ///< a distance that may vanish, as of an apex over a corner
};

struct Relation {
  algebra::Equation equation;
  words::Message reason;  ///< in a student's words: "the four triangles are alike"
};

/// A measure that no formula of school gives, worked out from the coordinates of the base.
struct Derivation {
  algebra::Symbol symbol;
  std::vector<algebra::Symbol> from;  ///< what must be known first
  std::function<std::optional<exact::Number>(const algebra::Bindings&)> value;
  words::Message reason;
  std::function<words::Message(const algebra::Bindings&)>
      working;  ///< the same with its numbers; empty: nothing to add
};

/// What must hold for the figure to exist: greater > less.
struct Condition {
  algebra::Expression greater;
  algebra::Expression less;
  std::string subject;        ///< name of the symbol to be mended: "slant_height"
  words::Message sentence;    ///< "the slant height must be longer than half the base edge"
  bool may_be_equal = false;  ///< greater >= less is enough
};

/// A point of a base shape's plane, in exact coordinates.
struct ExactPoint {
  exact::Number x, y;
};

/// A length drawn in a shape: from one point to another, with a right-angle mark at `to` when it is a height.
struct ShapeLength {
  algebra::Symbol symbol;
  std::string title;  ///< "height of the triangle"
  ExactPoint from, to;
  bool is_height = false;     ///< drawn across the shape, dashed, with a right-angle mark where it meets `to`
  bool square_at_to = false;  ///< a side that meets another one at a right angle at `to`, marked so
};

/// A base shape with all its measures known.
struct ShapeBody {
  std::vector<ExactPoint> corners;     ///< counterclockwise
  std::vector<algebra::Symbol> sides;  ///< the symbol of side i, from corner i to i + 1
  std::vector<ShapeLength> lengths;    ///< the lengths that `area` speaks of, each where it is drawn
  bool ran_clockwise = false;          ///< in the lesson, where side 0 runs from corner 1 to corner 0
};

/// What a base shape states: one file in solids/base_shapes/ a shape.
struct ShapeStatement {
  std::string noun;       ///< of the face: "square", "hexagon"
  std::string adjective;  ///< of the solid: "square", "hexagonal"
  std::vector<std::string> other_adjectives;
  bool is_regular = false;  ///< all sides and angles equal: one slant height serves a pyramid
  bool is_convex = true;    ///< no corner points inward
  std::vector<std::string> prism_names, pyramid_names;  ///< more names of the solids that stand on it: "tetrahedron"
  std::vector<words::Message> assumptions;              ///< what is drawn so though the lesson leaves it open
  std::vector<algebra::Symbol> sides;                   ///< the symbol of side i, as in ShapeBody
  std::vector<Measure> measures;
  std::vector<Relation> relations;  ///< among the measures, P (perimeter) and B (area)
  std::vector<Condition> conditions;
  algebra::Expression area = 0;  ///< as it is worked: b × t ÷ 2
  /// Distance of each side from the centroid, where school knows a formula for it; else empty.
  std::vector<algebra::Expression> centroid_distances;
  std::vector<words::Message> centroid_distance_names;  ///< beside them: "half the base edge"
  /// Square of the distance from the centroid to a corner, where all corners are equally far.
  std::optional<algebra::Expression> corner_distance_squared;
  /// Requires: every measure is bound and every condition holds.
  std::function<ShapeBody(const algebra::Bindings&)> body;
};

enum class FaceRole { Base, Lateral, Face };  ///< Face: of a solid where no face is singled out

/// What a kind states of the build of all its solids. The rooms above go by this and count no faces, so that a new kind
/// brings the mistakes and sentences that fit it. A test holds each trait to the geometry of every example.
struct Traits {
  bool has_base = false;              ///< the first face is a base, and those that stand on it are lateral faces
  bool has_second_base = false;       ///< another base lies opposite, parallel to the first
  bool bases_match = false;           ///< the two are congruent, as is each cut between them: V = B × h
  bool sides_make_rectangle = false;  ///< side by side, the lateral faces make one rectangle round the base: L = P × h
  bool has_apex = false;              ///< the lateral faces meet in one point: V = B × h ÷ 3
  bool is_all_alike = false;          ///< all faces are congruent, and none is singled out
  bool has_round_base = false;        ///< the base is a circle, and one lateral face bends round it
  /// Length, width and height of a box that has a name for each.
  std::optional<std::array<algebra::Symbol, 3>> box_edges = std::nullopt;
};

enum class MarkPlace { Edge, OnFace, Inside };
/// A length with its label, at the place where a textbook writes it.
struct Mark {
  algebra::Symbol symbol;
  std::string title;
  MarkPlace place = MarkPlace::Edge;
  geometry::Vec3 from{}, to{};  ///< a height meets what it is square to at `to`
  geometry::Vec3 square_to{};   ///< direction along which the right-angle mark opens at `to`; zero: none
  std::optional<std::size_t> face = std::nullopt;  ///< of an OnFace mark
};

/// A length of one face, as it lies in the solid; of a face that bends, as it lies unrolled (Body::flat).
struct FaceLengthPlace {
  algebra::Symbol symbol;
  std::string title;
  geometry::Vec3 from{}, to{};
  bool is_height = false;  ///< drawn across the face, with a right-angle mark at `to`
};

struct FaceStatement {
  FaceRole role = FaceRole::Face;
  std::string shape;                     ///< "rectangle"; of one that bends, the shape that it unrolls to
  std::size_t facets = 1;                ///< how many loops it takes: a face that bends is a row of strips
  algebra::Expression area = 0;          ///< as it is worked: s × ℓ ÷ 2
  std::vector<FaceLengthPlace> lengths;  ///< usually two
  /// Where its number stands, clear of the lengths that are drawn on it; nothing: well inside.
  std::optional<geometry::Vec3> number_at = std::nullopt;
};

/// A solid with all its measures known, ready to be drawn. z is up; the base lies at z = 0 unless it lies
/// on its side.
struct BodyStatement {
  std::vector<geometry::Vec3> vertices;
  /// Counterclockwise from outside, those of a face one after another. The strips of a face that bends run round the
  /// solid from its seam, side 0 of each along the rim that the one before ends at.
  std::vector<std::vector<std::size_t>> loops;
  std::vector<FaceStatement> faces;  ///< in the order of the loops; bases first, those that bend last
  std::vector<Mark> marks;
  std::size_t table_face = 0;                                       ///< the loop that stays on the table
  std::vector<std::pair<std::size_t, std::size_t>> classic_hinges;  ///< pairs of loops joined in the usual net
};

/// What a kind states: one file in solids/ a kind.
struct SolidStatement {
  std::string name;                      ///< "square pyramid"
  std::vector<std::string> other_names;  ///< "square-based pyramid"
  std::string family;                    ///< the name that must be asked back for its base: "pyramid"; or empty
  std::vector<Measure> measures;         ///< base measures included
  std::vector<Relation> relations;       ///< among the measures, S, L, B, V and P
  std::vector<Derivation> derivations;
  std::vector<Condition> conditions;
  std::vector<words::Message> assumptions;  ///< what is drawn so though the lesson leaves it open
  std::optional<algebra::Equation> volume;  ///< as it is taught: V = B · h ÷ 3
  /// Requires: every measure is bound and every condition holds.
  std::function<BodyStatement(const algebra::Bindings&)> body;
};

/// The symbols that every kind shares.
namespace symbols {
[[nodiscard]] const algebra::Symbol& surface_area();  ///< S
[[nodiscard]] const algebra::Symbol& lateral_area();  ///< L
[[nodiscard]] const algebra::Symbol& base_area();     ///< B
[[nodiscard]] const algebra::Symbol& volume();        ///< V
[[nodiscard]] const algebra::Symbol& perimeter();     ///< P, of the base
}  // namespace symbols

}  // namespace fw::solids
