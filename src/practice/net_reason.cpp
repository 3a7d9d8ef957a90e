#include "practice/net_reason.hpp"

namespace fw::practice {
namespace {

using nets::Cutout;
using nets::Finding;
using nets::Misfit;
using words::message;

words::Message listed(const std::vector<nets::PieceId>& pieces) {
  std::vector<std::size_t> numbers;
  numbers.reserve(pieces.size());
  for (const nets::PieceId piece : pieces) {
    numbers.push_back(piece.index() + 1);
  }
  return message("{count:piece|pieces} {pieces:and}", {{"count", numbers.size()}, {"pieces", numbers}});
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
  const words::Noun name{solid.name()};
  const std::size_t pieces = cutout.pieces().size();
  const std::size_t faces = solid.faces().size();
  if (finding.misfit == Misfit::WrongCount) {
    const words::Message count =
        message("{solid:A} has {faces} faces: count the pieces.", {{"solid", name}, {"faces", faces}});
    return {"N1", pieces < faces ? message("One face would stay open. {count}", {{"count", count}})
                                 : message("A piece would be left over. {count}", {{"count", count}})};
  }
  const ShapeCount unlike = unlike_shapes(solid, cutout);
  if (unlike.corners != 0) {
    const words::Message shapes =
        unlike.corners == 3 ? message("triangles") : message("pieces with {sides} sides", {{"sides", unlike.corners}});
    return {"N9", message("This has {here} {shapes}, but {solid:a} has {wanted}. Count them.",
                          {{"here", unlike.here}, {"shapes", shapes}, {"solid", name}, {"wanted", unlike.wanted}})};
  }
  switch (finding.misfit) {
    case Misfit::SameSide:
      return {"N3", message("Both bases would land at the same end. Move one of them to the other side of the strip.")};
    case Misfit::Collision:
      return {"N2",
              message("{pieces:up} would cover the same face, so one face stays open. Pick a floor and fold the rest.",
                      {{"pieces", listed(finding.pieces)}})};
    case Misfit::EdgesDiffer:
      return {"N4", message("These two edges meet when you fold. Are they the same length?")};
    case Misfit::TooLow:
      return {
          "N7",
          message(
              "Folded up, these triangles are too short to meet at that height. Compare them with the slant height.")};
    case Misfit::TooShort:
      return {"N8", message("Folded up, these triangles don't reach each other. Compare their height with the distance "
                            "to the middle of the base.")};
    case Misfit::Overlap:
      return {"N2", message("{pieces:up} overlap when the net is flat. Draw it flat first.",
                            {{"pieces", listed(finding.pieces)}})};
    default:
      return {"N4",
              finding.pieces.size() > 2
                  ? message("These pieces don't match its faces. Compare their edges with the edges of the solid.")
                  : message("{pieces:up} won't match the face where it lands. Compare their edges.",
                            {{"pieces", listed(finding.pieces)}})};
  }
}

}  // namespace fw::practice
