#include "lessons/read_piece.hpp"

#include "lessons/read_description.hpp"

namespace fw::lessons {
namespace {

using Kind = JsonNode::Kind;
using nets::PieceId;
using words::message;

std::optional<std::size_t> read_number(const JsonNode& piece, const char* key, std::size_t most,
                                       const Context& context) {
  const JsonNode* node = piece.find(key);
  if (node == nullptr) {
    context.fault(piece, message("the key \"{key}\" is missing here: a piece hangs on another one as in {example}",
                                 {{"key", key}, {"example", piece_example}}));
    return std::nullopt;
  }
  const auto value = read_field(*node, count_field(1, most), context.at(key));
  return value ? std::optional(static_cast<std::size_t>(std::get<int>(*value)) - 1) : std::nullopt;
}

// Either a face or corners.
std::optional<PieceEntry> read_shape(const JsonNode& node, const solids::Solid& solid, const Context& context) {
  const JsonNode* face = node.find("face");
  const JsonNode* corners = node.find("corners");
  if ((face == nullptr) == (corners == nullptr)) {
    context.fault(node,
                  message("a piece has either \"face\", the number of the face that it is a copy of, or \"corners\""));
    return std::nullopt;
  }
  PieceEntry piece;
  if (face != nullptr) {
    const auto number = read_number(node, "face", solid.faces().size(), context);
    if (!number) {
      return std::nullopt;
    }
    piece.face = geometry::FaceId::at(*number);
    return piece;
  }
  solids::Field field;
  field.type = solids::FieldType::Points;
  field.least = 3;
  auto points = read_field(*corners, field, context.at("corners"));
  if (const JsonNode* unit = node.find("unit")) {
    solids::Field word;
    word.type = solids::FieldType::Word;
    for (const units::Unit& length : units::Unit::lengths()) {
      word.words.push_back(length.text());
    }
    const auto read = read_field(*unit, word, context.at("unit"));
    piece.unit = read ? std::get<std::string>(*read) : "";
  }
  if (!points) {
    return std::nullopt;
  }
  piece.corners = std::get<std::vector<solids::PointEntry>>(std::move(*points));
  return piece;
}

}  // namespace

solids::Field count_field(int least, std::size_t most) {
  solids::Field field;
  field.type = solids::FieldType::Count;
  field.least = least;
  field.most = static_cast<int>(most);
  return field;
}

std::optional<nets::Joint> read_joint(const JsonNode& piece, const Context& context) {
  const auto on = read_number(piece, "on", limits::net_pieces, context);
  const auto edge = read_number(piece, "edge", limits::polygon_corners, context);
  const auto by = read_number(piece, "by", limits::polygon_corners, context);
  return on && edge && by ? std::optional(nets::Joint{PieceId::at(*on), *edge, *by}) : std::nullopt;
}

std::optional<PieceEntry> read_piece(const JsonNode& node, const solids::Solid& solid, bool hangs,
                                     const Context& context) {
  if (!node.is(Kind::Object)) {
    context.fault(node, message("a piece is an object such as {example}; found {found}",
                                {{"example", piece_example}, {"found", found_text(node)}}));
    return std::nullopt;
  }
  std::vector<std::string> keys{"face", "corners", "unit"};
  if (hangs) {
    keys.insert(keys.end(), {"on", "edge", "by"});
  }
  if (node.find("face") != nullptr) {
    keys.erase(keys.begin() + 2);
  }
  check_keys(node, keys, hangs ? message("a piece written this way") : message("a piece that is joined to no other"),
             context);
  std::optional<PieceEntry> piece = read_shape(node, solid, context);
  if (!hangs) {
    return piece;
  }
  const auto joint = read_joint(node, context);
  if (!piece || !joint) {
    return std::nullopt;
  }
  piece->joint = joint;
  return piece;
}

}  // namespace fw::lessons
