#include "lessons/read_net.hpp"

#include <algorithm>

#include "lessons/read_description.hpp"
#include "lessons/read_piece.hpp"
#include "lessons/read_task.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::lessons {
namespace {

using Kind = JsonNode::Kind;
using nets::Cutout;
using nets::CutoutFault;
using nets::PieceId;

const std::vector<std::string>& ask_words() {
  static const std::vector<std::string> words{"name", "choose", "is_it", "complete"};
  return words;
}

class NetReader {
 public:
  NetReader(const solids::Solid& solid, const Context& context) : solid_(&solid), context_(&context) {}

  [[nodiscard]] std::optional<NetTask> read(const JsonNode& node) const {
    const std::optional<NetAsk> ask = read_ask(node);
    if (!ask) {
      return std::nullopt;
    }
    check_keys(node, keys_of(*ask), "a net that is asked this way", *context_);
    NetTask task;
    task.ask = *ask;
    if (*ask == NetAsk::Choose) {
      read_choices(node, task);
    } else if (auto sheet = read_sheet(node, *context_)) {
      task.sheets.push_back(std::move(*sheet));
    }
    if (*ask == NetAsk::Complete && !task.sheets.empty()) {
      read_completion(node, task);
    }
    if (*ask == NetAsk::Name && !task.sheets.empty() && !is_net(task.sheets.front().cutout)) {
      context_->fault(node, "this is no net of " + with_article(solid_->name()) +
                                ", so that its name cannot be asked: mend the pieces, or ask \"is_it\"");
    }
    return task;
  }

 private:
  [[nodiscard]] static std::vector<std::string> keys_of(NetAsk ask) {
    if (ask == NetAsk::Choose) {
      return {"ask", "nets"};
    }
    std::vector<std::string> keys{"ask", "pieces", "turn", "flip"};
    if (ask == NetAsk::Complete) {
      keys.insert(keys.end(), {"missing", "places"});
    }
    return keys;
  }

  [[nodiscard]] std::optional<NetAsk> read_ask(const JsonNode& node) const {
    if (!node.is(Kind::Object)) {
      context_->fault(node, R"("net" is an object such as {"ask": "is_it", "pieces": [{"face": 1}, )" +
                                std::string(piece_example) + "]}; found " + found_text(node));
      return std::nullopt;
    }
    const JsonNode* word_node = node.find("ask");
    if (word_node == nullptr) {
      context_->fault(node, "the key \"ask\" is missing here" + suggestion("", ask_words()));
      return std::nullopt;
    }
    const std::string* word = text_at(*word_node, "what is asked about a net", context_->at("ask"));
    if (word == nullptr) {
      return std::nullopt;
    }
    const auto found = std::find(ask_words().begin(), ask_words().end(), *word);
    if (found == ask_words().end()) {
      context_->at("ask").fault(*word_node,
                                in_quotes(*word) + " cannot be asked about a net" + suggestion(*word, ask_words()));
      return std::nullopt;
    }
    return static_cast<NetAsk>(found - ask_words().begin());
  }

  // The items of a list that must be there, as many as allowed.
  [[nodiscard]] static const std::vector<JsonNode>* items_of(const JsonNode& node, const char* key, std::size_t least,
                                                             std::size_t most, const Context& context) {
    const JsonNode* list = node.find(key);
    const std::string count = std::to_string(least) + " to " + std::to_string(most);
    if (list == nullptr) {
      context.fault(node, "the key \"" + std::string(key) + "\" is missing here: a list of " + count + " items");
      return nullptr;
    }
    if (!list->is(Kind::List) || list->items.size() < least || list->items.size() > most) {
      const std::string found =
          list->is(Kind::List) ? "a list of " + std::to_string(list->items.size()) : found_text(*list);
      context.at(key).fault(*list, "\"" + std::string(key) + "\" is a list of " + count + " items; found " + found);
      return nullptr;
    }
    return &list->items;
  }

  // ---- cut-outs ----

  [[nodiscard]] std::optional<Cutout> cutout_of(const std::vector<PieceEntry>& entries,
                                                const std::vector<JsonNode>& nodes, const Context& context) const {
    std::vector<nets::Piece> pieces;
    for (const PieceEntry& entry : entries) {
      pieces.push_back({shape_of(entry, *solid_), entry.face, entry.joint});
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
          .fault(place == nullptr ? node : *place, fault.message);
      return std::nullopt;
    }
    return made.value();
  }

  static bool is_flat(const Cutout& cutout, const JsonNode& node, const Context& context) {
    const auto pairs = nets::overlapping(cutout);
    if (!pairs.empty()) {
      context.fault(node, "pieces " + std::to_string(pairs[0].first.index() + 1) + " and " +
                              std::to_string(pairs[0].second.index() + 1) +
                              " would lie on each other: a cut-out is one flat sheet of card, so hang one of them "
                              "elsewhere");
    }
    return pairs.empty();
  }

