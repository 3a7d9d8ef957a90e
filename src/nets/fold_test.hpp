#pragma once

#include "nets/cutout.hpp"
#include "nets/folding.hpp"

namespace fw::nets {

/// Why a cut-out does not fold into a solid; the first of these that is true.
enum class Misfit {
  WrongCount,   ///< more or fewer pieces than faces
  EdgesDiffer,  ///< two edges that are joined, or would meet, have different lengths
  TooShort,     ///< triangles that end before the foot of the apex: they could never meet
  TooLow,       ///< triangles that meet, but below the apex
  WrongPiece,   ///< a piece is no copy of the face that it lands on
  SameSide,     ///< both ends hang on the same side of the strip between them
  Collision,    ///< two pieces land on one face, and another face stays open
  Overlap,      ///< pieces lie on each other already on the table
};

/// What is at fault, so that it can be said and shown.
struct Finding {
  Misfit misfit = Misfit::WrongCount;
  std::vector<PieceId> pieces;   ///< those at fault, in order; empty for a wrong count
  std::vector<PieceEdge> edges;  ///< of EdgesDiffer: the two edges
  std::vector<FaceId> doubled;   ///< faces that more than one piece lands on
  std::vector<FaceId> open;      ///< faces that no piece lands on
  friend bool operator==(const Finding&, const Finding&) = default;
};

/// The face that a piece lands on when it is folded over from the piece that it hangs on.
struct Landing {
  FaceId face;
  std::size_t turn = 0;    ///< how the piece lies on it: see corner_of() and side_of()
  bool fits = false;       ///< it is a copy of the face, lying as the face does
  bool is_walked = false;  ///< it has as many corners as the face, so that its edges lead on to other faces
  friend bool operator==(const Landing&, const Landing&) = default;
};

/// A cut-out folded round a solid, face after face.
struct FoldTest {
  bool flipped = false;                                ///< the side of the card that is drawn comes inside
  IdVector<PieceId, std::optional<Landing>> landings;  ///< nothing where no edge led the piece to a face
  std::optional<Finding> finding;                      ///< nothing: it is a net of the solid
  [[nodiscard]] bool is_net() const { return !finding; }
};

/// Walks over the faces of the solid from piece to piece, from every start, either side out, and keeps the walk that
/// covers most faces.
/// Source: definition of an edge unfolding; each step goes across the edge that the two faces share.
[[nodiscard]] FoldTest fold_test(const Polyhedron& polyhedron, const Cutout& cutout);

/// The corner and the side of the face that a piece's own corner and edge come to. Requires: the landing is walked.
[[nodiscard]] std::size_t corner_of(const FoldTest& test, PieceId piece, std::size_t corner, std::size_t corners);
[[nodiscard]] std::size_t side_of(const FoldTest& test, PieceId piece, std::size_t edge, std::size_t corners);

/// The net that a cut-out is, standing on the face of its first piece. Requires: test.is_net().
[[nodiscard]] HingeTree tree_of(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test);

/// The cut-out in space, opened by `amount`: 1 flat, 0 with each hinge turned as far as the edge of the solid where it
/// comes to lie. Every hinge turns at once; a piece that no face takes stays flat on the one it hangs on.
///
/// Shape:    [piece][corner], corners in the order of the piece's shape: counterclockwise from outside, or clockwise
///           where test.flipped.
/// Requires: 0 <= amount <= 1; `test` is the fold test of these two.
/// Guarantees:
///   (1) every distance within a piece is the same at every amount;
///   (2) at 0 each piece that fits lies on its face if all before it fit; the first piece never moves;
///   (3) pieces joined by edges of equal length share them at every amount.
[[nodiscard]] Pose pose(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test, double amount);

}  // namespace fw::nets
