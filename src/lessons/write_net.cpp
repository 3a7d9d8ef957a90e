#include "lessons/write_net.hpp"

#include <nlohmann/json.hpp>

namespace fw::lessons {
namespace {

std::string number(std::size_t index) { return std::to_string(index + 1); }

std::string listed(const std::vector<std::string>& items) {
  std::string text = "[";
  for (std::size_t i = 0; i < items.size(); ++i) {
    text += (i == 0 ? "" : ", ") + items[i];
  }
  return text + "]";
}

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
      corners.push_back(listed({coordinate_text(corner.x), coordinate_text(corner.y)}));
    }
    text = R"({"corners": )" + listed(corners);
    text += piece.unit.empty() ? "" : R"(, "unit": ")" + piece.unit + "\"";
  }
  return text + (piece.joint ? ", " + joint_text(*piece.joint) : "") + "}";
}

std::string sheet_text(const NetSheet& sheet) {
  std::vector<std::string> pieces;
  for (const PieceEntry& piece : sheet.pieces) {
    pieces.push_back(piece_text(piece));
  }
  std::string text = R"("pieces": )" + listed(pieces);
  text += sheet.turn_degrees == 0 ? "" : R"(, "turn": )" + std::to_string(sheet.turn_degrees);
  return text + (sheet.flipped ? R"(, "flip": true)" : "");
}

}  // namespace

std::string coordinate_text(const exact::Written& coordinate) {
  const nlohmann::json parsed = nlohmann::json::parse(coordinate.text, nullptr, false);
  return parsed.is_number() ? coordinate.text : nlohmann::json(coordinate.text).dump();
}

std::string net_text(const NetTask& task) {
  static constexpr const char* words[] = {"name", "choose", "is_it", "complete"};
  std::string text = R"({"ask": ")" + std::string(words[static_cast<std::size_t>(task.ask)]) + "\"";
  if (task.ask == NetAsk::Choose) {
    text += R"(, "nets": [)";
    for (std::size_t i = 0; i < task.sheets.size(); ++i) {
      text += std::string(i == 0 ? "" : ",") + "\n        {" + sheet_text(task.sheets[i]) + "}";
    }
    return text + "\n      ]}";
  }
  text += ", " + sheet_text(task.sheets.front());
  if (task.missing) {
    std::vector<std::string> places;
    for (const nets::Joint& place : task.places) {
      places.push_back("{" + joint_text(place) + "}");
    }
    text += R"(, "missing": )" + piece_text(*task.missing) + R"(, "places": )" + listed(places);
  }
  return text + "}";
}

}  // namespace fw::lessons