  [[nodiscard]] std::optional<NetSheet> read_sheet(const JsonNode& node, const Context& context) const {
    const std::size_t errors_before = context.errors();
    const Context at_pieces = context.at("pieces");
    const std::vector<JsonNode>* items = items_of(node, "pieces", 1, limits::net_pieces, context);
    std::vector<PieceEntry> pieces;
    for (std::size_t i = 0; items != nullptr && i < items->size(); ++i) {
      if (auto piece = read_piece((*items)[i], *solid_, i > 0, at_pieces.at(std::to_string(i + 1)))) {
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
      flipped = flip->text == "true";
      if (!flip->is(Kind::Truth)) {
        context.at("flip").fault(*flip, "\"flip\" is true or false; found " + found_text(*flip));
      }
    }
    if (context.errors() != errors_before) {
      return std::nullopt;
    }
    std::optional<Cutout> cutout = cutout_of(pieces, *items, at_pieces);
    if (!cutout || !is_flat(*cutout, *node.find("pieces"), at_pieces)) {
      return std::nullopt;
    }
    return NetSheet{std::move(pieces), turn_degrees, flipped, std::move(*cutout)};
  }

  [[nodiscard]] bool is_net(const Cutout& cutout) const { return solids::fold_test(solid_->body(), cutout).is_net(); }

  void read_choices(const JsonNode& node, NetTask& task) const {
    const std::vector<JsonNode>* items = items_of(node, "nets", 2, limits::net_choices, *context_);
    if (items == nullptr) {
      return;
    }
    for (std::size_t i = 0; i < items->size(); ++i) {
      const Context context = context_->at("nets").at(std::to_string(i + 1));
      if (!(*items)[i].is(Kind::Object)) {
        context.fault((*items)[i],
                      "a cut-out to choose is an object with \"pieces\"; found " + found_text((*items)[i]));
        continue;
      }
      check_keys((*items)[i], {"pieces", "turn", "flip"}, "a cut-out to choose", context);
      if (auto sheet = read_sheet((*items)[i], context)) {
        task.sheets.push_back(std::move(*sheet));
      }
    }
    if (task.sheets.size() != items->size()) {
      return;
    }
    std::string good;
    std::size_t count = 0;
    for (std::size_t i = 0; i < task.sheets.size(); ++i) {
      if (is_net(task.sheets[i].cutout)) {
        good += (count == 0 ? "" : " and ") + std::to_string(i + 1);
        ++count;
      }
    }
    if (count != 1) {
      context_->at("nets").fault(*node.find("nets"),
                                 (count == 0 ? "none of these is a net of " : "numbers " + good + " are nets of ") +
                                     with_article(solid_->name()) + ": exactly one of them must be");
    }
  }

  void read_completion(const JsonNode& node, NetTask& task) const {
    const std::size_t errors_before = context_->errors();
    const JsonNode* missing = node.find("missing");
    if (missing == nullptr) {
      context_->fault(node,
                      R"(the key "missing" is missing here: the piece that is not there yet, such as {"face": 2})");
    } else {
      task.missing = read_piece(*missing, *solid_, false, context_->at("missing"));
    }
    const std::vector<JsonNode>* items = items_of(node, "places", 2, limits::net_places, *context_);
    if (items == nullptr || !task.missing || context_->errors() != errors_before) {
      return;
    }
    bool is_any_right = false;
    for (std::size_t i = 0; i < items->size(); ++i) {
      is_any_right = read_place((*items)[i], task, context_->at("places").at(std::to_string(i + 1))) || is_any_right;
    }
    if (context_->errors() == errors_before && !is_any_right) {
      context_->at("places").fault(*node.find("places"), "in none of these places the piece completes a net of " +
                                                             with_article(solid_->name()) +
                                                             ": at least one must be right");
    }
  }

  // Whether the missing piece completes a net there.
  [[nodiscard]] bool read_place(const JsonNode& node, NetTask& task, const Context& context) const {
    if (!node.is(Kind::Object)) {
      context.fault(node, R"(a place is an object such as {"on": 1, "edge": 2, "by": 1}; found )" + found_text(node));
      return false;
    }
    check_keys(node, {"on", "edge", "by"}, "a place", context);
    const auto joint = read_joint(node, context);
    if (!joint) {
      return false;
    }
    const auto is_same = [&](const nets::Joint& other) { return other.on == joint->on && other.edge == joint->edge; };
    if (std::any_of(task.places.begin(), task.places.end(), is_same)) {
      context.fault(node, "this edge is a place already: name each edge once");
      return false;
    }
    const auto& rest = task.sheets.front().cutout.pieces();
    std::vector<nets::Piece> pieces(rest.begin(), rest.end());
    pieces.push_back({shape_of(*task.missing, *solid_), task.missing->face, joint});
    const auto made = Cutout::make(std::move(pieces));
    if (!made) {
      context.fault(node, made.error().message);
      return false;
    }
    task.places.push_back(*joint);
    return is_flat(made.value(), node, context) && is_net(made.value());
  }

  const solids::Solid* solid_;
  const Context* context_;
};

}  // namespace

std::optional<NetTask> read_net(const JsonNode& node, const solids::Solid& solid, const Context& context) {
  return NetReader(solid, context).read(node);
}

void check_alone(const JsonNode& node, const Context& context) {
  std::vector<std::string> others{"open", "find", "supply"};
  others.insert(others.end(), task_keys().begin(), task_keys().end());
  for (const std::string& key : others) {
    if (const JsonNode* other = node.find(key)) {
      context.at(key).fault(*other, "a problem with \"net\" asks about the net alone: leave " + in_quotes(key) +
                                        " out, or make it a problem of its own");
    }
  }
}

}  // namespace fw::lessons
