#include "tasks/word_problems/cut_pieces.hpp"

#include <tuple>

#include "base/ensure.hpp"
#include "exact/print_number.hpp"
#include "lessons/json_text.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/word_problems/cut_plan.hpp"
#include "tasks/word_problems/supply_text.hpp"

namespace fw::tasks {
namespace {

using exact::Number;
using practice::Fact;
using practice::Hint;
using reasoning::Outcome;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;

Number counted_number(std::size_t count) { return Number::whole(static_cast<long long>(count)); }

CutPlan plan_of(const Problem& problem, const lessons::Supply& supply) {
  auto plan = least_cuts(edge_pieces(problem.solid, supply.each->unit), supply.each->number.value);
  ensure(plan.has_value(), "a supply that was checked cannot be cut");
  return *plan;
}

// ---- worked ----

class Cutting {
 public:
  Cutting(const Problem& problem, const lessons::Supply& supply, TaskSheet& sheet)
      : pieces_(edge_pieces(problem.solid, supply.each->unit)),
        plan_(plan_of(problem, supply)),
        supply_(&supply),
        sheet_(&sheet),
        each_(sheet.number(supply.each->number.value, supply.each->unit, Source::Kind::Known,
                           message("the length of one {item}", {{"item", Noun{supply.item}}}),
                           supply.each->number.text)) {}

  void write() {
    sheet_->steps().say(StepKind::Ask, message("You can't join leftover pieces, so cut each edge from one {item}.",
                                               {{"item", item()}}));
    if (pieces_.size() == 1) {
      cut_equal();
    } else {
      cut_mixed();
    }
  }

 private:
  [[nodiscard]] Noun item() const { return {supply_->item}; }
  [[nodiscard]] SupplyNumber length_of(const PieceKind& piece) {
    return sheet_->number(piece.length, supply_->each->unit, Source::Kind::Label, message("the length of an edge"));
  }

  // How many pieces one item gives, then how many items.
  void cut_equal() {
    const PieceKind& piece = pieces_.front();
    const Number quotient = supply_->each->number.value / piece.length;
    const Number per = exact::floor(quotient);
    const std::string whole = exact::shown(per, 0).text;
    std::ignore =
        sheet_->steps().work_out(StepKind::Count,
                                 message("You can cut {count} whole {count:edge|edges} from one {item}. Round down.",
                                         {{"item", item()}, {"count", whole}}),
                                 each_, "÷", length_of(piece), {quotient, {}, {}, ""});
    const SupplyNumber edges =
        sheet_->number(counted_number(piece.count), std::nullopt, Source::Kind::Known, message("the number of edges"));
    const SupplyNumber each = sheet_->number(per, std::nullopt, Source::Kind::EarlierStep,
                                             message("how many edges one {item} makes", {{"item", item()}}));
    const Number items = edges.value / per;
    std::ignore = sheet_->steps().work_out(
        StepKind::Count, message("Divide the {edges} edges by {count}.", {{"edges", piece.count}, {"count", whole}}),
        edges, "÷", each, {items, {}, {}, ""});
    if (!items.is_whole()) {
      const std::string less = exact::shown(exact::floor(items), 0).text;
      sheet_->steps().say(StepKind::Count, message("{less} {item#less} {less:is|are} not enough. Round up to {more}.",
                                                   {{"less", less}, {"item", item()}, {"more", plan_.items}}));
    }
  }

  // One line for each way to cut an item.
  void cut_mixed() {
    for (const Cut& cut : plan_.cuts) {
      std::vector<algebra::Notation> terms;
      Number used;
      for (std::size_t i = 0; i < pieces_.size(); ++i) {
        if (cut.pieces[i] > 0) {
          push_pieces(terms, pieces_[i], cut.pieces[i]);
          used = used + counted_number(cut.pieces[i]) * pieces_[i].length;
        }
      }
      std::ignore = sheet_->steps().state(
          StepKind::Count,
          message("Cut {count} {item#count} into these edges. Each is {each} long.",
                  {{"count", cut.items}, {"item", item()}, {"each", practice::value_of(*supply_->each)}}),
          algebra::row(std::move(terms)), true, {used, supply_->each->unit, {}, ""});
    }
    const Number down = exact::floor(plan_.joined);
    const Number by_length = down == plan_.joined ? down : down + Number::whole(1);
    const std::size_t count = plan_.items;
    sheet_->steps().say(StepKind::Check, counted_number(count) == by_length
                                             ? message("That is {count} {item#count}. Fewer are too short for all the "
                                                       "edges together.",
                                                       {{"count", count}, {"item", item()}})
                                             : message("That is {count} {item#count}. No other way to cut the edges "
                                                       "takes fewer.",
                                                       {{"count", count}, {"item", item()}}));
  }
  void push_pieces(std::vector<algebra::Notation>& terms, const PieceKind& piece, std::size_t count) {
    if (!terms.empty()) {
      terms.push_back(reasoning::sign("+"));
    }
    if (count > 1) {
      terms.push_back(algebra::leaf(algebra::Notation::Kind::Number, std::to_string(count)));
      terms.push_back(reasoning::sign("×"));
    }
    terms.push_back(sheet_->steps().notation(length_of(piece)));
  }

