#include "tasks/word_problems/word_problem.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "lessons/open_faces.hpp"
#include "practice/choice_parts.hpp"
#include "practice/told_prompt.hpp"
#include "tasks/catalog.hpp"
#include "tasks/measure.hpp"
#include "tasks/word_problems/cut_pieces.hpp"
#include "tasks/word_problems/packing.hpp"
#include "tasks/word_problems/purpose.hpp"
#include "tasks/word_problems/supply_text.hpp"

namespace fw::tasks {

std::vector<MadeUp> made_word_problems();  // word_problem_made.cpp

namespace {

using exact::Number;
using lessons::Purpose;
using lessons::Rounding;
using lessons::Supply;
using practice::ExplainedAt;
using practice::Fact;
using practice::Hint;

Message told_each(const Supply& supply) {
  const Noun item{supply.item};
  const words::Value each = practice::value_of(*supply.each);
  switch (supply.purpose) {
    case Purpose::Cover:
      return message("One {item} covers {each}.", {{"item", item}, {"each", each}});
    case Purpose::Fill:
      return message("One {item} holds {each}.", {{"item", item}, {"each", each}});
    case Purpose::Edge:
      break;
  }
  return message("One {item} is {each} long.", {{"item", item}, {"each", each}});
}

// How many items are needed, before it is rounded; nothing where the amount is no measure of the solid.
std::optional<Number> items_needed(const Problem& problem, const Supply& supply) {
  const auto found = problem.solid.values().find(supply.measure);
  const units::Unit unit = problem.solid.unit().to_the(lessons::dimension_of(supply.purpose));
  if (!supply.each || !supply.each->has_unit || found == problem.solid.values().end() ||
      !supply.each->unit.converts_to(unit) || supply.each->number.value.sign() <= 0) {
    return std::nullopt;
  }
  Number amount = found->second;
  if (supply.measure == "surface_area") {
    for (const geometry::FaceId face : lessons::open_faces(problem)) {
      amount = amount - problem.solid.faces()[face].area.amount();
    }
  }
  const Number each = supply.each->number.value * units::conversion(supply.each->unit, unit);
  return amount * Number::whole(supply.coats) / each;
}

// ---- read ----

// What kind of quantity is asked first, where that stands first; then the count; then all else.
std::vector<Task> read_word_problem(const TaskText& text) {
  const JsonNode& node = *text.node.find("supply");
  const SupplyText supply = read_supply(node, text.context);
  std::vector<Task> tasks;
  if (supply.packs()) {
    tasks = read_packing(node, supply, text);
  } else if (!supply.joined) {
    tasks = read_cut_pieces(node, supply, text);
  } else {
    check_supply(node, supply.terms, text.problem.solid, text.context);
    const auto& find = text.find;
    const bool judges = !find.empty() && find.front() == "purpose";
    if (judges) {
      tasks.emplace_back(AskedPurpose(supply.terms));
    }
    tasks.emplace_back(WordProblem(supply.terms));
  }
  for (const std::string& name : text.find) {
    if (name != "purpose") {
      tasks.push_back(named(name));
    } else if (&name != &text.find.front()) {
      tasks.emplace_back(AskedPurpose(supply.terms));
    }
  }
  return tasks;
}

}  // namespace

void WordProblem::write(Members& members) const { members.emplace_back("supply", supply_text(supply_)); }

Result<Question, words::Message> WordProblem::question(const Problem& problem) const {
  Question question;
  question.find = key();
  question.asked = Asked::Count;
  question.item = supply_.item;
  question.first_step = message("Start with the amount. Does the problem cover something, or fill it?");
  question.supply = supply_;
  question.packs = worked(problem).answer;
  question.truth = question.packs->cost ? *question.packs->cost : question.packs->count;
  return question;
}

Result<Message, Message> WordProblem::answer(const Problem& problem, const Question& question) const {
  return question.packs && question.packs->cost
             ? Result<Message, Message>(message("{cost}", {{"cost", question.packs->cost_text}}))
             : NumberTask::answer(problem, question);
}

std::string WordProblem::type(const Problem&) const {
  if (supply_.price) {
    return "cost";
  }
  switch (supply_.purpose) {
    case Purpose::Cover:
      return "cover";
    case Purpose::Edge:
      return "edging";
    case Purpose::Fill:
      break;
  }
  return supply_.rounding == Rounding::Down ? "pour" : "fill";
}

std::vector<Fact> WordProblem::facts(const Problem&) const {
  std::vector<Fact> facts;
  if (supply_.each) {
    facts.push_back({supply_.each->number.text, told_each(supply_)});
  }
  if (supply_.price) {
    facts.push_back({supply_.price->text, message("One {item} costs {price}.",
                                                  {{"item", Noun{supply_.item}}, {"price", supply_.price->text}})});
  }
  return facts;
}

ExplainedAt WordProblem::explained_at(const Problem& problem) const {
  const bool is_asked = std::any_of(problem.tasks.begin(), problem.tasks.end(),
                                    [&](const Task& task) { return task->find() == supply_.measure; });
  const bool is_judged_only = !supply_.each && problem.tasks.front().as<AskedPurpose>() != nullptr;
  return is_asked || is_judged_only ? ExplainedAt::Elsewhere : ExplainedAt::TheEnd;
}

Result<Explanation, words::Message> WordProblem::explained(const Problem& problem,
                                                           const SolutionOptions& options) const {
  if (supply_.measure != "edges") {
    auto amount = Measure(supply_.measure).explained(problem, options);
    if (amount) {
      return reasoning::with_count(std::move(amount).value(), worked(problem, options.line_places()));
    }
  }
  return reasoning::explained_amount(problem.solid, supply_.measure, worked(problem, options.line_places()), options);
}

Result<std::vector<Hint>, words::Message> WordProblem::hints(const Problem& problem,
                                                             const reasoning::ClassNotation& notation) const {
  Problem with_amount = problem;
  with_amount.tasks = {*this};
  if (supply_.measure != "edges") {
    with_amount.tasks.emplace_back(Measure(supply_.measure));
  }
  SolutionOptions options;
  options.notation = notation;
  const auto all = practice::explained(with_amount, options);
  if (!all) {
    return failure(all.error());
  }
  return practice::hints_to_measure(all->front(), problem.solid, supply_.measure);
}

std::vector<words::Message> WordProblem::masking(const Problem& problem) const {
  // A count that rounding to the nearest gets right, so that nobody is seen to round the wrong way.
  const std::optional<Number> items = items_needed(problem, supply_);
  if (!items || supply_.rounding == Rounding::None) {
    return {};
  }
  const Number down = exact::floor(*items);
  const Number right = supply_.rounding == Rounding::Down || down == *items ? down : down + Number::whole(1);
  if (!(exact::rounded(*items, 0) == right)) {
    return {};
  }
  const exact::Shown number = exact::shown(*items, 2);
  return {
      message("the count comes to {number}: rounding to the nearest gives the right number too, so other numbers "
              "would show who rounds the wrong way",
              {{"number", practice::amount_shown(number, std::nullopt)}})};
}

std::optional<reasoning::SupplyWork> supply_work(const Problem& problem, int places) {
  const auto* task = practice::task_as<WordProblem>(problem);
  return task == nullptr ? std::nullopt : std::optional(task->worked(problem, places));
}

namespace row {
Row word_problem() {
  Row row{"count", {"supply"}, true};
  row.check_form = [](const JsonNode& value, const Context& context) { (void)read_supply(value, context); };
  row.read = read_word_problem;
  row.offers = [](const JsonNode& value) {
    return value.find("pack") == nullptr ? std::vector<std::string>{"purpose"} : std::vector<std::string>{};
  };
  row.made = made_word_problems();
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "9 cm"},
         "supply": {"edge": "edges", "each": "20 cm", "item": "straw", "joined": false})",
      R"("solid": {"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"},
         "supply": {"edge": "edges", "each": "20 cm", "item": "straw", "joined": false})",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["surface_area"],
         "supply": {"cover": "surface_area", "each": "90 cm^2", "item": "sheet", "price": "$2", "coats": 2})",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["volume"],
         "supply": {"fill": "volume", "each": "60 cm^3", "item": "cup", "round": "down"})",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "supply": {"edge": "edges", "each": "30 cm", "item": "roll"})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
