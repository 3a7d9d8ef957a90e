#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_piece.hpp"
#include "lessons/read_sheet.hpp"
#include "lessons/write_sheet.hpp"
#include "tasks/generate/net_sheets.hpp"
#include "tasks/nets/net_task.hpp"

// Along which edges a missing piece can be hung.
namespace fw::tasks {
namespace {

using lessons::NetSheet;
using lessons::PieceEntry;
using nets::Cutout;
using nets::PieceId;
using practice::AnswerVerdict;
using practice::Diagnosis;
using words::message;

class CompleteNet : public NetTask {
 public:
  /// `places`: where the missing piece could hang; at least one is right.
  CompleteNet(NetSheet sheet, PieceEntry missing, std::vector<nets::Joint> places)
      : NetTask({std::move(sheet)}), missing_(std::move(missing)), places_(std::move(places)) {}

  [[nodiscard]] std::vector<NetChoice> net_choices(const Problem& problem, Seed) const override {
    std::vector<NetChoice> choices;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      choices.push_back(choice_of(problem, practice::letter(i), cutout_for(problem, i)));
    }
    return choices;
  }
  /// With the missing piece hung at the place.
  [[nodiscard]] Cutout cutout_for(const Problem& problem, std::size_t choice) const override {
    return nets::with(sheets().front().cutout,
                      {lessons::shape_of(missing_, problem.solid), missing_.face, places_.at(choice)});
  }
  [[nodiscard]] Diagnosis judged_choices(const Problem& problem, const std::vector<std::size_t>& chosen) const override;
  [[nodiscard]] bool has_letters() const override { return true; }
  [[nodiscard]] bool takes_several() const override { return true; }
  [[nodiscard]] const PieceEntry* missing() const override { return &missing_; }
  [[nodiscard]] std::vector<nets::Joint> places() const override { return places_; }
  void write(Members& members) const override {
    std::vector<std::string> places;
    for (const nets::Joint& place : places_) {
      places.push_back("{" + lessons::joint_text(place) + "}");
    }
    write_net(members, "complete",
              lessons::sheet_text(sheets().front()) + R"(, "missing": )" + lessons::piece_text(missing_) +
                  R"(, "places": )" + lessons::in_line(places, '[', ']'));
  }
  [[nodiscard]] words::Message sentence(const Problem&) const override {
    return message("Where can the missing piece go? Find every place.");
  }
  [[nodiscard]] std::string type(const Problem&) const override { return "complete-net"; }

 protected:
  [[nodiscard]] std::size_t letters() const override { return places_.size(); }

 private:
  PieceEntry missing_;
  std::vector<nets::Joint> places_;
};

// ---- read ----

struct CompletionText {
  NetSheet sheet;
  PieceEntry missing;
  std::vector<nets::Joint> places;
};

// Whether the missing piece completes a net there.
bool read_place(const JsonNode& node, const solids::Solid& solid, CompletionText& text, const Context& context) {
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node,
                  message("a place is an object such as {example}; found {found}",
                          {{"example", R"({"on": 1, "edge": 2, "by": 1})"}, {"found", lessons::found_text(node)}}));
    return false;
  }
  lessons::check_keys(node, {"on", "edge", "by"}, message("a place"), context);
  const auto joint = lessons::read_joint(node, context);
  if (!joint) {
    return false;
  }
  const auto is_same = [&](const nets::Joint& other) { return other.on == joint->on && other.edge == joint->edge; };
  if (std::any_of(text.places.begin(), text.places.end(), is_same)) {
    context.fault(node, message("this edge is already a place: name each edge once"));
    return false;
  }
  const auto& rest = text.sheet.cutout.pieces();
  std::vector<nets::Piece> pieces(rest.begin(), rest.end());
  pieces.push_back({lessons::shape_of(text.missing, solid), text.missing.face, joint});
  const auto made = Cutout::make(std::move(pieces));
  if (!made) {
    context.fault(node, Message(made.error().message));
    return false;
  }
  text.places.push_back(*joint);
  return lessons::is_flat(made.value(), node, context) && folds_up(solid, made.value());
}

std::optional<Task> read_complete_net(const JsonNode& net, const Problem& problem, const Context& context) {
  const solids::Solid& solid = problem.solid;
  auto sheet = lessons::read_sheet(net, solid, context);
  if (!sheet) {
    return std::nullopt;
  }
  const std::size_t errors_before = context.errors();
  std::optional<PieceEntry> missing;
  if (const JsonNode* node = net.find("missing")) {
    missing = lessons::read_piece(*node, solid, false, context.at("missing"));
  } else {
    context.fault(net,
                  message("the key \"missing\" is missing here: the piece that is not there yet, such as {example}",
                          {{"example", R"({"face": 2})"}}));
  }
  const std::vector<JsonNode>* items = lessons::items_of(net, "places", 2, lessons::limits::net_places, context);
  if (items == nullptr || !missing || context.errors() != errors_before) {
    return std::nullopt;
  }
  CompletionText text{std::move(*sheet), std::move(*missing), {}};
  bool is_any_right = false;
  for (std::size_t i = 0; i < items->size(); ++i) {
    is_any_right = read_place((*items)[i], solid, text, context.at("places").at(std::to_string(i + 1))) || is_any_right;
  }
  if (context.errors() != errors_before) {
    return std::nullopt;
  }
  if (!is_any_right) {
    context.at("places").fault(
        *net.find("places"),
        message(
            "the piece does not complete a net of {solid:a} in any of these places: at least one place must be right",
            {{"solid", Noun{solid.name()}}}));
  }
  return CompleteNet(std::move(text.sheet), std::move(text.missing), std::move(text.places));
}

