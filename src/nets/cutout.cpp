#include "nets/cutout.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "base/ensure.hpp"
#include "nets/layout.hpp"

namespace fw::nets {
namespace {

using geometry::Polygon;
using geometry::Vec2;
using Part = CutoutFault::Part;

std::string piece_name(std::size_t index) { return "piece " + std::to_string(index + 1); }

std::optional<std::string> shape_fault(const Polygon& shape, std::size_t index) {
  if (shape.size() < 3) {
    return piece_name(index) + " has " + std::to_string(shape.size()) + " corners; a piece has 3 or more";
  }
  if (!geometry::is_simple(shape)) {
    return "the sides of " + piece_name(index) + " cross or touch each other: list its corners in order round it";
  }
  if (geometry::signed_area(shape) <= 0) {
    return "the corners of " + piece_name(index) + " run clockwise: list them counterclockwise";
  }
  return std::nullopt;
}

std::optional<std::string> edge_fault(const std::vector<Piece>& pieces, std::size_t piece, std::size_t edge) {
  const std::size_t count = pieces[piece].shape.size();
  if (edge >= count) {
    return piece_name(piece) + " has edges 1 to " + std::to_string(count);
  }
  return std::nullopt;
}

// The fault of one piece, those before it being sound; `taken` holds the edges in use as (piece, edge).
std::optional<CutoutFault> piece_fault(const std::vector<Piece>& pieces, std::size_t index,
                                       std::set<std::pair<std::size_t, std::size_t>>& taken) {
  const PieceId id = PieceId::at(index);
  if (const auto fault = shape_fault(pieces[index].shape, index)) {
    return CutoutFault{id, Part::Shape, *fault};
  }
  const std::optional<Joint>& joint = pieces[index].joint;
  if (!joint) {
    return index == 0 ? std::nullopt
                      : std::optional(CutoutFault{id, Part::On, piece_name(index) + " hangs on no other piece"});
  }
  if (index == 0) {
    return CutoutFault{id, Part::On, "the first piece hangs on no other one"};
  }
  if (joint->on.index() >= index) {
    return CutoutFault{id, Part::On,
                       piece_name(index) + " can only hang on a piece before it, 1 to " + std::to_string(index)};
  }
  if (const auto fault = edge_fault(pieces, joint->on.index(), joint->edge)) {
    return CutoutFault{id, Part::Edge, *fault};
  }
  if (const auto fault = edge_fault(pieces, index, joint->by)) {
    return CutoutFault{id, Part::By, *fault};
  }
  if (!taken.insert({joint->on.index(), joint->edge}).second) {
    return CutoutFault{id, Part::Edge,
                       "edge " + std::to_string(joint->edge + 1) + " of " + piece_name(joint->on.index()) +
                           " is joined to another piece already"};
  }
  taken.insert({index, joint->by});
  return std::nullopt;
}

Cutout checked(std::vector<Piece> pieces) {
  Result<Cutout, CutoutFault> made = Cutout::make(std::move(pieces));
  ensure(made.has_value(), made.has_value() ? "" : made.error().message.c_str());
  return std::move(made).value();
}

std::size_t edge_count(const Cutout& cutout, PieceId piece) { return cutout.pieces()[piece].shape.size(); }

}  // namespace

Result<Cutout, CutoutFault> Cutout::make(std::vector<Piece> pieces) {
  if (pieces.empty()) {
    return failure(CutoutFault{PieceId::at(0), Part::Shape, "a cut-out has at least one piece"});
  }
  std::set<std::pair<std::size_t, std::size_t>> taken;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (auto fault = piece_fault(pieces, i, taken)) {
      return failure(std::move(*fault));
    }
  }
  return Cutout(std::move(pieces));
}

Cutout cutout_of(const Polyhedron& polyhedron, const HingeTree& tree) {
  const auto side_of = [&](FaceId face, EdgeId edge) {
    const std::vector<EdgeId>& sides = polyhedron.edges_of(face);
    return static_cast<std::size_t>(std::find(sides.begin(), sides.end(), edge) - sides.begin());
  };
  IdVector<FaceId, PieceId> piece_of(polyhedron.faces().size());
  std::vector<Piece> pieces;
  for (const FaceId face : tree.order()) {
    Piece piece{geometry::flat_face(polyhedron, face), face, std::nullopt};
    if (const auto& link = tree.link(face)) {
      piece.joint = Joint{piece_of[link->parent], side_of(link->parent, link->hinge), side_of(face, link->hinge)};
    }
    piece_of[face] = PieceId::at(pieces.size());
    pieces.push_back(std::move(piece));
  }
  return checked(std::move(pieces));
}

Cutout flipped(const Cutout& cutout) {
  const auto turned_edge = [&](PieceId piece, std::size_t edge) {
    const std::size_t count = edge_count(cutout, piece);
    return (2 * count - 2 - edge) % count;
  };
  std::vector<Piece> pieces;
  for (const Piece& piece : cutout.pieces()) {
    Piece turned;
    for (auto corner = piece.shape.rbegin(); corner != piece.shape.rend(); ++corner) {
      turned.shape.push_back({-corner->x, corner->y});
    }
    if (piece.joint) {
      turned.joint = Joint{piece.joint->on, turned_edge(piece.joint->on, piece.joint->edge),
                           turned_edge(PieceId::at(pieces.size()), piece.joint->by)};
    }
    pieces.push_back(std::move(turned));
  }
  return checked(std::move(pieces));
}

