#include "nets/misfit.hpp"

#include <algorithm>
#include <cmath>

namespace fw::nets {
namespace {

using geometry::Polygon;
using geometry::Vec3;

/// A triangle beside the one it should be: over the side that both stand on.
struct Triangles {
  double height = 0;           ///< of the piece
  double wanted = 0;           ///< of the face
  double foot_distance = 0;    ///< from the foot of the apex to the side; negative where it is beyond the side
  double apex_height = 0;      ///< above the plane of the face across the side
  bool is_below_apex = false;  ///< the piece's own corner stands over the same point of the side
};

class Search {
 public:
  Search(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test)
      : polyhedron_(&polyhedron), cutout_(&cutout), test_(&test) {
    std::vector<std::size_t> landed(polyhedron.faces().size(), 0);
    for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
      const std::optional<Landing>& landing = test.landings[PieceId::at(p)];
      if (landing) {
        ++landed[landing->face.index()];
      }
      if (!landing || !landing->fits) {
        unfit_.push_back(PieceId::at(p));
      }
    }
    for (std::size_t f = 0; f < landed.size(); ++f) {
      if (landed[f] == 0) {
        open_.push_back(FaceId::at(f));
      } else if (landed[f] > 1) {
        doubled_.push_back(FaceId::at(f));
      }
    }
  }

  [[nodiscard]] std::optional<Finding> finding() const {
    if (cutout_->pieces().size() != polyhedron_->faces().size()) {
      return found(Misfit::WrongCount, {});
    }
    if (auto one = unequal_joint()) {
      return one;
    }
    if (!unfit_.empty()) {
      if (auto one = short_triangles()) {
        return one;
      }
      for (const PieceId piece : unfit_) {
        if (auto one = unequal_meeting(piece)) {
          return one;
        }
      }
      return found(Misfit::WrongPiece, unfit_);
    }
    if (!doubled_.empty()) {
      return collision();
    }
    std::vector<PieceId> lying;
    for (const auto& [a, b] : overlapping(*cutout_)) {
      for (const PieceId piece : {a, b}) {
        if (std::find(lying.begin(), lying.end(), piece) == lying.end()) {
          lying.push_back(piece);
        }
      }
    }
    std::sort(lying.begin(), lying.end());
    return lying.empty() ? std::nullopt : std::optional(found(Misfit::Overlap, lying));
  }

 private:
  [[nodiscard]] Finding found(Misfit misfit, std::vector<PieceId> pieces, std::vector<PieceEdge> edges = {}) const {
    return {misfit, std::move(pieces), std::move(edges), doubled_, open_};
  }
  [[nodiscard]] Finding unequal(PieceEdge a, PieceEdge b) const {
    std::vector<PieceId> pieces{std::min(a.piece, b.piece), std::max(a.piece, b.piece)};
    return found(Misfit::EdgesDiffer, std::move(pieces), {a, b});
  }

  [[nodiscard]] std::optional<Finding> unequal_joint() const {
    for (std::size_t p = 1; p < cutout_->pieces().size(); ++p) {
      const Joint& joint = *cutout_->pieces()[PieceId::at(p)].joint;
      const PieceEdge held{joint.on, joint.edge};
      const PieceEdge own{PieceId::at(p), joint.by};
      if (!equally_long(*cutout_, held, own)) {
        return unequal(held, own);
      }
    }
    return std::nullopt;
  }

  // The edges that would meet the edges of a piece in the folded solid, each beside the piece's own one.
  [[nodiscard]] std::vector<std::pair<PieceEdge, PieceEdge>> meetings(PieceId piece) const {
    std::vector<std::pair<PieceEdge, PieceEdge>> all;
    const std::optional<Landing>& landing = test_->landings[piece];
    if (!landing || !landing->is_walked) {
      return all;
    }
    const std::vector<EdgeId>& sides = polyhedron_->edges_of(landing->face);
    for (std::size_t own = 0; own < sides.size(); ++own) {
      const EdgeId edge = sides[side_of(*test_, piece, own, sides.size())];
      const FaceId across = polyhedron_->other_face(edge, landing->face);
      const std::vector<EdgeId>& theirs = polyhedron_->edges_of(across);
      for (std::size_t q = 0; q < cutout_->pieces().size(); ++q) {
        const std::optional<Landing>& other = test_->landings[PieceId::at(q)];
        if (!other || other->face != across || !other->is_walked) {
          continue;
        }
        for (std::size_t e = 0; e < theirs.size(); ++e) {
          if (theirs[side_of(*test_, PieceId::at(q), e, theirs.size())] == edge) {
            all.push_back({{piece, own}, {PieceId::at(q), e}});
          }
        }
      }
    }
    return all;
  }

  [[nodiscard]] std::optional<Finding> unequal_meeting(PieceId piece) const {
    for (const auto& [own, other] : meetings(piece)) {
      if (!equally_long(*cutout_, own, other)) {
        return unequal(own, other);
      }
    }
    return std::nullopt;
  }

  // ---- triangles that end in one point above the face across ----

  // The side of a triangular face behind which all corners of the solid but the apex lie in one face.
  [[nodiscard]] std::optional<std::size_t> standing_side(FaceId face) const {
    const std::vector<EdgeId>& sides = polyhedron_->edges_of(face);
    for (std::size_t side = 0; side < sides.size(); ++side) {
      const FaceId across = polyhedron_->other_face(sides[side], face);
      if (polyhedron_->faces()[across].size() + 1 == polyhedron_->vertices().size()) {
        return side;
      }
    }
    return std::nullopt;
  }