// ---- made up ----

// Where a piece can be tried: on each free edge once, by the edge that makes a net of it where there is one.
struct Places {
  std::vector<nets::Joint> right, wrong;
};
Places places_for(const Problem& problem, const Cutout& rest, const nets::Piece& piece) {
  Places places;
  for (const nets::PieceEdge& edge : nets::free_edges(rest)) {
    std::optional<nets::Joint> fitting;
    bool is_right = false;
    for (std::size_t by = 0; by < piece.shape.size() && !is_right; ++by) {
      const nets::Joint joint{edge.piece, edge.edge, by};
      const Cutout whole = nets::with(rest, {piece.shape, piece.copy_of, joint});
      const PieceId last = PieceId::at(whole.pieces().size() - 1);
      if (nets::equally_long(whole, edge, {last, by}) && nets::overlapping(whole).empty()) {
        is_right = folds_up(problem.solid, whole);
        fitting = is_right || !fitting ? joint : fitting;
      }
    }
    if (fitting) {
      (is_right ? places.right : places.wrong).push_back(*fitting);
    }
  }
  return places;
}

std::optional<Problem> made_complete_net(const Blueprint& blueprint, Seed& seed) {
  auto problem = made_on_solid(blueprint, seed,
                               {"One piece of a net for {a thing} is missing. Along which edges can {who} tape it on?",
                                "{Who} lost the last piece of this net of {a thing}. Find every edge where it can go.",
                                "This net of {a thing} needs one more piece. Which edges can it be taped to?"});
  constexpr int draws = 6;
  for (int i = 0; problem && i < draws; ++i) {
    const Cutout net = drawn_net(problem->solid, seed);
    std::vector<PieceId> leaves = nets::leaves(net);
    const PieceId leaf = leaves[seed.below(leaves.size())];
    const nets::Piece& piece = net.pieces()[leaf];
    const Cutout rest = nets::without(net, leaf);
    Places places = places_for(*problem, rest, piece);
    if (places.right.size() < 2 || places.right.size() > 4 || places.wrong.size() < 2) {
      continue;
    }
    auto sheet = drawn_sheet(problem->solid, rest, blueprint.level, seed);
    if (!sheet) {
      continue;
    }
    constexpr std::size_t most_places = 6;
    shuffle(places.wrong, seed);
    places.wrong.resize(std::min(places.wrong.size(), most_places - places.right.size()));
    std::vector<nets::Joint> all = places.right;
    all.insert(all.end(), places.wrong.begin(), places.wrong.end());
    std::sort(all.begin(), all.end(), [](const nets::Joint& a, const nets::Joint& b) {
      return std::pair(a.on, a.edge) < std::pair(b.on, b.edge);
    });
    problem->tasks = {CompleteNet(std::move(*sheet), PieceEntry{piece.copy_of}, std::move(all))};
    return problem;
  }
  return std::nullopt;
}

}  // namespace

Diagnosis CompleteNet::judged_choices(const Problem& problem, const std::vector<std::size_t>& chosen) const {
  const std::vector<NetChoice> choices = net_choices(problem, {});
  for (const std::size_t index : chosen) {
    ensure(index < choices.size(), "a choice was made that is not there");
  }
  Diagnosis diagnosis;
  for (const std::size_t index : chosen) {
    const NetChoice& choice = choices[index];
    if (!choice.is_right) {
      diagnosis.causes.push_back({choice.cause,
                                  message("At {place}: {reason}", {{"place", choice.text}, {"reason", choice.message}}),
                                  choice.faces, false});
    }
  }
  if (!diagnosis.causes.empty()) {
    diagnosis.verdict = AnswerVerdict::Recognized;
    diagnosis.message = diagnosis.causes.front().message;
    return diagnosis;
  }
  const auto right = static_cast<std::size_t>(
      std::count_if(choices.begin(), choices.end(), [](const NetChoice& choice) { return choice.is_right; }));
  if (chosen.size() == right) {
    return {AnswerVerdict::Right, {}, right == 1 ? message("Right.") : message("Right, that's all of them.")};
  }
  const std::size_t more = right - chosen.size();
  diagnosis.verdict = AnswerVerdict::Ask;
  diagnosis.message = more == 1
                          ? message("That would work. One more place would work too. Which?")
                          : message("That would work. {count} more places would work too. Which?", {{"count", more}});
  return diagnosis;
}

NetAsk ask_complete_net() {
  return {"complete", {"ask", "pieces", "turn", "flip", "missing", "places"}, read_complete_net};
}

namespace row {
Row complete_net() {
  Row row{"complete-net"};
  row.made = {
      {33, "complete-net", "complete the net", practice::Heading::Nets, 2, "fold a net", any, made_complete_net}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "net": {"ask": "complete", "pieces": [{"face": 1},
         {"face": 3, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1},
         {"face": 5, "on": 1, "edge": 3, "by": 1}, {"face": 6, "on": 1, "edge": 4, "by": 1}], "missing": {"face": 2},
         "places": [{"on": 2, "edge": 3, "by": 1}, {"on": 2, "edge": 2, "by": 1}]})"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