  std::vector<PieceKind> pieces_;
  CutPlan plan_;
  const lessons::Supply* supply_;
  TaskSheet* sheet_;
  SupplyNumber each_;
};

// ---- read ----

// Whether the edges can be cut, and the least number of items can be found.
bool can_be_cut(const JsonNode& node, const lessons::Supply& supply, const solids::Solid& solid,
                const Context& context) {
  const std::vector<PieceKind> pieces = edge_pieces(solid, supply.each->unit);
  std::size_t count = 0;
  for (const PieceKind& piece : pieces) {
    count += piece.count;
    if (supply.each->number.value < piece.length) {
      const exact::Shown shown = exact::shown(piece.length, 2);
      context.at("each").fault(*node.find("each"),
                               message("an edge is {length} long, and one {item} is only {each}: use a longer one, or "
                                       "leave \"joined\" out",
                                       {{"length", reasoning::about(shown, supply.each->unit.text())},
                                        {"item", Noun{supply.item}},
                                        {"each", supply.each->text}}));
      return false;
    }
  }
  if (count > most_pieces) {
    context.at("joined").fault(
        *node.find("joined"),
        message("there are {count} edges to cut, but the least number can be found only for up to {most}",
                {{"count", count}, {"most", most_pieces}}));
    return false;
  }
  if (!least_cuts(pieces, supply.each->number.value)) {
    context.at("each").fault(
        *node.find("each"),
        message("there are too many ways to cut these edges to find the least number: use a different length"));
    return false;
  }
  return true;
}

}  // namespace

std::vector<Task> read_cut_pieces(const JsonNode& node, const SupplyText& supply, const TaskText& text) {
  const solids::Solid& solid = text.problem.solid;
  check_supply(node, supply.terms, solid, text.context);
  const bool is_sound = supply.terms.measure == "edges" && supply.terms.each &&
                        supply.terms.each->unit.converts_to(solid.unit()) && supply.terms.each->number.value.sign() > 0;
  return is_sound && can_be_cut(node, supply.terms, solid, text.context) ? std::vector<Task>{CutPieces(supply.terms)}
                                                                         : std::vector<Task>{};
}

void CutPieces::write(Members& members) const {
  members.emplace_back("supply", lessons::object_in_line({{"edge", lessons::quote("edges")},
                                                          {"each", lessons::quote(supply_.each->text)},
                                                          {"item", lessons::quote(supply_.item)},
                                                          {"joined", "false"}}));
}

Result<Question, Message> CutPieces::question(const Problem& problem) const {
  const CutPlan plan = plan_of(problem, supply_);
  Question question;
  question.find = key();
  question.asked = Asked::Count;
  question.item = supply_.item;
  question.first_step =
      message("Start with one {item}. How many whole edges can you cut from it?", {{"item", Noun{supply_.item}}});
  question.supply = supply_;
  question.packs = reasoning::SupplyAnswer{};
  question.packs->quotient = plan.joined;
  question.packs->count = counted_number(plan.items);
  question.truth = question.packs->count;
  return question;
}

std::vector<Fact> CutPieces::facts(const Problem&) const {
  return {{supply_.each->number.text,
           message("One {item} is {each} long.",
                   {{"item", Noun{supply_.item}}, {"each", practice::value_of(*supply_.each)}})}};
}

Result<Explanation, Message> CutPieces::explained(const Problem& problem, const SolutionOptions& options) const {
  return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
}

Result<std::vector<Hint>, Message> CutPieces::hints(const Problem& problem, const reasoning::ClassNotation&) const {
  return practice::hints_to_task(*work(problem, 2));
}

std::optional<TaskWork> CutPieces::work(const Problem& problem, int places) const {
  TaskSheet sheet(places);
  Cutting(problem, supply_, sheet).write();
  const std::size_t count = plan_of(problem, supply_).items;
  const words::Message all = message("{count} {item#count}", {{"count", count}, {"item", Noun{supply_.item}}});
  return std::move(sheet).finished(
      {key(), "", {}, message("number needed"), {}, {}, Outcome{counted_number(count), std::nullopt}, 0, all},
      message("You need {all}.", {{"all", all}}));
}

}  // namespace fw::tasks
