#include "lessons/read_sheet.hpp"

#include "lessons/read_description.hpp"
#include "lessons/read_lesson.hpp"
#include "lessons/read_piece.hpp"

namespace fw::lessons {
namespace {

using Kind = JsonNode::Kind;
using nets::Cutout;
using nets::CutoutFault;
using words::message;

std::optional<Cutout> cutout_of(const std::vector<PieceEntry>& entries, const std::vector<JsonNode>& nodes,
                                const solids::Solid& solid, const Context& context) {
  std::vector<nets::Piece> pieces;
  pieces.reserve(entries.size());
  for (const PieceEntry& entry : entries) {
    pieces.push_back({shape_of(entry, solid), entry.face, entry.joint});
  }
  const auto made = Cutout::make(std::move(pieces));
  if (!made) {
    static constexpr const char* keys[] = {"corners", "on", "edge", "by"};
    const CutoutFault& fault = made.error();
    const char* key = keys[static_cast<std::size_t>(fault.part)];
    const JsonNode& node = nodes[fault.piece.index()];
    const JsonNode* place = node.find(key);
    context.at(std::to_string(fault.piece.index() + 1))
        .at(key)
        .fault(place == nullptr ? node : *place, words::Message(fault.message));
    return std::nullopt;
  }
  return made.value();
}

}  // namespace

const std::vector<JsonNode>* items_of(const JsonNode& node, const char* key, std::size_t least, std::size_t most,
                                      const Context& context) {
  const JsonNode* list = node.find(key);
  const words::Message count = message("{least} to {most}", {{"least", least}, {"most", most}});
  if (list == nullptr) {
    context.fault(
        node, message("the key \"{key}\" is missing here: a list of {count} items", {{"key", key}, {"count", count}}));
    return nullptr;
  }
  if (!list->is(Kind::List) || list->items.size() < least || list->items.size() > most) {
    const words::Message found =
        list->is(Kind::List) ? message("a list of {count}", {{"count", list->items.size()}}) : found_text(*list);
    context.at(key).fault(*list, message("\"{key}\" is a list of {count} items; found {found}",
                                         {{"key", key}, {"count", count}, {"found", found}}));
    return nullptr;
  }
  return &list->items;
}

bool is_flat(const Cutout& cutout, const JsonNode& node, const Context& context) {
  const auto pairs = nets::overlapping(cutout);
  if (!pairs.empty()) {
    context.fault(node,
                  message("pieces {one} and {other} overlap: a cut-out is one flat sheet of paper, so move one of them",
                          {{"one", pairs[0].first.index() + 1}, {"other", pairs[0].second.index() + 1}}));
  }
  return pairs.empty();
}

std::optional<NetSheet> read_sheet(const JsonNode& node, const solids::Solid& solid, const Context& context) {
  const std::size_t errors_before = context.errors();
  const Context at_pieces = context.at("pieces");
  const std::vector<JsonNode>* items = items_of(node, "pieces", 1, limits::net_pieces, context);
  std::vector<PieceEntry> pieces;
  for (std::size_t i = 0; items != nullptr && i < items->size(); ++i) {
    if (auto piece = read_piece((*items)[i], solid, i > 0, at_pieces.at(std::to_string(i + 1)))) {
      pieces.push_back(std::move(*piece));
    }
  }
  int turn_degrees = 0;
  bool flipped = false;
  if (const JsonNode* turn = node.find("turn")) {
    const auto value = read_field(*turn, count_field(0, 359), context.at("turn"));
    turn_degrees = value ? std::get<int>(*value) : 0;
  }
  if (const JsonNode* flip = node.find("flip")) {
    flipped = truth_at(*flip, "\"flip\"", context.at("flip")).value_or(false);
  }
  if (context.errors() != errors_before) {
    return std::nullopt;
  }
  std::optional<Cutout> cutout = cutout_of(pieces, *items, solid, at_pieces);
  if (!cutout || !is_flat(*cutout, *node.find("pieces"), at_pieces)) {
    return std::nullopt;
  }
  return NetSheet{std::move(pieces), turn_degrees, flipped, std::move(*cutout)};
}

}  // namespace fw::lessons
