#include "nets/fold_test.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/ensure.hpp"
#include "nets/misfit.hpp"
#include "nets/motion.hpp"

namespace fw::nets {
namespace {

using geometry::Polygon;
using geometry::Vec2;

std::size_t corner_on(bool flipped, std::size_t turn, std::size_t corner, std::size_t corners) {
  return (flipped ? turn + corners - corner : turn + corner) % corners;
}
std::size_t side_on(bool flipped, std::size_t turn, std::size_t edge, std::size_t corners) {
  return (flipped ? turn + 2 * corners - edge - 1 : turn + edge) % corners;
}
// The turn that brings a piece's edge to a side of its face.
std::size_t turn_for(bool flipped, std::size_t edge, std::size_t side, std::size_t corners) {
  return (flipped ? side + edge + 1 : side + corners - edge) % corners;
}

double size_of(const Polygon& shape) {
  double most = 0;
  for (const Vec2& corner : shape) {
    most = std::max(most, glm::length(corner - shape.front()));
  }
  return most;
}

// All distances between corners agree. Both run round the same way, so that none is the mirror image of the other.
bool is_copy(const Polygon& shape, const std::vector<Vec3>& face, bool flipped, std::size_t turn) {
  const std::size_t count = shape.size();
  const double most = card_tolerance * size_of(shape);
  for (std::size_t i = 0; i < count; ++i) {
    for (std::size_t k = 0; k < i; ++k) {
      const Vec3 across = face[corner_on(flipped, turn, i, count)] - face[corner_on(flipped, turn, k, count)];
      if (std::abs(glm::length(shape[i] - shape[k]) - glm::length(across)) > most) {
        return false;
      }
    }
  }
  return true;
}

/// How good a walk is, what counts most first.
using Score = std::array<std::size_t, 5>;

class Walker {
 public:
  Walker(const Polyhedron& polyhedron, const Cutout& cutout) : polyhedron_(&polyhedron), cutout_(&cutout) {
    for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
      corners_.push_back(polyhedron.corners(FaceId::at(f)));
    }
  }

  [[nodiscard]] FoldTest best() const {
    const Piece& first = cutout_->pieces()[PieceId::at(0)];
    FoldTest best;
    Score best_score{};
    bool is_found = false;
    const auto take = [&](FaceId face, std::size_t turn, bool flipped) {
      FoldTest test = walked(face, turn, flipped);
      const Score score = score_of(test);
      if (!is_found || score > best_score) {
        best = std::move(test);
        best_score = score;
        is_found = true;
      }
    };
    if (first.copy_of && first.copy_of->index() < corners_.size()) {
      take(*first.copy_of, 0, false);  // the usual case: where it was copied from
      if (is_whole(best_score)) {
        return best;
      }
    }
    for (const bool flipped : {false, true}) {
      for (std::size_t f = 0; f < corners_.size(); ++f) {
        const std::size_t turns = corners_[f].size() == first.shape.size() ? first.shape.size() : 1;
        for (std::size_t turn = 0; turn < turns; ++turn) {
          take(FaceId::at(f), turn, flipped);
        }
      }
    }
    return best;
  }

 private:
  [[nodiscard]] bool is_whole(const Score& score) const {
    return score[0] == corners_.size() && cutout_->pieces().size() == corners_.size();
  }

  [[nodiscard]] Landing landed(const Piece& piece, FaceId face, std::size_t turn, bool flipped) const {
    const std::vector<Vec3>& corners = corners_[face.index()];
    const bool is_walked = corners.size() == piece.shape.size();
    return {face, turn, is_walked && is_copy(piece.shape, corners, flipped, turn), is_walked};
  }

  [[nodiscard]] FoldTest walked(FaceId start, std::size_t turn, bool flipped) const {
    FoldTest test;
    test.flipped = flipped;
    test.landings = IdVector<PieceId, std::optional<Landing>>(cutout_->pieces().size());
    for (std::size_t p = 0; p < cutout_->pieces().size(); ++p) {
      const Piece& piece = cutout_->pieces()[PieceId::at(p)];
      std::optional<Landing>& landing = test.landings[PieceId::at(p)];
      if (!piece.joint) {
        landing = landed(piece, start, turn, flipped);
        continue;
      }
      const std::optional<Landing>& holder = test.landings[piece.joint->on];
      if (!holder || !holder->is_walked) {
        continue;
      }
      const std::vector<EdgeId>& sides = polyhedron_->edges_of(holder->face);
      const EdgeId hinge = sides[side_on(flipped, holder->turn, piece.joint->edge, sides.size())];
      const FaceId next = polyhedron_->other_face(hinge, holder->face);
      const std::vector<EdgeId>& theirs = polyhedron_->edges_of(next);
      const auto side = static_cast<std::size_t>(std::find(theirs.begin(), theirs.end(), hinge) - theirs.begin());
      const std::size_t corners = theirs.size();
      const std::size_t by = std::min(piece.joint->by, corners - 1);
      landing = landed(piece, next, turn_for(flipped, by, side, corners), flipped);
    }
    return test;
  }

