#include "practice/net_reason.hpp"

#include "base/listing.hpp"
#include "reasoning/nouns.hpp"

namespace fw::practice {
namespace {

using nets::Cutout;
using nets::Finding;
using nets::Misfit;

std::string piece_list(const std::vector<nets::PieceId>& pieces) {
  std::vector<std::string> numbers;
  for (const nets::PieceId piece : pieces) {
    numbers.push_back(std::to_string(piece.index() + 1));
  }
  return (pieces.size() == 1 ? "piece " : "pieces ") + joined_with_and(numbers);
}

constexpr std::size_t most_corners = 40;

// The number of corners of which the pieces have more or fewer than the faces; 0: the shapes agree.
struct ShapeCount {
  std::size_t corners = 0, here = 0, wanted = 0;
};
ShapeCount unlike_shapes(const solids::Solid& solid, const Cutout& cutout) {
  for (std::size_t corners = 3; corners <= most_corners; ++corners) {
    ShapeCount count{corners, 0, 0};
    for (const nets::Piece& piece : cutout.pieces()) {
      count.here += piece.shape.size() == corners ? 1U : 0U;
    }
    for (const solids::Face& face : solid.faces()) {
      count.wanted += solid.body().side_count(face.id) == corners ? 1U : 0U;
    }
    if (count.here != count.wanted) {
      return count;
    }
  }
  return {};
}

}  // namespace

NetReason net_reason(const solids::Solid& solid, const Cutout& cutout, const Finding& finding) {
  const std::string a_solid = reasoning::one(solid.name());
  const std::size_t pieces = cutout.pieces().size();
  const std::size_t faces = solid.faces().size();
  if (finding.misfit == Misfit::WrongCount) {
    return {"N1", std::string(pieces < faces ? "A face would stay open. " : "A piece would be left over. ") +
                      reasoning::sentence_case(a_solid) + " has " + std::to_string(faces) +
                      " faces: count the pieces."};
  }
  const ShapeCount unlike = unlike_shapes(solid, cutout);
  if (unlike.corners != 0) {
    const std::string noun =
        unlike.corners == 3 ? "triangles" : "pieces with " + std::to_string(unlike.corners) + " sides";
    return {"N9", "It would be another solid, or none: here are " + std::to_string(unlike.here) + " " + noun +
                      ", and " + a_solid + " has " + std::to_string(unlike.wanted) + ". Count them."};
  }
  switch (finding.misfit) {
    case Misfit::SameSide:
      return {"N3", "Both ends would land at the same end. Move one across the strip."};
    case Misfit::Collision:
      return {"N2", reasoning::sentence_case(piece_list(finding.pieces)) +
                        " would cover the same face, and one face would stay open. Choose a floor and fold the rest."};
    case Misfit::EdgesDiffer:
      return {"N4", "These two edges would be glued. Are they the same length?"};
    case Misfit::TooLow:
      return {"N7",
              "Folded up, these triangles would be too short to meet at that height. Compare them with the slant "
              "height."};
    case Misfit::TooShort:
      return {"N8",
              "Folded up, these triangles would not reach each other. Compare them with the way to the middle of the "
              "base."};
    case Misfit::Overlap:
      return {"N2", reasoning::sentence_case(piece_list(finding.pieces)) +
                        " would lie on each other in the card. Draw it flat first."};
    default:
      if (finding.pieces.size() > 2) {
        return {"N4", "These pieces would be no copies of its faces. Compare their edges with those of the solid."};
      }
      return {"N4", reasoning::sentence_case(piece_list(finding.pieces)) +
                        " would not cover the face where it lands. Compare their edges."};
  }
}

}  // namespace fw::practice