double edge_length(const Cutout& cutout, PieceEdge edge) {
  const Polygon& shape = cutout.pieces()[edge.piece].shape;
  return glm::length(shape[(edge.edge + 1) % shape.size()] - shape[edge.edge]);
}

bool equally_long(const Cutout& cutout, PieceEdge a, PieceEdge b) {
  const double one = edge_length(cutout, a);
  const double other = edge_length(cutout, b);
  return std::abs(one - other) <= card_tolerance * std::max(one, other);
}

std::vector<PieceEdge> free_edges(const Cutout& cutout) {
  std::vector<PieceEdge> edges;
  for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
    for (std::size_t e = 0; e < edge_count(cutout, PieceId::at(p)); ++e) {
      edges.push_back({PieceId::at(p), e});
    }
  }
  for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
    if (const auto& joint = cutout.pieces()[PieceId::at(p)].joint) {
      edges.erase(std::find(edges.begin(), edges.end(), PieceEdge{joint->on, joint->edge}));
      edges.erase(std::find(edges.begin(), edges.end(), PieceEdge{PieceId::at(p), joint->by}));
    }
  }
  return edges;
}

std::vector<PieceId> leaves(const Cutout& cutout) {
  std::vector<PieceId> found;
  for (std::size_t p = 1; p < cutout.pieces().size(); ++p) {
    const bool holds_one = std::any_of(cutout.pieces().begin(), cutout.pieces().end(), [&](const Piece& piece) {
      return piece.joint && piece.joint->on == PieceId::at(p);
    });
    if (!holds_one) {
      found.push_back(PieceId::at(p));
    }
  }
  return found;
}

Cutout without(const Cutout& cutout, PieceId leaf) {
  std::vector<Piece> pieces;
  for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
    if (PieceId::at(p) == leaf) {
      continue;
    }
    Piece piece = cutout.pieces()[PieceId::at(p)];
    if (piece.joint && piece.joint->on > leaf) {
      piece.joint->on = PieceId::at(piece.joint->on.index() - 1);
    }
    pieces.push_back(std::move(piece));
  }
  return checked(std::move(pieces));
}

Cutout with(const Cutout& cutout, Piece piece) {
  std::vector<Piece> pieces(cutout.pieces().begin(), cutout.pieces().end());
  pieces.push_back(std::move(piece));
  return checked(std::move(pieces));
}

std::vector<Move> possible_moves(const Cutout& cutout) {
  std::vector<Move> moves;
  const auto place_of = [](PieceId piece, PieceId leaf) {
    return piece > leaf ? PieceId::at(piece.index() - 1) : piece;
  };
  for (const PieceId leaf : leaves(cutout)) {
    const Joint& now = *cutout.pieces()[leaf].joint;
    std::vector<PieceEdge> edges = free_edges(cutout);
    edges.push_back({now.on, now.edge});
    for (const PieceEdge& edge : edges) {
      for (std::size_t by = 0; by < edge_count(cutout, leaf); ++by) {
        const Joint joint{edge.piece, edge.edge, by};
        if (edge.piece != leaf && joint != now && equally_long(cutout, edge, {leaf, by})) {
          moves.push_back({leaf, {place_of(edge.piece, leaf), edge.edge, by}});
        }
      }
    }
  }
  return moves;
}

Cutout moved(const Cutout& cutout, const Move& move) {
  const Piece& piece = cutout.pieces()[move.leaf];
  return with(without(cutout, move.leaf), {piece.shape, piece.copy_of, move.joint});
}

std::vector<Cutout> with_one_piece_moved(const Cutout& cutout) {
  std::vector<Cutout> found;
  for (const Move& move : possible_moves(cutout)) {
    Cutout other = moved(cutout, move);
    if (overlapping(other).empty()) {
      found.push_back(std::move(other));
    }
  }
  return found;
}

IdVector<PieceId, Polygon> laid_flat(const Cutout& cutout) {
  IdVector<PieceId, Polygon> laid;
  for (const Piece& piece : cutout.pieces()) {
    if (!piece.joint) {
      laid.push_back(piece.shape);
      continue;
    }
    const Polygon& holder = laid[piece.joint->on];
    // The two pieces run along their joint in opposite directions.
    laid.push_back(laid_on(piece.shape, piece.joint->by, holder[(piece.joint->edge + 1) % holder.size()],
                           holder[piece.joint->edge]));
  }
  return laid;
}

std::vector<Polygon> lying(const Cutout& cutout, double turn_rad, bool flipped) {
  const double along = std::cos(turn_rad);
  const double across = std::sin(turn_rad);
  std::vector<Polygon> pieces;
  for (Polygon polygon : laid_flat(cutout)) {
    for (Vec2& corner : polygon) {
      const Vec2 seen{flipped ? -corner.x : corner.x, corner.y};
      corner = {seen.x * along - seen.y * across, seen.x * across + seen.y * along};
    }
    pieces.push_back(std::move(polygon));
  }
  return pieces;
}

std::vector<std::pair<PieceId, PieceId>> overlapping(const Cutout& cutout) {
  std::vector<Polygon> trimmed;
  for (Polygon polygon : laid_flat(cutout)) {
    const Vec2 middle = geometry::centroid(polygon);
    for (Vec2& corner : polygon) {
      corner = middle + (corner - middle) * (1 - card_tolerance);
    }
    trimmed.push_back(std::move(polygon));
  }
  std::vector<std::pair<PieceId, PieceId>> pairs;
  for (const auto& [a, b] : overlapping_pairs(trimmed)) {
    pairs.push_back({PieceId::at(a), PieceId::at(b)});
  }
  return pairs;
}

}  // namespace fw::nets
