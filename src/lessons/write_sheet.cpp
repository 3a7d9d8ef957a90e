#include "lessons/write_sheet.hpp"

#include "lessons/json_text.hpp"

namespace fw::lessons {
namespace {

std::string number(std::size_t index) { return std::to_string(index + 1); }

}  // namespace

std::string joint_text(const nets::Joint& joint) {
  return R"("on": )" + number(joint.on.index()) + R"(, "edge": )" + number(joint.edge) + R"(, "by": )" +
         number(joint.by);
}

std::string piece_text(const PieceEntry& piece) {
  std::string text;
  if (piece.face) {
    text = R"({"face": )" + number(piece.face->index());
  } else {
    std::vector<std::string> corners;
    for (const solids::PointEntry& corner : piece.corners) {
      corners.push_back(in_line({coordinate_text(corner.x), coordinate_text(corner.y)}, '[', ']'));
    }
    text = R"({"corners": )" + in_line(corners, '[', ']');
    text += piece.unit.empty() ? "" : R"(, "unit": ")" + piece.unit + "\"";
  }
  return text + (piece.joint ? ", " + joint_text(*piece.joint) : "") + "}";
}

std::string sheet_text(const NetSheet& sheet) {
  std::vector<std::string> pieces;
  for (const PieceEntry& piece : sheet.pieces) {
    pieces.push_back(piece_text(piece));
  }
  std::string text = R"("pieces": )" + in_line(pieces, '[', ']');
  text += sheet.turn_degrees == 0 ? "" : R"(, "turn": )" + std::to_string(sheet.turn_degrees);
  return text + (sheet.flipped ? R"(, "flip": true)" : "");
}

}  // namespace fw::lessons