  [[nodiscard]] std::optional<Triangles> triangles(PieceId piece) const {
    const std::optional<Landing>& landing = test_->landings[piece];
    const Polygon& shape = cutout_->pieces()[piece].shape;
    if (!landing || !landing->is_walked || shape.size() != 3) {
      return std::nullopt;
    }
    const std::optional<std::size_t> side = standing_side(landing->face);
    if (!side) {
      return std::nullopt;
    }
    std::size_t own = 0;
    while (side_of(*test_, piece, own, 3) != *side) {
      ++own;
    }
    const std::vector<Vec3> corners = polyhedron_->corners(landing->face);
    const Vec3& from = corners[corner_of(*test_, piece, own, 3)];
    const Vec3 along = corners[corner_of(*test_, piece, (own + 1) % 3, 3)] - from;
    const Vec3 apex = corners[corner_of(*test_, piece, (own + 2) % 3, 3)] - from;
    const double length = glm::length(along);
    const double own_length = edge_length(*cutout_, {piece, own});
    if (std::abs(length - own_length) > card_tolerance * length) {
      return std::nullopt;
    }
    const EdgeId edge = polyhedron_->edges_of(landing->face)[*side];
    const Vec3 up = polyhedron_->normal(polyhedron_->other_face(edge, landing->face)) * -1.0;
    const geometry::Vec2 own_along = (shape[(own + 1) % 3] - shape[own]) / own_length;
    const geometry::Vec2 own_apex = shape[(own + 2) % 3] - shape[own];
    Triangles both;
    both.height = std::abs(own_along.x * own_apex.y - own_along.y * own_apex.x);
    both.wanted = glm::length(glm::cross(along, apex)) / length;
    both.apex_height = glm::dot(apex, up);
    const double inward = test_->flipped ? -1.0 : 1.0;
    both.foot_distance = glm::dot(apex, glm::cross(up, along)) / length * inward;
    both.is_below_apex =
        std::abs(glm::dot(own_along, own_apex) - glm::dot(along, apex) / length) <= card_tolerance * length;
    return both;
  }

  [[nodiscard]] std::optional<Finding> short_triangles() const {
    std::vector<PieceId> too_short;
    std::vector<PieceId> too_low;
    bool all_as_high_as_apex = true;
    bool all_meet = true;
    for (const PieceId piece : unfit_) {
      const std::optional<Triangles> both = triangles(piece);
      const double reach = card_tolerance * (both ? both->wanted : 0);
      if (!both || !both->is_below_apex || both->height >= both->wanted - reach) {
        return std::nullopt;
      }
      (both->height <= both->foot_distance + reach ? too_short : too_low).push_back(piece);
      all_as_high_as_apex = all_as_high_as_apex && std::abs(both->height - both->apex_height) <= reach;
      all_meet = all_meet && !unequal_meeting(piece);
    }
    if (!too_short.empty()) {
      return found(Misfit::TooShort, too_short);
    }
    return all_as_high_as_apex || all_meet ? std::optional(found(Misfit::TooLow, too_low)) : std::nullopt;
  }

  // ---- collisions ----

  // Whether two faces are the ends of a strip: alike, apart, and every other face is one of four corners between them.
  [[nodiscard]] bool are_ends(FaceId a, FaceId b) const {
    if (polyhedron_->faces()[a].size() != polyhedron_->faces()[b].size() || polyhedron_->edge_between(a, b) ||
        polyhedron_->faces()[a].size() + 2 != polyhedron_->faces().size()) {
      return false;
    }
    for (std::size_t f = 0; f < polyhedron_->faces().size(); ++f) {
      const FaceId face = FaceId::at(f);
      const bool is_between = polyhedron_->faces()[face].size() == 4 && polyhedron_->edge_between(a, face) &&
                              polyhedron_->edge_between(b, face);
      if (face != a && face != b && !is_between) {
        return false;
      }
    }
    return true;
  }

  [[nodiscard]] Finding collision() const {
    std::vector<PieceId> colliding;
    for (std::size_t p = 0; p < cutout_->pieces().size(); ++p) {
      const FaceId face = test_->landings[PieceId::at(p)]->face;
      if (std::find(doubled_.begin(), doubled_.end(), face) != doubled_.end()) {
        colliding.push_back(PieceId::at(p));
      }
    }
    // Both hang on the strip alone, so that the strip is whole without them.
    const bool is_strip =
        open_.size() == 1 && doubled_.size() == 1 && are_ends(open_[0], doubled_[0]) &&
        std::all_of(colliding.begin(), colliding.end(), [this](PieceId piece) { return joints_at(piece) == 1; });
    return found(is_strip ? Misfit::SameSide : Misfit::Collision, colliding);
  }

  [[nodiscard]] std::size_t joints_at(PieceId piece) const {
    std::size_t count = 0;
    for (std::size_t p = 0; p < cutout_->pieces().size(); ++p) {
      const std::optional<Joint>& joint = cutout_->pieces()[PieceId::at(p)].joint;
      count += joint && (PieceId::at(p) == piece || joint->on == piece) ? 1U : 0U;
    }
    return count;
  }

  const Polyhedron* polyhedron_;
  const Cutout* cutout_;
  const FoldTest* test_;
  std::vector<PieceId> unfit_;
  std::vector<FaceId> doubled_, open_;
};

}  // namespace

std::optional<Finding> finding_of(const Polyhedron& polyhedron, const Cutout& cutout, const FoldTest& test) {
  return Search(polyhedron, cutout, test).finding();
}

}  // namespace fw::nets
