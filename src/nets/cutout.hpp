#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/result.hpp"
#include "geometry/polygon.hpp"
#include "nets/hinge_tree.hpp"

namespace fw::nets {

using PieceId = Id<struct PieceTag>;

/// A side of a piece: edge i runs from corner i to corner i + 1.
struct PieceEdge {
  PieceId piece;
  std::size_t edge = 0;
  friend bool operator==(const PieceEdge&, const PieceEdge&) = default;
};

/// How a piece hangs on another one: its edge `by` lies along that one's edge `edge`.
struct Joint {
  PieceId on;
  std::size_t edge = 0;
  std::size_t by = 0;
  friend bool operator==(const Joint&, const Joint&) = default;
};

/// A polygon of card. Its corners stand in a plane of its own: where it lies follows from its joint.
struct Piece {
  geometry::Polygon shape;                       ///< counterclockwise, on the side of the card that is drawn
  std::optional<FaceId> copy_of = std::nullopt;  ///< the face it was copied from; says nothing of where it lands
  std::optional<Joint> joint = std::nullopt;     ///< nothing for the first piece
  friend bool operator==(const Piece&, const Piece&) = default;
};

/// Two lengths of a cut-out are the same when they differ by less than this share of the larger piece's size: corners
/// are written with few digits, and nobody cuts finer.
inline constexpr double card_tolerance = 1e-4;

/// What is wrong with a list of pieces.
struct CutoutFault {
  PieceId piece;
  enum class Part { Shape, On, Edge, By } part = Part::Shape;
  std::string message;  ///< a sentence; pieces and edges are numbered from 1 in it
};

/// A flat shape of pieces of card joined edge to edge, which may fold up into a solid, or not. Immutable; in one piece.
class Cutout {
 public:
  /// Errors: the first fault: no piece, a shape that is no simple counterclockwise polygon, a piece but the first that
  ///         hangs on none before it, an edge that is not there or holds another piece already.
  [[nodiscard]] static Result<Cutout, CutoutFault> make(std::vector<Piece> pieces);

  [[nodiscard]] const IdVector<PieceId, Piece>& pieces() const { return pieces_; }  ///< each after the one it hangs on
  friend bool operator==(const Cutout&, const Cutout&) = default;

 private:
  explicit Cutout(std::vector<Piece> pieces) : pieces_(std::move(pieces)) {}
  IdVector<PieceId, Piece> pieces_;
};

/// The net as a cut-out: its pieces in the tree's order, each a copy of its face, with the face's corners in order.
[[nodiscard]] Cutout cutout_of(const Polyhedron& polyhedron, const HingeTree& tree);
/// Turned over as a whole. Corner i of a piece with n corners becomes corner n - 1 - i, edge i edge n - 2 - i.
[[nodiscard]] Cutout flipped(const Cutout& cutout);

[[nodiscard]] double edge_length(const Cutout& cutout, PieceEdge edge);
/// Whether two edges are equally long, within card_tolerance of the longer one.
[[nodiscard]] bool equally_long(const Cutout& cutout, PieceEdge a, PieceEdge b);
/// The edges that no joint uses, in order: the outline.
[[nodiscard]] std::vector<PieceEdge> free_edges(const Cutout& cutout);
/// The pieces that hold no other one, the first piece left out.
[[nodiscard]] std::vector<PieceId> leaves(const Cutout& cutout);
/// Without one of its leaves. The pieces after it move up by one. Requires: `leaf` is one of leaves().
[[nodiscard]] Cutout without(const Cutout& cutout, PieceId leaf);
/// With one more piece at the end. Requires: the joint's edge is free.
[[nodiscard]] Cutout with(const Cutout& cutout, Piece piece);
/// One leaf taken off and hung elsewhere; `joint` counts the pieces as they are without it.
struct Move {
  PieceId leaf;
  Joint joint;
  friend bool operator==(const Move&, const Move&) = default;
};
/// Every other place where a leaf can hang by an edge as long as the free edge there.
[[nodiscard]] std::vector<Move> possible_moves(const Cutout& cutout);
/// The moved piece is the last one then. Requires: the move is one of possible_moves().
[[nodiscard]] Cutout moved(const Cutout& cutout, const Move& move);
/// Every cut-out that comes about by one move, where no pieces lie on each other.
[[nodiscard]] std::vector<Cutout> with_one_piece_moved(const Cutout& cutout);

/// The pieces where they lie on the table, the first one as its corners are given.
[[nodiscard]] IdVector<PieceId, geometry::Polygon> laid_flat(const Cutout& cutout);
/// As laid_flat(), turned over left to right where `flipped`, then turned counterclockwise by `turn_rad`. Corners keep
/// their numbers, so that flipped pieces run clockwise. Shape: [piece][corner], y up.
[[nodiscard]] std::vector<geometry::Polygon> lying(const Cutout& cutout, double turn_rad, bool flipped);
/// The pairs of pieces whose insides meet on the table, by more than the card's tolerance.
[[nodiscard]] std::vector<std::pair<PieceId, PieceId>> overlapping(const Cutout& cutout);

}  // namespace fw::nets