  [[nodiscard]] Score score_of(const FoldTest& test) const {
    std::vector<char> is_covered(corners_.size(), 0);
    Score score{};
    for (std::size_t p = 0; p < test.landings.size(); ++p) {
      const std::optional<Landing>& landing = test.landings[PieceId::at(p)];
      const Piece& piece = cutout_->pieces()[PieceId::at(p)];
      if (!landing) {
        continue;
      }
      if (landing->fits) {
        score[0] += is_covered[landing->face.index()] == 0 ? 1U : 0U;
        is_covered[landing->face.index()] = 1;
        ++score[1];
      }
      score[2] += landing->is_walked ? 1U : 0U;
      if (piece.joint && landing->is_walked) {
        score[3] += meets(piece, *landing, test.flipped) ? 1U : 0U;
      }
      score[4] += piece.copy_of == landing->face && !test.flipped ? 1U : 0U;
    }
    return score;
  }

  // Whether the edge that the piece hangs by is as long as the solid's edge.
  [[nodiscard]] bool meets(const Piece& piece, const Landing& landing, bool flipped) const {
    const std::vector<EdgeId>& sides = polyhedron_->edges_of(landing.face);
    const auto [from, to] = polyhedron_->ends(sides[side_on(flipped, landing.turn, piece.joint->by, sides.size())]);
    const Vec2 own = piece.shape[(piece.joint->by + 1) % piece.shape.size()] - piece.shape[piece.joint->by];
    return std::abs(glm::length(own) - glm::length(to - from)) <= card_tolerance * glm::length(own);
  }

  const Polyhedron* polyhedron_;
  const Cutout* cutout_;
  std::vector<std::vector<Vec3>> corners_;
};

// The plane in which the cut-out lies when it is flat: where the first piece comes to stand.
geometry::FacePlane table_of(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test) {
  const PieceId first = PieceId::at(0);
  const Landing& landing = *test.landings[first];
  const std::vector<Vec3> corners = polyhedron.corners(landing.face);
  const auto corner = [&](std::size_t own) {
    return corners[corner_on(test.flipped, landing.turn, own % corners.size(), corners.size())];
  };
  const Polygon& shape = cutout.pieces()[first].shape;
  const Vec2 along = glm::normalize(shape[1] - shape[0]);
  const Vec3 side = glm::normalize(corner(1) - corner(0));
  geometry::FacePlane plane;
  plane.normal = polyhedron.normal(landing.face) * (test.flipped ? -1.0 : 1.0);
  const Vec3 left = glm::cross(plane.normal, side);
  plane.right = side * along.x - left * along.y;
  plane.up = glm::cross(plane.normal, plane.right);
  plane.origin = corner(0) - plane.right * shape[0].x - plane.up * shape[0].y;
  return plane;
}

}  // namespace

FoldTest fold_test(const Polyhedron& polyhedron, const Cutout& cutout) {
  FoldTest test = Walker(polyhedron, cutout).best();
  test.finding = finding_of(polyhedron, cutout, test);
  return test;
}

std::size_t corner_of(const FoldTest& test, PieceId piece, std::size_t corner, std::size_t corners) {
  return corner_on(test.flipped, test.landings[piece]->turn, corner, corners);
}

std::size_t side_of(const FoldTest& test, PieceId piece, std::size_t edge, std::size_t corners) {
  return side_on(test.flipped, test.landings[piece]->turn, edge, corners);
}

HingeTree tree_of(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test) {
  ensure(test.is_net(), "a cut-out was taken for a net that is none");
  std::vector<EdgeId> hinges;
  for (std::size_t p = 1; p < cutout.pieces().size(); ++p) {
    const PieceId piece = PieceId::at(p);
    const std::vector<EdgeId>& sides = polyhedron.edges_of(test.landings[piece]->face);
    hinges.push_back(sides[side_of(test, piece, cutout.pieces()[piece].joint->by, sides.size())]);
  }
  Result<HingeTree, std::string> tree =
      HingeTree::make(polyhedron, test.landings[PieceId::at(0)]->face, std::move(hinges));
  ensure(tree.has_value(), "a net's joints are the hinges of a tree");
  return std::move(tree).value();
}

Pose pose(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test, double amount) {
  ensure(amount >= 0 && amount <= 1, "a cut-out can only be opened by an amount from 0 to 1");
  ensure(test.landings.size() == cutout.pieces().size(), "a cut-out was folded by the fold test of another one");
  const geometry::FacePlane table = table_of(polyhedron, cutout, test);
  const IdVector<PieceId, Polygon> flat = laid_flat(cutout);
  IdVector<PieceId, Motion> motions(cutout.pieces().size());
  Pose found;
  for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
    const PieceId id = PieceId::at(p);
    const std::optional<Joint>& joint = cutout.pieces()[id].joint;
    if (joint) {
      motions[id] = motions[joint->on];
      const std::optional<Landing>& holder = test.landings[joint->on];
      if (holder && holder->is_walked && amount < 1) {
        const std::vector<EdgeId>& sides = polyhedron.edges_of(holder->face);
        const EdgeId hinge = sides[side_of(test, joint->on, joint->edge, sides.size())];
        const Polygon& lies = flat[joint->on];
        const Vec3 from = table.lifted(lies[joint->edge]);
        const Vec3 to = table.lifted(lies[(joint->edge + 1) % lies.size()]);
        // Toward the inside of the solid, whichever side of the card is out.
        const double closing = (1 - amount) * opening_angle_rad(polyhedron, hinge) * (test.flipped ? -1.0 : 1.0);
        motions[id] = hinge_motion(motions[joint->on], from, glm::normalize(to - from), closing);
      }
    }
    std::vector<Vec3> corners;
    for (const Vec2& corner : flat[id]) {
      corners.push_back(motions[id].moved(table.lifted(corner)));
    }
    found.push_back(std::move(corners));
  }
  return found;
}

}  // namespace fw::nets
